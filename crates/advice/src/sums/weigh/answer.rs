//! The answer to a weighing, and what is said of it.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, weigh as say};
use snowhum_units::Range;

use super::lifting::LiftIndex;
use crate::statistics::rounded;

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WeighAnswer {
    /// [`super::WEIGH_SCHEMA`].
    pub schema: String,
    /// How it was weighed.
    pub way: Message,
    /// The whole hive as it stands; none from one side or from frames.
    pub whole_kg: Option<Range<f64>>,
    /// What the readings were corrected by, where two sides were lifted.
    pub lifted: Option<Lifted>,
    /// The empty hive.
    pub tare_kg: Option<Range<f64>>,
    /// Its parts, where it was reckoned.
    pub tare_parts: Vec<Part>,
    /// Bees in the whole.
    pub bees_kg: Option<Range<f64>>,
    /// Snow, feeder, brood, wrap, as told.
    pub other_kg: f64,
    /// Food alone; none where the empty hive is not known.
    pub stores_kg: Option<Range<f64>>,
    /// Hive whose combs were counted, or whose parts were reckoned.
    pub hive: Option<String>,
    /// From one side alone: the change, and nothing else.
    pub trend: Option<Trend>,
    /// Lifts of the day, judged.
    pub lifts: Vec<LiftIndex>,
    /// What to know of it.
    pub say: Vec<Message>,
    /// Where it comes from.
    pub sources: Vec<Message>,
}

/// Standard deviates that two deviations are of the half-width that holds in eight cases of ten.
const TWO_DEVIATIONS: f64 = 2.0 / 1.281_551_565_544_6;

impl WeighAnswer {
    /// Food and its error as a note holds them: kilograms, and two standard deviations of them.
    #[must_use]
    pub fn stores_noted(&self) -> Option<(f64, f64)> {
        let stores = self.stores_kg?;
        let half_kg = (stores.p90 - stores.p50).max(stores.p50 - stores.p10);
        Some((rounded(stores.p50, 1), rounded((TWO_DEVIATIONS * half_kg).max(0.1), 1)))
    }
}

/// A lift of two sides.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Lifted {
    /// The two readings together.
    pub sum_kg: f64,
    /// What they are multiplied by for supports set in and a side lifted.
    pub factor: f64,
    /// Centre of gravity right of the middle.
    pub off_centre_mm: f64,
    /// Inset of the supports, as told or taken.
    pub inset_mm: f64,
    /// Height of the lift, as told or taken.
    pub lift_mm: f64,
    /// Height of the centre of gravity, as told or taken.
    pub centre_height_mm: f64,
}

/// A part of the empty hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Part {
    /// The part.
    pub what: Message,
    /// Its weight.
    pub kg: f64,
}

/// One side lifted, now and before.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Trend {
    /// Reading now.
    pub now_kg: f64,
    /// Reading before.
    pub before_kg: Option<f64>,
    /// Change of the reading.
    pub change_kg: Option<f64>,
    /// Half of what reading twice is worth: a smaller change is none.
    pub plus_minus_kg: f64,
}

/// What is said of every weighing of a whole hive.
pub(super) fn whole_hive() -> Vec<Message> {
    vec![say::wet(), say::brood(), say::frozen()]
}

pub(super) fn one_side() -> Vec<Message> {
    vec![say::side_no_weight(), say::side_same(), say::side_both()]
}
