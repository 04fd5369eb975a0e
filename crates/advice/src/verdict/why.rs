//! Why a colony stands as it does, in a few words each.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_winter::{Cause, Trajectory};

use super::SOUND;
use super::doubt;
use super::ground::Ground;
use super::programme::{Facts, Fate, Programme, mites};
use super::task::Task;
use super::yard;
use crate::actions::Situation;
use crate::queen::QueenTrouble;
use crate::shortage::WORTH_FEEDING;
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
            Self::Queen { trouble } => trouble.words(),
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

/// Why, the weightiest first.
pub(super) fn of(
    ground: &Ground<'_>,
    at: usize,
    facts: &Facts<'_>,
    (programme, run, if_done): (&Programme, &Trajectory, Option<f64>),
) -> Vec<Why> {
    match &facts.fate {
        Fate::SeenDead => return vec![Why::SeenDead],
        Fate::Foulbrood => return vec![Why::Foulbrood],
        Fate::Gone(how) => return vec![Why::Gone { how: how.clone() }],
        Fate::UnitedInto(into) => return vec![Why::UnitedInto { into: into.clone() }],
        Fate::Lives => {}
    }
    let mut why = Vec::new();
    for step in &programme.steps {
        match &step.task {
            Task::TellInspector => return vec![Why::Foulbrood],
            Task::LetOut => why.push(Why::ShutIn),
            Task::ClearOpenings => why.push(Why::Blocked),
            Task::Queen { trouble, .. } => why.push(Why::Queen { trouble: *trouble }),
            Task::LookForEggs => why.push(Why::QueenInDoubt),
            Task::Unite { .. } | Task::GiveBrood { .. } | Task::SetBeside { .. } => why.push(Why::FewBees),
            _ => {}
        }
    }
    if facts.alive < ground.thresholds.alive_sound.value {
        why.push(Why::LifeInDoubt);
    }
    let is_told = |why: &Why| matches!(why, Why::QueenInDoubt | Why::Queen { .. });
    if facts.queen_in_doubt(ground) && !why.iter().any(is_told) {
        why.push(Why::QueenInDoubt);
    }
    let hunger = food(ground, at);
    let mites = mites::why(ground, at);
    let is_guessed = hunger.is_some() && yard::is_told(&ground.base.housed[at].colony);
    // Hunger never hides mites.
    why.extend(mites);
    why.extend(hunger);
    if is_guessed {
        why.push(Why::FoodNotWeighed);
    }
    if facts.beside {
        why.push(Why::Sign);
    }
    if let Some(cause) = doubt::ends(run)
        .most_likely()
        .filter(|cause| *cause != Cause::Other && if_done.is_some_and(|chance| chance < SOUND) && why.is_empty())
    {
        why.push(Why::EndsOf { cause });
    }
    why
}

fn food(ground: &Ground<'_>, at: usize) -> Option<Why> {
    let base = ground.base;
    if base.shortages[at] < WORTH_FEEDING {
        return None;
    }
    let hunger = Situation { base, colony: at }.early_hunger();
    Some(hunger.map_or(Why::LittleLeft, |day| Why::Hungry { from: base.date(day) }))
}
