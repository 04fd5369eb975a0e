//! What signs say of a hive that stands in a dark room.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod world;

use std::sync::Arc;

use jiff::civil::{Date, date};
use snowhum_apiary::{Conditions, DeadCount, DeadPlace, Flight, Listening, NoteId, Seen, Sign, SnowCover, VisitId};
use snowhum_units::{Fraction, Kelvin, MetrePerSecond};
use snowhum_watch::{Estimate, Noted, Scene, Sizes, Visit, Watching};
use snowhum_winter::{Environment, RoomAir, RoomStay};
use uuid::Uuid;
use world::{DAYS, World, known, uncertain_colony, winters};

const SIZES: Sizes = Sizes { alive: 96, dead: 48 };
const NOVEMBER: Date = date(2025, 11, 10);
/// A morning in January.
const LOOKED: usize = 24 * 100 + 10;

fn outside() -> Environment {
    known(&winters(1, 5), 0)
}

fn world(from: Option<Date>) -> World {
    let mut world = World::of(uncertain_colony());
    let four = Kelvin::from_celsius(4.0);
    let air = RoomAir {
        between: (four, four),
        humidity: Fraction::new(0.65),
        dark_below: Some(Kelvin::from_celsius(8.0)),
        measured: None,
    };
    let stay = |from| RoomStay { from, until: Some(date(2026, 3, 25)), air: Arc::new(air) };
    world.colonies[0].stays = from.map(stay).into_iter().collect();
    world
}

fn visit(hour: usize, signs: Vec<Sign>) -> Visit {
    let conditions = Conditions {
        air_k: Some(Kelvin::from_celsius(12.0)),
        snow: Some(SnowCover::New),
        wind_m_per_s: Some(MetrePerSecond::new(9.0)),
    };
    let (id, note) = (VisitId(Uuid::from_u128(hour as u128)), NoteId(Uuid::from_u128(1 + hour as u128)));
    Visit { hour, id, notes: vec![note], signs, acts: Vec::new(), conditions }
}

fn seen(scene: &Scene<'_>, signs: Vec<Sign>) -> Estimate {
    let visits: Vec<Visit> = if signs.is_empty() { Vec::new() } else { vec![visit(LOOKED, signs)] };
    watched(scene, &visits, None).at(scene, None, LOOKED)
}

fn watched(scene: &Scene<'_>, visits: &[Visit], before: Option<Watching>) -> Watching {
    let visits = [visits.to_vec()];
    let noted = Noted { scene, walls: &[None], visits: &visits, sizes: SIZES };
    noted.watch(before.map(|one| vec![one])).swap_remove(0)
}

#[test]
fn what_nobody_can_see_indoors_leaves_the_estimate_as_it_was_to_the_last_bit() {
    let (world, outside) = (world(Some(NOVEMBER)), outside());
    let yard = world.yard(&outside);
    let scene = world.scene(&yard, 24 * DAYS, 3);
    assert!(scene.is_indoors(0, LOOKED) && !scene.is_indoors(0, 24 * 10));
    let bare = seen(&scene, Vec::new());
    let hidden = vec![
        Sign::Flight(Flight::None),
        Sign::Pollen(Seen::No),
        Sign::MeltedSnow(Seen::No),
        Sign::DeadBees { count: DeadCount::Counted(0), place: DeadPlace::Snow },
    ];
    assert!(seen(&scene, hidden).views().eq(bare.views()), "no flight in the dark is no sign of death");
    let heard = vec![Sign::Hum { heard: Seen::No, how: Listening::Ear }];
    assert!(!seen(&scene, heard).views().eq(bare.views()), "an ear at the wall hears as well indoors");
}

#[test]
fn the_same_signs_outdoors_say_something() {
    let (world, outside) = (world(None), outside());
    let yard = world.yard(&outside);
    let scene = world.scene(&yard, 24 * DAYS, 3);
    let bare = seen(&scene, Vec::new());
    let (before, after) = (bare.standing().alive, seen(&scene, vec![Sign::Flight(Flight::None)]).standing().alive);
    assert!(after < before, "on a day of 12 °C others fly: {before} {after}");
}

#[test]
fn a_hives_dead_lie_on_its_floor_indoors_and_none_before_it() {
    let outside = outside();
    let lying = |from: Option<Date>| {
        let world = world(from);
        let yard = world.yard(&outside);
        let scene = world.scene(&yard, 24 * DAYS, 3);
        let estimate = seen(&scene, Vec::new());
        let mean = |of: &dyn Fn(&snowhum_watch::View) -> f64| {
            let living = estimate.views().filter(|(view, _)| view.life.is_alive());
            let (sum, all) = living.fold((0.0, 0.0), |(sum, all), (view, mass)| (sum + mass * of(&view), all + mass));
            sum / all
        };
        (mean(&|view| view.litter_outside), mean(&|view| view.litter_floor), mean(&|view| view.flight_hours))
    };
    let (indoors, yard) = (lying(Some(NOVEMBER)), lying(None));
    assert!(indoors.0 < 1.0 && indoors.0 < yard.0, "{indoors:?} {yard:?}");
    assert!(indoors.1 > 100.0 && indoors.2 == 0.0, "{indoors:?}");
}

#[test]
fn a_day_in_that_is_noted_late_is_replayed_as_if_it_had_been_known() {
    let outside = outside();
    let (planned, moved) = (world(Some(NOVEMBER)), world(Some(date(2025, 12, 1))));
    let visits = [visit(LOOKED, vec![Sign::Hum { heard: Seen::Yes, how: Listening::Ear }])];
    let of = |world: &World, before: Option<Watching>| {
        let yard = world.yard(&outside);
        let scene = world.scene(&yard, 24 * DAYS, 3);
        watched(&scene, &visits, before)
    };
    let late = of(&moved, Some(of(&planned, None)));
    let fresh = of(&moved, None);
    assert!(late.at_last_visit.views().eq(fresh.at_last_visit.views()));
    assert!(
        !fresh.at_last_visit.views().eq(of(&planned, None).at_last_visit.views()),
        "three weeks in the cold differ"
    );
}
