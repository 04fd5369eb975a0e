//! Everything a colony needs until spring, together, each with its last day: what is first of it is the verdict.

mod food;
pub(super) mod mites;

use snowhum_winter::Event;

use super::ground::Ground;
use super::still::{Estimate, Held, Line};
use super::task::Task;
use super::{ColonyVerdict, Step};
use crate::actions::Weighed;
use crate::answer::ActionKind;
use crate::fit::{Verdict, VerdictKind, foulbrood};
use crate::queen::{self, QueenTrouble};

/// What has become of a colony.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Fate {
    /// It lives, for all that is known.
    Lives,
    /// Seen dead, and nobody has looked for the cause.
    SeenDead,
    /// Dead, with signs of foulbrood.
    Foulbrood,
    /// Put to another.
    UnitedInto(String),
    /// Dead and examined, sold, or taken: in words.
    Gone(String),
}

/// What is known of a colony, whatever it was learnt from.
pub(crate) struct Facts<'a> {
    pub(crate) fate: Fate,
    /// Chance of being alive today.
    pub(crate) alive: f64,
    /// Chance of being alive with a queen.
    pub(crate) alive_queenright: f64,
    /// Why its bees cannot stay shut in, if they are.
    pub(crate) is_shut: bool,
    /// Whether a sign that no sum holds asks for a look.
    pub(crate) beside: bool,
    /// Whether food was weighed and bees counted.
    pub(crate) weighed: &'a [Weighed],
    /// Whether it is fit for winter; none once that is no question.
    pub(crate) fit: Option<&'a Verdict>,
    /// What was decided of it last, where that is kept.
    pub(crate) last: Option<&'a ColonyVerdict>,
}

impl Facts<'_> {
    pub(super) fn queen_in_doubt(&self, ground: &Ground<'_>) -> bool {
        self.alive_queenright < ground.thresholds.queen_sound.value * self.alive
    }

    /// Notes where its life or its queen is so near its line that another draw of members may tell it otherwise.
    fn note_doubts(&self, ground: &Ground<'_>, held: &mut Held) {
        let members = ground.base.question.members.max(1) as f64;
        let of = |chance: f64| Estimate { value: chance, error: (chance * (1.0 - chance) / members).max(0.0).sqrt() };
        held.is_over(Line::Alive, of(self.alive), ground.thresholds.alive_sound.value, None);
        if self.alive > 0.0 {
            held.is_over(
                Line::Queen,
                of(self.alive_queenright / self.alive),
                ground.thresholds.queen_sound.value,
                None,
            );
        }
    }
}

/// Steps in order, and what they are in the model.
#[derive(Default)]
pub(crate) struct Programme {
    pub(super) steps: Vec<Step>,
    pub(super) events: Vec<Event>,
    pub(super) held: Held,
}

impl Programme {
    fn add(&mut self, ground: &Ground<'_>, task: Task, by: Option<jiff::civil::Date>) {
        let by = by.map(|by| by.max(ground.today));
        self.steps.push(Step { task, word: ground.urgency(by), from: ground.today, by });
    }

    /// By last day, then by weight. Mites that nobody counted take the last day of what comes before them, so that hunger never
    /// hides them; treated in the time without brood they do so too, once that is here, but for what is due today. A hive that
    /// may be dead is listened to before anything is done to it: on the next walk, or by the day of what is due within a week.
    fn sorted(mut self, ground: &Ground<'_>) -> Self {
        let earliest = self.steps.iter().filter_map(|step| step.by).min();
        let today = ground.within(ground.thresholds.verdict_today.value);
        let next = self.steps.iter().filter_map(|step| step.by).filter(|by| *by > today).min();
        for step in &mut self.steps {
            let before = match step.task {
                Task::CountMites { again: false } => earliest,
                Task::TreatBroodless { look_first: false, counted: false } => next.map(|by| by.max(step.from)),
                Task::Listen => earliest.filter(|by| *by <= ground.week()),
                _ => None,
            };
            if before.is_some() {
                step.by = [step.by, before].into_iter().flatten().min();
                step.word = ground.urgency(step.by);
            }
        }
        self.steps.sort_by_key(|step| (step.task != Task::Listen, step.by.is_none(), step.by, step.task.rank()));
        self.held.in_order(&mut self.steps, ground.today, ground.week());
        self
    }
}

/// What the colony at a place needs.
pub(super) fn of(ground: &Ground<'_>, at: usize, facts: &Facts<'_>) -> Programme {
    let held = Held { last: facts.last.cloned(), near: Vec::new() };
    let mut programme = Programme { held, ..Programme::default() };
    match &facts.fate {
        Fate::SeenDead => programme.add(ground, Task::CloseDead, Some(ground.week())),
        Fate::Foulbrood => programme.add(ground, Task::TellInspector, Some(ground.today)),
        Fate::UnitedInto(_) | Fate::Gone(_) => {}
        Fate::Lives => living(&mut programme, ground, at, facts),
    }
    programme.sorted(ground)
}

/// Months in which bees cluster, as the north counts them.
const CLUSTERED: [i8; 6] = [11, 12, 1, 2, 3, 4];

fn living(programme: &mut Programme, ground: &Ground<'_>, at: usize, facts: &Facts<'_>) {
    facts.note_doubts(ground, &mut programme.held);
    let colony = &ground.base.housed[at].colony;
    if foulbrood(colony) {
        programme.add(ground, Task::TellInspector, Some(ground.today));
        return;
    }
    if facts.is_shut {
        programme.add(ground, Task::LetOut, Some(ground.today));
    }
    actions(programme, ground, facts, &[ActionKind::ClearOpenings]);
    if facts.alive < ground.thresholds.alive_sound.value {
        // Bees that fly are looked at, those that cluster are heard.
        let task = if CLUSTERED.contains(&ground.month) { Task::Listen } else { Task::LookIn };
        programme.add(ground, task, None);
    }
    if !of_its_own(programme, ground, at, facts) {
        return;
    }
    mites::add(programme, ground, at, facts);
    food::add(programme, ground, at);
    actions(programme, ground, facts, &[ActionKind::BringNear, ActionKind::Lid, ActionKind::Wrap, ActionKind::Tray]);
    let looks = programme.steps.iter().any(|step| step.task == Task::LookIn);
    if !looks && (facts.queen_in_doubt(ground) || facts.beside) {
        programme.add(ground, Task::LookIn, None);
    }
}

/// Its queen and its company; false where it does not winter in its own hive, so that nothing is fed or treated in it.
fn of_its_own(programme: &mut Programme, ground: &Ground<'_>, at: usize, facts: &Facts<'_>) -> bool {
    let (base, dates) = (ground.base, &ground.dates);
    let colony = &base.housed[at].colony;
    let with = facts.fit.and_then(|fit| fit.with.clone());
    if let Some(advice) = QueenTrouble::of(colony).and_then(|_| queen::advice(base, at)) {
        let waits = advice.kind == VerdictKind::Wait;
        let task = Task::Queen { trouble: advice.trouble, how: advice.kind, with, takes_queen: advice.takes_queen };
        programme.add(ground, task, (!waits).then_some(advice.by));
        return advice.kind == VerdictKind::LookAgain;
    }
    if ground.health.perhaps_queenless(colony) {
        programme.add(ground, Task::LookForEggs, Some(ground.week()));
    }
    if facts.fit.is_some_and(|fit| fit.near) {
        programme.held.note(Line::Company);
    }
    match (facts.fit.map(|fit| fit.kind), with) {
        (Some(VerdictKind::Unite), Some(with)) => {
            programme.add(ground, Task::Unite { with }, Some(dates.unite_by.p50));
            return false;
        }
        (Some(VerdictKind::Boost), Some(from)) => {
            programme.add(ground, Task::GiveBrood { from }, Some(dates.boost_by.p50));
        }
        (Some(VerdictKind::Company), Some(with)) => {
            programme.add(ground, Task::SetBeside { with }, Some(dates.cluster.p50));
        }
        _ => {}
    }
    true
}

/// What was weighed and found worth doing, of some kinds.
fn actions(programme: &mut Programme, ground: &Ground<'_>, facts: &Facts<'_>, kinds: &[ActionKind]) {
    let least = ground.thresholds.worth_acting.value;
    for weighed in facts.weighed.iter().filter(|weighed| kinds.contains(&weighed.answer.kind)) {
        let action = &weighed.answer;
        let task = match action.kind {
            ActionKind::ClearOpenings => Task::ClearOpenings,
            ActionKind::BringNear => Task::BringNear,
            ActionKind::Lid => Task::InsulateLid,
            ActionKind::Wrap => Task::Wrap,
            ActionKind::Tray => Task::CloseMesh,
            _ => continue,
        };
        let is_worth = action.worth_hives_in_100 >= least && action.pays() && !action.too_close_to_call;
        if task != Task::ClearOpenings && !is_worth {
            continue;
        }
        programme.add(ground, task, Some(action.by));
        programme.events.extend(weighed.events.iter().cloned());
    }
}
