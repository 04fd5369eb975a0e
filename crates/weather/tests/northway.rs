//! Real files of a cold place: Northway, Alaska.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::date;
use jiff::tz::{Offset, TimeZone};
use snowhum_say::{Message, Tongue};
use snowhum_units::{Degree, Fraction, Kelvin, Metre, WattPerSquareMetre};
use snowhum_weather::{Hourly, Place, complete, ensemble_from_file, readers, statistics};

const EPW: &[u8] = include_bytes!("data/northway_tmy3_oct_may.epw.z");
const ISD: &[u8] = include_bytes!("data/northway_isd_lite_2018_oct_2019_may.z");

fn unpacked(bytes: &[u8]) -> Vec<u8> {
    miniz_oxide::inflate::decompress_to_vec_zlib(bytes).unwrap()
}

fn place() -> Place {
    Place { latitude: Degree::new(62.967), longitude: Degree::new(-141.933), elevation: Metre::new(522.0) }
}

fn zone() -> TimeZone {
    TimeZone::fixed(Offset::constant(-9))
}

fn typical() -> (Hourly, Vec<Message>) {
    let reading = readers::epw(&unpacked(EPW), "northway.epw").unwrap();
    complete(&reading.raw, &reading.file, reading.place.unwrap(), &zone()).unwrap()
}

fn lowest(t: &[Kelvin]) -> f64 {
    t.iter().map(|t| t.celsius()).fold(f64::MAX, f64::min)
}

#[test]
fn every_row_of_the_epw_file_is_read() {
    let reading = readers::epw(&unpacked(EPW), "northway.epw").unwrap();
    assert!(reading.typical_year);
    assert_eq!(reading.raw.hours.len(), 5_832);
    assert_eq!(reading.place, Some(Place { elevation: Metre::new(522.0), ..place() }));
    // Hour 1 of 1 October, standard time of -9 h, with the minute written as 0.
    assert_eq!(zone().to_datetime(reading.raw.start), date(2001, 10, 1).at(0, 0, 0, 0));
    let known: Vec<Kelvin> = reading.raw.hours.iter().filter_map(|hour| hour.temperature).collect();
    assert_eq!(known.len(), 5_832);
    assert!((lowest(&known) + 46.0).abs() < 1e-9);
    assert!(reading.raw.hours.iter().all(|hour| hour.snow_depth.is_none()));
}

#[test]
fn a_whole_winter_comes_out_of_the_epw_file_with_derived_snow() {
    let (winter, notes) = typical();
    assert_eq!(winter.len(), 5_832);
    assert!(notes.iter().any(|note| note.id() == Some("weather-snow-derived")), "{notes:?}");
    let january = 92 * 24..123 * 24;
    assert!(winter.snow_depth[january].iter().all(|depth| (0.05..1.5).contains(&depth.get())));
    assert_eq!(winter.snow_depth[5_831], Metre::ZERO);
    assert!(winter.humidity.iter().all(|humidity| (0.0..=1.0).contains(&humidity.get())));
    let noon = winter.global.iter().fold(WattPerSquareMetre::ZERO, |most, sun| most.max(*sun));
    assert!((600.0..1000.0).contains(&noon.get()), "{noon}");
}

#[test]
fn isd_lite_rows_lay_out_on_utc_and_short_gaps_are_filled() {
    let reading = readers::isd_lite(&unpacked(ISD), "702910").unwrap();
    assert_eq!(reading.raw.hours.len(), 5_832);
    assert_eq!(reading.raw.start.to_string(), "2018-10-01T00:00:00Z");
    let missing = reading.raw.hours.iter().filter(|hour| hour.temperature.is_none()).count();
    assert_eq!(missing, 93);
    let (winter, notes) = complete(&reading.raw, &reading.file, place(), &zone()).unwrap();
    let notes = Tongue::BRITISH.say_all(&notes);
    assert!(notes.iter().any(|note| note.starts_with("93 missing hours of temperature")), "{notes:?}");
    assert!(notes.iter().any(|note| note.starts_with("precipitation: the file has next to nothing")), "{notes:?}");
    assert!((lowest(&winter.temperature) + 43.9).abs() < 1e-9);
    assert!(winter.cloud.iter().all(|cloud| (Fraction::ZERO..=Fraction::new(1.0)).contains(cloud)));
    let lit = winter.global.iter().filter(|sun| **sun > WattPerSquareMetre::ZERO).count();
    assert!((1_800..3_200).contains(&lit), "{lit}");
}

#[test]
fn a_long_gap_in_temperature_is_a_fault_that_names_its_date() {
    let text = String::from_utf8(unpacked(ISD)).unwrap();
    let cut: String = text.lines().filter(|row| !row.starts_with("2019 01 06")).map(|row| format!("{row}\n")).collect();
    let reading = readers::isd_lite(cut.as_bytes(), "702910").unwrap();
    let fault = complete(&reading.raw, &reading.file, place(), &zone()).unwrap_err().to_string();
    assert!(fault.contains("24 hours from 2019-01-05 15:00"), "{fault}");
}

#[test]
fn winters_round_a_typical_year_are_colder_than_it_and_keep_its_mean() {
    let (winter, _) = typical();
    let made = ensemble_from_file(&winter, place(), &zone(), date(2025, 10, 5), 5_000, 64, 3).unwrap();
    assert_eq!((made.paths.len(), made.hours()), (64, 5_000));
    let all: Vec<Kelvin> = made.paths.iter().flat_map(|path| path.temperature.clone()).collect();
    let (mean, _) = statistics::mean_and_spread(&all).unwrap();
    let (own, _) = statistics::mean_and_spread(&winter.temperature[96..5_096]).unwrap();
    assert!((mean - own).get().abs() < 0.8, "{mean} {own}");
    assert!(lowest(&all) < lowest(&winter.temperature) - 3.0, "{}", lowest(&all));
    assert!(Tongue::BRITISH.say(&made.provenance.notes[0]).contains("typical year"));
    let again = ensemble_from_file(&winter, place(), &zone(), date(2025, 10, 5), 5_000, 64, 3).unwrap();
    assert_eq!(made, again);
}

#[test]
fn dates_a_part_of_a_year_does_not_cover_are_a_clear_fault() {
    let (winter, _) = typical();
    let fault = ensemble_from_file(&winter, place(), &zone(), date(2025, 8, 1), 5_000, 2, 3).unwrap_err().to_string();
    assert!(fault.contains("from 08-01") && fault.contains("whole year"), "{fault}");
}
