//! Neighbours are the control: what hives of one hour show tells all of them what kind of hour it was.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[expect(dead_code, reason = "one world serves several tests, each by a part of it")]
mod world;

use snowhum_apiary::{ColonyId, Conditions, Flight, Sign, VisitId};
use snowhum_testkit::colony;
use snowhum_units::{Kelvin, Kilogram, MetrePerSecond, Range};
use snowhum_watch::{Noted, Scene, Sizes, Visit, Watching};
use uuid::Uuid;
use world::{DAYS, World, known, winters};

const SIZES: Sizes = Sizes { alive: 1_000, dead: 300 };
/// Days among which two fine ones are looked for, and one after them.
const SPRING: std::ops::Range<usize> = 140..175;
const AFTER: usize = 176;
/// Hours of the day before the walk.
const MORNING: std::ops::Range<usize> = 11..14;

/// Four ordinary hives.
fn four() -> World {
    let mut first = colony(12_000.0, 14.0);
    first.stores.total = Range { p10: 10.0, p50: 14.0, p90: 18.0 }.map(Kilogram::new);
    let mut world = World::of(first);
    let one = world.colonies[0].clone();
    world.colonies = (0..4)
        .map(|number| {
            let mut other = one.clone();
            other.colony.id = ColonyId(Uuid::from_u128(600 + number));
            other
        })
        .collect();
    world
}

fn look(day: usize, minutes: usize, flight: Flight) -> Visit {
    Visit {
        hour: 24 * day + 14 + minutes / 60,
        id: VisitId(Uuid::from_u128(day as u128)),
        notes: Vec::new(),
        signs: vec![Sign::Flight(flight)],
        acts: Vec::new(),
        conditions: Conditions {
            air_k: Some(Kelvin::from_celsius(15.0)),
            wind_m_per_s: Some(MetrePerSecond::new(1.0)),
            ..Conditions::default()
        },
    }
}

/// What each of the hives showed on both days.
fn walked(fine: [usize; 2], flights: [Flight; 4]) -> Vec<Vec<Visit>> {
    flights.map(|flight| fine.map(|day| look(day, 0, flight)).to_vec()).to_vec()
}

fn watched(world: &World, scene: &Scene<'_>, visits: &[Vec<Visit>], before: Option<Vec<Watching>>) -> Vec<Watching> {
    let walls = vec![None; world.colonies.len()];
    Noted { scene, walls: &walls, visits, sizes: SIZES }.watch(before)
}

fn odds(scene: &Scene<'_>, watchings: &[Watching]) -> Vec<f64> {
    let of = |one: &Watching| one.at(scene, None, 24 * AFTER).standing().alive;
    watchings.iter().map(of).map(|alive| alive / (1.0 - alive)).collect()
}

/// In a winter with two days that are fine from the morning on.
fn in_a_known_winter(test: impl Fn(&World, &Scene<'_>, [usize; 2])) {
    let world = four();
    let with_two_fine_days = |seed| {
        let outside = known(&winters(1, seed), 0);
        let is_fine = |day: &usize| MORNING.into_iter().all(|hour| outside.flies(24 * day + hour, 0));
        let fine: Vec<usize> = SPRING.filter(is_fine).collect();
        Some((*fine.first()?, *fine.last()?)).filter(|(first, last)| first < last).map(|days| (outside, days))
    };
    let (outside, (first, last)) = (1..100).find_map(with_two_fine_days).unwrap();
    let yard = world.yard(&outside);
    test(&world, &world.scene(&yard, 24 * DAYS, 3), [first, last]);
}

#[test]
fn one_that_stays_in_twice_while_its_neighbours_fly_falls_below_half_its_odds() {
    in_a_known_winter(|world, scene, fine| {
        let untold = odds(scene, &watched(world, scene, &vec![Vec::new(); 4], None));
        let flights = [Flight::None, Flight::Well, Flight::Traffic, Flight::Thin];
        let told = odds(scene, &watched(world, scene, &walked(fine, flights), None));
        assert!(told[0] < 0.5 * untold[0], "{told:?} {untold:?}");
        assert!([1, 3].into_iter().all(|place| told[place] > untold[place]), "{told:?} {untold:?}");
        // Robbers come and go too, at a dead hive in late spring above all.
        assert!(told[0] < told[2] && told[2] < told[3], "{told:?}");
    });
}

#[test]
fn where_all_stay_in_the_hour_is_blamed_and_no_hive() {
    in_a_known_winter(|world, scene, fine| {
        let untold = odds(scene, &watched(world, scene, &vec![Vec::new(); 4], None));
        let told = odds(scene, &watched(world, scene, &walked(fine, [Flight::None; 4]), None));
        for (told, untold) in told.iter().zip(&untold) {
            assert!((told / untold - 1.0).abs() < 0.1, "{told} {untold}");
        }
    });
}

#[test]
fn a_neighbour_noted_late_withdrawn_or_changed_is_heard_as_if_it_had_been_so_all_along() {
    in_a_known_winter(|world, scene, fine| {
        let mut flights = [Flight::None, Flight::Well, Flight::Traffic, Flight::Thin];
        let all = walked(fine, flights);
        let late: Vec<Vec<Visit>> = (0..4).map(|place| all[place][..if place == 3 { 1 } else { 2 }].to_vec()).collect();
        flights[3] = Flight::None;
        let changed = walked(fine, flights);
        let replays = [&late, &all, &changed].map(|visits| watched(world, scene, visits, None));
        assert_ne!(odds(scene, &replays[0]), odds(scene, &replays[1]));
        for (from, to) in [(0, 1), (1, 0), (1, 2), (2, 1), (2, 0)] {
            let visits = [&late, &all, &changed][to];
            let went_on = watched(world, scene, visits, Some(replays[from].clone()));
            for (one, other) in went_on.iter().zip(&replays[to]) {
                assert_eq!(one.moved, other.moved, "{from} to {to}");
            }
            assert_eq!(odds(scene, &went_on), odds(scene, &replays[to]), "{from} to {to}");
        }
    });
}

#[test]
fn hives_seen_hours_apart_tell_one_another_nothing() {
    in_a_known_winter(|world, scene, fine| {
        let mut apart = walked(fine, [Flight::None, Flight::Well, Flight::Traffic, Flight::Thin]);
        apart[0] = fine.map(|day| look(day, 150, Flight::None)).to_vec();
        let mut alone = vec![Vec::new(); 4];
        alone[0].clone_from(&apart[0]);
        let of = |visits: &[Vec<Visit>]| odds(scene, &watched(world, scene, visits, None))[0];
        assert_eq!(of(&apart), of(&alone));
    });
}
