//! A site's own winter: what is usual there, its last days, and what a colony's health is held against on them.

pub(crate) mod dates;
mod figures;
mod health;

pub use dates::SiteDates;
pub use figures::mite_region;

pub(crate) use figures::{Broodless, Class, CombsFor, Country, Figures, smallest};
pub(crate) use health::{Health, foulbrood, mite_rate};
