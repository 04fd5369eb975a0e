//! What the autumn look found beside bees and food.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, hive_word as say};
use snowhum_units::Kelvin;

/// The rest of an autumn look. A part is none where nobody looked; an empty list says that it was looked for.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Autumn {
    /// Outdoor air when the bees were counted.
    pub counted_at: Option<Kelvin>,
    /// How the queen stands, where more is known than that she was seen.
    pub queen: Option<QueenState>,
    /// What ails the colony.
    pub troubles: Option<Vec<Trouble>>,
    /// What is still on the hive and should not be.
    pub left_on: Option<Vec<LeftOn>>,
}

/// How a queen stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum QueenState {
    /// She lays worker brood.
    Laying,
    /// Mated and put in by the keeper this autumn.
    Introduced,
    /// Not mated yet.
    Virgin,
    /// A late swarm with a young queen.
    Cast,
    /// She lays drones in worker cells.
    DroneLayer,
    /// No queen: workers lay.
    LayingWorkers,
    /// No queen.
    None,
}

/// What can ail a colony in autumn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Trouble {
    /// Sunken or holed caps, ropy cells, scale, a foul smell.
    FoulbroodSigns,
    /// Chalky mummies.
    Chalkbrood,
    /// Crawlers with crumpled wings.
    CrumpledWings,
    /// Streaks on the hive.
    Dysentery,
    /// Robbed, or robbing.
    Robbed,
    /// Wasps going in and out.
    Wasps,
}

/// What is forgotten on a hive.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LeftOn {
    /// A queen excluder.
    Excluder,
    /// A feeder that is empty.
    Feeder,
    /// An empty super.
    EmptySuper,
}

impl QueenState {
    /// The states as keepers write them.
    pub(crate) const WORDS: [(&'static str, Self); 7] = [
        ("laying", Self::Laying),
        ("introduced", Self::Introduced),
        ("virgin", Self::Virgin),
        ("cast", Self::Cast),
        ("drone layer", Self::DroneLayer),
        ("laying workers", Self::LayingWorkers),
        ("none", Self::None),
    ];
}

impl Trouble {
    /// The troubles as keepers write them.
    pub(crate) const WORDS: [(&'static str, Self); 6] = [
        ("foulbrood signs", Self::FoulbroodSigns),
        ("chalkbrood", Self::Chalkbrood),
        ("crumpled wings", Self::CrumpledWings),
        ("dysentery", Self::Dysentery),
        ("robbed", Self::Robbed),
        ("wasps", Self::Wasps),
    ];

    /// The trouble by its name.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::FoulbroodSigns => say::foulbrood_signs(),
            Self::Chalkbrood => say::chalkbrood(),
            Self::CrumpledWings => say::crumpled_wings(),
            Self::Dysentery => say::dysentery(),
            Self::Robbed => say::robbed(),
            Self::Wasps => say::wasps(),
        }
    }
}

impl LeftOn {
    /// The things as keepers write them.
    pub(crate) const WORDS: [(&'static str, Self); 3] =
        [("excluder", Self::Excluder), ("feeder", Self::Feeder), ("empty super", Self::EmptySuper)];
}
