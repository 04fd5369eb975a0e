//! The one verdict on a colony, and what a keeper is told first: how soon, by when, what, and what comes of it.
//!
//! Decided here alone. The plan decides from the count, the present from what the watch believes; terminal, pages, papers and
//! JSON show what was decided.

pub(crate) mod answer;
mod doubt;
pub(crate) mod facts;
mod food;
mod ground;
mod mites;
mod needs;
mod programme;
mod reasons;
pub(crate) mod still;
mod task;
mod why;
mod yard;

pub use answer::{ColonyFirst, ColonyVerdict, FirstAnswer, Later, LaterKind, Line, SOUND, Step, Unsure, Urgency};
pub use still::LastVerdict;
pub use task::Task;
pub use why::Why;

pub(crate) use facts::{Facts, Fate};

use jiff::civil::Date;
use snowhum_winter::Trajectory;

use crate::ahead::base::Base;
use crate::indoors::{self, IndoorsAnswer};
use crate::looks_to::LooksTo;
use crate::statistics::{Estimate, rounded};
use ground::Ground;
use programme::Programme;

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
        facts.iter().enumerate().map(|(at, facts)| needs::of(&ground, at, facts)).collect();
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
        let places = base.touched(&events);
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
    // Not rounded: what is told is a whole number of hives, and rounded twice it would be another.
    let found = |run: &Trajectory| {
        let fed: Vec<f64> = run.ends.iter().map(|end| facts.alive * end.fed_and_queenright(base.fed())).collect();
        let found = base.mean_by_all(&[at], &fed);
        Estimate { value: found.value.clamp(0.0, 1.0), ..found }
    };
    let lives = facts.fate == Fate::Lives;
    let stays = !programme.steps.iter().any(|step| step.task.empties_the_hive());
    let fares = (lives && stays).then(|| found(run));
    let if_done = fares.map(|found| found.value);
    if let Some(found) = fares.filter(|_| programme.steps.is_empty()) {
        programme.steps.extend(doubt::look(ground, &mut programme.held, found, run));
    }
    ColonyFirst {
        name: base.housed[at].colony.name.clone(),
        verdict: verdict(ground, &facts.fate, &programme.steps),
        if_not: lives.then(|| {
            let apart = base.apart(at).map(|apart| facts.alive * apart.fed_and_queenright);
            apart.unwrap_or_else(|| found(&base.trajectories[at]).value)
        }),
        short_kg: if lives { rounded(base.shortages[at].get(), 1) } else { 0.0 },
        why: reasons::of(ground, at, facts, (&programme, run, if_done)),
        indoors: indoors_of(ground, at).filter(|_| lives),
        near: programme.held.near,
        steps: programme.steps,
        if_done,
    }
}

/// Where the hive of the colony at a place winters indoors, if it does.
fn indoors_of(ground: &Ground<'_>, at: usize) -> Option<IndoorsAnswer> {
    let question = ground.base.question;
    indoors::of(question.apiary, &ground.base.housed[at].colony, ground.today)
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
