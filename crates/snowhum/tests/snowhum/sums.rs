//! The small sums as a keeper runs them: keys, words that fit the page, messages, exit codes.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::process::{Command, Output, Stdio};

use serde_json::Value;
use snowhum_advice::cautions::Hazard;
use snowhum_say::Tongue;

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).stdin(Stdio::null()).output().unwrap()
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

fn words(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", text(&output.stderr));
    assert!(output.stderr.is_empty());
    text(&output.stdout)
}

fn json(arguments: &[&str]) -> Value {
    serde_json::from_str(&words(&[arguments, &["--json"]].concat())).unwrap()
}

/// The message of a question that is refused.
fn refused(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    assert!(output.stdout.is_empty());
    unbroken(&output.stderr)
}

/// The words of a message, however it is broken to the page.
fn unbroken(bytes: &[u8]) -> String {
    text(bytes).split_whitespace().collect::<Vec<_>>().join(" ")
}

const MITES: &[&str] = &["mites", "--found", "9", "--bees", "300", "--month", "2026-08"];
const BOARD: &[&str] = &["mites", "--method", "board", "--found", "20", "--days", "3", "--region", "uk"];
const YARD: &[&str] = &["mites", "--sample", "Alder=2/300", "--sample", "Larch=14/280", "--sample", "Birch=1/300"];
const FEED: &[&str] = &["feed", "--short", "8", "--syrup-by", "2026-09-10", "--as-of", "2026-08-20", "--slab", "5"];
const TWO_SIDES: &[&str] = &["weigh", "--left", "23", "--right", "19", "--inset", "2", "--hive", "Langstroth 10"];
const ONE_SIDE: &[&str] = &["weigh", "--one-side", "19", "--before", "21.5"];
const FRAMES: &[&str] = &["weigh", "--frames", "deep=4", "--frames", "medium=3.5"];
const LOSSES: &[&str] = &["losses", "--before", "4", "--dead", "1", "--colony-price", "150"];
const CLUB: &[&str] = &["losses", "--member", "Ann=1/3", "--member", "Bo=2/5", "--member", "Cy=4/4"];
const DEADOUT: &[&str] = &["deadout", "--sign", "small-cluster=yes", "--sign", "spotty-brood=fairly-sure"];
const FOULBROOD: &[&str] = &["deadout", "--sign", "ropy-larvae=yes"];

const ALL: [&[&str]; 11] = [MITES, BOARD, YARD, FEED, TWO_SIDES, ONE_SIDE, FRAMES, LOSSES, CLUB, DEADOUT, FOULBROOD];

#[test]
fn every_answer_names_its_form_and_its_sources_in_json() {
    for arguments in ALL {
        let answer = json(arguments);
        assert_eq!(answer["schema"], format!("snowhum.{}/1", arguments[0]));
        assert!(answer["sources"].is_array(), "{arguments:?}");
    }
}

#[test]
fn every_answer_fits_the_page_in_both_systems_of_units() {
    for arguments in ALL {
        for units in ["metric", "us"] {
            let page = words(&[arguments, &["--units", units]].concat());
            for line in page.lines() {
                assert!(line.chars().count() <= 80, "{arguments:?}: {line}");
            }
            assert!(!page.contains("NaN") && !page.contains(" inf "), "{page}");
        }
    }
}

#[test]
fn no_answer_names_a_dose() {
    for arguments in ALL {
        let page = words(arguments).to_lowercase();
        for unit in [" ml", " mg", " g/", " gram", "dose", "strips"] {
            assert!(!page.contains(unit), "{arguments:?}: {unit}");
        }
    }
}

#[test]
fn mites_promises_its_keys() {
    let answer = json(MITES);
    let colony = &answer["colonies"][0];
    assert_eq!(colony["mites_per_100_bees"], 3.0);
    for key in ["clopper_pearson_per_100_bees", "wilson_per_100_bees", "uneven", "corrected_per_100_bees"] {
        assert!(colony[key]["low"].as_f64().unwrap() < colony[key]["high"].as_f64().unwrap(), "{key}");
    }
    assert_eq!(colony["clean_sample_misses"].as_array().unwrap().len(), 3);
    let boards = ["mites", "--method", "board", "--sample", "Alder=12/3", "--sample", "Birch=80/4"];
    assert_eq!(json(&boards)["yard"]["worst"], "Birch");
    assert_eq!(json(YARD)["yard"]["worst"], "Larch");
    assert!(words(YARD).starts_with("Most: Larch"));
    assert_eq!(json(MITES)["cautions"][0], Tongue::BRITISH.say(&Hazard::Label.says()));
    assert!(words(MITES).contains("No quantity is told here"));
    assert!(words(&["mites", "--found", "15", "--month", "11"]).contains("neighbours"));
    let board = json(BOARD);
    assert!((board["colonies"][0]["mites_per_day"].as_f64().unwrap() - 6.67).abs() < 1e-9);
}

#[test]
fn feed_promises_its_keys_and_no_thin_syrup_in_autumn() {
    let answer = json(FEED);
    for key in ["short_kg", "sugar_kg", "days_left", "by_volume", "solid", "frames", "never", "cautions"] {
        assert!(!answer[key].is_null(), "{key}");
    }
    let strengths: Vec<&Value> = answer["syrup"].as_array().unwrap().iter().map(|one| &one["strength"]).collect();
    assert_eq!(strengths, ["2:1", "3:2"]);
    assert!(words(&["feed", "--short", "18 lb", "--units", "us"]).contains("18.0 lb of stores short"));
    assert!(json(&["feed", "--short", "5", "--season", "winter"])["syrup"].as_array().unwrap().is_empty());
}

#[test]
fn weigh_promises_its_keys_and_one_side_no_weight() {
    let answer = json(TWO_SIDES);
    for key in ["whole_kg", "tare_kg", "bees_kg", "stores_kg", "lifted"] {
        assert!(answer[key].is_object(), "{key}");
    }
    assert!(answer["lifted"]["factor"].as_f64().unwrap() > 1.0);
    let one = json(ONE_SIDE);
    assert!(one["whole_kg"].is_null() && one["stores_kg"].is_null());
    assert!((one["trend"]["change_kg"].as_f64().unwrap() + 2.5).abs() < 1e-9);
    assert!(json(FRAMES)["stores_kg"]["p50"].as_f64().unwrap() > 10.0);
    let scale = json(&["weigh", "--scale", "99 lb", "--tare", "55 lb"]);
    assert!((scale["stores_kg"]["p50"].as_f64().unwrap() - 18.0).abs() < 0.1);
}

#[test]
fn losses_promises_its_keys() {
    let answer = json(LOSSES);
    assert_eq!((&answer["yard"]["lost"], &answer["yard"]["rate"]), (&Value::from(1), &Value::from(0.25)));
    assert_eq!(answer["cost_money"], 150.0);
    assert!(words(LOSSES).contains("almost nothing about your method"));
    let winters = json(&[LOSSES, &["--earlier", "0/5", "--earlier", "0/6"]].concat());
    assert_eq!(
        (&winters["background"]["winters"], &winters["background"]["together"]["at_risk"]),
        (&3.into(), &15.into())
    );
    let middle = |answer: &Value| answer["background"]["own_yard"]["p50"].as_f64().unwrap();
    assert!(middle(&winters) < middle(&answer));
    assert!(words(LOSSES).contains("Lost to what nobody names") && words(LOSSES).contains("no cause for 1 of the 1"));
    for wrong in ["5/1", "one", "0/10001"] {
        assert!(refused(&[LOSSES, &["--earlier", wrong]].concat()).contains("LOST/COLONIES"), "{wrong}");
    }
    let club = json(CLUB);
    assert!(club["background"].is_null());
    assert_eq!((&club["club"]["members"], &club["club"]["at_risk"]), (&Value::from(3), &Value::from(12)));
}

#[test]
fn a_clubs_file_is_read_and_its_faults_are_named_by_line() {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    let file = |name: &str, content: &str| {
        let path = folder.join(name);
        std::fs::write(&path, content).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let good = file("club.csv", "name,colonies,lost\nAnn,3,1\n\n\"Bo\";5;2\n");
    assert_eq!(json(&["losses", "--club", &good])["club"]["lost"], 3);
    let bad = file("bad.csv", "name,colonies,lost\nAnn,3,one\n");
    assert!(refused(&["losses", "--club", &bad]).contains("bad.csv, line 2"));
    let empty = file("empty.csv", "");
    assert!(refused(&["losses", "--club", &empty]).contains("no member"));
    assert!(refused(&["losses", "--club", "/nowhere/club.csv"]).contains("/nowhere/club.csv"));
}

#[test]
fn deadout_promises_its_keys_and_stops_at_foulbrood() {
    let answer = json(DEADOUT);
    assert!(answer["stop"].is_null());
    let causes = answer["causes"].as_array().unwrap();
    for key in ["cause", "p", "low", "high"] {
        assert!(!causes[0][key].is_null(), "{key}");
    }
    assert!(answer["look_next"]["sign"].is_string());
    for key in ["comb", "stores"] {
        assert!(answer["reuse"][key].is_string(), "{key}");
    }
    let stopped = json(FOULBROOD);
    assert!(stopped["stop"].is_object() && stopped["causes"].as_array().unwrap().is_empty());
    assert!(words(FOULBROOD).starts_with("STOP"));
    assert!(words(&["deadout", "--list"]).contains("small-cluster"));
    assert!(words(&["deadout"]).contains("No sign is told yet"));
}

#[test]
fn what_cannot_be_is_refused_with_what_would_be_right() {
    assert!(refused(&["mites", "--found", "3", "--region", "moon"]).contains("ontario"));
    assert!(refused(&["mites", "--sample", "Alder"]).contains("Alder=2/300"));
    assert!(refused(&["mites", "--found", "3", "--month", "13"]).contains("2026-01"));
    assert!(refused(&["mites", "--found", "3", "--method", "board"]).contains("--days"));
    assert!(refused(&["feed", "--short", "8 stone"]).contains("--short"));
    assert!(refused(&["feed", "--short", "8", "--hive", "bathtub"]).contains("Langstroth"));
    assert!(refused(&["weigh", "--left", "20"]).contains("--right"));
    assert!(refused(&["weigh"]).contains("--scale"));
    assert!(refused(&["weigh", "--scale", "12", "--tare", "25"]).contains("--tare"));
    assert!(refused(&["losses", "--before", "3", "--dead", "5"]).contains("more than the 3"));
    assert!(refused(&["deadout", "--sign", "ghosts=yes"]).contains("small-cluster"));
    assert!(refused(&["deadout", "--sign", "small-cluster=perhaps"]).contains("fairly-sure"));
}

#[test]
fn the_counts_of_a_yard_are_listed_with_the_worst_named_first() {
    let yard = words(&["mites", "--apiary", demo_yard()]);
    assert!(yard.starts_with("Most: Larch, 8.0 per 100 bees"), "{yard}");
    assert!(yard.contains("Larch is at or over the line"), "{yard}");
    let answer = json(&["mites", "--apiary", demo_yard()]);
    assert_eq!(answer["yard"]["worst"], "Larch");
    assert_eq!(answer["colonies"].as_array().unwrap().len(), 5);
}

fn demo_yard() -> &'static str {
    concat!(env!("CARGO_MANIFEST_DIR"), "/../../data/demo/rowan-bank.toml")
}

#[test]
fn a_month_is_read_from_a_whole_day_and_nothing_else_is_taken_for_one() {
    let of = |month: &str| words(&["mites", "--found", "9", "--month", month]);
    assert_eq!(of("2026-07-09"), of("7"));
    assert_ne!(of("2026-07-09"), of("2026-09"));
    for wrong in ["x-3", "2026-13", "2026-02-31", "summer"] {
        assert!(refused(&["mites", "--found", "9", "--month", wrong]).contains("2026-01-18"), "{wrong}");
    }
}

#[test]
fn more_colonies_than_anybody_has_are_refused() {
    for which in ["--added", "--removed", "--before"] {
        assert!(refused(&["losses", which, "4294967295"]).contains("10000"), "{which}");
    }
    assert!(words(&["losses", "--before", "4", "--added", "3", "--dead", "1"]).contains('7'));
}
