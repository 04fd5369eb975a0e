//! Winters out of whole years: bent round, many of them, and between other dates.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::date;
use jiff::tz::TimeZone;
use snowhum_say::Tongue;
use snowhum_units::{Degree, Kelvin, Metre, MetrePerSecond};
use snowhum_weather::{Climate, Hourly, Place, complete, ensemble_from_file, generate, readers};

fn place() -> Place {
    Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) }
}

/// Calendar years put one after another, the hour written into the wind so that it can be found again.
fn years(count: usize) -> Hourly {
    let climate = Climate::at(place()).unwrap();
    let from = date(2005, 1, 1);
    let hours = (date(2005 + count as i16, 1, 1) - from).get_days() as usize * 24;
    let mut file = generate(place(), &climate, &TimeZone::UTC, from, hours.min(87_840), 1, 1).unwrap().paths.remove(0);
    file.wind = (0..file.len()).map(|hour| MetrePerSecond::new(hour as f64)).collect();
    file
}

fn first_of_october(year: usize) -> f64 {
    let days = (date(2005 + year as i16, 10, 1) - date(2005, 1, 1)).get_days();
    f64::from(days) * 24.0
}

#[test]
fn one_whole_year_is_bent_round_at_its_end() {
    let file = years(1);
    let made = ensemble_from_file(&file, place(), &TimeZone::UTC, date(2026, 10, 1), 5_000, 3, 1).unwrap();
    let winds: Vec<f64> = made.paths[0].wind.iter().map(|wind| wind.get()).collect();
    assert_eq!(winds[0], first_of_october(0));
    let end = (8_760.0 - first_of_october(0)) as usize;
    assert_eq!((winds[end - 1], winds[end]), (8_759.0, 0.0));
    assert_eq!(made.start.to_string(), "2026-10-01T00:00:00Z");
    // Snow that belongs to the moved temperatures lies in January and none in the first days of October.
    assert!(made.paths.iter().all(|path| path.snow_depth[110 * 24] > Metre::ZERO));
}

#[test]
fn paths_of_a_typical_year_differ_and_stay_near_it_on_average() {
    let file = years(1);
    let made = ensemble_from_file(&file, place(), &TimeZone::UTC, date(2026, 10, 1), 2_000, 200, 1).unwrap();
    let at = first_of_october(0) as usize;
    let shift: f64 =
        made.paths.iter().map(|path| (path.temperature[1_500] - file.temperature[at + 1_500]).get()).sum::<f64>()
            / 200.0;
    assert!(shift.abs() < 1.0, "{shift}");
    assert_ne!(made.paths[0].temperature, made.paths[1].temperature);
}

#[test]
fn ten_real_winters_are_taken_as_they_are_one_a_path() {
    let file = years(10);
    let made = ensemble_from_file(&file, place(), &TimeZone::UTC, date(2026, 1, 1), 2_000, 20, 1).unwrap();
    assert_eq!(made.paths[0].temperature[..], file.temperature[..2_000]);
    assert_eq!(made.paths[0], made.paths[10]);
    assert_eq!(made.paths[1].wind[0].get(), 8_760.0);
    assert!(Tongue::BRITISH.say(&made.provenance.source).contains("10 years"));
}

#[test]
fn a_daily_record_becomes_a_whole_winter() {
    let mut rows = String::new();
    for day in 0..150 {
        let date = date(2024, 11, 1).checked_add(jiff::Span::new().days(day)).unwrap();
        let stamp = date.strftime("%Y%m%d");
        rows.push_str(&format!("A,{stamp},TMAX,{},,,S,\nA,{stamp},TMIN,{},,,S,\n", -20 - day, -120 - day));
        rows.push_str(&format!("A,{stamp},PRCP,15,,,S,\n"));
    }
    let reading = readers::ghcn_daily(rows.as_bytes(), "a.csv", place(), jiff::tz::Offset::constant(2)).unwrap();
    let (winter, notes) = complete(&reading.raw, "a.csv", place(), &TimeZone::UTC).unwrap();
    assert_eq!(winter.len(), 150 * 24);
    let notes = Tongue::BRITISH.say_all(&notes);
    for quantity in ["humidity", "wind", "cloud", "sun", "snow", "pressure"] {
        assert!(notes.iter().any(|note| note.starts_with(quantity)), "{quantity}: {notes:?}");
    }
    let fallen: f64 = winter.precipitation.iter().map(|fallen| fallen.get() * 1000.0).sum();
    assert!((fallen - 225.0).abs() < 1e-6, "{fallen}");
    assert!(winter.snow_depth[3_000].get() > 0.3);
    assert!(winter.temperature.iter().all(|t| *t < Kelvin::from_celsius(0.0)));
}
