//! From a yard of last year to this autumn's plan, with last winter's losses as they were.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).stdin(Stdio::null()).output().unwrap()
}

fn done(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

fn refused(arguments: &[&str]) -> String {
    let output = snowhum(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}: {}", String::from_utf8_lossy(&output.stdout));
    String::from_utf8(output.stderr).unwrap().split_whitespace().collect::<Vec<_>>().join(" ")
}

fn folder(name: &str) -> PathBuf {
    let folder = std::env::temp_dir().join(format!("snowhum-season-{}-{name}", std::process::id()));
    std::fs::remove_dir_all(&folder).ok();
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

/// A keeper's own yard of last year.
fn own_yard(folder: &Path) -> PathBuf {
    let file = folder.join("mine-2025.toml");
    std::fs::write(&file, snowhum_apiary::demo_text().replace("invented = true", "invented = false")).unwrap();
    file
}

const LOSSES: [&str; 6] = ["losses", "--season", "2025", "--as-of", "2026-11-01", "--json"];
const COUNTS: [&str; 8] = [
    "--colony",
    "Alder=8 frames; 14 kg; 3/300; laying",
    "--colony",
    "Birch=middling; fair; 2/300",
    "--colony",
    "Juniper=7 frames; 12,5 kg",
    "--as-of",
    "10.9.2026",
];

/// Every colony of the demo that is not counted here.
fn gone() -> Vec<&'static str> {
    let counted = ["Alder", "Birch", "Juniper"];
    let (yard, _) = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap();
    let names = yard.colonies.iter().map(|colony| colony.name.clone()).filter(|name| !counted.contains(&name.as_str()));
    names.flat_map(|name| ["--gone", &*Box::leak(name.into_boxed_str())]).collect()
}

#[test]
fn one_command_leads_from_the_records_of_last_year_to_this_autumns_plan() {
    let folder = folder("records");
    let (file, store) = (own_yard(&folder), folder.join("records.db"));
    let at = ["--store", store.to_str().unwrap()];
    done(&[&at[..], &["import", file.to_str().unwrap()]].concat());
    let missing = refused(&[&at[..], &["season", "--as-of", "2026-09-10"]].concat());
    assert!(missing.contains("--colony \"Alder=") && missing.contains("--gone"), "{missing}");
    let before = done(&[&at[..], &LOSSES].concat());
    let plan = done(&[&at[..], &["season"], &COUNTS[..], &gone()].concat());
    assert!(plan.contains("10 September"), "{plan}");
    for name in ["Alder", "Birch", "Juniper"] {
        assert!(plan.contains(name), "{name}: {plan}");
    }
    assert_eq!(done(&[&at[..], &LOSSES].concat()), before, "last winter's losses, to the digit");
    let again = refused(&[&at[..], &["season"], &COUNTS[..]].concat());
    assert!(again.contains("1 July"), "{again}");
}

#[test]
fn a_new_yard_file_is_written_beside_the_last_and_knows_its_winters() {
    let folder = folder("files");
    let (last, next) = (own_yard(&folder), folder.join("mine-2026.toml"));
    let of = |file: &Path| ["--apiary".to_owned(), file.to_str().unwrap().to_owned()];
    let with = |parts: &[&str], file: &Path| {
        let [option, path] = of(file);
        done(&[parts, &[option.as_str(), path.as_str()]].concat())
    };
    let before = with(&LOSSES, &last);
    let written = std::fs::read_to_string(&last).unwrap();
    let (last_path, next_path) = (last.to_str().unwrap(), next.to_str().unwrap());
    let plan = done(&[&["season", "--apiary", last_path, "--out", next_path][..], &COUNTS, &gone()].concat());
    assert!(plan.contains("Alder"), "{plan}");
    assert_eq!(with(&LOSSES, &next), before, "last winter's losses, to the digit");
    assert_eq!(std::fs::read_to_string(&last).unwrap(), written);
    assert!(snowhum(&["check", next_path]).status.success());
}

#[test]
fn an_old_yard_is_told_what_is_missing_and_offered_the_one_step() {
    let file = own_yard(&folder("old"));
    let told = refused(&["now", "--apiary", file.to_str().unwrap(), "--as-of", "2026-11-20"]);
    assert!(told.contains("counted on 2025-") && told.contains("snowhum season"), "{told}");
}
