//! What is wrong with a yard file, all of it at once, and what should be said about one that is right.

use crate::{Colony, Hive};
use serde::{Deserialize, Serialize};
use std::fmt;

/// One fault in a yard file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Fault {
    /// Line in the file, from 1.
    pub line: usize,
    /// Where in the file, such as `colony "Larch".stores`.
    pub field: String,
    /// What is wrong.
    pub problem: String,
    /// What would be right.
    pub remedy: String,
}

/// Every fault of a file, in the order of its lines. Serialises to `{"faults":[{"line","field","problem","remedy"}]}`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Faults {
    /// The file's name, for printing.
    #[serde(skip)]
    pub file: String,
    /// The faults; never empty.
    pub faults: Vec<Fault>,
    /// Hives of the file that bees cannot leave, each of them a fault: whoever knows the air in them can say more.
    #[serde(skip)]
    pub sealed: Vec<SealedHive>,
}

/// A hive that bees cannot leave, and who lives in it.
#[derive(Debug, Clone, PartialEq)]
pub struct SealedHive {
    /// Line of its fault.
    pub line: usize,
    /// The hive.
    pub hive: Hive,
    /// The colony.
    pub colony: Colony,
}

impl fmt::Display for Faults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, fault) in self.faults.iter().enumerate() {
            if at > 0 {
                writeln!(f)?;
            }
            writeln!(f, "{}:{}: {}: {}", self.file, fault.line, fault.field, fault.problem)?;
            write!(f, "  hint: {}", fault.remedy)?;
        }
        Ok(())
    }
}

impl std::error::Error for Faults {}

/// Not a fault, but to be said: a default taken, a range that is wide.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Advisory {
    /// Line in the file, from 1.
    pub line: usize,
    /// Where in the file.
    pub field: String,
    /// What to say.
    pub text: String,
}
