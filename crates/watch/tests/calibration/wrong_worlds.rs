//! Worlds that are not the model's: what the filter still says when it believes in the wrong one.

use crate::runs::{BATCH, Filter, Run, Trial, batch, brier, reliability};
use crate::world::{World, uncertain_colony, winters};
use snowhum_apiary::{DeadCount, Seen, Sign};
use snowhum_units::Kelvin;
use snowhum_weather::Ensemble;

/// Every hour colder by so many kelvin.
fn colder(winters: &Ensemble, by_k: f64) -> Ensemble {
    let mut colder = winters.clone();
    for path in &mut colder.paths {
        for t in &mut path.temperature {
            *t = Kelvin::new(t.get() - by_k);
        }
    }
    colder
}

/// Clusters that lose a quarter more heat than any the model knows.
fn hungrier() -> World {
    let mut world = World::of(uncertain_colony());
    for parameter in [&mut world.winter.conductance_core_air, &mut world.winter.conductance_core_mantle] {
        parameter.value *= 1.25;
        parameter.low = parameter.low.map(|low| low * 1.25);
        parameter.high = parameter.high.map(|high| high * 1.25);
    }
    world
}

/// A keeper who sees half of the dead and hears nothing.
fn misses(seen: Vec<Sign>) -> Vec<Sign> {
    let missed = |sign| match sign {
        Sign::DeadBees { count: DeadCount::Counted(n), place } => {
            Sign::DeadBees { count: DeadCount::Counted(n / 2), place }
        }
        Sign::Hum { how, .. } => Sign::Hum { heard: Seen::No, how },
        other => other,
    };
    seen.into_iter().map(missed).collect()
}

fn said(name: &str, runs: &[Run]) {
    let alive = runs.iter().filter(|run| run.alive).count();
    let base = alive as f64 / runs.len() as f64;
    let given_up = runs.iter().filter(|run| run.alive && run.believed_alive < 0.02).count();
    let said = format!(
        "{name}: {alive} of {} alive, z {:.1}, brier {:.3} (base rate {:.3}), living given up {given_up}",
        runs.len(),
        reliability(runs),
        brier(runs, |run| run.believed_alive),
        base * (1.0 - base)
    );
    assert!(alive >= 4, "too few truths live for a test: {said}");
    assert_eq!(given_up, 0, "{said}");
    // Wrong by so much, a forecast is still worth no less than half as much again as the base rate's error.
    assert!(brier(runs, |run| run.believed_alive) < 1.5 * base * (1.0 - base), "{said}");
}

#[test]
fn a_wrong_belief_of_the_world_degrades_and_gives_up_no_living_colony() {
    let believed = World::of(uncertain_colony());
    let paths = winters(BATCH, 11);
    let (cold, hungry) = (colder(&paths, 4.0), hungrier());
    let usual = Trial {
        truth: &believed,
        true_paths: &paths,
        believed: &believed,
        paths: &paths,
        filter: Filter::Right,
        noted: std::convert::identity,
    };
    for (name, trial) in [
        ("as believed", usual),
        ("colder", Trial { true_paths: &cold, ..usual }),
        ("hungrier", Trial { truth: &hungry, ..usual }),
        ("signs missed", Trial { noted: misses, ..usual }),
    ] {
        said(name, &batch(&trial, 0));
    }
}
