//! Numbers as keepers write them: in whose units they are read, on every command that asks for a quantity.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).stdin(Stdio::null()).output().unwrap()
}

fn stdout(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

fn refused(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    String::from_utf8(output.stderr).unwrap().split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A folder of this test alone, empty.
fn folder(name: &str) -> PathBuf {
    let folder = std::env::temp_dir().join(format!("snowhum-units-{}-{name}", std::process::id()));
    std::fs::remove_dir_all(&folder).ok();
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

/// A keeper's own yard: the demo, said to be no invention.
fn own_yard(name: &str) -> PathBuf {
    let text = snowhum_apiary::demo_text().replace("invented = true", "invented = false");
    let file = folder(name).join("mine.toml");
    std::fs::write(&file, text).unwrap();
    file
}

/// Each command with a bare number, with metric and with US units: every quantity that the tree of arguments holds.
const BARE: [(&[&str], &str, &str); 15] = [
    (&["weigh", "--left", "#", "--right", "19 kg"], "kg", "lb"),
    (&["weigh", "--left", "19 kg", "--right", "#"], "kg", "lb"),
    (&["weigh", "--left", "23 kg", "--right", "19 kg", "--width", "#"], "cm", "in"),
    (&["weigh", "--left", "23 kg", "--right", "19 kg", "--width", "50 cm", "--inset", "#"], "cm", "in"),
    (&["weigh", "--left", "23 kg", "--right", "19 kg", "--width", "50 cm", "--lift", "#"], "cm", "in"),
    (&["weigh", "--left", "23 kg", "--right", "19 kg", "--width", "50 cm", "--centre-height", "#"], "cm", "in"),
    (&["weigh", "--one-side", "#"], "kg", "lb"),
    (&["weigh", "--one-side", "19 kg", "--before", "#"], "kg", "lb"),
    (&["weigh", "--scale", "50 kg", "--tare", "#"], "kg", "lb"),
    (&["weigh", "--scale", "50 kg", "--tare", "20 kg", "--other", "#"], "kg", "lb"),
    (&["feed", "--short", "#"], "kg", "lb"),
    (&["feed", "--short", "8 kg", "--feeder", "#"], "L", "gal"),
    (&["feed", "--short", "8 kg", "--slab", "#"], "cm", "in"),
    (&["hive", "Alder", "--outside", "#"], "C", "F"),
    (&["hive", "Alder", "--outside", "-10 C", "--wind", "#"], "m/s", "mph"),
];

#[test]
fn every_bare_number_follows_the_units_on_every_command() {
    for (command, metric, us) in BARE {
        let number = if command.contains(&"--width") && command.last() == Some(&"#") && command.len() == 7 {
            "45"
        } else {
            "4,5"
        };
        for (system, unit) in [("metric", metric), ("us", us)] {
            let with = |text: &str| {
                let written: Vec<&str> = command.iter().map(|part| if *part == "#" { text } else { part }).collect();
                let output = snowhum(&[&["--units", system, "--json"], written.as_slice()].concat());
                (output.status.code(), String::from_utf8(output.stdout).unwrap())
            };
            let told = format!("{} {unit}", number.replace(',', "."));
            assert_eq!(with(number), with(&told), "{command:?} --units {system}");
        }
    }
}

#[test]
fn two_sides_of_42_and_38_are_pounds_under_us_units() {
    let us = stdout(&["--units", "us", "weigh", "--left", "42", "--right", "38", "--json"]);
    assert_eq!(us, stdout(&["weigh", "--left", "42 lb", "--right", "38 lb", "--json"]));
    assert_ne!(us, stdout(&["weigh", "--left", "42", "--right", "38", "--json"]));
    let named = stdout(&["--units", "us", "weigh", "Alder", "42", "38", "--json"]);
    assert_eq!(named, stdout(&["weigh", "Alder", "42 lb", "38 lb", "--json"]));
}

#[test]
fn one_reading_alone_is_asked_about_and_thousands_are_refused_with_both_readings() {
    let one = refused(&["weigh", "Alder", "42"]);
    assert!(one.contains("--scale") && one.contains("--one-side"), "{one}");
    let two = refused(&["weigh", "--scale", "1,500"]);
    assert!(two.contains("1.500") && two.contains("1500"), "{two}");
}

#[test]
fn a_named_colony_brings_its_hive_its_region_and_its_month() {
    let weighed: serde_json::Value =
        serde_json::from_str(&stdout(&["weigh", "Alder", "42 lb", "38 lb", "--json"])).unwrap();
    assert!(weighed["hive"].is_string() && weighed["stores_kg"].is_object(), "{weighed}");
    let mites: serde_json::Value = serde_json::from_str(&stdout(&["mites", "Alder", "14/300", "--json"])).unwrap();
    assert_eq!(mites["colonies"][0]["name"], "Alder");
    assert_eq!(stdout(&["mites", "Alder", "3 %", "--json"]), stdout(&["mites", "Alder", "9/300", "--json"]));
    let wrong = refused(&["mites", "Aldr", "14/300"]);
    assert!(wrong.contains("Alder"), "{wrong}");
}

#[test]
fn what_is_kept_stands_in_the_yard_file_and_is_read_again() {
    let file = own_yard("kept");
    let path = file.to_str().unwrap();
    let at = "2026-02-20 10:00";
    stdout(&["--units", "us", "weigh", "Alder", "42", "38", "--apiary", path, "--keep", "--at", at]);
    stdout(&["mites", "Alder", "14/300", "--apiary", path, "--keep", "--at", at]);
    stdout(&[
        "--units",
        "us",
        "note",
        "Alder",
        "fed=5 fondant",
        "--apiary",
        path,
        "--at",
        "21.2.2026 9:00",
        "--air",
        "23",
    ]);
    let list = stdout(&["note", "Alder", "--list", "--apiary", path]);
    for noted in ["stores=", "mites=14 of 300", "fed=2.268 kg fondant"] {
        assert!(list.split_whitespace().collect::<Vec<_>>().join(" ").contains(noted), "{noted}: {list}");
    }
    let text = std::fs::read_to_string(&file).unwrap();
    assert!(text.contains("air = \"-5.0 C\""), "{text}");
    assert!(text.starts_with(&snowhum_apiary::demo_text()[..200]), "what stood there stays");
}

#[test]
fn a_slip_is_asked_about_and_a_time_to_come_refused() {
    let file = own_yard("asked");
    let path = file.to_str().unwrap();
    let note = |at: &str, more: &[&str]| {
        snowhum(&[&["note", "Alder", "hum=heard", "--apiary", path, "--at", at], more].concat())
    };
    assert!(note("2026-02-20 10:00", &[]).status.success());
    let twice = note("2026-02-20 10:00", &[]);
    assert_eq!(twice.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&twice.stderr).contains("--sure"));
    assert_eq!(note("2020-02-20 10:00", &[]).status.code(), Some(2), "before the first count");
    assert!(note("2020-02-20 10:00", &["--sure"]).status.success());
    let ahead = note("2140-02-20 10:00", &["--sure"]);
    assert_eq!(ahead.status.code(), Some(2), "nobody has seen it yet");
    assert!(String::from_utf8_lossy(&ahead.stderr).contains("still to come"));
}

#[test]
fn an_unknown_word_brings_three_suggestions_and_no_more() {
    let file = own_yard("words");
    let path = file.to_str().unwrap();
    for wrong in ["hole=frosty", "xyzzy=1", "all is well", "upper=shut"] {
        let told = refused(&["note", "Alder", wrong, "--apiary", path]);
        assert!(told.matches('"').count() <= 16 && told.len() < 400, "{wrong}: {told}");
    }
}
