//! When and by whom something was written down.

use jiff::Timestamp;

/// When and by whom something was written into the store; the caller says both.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Recorded {
    /// When; kept to the millisecond.
    pub at: Timestamp,
    /// By whom, in the keeper's own words; empty where one keeper has the yard alone.
    pub author: String,
}

impl Recorded {
    /// At a time, by somebody.
    #[must_use]
    pub fn by(at: Timestamp, author: impl Into<String>) -> Self {
        Self { at, author: author.into() }
    }
}

impl From<Timestamp> for Recorded {
    fn from(at: Timestamp) -> Self {
        Self { at, author: String::new() }
    }
}
