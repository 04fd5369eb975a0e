//! The winter ahead of a yard: opened and run once, and what is found from that run.

mod base;
pub(crate) mod combs;
pub(crate) mod gifts;
mod hunger;
mod run;
pub mod shortage;
mod start;

pub use run::PlanQuestion;

pub(crate) use base::Base;
pub(crate) use run::{A_PART, Run};
pub(crate) use start::{Ahead, Watched};
