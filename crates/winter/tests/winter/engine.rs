//! What the engine promises of every run.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_apiary::{Colony, Mites};
use snowhum_testkit::{Dress, changeable, colony, langstroth, own_hive, place};
use snowhum_units::{Fraction, Kilogram, Range};
use snowhum_winter::{
    Action, Cause, Daily, Environment, Event, HiveDaily, Housed, LANES, MemberEnd, Parameters, Record, Schedule,
    Settings, Trajectory, Vectors, Yard, YardShelter, run, run_with,
};

const DAYS: usize = 222;
const MEMBERS: usize = 96;

fn environment(mean_c: f64) -> Environment {
    let shelter = YardShelter { wind: Fraction::new(0.3), sun: Fraction::new(0.7) };
    Environment::yard(&changeable(mean_c, 24 * DAYS, 2 * LANES), place(), shelter, jiff::civil::date(2025, 10, 5))
}

fn settings(record: Record) -> Settings {
    Settings { members: MEMBERS, seed: 4, record }
}

fn housed(colony: Colony) -> Housed {
    Housed { colony, hive: langstroth(Dress { lid_foam_mm: 50.0, ..Dress::BARE }), neighbour: None, stays: Vec::new() }
}

fn one(environment: &Environment, housed: Housed, schedule: &Schedule) -> Trajectory {
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed];
    let yard = Yard { environment, parameters: &parameters, colonies: &colonies };
    run(&yard, schedule, settings(Record::Days)).swap_remove(0)
}

fn mean(trajectory: &Trajectory, of: impl Fn(&MemberEnd) -> f64) -> f64 {
    trajectory.ends.iter().map(of).sum::<f64>() / trajectory.members() as f64
}

fn assert_same_days(one: &Trajectory, other: &Trajectory) {
    for day in 0..one.days() {
        for what in Daily::ALL {
            let bits = |t: &Trajectory| t.day(*what, day).map(f32::to_bits).collect::<Vec<_>>();
            assert_eq!(bits(one), bits(other), "{what:?} day {day}");
        }
        for what in HiveDaily::ALL {
            let bits = |t: &Trajectory| t.hive(*what, [day]).map(f64::to_bits);
            assert_eq!(bits(one), bits(other), "{what:?} day {day}");
        }
    }
}

fn on_day(day: usize, action: Action) -> Schedule {
    Schedule::new(vec![Event { day, colony: 0, action }])
}

#[test]
fn same_seed_gives_the_same_bits_on_one_and_two_threads() {
    let environment = environment(3.0);
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed(colony(18_000.0, 12.0)), Housed { neighbour: Some(0), ..housed(colony(7_000.0, 7.0)) }];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let on = |threads: usize| {
        let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
        pool.install(|| run(&yard, &Schedule::default(), settings(Record::Days)))
    };
    for (one, two) in on(1).iter().zip(&on(2)) {
        assert_eq!(one.ends, two.ends);
        assert_same_days(one, two);
    }
}

#[test]
fn same_seed_gives_the_same_bits_with_vectors_of_every_width() {
    let environment = environment(-1.0);
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed(colony(18_000.0, 12.0)), Housed { neighbour: Some(0), ..housed(colony(7_000.0, 7.0)) }];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let with = |vectors| run_with(vectors, &yard, &Schedule::default(), settings(Record::Days));
    let widest = with(Vectors::Widest);
    for narrower in [with(Vectors::Bits256), with(Vectors::Least)] {
        for (wide, narrow) in widest.iter().zip(&narrower) {
            assert_eq!(wide.ends, narrow.ends);
            assert_same_days(wide, narrow);
        }
    }
}

#[test]
fn chances_of_living_and_of_every_end_sum_to_one() {
    let out = one(&environment(1.0), housed(colony(9_000.0, 6.0)), &Schedule::default());
    for end in &out.ends {
        assert!((end.alive() + end.ended.total() - 1.0).abs() < 1e-12);
        assert!(end.queenright >= 0.0 && end.queenless >= 0.0);
    }
}

#[test]
fn a_member_does_not_depend_on_how_many_others_there_are() {
    let environment = environment(3.0);
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed(colony(15_000.0, 12.0))];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let few = run(&yard, &Schedule::default(), Settings { members: 40, ..settings(Record::End) });
    let many = run(&yard, &Schedule::default(), settings(Record::End));
    assert_eq!(few[0].ends[..], many[0].ends[..40]);
}

#[test]
fn a_well_fed_strong_colony_lives_and_one_without_food_starves() {
    let environment = environment(3.5);
    // As many members as there are joint draws, each once.
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed(colony(18_000.0, 24.0))];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let all = Settings { members: parameters.joint.rows.len(), ..settings(Record::Days) };
    let fed = run(&yard, &Schedule::default(), all).swap_remove(0);
    assert!(mean(&fed, MemberEnd::alive) > 0.85, "{}", mean(&fed, MemberEnd::alive));
    let hungry = one(&environment, housed(colony(18_000.0, 3.0)), &Schedule::default());
    assert!(mean(&hungry, MemberEnd::alive) < 0.05);
    let starved = mean(&hungry, |e| e.ended.starved + e.ended.isolation_starvation);
    assert!(starved > 0.8, "{starved}");
}

#[test]
fn food_out_of_reach_in_a_long_cold_spell_starves_a_colony_beside_it() {
    let mut far = colony(14_000.0, 12.0);
    far.stores.place.touched = 0.08;
    far.stores.place.above = 0.02;
    far.stores.place.beside = 0.6;
    far.stores.place.far = 0.3;
    let out = one(&environment(-4.0), housed(far), &Schedule::default());
    let beside = mean(&out, |e| e.ended.isolation_starvation);
    assert!(beside > 0.5, "{beside}");
}

#[test]
fn many_mites_end_a_colony_by_mites_and_few_do_not() {
    let environment = environment(3.5);
    let with = |found| {
        let mut colony = colony(12_000.0, 15.0);
        colony.mites = Mites::Counted { found, bees: 300, on: jiff::civil::date(2025, 9, 8) };
        one(&environment, housed(colony), &Schedule::default())
    };
    let (many, few) = (with(30), with(0));
    assert!(mean(&many, MemberEnd::alive) < mean(&few, MemberEnd::alive) - 0.3);
    let most = |t: &Trajectory| {
        let sums = Cause::ALL.map(|cause| mean(t, |e| e.ended.by_cause()[cause as usize].1));
        Cause::ALL[(0..6).max_by(|a, b| sums[*a].total_cmp(&sums[*b])).unwrap()]
    };
    assert_eq!(most(&many), Cause::Mites);
}

#[test]
fn feed_given_in_time_saves_a_hungry_colony() {
    let environment = environment(3.5);
    let hungry = || housed(colony(18_000.0, 5.0));
    let nothing = one(&environment, hungry(), &Schedule::default());
    let solid = Action::SolidFeed { stores: Kilogram::new(10.0) };
    let in_time = one(&environment, hungry(), &on_day(60, solid.clone()));
    let too_late = one(&environment, hungry(), &on_day(215, solid));
    assert!(mean(&in_time, MemberEnd::alive) > mean(&nothing, MemberEnd::alive) + 0.3);
    assert!((mean(&too_late, MemberEnd::alive) - mean(&nothing, MemberEnd::alive)).abs() < 0.05);
}

#[test]
fn more_food_in_the_same_combs_never_lowers_survival_over_the_members() {
    let environment = environment(2.0);
    let mut last = -1.0;
    for kg in [4.0, 8.0, 12.0, 16.0, 24.0] {
        let alive = mean(&one(&environment, housed(colony(15_000.0, kg)), &Schedule::default()), MemberEnd::alive);
        assert!(alive >= last - 0.01, "{kg} kg: {alive} after {last}");
        last = alive;
    }
}

#[test]
fn frames_moved_between_colonies_keep_the_food_of_the_yard() {
    let environment = environment(3.0);
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed(colony(15_000.0, 20.0)), housed(colony(15_000.0, 8.0))];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let stores = Kilogram::new(2.5);
    let moved = Schedule::new(vec![Event { day: 0, colony: 0, action: Action::MoveFrames { to: 1, stores } }]);
    let total = |out: &[Trajectory]| {
        let all = |t: &Trajectory| t.day(Daily::Stores, 0).map(f64::from).sum::<f64>();
        all(&out[0]) + all(&out[1])
    };
    let (before, after) =
        (run(&yard, &Schedule::default(), settings(Record::Days)), run(&yard, &moved, settings(Record::Days)));
    assert!((total(&before) - total(&after)).abs() < 1e-2 * MEMBERS as f64);
}

#[test]
fn uniting_leaves_one_stronger_colony_and_an_empty_hive() {
    let environment = environment(3.0);
    let parameters = Parameters::shipped().unwrap();
    let colonies = [housed(colony(4_000.0, 8.0)), housed(colony(12_000.0, 12.0))];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
    let united = Schedule::new(vec![Event { day: 0, colony: 0, action: Action::Unite { into: 1 } }]);
    let out = run(&yard, &united, settings(Record::Days));
    let bees = |t: &Trajectory| t.day(Daily::Bees, 5).map(f64::from).sum::<f64>() / MEMBERS as f64;
    assert_eq!(bees(&out[0]), 0.0);
    assert!(bees(&out[1]) > 14_000.0);
}

#[test]
fn a_warm_neighbour_warms_a_nucleus() {
    let environment = environment(0.0);
    let parameters = Parameters::shipped().unwrap();
    let mut nucleus = own_hive(Dress { boxes: 1, ..Dress::BARE }, 0.465, 0.2, 0.244, 5);
    let strong = housed(colony(20_000.0, 24.0));
    nucleus.neighbour = Some(snowhum_apiary::Neighbour { hive: strong.hive.id, share: Fraction::new(0.35) });
    let mut small = colony(6_000.0, 8.0);
    small.frames_of_bees = 4.0;
    let warm = |neighbour| {
        let colonies =
            [strong.clone(), Housed { colony: small.clone(), hive: nucleus.clone(), neighbour, stays: Vec::new() }];
        let yard = Yard { environment: &environment, parameters: &parameters, colonies: &colonies };
        let out = run(&yard, &Schedule::default(), settings(Record::Days));
        out[1].hive(HiveDaily::Warm, 60..120).unwrap()
    };
    let (beside, alone) = (warm(Some(0)), warm(None));
    assert!(beside > alone + 0.05, "{beside} {alone}");
}

/// Free and Racey 1968, Harbo 1983: the share that dies does not depend on colony size among healthy colonies.
#[test]
fn share_of_bees_lost_is_the_same_in_small_and_large_colonies() {
    let environment = environment(6.0);
    let kept = |bees: f64| {
        let out = one(&environment, housed(colony(bees, 20.0)), &Schedule::default());
        let at = |day: usize| out.day(Daily::Bees, day).map(f64::from).sum::<f64>();
        at(90) / at(5)
    };
    let (small, large) = (kept(6_000.0), kept(25_000.0));
    assert!((small / large - 1.0).abs() < 0.08, "{small} {large}");
}

/// Seelely's scales (Lives of Bees) and the trade: more is eaten from February to April than from November to January.
#[test]
fn more_is_eaten_in_late_winter_than_in_midwinter() {
    let out = one(&environment(3.5), housed(colony(18_000.0, 25.0)), &Schedule::default());
    let eaten = |days: std::ops::Range<usize>| {
        let n = days.len() as f64;
        days.map(|day| out.day(Daily::Eaten, day).map(f64::from).sum::<f64>()).sum::<f64>() / n
    };
    // 5 October is day 0: 27 is 1 November, 119 is 1 February, 207 is 30 April.
    assert!(eaten(119..207) > eaten(27..119));
}

/// Common practice: 5,000-10,000 bees at the low of a long winter; most of the fall before the deep cold is not assumed.
#[test]
fn a_strong_colony_comes_down_to_what_the_trade_expects() {
    let mut strong = colony(22_000.0, 28.0);
    strong.bees = Range::exact(22_000.0);
    let out = one(&environment(3.5), housed(strong), &Schedule::default());
    let low = (100..DAYS)
        .map(|day| out.day(Daily::Bees, day).map(f64::from).sum::<f64>() / MEMBERS as f64)
        .fold(f64::INFINITY, f64::min);
    assert!((5_000.0..=10_000.0).contains(&low), "{low}");
}
