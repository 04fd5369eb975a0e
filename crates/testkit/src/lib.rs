//! Fixtures and helpers for tests. All yards, hives and weathers here are invented.

mod hives;
mod measures;
pub mod postgres;
mod speech;
mod weathers;
pub mod workbooks;

pub use hives::{Dress, colony, langstroth, own_hive};
pub use measures::foreign_figures;
pub use speech::{AMERICAN, BRITISH, holds};
pub use weathers::{changeable, place};
