//! What became of each colony in a winter, as far as it was noted.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Act, ColonyId, Examined, Note, Sign, SpringCount};
use snowhum_say::{Message, lessons as say};

use super::season::{Diary, Season};
use crate::deadout::context::is_life;

/// What became of a colony.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Fate {
    /// Alive when winter was over.
    Alive,
    /// Alive but smaller than it should be: not lost.
    Weak,
    /// Alive with a queen problem that cannot be mended: lost.
    QueenFailed,
    /// No living bees: lost.
    Dead,
    /// Taken by a disaster: lost.
    Disaster,
    /// Sold or given away: one fewer at risk.
    Sold,
    /// Put to another: one fewer at risk.
    United,
    /// Not noted yet.
    NotTold,
}

impl Fate {
    /// In words.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::Alive => say::alive(),
            Self::Weak => say::weak(),
            Self::QueenFailed => say::queen_failed(),
            Self::Dead => say::dead(),
            Self::Disaster => say::disaster(),
            Self::Sold => say::sold(),
            Self::United => say::united(),
            Self::NotTold => say::not_told(),
        }
    }

    /// Whether it counts as lost.
    #[must_use]
    pub fn is_lost(self) -> bool {
        matches!(self, Self::QueenFailed | Self::Dead | Self::Disaster)
    }

    /// Whether living bees were there when winter was over; none where that cannot be said.
    #[must_use]
    pub fn lived(self) -> Option<bool> {
        match self {
            Self::Alive | Self::Weak | Self::QueenFailed => Some(true),
            Self::Dead => Some(false),
            Self::Disaster | Self::Sold | Self::United | Self::NotTold => None,
        }
    }
}

/// A colony's winter as noted.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Outcome {
    pub(super) fate: Fate,
    /// The day it was noted.
    pub(super) on: Option<Date>,
    /// The last day it showed life beyond doubt.
    pub(super) last_life: Option<Date>,
    /// The last examination of the dead hive.
    pub(super) examined: Option<(Date, Examined)>,
    /// Whether it was fed, or its hive changed, since it was counted.
    pub(super) helped: bool,
}

/// Follows a colony through a winter.
pub(super) fn of(diary: &Diary<'_>, colony: ColonyId, season: &Season) -> Outcome {
    let mut outcome = Outcome { fate: Fate::NotTold, on: None, last_life: None, examined: None, helped: false };
    for (on, note) in diary.wintering(colony, season) {
        outcome.helped |= note.acts().any(is_help);
        if note.signs().any(is_life) {
            outcome.last_life = Some(on);
        }
        if let Some(examined) = examination(note) {
            outcome.examined = Some((on, examined));
        }
        if let Some(fate) = told(note, on >= season.end && outcome.fate == Fate::NotTold) {
            // The day it was found dead stays when it is examined later.
            if (fate, outcome.fate) != (Fate::Dead, Fate::Dead) {
                (outcome.fate, outcome.on) = (fate, Some(on));
            }
        } else if outcome.fate == Fate::Dead && note.signs().any(|sign| matches!(sign, Sign::ClusterSeen { .. })) {
            // Living bees seen take a verdict back.
            (outcome.fate, outcome.on) = (Fate::NotTold, None);
        }
    }
    outcome
}

fn is_help(act: &Act) -> bool {
    matches!(act, Act::Fed { .. } | Act::FoodPutOn(_) | Act::FramesFrom { .. } | Act::BroughtNear | Act::Changed(_))
}

/// What a note says of a fate. Life seen counts once winter is over, where nothing else is told.
fn told(note: &Note, life_counts: bool) -> Option<Fate> {
    let of_act = |act: &Act| match act {
        Act::Counted(SpringCount::Alive) => Some(Fate::Alive),
        Act::Counted(SpringCount::Weak) => Some(Fate::Weak),
        Act::Counted(SpringCount::QueenFailed) => Some(Fate::QueenFailed),
        Act::Counted(SpringCount::Disaster) => Some(Fate::Disaster),
        Act::Counted(SpringCount::Sold) => Some(Fate::Sold),
        Act::UnitedInto(_) => Some(Fate::United),
        Act::Examined(_) => Some(Fate::Dead),
        _ => None,
    };
    let dead = || note.signs().any(|sign| *sign == Sign::SeenDead).then_some(Fate::Dead);
    let alive = || (life_counts && note.signs().any(is_life)).then_some(Fate::Alive);
    note.acts().filter_map(of_act).last().or_else(dead).or_else(alive)
}

fn examination(note: &Note) -> Option<Examined> {
    note.acts().find_map(|act| match act {
        Act::Examined(examined) => Some(examined.clone()),
        _ => None,
    })
}
