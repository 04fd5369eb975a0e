//! What a treatment against mites can still do, by the days of three sites far apart.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::{Date, date};
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::sums::mites::{SeasonDays, of_yard};
use snowhum_apiary::Apiary;
use snowhum_say::Tongue;
use snowhum_units::{Degree, Metre};

use crate::common;

const PATHS: usize = 32;

fn yard_at(latitude: f64, longitude: f64, elevation: f64, zone: &str) -> Apiary {
    let mut apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    apiary.site.latitude = Degree::new(latitude);
    apiary.site.longitude = Degree::new(longitude);
    apiary.site.elevation = Metre::new(elevation);
    apiary.site.zone = zone.to_owned();
    apiary
}

fn lake() -> Apiary {
    yard_at(61.7, 27.3, 105.0, "Europe/Helsinki")
}

fn plain() -> Apiary {
    yard_at(46.0, -75.0, 100.0, "America/Toronto")
}

fn alp() -> Apiary {
    yard_at(46.6, 8.0, 1_400.0, "Europe/Zurich")
}

fn windows(apiary: &Apiary, as_of: Date) -> JobsAnswer {
    common::site_windows(apiary, as_of, PATHS, 1)
}

fn said(apiary: &Apiary, as_of: Date) -> String {
    let days = SeasonDays::of(&windows(apiary, as_of), &apiary.site).unwrap();
    let answer = of_yard(apiary, None, None, Some(&days)).unwrap().unwrap();
    assert!(answer.say.contains(&days.says()), "the answer says it");
    Tongue::BRITISH.say(&days.says())
}

#[test]
fn on_one_day_of_august_three_sites_are_told_three_things_by_their_own_days() {
    let mid_august = date(2025, 8, 15);
    assert!(said(&lake(), mid_august).contains("are being raised here"), "61.7 N");
    assert!(said(&plain(), mid_august).contains("still to be raised here"), "46 N");
    assert!(said(&alp(), mid_august).contains("are being raised here"), "46.6 N, 1400 m");
    let early = date(2025, 8, 1);
    assert!(said(&lake(), early).contains("is past; ") && said(&alp(), early).contains("is past; "), "the safe day");
}

#[test]
fn winter_bees_are_raised_sooner_in_the_north_and_on_a_mountain_than_on_the_plain() {
    let october = date(2025, 10, 5);
    for apiary in [lake(), alp()] {
        assert!(said(&apiary, october).contains("have been raised here"), "{}", apiary.site.latitude.get());
    }
    assert!(said(&plain(), october).contains("are being raised here"), "46 N");
    for apiary in [lake(), plain(), alp()] {
        assert!(said(&apiary, date(2026, 2, 1)).contains("no longer mends these"), "February");
        assert!(said(&apiary, date(2026, 5, 25)).contains("count again every month"), "May");
        assert!(
            said(&apiary, date(2026, 6, 10)).contains("still to be raised here"),
            "June looks to the season to come"
        );
    }
}

#[test]
fn the_days_named_are_those_of_the_jobs() {
    for apiary in [lake(), plain(), alp()] {
        let answer = windows(&apiary, date(2025, 7, 5));
        let treat = answer.window("treat-mites").unwrap();
        let says = Tongue::BRITISH.say(&SeasonDays::of(&answer, &apiary.site).unwrap().says());
        let day = Tongue::BRITISH.day(treat.earliest.unwrap());
        assert!(says.contains(&day), "{says} does not name {day}");
    }
}

#[test]
fn of_a_yard_whose_colonies_were_all_counted_none_is_said_to_be_worse() {
    let mut apiary = lake();
    let said = |apiary: &Apiary| {
        let counted = of_yard(apiary, None, None, None).unwrap().unwrap();
        Tongue::BRITISH.say(&counted.yard.unwrap().say)
    };
    assert!(!said(&apiary).contains("not sampled"));
    apiary.colonies[4].mites = snowhum_apiary::Mites::NotCounted;
    assert!(said(&apiary).contains("not sampled"));
}
