//! The binary as a keeper runs it: exit codes, messages, JSON keys, repeatability.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::time::{Duration, Instant};

use serde_json::Value;

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).output().unwrap()
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

fn json(arguments: &[&str]) -> Value {
    let output = snowhum(arguments);
    assert!(output.status.success(), "{}", text(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// A folder of this test run's own.
fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

fn file(name: &str, content: &[u8]) -> String {
    let path = folder("files").join(name);
    std::fs::write(&path, content).unwrap();
    path.to_str().unwrap().to_owned()
}

#[test]
fn the_plan_is_the_same_to_the_byte_on_one_and_two_threads() {
    let plan = |threads: &str| snowhum(&["plan", "--json", "--members", "64", "--threads", threads]).stdout;
    let one = plan("1");
    assert!(!one.is_empty());
    assert_eq!(one, plan("2"));
}

#[test]
fn the_plan_promises_its_keys() {
    let plan = json(&["demo", "--no-serve", "--json", "--members", "32"]);
    assert_eq!(plan["schema"], "snowhum.plan/1");
    for key in ["apiary", "as_of", "spring", "weather", "colonies"] {
        assert!(!plan[key].is_null(), "{key}");
    }
    for key in ["source", "members"] {
        assert!(!plan["weather"][key].is_null(), "{key}");
    }
    let colonies = plan["colonies"].as_array().unwrap();
    assert_eq!(colonies.len(), 5);
    for colony in colonies {
        for key in [
            "name",
            "alive_in_spring",
            "alive_fed_queenright",
            "stores_kg",
            "runs_out",
            "shortage_kg",
            "sugar_kg",
            "syrup_l",
            "finish_syrup_by",
            "hive",
            "food_g_per_day",
            "dead_bees_per_day",
            "bees",
            "brood_begins",
            "ends",
            "actions",
        ] {
            assert!(!colony[key].is_null(), "{key}");
        }
        for key in ["3:2", "2:1"] {
            assert!(colony["syrup_l"][key].is_number(), "{key}");
        }
        for key in ["starved", "isolation_starvation", "too_small", "queen_failed", "mites", "other"] {
            assert!(colony["ends"][key].is_number(), "{key}");
        }
        for key in ["heat_loss_w_per_k", "air_flow_l_per_s", "condensation_g_per_day"] {
            assert!(!colony["hive"][key].is_null(), "{key}");
        }
    }
}

#[test]
fn a_hive_is_drawn_into_a_new_file_and_never_over_an_old_one() {
    let drawing = folder("drawn").join("alder.svg");
    std::fs::remove_file(&drawing).ok();
    let arguments = ["hive", "Alder", "--outside", "-20", "--svg", drawing.to_str().unwrap()];
    assert!(snowhum(&arguments).status.success());
    let svg = std::fs::read_to_string(&drawing).unwrap();
    assert!(svg.contains("<title") && svg.contains("Upper hole") && svg.contains("Outside −20"), "{svg:.400}");
    let again = snowhum(&arguments);
    assert_eq!(again.status.code(), Some(2));
    assert!(text(&again.stderr).contains("exists already"), "{}", text(&again.stderr));
}

#[test]
fn a_hive_in_steady_cold_promises_its_keys_and_answers_with_a_heater_too() {
    let hive = json(&["hive", "Alder", "--outside", "-20", "--json"]);
    for key in [
        "heat_w",
        "core_c",
        "mantle_c",
        "warm_zone_c",
        "floor_zone_c",
        "surface_c",
        "radius_cm",
        "food_g_per_day",
        "water_g_per_day",
        "air_flow_l_per_s",
        "heat_loss_w_per_k",
        "humidity_percent",
        "co2_percent",
        "condensation_g_per_day",
        "drip_on_cluster_g_per_day",
        "upper_hole",
    ] {
        assert!(!hive[key].is_null(), "{key}");
    }
    assert_eq!(hive["upper_hole"], "frost");
    let heater = json(&["hive", "Alder", "--outside", "-10", "--heater-w", "10", "--json"]);
    assert_eq!(heater["heat_w"], 10.0);
    assert_eq!(heater["food_g_per_day"], 0.0);
    let same = json(&["hive", "alder", "--outside", "-4 F", "--json"]);
    assert!((same["warm_zone_c"].as_f64().unwrap() - hive["warm_zone_c"].as_f64().unwrap()).abs() < 0.5);
}

#[test]
fn set_ups_are_compared_with_the_keys_promised() {
    let setup =
        json(&["setup", "Larch", "--try", "lid=50 mm foam", "--try", "upper hole=off", "--members", "32", "--json"]);
    assert_eq!(setup["tries"].as_array().unwrap().len(), 2);
    for row in setup["tries"].as_array().unwrap().iter().chain([&setup["base"]]) {
        for key in [
            "name",
            "alive_in_spring",
            "food_kg",
            "condensation_g_per_day",
            "heat_loss_w_per_k",
            "cost_money",
            "difference_hives_in_100",
            "plus_minus",
            "too_close_to_call",
        ] {
            assert!(!row[key].is_null(), "{key}");
        }
    }
}

#[test]
fn dead_bees_are_answered_without_a_yard() {
    let normal = json(&["dead-bees", "--found", "30", "--days", "14", "--snow", "--json"]);
    assert_eq!(normal["found"], 30);
    assert_eq!(normal["verdict"], "as expected");
    let many = json(&["dead-bees", "--found", "6000", "--days", "7", "--bees", "10000", "--json"]);
    assert_eq!(many["verdict"], "more than expected");
}

#[test]
fn sixty_dead_bees_in_a_mid_winter_fortnight_are_calm() {
    for month in ["12", "1", "2"] {
        let answer = json(&["dead-bees", "--found", "60", "--days", "14", "--snow", "--month", month, "--json"]);
        assert_eq!(answer["verdict"], "as expected", "month {month}: {answer}");
        assert!(answer["worry"].as_str().unwrap().starts_with("Normal"), "{answer}");
    }
}

#[test]
fn a_new_file_passes_the_check_and_is_never_written_over() {
    let path = folder("new").join("yard.toml");
    drop(std::fs::remove_file(&path));
    let name = path.to_str().unwrap();
    assert!(snowhum(&["new", name]).status.success());
    assert!(snowhum(&["check", name]).status.success());
    assert_eq!(snowhum(&["new", name]).status.code(), Some(2));
    let plan = json(&["plan", "--apiary", name, "--members", "16", "--json"]);
    assert!(!plan["colonies"].as_array().unwrap().is_empty());
}

#[test]
fn bad_input_of_every_kind_ends_with_code_two_and_a_remedy() {
    let demo = snowhum_apiary::demo_text();
    let cases: Vec<(&str, Vec<u8>)> = vec![
        ("empty.toml", Vec::new()),
        ("binary.toml", (0..4_096u32).map(|i| (i.wrapping_mul(2_654_435_761) >> 13) as u8).collect()),
        ("truncated.toml", demo.as_bytes()[..demo.len() / 2].to_vec()),
        ("types.toml", demo.replacen("latitude = ", "latitude = true # ", 1).into_bytes()),
        ("nan.toml", demo.replacen("latitude = ", "latitude = nan # ", 1).into_bytes()),
        ("latitude.toml", demo.replacen("latitude = ", "latitude = 91.0 # ", 1).into_bytes()),
        ("zone.toml", demo.replacen("Europe/Helsinki", "Europe/Nowhere", 1).into_bytes()),
        ("tables.toml", "[[hive]]\n".repeat(200_000).into_bytes()),
    ];
    for (name, content) in cases {
        let path = file(name, &content);
        for command in [vec!["check", &path], vec!["plan", "--apiary", &path]] {
            let begun = Instant::now();
            let output = snowhum(&command);
            let message = text(&output.stderr);
            assert_eq!(output.status.code(), Some(2), "{name}: {message}");
            assert!(message.contains(name), "{name}: {message}");
            assert!(!message.contains("panicked"), "{name}: {message}");
            assert!(begun.elapsed() < Duration::from_secs(20), "{name}");
        }
    }
    for missing in ["no-such-file.toml", "."] {
        assert_eq!(snowhum(&["plan", "--apiary", missing]).status.code(), Some(2));
    }
}

#[test]
fn faults_as_json_name_line_field_problem_and_remedy() {
    let path =
        file("faults.toml", snowhum_apiary::demo_text().replacen("latitude = ", "latitude = 91.0 # ", 1).as_bytes());
    let output = snowhum(&["check", &path, "--json"]);
    assert_eq!(output.status.code(), Some(2));
    let faults: Value = serde_json::from_slice(&output.stdout).unwrap();
    let fault = &faults["faults"][0];
    for key in ["line", "field", "problem", "remedy"] {
        assert!(!fault[key].is_null(), "{key}");
    }
}

#[test]
fn wrong_usage_ends_with_code_two() {
    for arguments in [
        vec!["hive", "Nobody", "--outside", "-5"],
        vec!["hive", "Alder", "--outside", "cold"],
        vec!["hive", "Alder", "--outside", "-500"],
        vec!["hive", "Alder", "--outside", "nan"],
        vec!["setup", "Alder", "--try", "lid=moon dust"],
        vec!["dead-bees", "--found", "3", "--days", "nan"],
        vec!["plan", "--weather", "no-such-file.epw"],
        vec!["plan", "--members", "0"],
        vec!["frobnicate"],
    ] {
        let output = snowhum(&arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {}", text(&output.stderr));
        assert!(!text(&output.stderr).contains("panicked"), "{arguments:?}");
    }
}

#[test]
fn words_fit_eighty_columns() {
    for arguments in [
        vec!["demo", "--no-serve", "--members", "32"],
        vec!["demo", "--no-serve", "--members", "32", "--units", "us"],
        vec!["hive", "Birch", "--outside", "-12"],
        vec!["setup", "Alder", "--try", "wrap=off", "--members", "32"],
        vec!["setup", "Alder", "--try", "wrap=off", "--members", "32", "--units", "us"],
        vec!["dead-bees", "--found", "3", "--days", "14"],
        vec!["weather", "show"],
    ] {
        let output = snowhum(&arguments);
        assert!(output.status.success(), "{arguments:?}: {}", text(&output.stderr));
        for line in text(&output.stdout).lines() {
            assert!(line.chars().count() <= 80, "{arguments:?}: {line}");
        }
    }
}

/// Names and words of the first screen's table.
fn words_of(page: &str) -> Vec<(String, String)> {
    let columns = |line: &str, from: usize, to: usize| line.chars().take(to).skip(from).collect::<String>();
    let table = page.lines().skip_while(|line| !line.starts_with("Hive ")).skip(1).take_while(|line| !line.is_empty());
    table.map(|line| (columns(line, 0, 12).trim().to_owned(), columns(line, 13, 25).trim().to_owned())).collect()
}

#[test]
fn check_asks_for_the_keeper_just_where_the_page_says_today_or_this_week() {
    let demo = snowhum_apiary::demo_text();
    let mites = file("many-mites.toml", demo.replacen("found = 2,", "found = 60,", 1).as_bytes());
    for yard in [vec![], vec!["--apiary", &mites]] {
        let output = snowhum(&[&["plan", "--check", "--members", "64"], &yard[..]].concat());
        assert_eq!(output.status.code(), Some(1), "{}", text(&output.stderr));
        let (page, said) = (text(&output.stdout), text(&output.stderr));
        let said = said.split_once("needs you now:").unwrap().1.split_whitespace().collect::<Vec<_>>().join(" ");
        let mut urgent = 0;
        for (name, word) in words_of(&page) {
            let is_urgent = word == "today" || word == "this week";
            assert_eq!(said.contains(&format!("{name} ({word})")), is_urgent, "{name}: {word}: {said}");
            urgent += usize::from(is_urgent);
        }
        assert!(urgent > 0, "{page}");
    }
}

#[test]
fn spring_is_past_a_fortnight_after_the_first_flow_and_not_on_its_day() {
    let yard = snowhum_apiary::demo_text().replacen("[site]", "[site]\nfirst_flow = \"04-25\"", 1);
    let yard = file("first-flow.toml", yard.as_bytes());
    let asked =
        |command: &str, day: &str| snowhum(&[command, "--apiary", &yard, "--as-of", day, "--members", "8", "--json"]);
    let plan: Value = serde_json::from_slice(&asked("plan", "2026-04-28").stdout).unwrap();
    assert_eq!(plan["spring"], "2026-05-09");
    let late = asked("plan", "2026-05-20");
    assert_eq!(late.status.code(), Some(2));
    assert!(text(&late.stderr).contains("spring here is 2026-05-09"), "{}", text(&late.stderr));
    assert!(asked("now", "2026-05-20").status.success(), "colonies are followed past spring");
    let long_after = asked("now", "2026-08-20");
    assert!(text(&long_after.stderr).contains("snowhum season"), "{}", text(&long_after.stderr));
}

#[test]
fn a_set_up_costs_the_same_however_it_is_written_and_is_told_in_the_keepers_units() {
    let tries = ["--try", "lid=50 mm foam", "--try", "Lid = 50 mm foam", "--try", "lid=bare; quilt=straw 60 mm"];
    let arguments = [&["setup", "Larch", "--members", "16"], &tries[..]].concat();
    let answer = json(&[&arguments[..], &["--json"]].concat());
    let costs: Vec<f64> =
        answer["tries"].as_array().unwrap().iter().map(|row| row["cost_money"].as_f64().unwrap()).collect();
    assert!(costs[0] > 0.0 && costs.iter().all(|cost| (cost - costs[0]).abs() < 1e-9), "{costs:?}");
    let page = text(&snowhum(&[&arguments[..], &["--units", "us"]].concat()).stdout);
    let heads = page.split("as it is").next().unwrap();
    assert!(heads.contains(" lb ") && heads.contains("oz a day") && !heads.contains(" kg "), "{page}");
    let pounds = answer["base"]["food_kg"].as_f64().unwrap() / 0.453_592_37;
    assert!(page.contains(&format!(" {pounds:.1} ")), "{pounds}: {page}");
}

#[test]
fn messages_fit_eighty_columns_and_begin_with_the_place_of_the_fault() {
    let yard = snowhum_apiary::demo_text().replacen("latitude = ", "latitude = 91.0 # ", 1);
    let yard = yard.replacen("[site]", "[site]\na_key_that_is_not_known_anywhere_in_a_yard = 3", 1);
    let yard = file("a yard with faults.toml", yard.as_bytes());
    for arguments in [
        vec!["plan", "--apiary", &yard],
        vec!["setup", "Alder", "--try", "colour=red"],
        vec!["hive", "Nobody", "--outside", "-5"],
        vec!["plan", "--as-of", "2026-06-25"],
        vec!["dead-bees", "--found", "3", "--days", "3", "--month", "the month after the next"],
        vec!["mites", "--found", "9", "--month", "2026-07-09x"],
        vec!["losses", "--added", "4294967295"],
    ] {
        let output = snowhum(&arguments);
        let said = text(&output.stderr);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {said}");
        for line in said.lines().filter(|line| !line.starts_with(&yard)) {
            assert!(line.chars().count() <= 80, "{arguments:?}: {line}");
        }
        assert!(!said.contains(&yard.replace(' ', "\n")), "{said}");
        if arguments.contains(&"--apiary") {
            let places = said.lines().filter(|line| line.starts_with(&format!("{yard}:"))).count();
            assert_eq!(places, 2, "{said}");
        }
    }
}

#[test]
fn a_plan_for_a_later_day_than_the_count_says_that_the_bees_are_not_carried_forward() {
    let note = |plan: &Value| plan["weather"]["notes"][0].as_str().unwrap_or_default().to_owned();
    let later = json(&["plan", "--json", "--members", "16", "--as-of", "2025-12-15"]);
    assert!(note(&later).contains("as if bees and food were counted on 2025-12-15"), "{later}");
    assert!(!note(&json(&["plan", "--json", "--members", "16"])).contains("as if bees"));
}
