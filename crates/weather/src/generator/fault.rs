//! Why no weather can be drawn.

use jiff::civil::Date;
use snowhum_physics::sun::SunError;
use snowhum_say::{Message, Tongue, weather_fault as say};

/// Why no weather can be drawn.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum GeneratorFault {
    /// The place or the time is none the sun can be computed for.
    Sun(#[from] SunError),
    /// The date is at the end of the calendar.
    Date {
        /// As asked for.
        from: Date,
    },
    /// Too many hours, or none.
    Hours(usize),
}

impl GeneratorFault {
    /// With what would be right.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Sun(error) => error.to_string().into(),
            Self::Date { from } => say::drawn_from(from.to_string()),
            Self::Hours(hours) => say::drawn_hours(*hours),
        }
    }
}
