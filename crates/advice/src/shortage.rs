//! What is short: the stores to add so that 9 in 10 members reach spring with enough within reach.

use snowhum_units::{Kilogram, Range};
use snowhum_winter::{Housed, Schedule, Trajectory, run};

use crate::plan::Base;
use crate::statistics::quantile;

/// Food within reach that a colony should have left at the horizon.
pub const LEFT_IN_SPRING: Kilogram = Kilogram::new(3.0);
/// The members that should reach spring so.
const CONFIDENCE: f64 = 0.9;
/// Stores added to see what a colony would use if it never went hungry.
const AMPLE: Kilogram = Kilogram::new(30.0);

/// The shortage of every colony.
///
/// Where no member went hungry the base run tells what is used; the others are run again with ample stores over the
/// cluster, so that their need shows in full.
pub(crate) fn shortages(base: &Base<'_>) -> Vec<Kilogram> {
    let hungry: Vec<bool> = base.trajectories.iter().map(any_hungry).collect();
    if !hungry.contains(&true) {
        return base.trajectories.iter().map(|trajectory| short(trajectory, Kilogram::ZERO)).collect();
    }
    let fed: Vec<Housed> = base.housed.iter().map(with_ample_stores).collect();
    let ample = run(&base.yard(&fed), &Schedule::default(), base.end_only());
    let pairs = base.trajectories.iter().zip(&ample).zip(&hungry);
    pairs.map(|((own, ample), hungry)| if *hungry { short(ample, AMPLE) } else { short(own, Kilogram::ZERO) }).collect()
}

fn any_hungry(trajectory: &Trajectory) -> bool {
    trajectory.ends.iter().any(|end| end.first_hungry_day.is_some())
}

/// Nine in ten members keep enough when this much is added to what they had; `given` is what the run was given already.
fn short(trajectory: &Trajectory, given: Kilogram) -> Kilogram {
    let lacking: Vec<f64> = trajectory.ends.iter().map(|end| (LEFT_IN_SPRING - end.reachable + given).get()).collect();
    Kilogram::new(quantile(&lacking, CONFIDENCE).max(0.0))
}

fn with_ample_stores(housed: &Housed) -> Housed {
    let mut fed = housed.clone();
    let stores = &mut fed.colony.stores;
    let old = stores.total;
    let sum = |kg: Kilogram| kg + AMPLE;
    let (old_share, new_share) = (old.p50 / sum(old.p50), AMPLE / sum(old.p50));
    stores.total = Range { p10: sum(old.p10), p50: sum(old.p50), p90: sum(old.p90) };
    stores.place.touched *= old_share;
    stores.place.beside *= old_share;
    stores.place.far *= old_share;
    stores.place.above = stores.place.above * old_share + new_share;
    fed
}
