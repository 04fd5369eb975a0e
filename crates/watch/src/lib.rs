//! What the signs say: a calibrated estimate of every colony from irregular signs seen outside a shut hive.
//!
//! A colony is held as two populations ([`strata`]): living members of the winter model, each with the chance that it
//! is still alive, and dead hives that remember when, of what and with how much food they died. Every sign has one law
//! ([`Law`]) that gives both its chance and its sample, so that what the filter believes and what a simulated keeper
//! sees can never drift apart.

mod beginner;
mod estimate;
mod flock;
mod law;
mod ledger;
mod litter;
pub mod liu_west;
mod log;
mod outlook;
mod own;
mod parameters;
mod remains;
mod scene;
mod sign_table;
pub mod signs;
mod standing;
pub mod strata;
pub mod tempering;
mod twin;
mod view;
mod walks;
mod watching;
mod weights;
mod yard;

pub use beginner::DeadBeesSeen;
pub use estimate::{Estimate, Sizes};
pub use flock::Living;
pub use law::{Answer, Law};
pub use ledger::{DeadBees, Ledger};
pub use log::{Visit, visits};
pub use outlook::Outlook;
pub use own::tare_kg;
pub use parameters::Parameters;
pub use scene::Scene;
pub use sign_table::{Column, Group, SignTable};
pub use standing::{Standing, weighted_range};
pub use twin::{Twin, TwinState};
pub use view::{Conditions, FreshSnow, Life, Own, View};
pub use watching::{Moved, Watching};
pub use yard::Noted;
