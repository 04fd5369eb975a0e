//! Everything a colony needs until spring.

use super::answer::Line;
use super::facts::{Facts, Fate};
use super::ground::Ground;
use super::programme::Programme;
use super::still::Held;
use super::task::Task;
use super::{food, mites};
use crate::answer::ActionKind;
use crate::fit::answer::VerdictKind;
use crate::queen;
use crate::queen_trouble::QueenTrouble;
use crate::site::health::foulbrood;

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
            ActionKind::Queen | ActionKind::TreatMites | ActionKind::Frames => continue,
            ActionKind::Syrup | ActionKind::ThinSyrup | ActionKind::SolidFeed => continue,
        };
        let is_worth = action.worth_hives_in_100 >= least && action.pays() && !action.too_close_to_call;
        if task != Task::ClearOpenings && !is_worth {
            continue;
        }
        programme.add(ground, task, Some(action.by));
        programme.events.extend(weighed.events.iter().cloned());
    }
}
