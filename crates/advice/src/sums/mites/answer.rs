//! The answer to a count of mites, and what is said of it.

use serde::{Deserialize, Serialize};

use super::lines::Line;
use crate::cautions::Hazard;
use crate::sums::intervals::Interval;

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MitesAnswer {
    /// [`super::MITES_SCHEMA`].
    pub schema: String,
    /// How mites were counted.
    pub method: String,
    /// Unit of every `rate`, `even`, `uneven` and `line`.
    pub unit: String,
    /// Each colony sampled.
    pub colonies: Vec<ColonyMites>,
    /// All of them together, where there are several.
    pub yard: Option<YardMites>,
    /// The line they are held against.
    pub line: Line,
    /// What other regions say.
    pub other_lines: Vec<Line>,
    /// What to make of it.
    pub say: Vec<String>,
    /// What can hurt; nothing where no count calls for a treatment.
    #[serde(default)]
    pub cautions: Vec<String>,
    /// Where it comes from.
    pub sources: Vec<String>,
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
    /// In words.
    pub say: String,
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
    pub fn words(self) -> &'static str {
        match self {
            Self::Under => "under the line",
            Self::LikelyUnder => "under the line, but one sample cannot rule it out",
            Self::Near => "near the line: count again soon",
            Self::LikelyOver => "at or over the line, as far as one sample can say",
            Self::Over => "over the line",
        }
    }
}

/// What can hurt where the count may lead to a treatment.
pub(super) fn cautions(colonies: &[ColonyMites]) -> Vec<String> {
    if may_be_treated(colonies) { Hazard::each(&[Hazard::Label, Hazard::Acids]) } else { Vec::new() }
}

fn may_be_treated(colonies: &[ColonyMites]) -> bool {
    colonies.iter().any(|one| matches!(one.verdict, Verdict::Near | Verdict::LikelyOver | Verdict::Over))
}

/// What to make of the counts.
pub(super) fn say(colonies: &[ColonyMites], season: &str, board: bool) -> Vec<String> {
    let mut say = Vec::new();
    if may_be_treated(colonies) {
        say.push("Treat a yard's colonies together: mites drift and are robbed from hive to hive.".to_owned());
    }
    say.push(season.to_owned());
    say.push(
        if board {
            "A board shows what falls, not what is there: ants, wind and brood change it. Where it matters, wash 300 bees."
        } else {
            "Bees from the brood nest carry about twice the mites of bees on honey; take them from a comb with open brood, and see that the queen is not among them."
        }
        .to_owned(),
    );
    if colonies.iter().any(|one| one.bees.is_some_and(|bees| bees < 200)) {
        say.push("Fewer than 200 bees say little: half a US cup, 118 mL, is about 300.".to_owned());
    }
    say
}
