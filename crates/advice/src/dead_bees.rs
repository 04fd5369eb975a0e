//! Is this many dead bees normal?

use serde::{Deserialize, Serialize};
use snowhum_apiary::DeadPlace;
use snowhum_draws::{Key, normal_quantile};
use snowhum_units::Range;
use snowhum_watch::DeadBeesSeen;
use snowhum_winter::{Parameters, resting_bee_hazard};

use crate::statistics::{quantile, rounded};

/// A beginner's question.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeadBeesQuestion {
    /// Dead bees counted outside and on the landing board.
    pub found: u32,
    /// Days since the last look, or since snow last covered the old ones.
    pub days: f64,
    /// Bees of the colony, if known.
    pub bees: Option<f64>,
    /// Month of the year, 1 to 12, in the northern hemisphere's seasons.
    pub month: i8,
    /// Whether they lie on snow, where every one is seen.
    pub ground: Ground,
}

/// What the dead lie on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// Snow.
    Snow,
    /// Grass, soil, leaves.
    Bare,
}

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DeadBeesAnswer {
    /// Dead bees to expect where a keeper would count them.
    pub expected: Range<f64>,
    /// Counted.
    pub found: u32,
    /// Against the range.
    pub verdict: Verdict,
    /// Whether it is worth a worry, in words.
    pub worry: String,
    /// What to do next.
    pub next: String,
    /// Deaths a day that are normal for a colony of this size at this time.
    pub deaths_per_day: Range<f64>,
    /// Where it comes from.
    pub sources: Vec<String>,
}

/// A count against what is expected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Verdict {
    /// Below one in ten.
    #[serde(rename = "fewer than expected")]
    Fewer,
    /// Within eight in ten.
    #[serde(rename = "as expected")]
    Expected,
    /// Above nine in ten.
    #[serde(rename = "more than expected")]
    More,
}

impl Verdict {
    /// The verdict in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Fewer => "fewer than expected",
            Self::Expected => "as expected",
            Self::More => "more than expected",
        }
    }
}

/// Bees of a wintering colony nobody counted (practice: 5,000 in a nucleus to 20,000).
const UNKNOWN_BEES: Range<f64> = Range { p10: 6_000.0, p50: 12_000.0, p90: 20_000.0 };
const DRAWS: u32 = 2_000;

/// Answers from the model's own hazards and the watch's own law of counting, with every unknown drawn from its range.
#[must_use]
pub fn dead_bees(question: &DeadBeesQuestion, p: &Parameters, signs: &snowhum_watch::Parameters) -> DeadBeesAnswer {
    let key = Key::new(2, 0xDEAD);
    let bees = question.bees.map_or(UNKNOWN_BEES, |n| Range { p10: 0.85 * n, p50: n, p90: 1.15 * n });
    let place = if question.ground == Ground::Snow { DeadPlace::Snow } else { DeadPlace::Ground };
    let mut counts = Vec::with_capacity(DRAWS as usize);
    let mut daily = Vec::with_capacity(DRAWS as usize);
    for draw in 0..DRAWS {
        let [a, b, ..] = key.uniforms([draw, 0, 0, 0]).map(normal_quantile);
        let bees = bees.at(a);
        let deaths_a_day = bees * hazard(question.month, p, b);
        let seen = DeadBeesSeen { deaths_a_day, bees, days: question.days, month: question.month, place };
        counts.push(seen.made_up(signs, |at| key.uniforms([draw, 1, at, 0])));
        daily.push(deaths_a_day);
    }
    let range = |values: &[f64]| Range { p10: 0.1, p50: 0.5, p90: 0.9 }.map(|q| rounded(quantile(values, q), 0));
    let expected = range(&counts);
    let found = f64::from(question.found);
    let verdict = if found > expected.p90 {
        Verdict::More
    } else if found < expected.p10 {
        Verdict::Fewer
    } else {
        Verdict::Expected
    };
    DeadBeesAnswer {
        expected,
        found: question.found,
        verdict,
        worry: worry(verdict, found, expected).to_owned(),
        next: next(verdict).to_owned(),
        deaths_per_day: range(&daily),
        sources: vec![
            "lives of winter bees: Minaud 2024 review (130 days), Fukuda and Sekiguchi 1966 (154 days)".to_owned(),
            "how the dead lie and are found, as the watch has it: data/watch_parameters.toml, judgement".to_owned(),
        ],
    }
}

/// Deaths a bee and day in the middle of a month, for a sound colony.
fn hazard(month: i8, p: &Parameters, z: f64) -> f64 {
    let day = (f64::from(month) - 0.5) * 30.4;
    let age = (day - p.winter_bee_emergence.value).rem_euclid(365.0);
    let age = if age > 250.0 { 0.0 } else { age };
    resting_bee_hazard(p, age, z)
}

fn worry(verdict: Verdict, found: f64, expected: Range<f64>) -> &'static str {
    match verdict {
        Verdict::Fewer => {
            "Few dead bees are no bad sign: in cold weather they stay inside, and a small colony loses few."
        }
        Verdict::Expected => "Normal. A colony of winter bees loses some every day; that is how it gets to spring.",
        Verdict::More if found > 4.0 * expected.p90 => {
            "Far more than a winter's day-to-day loss. After a first mild day this can still be house-cleaning."
        }
        Verdict::More => {
            "More than usual. After a mild day bees carry out weeks of dead at once: that is a sign of life."
        }
    }
}

fn next(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::More => {
            "Clear the entrance. Look for crumpled wings, brown streaks on the hive, shrew-bitten bees; note it and count again."
        }
        Verdict::Fewer => {
            "Nothing to do. If neighbours show many and this hive no sign of any kind, listen at it on a calm day."
        }
        Verdict::Expected => "Keep the entrance clear of them, and note the count.",
    }
}
