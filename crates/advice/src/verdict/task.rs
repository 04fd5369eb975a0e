//! What can be asked of a keeper, with its amounts, and its words.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, verdict as say, words};
use snowhum_units::{CubicMetre, Kilogram};
use snowhum_winter::Cause;

use crate::fit::answer::VerdictKind;
use crate::queen_trouble::QueenTrouble;

/// One thing to do for one colony.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "do")]
pub enum Task {
    /// Signs of foulbrood: shut, nothing moved, the inspector told.
    TellInspector,
    /// Its bees are shut in.
    LetOut,
    /// Its entrance is blocked.
    ClearOpenings,
    /// Dead: closed to robbers, its cause looked for.
    CloseDead,
    /// Mites are counted.
    CountMites {
        /// Whether they were counted before this autumn.
        again: bool,
    },
    /// A treatment by label and law, all of the yard on one day.
    TreatMites,
    /// A treatment while there is no brood.
    TreatBroodless {
        /// Whether a look must show first that there is none, since the run shows no such time.
        look_first: bool,
        /// Whether mites were counted before this winter; of those that nobody counted it comes first.
        counted: bool,
    },
    /// Eggs are looked for.
    LookForEggs,
    /// Something about its queen.
    Queen {
        /// What is wrong.
        trouble: QueenTrouble,
        /// What is done.
        how: VerdictKind,
        /// The colony its bees go to, where one is fit.
        with: Option<String>,
        /// Whether a mated queen given now would still do well.
        #[serde(default)]
        takes_queen: bool,
    },
    /// Put to another.
    Unite {
        /// Which.
        with: String,
    },
    /// Sealed brood from another.
    GiveBrood {
        /// Which.
        from: String,
    },
    /// Set beside a strong one, wall to wall.
    SetBeside {
        /// Which.
        with: String,
    },
    /// Syrup, three of sugar to two of water.
    FeedSyrup {
        /// Sugar for it.
        sugar_kg: f64,
        /// Litres of it.
        syrup_l: f64,
    },
    /// Thin syrup, one to one.
    FeedThinSyrup {
        /// Sugar for it.
        sugar_kg: f64,
        /// Litres of it.
        syrup_l: f64,
    },
    /// Fondant or candy over the bees.
    FeedSolid {
        /// How much.
        fondant_kg: f64,
    },
    /// Stores from the far side are hung next to the bees.
    BringNear,
    /// A better lid.
    InsulateLid,
    /// A wrap.
    Wrap,
    /// A tray under the mesh.
    CloseMesh,
    /// Heard at the wall, since it may be dead.
    Listen,
    /// Looked into on the first day that allows it.
    LookIn,
    /// Looked into on the first day that allows it, since too few like it come to spring and nothing known is due.
    SeeWhatDecides {
        /// What most that end still end of; none where no cause has a name.
        of: Option<Cause>,
    },
}

/// Places in the order in which tasks of one day are told: what cannot wait, mites, queens, food, the hive.
const FIRST_TO_LAST: usize = 20;

impl Task {
    /// Its place among the tasks of one day.
    #[must_use]
    pub fn rank(&self) -> usize {
        match self {
            Self::TellInspector => 0,
            Self::LetOut => 1,
            Self::ClearOpenings => 2,
            Self::Listen => 3,
            Self::CountMites { again: false } => 4,
            Self::TreatMites => 5,
            Self::TreatBroodless { .. } => 6,
            Self::LookForEggs => 7,
            Self::Queen { .. } => 8,
            Self::Unite { .. } => 9,
            Self::GiveBrood { .. } => 10,
            Self::FeedSyrup { .. } => 11,
            Self::FeedThinSyrup { .. } => 12,
            Self::FeedSolid { .. } => 13,
            Self::BringNear => 14,
            Self::CountMites { again: true } => 15,
            Self::SetBeside { .. } => 16,
            Self::InsulateLid | Self::Wrap | Self::CloseMesh => 17,
            Self::LookIn | Self::SeeWhatDecides { .. } => 18,
            Self::CloseDead => FIRST_TO_LAST,
        }
    }

    /// Whether it tells what to do and does nothing for the bees by itself.
    pub(crate) fn only_looks(&self) -> bool {
        matches!(
            self,
            Self::Listen | Self::LookIn | Self::SeeWhatDecides { .. } | Self::LookForEggs | Self::CountMites { .. }
        )
    }

    /// Whether it is the same thing to do, whatever its amount.
    pub(super) fn is_like(&self, other: &Self) -> bool {
        std::mem::discriminant(self) == std::mem::discriminant(other)
    }

    /// Whether its bees live on elsewhere once it is done.
    pub(super) fn empties_the_hive(&self) -> bool {
        match self {
            Self::Unite { .. } => true,
            Self::Queen { how, .. } => matches!(how, VerdictKind::Unite | VerdictKind::ShakeOut),
            _ => false,
        }
    }

    /// What it is, without the hive and its amount: hives for which these words are the same are told together.
    #[must_use]
    pub fn words(&self) -> Message {
        match self {
            Self::TellInspector => say::tell_inspector(),
            Self::LetOut => say::let_out(),
            Self::ClearOpenings => say::clear_openings(),
            Self::CloseDead => say::close_dead(),
            Self::CountMites { again: false } => say::count_mites(),
            Self::CountMites { again: true } => say::count_mites_again(),
            Self::TreatMites => say::treat_mites(),
            Self::TreatBroodless { look_first: true, .. } => say::treat_once_broodless(),
            Self::TreatBroodless { look_first: false, .. } => say::treat_broodless(),
            Self::LookForEggs => say::look_for_eggs(),
            Self::Queen { trouble, how, with, takes_queen } => queen(*trouble, *how, with.as_deref(), *takes_queen),
            Self::Unite { with } => say::unite(with),
            Self::GiveBrood { from } => say::give_brood(from),
            Self::SetBeside { with } => say::set_beside(with),
            Self::FeedSyrup { .. } => say::feed_syrup(),
            Self::FeedThinSyrup { .. } => say::feed_thin_syrup(),
            Self::FeedSolid { .. } => say::feed_solid(),
            Self::BringNear => say::bring_near(),
            Self::InsulateLid => say::insulate_lid(),
            Self::Wrap => say::wrap(),
            Self::CloseMesh => say::close_mesh(),
            Self::Listen => say::listen(),
            Self::LookIn => say::look_in(),
            Self::SeeWhatDecides { of } => see(*of),
        }
    }

    /// How much of it, as a keeper measures it; none where that is no question.
    #[must_use]
    pub fn amount(&self) -> Option<Message> {
        match self {
            Self::FeedSyrup { syrup_l, .. } | Self::FeedThinSyrup { syrup_l, .. } => {
                Some(words::poured(CubicMetre::new(syrup_l * 1e-3)))
            }
            Self::FeedSolid { fondant_kg } => Some(words::portion(Kilogram::new(*fondant_kg))),
            _ => None,
        }
    }

    /// What it is, its amount first.
    #[must_use]
    pub fn measured(&self) -> Message {
        match self.amount() {
            Some(amount) => say::amount(amount, self.words()),
            None => self.words(),
        }
    }
}

fn see(decides: Option<Cause>) -> Message {
    match decides {
        None | Some(Cause::Other) => say::look_in(),
        Some(Cause::Starved) => say::see_food(),
        Some(Cause::IsolationStarvation) => say::see_food_near(),
        Some(Cause::TooSmall) => say::see_size(),
        Some(Cause::QueenFailed) => say::see_queen(),
        Some(Cause::Mites) => say::see_mites(),
    }
}

fn queen(trouble: QueenTrouble, how: VerdictKind, with: Option<&str>, takes_queen: bool) -> Message {
    let trouble = trouble.words();
    let join = with.map_or_else(say::unite_it, say::unite);
    match how {
        VerdictKind::LookAgain => say::queen_look_again(trouble),
        VerdictKind::Wait => say::queen_wait(trouble),
        VerdictKind::ShakeOut => say::queen_shake_out(trouble),
        _ if takes_queen => say::queen_join_or_give(join, trouble),
        _ => say::queen_join(join, trouble),
    }
}

#[cfg(test)]
mod tests {
    use super::{Kilogram, Task, words};
    use snowhum_say::Tongue;
    use snowhum_units::System;

    #[test]
    fn amounts_are_what_a_keeper_can_measure() {
        let portion = |kg, system| Tongue::new(system).say(&words::portion(Kilogram::new(kg)));
        assert_eq!(portion(3.26, System::Metric), "3.5 kg");
        assert_eq!(portion(2.9, System::Metric), "3 kg");
        assert_eq!(portion(2.9, System::Us), "6 lb");
        let syrup = Task::FeedSyrup { sugar_kg: 10.0, syrup_l: 12.8 };
        assert_eq!(Tongue::BRITISH.say(&syrup.amount().unwrap()), "13 L");
    }
}
