//! A club's thousand yards: its records in PostgreSQL, and nights computed on any number of machines.
//!
//! A [`Club`] keeps what its members handed in, version by version, and lets each see their own yards and a mentor those
//! that were shared; PostgreSQL itself holds that line. A night asks one question of every yard by one build: it is planned
//! in one transaction, workers compute it wherever they stand, and each answer is kept once under the hash of all it was
//! computed from. What the question means and how it is answered is the model's matter: a [`Worker`] is given it as a
//! function.

mod access;
mod build;
mod database;
mod dump;
mod fault;
mod forget;
mod job;
mod metrics;
mod migrations;
mod night;
mod outlooks;
mod packed;
mod sharing;
mod status;
mod work;
mod yards;

pub use access::Member;
pub use build::build;
pub use database::Club;
pub use fault::Fault;
pub use forget::Forgotten;
pub use job::{Asked, Reckon};
pub use metrics::metrics;
pub use night::{Night, Planned};
pub use outlooks::{CompleteNight, Outlook};
pub use sharing::{Cell, Choice, CountedWinter, OwnYard, Sharing};
pub use status::{Progress, Queue, Status};
pub use work::{Pace, Worker};
pub use yards::{Handed, Role, TakenIn, Winter, Yard};
