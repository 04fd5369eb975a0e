//! What can be asked of a keeper, with its amounts, and its words.

use serde::{Deserialize, Serialize};
use snowhum_say::Tongue;
use snowhum_units::{CubicMetre, Kilogram, System};
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
    pub fn words(&self) -> String {
        match self {
            Self::TellInspector => "foulbrood signs: shut, move nothing, tell the inspector",
            Self::LetOut => "open the hive: its bees are shut in",
            Self::ClearOpenings => "clear the openings of ice and dead bees",
            Self::CloseDead => "dead: close it to robbers, look for the cause",
            Self::CountMites { again: false } => "count mites (300 bees); over the line treat all",
            Self::CountMites { again: true } => "count mites again before bees cluster",
            Self::TreatMites => "over the mite line: treat all on one day, by label",
            Self::TreatBroodless { look_first: true, .. } => "treat for mites once a look shows no brood, by label",
            Self::TreatBroodless { look_first: false, .. } => "treat for mites while broodless, by label and law",
            Self::LookForEggs => "look for eggs; if none, requeen or unite it",
            Self::Queen { trouble, how, with, takes_queen } => {
                return queen(*trouble, *how, with.as_deref(), *takes_queen);
            }
            Self::Unite { with } => return format!("put it to {with}"),
            Self::GiveBrood { from } => return format!("give a frame of sealed brood from {from}"),
            Self::SetBeside { with } => return format!("set it beside {with}, wall to wall, once bees no longer fly"),
            Self::FeedSyrup { .. } => "begin syrup, 3:2",
            Self::FeedThinSyrup { .. } => "thin syrup, 1:1, a litre or so at a time",
            Self::FeedSolid { .. } => "fondant right over the bees",
            Self::BringNear => "hang the far stores next to the bees",
            Self::InsulateLid => "lay 50 mm of foam over the crownboard",
            Self::Wrap => "wrap the walls in felt paper",
            Self::CloseMesh => "push the tray in under the mesh",
            Self::Listen => "listen at the wall; silent: look in on a mild day",
            Self::LookIn | Self::SeeWhatDecides { of: None | Some(Cause::Other) } => "look in on the first mild day",
            Self::SeeWhatDecides { of: Some(Cause::Starved) } => "lift or weigh it: its food decides",
            Self::SeeWhatDecides { of: Some(Cause::IsolationStarvation) } => {
                "on the first mild day see that food touches the bees"
            }
            Self::SeeWhatDecides { of: Some(Cause::TooSmall) } => {
                "on the first mild day count its seams of bees: size decides"
            }
            Self::SeeWhatDecides { of: Some(Cause::QueenFailed) } => {
                "on the first mild day look for eggs: its queen decides"
            }
            Self::SeeWhatDecides { of: Some(Cause::Mites) } => {
                "on the first mild day look in and count mites: they decide"
            }
        }
        .to_owned()
    }

    /// How much of it, as a keeper measures it; none where that is no question.
    #[must_use]
    pub fn amount(&self, system: System) -> Option<String> {
        match self {
            Self::FeedSyrup { syrup_l, .. } | Self::FeedThinSyrup { syrup_l, .. } => Some(volume(*syrup_l, system)),
            Self::FeedSolid { fondant_kg } => Some(half_kilograms(*fondant_kg, system)),
            _ => None,
        }
    }
}

/// A mass to half a kilogram, or to a pound.
#[must_use]
pub fn half_kilograms(kg: f64, system: System) -> String {
    match system {
        System::Metric => {
            let halves = (2.0 * kg).round() / 2.0;
            if halves.fract() == 0.0 { format!("{halves:.0} kg") } else { format!("{halves:.1} kg") }
        }
        System::Us => Kilogram::new(kg).show(system, 0),
    }
}

/// Whole litres, or half gallons.
fn volume(litres: f64, system: System) -> String {
    let volume = CubicMetre::new(litres * 1e-3);
    match system {
        System::Metric => CubicMetre::new(litres.max(1.0).round() * 1e-3).show(system, 0),
        System::Us => volume.show(system, 1),
    }
}

fn queen(trouble: QueenTrouble, how: VerdictKind, with: Option<&str>, takes_queen: bool) -> String {
    let what = Tongue::BRITISH.say(&trouble.words());
    let join = with.map_or_else(|| "unite it".to_owned(), |with| format!("put it to {with}"));
    match how {
        VerdictKind::LookAgain => format!("{what}: look for eggs"),
        VerdictKind::Wait => format!("{what}: nothing in the cold; look in when it is mild"),
        VerdictKind::ShakeOut => format!("{what}: shake it out on a warm day, give no queen"),
        _ if takes_queen => format!("{what}: {join} or give a mated queen"),
        _ => format!("{what}: {join}, too late for a queen"),
    }
}

#[cfg(test)]
mod tests {
    use super::{Task, half_kilograms};
    use snowhum_units::System;

    #[test]
    fn amounts_are_what_a_keeper_can_measure() {
        assert_eq!(half_kilograms(3.26, System::Metric), "3.5 kg");
        assert_eq!(half_kilograms(2.9, System::Metric), "3 kg");
        assert_eq!(half_kilograms(2.9, System::Us), "6 lb");
        let syrup = Task::FeedSyrup { sugar_kg: 10.0, syrup_l: 12.8 };
        assert_eq!(syrup.amount(System::Metric).as_deref(), Some("13 L"));
    }
}
