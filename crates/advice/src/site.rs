//! A site's own winter: what is usual there, its last days, and what a colony's health is held against on them.

pub(crate) mod dates;
pub(crate) mod figures;
pub(crate) mod health;

pub use dates::SiteDates;
pub use figures::mite_region;
