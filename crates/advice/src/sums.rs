//! The small sums of the trade: mites in a sample, sugar for a shortage, a hive weighed, a winter's losses.

pub mod boxes;
mod chances;
pub mod feed;
pub mod intervals;
pub mod losses;
pub mod mites;
pub mod weigh;

/// Why a sum cannot be done.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum SumFault {
    /// A figure outside what the sum holds for.
    #[error("{what}: {value} is outside {low} to {high}")]
    OutOfRange {
        /// What was asked, in the keeper's words.
        what: &'static str,
        /// What was given.
        value: f64,
        /// Least.
        low: f64,
        /// Most.
        high: f64,
    },
    /// A name that is not known.
    #[error("{what} \"{name}\" is not known; known: {known}")]
    Unknown {
        /// What is named.
        what: &'static str,
        /// What was written.
        name: String,
        /// The names that would be right.
        known: String,
    },
    /// Figures that contradict each other.
    #[error("{0}")]
    Contradiction(String),
    /// One of the program's own tables cannot be read.
    #[error("the program's own table {table} cannot be read: {fault}")]
    Table {
        /// The table.
        table: &'static str,
        /// What is wrong in it.
        fault: String,
    },
}

/// A shipped table.
pub(crate) fn shipped<T: serde::de::DeserializeOwned>(table: &'static str, text: &str) -> Result<T, SumFault> {
    toml::from_str(text).map_err(|error| SumFault::Table { table, fault: error.to_string() })
}

/// The value, if it lies in the range.
pub(crate) fn within(what: &'static str, value: f64, low: f64, high: f64) -> Result<f64, SumFault> {
    if (low..=high).contains(&value) { Ok(value) } else { Err(SumFault::OutOfRange { what, value, low, high }) }
}

/// Whether two names are the same to a keeper.
pub(crate) fn same_name(a: &str, b: &str) -> bool {
    a.trim().eq_ignore_ascii_case(b.trim())
}
