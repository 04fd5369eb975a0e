//! Jobs, their calendar and spring as a keeper asks for them.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::Path;
use std::process::{Command, Output};

use serde_json::Value;

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).args(["--members", "32"]).output().unwrap()
}

fn text(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn jobs_promise_their_keys_and_write_a_calendar() {
    let file = Path::new(env!("CARGO_TARGET_TMPDIR")).join("jobs-and-dates.ics");
    let answer: Value = serde_json::from_str(&text(&["jobs", "--json", "--ics", file.to_str().unwrap()])).unwrap();
    assert_eq!(answer["schema"], "snowhum.jobs/1");
    let windows = answer["windows"].as_array().unwrap();
    assert!(windows.len() > 25);
    for window in windows {
        for key in ["id", "what", "earliest", "usual", "latest", "share", "trigger", "why", "colonies", "caution"] {
            assert!(window.get(key).is_some(), "{key} is missing in {window}");
        }
    }
    let calendar = std::fs::read_to_string(&file).unwrap();
    assert!(calendar.starts_with("BEGIN:VCALENDAR\r\n") && calendar.ends_with("END:VCALENDAR\r\n"));
    let dated = windows.iter().filter(|window| !window["earliest"].is_null()).count();
    let hives = answer["hives"].as_array().unwrap();
    for hive in hives {
        for key in ["name", "verdict", "says", "on"] {
            assert!(hive.get(key).is_some(), "{key} is missing in {hive}");
        }
    }
    let due = hives.iter().filter(|hive| !hive["on"].is_null()).count();
    let steps = hives.iter().filter_map(|hive| hive["then"].as_array()).flatten();
    let then = steps.filter(|step| !step["by"].is_null()).count();
    let events = calendar.matches("BEGIN:VEVENT").count();
    assert!(events <= dated + due + then && events > 25, "{events} events, {dated} windows, {due} hives, {then} steps");
}

#[test]
fn jobs_and_spring_fit_eighty_columns_in_both_systems() {
    for arguments in [&["jobs"][..], &["jobs", "--units", "us"], &["spring", "--as-of", "2026-04-10", "--units", "us"]]
    {
        let page = text(arguments);
        assert!(page.lines().all(|line| line.chars().count() <= 80), "{arguments:?}");
        assert!(!page.contains("NaN"), "{arguments:?}");
    }
    assert!(!text(&["spring", "--as-of", "2026-04-10", "--units", "us"]).contains(" kg"));
}

#[test]
fn a_calendar_that_cannot_be_written_is_said_with_code_3() {
    let output = snowhum(&["jobs", "--ics", "/no such folder/jobs.ics"]);
    assert_eq!(output.status.code(), Some(3));
    assert!(String::from_utf8_lossy(&output.stderr).contains("cannot be written"));
}

#[test]
fn a_day_before_the_count_still_has_the_site_s_windows() {
    let answer: Value = serde_json::from_str(&text(&["jobs", "--json", "--as-of", "2025-08-01"])).unwrap();
    let honey = answer["windows"].as_array().unwrap().iter().find(|window| window["id"] == "honey-off").unwrap();
    assert_eq!(honey["due"], "now");
}

/// An invented yard on a plain where flowers come in March and April still starves; counted on a day.
fn plain(counted: &str) -> std::path::PathBuf {
    let file = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("plain-{counted}.toml"));
    let yard = format!(
        "[apiary]\nname = \"Plain\"\ninvented = true\nas_of = {counted}\n[site]\nlatitude = 46.0\nlongitude = 20.0\n\
         elevation = \"80 m\"\nzone = \"Europe/Budapest\"\n[[hive]]\nname = \"1\"\nkind = \"Langstroth 10\"\n[[colony]]\n\
         name = \"One\"\nhive = \"1\"\nstrength = \"middling\"\nfood = \"light\"\nmites = \"not counted\"\n"
    );
    std::fs::write(&file, yard).unwrap();
    file
}

#[test]
fn colonies_are_followed_past_the_first_flow_as_if_flowers_gave_nothing() {
    let file = plain("2025-10-05");
    let of = |day: &str, command: &str| text(&[command, "--apiary", file.to_str().unwrap(), "--as-of", day]);
    let april = of("2026-04-02", "now");
    assert!(april.contains("thin syrup, 1:1") && !april.contains("fondant"), "{april}");
    assert!(april.contains("to 30 April without a flow"), "{april}");
    let one = text(&["now", "One", "--apiary", file.to_str().unwrap(), "--as-of", "2026-04-02"]);
    assert!(one.contains("to 30 April without a flow") && one.contains("none gave anything"), "{one}");
    assert!(of("2026-04-02", "spring").contains("One: hungry"));
    let winter = of("2026-01-20", "now");
    assert!(!winter.contains("without a flow") && winter.contains("fondant"), "{winter}");
    let june = snowhum(&["now", "--apiary", file.to_str().unwrap(), "--as-of", "2026-06-10"]);
    assert_eq!(june.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&june.stderr).contains("snowhum season"));
}

#[test]
fn colonies_counted_after_the_first_flow_have_a_present() {
    let file = plain("2026-04-10");
    let now = text(&["now", "--apiary", file.to_str().unwrap()]);
    assert!(now.contains("to 8 May without a flow"), "{now}");
}
