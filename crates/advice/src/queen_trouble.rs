//! What can be wrong with a queen.

use serde::{Deserialize, Serialize};
use snowhum_apiary::{Colony, QueenState};
use snowhum_say::{Message, queen as say};

/// What is wrong with a queen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum QueenTrouble {
    /// There is none.
    NoQueen,
    /// She is not mated.
    Virgin,
    /// She lays drones in worker cells.
    DroneLayer,
    /// There is none, and workers lay.
    LayingWorkers,
}

impl QueenTrouble {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::NoQueen, Self::Virgin, Self::DroneLayer, Self::LayingWorkers];

    /// Of a colony; none where its queen lays, was given or is not known.
    #[must_use]
    pub fn of(colony: &Colony) -> Option<Self> {
        match colony.autumn.queen? {
            QueenState::None => Some(Self::NoQueen),
            QueenState::Virgin => Some(Self::Virgin),
            QueenState::DroneLayer => Some(Self::DroneLayer),
            QueenState::LayingWorkers => Some(Self::LayingWorkers),
            QueenState::Cast | QueenState::Laying | QueenState::Introduced => None,
        }
    }

    /// In a word or two.
    #[must_use]
    pub fn words(self) -> Message {
        say::trouble(self.name())
    }

    /// Why it does not come through so.
    pub(crate) fn why(self) -> Message {
        say::why(self.name())
    }

    /// As it is called in texts.
    pub(crate) const fn name(self) -> &'static str {
        match self {
            Self::NoQueen => "no-queen",
            Self::Virgin => "virgin",
            Self::DroneLayer => "drone-layer",
            Self::LayingWorkers => "laying-workers",
        }
    }
}
