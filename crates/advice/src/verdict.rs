//! The one verdict on a colony, and what a keeper is told first: how soon, by when, what, and what comes of it.
//!
//! Decided here alone. The plan decides from the count, the present from what the watch believes; terminal, pages, papers and
//! JSON show what was decided.

mod doubt;
mod ground;
mod programme;
mod still;
mod task;
mod why;
mod yard;

pub use still::{LastVerdict, Line};
pub use task::{Task, half_kilograms};
pub use why::Why;
pub use yard::{Later, LaterKind};

pub(crate) use programme::{Facts, Fate};
pub(crate) use still::Estimate;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::System;
use snowhum_winter::Trajectory;

use crate::LooksTo;
use crate::actions::touched;
use crate::indoors::{self, IndoorsAnswer};
use crate::plan::Base;
use crate::statistics::{mean_and_error, rounded};
use crate::words::{day, short_day};
use ground::Ground;
use programme::Programme;

/// Chance of being alive, fed and queenright in spring from which a colony is called sound (judgement): of colonies counted, fed
/// and treated real winters take 6 to 18 in 100, and nothing helps against that.
pub const SOUND: f64 = 0.8;

/// How soon a colony needs its keeper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
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
    pub fn words(&self) -> String {
        match (self.word, self.by) {
            (Urgency::Today, _) => "today".to_owned(),
            (Urgency::ThisWeek, _) => "this week".to_owned(),
            (Urgency::By, Some(by)) => format!("by {}", short_day(by)),
            (Urgency::LookInside, _) | (Urgency::By, None) => "look inside".to_owned(),
            (Urgency::LeaveAlone, _) => "leave alone".to_owned(),
            (Urgency::Lost, _) => "lost".to_owned(),
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

impl Step {
    /// In words, its amount first and its last day after.
    #[must_use]
    pub fn words(&self, system: System) -> String {
        let amount = self.task.amount(system).map_or_else(String::new, |amount| format!("{amount}: "));
        let by = self.by.map_or_else(String::new, |by| format!(", by {}", day(by)));
        format!("{amount}{}{by}", self.task.words())
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
    pub fn says(&self, system: System) -> String {
        let why: Vec<String> = self.why.iter().map(Why::words).collect();
        match self.steps.first() {
            Some(step) => step.words(system),
            None if why.is_empty() => "nothing is due".to_owned(),
            None if self.if_not.is_none() => why.join(", "),
            None => format!("nothing is due; {}", why.join(", ")),
        }
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

/// Decides for every colony of a run, from what is known of each.
pub(crate) fn first(base: &Base<'_>, today: Date, looks_to: LooksTo, facts: &[Facts<'_>]) -> FirstAnswer {
    let mut answer = FirstAnswer {
        as_of: today,
        spring: base.question.spring,
        looks_to,
        seed: base.question.seed,
        colonies: Vec::new(),
        later: Vec::new(),
        unsure: Unsure::default(),
    };
    let Some(ground) = Ground::of(base, today) else { return answer };
    let programmes: Vec<Programme> =
        facts.iter().enumerate().map(|(at, facts)| programme::of(&ground, at, facts)).collect();
    let done = Done::of(base, &programmes);
    answer.colonies = facts
        .iter()
        .zip(programmes)
        .enumerate()
        .map(|(at, (facts, programme))| colony(&ground, at, facts, programme, &done))
        .collect();
    answer.later = yard::later(&ground);
    answer.unsure = yard::unsure(&ground, facts);
    answer
}

/// The winter with everything done that is to be done, beside the winter as it is.
struct Done {
    /// By colony; none where nothing touches it.
    trajectories: Vec<Option<Trajectory>>,
}

impl Done {
    fn of(base: &Base<'_>, programmes: &[Programme]) -> Self {
        let events: Vec<_> = programmes.iter().flat_map(|programme| programme.events.iter().cloned()).collect();
        let mut trajectories = vec![None; base.housed.len()];
        let places = touched(base, &events);
        for (at, run) in places.iter().zip(base.rerun(&places, &events)) {
            trajectories[*at] = Some(run);
        }
        Self { trajectories }
    }

    /// What becomes of a colony; as it is where nothing is done to it.
    fn run<'a>(&'a self, base: &'a Base<'_>, at: usize, programme: &Programme) -> &'a Trajectory {
        match &self.trajectories[at] {
            Some(done) if !programme.events.is_empty() => done,
            _ => &base.trajectories[at],
        }
    }
}

fn colony(ground: &Ground<'_>, at: usize, facts: &Facts<'_>, mut programme: Programme, done: &Done) -> ColonyFirst {
    let base = ground.base;
    let run = done.run(base, at, &programme);
    let chance = |run: &Trajectory| {
        let fed: Vec<f64> = run.ends.iter().map(|end| facts.alive * end.fed_and_queenright(base.fed())).collect();
        rounded(mean_and_error(&fed).0, 3)
    };
    let lives = facts.fate == Fate::Lives;
    let stays = !programme.steps.iter().any(|step| step.task.empties_the_hive());
    let if_done = (lives && stays).then(|| chance(run));
    if let Some(chance) = if_done.filter(|_| programme.steps.is_empty()) {
        let fed: Vec<f64> = run.ends.iter().map(|end| facts.alive * end.fed_and_queenright(base.fed())).collect();
        let found = Estimate { value: chance, ..Estimate::mean(&fed) };
        programme.steps.extend(doubt::look(ground, &mut programme.held, found, run));
    }
    ColonyFirst {
        name: base.housed[at].colony.name.clone(),
        verdict: verdict(ground, &facts.fate, &programme.steps),
        if_not: lives.then(|| {
            let apart = base.apart(at).map(|apart| rounded(facts.alive * apart.fed_and_queenright, 3));
            apart.unwrap_or_else(|| chance(&base.trajectories[at]))
        }),
        short_kg: if lives { rounded(base.shortages[at].get(), 1) } else { 0.0 },
        why: why::of(ground, at, facts, (&programme, run, if_done)),
        indoors: indoors_of(ground, at).filter(|_| lives),
        near: programme.held.near,
        steps: programme.steps,
        if_done,
    }
}

/// Where the hive of the colony at a place winters indoors, if it does.
fn indoors_of(ground: &Ground<'_>, at: usize) -> Option<IndoorsAnswer> {
    let question = ground.base.question;
    indoors::of(question.apiary, &ground.base.housed[at].colony, ground.today, question.system)
}

/// The word of a colony with its steps in order.
fn verdict(ground: &Ground<'_>, fate: &Fate, steps: &[Step]) -> ColonyVerdict {
    let first = steps.first().map(|step| step.task.clone());
    // A hive that may be dead is listened to on the next walk, whatever else comes later.
    let listens = steps.first().filter(|step| step.task == Task::Listen);
    let by = listens.map_or_else(|| steps.iter().filter_map(|step| step.by).min(), |step| step.by);
    let word = match (fate, by) {
        (Fate::SeenDead | Fate::Gone(_), _) => Urgency::Lost,
        (_, by) if first.is_some() => ground.urgency(by),
        _ => Urgency::LeaveAlone,
    };
    ColonyVerdict { word, by, first }
}
