//! Made-up winters with a known truth: the truth's rank among what the filter believes is as likely to be any.
//!
//! Method: Talts, Betancourt, Simpson, Vehtari and Gelman 2018, arXiv 1804.06788; critical values of chi-square by scipy.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "calibration/runs.rs"]
mod runs;
mod world;
#[path = "calibration/wrong_worlds.rs"]
mod wrong_worlds;
#[path = "calibration/yards.rs"]
mod yards;

use runs::{BATCH, Covered, DRAWS, Filter, Run, Trial, batch, brier, log_score, reliability};
use world::{World, uncertain_colony, winters};

const BATCHES: usize = 10;
/// Upper 1e-4 point of chi-square with 15 degrees of freedom.
const LIMIT: f64 = 44.26;

fn chi_square(ranks: &[usize]) -> f64 {
    let expected = ranks.len() as f64 / (DRAWS + 1) as f64;
    let mut bins = [0.0; DRAWS + 1];
    for rank in ranks {
        bins[*rank] += 1.0;
    }
    bins.iter().map(|count: &f64| (count - expected).powi(2) / expected).sum()
}

fn all(filter: Filter) -> Vec<Run> {
    let world = World::of(uncertain_colony());
    let paths = winters(BATCH, 11);
    let trial = Trial {
        truth: &world,
        true_paths: &paths,
        believed: &world,
        paths: &paths,
        filter,
        noted: std::convert::identity,
    };
    (0..BATCHES).flat_map(|at| batch(&trial, at)).collect()
}

/// Where half or nine tenths of the truths do not lie in half or nine tenths of belief, beyond what chance leaves one time
/// in a thousand; `above` of 2 lets any number lie in it.
fn uncovered(runs: &[Run], of: impl Fn(&Run) -> Option<Covered>, above: f64) -> Vec<String> {
    const Z: f64 = 3.29;
    let covered: Vec<Covered> = runs.iter().filter_map(of).collect();
    let count = covered.len() as f64;
    let share = |is: fn(&Covered) -> bool| covered.iter().filter(|one| is(one)).count() as f64 / count;
    let mut off = Vec::new();
    for (right, found) in [(0.5, share(|one| one.half)), (0.9, share(|one| one.nine_tenths))] {
        let chance = Z * (right * (1.0 - right) / count).sqrt();
        if !(right - chance..=(right + chance) * above).contains(&found) {
            off.push(format!("{found:.3} of {count} where {right} is right"));
        }
    }
    off
}

#[test]
fn the_truth_is_as_likely_to_lie_anywhere_in_what_is_believed() {
    let runs = all(Filter::Right);
    let of = |rank: &dyn Fn(&Run) -> Option<usize>| chi_square(&runs.iter().filter_map(rank).collect::<Vec<_>>());
    let alive = runs.iter().filter(|run| run.alive).count();
    let base = alive as f64 / runs.len() as f64;
    let chi = [of(&|run| run.stores), of(&|run| run.bees), of(&|run| run.death), of(&|run| Some(run.hazard))];
    let z = reliability(&runs);
    let (b, b0) = (brier(&runs, |run| run.believed_alive), brier(&runs, |_| base));
    let (l, l0) = (log_score(&runs, |run| run.believed_alive), log_score(&runs, |_| base));
    for (what, chi) in ["stores", "bees", "death week", "hazard"].iter().zip(chi) {
        assert!(chi < LIMIT, "{what}: {chi:.1}");
    }
    assert!(z.abs() < 3.9, "{z:.2}");
    assert!(b < b0 && l < l0, "brier {b:.4} of {b0:.4}, log {l:.4} of {l0:.4}");
    assert_eq!(uncovered(&runs, |run| run.stores_covered, 1.0), Vec::<String>::new(), "stores");
    // A week holds whole days: what lies in a range of weeks is more than its share, never less.
    assert_eq!(uncovered(&runs, |run| run.death_covered, 2.0), Vec::<String>::new(), "week of death");
    assert_eq!(uncovered(&runs, |run| run.bees_covered, 1.0), Vec::<String>::new(), "bees");
}

#[test]
fn a_filter_that_counts_every_sign_twice_fails_the_same_test() {
    let runs = all(Filter::CountsTwice);
    let of = |rank: &dyn Fn(&Run) -> Option<usize>| chi_square(&runs.iter().filter_map(rank).collect::<Vec<_>>());
    let chi = of(&|run| run.stores).max(of(&|run| run.bees)).max(of(&|run| run.death));
    let z = reliability(&runs);
    let off =
        uncovered(&runs, |run| run.stores_covered, 1.0).len() + uncovered(&runs, |run| run.bees_covered, 1.0).len();
    assert!(chi > LIMIT || z.abs() > 3.9 || off > 1, "chi {chi:.1}, z {z:.2}, {off} ranges miss");
}
