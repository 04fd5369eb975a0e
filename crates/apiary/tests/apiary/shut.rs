//! Hives that bees cannot leave, and boxes that hold no more bees than they hold. Invented yards.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use crate::said;
use snowhum_apiary::{Act, Apiary, Entry, Faults, QueenState, most_bees, read, standards};

const YARD: &str = "[apiary]\nname = \"Invented\"\nas_of = 2025-09-05\n[site]\nlatitude = 50\nlongitude = 10\nelevation = \"300 m\"\nzone = \"Europe/Berlin\"\n";

fn file(hive: &str, colony: &str) -> String {
    format!(
        "{YARD}[[hive]]\nname = \"H\"\n{hive}\n[[colony]]\nname = \"C\"\nhive = \"H\"\nstores = \"10 kg\"\n{colony}\n"
    )
}

fn with_ways(ways: &str) -> Result<Apiary, Faults> {
    read(&file(&format!("kind = \"Langstroth 10\"\n{ways}"), "frames_of_bees = 6"), "yard.toml").map(|(yard, _)| yard)
}

#[test]
fn a_hive_with_every_way_shut_is_refused_at_its_line_and_one_way_open_is_enough() {
    for ways in [
        "entrance = \"none\"",
        "entrance = \"none\"\nupper_hole = \"none\"",
        "floor = \"open mesh\"\nupper_hole = \"off\"\nentrance = \"shut\"",
    ] {
        let faults = with_ways(ways).unwrap_err();
        assert_eq!(faults.faults.len(), 1, "{faults}");
        let fault = &faults.faults[0];
        let line = 1 + file(&format!("kind = \"Langstroth 10\"\n{ways}"), "")
            .lines()
            .position(|l| l.starts_with("entrance"))
            .unwrap();
        assert_eq!((fault.line, fault.field.as_str()), (line, "hive \"H\".entrance"));
        assert!(
            said(&fault.problem).contains("void") && said(&fault.remedy).contains("entrance = \"reduced\""),
            "{fault:?}"
        );
        assert_eq!((faults.sealed.len(), faults.sealed[0].line), (1, line));
    }
    for ways in ["entrance = \"none\"\nupper_hole = \"25 mm\"", "upper_hole = \"none\"", ""] {
        assert!(with_ways(ways).is_ok(), "{ways}");
    }
}

#[test]
fn no_standard_holds_more_bees_than_its_boxes_however_they_are_told() {
    for standard in standards() {
        for size in &standard.sizes {
            let combs = size.build(&standard.wall.parse().unwrap()).frames;
            let hive = format!("kind = \"{}\"\nboxes = [\"{}\"]", standard.name, size.size);
            let tellings =
                ["weak", "middling", "strong"].map(|word| format!("strength = \"{word}\"")).into_iter().chain([
                    format!("frames_of_bees = {combs}"),
                    format!("seams_of_bees = {}", combs + 1),
                    "frames_of_bees = 2".to_owned(),
                ]);
            for telling in tellings {
                let (yard, _) = read(&file(&hive, &telling), "yard.toml").unwrap();
                let (bees, most) = (yard.colonies[0].bees, most_bees(&yard.hives[0]));
                assert!(bees.p10 <= bees.p50 && bees.p50 <= bees.p90, "{} {telling}: {bees:?}", standard.name);
                assert!(bees.p90 <= most, "{} {} {telling}: {bees:?} in {most}", standard.name, size.size);
            }
        }
    }
}

#[test]
fn a_stated_number_over_what_the_boxes_hold_is_asked_about_with_both_figures() {
    let nucleus = "kind = \"Langstroth 10\"\nboxes = [\"deep\"]\n";
    let told = |bees: &str| read(&file(nucleus, bees), "yard.toml").map(|(yard, _)| yard);
    let held = told("bees = 20000").unwrap();
    let most = most_bees(&held.hives[0]);
    let over = (most + 5_000.0).round();
    for field in ["bees", "bees_high"] {
        let lines =
            if field == "bees" { format!("bees = {over}") } else { format!("bees = 20000\nbees_high = {over}") };
        let fault = &told(&lines).unwrap_err().faults[0];
        assert_eq!(fault.field, format!("colony \"C\".{field}"));
        let hold = format!("{}", (most / 100.0).floor() * 100.0);
        assert!(said(&fault.problem).contains(&format!("{over}")) && said(&fault.problem).contains(&hold), "{fault:?}");
    }
}

#[test]
fn a_queen_is_told_in_the_file_and_by_notes_and_unknown_is_as_left_out() {
    let told = |line: &str| with_ways_and(line).colonies[0].autumn.queen;
    assert_eq!(told("queen = \"unknown\""), told(""));
    assert_eq!(told("queen = \"unknown\""), None);
    assert_eq!(told("queen = \"none\""), Some(QueenState::None));
    let note = |text: &str| Entry::read(text, &|_| None);
    assert_eq!(note("queen=laying workers"), Ok(Entry::Act(Act::QueenFound(QueenState::LayingWorkers))));
    assert_eq!(note("did=swept"), Ok(Entry::Act(Act::Swept)));
    for text in ["queen=virgin", "queen=drone layer", "queen=none", "queen=dead", "did=swept"] {
        assert_eq!(note(text).unwrap().written(&|_| String::new()), text);
    }
    let wrong = note("queen=lost").unwrap_err();
    assert!(wrong.to_string().contains("the nearest known are \""), "{wrong}");
}

fn with_ways_and(line: &str) -> Apiary {
    read(&file("kind = \"Langstroth 10\"", &format!("frames_of_bees = 6\n{line}")), "yard.toml").unwrap().0
}
