//! How much is short, and when it is fed.

use jiff::civil::Date;
use snowhum_apiary::HiveBox;
use snowhum_units::{CubicMetre, Kilogram, Metre};

/// How much is short, and when.
#[derive(Debug, Clone, PartialEq)]
pub struct FeedQuestion {
    /// Stores that are short.
    pub short: Kilogram,
    /// When it is fed.
    pub season: Season,
    /// The day of the question.
    pub as_of: Option<Date>,
    /// The day by which syrup must be finished: taken down, not begun.
    pub syrup_by: Option<Date>,
    /// What a feeder holds.
    pub feeder: Option<CubicMetre>,
    /// Name of the hive.
    pub hive: String,
    /// The box the feed lies on, and whose combs are counted.
    pub hive_box: HiveBox,
    /// Thickness of a slab.
    pub slab: Option<Metre>,
}

/// When it is fed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Season {
    /// Before winter: strong syrup, or frames.
    Autumn,
    /// Bees are clustered: solid feed alone.
    Winter,
    /// Bees fly: any syrup.
    Spring,
}
