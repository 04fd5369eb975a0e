//! What the small sums share: faults to exit codes, an answer in JSON or words.

use serde::Serialize;
use snowhum_advice::sums::SumFault;

use crate::args::Common;
use crate::exit;
use crate::text;

/// A fault of the question is the keeper's to mend; one of the program's own tables is a bug.
pub(super) fn fault(fault: SumFault) -> anyhow::Error {
    match fault {
        SumFault::Table { .. } => anyhow::Error::new(fault),
        other => exit::refused(other.says()),
    }
}

/// Prints the answer.
pub(super) fn say<T: Serialize>(answer: &T, common: &Common, words: impl Fn(&T) -> String) -> anyhow::Result<()> {
    if common.json { text::say(&serde_json::to_string_pretty(answer)?) } else { text::say(&words(answer)) }
}
