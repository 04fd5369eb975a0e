//! A candy board, a slab or a feeder: eaten only where the cluster touches it, and only while it is not too cold.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::date;
use snowhum_apiary::{FoodBody, FoodPlace, StoresPlace};
use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::{Bare, Fraction, Kilogram};
use snowhum_winter::{
    Action, Daily, Environment, Event, Housed, MemberEnd, Members, Parameters, Record, Schedule, Settings, Trajectory,
    Yard, YardShelter, run,
};

const MEMBERS: usize = 64;
const DAYS: usize = 150;

fn outdoors(mean_c: f64) -> Environment {
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(0.8) };
    Environment::yard(&changeable(mean_c, 24 * DAYS, MEMBERS), place(), shelter, date(2025, 11, 1))
}

/// A colony with this much food, a share of it over the cluster, and a body of food on its hive.
fn housed(kg: f64, above: f64, body: Option<&str>) -> Housed {
    let mut colony = colony(15_000.0, kg);
    colony.stores.place = StoresPlace { touched: 0.15, above, beside: 0.8 - above, far: 0.05 };
    let mut hive = langstroth(Dress { boxes: 1, ..Dress::BARE });
    hive.food_body = body.map(|text| FoodBody::read(text, Bare::Refused).unwrap());
    Housed { colony, hive, neighbour: None, stays: Vec::new() }
}

fn winter(mean_c: f64, housed: Housed, events: Vec<Event>) -> Trajectory {
    let (environment, parameters) = (outdoors(mean_c), Parameters::shipped().unwrap());
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &[housed] };
    run(&yard, &Schedule::new(events), Settings { members: MEMBERS, seed: 5, record: Record::Days }).swap_remove(0)
}

/// Mean day on which it was reached; the day after the last where it never was.
fn reached(out: &Trajectory) -> f64 {
    let day = |end: &MemberEnd| end.body_reached.map_or(DAYS as f64, f64::from);
    out.ends.iter().map(day).sum::<f64>() / MEMBERS as f64
}

fn alive(out: &Trajectory) -> f64 {
    out.ends.iter().map(MemberEnd::alive).sum::<f64>() / MEMBERS as f64
}

fn of(day: usize, action: Action) -> Vec<Event> {
    vec![Event { day, colony: 0, action }]
}

const BOARD: &str = "6 kg fondant, rim 50 mm";

#[test]
fn a_board_is_reached_once_the_honey_below_it_is_eaten() {
    let (empty, some, full) = (
        winter(0.0, housed(7.0, 0.1, Some(BOARD)), Vec::new()),
        winter(0.0, housed(9.0, 0.5, Some(BOARD)), Vec::new()),
        winter(0.0, housed(20.0, 0.7, Some(BOARD)), Vec::new()),
    );
    let days = [reached(&empty), reached(&some), reached(&full)];
    assert!(days[0] < 15.0 && days[0] + 10.0 < days[1] && days[1] + 20.0 < days[2], "{days:?}");
}

#[test]
fn a_board_saves_a_colony_that_reaches_it_and_none_that_it_is_too_cold_for() {
    let saved = |mean_c: f64| {
        let with = alive(&winter(mean_c, housed(3.0, 0.1, Some(BOARD)), Vec::new()));
        (with, alive(&winter(mean_c, housed(3.0, 0.1, None), Vec::new())))
    };
    let (mild, frozen) = (saved(2.0), saved(-30.0));
    assert!(mild.0 > mild.1 + 0.3, "{mild:?}");
    assert!(frozen.0 < frozen.1 + 0.05 && frozen.0 < 0.1, "{frozen:?}");
}

#[test]
fn a_feeder_to_the_side_asks_for_more_warmth_than_a_board_over_the_cluster() {
    let over = winter(-10.0, housed(6.0, 0.1, Some(BOARD)), Vec::new());
    let beside = winter(-10.0, housed(6.0, 0.1, Some("6 kg frame feeder")), Vec::new());
    assert!(reached(&over) + 5.0 < reached(&beside), "{} {}", reached(&over), reached(&beside));
}

#[test]
fn one_put_on_and_taken_off_again_the_same_night_leaves_every_bit_as_it_was() {
    let stores = Kilogram::new(5.0);
    let mut events = of(40, Action::FoodPutOn { stores, place: FoodPlace::OverCluster });
    events.extend(of(40, Action::FoodTakenOff));
    let (without, undone) =
        (winter(0.0, housed(9.0, 0.4, None), Vec::new()), winter(0.0, housed(9.0, 0.4, None), events));
    assert_eq!(without.ends, undone.ends);
}

#[test]
fn one_in_the_yard_file_is_one_put_on_the_first_night() {
    let body = FoodBody::read(BOARD, Bare::Refused).unwrap();
    let put = of(0, Action::FoodPutOn { stores: body.worth(), place: body.place });
    let (built, noted) =
        (winter(0.0, housed(9.0, 0.4, Some(BOARD)), Vec::new()), winter(0.0, housed(9.0, 0.4, None), put));
    assert_eq!(built.ends, noted.ends);
}

#[test]
fn what_was_eaten_off_it_is_still_in_the_combs() {
    let (environment, parameters) = (outdoors(0.0), Parameters::shipped().unwrap());
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &[housed(16.0, 0.6, Some(BOARD))] };
    let mut members = Members::enter(&yard, 0, Settings { members: 8, seed: 5, record: Record::End }).unwrap();
    while members.hour() < 24 * 20 {
        members.step_to(&yard, None, 24 * 20);
    }
    let before = members.member(3);
    members.act(&yard, Action::FoodEatenUp);
    let after = members.member(3);
    assert!(before.body_kg > 1.0 && after.body_kg == 0.0 && after.body_reached, "{before:?}");
    assert!((before.stores_kg - after.stores_kg).abs() < 1e-9, "{} {}", before.stores_kg, after.stores_kg);
}

#[test]
fn food_on_the_hive_counts_as_food_in_it() {
    let all = |out: &Trajectory| out.day(Daily::Stores, 0).map(f64::from).sum::<f64>() / MEMBERS as f64;
    let (with, without) =
        (winter(0.0, housed(9.0, 0.4, Some(BOARD)), Vec::new()), winter(0.0, housed(9.0, 0.4, None), Vec::new()));
    let worth = FoodBody::read(BOARD, Bare::Refused).unwrap().worth().get();
    assert!((all(&with) - all(&without) - worth).abs() < 0.02, "{} {}", all(&with), all(&without));
}
