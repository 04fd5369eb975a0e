//! The winter ahead of a yard: opened and run once, and what is found from that run.

pub(crate) mod base;
pub(crate) mod combs;
pub(crate) mod gifts;
mod hunger;
pub(crate) mod run;
pub mod shortage;
pub(crate) mod start;

pub use run::PlanQuestion;
