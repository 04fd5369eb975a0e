//! A count of mites noted after the yard was counted, and after a treatment: what it does to the chances.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::{Date, date};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_apiary::{Apiary, Mites};

use crate::common::{asked, note};

const NAME: &str = "Alder";
const AUGUST: Date = date(2025, 8, 20);
const SEPTEMBER: Date = date(2025, 9, 20);

/// The demo's yard of late August, with nothing noted and its mites counted as told.
fn yard(mites: Mites) -> Apiary {
    let mut yard = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    yard.as_of = AUGUST;
    yard.notes.clear();
    for colony in &mut yard.colonies {
        colony.treatments.clear();
        colony.mites = mites.clone();
    }
    yard
}

fn of_alder(answer: &NowAnswer) -> &ColonyNow {
    answer.colonies.iter().find(|colony| colony.name == NAME).unwrap()
}

/// Chance of being alive, fed and queenright in spring if nothing is done.
fn chance(yard: &Apiary, on: Date) -> f64 {
    of_alder(&asked(yard, on)).alive_fed_queenright
}

#[test]
fn a_count_noted_later_moves_the_forecast_as_one_in_the_yard_file_does() {
    let on = date(2025, 9, 10);
    let told = |mites: Mites, line: &str| {
        let mut yard = yard(mites);
        note(&mut yard, NAME, on, line);
        chance(&yard, SEPTEMBER)
    };
    let noted = told(Mites::NotCounted, "mites=21 of 300");
    let [filed, uncounted] =
        [Mites::Counted { found: 21, bees: 300, on }, Mites::NotCounted].map(|mites| told(mites, "entrance=clear"));
    assert_eq!(noted, filed);
    assert!(noted < uncounted - 0.05, "{noted} of {uncounted}");
}

#[test]
fn a_count_after_a_treatment_tells_what_the_treatment_left() {
    let after = |found: u32| {
        let mut yard = yard(Mites::Counted { found: 21, bees: 300, on: AUGUST });
        note(&mut yard, NAME, date(2025, 8, 25), "treated=formic");
        note(&mut yard, NAME, date(2025, 9, 18), &format!("mites={found} of 300"));
        chance(&yard, SEPTEMBER)
    };
    let (worked, failed) = (after(1), after(15));
    assert!(worked > failed + 0.1, "worked {worked}, failed {failed}");
}

#[test]
fn a_count_after_the_winter_treatment_does_not_forget_what_september_found() {
    let heavy = yard(Mites::Counted { found: 21, bees: 300, on: date(2025, 9, 5) });
    let mut clean = heavy.clone();
    note(&mut clean, NAME, date(2025, 11, 20), "treated=oxalic");
    note(&mut clean, NAME, date(2025, 12, 5), "mites=0 of 300");
    let [before, after] = [&heavy, &clean].map(|yard| chance(yard, date(2025, 12, 10)));
    assert!(after <= before + 0.03, "{before} before, {after} after");
}
