//! Why no weather can be drawn.

use jiff::civil::Date;
use snowhum_physics::sun::SunError;

/// Why no weather can be drawn.
#[derive(Debug, thiserror::Error)]
pub enum GeneratorFault {
    /// The place or the time is none the sun can be computed for.
    #[error(transparent)]
    Sun(#[from] SunError),
    /// The date is at the end of the calendar.
    #[error("weather from {from} cannot be drawn; give a date from 1700 to 2900")]
    Date {
        /// As asked for.
        from: Date,
    },
    /// Too many hours, or none.
    #[error("{0} hours of weather cannot be drawn; ask for 1 to 87840")]
    Hours(usize),
}
