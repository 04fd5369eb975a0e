//! The first screen of `plan` and `now`: short, the first thing first, and one verdict wherever it is told.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::Path;
use std::process::{Command, Output};

use serde_json::Value;

/// Lines of the first screen for eight hives, and its columns.
const LINES: usize = 25;
const COLUMNS: usize = 80;

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).args(["--members", "32"]).output().unwrap()
}

fn told(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

fn json(arguments: &[&str]) -> Value {
    serde_json::from_str(&told(&[arguments, &["--json"]].concat())).unwrap()
}

/// Hives of a made-up yard: name, kind, frames of bees, stores, what else is known.
const HIVES: [(&str, &str, f64, &str, &str); 8] = [
    ("Anna", "Langstroth 10", 8.0, "20 kg", ""),
    ("Berta", "Langstroth 10", 7.0, "9 kg", "mites = { found = 3, bees = 300, on = COUNTED }"),
    ("Clara", "Langstroth 10", 3.0, "6 kg", "mites = { found = 1, bees = 300, on = COUNTED }"),
    ("Dorothea-Wilhelmine", "Langstroth 10", 9.0, "12 kg", "mites = { found = 20, bees = 300, on = COUNTED }"),
    ("Emma", "Langstroth 10", 6.0, "4 kg", "queen_seen = false"),
    ("Frieda", "Langstroth 10", 8.0, "25 kg", "queen = \"none\""),
    ("Gerda", "Langstroth 10", 8.0, "11 kg", "mites = { found = 2, bees = 300, on = COUNTED }"),
    ("Hilde", "Langstroth 10", 5.0, "7 kg", "left_on = \"excluder\""),
];

/// A made-up yard of the first so many of them, counted on a day.
fn yard(hives: usize, counted: &str) -> String {
    let mut text = format!(
        "[apiary]\nname = \"Lakeside\"\nas_of = {counted}\n[site]\nlatitude = 52.4\nlongitude = 13.1\nelevation = \"40 m\"\n\
         zone = \"Europe/Berlin\"\n"
    );
    for (name, kind, frames, stores, more) in &HIVES[..hives] {
        text += &format!(
            "[[colony]]\nname = \"{name}\"\nkind = \"{kind}\"\nframes_of_bees = {frames}\nstores = \"{stores}\"\n{}\n",
            more.replace("COUNTED", counted)
        );
    }
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("first-{hives}-{counted}.toml"));
    std::fs::write(&path, text).unwrap();
    path.to_str().unwrap().to_owned()
}

/// Names and words of the first screen's table.
fn words_of(page: &str) -> Vec<(String, String)> {
    let columns = |line: &str, from: usize, to: usize| line.chars().take(to).skip(from).collect::<String>();
    let table = page.lines().skip_while(|line| !line.starts_with("Hive ")).skip(1);
    let rows = table.take_while(|line| !line.is_empty());
    rows.map(|line| (columns(line, 0, 12).trim().to_owned(), columns(line, 13, 25).trim().to_owned())).collect()
}

/// Asks everything of a yard on a day and holds it together.
fn holds<'a>(yard: &[&'a str], day: &'a str) {
    let ask = |first: &[&'a str]| [first, yard, &["--as-of", day]].concat();
    let pages = [told(&ask(&["plan"])), told(&ask(&["now", "--units", "us"]))];
    let (plan, now) = (json(&ask(&["plan"])), json(&ask(&["now"])));
    assert_eq!(plan["first"], now["first"], "{day}");
    let colonies = plan["colonies"].as_array().unwrap();
    for page in &pages {
        assert!(page.lines().count() <= LINES, "{day}: {} lines\n{page}", page.lines().count());
        for line in page.lines() {
            assert!(line.chars().count() <= COLUMNS, "{day}: {line}");
        }
        let words = words_of(page);
        assert_eq!(words.len(), colonies.len(), "{page}");
        for (at, (name, word)) in words.iter().enumerate() {
            let (plan, now) = (&plan["colonies"][at], &now["colonies"][at]);
            assert!(plan["name"].as_str().unwrap().starts_with(name.as_str()), "{page}");
            assert_eq!(plan["verdict"], now["verdict"], "{day}: {name}");
            let written = plan["verdict"]["word"].as_str().unwrap().replace('-', " ");
            assert!(word.starts_with(&written), "{day}: {name}: {word} is not {written}");
        }
        first_things_first(page, &plan["first"]);
    }
    for key in ["as_of", "spring", "looks_to", "seed", "later", "unsure"] {
        assert!(!plan["first"][key].is_null(), "{key}");
    }
    for colony in plan["first"]["colonies"].as_array().unwrap() {
        for key in ["name", "verdict", "steps", "if_done", "if_not", "short_kg", "why"] {
            assert!(colony.get(key).is_some(), "{key}");
        }
    }
}

/// What is first of all hives is named with its hive in the three lines after the title.
fn first_things_first(page: &str, first: &Value) {
    let top: String = page.lines().skip(1).take(3).collect::<Vec<_>>().join("\n");
    let steps = first["colonies"].as_array().unwrap().iter().flat_map(|colony| {
        let steps = colony["steps"].as_array().unwrap().iter();
        steps.map(|step| (step["by"].as_str().unwrap_or("never").to_owned(), colony["name"].as_str().unwrap()))
    });
    let Some(soonest) = steps.clone().map(|(by, _)| by).min() else {
        assert!(top.contains("nothing is due"), "{page}");
        return;
    };
    let named = steps.filter(|(by, _)| *by == soonest).any(|(_, name)| {
        let name: String = name.chars().take(12).collect();
        top.contains(&name)
    });
    assert!(named || top.contains("All hives"), "{page}");
}

#[test]
fn the_demo_is_told_alike_in_plan_and_now_from_october_to_april() {
    for day in ["2025-10-05", "2026-01-15", "2026-04-05"] {
        holds(&[], day);
    }
}

#[test]
fn yards_of_one_five_and_eight_hives_are_told_alike_from_august_to_april() {
    for (hives, counted, day) in [
        (8, "2025-08-10", "2025-08-10"),
        (8, "2025-08-10", "2025-09-20"),
        (5, "2025-09-10", "2025-09-10"),
        (5, "2025-10-05", "2025-12-12"),
        (1, "2025-10-05", "2026-03-20"),
    ] {
        holds(&["--apiary", &yard(hives, counted)], day);
    }
}

#[test]
fn mites_that_nobody_counted_are_the_first_thing_of_august() {
    let page = told(&["plan", "--apiary", &yard(8, "2025-08-10"), "--as-of", "2025-08-10"]);
    let top: String = page.lines().take(4).collect::<Vec<_>>().join("\n");
    assert!(top.contains("mites not counted in") && top.contains("count mites (300 bees)"), "{page}");
}

#[test]
fn one_colony_is_told_in_a_page_whatever_the_case_of_its_name() {
    for command in ["plan", "now"] {
        let page = told(&[command, "jUNIPER", "--as-of", "2026-01-15"]);
        assert!((15..=40).contains(&page.lines().count()), "{} lines\n{page}", page.lines().count());
        assert!(page.starts_with("Juniper at Rowan Bank, 15 January: "), "{page}");
        assert!(page.lines().all(|line| line.chars().count() <= COLUMNS), "{page}");
        let verdict = &json(&[command, "--as-of", "2026-01-15"])["colonies"][2]["verdict"];
        let word = verdict["word"].as_str().unwrap().replace('-', " ");
        assert!(page.lines().next().unwrap().contains(&word), "{verdict}\n{page}");
    }
}

#[test]
fn a_name_that_no_colony_has_is_refused_with_the_nearest_ones() {
    for command in ["plan", "now"] {
        let output = snowhum(&[command, "Brich"]);
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(2), "{said}");
        assert!(said.contains("the nearest are Birch") && !said.contains("Aspen,"), "{said}");
    }
}

#[test]
fn everything_is_told_with_its_source_and_each_warning_once() {
    for command in ["plan", "now"] {
        let page = told(&[command, "--all"]);
        let flat = page.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(flat.contains("It stands on"), "{page}");
        let foot = flat.find("It stands on").unwrap();
        assert!(foot > flat.len() / 2, "what it stands on is told last");
        for warning in ["Follow the label", "robbers and wasps come for it", "lid off for less than a minute"] {
            assert!(flat.matches(warning).count() <= 1, "{warning}: {page}");
        }
    }
}
