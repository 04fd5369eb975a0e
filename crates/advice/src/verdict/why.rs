//! A reason why a colony stands as it does, in a few words.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, verdict as say};
use snowhum_winter::Cause;

use crate::queen_trouble::QueenTrouble;

/// A reason.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "because")]
pub enum Why {
    /// The keeper saw it dead.
    SeenDead,
    /// Dead and examined, sold, or taken.
    Gone {
        /// Which, in words.
        how: Message,
    },
    /// Its bees went to another colony.
    UnitedInto {
        /// Which.
        into: String,
    },
    /// Signs of foulbrood.
    Foulbrood,
    /// Its bees cannot get out.
    ShutIn,
    /// Its entrance was noted as blocked.
    Blocked,
    /// Its queen will not do.
    Queen {
        /// What is wrong.
        trouble: QueenTrouble,
    },
    /// Nobody saw a queen or brood, or signs speak against her.
    QueenInDoubt,
    /// Too many like it are dead by now, or signs speak against it.
    LifeInDoubt,
    /// Nobody counted mites this autumn.
    MitesNotCounted,
    /// Mites over the line at the last count.
    Mites {
        /// Of them on 100 bees.
        per_100: f64,
    },
    /// Food runs out.
    Hungry {
        /// The day on which one in ten is.
        from: Date,
    },
    /// Food lasts, and the worst tenth comes to spring with little.
    LittleLeft,
    /// Food was lifted by hand or told, and not weighed, where it is short.
    FoodNotWeighed,
    /// Fewer bees than a colony winters with by itself.
    FewBees,
    /// What most that end still end of.
    EndsOf {
        /// Of what.
        cause: Cause,
    },
    /// A sign that asks for a look.
    Sign,
}

impl Why {
    /// In a few words.
    #[must_use]
    pub fn words(&self) -> Message {
        match self {
            Self::SeenDead => say::why_seen_dead(),
            Self::Gone { how } => how.clone(),
            Self::UnitedInto { into } => say::why_put_to(into),
            Self::Foulbrood => say::why_foulbrood(),
            Self::ShutIn => say::why_shut_in(),
            Self::Blocked => say::why_blocked(),
            Self::Queen { trouble } => trouble.words(),
            Self::QueenInDoubt => say::why_queen_in_doubt(),
            Self::LifeInDoubt => say::why_life_in_doubt(),
            Self::MitesNotCounted => say::why_mites_not_counted(),
            Self::Mites { per_100 } => say::why_mites(*per_100),
            Self::Hungry { from } => say::why_hungry(*from),
            Self::LittleLeft => say::why_little_left(),
            Self::FoodNotWeighed => say::why_food_not_weighed(),
            Self::FewBees => say::why_few_bees(),
            Self::EndsOf { cause } => say::why_ends_of(cause.words()),
            Self::Sign => say::why_sign(),
        }
    }
}
