//! A colony as the keeper found it in autumn.

mod autumn;

pub use autumn::{Autumn, LeftOn, QueenState, Trouble};

use crate::{ColonyId, HiveId};
use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::{Kilogram, Range};

/// One colony. Numbers are ranges: what the keeper said, widened by how it was found out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Colony {
    /// Stable id.
    pub id: ColonyId,
    /// The keeper's name for it.
    pub name: String,
    /// The hive it lives in.
    pub hive: HiveId,
    /// Grown bees.
    pub bees: Range<f64>,
    /// Cells of sealed brood; none where nobody looked.
    pub sealed_brood: Option<Range<f64>>,
    /// Frames (or seams) of this hive covered with bees.
    pub frames_of_bees: f64,
    /// Food.
    pub stores: Stores,
    /// Varroa.
    pub mites: Mites,
    /// The queen.
    pub queen: Queen,
    /// Treatments given since summer.
    pub treatments: Vec<Treatment>,
    /// What else the autumn look found.
    #[serde(default)]
    pub autumn: Autumn,
    /// Whether only the four quick-start facts are known, so that every answer says how wide it is.
    pub quick_start: bool,
}

/// Food in the combs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Stores {
    /// All of it.
    pub total: Range<Kilogram>,
    /// Where it sits; the parts sum to one.
    pub place: StoresPlace,
    /// What it is.
    pub kind: StoresKind,
    /// How the keeper knows.
    pub known_by: KnownBy,
}

/// Where the food sits, as shares of the total.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StoresPlace {
    /// In combs the cluster covers, round and among the bees.
    pub touched: f64,
    /// Over the cluster in the same seams.
    pub above: f64,
    /// In combs next to those the cluster covers.
    pub beside: f64,
    /// At the far side, two or more bare combs away.
    pub far: f64,
}

/// What the stores are made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum StoresKind {
    /// Sugar syrup taken and capped.
    Sugar,
    /// Ordinary blossom honey.
    Honey,
    /// Honeydew: much ash and dextrins.
    Honeydew,
    /// Heather.
    Heather,
    /// Ivy, sets hard.
    Ivy,
    /// Oilseed rape, sets hard.
    Rape,
}

/// How a weight of stores was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum KnownBy {
    /// Frames counted.
    Frames,
    /// Hive weighed on a scale.
    Scale,
    /// Both sides lifted with a hand scale.
    TwoSidedLift,
    /// Lifted by hand and called light, fair or heavy.
    Heft,
    /// The keeper's own figure, given without saying how.
    Stated,
}

/// Varroa as counted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Mites {
    /// Nobody counted.
    NotCounted,
    /// Washed or rolled off a sample of bees.
    Counted {
        /// Mites found.
        found: u32,
        /// Bees in the sample.
        bees: u32,
        /// The day.
        on: Date,
    },
}

/// The queen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Queen {
    /// Year she was born, if known.
    pub year: Option<i16>,
    /// Whether she, or fresh eggs, were seen at the last look.
    pub seen_or_laying: Option<bool>,
    /// Whether she was mated this August or later.
    pub late_mated: bool,
}

/// A treatment against mites, as the keeper's own record has it. Snowhum gives no doses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Treatment {
    /// The day it began.
    pub on: Date,
    /// What kind of substance.
    pub class: TreatmentClass,
}

/// Classes of treatment, by what limits them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TreatmentClass {
    /// Formic acid, reaches under cappings.
    Formic,
    /// Thymol, needs warmth.
    Thymol,
    /// Oxalic acid, works without brood only.
    Oxalic,
    /// Contact strips over weeks.
    Strips,
    /// Anything else.
    Other,
}

impl TreatmentClass {
    /// The classes as keepers write them.
    pub const WORDS: [(&'static str, Self); 5] = [
        ("formic", Self::Formic),
        ("thymol", Self::Thymol),
        ("oxalic", Self::Oxalic),
        ("strips", Self::Strips),
        ("other", Self::Other),
    ];
}
