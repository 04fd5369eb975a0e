//! A reason why a colony stands as it does, in a few words.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::Tongue;
use snowhum_winter::Cause;

use crate::queen_trouble::QueenTrouble;
use crate::words::short_day;

/// A reason.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "because")]
pub enum Why {
    /// The keeper saw it dead.
    SeenDead,
    /// Dead and examined, sold, or taken.
    Gone {
        /// Which, in words.
        how: String,
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
    pub fn words(&self) -> String {
        match self {
            Self::SeenDead => "seen dead",
            Self::Gone { how } => return how.clone(),
            Self::UnitedInto { into } => return format!("put to {into}"),
            Self::Foulbrood => "signs of foulbrood",
            Self::ShutIn => "its bees are shut in",
            Self::Blocked => "an opening blocked",
            Self::Queen { trouble } => return Tongue::BRITISH.say(&trouble.words()),
            Self::QueenInDoubt => "queen in doubt",
            Self::LifeInDoubt => "may be dead",
            Self::MitesNotCounted => "no mite count",
            Self::Mites { per_100 } => return format!("{per_100:.0} mites in 100"),
            Self::Hungry { from } => return format!("hungry from {}", short_day(*from)),
            Self::LittleLeft => "little by spring",
            Self::FoodNotWeighed => "food not weighed",
            Self::FewBees => "few bees",
            Self::EndsOf { cause } => return format!("most lost: {}", cause.words()),
            Self::Sign => "a sign asks for a look",
        }
        .to_owned()
    }
}
