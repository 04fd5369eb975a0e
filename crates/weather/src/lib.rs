//! Hourly weather for a site: open formats, embedded climatology, generator.
//!
//! | question | answer |
//! |---|---|
//! | what is the climate here? | [`Climate::at`] |
//! | what winters are possible? | [`generate`] |
//! | what does this file say? | [`readers`], then [`complete`] |
//! | does its place lie far from the yard? | [`Far::from_yard`] |
//! | what winters does this file make possible? | [`ensemble_from_file`] |
//! | what of it is known already? | [`bent_through`], [`following`], [`overlaid`] |
//! | when does spring come, how cold does it get? | [`season`], [`statistics`], [`return_period`] |
//!
//! Bytes, places, dates and seeds come in as arguments; nothing here opens a file, a socket or a clock.

mod climatology;
mod complete;
mod far;
mod fault;
mod from_file;
mod generator;
mod hourly_shape;
mod known;
mod raw;
pub mod readers;
pub mod return_period;
pub mod season;
mod series;
mod snow_pack;
pub mod statistics;
mod sun_day;

pub use climatology::{Climate, OutsideGrid, YearCurve};
pub use complete::complete;
pub use far::{Far, is_elsewhere};
pub use fault::{WeatherFault, WeatherFaults};
pub use from_file::{FileTooShort, ensemble_from_file};
pub use generator::{GeneratorFault, generate, generate_air};
pub use known::{bend_through, follow, lay_over};
pub use raw::{Raw, RawHour, Reading};
pub use series::*;
