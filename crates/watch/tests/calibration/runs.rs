//! Many twins, each watched through the signs its keeper notes, and what the filter then says of it.

use rayon::prelude::*;
use snowhum_apiary::{DeadCount, DeadPlace, Listening, Poked, Seen, Sign, UpperHoleSign, Weighing};
use snowhum_draws::Key;
use snowhum_units::Kilogram;
use snowhum_watch::{Estimate, Sizes, Twin};
use snowhum_weather::Ensemble;

use crate::world::{DAYS, World, environment, known};

/// Twins in a batch, each on a weather path of its own.
pub(crate) const BATCH: usize = 32;
pub(crate) const SIZES: Sizes = Sizes { alive: 300, dead: 120 };
/// Draws that a truth is ranked among.
pub(crate) const DRAWS: usize = 15;
/// Days of a visit; on every third the hive is weighed too.
const VISITS: [usize; 8] = [12, 33, 54, 75, 96, 117, 138, 159];
/// What one run left behind.
pub(crate) struct Run {
    pub(crate) alive: bool,
    pub(crate) believed_alive: f64,
    pub(crate) stores: Option<usize>,
    pub(crate) bees: Option<usize>,
    pub(crate) death: Option<usize>,
    pub(crate) hazard: usize,
    /// Whether the truth's stores, bees and week of death lie in what is believed, where there is such a truth.
    pub(crate) stores_covered: Option<Covered>,
    pub(crate) bees_covered: Option<Covered>,
    pub(crate) death_covered: Option<Covered>,
}

/// Whether a truth lies in the middle half and in nine tenths of what is believed.
#[derive(Clone, Copy)]
pub(crate) struct Covered {
    pub(crate) half: bool,
    pub(crate) nine_tenths: bool,
}

impl Covered {
    fn of(truth: f64, believed: Vec<(f64, f64)>) -> Self {
        let within = |share: f64| {
            let (low, high) = between(believed.clone(), share);
            (low..=high).contains(&truth)
        };
        Self { half: within(0.5), nine_tenths: within(0.9) }
    }
}

/// How the filter weighs what it is told.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Filter {
    Right,
    /// It takes every sign for two.
    CountsTwice,
}

fn templates(visit: usize) -> Vec<Sign> {
    let mut templates = round();
    if visit % 3 == 2 {
        templates.push(weighing());
    }
    templates
}

/// What a keeper looks for on a winter round.
fn round() -> Vec<Sign> {
    vec![
        Sign::DeadBees { count: DeadCount::Counted(0), place: DeadPlace::Snow },
        Sign::UpperHole(UpperHoleSign::Dry),
        Sign::Hum { heard: Seen::No, how: Listening::Ear },
        Sign::Poke(Poked::Silent),
        Sign::WarmUnderLid(Seen::No),
    ]
}

/// A weighing of the stores.
fn weighing() -> Sign {
    let mass_kg = Kilogram::new(8.0);
    Sign::Weight(Weighing::Stores { mass_kg, plus_minus_kg: Kilogram::new(2.0) })
}

/// The world the twins live in, the world the filter believes in, and how it weighs.
#[derive(Clone, Copy)]
pub(crate) struct Trial<'a> {
    pub(crate) truth: &'a World,
    pub(crate) true_paths: &'a Ensemble,
    pub(crate) believed: &'a World,
    pub(crate) paths: &'a Ensemble,
    pub(crate) filter: Filter,
    /// What of the signs there are the keeper writes down.
    pub(crate) noted: fn(Vec<Sign>) -> Vec<Sign>,
}

/// What the keepers of a batch of twins see, visit by visit, and how their twins end.
pub(crate) fn batch(trial: &Trial<'_>, batch: usize) -> Vec<Run> {
    let Trial { truth, true_paths, believed: world, paths, filter, noted: writes } = *trial;
    let outside = environment(true_paths);
    let yard = truth.yard(&outside);
    let truth_scene = truth.scene(&yard, 0, 7_000 + batch as u64);
    let mut twin = Twin::begin(&truth_scene, 0, BATCH).unwrap();
    let mut seen: Vec<Vec<Vec<Sign>>> = vec![Vec::new(); BATCH];
    let own: Vec<_> = (0..BATCH).map(|m| known(paths, m)).collect();
    for (visit, day) in VISITS.iter().enumerate() {
        let hour = 24 * day + 12;
        twin.advance(&truth_scene, hour);
        for m in 0..BATCH {
            let own_yard = world.yard(&own[m]);
            let conditions = world.scene(&own_yard, 24 * DAYS, 0).conditions(0, hour, &Default::default());
            let noted = twin.seen(m, &truth_scene, &conditions, &templates(visit));
            twin.looked(m, &noted);
            seen[m].push(writes(noted));
        }
    }
    twin.advance(&truth_scene, 24 * DAYS);
    (0..BATCH)
        .into_par_iter()
        .map(|m| {
            let yard = world.yard(&own[m]);
            let seed = 90_000 + (batch * BATCH + m) as u64;
            let scene = world.scene(&yard, 24 * DAYS, seed);
            let mut estimate = Estimate::begin(&scene, 0, SIZES).unwrap();
            for (day, noted) in VISITS.iter().zip(&seen[m]) {
                let hour = 24 * day + 12;
                estimate.advance(&scene, None, hour);
                let conditions = scene.conditions(0, hour, &Default::default());
                estimate.look(&scene, &conditions, noted);
                if filter == Filter::CountsTwice {
                    estimate.weigh(&scene, &conditions, noted);
                }
            }
            estimate.advance(&scene, None, 24 * DAYS);
            judged(&twin, m, &estimate, seed)
        })
        .collect()
}

pub(crate) fn judged(twin: &Twin, m: usize, estimate: &Estimate, seed: u64) -> Run {
    let key = Key::new(seed, 0x5241_4e4b);
    let truth = twin.state(m);
    let alive = truth.ended.is_none();
    let living: Vec<_> = estimate.living().collect();
    let dead: Vec<_> = estimate.dead().collect();
    let rank = |truth: f64, believed: Vec<(f64, f64)>, what: u32| rank(truth, &believed, key, what);
    let of = |value: &dyn Fn(&snowhum_watch::Living) -> f64| -> Vec<(f64, f64)> {
        living.iter().map(|one| (value(one), one.mass)).collect()
    };
    let weeks: Vec<(f64, f64)> = dead.iter().map(|(hour, mass)| ((*hour / 168) as f64, *mass)).collect();
    Run {
        alive,
        believed_alive: estimate.standing().alive,
        stores: alive.then(|| rank(truth.living.stores_kg, of(&|one| one.stores_kg), 1)),
        bees: alive.then(|| rank(truth.living.bees, of(&|one| one.bees), 2)),
        death: truth.ended.map(|(hour, _)| rank((hour / 168) as f64, weeks.clone(), 3)),
        hazard: rank(truth.living.winter_hazard, of(&|one| one.winter_hazard), 4),
        stores_covered: alive.then(|| Covered::of(truth.living.stores_kg, of(&|one| one.stores_kg))),
        bees_covered: alive.then(|| Covered::of(truth.living.bees, of(&|one| one.bees))),
        death_covered: truth.ended.map(|(hour, _)| Covered::of((hour / 168) as f64, weeks.clone())),
    }
}

/// Ends of the middle `share` of weighted values.
fn between(mut values: Vec<(f64, f64)>, share: f64) -> (f64, f64) {
    values.sort_by(|a, b| a.0.total_cmp(&b.0));
    let all: f64 = values.iter().map(|(_, mass)| mass).sum();
    let at = |quantile: f64| {
        let mut sum = 0.0;
        let found = values.iter().find(|(_, mass)| {
            sum += mass;
            sum >= quantile * all
        });
        found.or(values.last()).map_or(0.0, |(value, _)| *value)
    };
    (at(0.5 - 0.5 * share), at(0.5 + 0.5 * share))
}

/// Place of the truth among draws from what is believed; ties are broken at random.
fn rank(truth: f64, believed: &[(f64, f64)], key: Key, what: u32) -> usize {
    let all: f64 = believed.iter().map(|(_, mass)| mass).sum();
    let mut below = 0;
    for draw in 0..DRAWS {
        let [u, tie, ..] = key.uniforms([what, draw as u32, 0, 0]);
        let mut left = u * all;
        let drawn = believed.iter().find(|(_, mass)| {
            left -= mass;
            left < 0.0
        });
        let drawn = drawn.or(believed.last()).map_or(0.0, |(value, _)| *value);
        if drawn < truth || (drawn == truth && tie < 0.5) {
            below += 1;
        }
    }
    below
}

/// Deaths beyond those believed, in standard deviations.
pub(crate) fn reliability(runs: &[Run]) -> f64 {
    let (off, variance) = runs.iter().fold((0.0, 0.0), |(off, variance), run| {
        let p = run.believed_alive;
        (off + f64::from(u8::from(run.alive)) - p, variance + p * (1.0 - p))
    });
    off / variance.sqrt()
}

pub(crate) fn brier(runs: &[Run], of: impl Fn(&Run) -> f64) -> f64 {
    runs.iter().map(|run| (of(run) - f64::from(u8::from(run.alive))).powi(2)).sum::<f64>() / runs.len() as f64
}

pub(crate) fn log_score(runs: &[Run], of: impl Fn(&Run) -> f64) -> f64 {
    let least = 1.0 / (2.0 * SIZES.alive as f64);
    let one = |run: &Run| {
        let p = of(run).clamp(least, 1.0 - least);
        -(if run.alive { p } else { 1.0 - p }).ln()
    };
    runs.iter().map(one).sum::<f64>() / runs.len() as f64
}
