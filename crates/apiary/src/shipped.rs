//! Reading the tables that ship with the program.

use serde::de::DeserializeOwned;

/// A shipped table. A test reads each of them, so that the fallback to an empty one is never taken in a built program.
pub(crate) fn table<T: DeserializeOwned + Default>(text: &str) -> T {
    toml::from_str(text).unwrap_or_default()
}

/// Whether two names are the same to a keeper: case and spaces at the ends do not count.
pub(crate) fn same_name(a: &str, b: &str) -> bool {
    a.trim().chars().flat_map(char::to_lowercase).eq(b.trim().chars().flat_map(char::to_lowercase))
}
