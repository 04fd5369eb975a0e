//! Why a colony stands as it does.

use snowhum_winter::{Cause, Trajectory};

use super::answer::SOUND;
use super::facts::{Facts, Fate};
use super::ground::Ground;
use super::programme::Programme;
use super::task::Task;
use super::why::Why;
use super::{mites, yard};
use crate::actions::situation::Situation;
use crate::ahead::shortage::WORTH_FEEDING;
use crate::statistics::mean_ends;

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
    if let Some(cause) = mean_ends(run)
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
