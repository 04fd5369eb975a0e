//! A hive as it is read, until all hives and colonies are.

use super::report::Spot;
use crate::shipped::same_name;
use crate::{Hive, Side};

/// A hive, or at least its name where it could not be built.
pub(crate) struct NamedHive {
    pub(crate) name: Option<String>,
    pub(crate) hive: Option<Hive>,
    pub(crate) spot: Spot,
    /// The line that says so where bees cannot leave it.
    pub(crate) shut_at: Option<usize>,
    pub(crate) neighbour: Option<Wanted>,
}

/// A neighbour by name, until all hives are read.
pub(crate) struct Wanted {
    pub(crate) name: String,
    pub(crate) side: Side,
    pub(crate) spot: Spot,
}

/// The hive of this name.
pub(crate) fn find<'h>(hives: &'h [NamedHive], name: &str) -> Option<&'h NamedHive> {
    hives.iter().find(|hive| hive.name.as_deref().is_some_and(|known| same_name(known, name)))
}
