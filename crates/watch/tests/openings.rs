//! What an opening noted shut does: from that hour on air, water and ways out are those of a hive that is shut there.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[expect(dead_code, reason = "one world serves several tests, each by a part of it")]
mod world;

use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use snowhum_apiary::{OpeningKind, OpeningState, Sign};
use snowhum_testkit::colony;
use snowhum_watch::{Estimate, Scene, Sizes};
use snowhum_winter::{HiveDaily, Record, Trajectory};
use world::{DAYS, FIRST_DAY, World, known, winters};

const SIZES: Sizes = Sizes { alive: 64, dead: 32 };
/// A morning in December.
const NOTED: usize = 24 * 70 + 10;
const CLEARED: usize = 24 * 84 + 10;

/// Runs `test` over a strong colony under weather that is known.
fn in_winter(test: impl Fn(&Scene<'_>)) {
    let world = World::of(colony(15_000.0, 22.0));
    let outside = known(&winters(1, 5), 0);
    let yard = world.yard(&outside);
    test(&world.scene(&yard, 24 * DAYS, 3));
}

/// The estimate at an hour, with what was seen of the openings on the way.
fn watched(scene: &Scene<'_>, seen: &[(usize, Sign)], until: usize) -> Estimate {
    let mut estimate = Estimate::begin(scene, 0, SIZES).unwrap();
    for (hour, sign) in seen {
        estimate.advance(scene, None, *hour);
        let day = scene.conditions(0, *hour, &Default::default());
        estimate.look(scene, &day, std::slice::from_ref(sign));
    }
    estimate.advance(scene, None, until);
    estimate
}

fn upper(state: OpeningState) -> Sign {
    Sign::UpperEntrance(state)
}

/// What lies ahead; its first day is the one after `estimate` stands.
fn ahead(scene: &Scene<'_>, estimate: &Estimate) -> Trajectory {
    estimate.outlook(scene, SIZES.alive).run(scene, None, &[], Record::Days)
}

fn humidity(estimate: &Estimate) -> f64 {
    let living = estimate.views().filter(|(view, _)| view.life.is_alive());
    let (sum, all) = living.fold((0.0, 0.0), |(sum, all), (view, mass)| (sum + mass * view.humidity, all + mass));
    sum / all
}

/// Whether two estimates show the same, to the last bit.
fn same(one: &Estimate, other: &Estimate) -> bool {
    one.views().eq(other.views())
}

#[test]
fn a_blocked_upper_hole_changes_litres_of_air_and_grams_of_water_until_it_is_cleared() {
    in_winter(|scene| {
        let blocked = (NOTED, upper(OpeningState::Blocked));
        let cleared = (CLEARED, upper(OpeningState::Cleared));
        let figures = |seen: &[(usize, Sign)], from: usize| {
            let run = ahead(scene, &watched(scene, seen, from));
            let of = |what| run.hive(what, 0..5).unwrap();
            (of(HiveDaily::Flow), of(HiveDaily::Lid) + of(HiveDaily::Walls) + of(HiveDaily::Floor))
        };
        let (flow, water) = figures(&[], NOTED);
        let (shut_flow, shut_water) = figures(std::slice::from_ref(&blocked), NOTED);
        assert!(shut_flow < 0.7 * flow, "{shut_flow:.4} L/s of {flow:.4}");
        assert!(shut_water > 1.05 * water, "{shut_water:.1} g a day of {water:.1}");
        let (flow, _) = figures(&[], CLEARED + 48);
        let (cleared_flow, _) = figures(&[blocked.clone(), cleared], CLEARED + 48);
        assert!((cleared_flow / flow - 1.0).abs() < 0.03, "{cleared_flow:.4} L/s of {flow:.4}");
        let (still_shut, _) = figures(&[blocked], CLEARED + 48);
        assert!(still_shut < 0.7 * flow, "{still_shut:.4} L/s of {flow:.4}");
    });
}

#[test]
fn it_changes_from_the_hour_it_was_noted_and_not_before() {
    in_winter(|scene| {
        let open = |until| humidity(&watched(scene, &[], until));
        let shut = |until| humidity(&watched(scene, &[(NOTED, upper(OpeningState::Blocked))], until));
        assert_eq!(shut(NOTED), open(NOTED), "what was before it is as it was");
        assert!(shut(NOTED + 3) > open(NOTED + 3), "{} against {}", shut(NOTED + 3), open(NOTED + 3));
    });
}

#[test]
fn noted_and_cleared_in_the_same_hour_is_as_if_it_had_never_been() {
    in_winter(|scene| {
        let both = [(NOTED, upper(OpeningState::Iced)), (NOTED, upper(OpeningState::Cleared))];
        let until = NOTED + 24 * 20;
        let (open, again) = (watched(scene, &[], until), watched(scene, &both, until));
        assert!(same(&open, &again));
    });
}

#[test]
fn one_opening_noted_leaves_the_other_as_it_was_noted() {
    in_winter(|scene| {
        let entrance = (NOTED, Sign::Entrance(OpeningState::Iced));
        let seen = [entrance.clone(), (NOTED + 1, upper(OpeningState::Clear))];
        let estimate = watched(scene, &seen, NOTED + 1);
        assert_eq!(estimate.openings().shut(OpeningKind::Entrance).unwrap().state, OpeningState::Iced);
        assert_eq!(estimate.openings().shut(OpeningKind::UpperHole), None);
        let until = NOTED + 24 * 5;
        assert!(same(&watched(scene, &seen, until), &watched(scene, &[entrance], until)));
    });
}

#[test]
fn no_bee_flies_from_a_hive_of_which_both_openings_are_iced() {
    in_winter(|scene| {
        let both = [(NOTED, upper(OpeningState::Iced)), (NOTED, Sign::Entrance(OpeningState::Iced))];
        let last = 24 * (DAYS - 1);
        let confined = |seen: &[(usize, Sign)]| {
            let estimate = watched(scene, seen, last);
            estimate.views().map(|(view, _)| view.confined_days).fold(f64::INFINITY, f64::min)
        };
        let days = (last - NOTED) as f64 / 24.0;
        assert!(confined(&both) > days - 2.0, "{}", confined(&both));
        assert!(confined(&both[..1]) < days - 20.0, "they leave by the entrance: {}", confined(&both[..1]));
    });
}

#[test]
fn more_is_shut_by_ice_than_by_snow() {
    in_winter(|scene| {
        let flow = |state| {
            let seen = [(NOTED, upper(state))];
            ahead(scene, &watched(scene, &seen, NOTED)).hive(HiveDaily::Flow, 0..5).unwrap()
        };
        let states = [OpeningState::Iced, OpeningState::Blocked, OpeningState::DriftedOver, OpeningState::Clear];
        let [iced, blocked, drifted, clear] = states.map(flow);
        assert!(iced < blocked && blocked < drifted && drifted < clear, "{iced} {blocked} {drifted} {clear}");
        let unseen = flow(OpeningState::NotVisible);
        assert_eq!(unseen, clear, "what is not seen changes nothing");
    });
}

#[test]
fn what_is_noted_before_midnight_is_of_its_day_though_the_clock_was_put_back() {
    in_winter(|scene| {
        let finland = TimeZone::get("Europe/Helsinki").unwrap();
        let at = |day: Date, hour: i8| day.at(hour, 30, 0, 0).to_zoned_datetime(finland.clone()).unwrap().timestamp();
        let start = FIRST_DAY.to_zoned_datetime(finland.clone()).unwrap().timestamp();
        let scene = Scene { start, zone: &finland, ..*scene };
        let hours = |day: Date| [0, 10, 23].map(|hour| scene.hour_of(at(day, hour)).unwrap());
        assert_eq!(hours(date(2025, 10, 6)), [25, 35, 48], "summer time");
        let days = 24 * 72;
        assert_eq!(
            hours(date(2025, 12, 16)),
            [days + 2, days + 12, days + 24],
            "an hour later by the clock of the run"
        );
        assert_eq!(scene.hour_of(at(date(2025, 10, 4), 23)), None, "before the run");
    });
}
