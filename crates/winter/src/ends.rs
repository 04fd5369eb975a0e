//! How a colony can end: one list everywhere.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, ends as say};

/// Causes of an end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cause {
    /// Nothing left to eat in the hive.
    Starved = 0,
    /// Food in the hive, out of reach.
    IsolationStarvation = 1,
    /// Too few bees, or too cold for their number.
    TooSmall = 2,
    /// The queen failed and no young bees came.
    QueenFailed = 3,
    /// Mites spoilt the winter bees.
    Mites = 4,
    /// What nobody names, and storm, theft, beasts.
    Other = 5,
}

impl Cause {
    /// All of them, in order.
    pub const ALL: [Self; 6] =
        [Self::Starved, Self::IsolationStarvation, Self::TooSmall, Self::QueenFailed, Self::Mites, Self::Other];

    /// The cause in a keeper's words.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::Starved => say::starved(),
            Self::IsolationStarvation => say::beside_food(),
            Self::TooSmall => say::too_small(),
            Self::QueenFailed => say::queen(),
            Self::Mites => say::mites(),
            Self::Other => say::other(),
        }
    }
}

/// Chances of an end by cause, and of being alive; they sum to one.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Ends {
    /// Nothing left to eat.
    pub starved: f64,
    /// Food out of reach.
    pub isolation_starvation: f64,
    /// Too few bees or too cold.
    pub too_small: f64,
    /// No queen.
    pub queen_failed: f64,
    /// Mites.
    pub mites: f64,
    /// The rest.
    pub other: f64,
}

impl Ends {
    /// From chances in the order of [`Cause::ALL`].
    #[must_use]
    pub fn from_causes(chances: [f64; 6]) -> Self {
        let [starved, isolation_starvation, too_small, queen_failed, mites, other] = chances;
        Self { starved, isolation_starvation, too_small, queen_failed, mites, other }
    }

    /// In the order of [`Cause::ALL`].
    #[must_use]
    pub fn by_cause(&self) -> [(Cause, f64); 6] {
        let chances =
            [self.starved, self.isolation_starvation, self.too_small, self.queen_failed, self.mites, self.other];
        std::array::from_fn(|at| (Cause::ALL[at], chances[at]))
    }

    /// The cause with the largest share, if any colony ends at all.
    #[must_use]
    pub fn most_likely(&self) -> Option<Cause> {
        self.by_cause().into_iter().filter(|(_, p)| *p > 0.0).max_by(|a, b| a.1.total_cmp(&b.1)).map(|(cause, _)| cause)
    }

    /// Chance of an end for want of food, be there none or none within reach.
    #[must_use]
    pub fn of_hunger(&self) -> f64 {
        self.starved + self.isolation_starvation
    }

    /// Chance of any end.
    #[must_use]
    pub fn total(&self) -> f64 {
        self.by_cause().iter().map(|(_, p)| p).sum()
    }
}
