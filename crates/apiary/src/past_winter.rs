//! A winter that is over.

use crate::{Colony, Hive, Note};
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

/// A yard as its autumn found it, in a winter that is over.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PastWinter {
    /// The day the colonies were counted.
    pub as_of: Date,
    /// The hives as they stood.
    pub hives: Vec<Hive>,
    /// The colonies as they were counted, the dead and the sold among them.
    pub colonies: Vec<Colony>,
    /// What was noted in its year.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<Note>,
}
