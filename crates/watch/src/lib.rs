//! What the signs say: a calibrated estimate of every colony from irregular signs seen outside a shut hive.
//!
//! A colony is held as two populations ([`strata`]): living members of the winter model, each with the chance that it
//! is still alive, and dead hives that remember when, of what and with how much food they died. Every sign has one law
//! ([`Law`]) that gives both its chance and its sample, so that what the filter believes and what a simulated keeper
//! sees can never drift apart.

mod law;
pub mod liu_west;
mod parameters;
pub mod signs;
pub mod strata;
pub mod tempering;
mod view;
mod weights;

pub use law::{Answer, Law};
pub use parameters::Parameters;
pub use view::{Conditions, Life, Own, View};
