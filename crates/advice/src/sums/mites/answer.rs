//! The answer to a count of mites, and what is said of it.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, mites as say};

use super::lines::Line;
use crate::cautions::Hazard;
use crate::sums::intervals::Interval;

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MitesAnswer {
    /// [`super::MITES_SCHEMA`].
    pub schema: String,
    /// How mites were counted.
    pub method: Message,
    /// Unit of every `rate`, `even`, `uneven` and `line`.
    pub unit: Message,
    /// Each colony sampled.
    pub colonies: Vec<ColonyMites>,
    /// All of them together, where there are several.
    pub yard: Option<YardMites>,
    /// The line they are held against.
    pub line: Line,
    /// What other regions say.
    pub other_lines: Vec<Line>,
    /// What to make of it.
    pub say: Vec<Message>,
    /// What can hurt; nothing where no count calls for a treatment.
    #[serde(default)]
    pub cautions: Vec<Message>,
    /// Where it comes from.
    pub sources: Vec<Message>,
}

/// One colony's count.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyMites {
    /// The colony.
    pub name: String,
    /// Mites found.
    pub found: u32,
    /// Bees sampled.
    pub bees: Option<u32>,
    /// Days the board lay.
    pub days: Option<f64>,
    /// Mites in the answer's unit, as counted.
    pub rate: f64,
    /// The rate, where bees were sampled.
    pub mites_per_100_bees: Option<f64>,
    /// The rate, where a board was read.
    pub mites_per_day: Option<f64>,
    /// Exact 95 % interval if mites sat evenly; none where there are more mites than bees.
    pub clopper_pearson_per_100_bees: Option<Interval>,
    /// Score 95 % interval if mites sat evenly.
    pub wilson_per_100_bees: Option<Interval>,
    /// The interval if mites sat evenly that suits the method: Clopper-Pearson, or Garwood for a board.
    pub even: Interval,
    /// 95 % interval allowing for mites that sit unevenly.
    pub uneven: Interval,
    /// Corrected for the mites the method misses.
    pub corrected_per_100_bees: Option<MiteRange>,
    /// Chance that the true rate is over the line's upper figure, allowing for mites that sit unevenly.
    pub chance_over_line: Option<f64>,
    /// The same, if mites sat evenly.
    pub chance_over_line_if_even: Option<f64>,
    /// How often so large a sample would have found no mite at all.
    pub clean_sample_misses: Vec<MissChance>,
    /// Against the line.
    pub verdict: Verdict,
}

/// An estimate and how far it may lie off.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct MiteRange {
    /// Most likely.
    pub estimate: f64,
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
}

/// Chance that a sample misses what is there.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct MissChance {
    /// What is there.
    pub true_mites_per_100_bees: f64,
    /// If mites sat evenly.
    pub even: f64,
    /// If they sit unevenly.
    pub uneven: f64,
}

/// Several colonies together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct YardMites {
    /// The colony with most mites.
    pub worst: String,
    /// Its rate.
    pub worst_rate: f64,
    /// Colonies at or over the line's upper figure.
    pub at_or_over_line: Vec<String>,
    /// Mean of the colonies' rates.
    pub mean_rate: f64,
    /// 95 % interval of the mean of all colonies of the yard, from the spread between those sampled; none under four
    /// samples.
    pub mean_interval: Option<Interval>,
    /// Size of the negative binomial between colonies, by moments; small is uneven. None where they differ no more than
    /// luck.
    pub between_colonies_size: Option<f64>,
    /// Colonies sampled.
    pub colonies: usize,
    /// What to make of them.
    pub say: Message,
}

/// A count against a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Verdict {
    /// The whole range lies below.
    #[serde(rename = "under the line")]
    Under,
    /// Below, but the range reaches over it.
    #[serde(rename = "under the line, but one sample cannot rule it out")]
    LikelyUnder,
    /// Between the two figures of the line.
    #[serde(rename = "near the line: count again soon")]
    Near,
    /// At or over, but the range reaches below.
    #[serde(rename = "at or over the line, as far as one sample can say")]
    LikelyOver,
    /// The whole range lies above.
    #[serde(rename = "over the line")]
    Over,
}

impl Verdict {
    /// From a rate and its range.
    pub(super) fn of(rate: f64, range: Interval, [think, act]: [f64; 2]) -> Self {
        if range.low >= act {
            Self::Over
        } else if rate >= act - 1e-9 {
            Self::LikelyOver
        } else if rate >= think {
            Self::Near
        } else if range.high >= think {
            Self::LikelyUnder
        } else {
            Self::Under
        }
    }

    /// The verdict in words.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::Under => say::under(),
            Self::LikelyUnder => say::likely_under(),
            Self::Near => say::near(),
            Self::LikelyOver => say::likely_over(),
            Self::Over => say::over(),
        }
    }
}

/// What can hurt where the count may lead to a treatment.
pub(super) fn cautions(colonies: &[ColonyMites]) -> Vec<Message> {
    if may_be_treated(colonies) { Hazard::each(&[Hazard::Label, Hazard::Acids]) } else { Vec::new() }
}

fn may_be_treated(colonies: &[ColonyMites]) -> bool {
    colonies.iter().any(|one| matches!(one.verdict, Verdict::Near | Verdict::LikelyOver | Verdict::Over))
}

/// What to make of the counts.
pub(super) fn say(colonies: &[ColonyMites], season: Message, board: bool) -> Vec<Message> {
    let mut told = Vec::new();
    if may_be_treated(colonies) {
        told.push(say::together());
    }
    told.extend([season, if board { say::board_shows() } else { say::take_from() }]);
    if colonies.iter().any(|one| one.bees.is_some_and(|bees| bees < 200)) {
        told.push(say::small_sample());
    }
    told
}
