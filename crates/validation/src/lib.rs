//! The model held against published figures, outside tools and common practice.
//!
//! Each group of checks computes its figures with the shipped code and sets them beside figures from outside.
//! [`all`] gives every check; [`report::page`] writes them as `docs/VALIDATION.md`. A figure outside its band stays
//! visible with its reason; bands are never widened to fit.

mod air_flow;
mod build_ups;
mod cavities;
mod check;
mod cluster_shape;
mod condensation;
mod hive_shape;
mod hives;
mod honey;
mod losses;
mod moisture;
mod network;
mod numbers;
mod practice;
mod psychrometrics;
pub mod report;
mod season;
mod sun;
mod table;
mod winters;

pub use check::{Band, Basis, Check, Claim, Class, Verdict};

use snowhum_winter::{ParameterError, Parameters};

/// Every check, in the order of the page.
///
/// # Errors
/// When the shipped parameters cannot be read.
pub fn all() -> Result<Vec<Check>, ParameterError> {
    let parameters = Parameters::shipped()?;
    let groups = [
        psychrometrics::checks(),
        build_ups::checks(),
        air_flow::checks(),
        condensation::checks(),
        honey::checks(),
        network::checks(),
        sun::checks(),
        moisture::checks(),
        cluster_shape::checks(&parameters),
        hive_shape::checks(&parameters),
        numbers::checks(&parameters),
        cavities::checks(&parameters),
        season::checks(&parameters),
        losses::checks(&parameters),
        practice::checks(&parameters),
    ];
    Ok(groups.concat())
}
