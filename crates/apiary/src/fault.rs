//! What is wrong with a yard file, all of it at once, and what should be said about one that is right.

use crate::{Colony, Hive};
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, Tongue, fault};
use std::fmt;

/// One fault in a yard file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Fault {
    /// Line in the file, from 1.
    pub line: usize,
    /// Where in the file, such as `colony "Larch".stores`.
    pub field: String,
    /// What is wrong.
    pub problem: Message,
    /// What would be right.
    pub remedy: Message,
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

impl Faults {
    /// All of them, each with its place and with what would be right.
    #[must_use]
    pub fn message(&self) -> Message {
        let place = |one: &Fault| format!("{}:{}: {}", self.file, one.line, one.field);
        let one = |one: &Fault| fault::ended(fault::at(place(one), fault::both(&one.problem, &one.remedy)));
        Message::sentences(self.faults.iter().map(one))
    }

    /// Each with its place, and below it what would be right.
    #[must_use]
    pub fn said(&self, tongue: Tongue) -> String {
        let one = |fault: &Fault| {
            let [problem, hint] = [&fault.problem, &fault::hint(&fault.remedy)].map(|message| tongue.say(message));
            format!("{}:{}: {}: {problem}\n  {hint}", self.file, fault.line, fault.field)
        };
        self.faults.iter().map(one).collect::<Vec<_>>().join("\n")
    }
}

impl fmt::Display for Faults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Tongue::BRITISH))
    }
}

impl std::error::Error for Faults {}

/// Not a fault, but to be said: a default taken, a range that is wide.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Advisory {
    /// Line in the file, from 1.
    pub line: usize,
    /// Where in the file.
    pub field: String,
    /// What to say.
    pub text: Message,
}
