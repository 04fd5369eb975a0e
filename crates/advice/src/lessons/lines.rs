//! What lessons go by, and what others lost, from `data/losses.toml`.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, losses_survey};
use snowhum_winter::{Parameter, Status};

use crate::sums::{SumFault, shipped};

const SHIPPED: &str = include_str!("../../../../data/losses.toml");
const TABLE: &str = "losses.toml";

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Lines {
    pub(super) survey: Vec<Survey>,
    pub(super) parameter: Parameters,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Parameters {
    pub(super) base_rate: Parameter,
    pub(super) mite_line: Parameter,
    pub(super) short_of: Parameter,
    pub(super) small: Parameter,
    pub(super) old_queen: Parameter,
    pub(super) silences: Parameter,
    pub(super) least_chance: Parameter,
}

/// A winter's losses as a survey reports them: the keepers' own word.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Survey {
    #[serde(default, skip_serializing)]
    name: String,
    /// The winter.
    pub winter: String,
    /// Who answered.
    #[serde(default)]
    pub who: Message,
    /// Per cent of colonies lost.
    pub value: f64,
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
    /// What the figure is.
    pub unit: String,
    /// Kinds of loss, where told.
    #[serde(default)]
    pub of_which: Message,
    /// Where it was read.
    pub source: String,
    /// How well it stands.
    pub status: Status,
}

impl Lines {
    pub(super) fn shipped() -> Result<Self, SumFault> {
        let mut lines: Self = shipped(TABLE, SHIPPED)?;
        for survey in &mut lines.survey {
            survey.who = losses_survey::named(&survey.name).unwrap_or_default();
            survey.of_which = losses_survey::named(&format!("{}-of", survey.name)).unwrap_or_default();
        }
        Ok(lines)
    }
}

#[cfg(test)]
mod tests {
    use super::Lines;

    #[test]
    fn the_shipped_file_reads_and_its_ranges_are_in_order() {
        let lines = Lines::shipped().unwrap();
        assert!(lines.survey.iter().all(|one| one.low <= one.value && one.value <= one.high && !one.source.is_empty()));
        assert!(lines.survey.iter().all(|one| !one.who.is_none()));
    }
}
