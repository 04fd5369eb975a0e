//! What is short: the stores to add so that 9 in 10 members reach spring with enough within reach.

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event, MemberEnd, Trajectory};

use super::run::{A_PART, Run};
use crate::statistics::{Estimate, quantile, weighted_range};

/// Food within reach that a colony should have left at the horizon (judgement: a month of early brood rearing; what
/// counts as fed at all is the parameter `fed_in_spring`).
pub const LEFT_IN_SPRING: Kilogram = Kilogram::new(3.0);
/// Least stores worth feeding for, or giving (judgement: less is lost in the error of a weighing).
pub const WORTH_FEEDING: Kilogram = Kilogram::new(0.5);
/// The members that should reach spring so.
const CONFIDENCE: f64 = 0.9;
/// Stores no colony needs more than, kg.
pub(crate) const AMPLE: f64 = 40.0;
/// Runs that close in on the amount.
const ROUNDS: usize = 3;

/// What each colony is short of, and how it fares once it has that.
pub(crate) struct Shortages {
    /// Stores to take over the cluster today.
    pub(crate) amounts: Vec<Kilogram>,
    /// What half of its members that live eat by spring.
    pub(crate) eaten: Vec<Kilogram>,
    /// Chance of being alive with a queen in spring: hunger apart, so that mites and size show as they are.
    pub(crate) queenright: Vec<f64>,
    /// Chance of being alive then at all, likewise.
    pub(crate) alive: Vec<f64>,
}

/// The shortage of every colony, in kilograms of stores taken over the cluster today, and what half of its members that live
/// eat by spring once they have it.
///
/// What is eaten depends on what is there (hungry colonies rear less and die earlier), so the amount is sought by giving
/// it, from ample stores downwards: each round takes off what the worst tenth has over. Of a kilogram less to begin
/// with at most a kilogram is missing at the end, so every amount tried is enough, and the last is the nearest.
pub(crate) fn shortages(run: &Run<'_>) -> Shortages {
    let lacks: Vec<bool> = run.trajectories.iter().map(|trajectory| surplus(trajectory) < 0.0).collect();
    let mut amounts: Vec<f64> = lacks.iter().map(|lacks| if *lacks { AMPLE } else { 0.0 }).collect();
    let mut eaten: Vec<Kilogram> = run.trajectories.iter().map(eaten_by_half).collect();
    let mut queenright = by_colony(run, queenright_in_spring);
    let mut alive = by_colony(run, alive_in_spring);
    if lacks.contains(&true) {
        for round in 0..ROUNDS {
            // The first only brings the amount near: a part of the members suffices. An amount too small because of them would stay
            // so: who is hungry eats less, and what is missing at the end is less than what was.
            let members = if round == 0 { run.question.members.min(A_PART) } else { run.question.members };
            for (at, fed) in given(run, members, &lacks, &amounts) {
                if amounts[at] > 0.0 {
                    amounts[at] = (amounts[at] - surplus(&fed)).clamp(0.0, AMPLE);
                }
                eaten[at] = eaten_by_half(&fed);
                (queenright[at], alive[at]) = (queenright_in_spring(run, at, &fed), alive_in_spring(run, at, &fed));
            }
        }
    }
    Shortages { amounts: amounts.into_iter().map(Kilogram::new).collect(), eaten, queenright, alive }
}

fn by_colony(run: &Run<'_>, of: impl Fn(&Run<'_>, usize, &Trajectory) -> f64) -> Vec<f64> {
    run.trajectories.iter().enumerate().map(|(at, trajectory)| of(run, at, trajectory)).collect()
}

/// Chance of being alive with a queen at the end, of colony `at` in a run again.
fn queenright_in_spring(run: &Run<'_>, at: usize, again: &Trajectory) -> f64 {
    run.chance(at, again, |end| end.queenright)
}

/// Chance of being alive at the end, likewise.
pub(crate) fn alive_in_spring(run: &Run<'_>, at: usize, again: &Trajectory) -> f64 {
    run.chance(at, again, MemberEnd::alive)
}

/// What half of the members that live have eaten at the end.
fn eaten_by_half(trajectory: &Trajectory) -> Kilogram {
    let eaten: Vec<(f64, f64)> = trajectory.ends.iter().map(|end| (end.used.get(), end.alive())).collect();
    Kilogram::new(weighted_range(&eaten).map_or(0.0, |range| range.p50))
}

/// What nine in ten have within reach under what they should, and how sure the run is of it.
pub(super) fn lack(trajectory: &Trajectory) -> Estimate {
    let under: Vec<f64> = trajectory.ends.iter().map(|end| (LEFT_IN_SPRING - end.reachable).get()).collect();
    Estimate::by_parts(&under, |part| quantile(part, CONFIDENCE))
}

/// What the worst tenth has within reach over what it should.
pub(super) fn surplus(trajectory: &Trajectory) -> f64 {
    let over: Vec<f64> = trajectory.ends.iter().map(|end| (end.reachable - LEFT_IN_SPRING).get()).collect();
    quantile(&over, 1.0 - CONFIDENCE)
}

/// The winter when each colony is given its amount today, of those that lack something and what they touch.
fn given(run: &Run<'_>, members: usize, lacks: &[bool], amounts: &[f64]) -> Vec<(usize, Trajectory)> {
    let feed = |(at, kg): (usize, &f64)| {
        (*kg > 0.0).then_some(Event { day: 0, colony: at, action: Action::Syrup { stores: Kilogram::new(*kg) } })
    };
    let events: Vec<Event> = amounts.iter().enumerate().filter_map(feed).collect();
    let places = run.and_warmed((0..lacks.len()).filter(|at| lacks[*at]));
    let runs = run.rerun_of(members, &places, &events);
    places.into_iter().zip(runs).collect()
}
