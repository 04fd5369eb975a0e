//! Weighings, as read; what they say about stores is the watch's business.

use serde::{Deserialize, Serialize};
use snowhum_units::Kilogram;

/// One weighing.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Weighing {
    /// Stores, as the keeper reckons them from a weighing of their own.
    Stores {
        /// Their mass.
        mass_kg: Kilogram,
        /// How far off they may be (two standard deviations).
        plus_minus_kg: Kilogram,
    },
    /// The whole hive on a scale, all parts, bees and snow.
    Scale {
        /// What it showed.
        gross_kg: Kilogram,
    },
    /// Each side lifted in turn with a hand scale.
    TwoSidedLift {
        /// One side.
        left_kg: Kilogram,
        /// The other.
        right_kg: Kilogram,
        /// How far in from the lifted edges the hive rests, as a share of its width.
        inset_share: f64,
    },
    /// One side only: a trend, if it is always the same side.
    OneSide {
        /// What the hand scale showed.
        read_kg: Kilogram,
    },
    /// Lifted by hand.
    Heft(Heft),
}

/// A hive lifted by hand and called by a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Heft {
    /// It comes up easily.
    Light,
    /// Neither.
    Fair,
    /// It hardly moves.
    Heavy,
}
