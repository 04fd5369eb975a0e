//! The one verdict on a colony, and what a keeper is told first, as they are answered.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, verdict as say};

use super::task::Task;
use super::why::Why;
use crate::indoors::IndoorsAnswer;
use crate::looks_to::LooksTo;

/// Chance of being alive, fed and queenright in spring from which a colony is called sound (judgement): of colonies counted, fed
/// and treated real winters take 6 to 18 in 100, and nothing helps against that.
pub const SOUND: f64 = 0.8;

/// How soon a colony needs its keeper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Urgency {
    /// Today, or tomorrow at the latest.
    Today,
    /// Within a week.
    ThisWeek,
    /// By a day.
    By,
    /// Nothing is due, and what is not known is seen by a look alone: on the first day that allows one.
    LookInside,
    /// Nothing is due and nothing helps that is known.
    LeaveAlone,
    /// Dead, or gone from the yard.
    Lost,
}

/// The one verdict on a colony.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyVerdict {
    /// How soon.
    pub word: Urgency,
    /// Last day of what is first; none where nothing has one.
    pub by: Option<Date>,
    /// What is first; none where nothing is to be done.
    pub first: Option<Task>,
}

impl ColonyVerdict {
    /// Where nothing could be decided: no word of calm.
    pub(crate) const UNDECIDED: Self = Self { word: Urgency::LookInside, by: None, first: None };

    /// The word as it is written, with its day where it has one.
    #[must_use]
    pub fn words(&self) -> Message {
        match (self.word, self.by) {
            (Urgency::Today, _) => say::today(),
            (Urgency::ThisWeek, _) => say::this_week(),
            (Urgency::By, Some(by)) => say::by(by),
            (Urgency::LookInside, _) | (Urgency::By, None) => say::look_inside(),
            (Urgency::LeaveAlone, _) => say::leave_alone(),
            (Urgency::Lost, _) => say::lost(),
        }
    }

    /// Whether another says the same word and the same first thing, whatever its day and amount.
    #[must_use]
    pub fn is_like(&self, other: &Self) -> bool {
        self.word == other.word
            && match (&self.first, &other.first) {
                (Some(own), Some(other)) => own.is_like(other),
                (own, other) => own.is_none() && other.is_none(),
            }
    }

    /// Its place among those of a yard: who is due first stands first.
    #[must_use]
    pub fn place(&self) -> impl Ord + use<> {
        (!self.is_urgent(), self.word, self.by)
    }

    /// Whether it needs the keeper within a week; a dead hive does until it is closed and looked into.
    #[must_use]
    pub fn is_urgent(&self) -> bool {
        match self.word {
            Urgency::Today | Urgency::ThisWeek => true,
            Urgency::Lost => self.first.is_some(),
            Urgency::By | Urgency::LookInside | Urgency::LeaveAlone => false,
        }
    }
}

/// Something to be done for a colony.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Step {
    /// What.
    pub task: Task,
    /// How soon.
    pub word: Urgency,
    /// First day.
    pub from: Date,
    /// Last day; none where it waits for a day that allows it.
    pub by: Option<Date>,
}

/// One colony as it is told first.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonyFirst {
    /// The keeper's name.
    pub name: String,
    /// The one verdict.
    pub verdict: ColonyVerdict,
    /// All that is to be done, the first first.
    pub steps: Vec<Step>,
    /// Chance of being alive, fed and queenright at the end of what is looked at, if all of that is done; none where its bees
    /// go to another hive or it is dead.
    pub if_done: Option<f64>,
    /// The same if nothing is done; none where it is dead.
    pub if_not: Option<f64>,
    /// Stores that are short.
    pub short_kg: f64,
    /// Why, the weightiest first.
    pub why: Vec<Why>,
    /// The lines it stands so near that another seed may say another thing.
    #[serde(default)]
    pub near: Vec<Line>,
    /// Where its hive stands, or is to stand, that winters indoors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub indoors: Option<IndoorsAnswer>,
}

impl ColonyFirst {
    /// What is to be done after what is first.
    pub fn then(&self) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(|step| Some(&step.task) != self.verdict.first.as_ref())
    }
}

impl Step {
    /// In words, its amount first and its last day after.
    #[must_use]
    pub fn words(&self) -> Message {
        match self.by {
            Some(by) => say::step_by(by, self.task.measured()),
            None => self.task.measured(),
        }
    }
}

impl ColonyFirst {
    /// Whether its hive stands indoors on the day asked about.
    #[must_use]
    pub fn is_indoors(&self) -> bool {
        self.indoors.as_ref().is_some_and(|indoors| indoors.is_in)
    }

    /// What is first, and if nothing is, what is known against it; no capital, no stop.
    #[must_use]
    pub fn says(&self) -> Message {
        match self.steps.first() {
            Some(step) => step.words(),
            None if self.why.is_empty() => say::nothing_due(),
            None if self.if_not.is_none() => self.reasons(),
            None => say::nothing_due_but(self.why.iter().map(Why::words).collect()),
        }
    }

    /// Why it stands as it does, in a line.
    #[must_use]
    pub fn reasons(&self) -> Message {
        say::why(self.why.iter().map(Why::words).collect())
    }
}

/// What nobody looked at, and how many colonies it is so of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Unsure {
    /// No mites were counted since high summer, where that still matters.
    pub mites: usize,
    /// Food was lifted by hand or told, and not weighed.
    pub food: usize,
    /// Whether flowers may still give nectar, of which none is reckoned.
    pub nectar: bool,
}

/// What a keeper is told first.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FirstAnswer {
    /// The day it is of.
    pub as_of: Date,
    /// First flow of the site plus 14 days.
    pub spring: Date,
    /// How far is looked.
    pub looks_to: LooksTo,
    /// Seed of all random numbers.
    pub seed: u64,
    /// Every colony in the yard's order.
    pub colonies: Vec<ColonyFirst>,
    /// What comes later for the whole yard, the earliest first.
    pub later: Vec<Later>,
    /// What nobody looked at.
    pub unsure: Unsure,
}

impl FirstAnswer {
    /// Whether nothing is to be done for the colony at a place but to look: no action helps it, nor all of them together.
    pub(crate) fn only_looks(&self, at: usize) -> bool {
        self.colonies.get(at).is_none_or(|colony| colony.steps.iter().all(|step| step.task.only_looks()))
    }

    /// The verdict on the colony at a place.
    #[must_use]
    pub fn verdict(&self, at: usize) -> ColonyVerdict {
        self.colonies.get(at).map_or(ColonyVerdict::UNDECIDED, |colony| colony.verdict.clone())
    }
}

/// A line that a verdict stands near.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Line {
    /// Whether it may be dead.
    Alive,
    /// Whether its queen is in doubt.
    Queen,
    /// Whether food is short.
    Food,
    /// Whether it comes to spring well enough to be left alone.
    Spring,
    /// Whether it winters in its own hive.
    Company,
    /// Which of two days comes first, or whether one is within the week.
    Day,
}

/// Something that comes later.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LaterKind {
    /// Mites are counted a second time.
    CountMites,
    /// Mouse guards go on; excluders, empty supers and feeders come off.
    Guards,
    /// The time without brood, in which a treatment reaches every mite.
    Broodless,
    /// Every hive is weighed or lifted.
    Weigh,
    /// The first look through.
    LookThrough,
}

/// It and its day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Later {
    /// What.
    pub what: LaterKind,
    /// About when.
    pub on: Date,
}

impl Later {
    /// In a few words, the day first.
    #[must_use]
    pub fn words(&self) -> Message {
        match self.what {
            LaterKind::CountMites => say::later_count_mites(self.on),
            LaterKind::Guards => say::later_guards(self.on),
            LaterKind::Broodless => say::later_broodless(self.on),
            LaterKind::Weigh => say::later_weigh(self.on),
            LaterKind::LookThrough => say::later_look_through(self.on),
        }
    }
}
