//! Hunger kept apart from mites: a colony that mites make small eats less, and so would look the better the more it has.

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event};

use super::run::Run;
use super::shortage::{AMPLE, Shortages, WORTH_FEEDING, alive_in_spring};
use crate::statistics::mean_of_ends;

/// Chance of starving below which no hunger is looked into (judgement).
const RARE: f64 = 0.01;

/// A hungry colony's chances as it stands: those it has once fed, times the share that hunger leaves of the same colony had it
/// no mites.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Apart {
    /// Alive in spring.
    pub(crate) alive: f64,
    /// Alive, fed and queenright.
    pub(crate) fed_and_queenright: f64,
}

/// By colony; none where food is not short.
pub(crate) fn apart(run: &Run<'_>, fed: &Shortages) -> Vec<Option<Apart>> {
    // What mites left too small to be short may still be hungry.
    let starved =
        |at: usize| mean_of_ends(&run.trajectories[at], |end| end.ended.starved + end.ended.isolation_starvation);
    let is_asked = |at: &usize| fed.amounts[*at] >= WORTH_FEEDING || starved(*at) >= RARE;
    let asked: Vec<usize> = (0..run.housed.len()).filter(is_asked).collect();
    let mut chances = vec![None; run.housed.len()];
    if asked.is_empty() {
        return chances;
    }
    let event = |colony: usize, action: Action| Event { day: 0, colony, action };
    let clean: Vec<Event> = asked.iter().map(|at| event(*at, Action::HadNoMites)).collect();
    let food = |at: &usize| event(*at, Action::Syrup { stores: Kilogram::new(AMPLE) });
    let given: Vec<Event> = clean.iter().cloned().chain(asked.iter().map(food)).collect();
    let places = run.touched(&clean);
    let (hungry, given) = (run.rerun(&places, &clean), run.rerun(&places, &given));
    for ((at, hungry), given) in places.into_iter().zip(&hungry).zip(&given).filter(|((at, _), _)| asked.contains(at)) {
        let left = |kept: f64, all: f64| (kept / all.max(1e-9)).min(1.0);
        let kept = mean_of_ends(hungry, |end| end.fed_and_queenright(run.fed()));
        let queenright = mean_of_ends(given, |end| end.queenright);
        chances[at] = Some(Apart {
            alive: fed.alive[at] * left(alive_in_spring(hungry), alive_in_spring(given)),
            fed_and_queenright: fed.queenright[at] * left(kept, queenright),
        });
    }
    chances
}
