//! Yards of several twins whose keeper walks past them all: what kind of hour it was, they share.

use rayon::prelude::*;
use snowhum_apiary::{ColonyId, Conditions, Flight, Seen, Sign, VisitId};
use snowhum_units::{Kelvin, Kilogram, MetrePerSecond, Range};
use snowhum_watch::{Noted, Twin, Visit};
use std::collections::BTreeMap;
use uuid::Uuid;

use crate::runs::{BATCH, Run, SIZES, judged};
use crate::world::{DAYS, World, environment, known, uncertain_colony, winters};
use crate::{LIMIT, chi_square, reliability, uncovered};

/// Noon, when keepers go to see whether bees fly.
const NOON: usize = 13;
/// Days of a walk, and of the judgement: when hunger has ended about half of the hives.
const WALKS: [usize; 4] = [44, 49, 54, 59];
const END: usize = 60;

/// Whether hives seen in one hour tell one another of it.
#[derive(Clone, Copy, PartialEq)]
enum Filter {
    Together,
    /// Each is weighed as if it stood alone.
    Apart,
}

/// A hive of a yard, and how its end was judged.
struct Judged {
    yard: u64,
    run: Run,
}

fn yard_of(hives: usize) -> World {
    let mut hungry = uncertain_colony();
    hungry.stores.total = Range { p10: 1.5, p50: 3.0, p90: 5.0 }.map(Kilogram::new);
    let mut world = World::of(hungry);
    let first = world.colonies[0].clone();
    world.colonies = (0..hives)
        .map(|number| {
            let mut one = first.clone();
            one.colony.id = ColonyId(Uuid::from_u128(500 + number as u128));
            one
        })
        .collect();
    world
}

/// Nothing but what hangs on the hour.
fn looked_for() -> Vec<Sign> {
    vec![Sign::Flight(Flight::None), Sign::Pollen(Seen::No)]
}

/// A noon of a thaw, as the keeper's thermometer has it, that leaves it in doubt whether bees fly.
fn doubtful() -> Conditions {
    let (air_k, wind) = (Some(Kelvin::from_celsius(14.0)), Some(MetrePerSecond::new(1.0)));
    Conditions { air_k, wind_m_per_s: wind, ..Conditions::default() }
}

/// The twin that stands at a place of a yard: no two hives of a yard are one draw of what is unknown, but their weather is
/// one.
fn number_of(yard: usize, place: usize) -> usize {
    yard + BATCH * place
}

/// A batch of yards, each on a weather path of its own, and what the filter says of every hive at the end.
fn batch(hives: usize, number: u64, filter: Filter) -> Vec<Judged> {
    let world = yard_of(hives);
    let paths = winters(BATCH, 11);
    let outside = environment(&paths);
    let yard = world.yard(&outside);
    let truth = world.scene(&yard, 0, 31_000 + number);
    let mut twins: Vec<Twin> = (0..hives).map(|place| Twin::begin(&truth, place, BATCH * hives).unwrap()).collect();
    let own: Vec<_> = (0..BATCH).map(|m| known(&paths, m)).collect();
    let mut visits: Vec<Vec<Vec<Visit>>> = vec![vec![Vec::new(); hives]; BATCH];
    for day in WALKS {
        let hour = 24 * day + NOON;
        for (place, twin) in twins.iter_mut().enumerate() {
            twin.advance(&truth, hour);
            for m in 0..BATCH {
                let own_yard = world.yard(&own[m]);
                let day_of = world.scene(&own_yard, 24 * DAYS, 0).conditions(place, hour, &doubtful());
                let signs = twin.seen(number_of(m, place), &truth, &day_of, &looked_for());
                twin.looked(number_of(m, place), &signs);
                let id = VisitId(Uuid::from_u128(day as u128 + 1));
                let (notes, acts, conditions) = (Vec::new(), Vec::new(), doubtful());
                visits[m][place].push(Visit { hour, id, notes, signs, acts, conditions });
            }
        }
    }
    twins.iter_mut().for_each(|twin| twin.advance(&truth, 24 * END));
    let judge = |m: usize| -> Vec<Judged> {
        let yard = world.yard(&own[m]);
        let seed = 60_000 + number * BATCH as u64 + m as u64;
        let scene = world.scene(&yard, 24 * DAYS, seed);
        let walls = vec![None; hives];
        let watch = |visits: &[Vec<Visit>]| Noted { scene: &scene, walls: &walls, visits, sizes: SIZES }.watch(None);
        let together = (filter == Filter::Together).then(|| watch(&visits[m]));
        let alone = |place: usize| {
            let mut own = vec![Vec::new(); hives];
            own[place].clone_from(&visits[m][place]);
            watch(&own).swap_remove(place)
        };
        let of = |place: usize| {
            let watching = together.as_ref().map_or_else(|| alone(place), |all| all[place].clone());
            let run = judged(
                &twins[place],
                number_of(m, place),
                &watching.at(&scene, None, 24 * END),
                seed + 7_919 * place as u64,
            );
            Judged { yard: seed, run }
        };
        (0..hives).map(of).collect()
    };
    (0..BATCH).into_par_iter().flat_map(judge).collect()
}

fn yards(hives: usize, batches: u64, filter: Filter) -> Vec<Judged> {
    (0..batches).flat_map(|number| batch(hives, number, filter)).collect()
}

/// How far the living that were not believed in, or the dead that were, go with what `other` says more of them than they were
/// believed: nothing where all that was seen in a yard is weighed for what it is worth, else in standard deviations. Yards
/// are what is drawn: the hives of one hang together by the hours that they share.
fn unheard(judged: &[Judged], other: &[f64]) -> f64 {
    let mut yards: BTreeMap<u64, f64> = BTreeMap::new();
    for (one, other) in judged.iter().zip(other) {
        let surprise = f64::from(u8::from(one.run.alive)) - one.run.believed_alive;
        *yards.entry(one.yard).or_default() += other * surprise;
    }
    yards.values().sum::<f64>() / yards.values().map(|off| off * off).sum::<f64>().sqrt()
}

fn promises_hold(hives: usize, batches: u64) {
    let judged = yards(hives, batches, Filter::Together);
    let runs: Vec<Run> = judged.into_iter().map(|one| one.run).collect();
    let of = |rank: &dyn Fn(&Run) -> Option<usize>| chi_square(&runs.iter().filter_map(rank).collect::<Vec<_>>());
    for (what, chi) in
        [("stores", of(&|run| run.stores)), ("bees", of(&|run| run.bees)), ("week", of(&|run| run.death))]
    {
        assert!(chi < LIMIT, "{what}: {chi:.1}");
    }
    assert!(reliability(&runs).abs() < 3.9, "{:.2}", reliability(&runs));
    for (what, off) in [
        ("stores", uncovered(&runs, |run| run.stores_covered, 1.0)),
        ("bees", uncovered(&runs, |run| run.bees_covered, 1.0)),
        ("week of death", uncovered(&runs, |run| run.death_covered, 2.0)),
    ] {
        assert_eq!(off, Vec::<String>::new(), "{what}");
    }
}

#[test]
fn yards_of_two_hives_are_believed_as_often_as_they_should() {
    promises_hold(2, 6);
}

#[test]
fn yards_of_ten_hives_are_believed_as_often_as_they_should() {
    promises_hold(10, 1);
}

#[test]
fn what_neighbours_show_is_heard_for_what_it_is_worth_and_a_filter_deaf_to_it_fails_the_same_test() {
    let [together, apart] = [Filter::Together, Filter::Apart].map(|filter| yards(4, 8, filter));
    let more = |one: &(&Judged, &Judged)| one.0.run.believed_alive - one.1.run.believed_alive;
    let moved: Vec<f64> = together.iter().zip(&apart).map(|pair| more(&pair)).collect();
    let (heard, unheard_of) = (unheard(&together, &moved), unheard(&apart, &moved));
    assert!(heard.abs() < 3.29, "{heard:.2}");
    assert!(unheard_of > 3.29, "{unheard_of:.2}");
}
