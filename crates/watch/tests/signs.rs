//! What the laws of the signs promise.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "signs/agreement.rs"]
mod agreement;
#[path = "signs/poke.rs"]
mod poke;
#[path = "signs/wild.rs"]
mod wild;

use agreement::{agree, between, cells};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use snowhum_apiary::{
    DeadCount, DeadPlace, DroppingsPlace, Entry, Flight, Listening, Poked, Seen, Sign, SignKind, UpperHoleSign,
    Weighing,
};
use snowhum_draws::Key;
use snowhum_units::Kilogram;
use snowhum_watch::signs::{
    Hour, Today, answer, answers_like, law, quiet_chance, sample_visit, seen, visit_log_probability,
};
use snowhum_watch::{Answer, Conditions, FreshSnow, Law, Life, Own, Parameters, View};
use wild::{any_day, any_view};

const SILENT: Sign = Sign::Hum { heard: Seen::No, how: Listening::Ear };
const HEARD: Sign = Sign::Hum { heard: Seen::Yes, how: Listening::Ear };
const NO_DEAD: Sign = Sign::DeadBees { count: DeadCount::Counted(0), place: DeadPlace::Snow };
const DAYS: [Today; 2] = [Today::Quiet, Today::Lively];

fn parameters() -> Parameters {
    Parameters::shipped().unwrap()
}

/// A middling colony in midwinter frost.
fn living() -> View {
    View {
        life: Life::Queenright,
        bees: 10_000.0,
        brood: 0.0,
        seams: 5.5,
        spoilt: 0.1,
        stores_kg: 12.0,
        other_kg: 2.0,
        warm_c: 8.0,
        cold_c: -2.0,
        humidity: 0.75,
        rime_hours: 40.0,
        old_rime_hours: 60.0,
        damp: 0.1,
        litter_outside: 1.0,
        litter_floor: 60.0,
        flight_hours: 0.0,
        confined_days: 40.0,
        lid_resistance: 1.5,
        own: Own { tare_kg: 20.0, side_share: 0.48, seen: 0.6, ear: 0.0 },
    }
}

/// The same three weeks after its end.
fn dead() -> View {
    View {
        life: Life::Dead { days: 21.0 },
        rime_hours: 0.0,
        old_rime_hours: 100.0,
        damp: 0.0,
        litter_outside: 0.05,
        litter_floor: 10.0,
        warm_c: -4.0,
        cold_c: -5.0,
        humidity: 0.9,
        ..living()
    }
}

fn frost(air_c: f64) -> Conditions {
    Conditions { air_c, wind_m_per_s: 1.5, snow_m: 0.3, fresh_snow: FreshSnow::None, week_c: air_c, season_day: 20.0 }
}

/// A flying day: nine degrees, and sun for views with hours of flight.
fn mild(season_day: f64) -> Conditions {
    Conditions { air_c: 9.0, wind_m_per_s: 1.0, snow_m: 0.1, fresh_snow: FreshSnow::None, week_c: 1.0, season_day }
}

fn flying(view: View) -> View {
    View { flight_hours: 2.0, ..view }
}

fn in_spring(view: View) -> View {
    View { brood: 4_000.0, confined_days: 1.0, ..flying(view) }
}

/// Every example of a sign that has a law, and the forms that a law tells apart beside them.
fn templates() -> Vec<Sign> {
    let dead = "dead=0 on ground; dead=0 on board; dead=0 on tray; dead=0 behind guard; dead=1-5";
    let more = "hum=silent by tube; hum=silent by knock; inside=3 C combs; inside=3 C floor; bees=seen";
    let examples = SignKind::ALL.iter().flat_map(|kind| kind.examples()).copied();
    let all = examples.chain(dead.split("; ")).chain(more.split("; "));
    let read =
        |written| if let Entry::Sign(sign) = Entry::read(written, &|_| None).unwrap() { Some(sign) } else { None };
    all.filter_map(read).filter(|sign| answer(sign).is_some()).collect()
}

fn views_and_days() -> Vec<(View, Conditions)> {
    vec![
        (living(), frost(-5.0)),
        (dead(), frost(-5.0)),
        (in_spring(living()), mild(105.0)),
        (in_spring(dead()), mild(105.0)),
        (View { life: Life::Queenless, bees: 2_500.0, ..flying(living()) }, mild(70.0)),
    ]
}

/// How much likelier the signs are of the living than of the dead.
fn ratio(signs: &[Sign], alive: &View, dead: &View, day: &Conditions) -> f64 {
    let p = parameters();
    (visit_log_probability(signs, alive, day, &p) - visit_log_probability(signs, dead, day, &p)).exp()
}

/// Chance of being alive after a visit.
fn after(before: f64, signs: &[Sign], alive: &View, dead: &View, day: &Conditions) -> f64 {
    let odds = before / (1.0 - before) * ratio(signs, alive, dead, day);
    odds / (1.0 + odds)
}

#[test]
fn every_parameter_has_a_range_a_source_and_a_status() {
    let p = parameters();
    assert!(Parameters::NAMES.len() > 80);
    for (name, parameter) in p.iter() {
        assert!(parameter.low.unwrap() < parameter.high.unwrap(), "{name}");
        assert!(!parameter.source.trim().is_empty() && !parameter.unit.trim().is_empty(), "{name}");
    }
}

#[test]
fn what_is_made_up_is_as_frequent_as_its_law_says() {
    let (p, key) = (parameters(), Key::new(20_260_101, 1));
    let mut who = 0;
    for (view, day) in views_and_days() {
        for (template, today) in templates().iter().flat_map(|sign| DAYS.map(|today| (sign, today))) {
            let law = law(template, &view, &day, today, Hour::PLAIN, &p).unwrap();
            let (chances, cell) = cells(&law);
            let mut counts = vec![0; chances.len()];
            who += 1;
            for time in 0..4_000 {
                counts[cell(&law.sample(key.uniforms([who, time, 0, 0])))] += 1;
            }
            agree(&chances, &counts, &format!("{template:?} {today:?} {:?} {law:?}", view.life));
        }
    }
}

#[test]
fn a_visit_made_up_is_as_frequent_as_its_chance_says() {
    let (p, key) = (parameters(), Key::new(20_260_101, 2));
    let signs = [SILENT, Sign::Flight(Flight::None), Sign::UpperHole(UpperHoleSign::Dry)];
    let [hums, flights, holes] = signs.each_ref().map(answers_like);
    let mut visits: Vec<Vec<Sign>> = Vec::new();
    for (hum, flight) in hums.iter().flat_map(|hum| flights.iter().map(move |flight| (hum, flight))) {
        visits.extend(holes.iter().map(|hole| vec![hum.clone(), flight.clone(), hole.clone()]));
    }
    for (place, (view, day)) in (0..).zip(views_and_days()) {
        let chance = |visit: &Vec<Sign>| visit_log_probability(visit, &view, &day, &p).exp();
        let chances: Vec<f64> = visits.iter().map(chance).collect();
        assert!((chances.iter().sum::<f64>() - 1.0).abs() < 1e-6);
        let mut counts = vec![0; visits.len()];
        for time in 0..20_000 {
            let visit = sample_visit(&signs, &view, &day, &p, |what| key.uniforms([place, time, what, 0]));
            counts[visits.iter().position(|known| *known == visit).unwrap()] += 1;
        }
        agree(&chances, &counts, &format!("{view:?}"));
    }
}

#[test]
fn chances_of_all_answers_sum_to_one() {
    let p = parameters();
    for (view, day) in views_and_days() {
        for (template, today) in templates().iter().flat_map(|sign| DAYS.map(|today| (sign, today))) {
            let law = law(template, &view, &day, today, Hour::PLAIN, &p).unwrap();
            let sum: f64 = match law {
                Law::Count { .. } => {
                    let of = |(least, most)| law.log_probability(&Answer::Count(least, most)).exp();
                    DeadCount::BANDS.into_iter().map(|band| of(band.bounds())).sum()
                }
                Law::Reading { mean, sd, .. } => {
                    (-60..60).map(|n| between(&law, mean + f64::from(n) * sd, mean + f64::from(n + 1) * sd)).sum()
                }
                Law::There(_) | Law::Choice(_) => cells(&law).0.iter().sum(),
            };
            assert!((sum - 1.0).abs() < 1e-6, "{template:?} {law:?}: {sum}");
        }
    }
}

#[test]
fn a_band_is_as_likely_as_its_counts_together() {
    let (p, view, day) = (parameters(), View { litter_outside: 20.0, ..living() }, frost(2.0));
    let chance = |count| {
        let sign = Sign::DeadBees { count, place: DeadPlace::Snow };
        visit_log_probability(&[sign], &view, &day, &p).exp()
    };
    let counts: f64 = (6..=20).map(|n| chance(DeadCount::Counted(n))).sum();
    assert!((counts - chance(DeadCount::Band(6, Some(20)))).abs() < 1e-9);
}

#[test]
fn what_is_written_reads_back_as_what_was_seen() {
    let (p, key) = (parameters(), Key::new(20_260_101, 3));
    for (view, day) in views_and_days() {
        for (place, template) in (0..).zip(templates()) {
            let drawn = law(&template, &view, &day, Today::Lively, Hour::PLAIN, &p)
                .unwrap()
                .sample(key.uniforms([place, 0, 0, 0]));
            let Some(sign) = seen(&template, &drawn) else {
                assert!(matches!(template, Sign::ClusterSeen { seams: None } | Sign::DeadQueen | Sign::SeenDead));
                assert_eq!(drawn, Answer::There(false));
                continue;
            };
            match (answer(&sign).unwrap(), drawn) {
                (Answer::Reading(written), Answer::Reading(drawn)) => {
                    let (least, most) = match sign {
                        Sign::InsideHumidity { .. } => (0.0, 1.0),
                        Sign::InsideTemperature { .. } => (-300.0, 300.0),
                        _ => (0.0, 300.0),
                    };
                    assert!((written - drawn.clamp(least, most)).abs() < 1e-9, "{sign:?} {drawn}");
                }
                (Answer::Count(least, most), Answer::Count(n, _)) => {
                    assert!(least <= n && most.is_none_or(|most| n <= most), "{sign:?} {n}");
                }
                (written, drawn) => assert_eq!(written, drawn, "{sign:?}"),
            }
        }
    }
}

#[test]
fn three_silent_visits_worry_but_do_not_bury() {
    let day = frost(-5.0);
    let visit = [SILENT, Sign::UpperHole(UpperHoleSign::Dry), NO_DEAD];
    let without_hole = [SILENT, NO_DEAD];
    let long_rime = View { rime_hours: 400.0, ..living() };
    for (signs, alive) in [(&visit[..], living()), (&without_hole[..], living()), (&visit[..], long_rime)] {
        let mut chance = 0.9;
        for _ in 0..3 {
            let next = after(chance, signs, &alive, &dead(), &day);
            assert!(next < chance - 0.01, "{chance} -> {next}");
            chance = next;
        }
        assert!(chance >= 0.3, "{chance} after {signs:?}");
    }
}

#[test]
fn a_cleansing_flight_in_winter_proves_life() {
    for seen in [Flight::Well, Flight::Thin] {
        let chance = after(0.8, &[Sign::Flight(seen)], &flying(living()), &flying(dead()), &mild(45.0));
        assert!(chance > 0.97, "{seen:?}: {chance}");
    }
}

#[test]
fn pollen_in_april_proves_life() {
    let chance = after(0.8, &[Sign::Pollen(Seen::Yes)], &in_spring(living()), &in_spring(dead()), &mild(105.0));
    assert!(chance > 0.97, "{chance}");
}

#[test]
fn a_dead_hive_shows_a_cleansing_flight_at_most_three_times_in_a_hundred() {
    let p = parameters();
    for (air_c, season_day) in [(9.0, 45.0), (15.0, 75.0), (25.0, 120.0), (40.0, 150.0)] {
        let day = Conditions { air_c, ..mild(season_day) };
        let view = View { flight_hours: 12.0, ..dead() };
        let chance = |seen| visit_log_probability(&[Sign::Flight(seen)], &view, &day, &p).exp();
        let either = chance(Flight::Well) + chance(Flight::Thin);
        assert!(either <= 0.03, "{air_c} C: {either}");
    }
}

#[test]
fn traffic_without_pollen_in_march_is_no_proof_of_life() {
    let signs = [Sign::Flight(Flight::Traffic), Sign::Pollen(Seen::No)];
    for (confined_days, brood) in [(1.0, 0.0), (1.0, 4_000.0), (5.0, 4_000.0), (20.0, 2_000.0)] {
        let alive = View { confined_days, brood, ..flying(living()) };
        let chance = after(0.8, &signs, &alive, &flying(dead()), &Conditions { air_c: 12.0, ..mild(75.0) });
        assert!(chance <= 0.9, "{confined_days} days shut in, {brood} cells: {chance}");
    }
}

#[test]
fn no_hum_to_the_ear_in_deep_frost_says_little() {
    let ratio = ratio(&[SILENT], &living(), &dead(), &frost(-15.0));
    assert!(ratio > 0.6 && ratio < 1.0, "{ratio}");
}

#[test]
fn old_rime_says_little_and_new_rime_much() {
    let hole = |state| ratio(&[Sign::UpperHole(state)], &living(), &dead(), &frost(-8.0));
    let (old, new) = (hole(UpperHoleSign::Rime), hole(UpperHoleSign::NewRime));
    assert!((0.6..1.5).contains(&old), "{old}");
    assert!(new > 8.0, "{new}");
}

#[test]
fn two_listenings_of_one_visit_are_not_two_independent_proofs() {
    let (p, day) = (parameters(), frost(-5.0));
    let tube = |heard| Sign::Hum { heard, how: Listening::Tube };
    let of = |signs: &[Sign]| ratio(signs, &living(), &dead(), &day);
    let (together, apart) = (of(&[SILENT, tube(Seen::No)]), of(&[SILENT]) * of(&[tube(Seen::No)]));
    assert!(together > apart * 1.02, "{together} against {apart}");
    // Once a colony has been heard, the day is likely a lively one, and a second hum is no surprise.
    let chance = |signs: &[Sign]| visit_log_probability(signs, &living(), &day, &p).exp();
    assert!(chance(&[HEARD, tube(Seen::Yes)]) > 1.02 * chance(&[HEARD]) * chance(&[tube(Seen::Yes)]));
}

#[test]
fn cold_and_wind_make_a_day_quieter() {
    let p = parameters();
    let at = |air_c, wind_m_per_s| quiet_chance(&Conditions { air_c, wind_m_per_s, ..frost(0.0) }, &p);
    assert!(at(5.0, 0.0) < at(-10.0, 0.0) && at(-10.0, 0.0) < at(-10.0, 3.0));
    assert!(at(-60.0, 40.0) <= 0.8);
}

#[test]
fn snow_that_the_weather_walked_has_hides_the_dead_outside_but_once() {
    let p = Parameters::shipped().unwrap();
    let mean = |place, fresh_snow| {
        let sign = Sign::DeadBees { count: DeadCount::Counted(3), place };
        match law(&sign, &living(), &Conditions { fresh_snow, ..frost(-5.0) }, Today::Lively, Hour::PLAIN, &p).unwrap()
        {
            Law::Count { mean, .. } => mean,
            other => panic!("{other:?}"),
        }
    };
    for outside in [DeadPlace::Snow, DeadPlace::Ground] {
        assert_eq!(mean(outside, FreshSnow::Walked), mean(outside, FreshSnow::None), "the litter has it already");
        assert!(mean(outside, FreshSnow::Noted) < mean(outside, FreshSnow::None));
    }
    assert!(mean(DeadPlace::Board, FreshSnow::Walked) < mean(DeadPlace::Board, FreshSnow::None));
}

#[test]
fn a_quiet_colony_shows_less_and_a_dead_one_the_same() {
    let p = parameters();
    let hum = |view: &View, today| match law(&HEARD, view, &frost(-5.0), today, Hour::PLAIN, &p) {
        Some(Law::There(chance)) => chance,
        other => panic!("{other:?}"),
    };
    assert!(hum(&living(), Today::Quiet) < 0.6 * hum(&living(), Today::Lively));
    for (template, air_c) in templates().iter().flat_map(|sign| [-5.0, 9.0].map(|air_c| (sign, air_c))) {
        let of = |today| law(template, &dead(), &frost(air_c), today, Hour::PLAIN, &p);
        assert_eq!(of(Today::Quiet), of(Today::Lively), "{template:?}");
    }
}

#[test]
fn a_hive_lifted_at_both_sides_weighs_the_same_wherever_its_weight_lies() {
    // A 40 kg hive on supports a tenth of its width in from each edge, by moments about the far support.
    let weight = 40.0;
    for centre in [0.35, 0.6] {
        let (left, right) = (weight * (0.9 - centre) / 0.9, weight * (centre - 0.1) / 0.9);
        let (left_kg, right_kg) = (Kilogram::new(left), Kilogram::new(right));
        let lift = Sign::Weight(Weighing::TwoSidedLift { left_kg, right_kg, inset_share: 0.1 });
        let Some(Answer::Reading(read)) = answer(&lift) else { panic!("{lift:?}") };
        assert!((read - weight).abs() < 1e-9, "{read}");
    }
}

#[test]
fn weighings_tell_full_from_empty_and_not_living_from_dead() {
    let p = parameters();
    for weighing in templates().into_iter().filter(|sign| matches!(sign, Sign::Weight(_))) {
        let of = |view: &View| visit_log_probability(std::slice::from_ref(&weighing), view, &frost(-5.0), &p);
        let full = View { stores_kg: 40.0, ..living() };
        assert!(of(&View { stores_kg: 9.0, ..living() }) > of(&full) + 0.5, "{weighing:?}");
        assert!((of(&View { life: Life::Dead { days: 3.0 }, ..full }) - of(&full)).abs() < 1e-12, "{weighing:?}");
    }
}

#[test]
fn seen_dead_and_bees_seen_alive_settle_it() {
    let day = frost(0.0);
    assert!(after(0.9, &[Sign::SeenDead], &living(), &dead(), &day) < 0.05);
    for seams in [None, Some(5.0), Some(3.0)] {
        let chance = after(0.3, &[Sign::ClusterSeen { seams }], &living(), &dead(), &day);
        assert!(chance > 0.98, "{seams:?}: {chance}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 400,
        failure_persistence: None,
        rng_seed: RngSeed::Fixed(20_260_101),
        ..ProptestConfig::default()
    })]

    #[test]
    fn whatever_the_hive_and_the_day_every_chance_is_a_number(view in any_view(), day in any_day()) {
        let (p, signs) = (parameters(), templates());
        prop_assert!(visit_log_probability(&signs, &view, &day, &p).is_finite());
        for (sign, today) in signs.iter().flat_map(|sign| DAYS.map(|today| (sign, today))) {
            let law = law(sign, &view, &day, today, Hour::PLAIN, &p).unwrap();
            let log = law.log_probability(&answer(sign).unwrap());
            prop_assert!(log.is_finite(), "{sign:?} {law:?}: {log}");
            match law {
                Law::There(chance) => prop_assert!((0.0..=1.0).contains(&chance), "{sign:?} {chance}"),
                Law::Choice(weights) => {
                    prop_assert!(weights.iter().all(|weight| (0.0..=1.0).contains(weight)), "{sign:?} {weights:?}");
                }
                Law::Count { mean, size, .. } => prop_assert!(mean > 0.0 && mean.is_finite() && size > 0.0),
                Law::Reading { mean, sd, .. } => prop_assert!(mean.is_finite() && sd > 0.0),
            }
        }
        let key = Key::new(7, 7);
        let visit = sample_visit(&signs, &view, &day, &p, |what| key.uniforms([what, 0, 0, 0]));
        prop_assert!(visit.len() <= signs.len());
    }
}
