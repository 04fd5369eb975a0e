//! Answers from winters: typed, serialisable, with evidence and words.

mod actions;
mod ahead;
pub mod answer;
mod broodless;
pub mod cautions;
mod course;
mod dates;
pub mod dead_bees;
pub mod deadout;
pub mod finish;
pub mod fit;
mod gifts;
pub mod glossary;
mod hive;
pub mod jobs;
pub mod lessons;
pub mod lifting;
pub mod now;
mod over_rule;
mod plan;
pub mod questions;
pub mod rules;
pub mod season;
mod seasons;
pub mod setup;
pub mod shortage;
pub mod spring;
pub mod statistics;
pub mod sums;
pub mod syrup;
pub mod treatments;
pub mod winter_bees;
pub mod words;
pub mod yard;

pub use hive::{HiveAnswer, hive};
pub use plan::{PlanQuestion, plan};
