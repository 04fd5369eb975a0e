//! A colony that does as the model says is called "as expected".

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[expect(dead_code, reason = "one world serves several tests, each by a part of it")]
mod world;

use rayon::prelude::*;
use snowhum_apiary::{DeadCount, DeadPlace, Sign};
use snowhum_testkit::colony;
use snowhum_units::Against;
use snowhum_watch::{Estimate, Sizes, Twin};
use world::{DAYS, World, environment, known, winters};

const TWINS: usize = 32;

/// How the counts of living twins, every so many days at one place, stood to what was usual.
fn looks(place: DeadPlace, every: usize) -> Vec<Against> {
    let world = World::of(colony(12_000.0, 14.0));
    let paths = winters(TWINS, 23);
    let outside = environment(&paths);
    let yard = world.yard(&outside);
    let truth = world.scene(&yard, 0, 4_711);
    let mut twin = Twin::begin(&truth, 0, TWINS).unwrap();
    let own: Vec<_> = (0..TWINS).map(|m| known(&paths, m)).collect();
    let template = [Sign::DeadBees { count: DeadCount::Counted(0), place }];
    let hours: Vec<usize> = (every..DAYS).step_by(every).map(|day| 24 * day + 12).collect();
    let mut seen = vec![Vec::new(); TWINS];
    for &hour in &hours {
        twin.advance(&truth, hour);
        for m in 0..TWINS {
            let own_yard = world.yard(&own[m]);
            let day = world.scene(&own_yard, 24 * DAYS, 0).conditions(0, hour, &Default::default());
            let lives = twin.state(m).ended.is_none();
            let noted = twin.seen(m, &truth, &day, &template);
            twin.looked(m, &noted);
            seen[m].push((lives, noted));
        }
    }
    let of_twin = |m: usize| {
        let yard = world.yard(&own[m]);
        let scene = world.scene(&yard, 24 * DAYS, 31 + m as u64);
        let mut estimate = Estimate::begin(&scene, 0, Sizes { alive: 300, dead: 120 }).unwrap();
        let mut stood = Vec::new();
        for (&hour, (lives, noted)) in hours.iter().zip(&seen[m]) {
            estimate.advance(&scene, None, hour);
            let day = scene.conditions(0, hour, &Default::default());
            if let (true, [Sign::DeadBees { count, .. }]) = (*lives, noted.as_slice()) {
                let (usual, _) = estimate.dead_bees_usual(&scene, &day, place).unwrap();
                let (least, most) = count.bounds();
                stood.push(usual.against(least, most));
            }
            estimate.look(&scene, &day, noted);
        }
        stood
    };
    (0..TWINS).into_par_iter().flat_map_iter(of_twin).collect()
}

#[test]
fn a_colony_that_does_as_the_model_says_is_as_expected_in_seventeen_looks_of_twenty() {
    for (place, every) in [(DeadPlace::Snow, 14), (DeadPlace::Ground, 21), (DeadPlace::Hook, 14)] {
        let stood = looks(place, every);
        let of = |against: Against| stood.iter().filter(|one| **one == against).count();
        let (expected, more) = (of(Against::Expected), of(Against::More));
        assert!(stood.len() > 150, "{place:?}: {} looks", stood.len());
        assert!(20 * expected >= 17 * stood.len(), "{place:?}: {expected} of {}", stood.len());
        // Nine in ten are promised, not all: what called everything expected would fail here.
        assert!(100 * expected <= 99 * stood.len(), "{place:?}: {expected} of {}", stood.len());
        assert!(20 * more <= 2 * stood.len(), "{place:?}: {more} of {} called too many", stood.len());
    }
}
