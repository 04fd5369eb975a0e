//! Hunger kept apart from mites: a colony that mites make small eats less, and so would look the better the more it has.

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event, MemberEnd};

use super::run::Run;
use super::shortage::{AMPLE, Shortages};
use crate::statistics::mean_of_ends;

/// Chance of starving or of a spring without food below which no hunger is looked into, and from which it is told apart whole
/// (judgement); between, in part, so that no chance jumps at a line.
const TOLD: [f64; 2] = [0.005, 0.02];

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
    let hungry = |end: &MemberEnd| end.ended.of_hunger() + end.queenright - end.fed_and_queenright(run.fed());
    let told =
        |at: usize| ((mean_of_ends(&run.trajectories[at], hungry) - TOLD[0]) / (TOLD[1] - TOLD[0])).clamp(0.0, 1.0);
    let asked: Vec<usize> = (0..run.housed.len()).filter(|at| told(*at) > 0.0).collect();
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
        // Of the same members and not brought nearer by all: with mites these differ, and more mites would move it.
        let left = |kept: &dyn Fn(&MemberEnd) -> f64, all: &dyn Fn(&MemberEnd) -> f64| {
            (mean_of_ends(hungry, kept) / mean_of_ends(given, all).max(1e-9)).min(1.0)
        };
        let fed_and_queenright = |end: &MemberEnd| end.fed_and_queenright(run.fed());
        let whole = |figure: &dyn Fn(&MemberEnd) -> f64, apart: f64| {
            let as_run = mean_of_ends(&run.trajectories[at], figure);
            as_run + told(at) * (apart - as_run)
        };
        chances[at] = Some(Apart {
            alive: whole(&MemberEnd::alive, fed.alive[at] * left(&MemberEnd::alive, &MemberEnd::alive)),
            fed_and_queenright: whole(
                &fed_and_queenright,
                fed.queenright[at] * left(&fed_and_queenright, &|end| end.queenright),
            ),
        });
    }
    chances
}
