//! The keeper's world: site, hive as built, colony; checks on input.

mod colony;
mod hive;
mod id;
mod site;

pub use colony::*;
pub use hive::*;
pub use id::*;
pub use site::*;
