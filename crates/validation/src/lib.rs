//! The model held against published figures, outside tools and common practice.
//!
//! Each group of checks computes its figures with the shipped code and sets them beside figures from outside.
//! [`Validation`] computes every check and writes `docs/VALIDATION.md` with its pictures. A figure outside its band
//! stays visible with its reason; bands are never widened to fit.

mod air_flow;
mod build_ups;
mod cavities;
mod check;
mod cluster_shape;
mod condensation;
mod elsewhere;
mod fault;
mod hive_shape;
mod hives;
mod honey;
mod losses;
mod moisture;
mod network;
mod numbers;
mod picture;
mod pictures;
mod practice;
mod psychrometrics;
mod real_winters;
mod report;
mod season;
mod sun;
mod table;
mod validation;
mod weather;
mod winters;

pub use check::{Band, Basis, Check, Claim, Class, Verdict};
pub use elsewhere::{PROMISES, Promise};
pub use fault::Fault;
pub use picture::Picture;
pub use real_winters::{ORDERINGS, Ratio, RealRow, RealWinters};
pub use report::NOT_INDEPENDENT;
pub use validation::Validation;
