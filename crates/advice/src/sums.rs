//! The small sums of the trade: mites in a sample, sugar for a shortage, a hive weighed, a winter's losses.

pub mod boxes;
mod chances;
pub mod feed;
pub mod intervals;
pub mod losses;
pub mod mites;
pub mod weigh;

use snowhum_say::{Message, Tongue, sums as say};
use std::fmt;

/// Why a sum cannot be done.
#[derive(Debug, Clone, PartialEq)]
pub enum SumFault {
    /// A figure outside what the sum holds for.
    OutOfRange {
        /// What was asked.
        what: Message,
        /// What was given.
        value: f64,
        /// Least.
        low: f64,
        /// Most.
        high: f64,
    },
    /// A name that is not known.
    Unknown {
        /// What is named.
        what: Message,
        /// What was written.
        name: String,
        /// The names that would be right.
        known: String,
    },
    /// Figures that contradict each other.
    Contradiction(Message),
    /// One of the program's own tables cannot be read.
    Table {
        /// The table.
        table: &'static str,
        /// What is wrong in it.
        fault: String,
    },
}

impl SumFault {
    /// What is wrong.
    #[must_use]
    pub fn says(&self) -> Message {
        match self {
            Self::OutOfRange { what, value, low, high } => say::out_of_range(*high, *low, *value, what),
            Self::Unknown { what, name, known } => say::unknown(known, name, what),
            Self::Contradiction(says) => says.clone(),
            Self::Table { table, fault } => say::table(fault, *table),
        }
    }
}

impl fmt::Display for SumFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&Tongue::BRITISH.say(&self.says()))
    }
}

impl std::error::Error for SumFault {}

/// A shipped table.
pub(crate) fn shipped<T: serde::de::DeserializeOwned>(table: &'static str, text: &str) -> Result<T, SumFault> {
    toml::from_str(text).map_err(|error| SumFault::Table { table, fault: error.to_string() })
}

/// The value, if it lies in the range.
pub(crate) fn within(what: Message, value: f64, low: f64, high: f64) -> Result<f64, SumFault> {
    if (low..=high).contains(&value) { Ok(value) } else { Err(SumFault::OutOfRange { what, value, low, high }) }
}

/// Whether two names are the same to a keeper.
pub(crate) fn same_name(a: &str, b: &str) -> bool {
    a.trim().eq_ignore_ascii_case(b.trim())
}
