//! Towns near which a yard may stand, from `data/towns.toml`.

use crate::shipped::table;
use serde::Deserialize;
use std::sync::LazyLock;

/// A town, as near as a winter's weather needs it.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Town {
    /// Its name.
    pub name: String,
    /// The country's name in English.
    pub country: String,
    /// Degrees north, to a tenth.
    pub latitude: f64,
    /// Degrees east, to a tenth.
    pub longitude: f64,
    /// Metres above the sea.
    pub elevation: f64,
    /// IANA zone.
    pub zone: String,
}

/// Every town known, by country and name.
#[must_use]
pub fn towns() -> &'static [Town] {
    &SHIPPED
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    town: Vec<Town>,
}

static SHIPPED: LazyLock<Vec<Town>> = LazyLock::new(|| table::<File>(include_str!("../../../data/towns.toml")).town);
