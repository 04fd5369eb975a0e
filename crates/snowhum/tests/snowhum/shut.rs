//! A hive that its bees cannot leave is refused by every command that asks of its winter, with why. Invented yards.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::Path;
use std::process::{Command, Output};

fn snowhum(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_snowhum")).args(arguments).output().unwrap()
}

/// A yard of one hive with these ways in and out.
fn yard(name: &str, ways: &str) -> String {
    let text = format!(
        "[apiary]\nname = \"Invented\"\ninvented = true\nas_of = 2025-10-05\n[site]\nlatitude = 52\nlongitude = 10\nelevation = \"100 m\"\nzone = \"Europe/Berlin\"\n[[hive]]\nname = \"Ash\"\nkind = \"Langstroth 10\"\nboxes = [\"deep\"]\n{ways}\n[[colony]]\nname = \"Ash\"\nhive = \"Ash\"\nframes_of_bees = 8\nstores = \"18 kg\"\nmites = \"not counted\"\n"
    );
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, text).unwrap();
    path.to_str().unwrap().to_owned()
}

/// The message on one line, as it is wrapped to the page.
fn said(output: &Output) -> String {
    let text = String::from_utf8(output.stderr.clone()).unwrap();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The first figure before a word.
fn percent(said: &str) -> f64 {
    let before = said.split(" % carbon dioxide").next().unwrap();
    before.rsplit(' ').next().unwrap().parse().unwrap()
}

#[test]
fn every_command_refuses_a_file_whose_hive_is_shut_at_its_line_and_says_why() {
    let file = yard("shut.toml", "entrance = \"none\"\nupper_hole = \"none\"");
    for arguments in [
        vec!["check", &file],
        vec!["plan", "--apiary", &file, "--members", "32"],
        vec!["now", "--apiary", &file],
        vec!["setup", "Ash", "--apiary", &file, "--try", "lid=50 mm foam"],
    ] {
        let output = snowhum(&arguments);
        let said = said(&output);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {said}");
        for words in ["shut.toml:14:", "hive \"Ash\".entrance", "void", "carbon dioxide", "entrance = \"reduced\""] {
            assert!(said.contains(words), "{words} is not in {said}");
        }
        assert!((0.1..60.0).contains(&percent(&said)), "{said}");
        assert!(!said.contains("no real difference") && output.stdout.is_empty());
    }
}

#[test]
fn the_faults_as_json_tell_the_air_too() {
    let file = yard("shut-json.toml", "entrance = \"none\"");
    let output = snowhum(&["check", &file, "--json"]);
    assert_eq!(output.status.code(), Some(2));
    let faults: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let fault = &faults["faults"][0];
    assert_eq!((fault["line"].as_u64(), fault["field"].as_str()), (Some(14), Some("hive \"Ash\".entrance")));
    assert!(fault["problem"].as_str().unwrap().contains("carbon dioxide"), "{fault}");
}

#[test]
fn a_mesh_floor_lets_in_air_and_no_bee_out() {
    let file = yard("mesh.toml", "entrance = \"none\"\nfloor = \"open mesh\"");
    let output = snowhum(&["check", &file]);
    assert_eq!(output.status.code(), Some(2));
    assert!(said(&output).contains("no bee out") && !said(&output).contains("foul"), "{}", said(&output));
}

#[test]
fn a_set_up_that_shuts_the_last_way_is_refused_and_one_that_leaves_another_is_not() {
    let file = yard("open.toml", "entrance = \"reduced\"\nupper_hole = \"25 mm\"");
    let tried = |change: &str| snowhum(&["setup", "Ash", "--apiary", &file, "--try", change, "--members", "32"]);
    let output = tried("entrance=off; upper hole=off");
    let why = said(&output);
    assert_eq!(output.status.code(), Some(2), "{why}");
    for words in ["void", "carbon dioxide", "upper hole=25 mm"] {
        assert!(why.contains(words), "{words} is not in {why}");
    }
    for change in ["entrance=off", "upper hole=off", "upper hole=off; floor=open mesh"] {
        let output = tried(change);
        assert!(output.status.success(), "{change}: {}", said(&output));
    }
    let one_way = yard("hole.toml", "entrance = \"none\"\nupper_hole = \"25 mm\"");
    assert!(snowhum(&["check", &one_way]).status.success());
}
