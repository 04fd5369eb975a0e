//! Hives that winter indoors as a keeper has them: a yard file, its record, plan, present, jobs. The yard is invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::Value;

/// The demo with a cellar that all of its hives go into, in a folder of the test's own.
fn yard(name: &str, more: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("indoors").join(name);
    std::fs::create_dir_all(&folder).unwrap();
    let room = format!(
        "[[indoors]]\nname = \"Cellar\"\ntemperature = \"4 C\"\nin = 2025-11-10\nout = 2026-04-01\n{more}\n[site]"
    );
    let text = snowhum_apiary::demo_text().replacen("[site]", &room, 1);
    let text = text.replacen("invented = true", "invented = true\nindoors = \"Cellar\"", 1);
    let path = folder.join("yard.toml");
    std::fs::write(&path, text).unwrap();
    path
}

fn snowhum(path: &Path, arguments: &[&str]) -> Output {
    let file = path.to_str().unwrap();
    let place = if arguments[0] == "check" { vec![file] } else { vec!["--apiary", file] };
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).args(place).output().unwrap()
}

fn said(output: &Output) -> String {
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout.clone()).unwrap()
}

/// All white space as single spaces.
fn on_one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn plan_and_now_say_where_each_hive_is_and_fit_the_screen() {
    let path = yard("told", "");
    let members = ["--members", "32"];
    let plan = said(&snowhum(&path, &[&["plan"][..], &members].concat()));
    assert!(
        on_one_line(&plan).contains("All hives: to go into Cellar on 10 November and come out on 1 April"),
        "{plan}"
    );
    assert!(plan.lines().count() <= 27 && plan.lines().all(|line| line.chars().count() <= 80), "{plan}");
    let now = said(&snowhum(&path, &[&["now", "Alder", "--as-of", "2026-01-20"][..], &members].concat()));
    assert!(on_one_line(&now).contains("in Cellar since 10 November by the plan"), "{now}");
    assert!(on_one_line(&now).contains("no bee flies in the dark") && !now.contains("cleansing"), "{now}");
    let json = said(&snowhum(&path, &[&["plan", "--json"][..], &members].concat()));
    let plan: Value = serde_json::from_str(&json).unwrap();
    assert_eq!(plan["first"]["colonies"][0]["indoors"]["room"], "Cellar");
}

#[test]
fn a_plan_indoors_is_the_same_to_the_byte_on_one_and_two_threads() {
    let path = yard("threads", "humidity = \"70 %\"");
    let on = |threads: &str| snowhum(&path, &["plan", "--json", "--members", "64", "--threads", threads]).stdout;
    let one = on("1");
    assert!(!one.is_empty());
    assert_eq!(one, on("2"));
}

#[test]
fn a_record_goes_before_the_temperature_that_was_told() {
    let path = yard("record", "record = \"cellar.csv\"");
    let mut csv = "Time,Temperature\n".to_owned();
    for day in 1..=20 {
        writeln!(csv, "2025-11-{day:02} 12:00,{}", if day < 15 { 5.0 } else { 11.5 }).unwrap();
    }
    std::fs::write(path.with_file_name("cellar.csv"), csv).unwrap();
    let now = |day: &str| said(&snowhum(&path, &["now", "Alder", "--as-of", day, "--members", "32"]));
    let (cool, warm) = (on_one_line(&now("2025-11-13")), on_one_line(&now("2025-11-20")));
    assert!(cool.contains("; 5 °C in there") && !cool.contains("too warm"), "{cool}");
    assert!(warm.contains("too warm at 12 °C"), "{warm}");
}

#[test]
fn check_names_file_line_and_field_of_a_room_and_of_its_record() {
    let refused = |path: &Path| {
        let output = snowhum(path, &["check"]);
        assert_eq!(output.status.code(), Some(2), "{}", String::from_utf8_lossy(&output.stdout));
        on_one_line(&String::from_utf8_lossy(&output.stderr))
    };
    let path = yard("faults", "dark = 1\n");
    let line = 1 + std::fs::read_to_string(&path).unwrap().lines().position(|line| line == "dark = 1").unwrap();
    let said_of_it = refused(&path);
    assert!(said_of_it.contains(&format!("yard.toml:{line}: indoors \"Cellar\".dark")), "{said_of_it}");
    let path = yard("no-record", "record = \"nowhere.csv\"");
    assert!(refused(&path).contains("indoors \"Cellar\".record") && refused(&path).contains("nowhere.csv"));
    let path = yard("wrong-record", "record = \"cellar.csv\"");
    std::fs::write(path.with_file_name("cellar.csv"), "Time,Temp\n2025-11-01 12:00,5\n").unwrap();
    assert!(refused(&path).contains("there is no column \"Temperature\""), "{}", refused(&path));
    std::fs::write(path.with_file_name("cellar.csv"), "Time,Temperature\n2019-11-01 12:00,5\n").unwrap();
    assert!(refused(&path).contains("nothing in it was measured between"), "{}", refused(&path));
    let path = yard("sound", "");
    let said_of_it = said(&snowhum(&path, &["check"]));
    assert!(said_of_it.contains("no faults") && !said_of_it.contains("too warm"), "{said_of_it}");
}

#[test]
fn jobs_and_calendar_carry_the_days_in_and_out() {
    let path = yard("jobs", "");
    let file = path.with_file_name("jobs.ics");
    let page = said(&snowhum(&path, &["jobs", "--members", "32", "--ics", file.to_str().unwrap()]));
    let page = on_one_line(&page);
    assert!(page.contains("Into Cellar: about 10 November") && page.contains("Out of Cellar: about 1 April"), "{page}");
    assert!(!page.contains("Wrap on") && !page.contains("Meltwater"), "{page}");
    let calendar = std::fs::read_to_string(file).unwrap().replace("\r\n ", "");
    let into = calendar.split("BEGIN:VEVENT").find(|event| event.contains("SUMMARY:Into Cellar")).unwrap();
    assert!(into.contains("20251110"), "{into}");
}

#[test]
fn a_note_of_carrying_is_kept_in_the_yard_file_and_moves_the_plan() {
    let path = yard("noted", "");
    let wrong = snowhum(&path, &["note", "Alder", "carried=into Barn", "--at", "2025-11-20 15:00"]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&wrong.stderr).contains("Cellar"));
    said(&snowhum(&path, &["note", "Alder", "carried=into Cellar", "--at", "2025-11-20 15:00"]));
    let now = said(&snowhum(&path, &["now", "Alder", "--as-of", "2026-01-20", "--members", "32"]));
    assert!(on_one_line(&now).contains("in Cellar since 20 November, to come out on 1 April"), "{now}");
}
