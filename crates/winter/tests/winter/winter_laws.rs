//! What a winter does to bees, dress and air, as far as it has an order that must hold.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::ops::Range;

use jiff::civil::date;
use snowhum_apiary::{Colony, Mites, QueenState};
use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::{Fraction, Kelvin, Kilogram, Metre, MetrePerSecond};
use snowhum_winter::{
    Action, Cause, Daily, Environment, Event, HiveDaily, Housed, MemberEnd, Parameters, Record, Schedule, Settings,
    Trajectory, Yard, YardShelter, run,
};

/// Days from 1 October to the end of April, and its months.
const DAYS: usize = 212;
const MONTHS: [Range<usize>; 7] = [0..31, 31..61, 61..92, 92..123, 123..151, 151..182, 182..212];
const MEMBERS: usize = 64;

fn outdoors(mean_c: f64) -> Environment {
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(0.8) };
    Environment::yard(&changeable(mean_c, 24 * DAYS, MEMBERS), place(), shelter, date(2025, 10, 1))
}

/// Weeks of frost in which half a metre of snow falls in the first five days.
fn snowfall() -> Environment {
    let mut weather = changeable(-4.0, 24 * 60, MEMBERS);
    for path in &mut weather.paths {
        for hour in 0..24 * 60 {
            path.temperature[hour] = Kelvin::from_celsius(-8.0);
            path.precipitation[hour] = Metre::new(if hour < 120 { 4e-4 } else { 0.0 });
            path.wind[hour] = MetrePerSecond::new(1.0);
            path.snow_depth[hour] = Metre::new(0.3);
        }
    }
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(0.0) };
    Environment::yard(&weather, place(), shelter, date(2025, 12, 1))
}

fn winter(environment: &Environment, colony: Colony, dress: Dress, schedule: &Schedule) -> Trajectory {
    winter_of(environment, colony, dress, (&Parameters::shipped().unwrap(), schedule))
}

fn winter_of(
    environment: &Environment,
    colony: Colony,
    dress: Dress,
    (parameters, schedule): (&Parameters, &Schedule),
) -> Trajectory {
    let colonies = [Housed { colony, hive: langstroth(dress), neighbour: None, stays: Vec::new() }];
    let yard = Yard { environment, parameters, colonies: &colonies };
    run(&yard, schedule, Settings { members: MEMBERS, seed: 5, record: Record::Days }).swap_remove(0)
}

fn done(day: usize, action: Action) -> Schedule {
    Schedule::new(vec![Event { day, colony: 0, action }])
}

fn mean(trajectory: &Trajectory, of: impl Fn(&MemberEnd) -> f64) -> f64 {
    trajectory.ends.iter().map(of).sum::<f64>() / trajectory.members() as f64
}

fn sum(trajectory: &Trajectory, what: Daily, days: Range<usize>) -> f64 {
    days.map(|day| trajectory.day(what, day).map(f64::from).sum::<f64>()).sum()
}

/// Bees that are warmer wear less, so that more of them live, and rear more, and eat: the same bees are compared, and then
/// a bee's share as it goes.
#[test]
fn foam_and_packing_save_food_or_do_nothing_in_every_month() {
    const NOTHING: f64 = 1.002;
    let mut same_bees = Parameters::shipped().unwrap();
    same_bees.load_wear.fix(0.0);
    let foam = Dress { lid_foam_mm: 50.0, ..Dress::BARE };
    let packed = Dress { lid_foam_mm: 50.0, wall_foam_mm: 40.0, ..Dress::BARE };
    for mean_c in [-2.0, 3.0, 8.0] {
        for bees in [9_000.0, 24_000.0] {
            let dressed = |dress, parameters: &Parameters| {
                winter_of(&outdoors(mean_c), colony(bees, 30.0), dress, (parameters, &Schedule::default()))
            };
            let eaten = |dress| {
                let out = dressed(dress, &same_bees);
                MONTHS.map(|month| sum(&out, Daily::Eaten, month))
            };
            let a_bee = |dress| {
                let out = dressed(dress, &Parameters::shipped().unwrap());
                MONTHS.map(|month| sum(&out, Daily::Eaten, month.clone()) / sum(&out, Daily::Bees, month))
            };
            for [bare, foam, packed] in [[Dress::BARE, foam, packed].map(eaten), [Dress::BARE, foam, packed].map(a_bee)]
            {
                for month in 0..MONTHS.len() {
                    let [bare, foam, packed] = [bare[month], foam[month], packed[month]];
                    let shown = format!("{mean_c} C, {bees}, month {month}: {bare} {foam} {packed}");
                    assert!(foam <= bare * NOTHING && packed <= foam * NOTHING, "{shown}");
                }
                assert!(packed.iter().sum::<f64>() < bare.iter().sum::<f64>(), "{mean_c} C, {bees}");
            }
        }
    }
}

#[test]
fn a_hive_with_no_way_out_ends() {
    let shut = Action::Openings { entrance: Fraction::new(0.0), hole: Fraction::new(0.0) };
    let open = winter(&outdoors(9.0), colony(18_000.0, 26.0), Dress::BARE, &Schedule::default());
    let sealed = winter(&outdoors(9.0), colony(18_000.0, 26.0), Dress::BARE, &done(3, shut));
    assert!(mean(&open, MemberEnd::alive) > 0.7, "{}", mean(&open, MemberEnd::alive));
    assert!(mean(&sealed, MemberEnd::alive) < 0.1, "{}", mean(&sealed, MemberEnd::alive));
}

#[test]
fn snow_on_the_roof_keeps_warm_until_it_is_swept_or_melted_from_below() {
    let loss = |dress, schedule: &Schedule| {
        winter(&snowfall(), colony(18_000.0, 24.0), dress, schedule).hive(HiveDaily::Loss, 30..55).unwrap()
    };
    let foam = Dress { lid_foam_mm: 50.0, ..Dress::BARE };
    let swept = done(20, Action::SweepRoof);
    let (lies, gone) = (loss(foam, &Schedule::default()), loss(foam, &swept));
    assert!(lies < gone * 0.99, "under a foam lid snow lies and keeps warm: {lies} {gone}");
    let (bare, bare_swept) = (loss(Dress::BARE, &Schedule::default()), loss(Dress::BARE, &swept));
    assert!(lies < bare && bare <= bare_swept * 1.001, "a bare lid melts it: {bare} {bare_swept}");
}

#[test]
fn a_colony_without_a_laying_queen_ends_for_want_of_one() {
    let told = |state| {
        let mut colony = colony(16_000.0, 24.0);
        colony.autumn.queen = state;
        winter(&outdoors(6.0), colony, Dress::BARE, &Schedule::default())
    };
    let laying = told(Some(QueenState::Laying));
    let bees = |out: &Trajectory| out.day(Daily::Bees, DAYS - 1).map(f64::from).sum::<f64>();
    for state in [QueenState::None, QueenState::Virgin, QueenState::DroneLayer, QueenState::LayingWorkers] {
        let out = told(Some(state));
        assert!(mean(&out, |end| end.queenright) < 1e-9, "{state:?}");
        assert!(mean(&out, MemberEnd::alive) < mean(&laying, MemberEnd::alive), "{state:?}");
        assert!(bees(&out) < 0.9 * bees(&laying), "{state:?}: {} {}", bees(&out), bees(&laying));
        let by = |cause| mean(&out, |end| end.ended.by_cause()[cause as usize].1);
        assert!(by(Cause::TooSmall) < 1e-9 && by(Cause::QueenFailed) > 0.0, "{state:?}");
    }
    let mut unseen = colony(16_000.0, 24.0);
    unseen.queen.seen_or_laying = None;
    let unseen = winter(&outdoors(6.0), unseen, Dress::BARE, &Schedule::default());
    assert!(mean(&unseen, |end| end.queenright) < mean(&laying, |end| end.queenright));
}

#[test]
fn small_broods_go_on_all_winter_in_a_warm_room_and_stop_in_a_cold_one() {
    let brood = |air_c| {
        let room = Environment::steady(
            date(2025, 10, 1),
            24 * 100,
            Kelvin::from_celsius(air_c),
            Fraction::new(0.8),
            MetrePerSecond::new(0.1),
        );
        let out = winter(&room, colony(16_000.0, 24.0), Dress::BARE, &Schedule::default());
        out.day(Daily::Brood, 80).map(f64::from).sum::<f64>() / MEMBERS as f64
    };
    let (warm, cold) = (brood(8.0), brood(-8.0));
    assert!((60.0..2_000.0).contains(&warm) && cold < 0.5 * warm, "{warm} {cold}");
}

#[test]
fn more_mites_never_better_a_fed_colonys_chance() {
    let alive = |found| {
        let mites = Mites::Counted { found, bees: 300, on: date(2025, 9, 8) };
        let out = winter(&outdoors(5.0), Colony { mites, ..colony(15_000.0, 30.0) }, Dress::BARE, &Schedule::default());
        mean(&out, MemberEnd::alive)
    };
    let chances: Vec<f64> = [0, 1, 3, 6, 9, 15, 30, 60, 150].map(alive).to_vec();
    assert!(chances.windows(2).all(|pair| pair[1] <= pair[0] + 1e-3), "{chances:?}");
    assert!(chances[8] < chances[0] - 0.3, "{chances:?}");
}

/// Yard-mates share what nobody names: of two colonies both are lost more often than if they were two draws.
#[test]
fn hives_of_one_yard_are_not_two_independent_draws() {
    let parameters = Parameters::shipped().unwrap();
    let mate = |id| {
        let mut colony = colony(16_000.0, 26.0);
        colony.id = snowhum_apiary::ColonyId(uuid::Uuid::from_u128(id));
        Housed { colony, hive: langstroth(Dress::BARE), neighbour: None, stays: Vec::new() }
    };
    let (environment, colonies) = (outdoors(5.0), [mate(1), mate(2)]);
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let settings = Settings { members: 512, seed: 5, record: Record::End };
    let out = run(&yard, &Schedule::default(), settings);
    let lost = |at: usize| out[at].ends.iter().map(|end| end.ended.other).collect::<Vec<_>>();
    let (first, second) = (lost(0), lost(1));
    let mean = |values: &[f64]| values.iter().sum::<f64>() / values.len() as f64;
    let both = mean(&first.iter().zip(&second).map(|(a, b)| a * b).collect::<Vec<_>>());
    assert!(both > 1.15 * mean(&first) * mean(&second), "{both} {}", mean(&first) * mean(&second));
}

#[test]
fn feed_is_still_food() {
    let feed = done(30, Action::SolidFeed { stores: Kilogram::new(8.0) });
    let (hungry, fed) = (
        winter(&outdoors(4.0), colony(16_000.0, 6.0), Dress::BARE, &Schedule::default()),
        winter(&outdoors(4.0), colony(16_000.0, 6.0), Dress::BARE, &feed),
    );
    assert!(mean(&fed, MemberEnd::alive) > mean(&hungry, MemberEnd::alive) + 0.2);
}
