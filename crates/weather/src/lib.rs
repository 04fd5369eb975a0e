//! Hourly weather for a site: open formats, embedded climatology, generator.

mod series;

pub use series::*;
