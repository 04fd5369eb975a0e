//! What is short: the stores to add so that 9 in 10 members reach spring with enough within reach.

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event, Schedule, Trajectory, run};

use crate::plan::Base;
use crate::statistics::quantile;

/// Food within reach that a colony should have left at the horizon (judgement: a month of early brood rearing; what
/// counts as fed at all is the parameter `fed_in_spring`).
pub const LEFT_IN_SPRING: Kilogram = Kilogram::new(3.0);
/// The members that should reach spring so.
const CONFIDENCE: f64 = 0.9;
/// Stores no colony needs more than.
const AMPLE: f64 = 40.0;
/// Runs that close in on the amount, after the one with ample stores.
const ROUNDS: usize = 2;

/// Bounds between which a shortage lies, with what the worst tenth has over [`LEFT_IN_SPRING`] at each.
#[derive(Clone, Copy)]
struct Bracket {
    short: (f64, f64),
    enough: (f64, f64),
}

/// The shortage of every colony, in kilograms of stores taken over the cluster today.
///
/// What is eaten depends on what is there (hungry colonies rear less and die earlier), so the amount is sought by giving
/// it: each round gives every colony that lacks the amount where a straight line between the bounds says enough.
pub(crate) fn shortages(base: &Base<'_>) -> Vec<Kilogram> {
    let before: Vec<f64> = base.trajectories.iter().map(surplus).collect();
    let lacking: Vec<usize> = (0..before.len()).filter(|&at| before[at] < 0.0).collect();
    if lacking.is_empty() {
        return vec![Kilogram::ZERO; before.len()];
    }
    let with_ample = given(base, &lacking, |_| AMPLE);
    let mut brackets: Vec<Bracket> = before
        .iter()
        .zip(&with_ample)
        .map(|(short, enough)| Bracket { short: (0.0, *short), enough: (AMPLE, *enough) })
        .collect();
    for _ in 0..ROUNDS {
        let surpluses = given(base, &lacking, |at| brackets[at].meeting());
        for &at in &lacking {
            brackets[at].close(surpluses[at]);
        }
    }
    let amount = |at: usize| if before[at] < 0.0 { brackets[at].meeting() } else { 0.0 };
    (0..before.len()).map(|at| Kilogram::new(amount(at))).collect()
}

impl Bracket {
    /// Where a straight line between the bounds meets zero.
    fn meeting(&self) -> f64 {
        let ((a, fa), (b, fb)) = (self.short, self.enough);
        if fb <= 0.0 { b } else { a + (b - a) * -fa / (fb - fa).max(1e-9) }
    }

    fn close(&mut self, surplus: f64) {
        let tried = self.meeting();
        if surplus < 0.0 {
            self.short = (tried, surplus);
        } else {
            self.enough = (tried, surplus);
        }
    }
}

/// What the worst tenth has within reach over what it should.
fn surplus(trajectory: &Trajectory) -> f64 {
    let over: Vec<f64> = trajectory.ends.iter().map(|end| (end.reachable - LEFT_IN_SPRING).get()).collect();
    quantile(&over, 1.0 - CONFIDENCE)
}

/// Surpluses when each of `colonies` is given its amount today.
fn given(base: &Base<'_>, colonies: &[usize], amount: impl Fn(usize) -> f64) -> Vec<f64> {
    let feed = |&at: &usize| Event { day: 0, colony: at, action: Action::Syrup { stores: Kilogram::new(amount(at)) } };
    let schedule = Schedule::new(colonies.iter().map(feed).collect());
    run(&base.yard(&base.housed), &schedule, base.end_only()).iter().map(surplus).collect()
}
