//! Words, treatments and sheets as a keeper asks for them in a terminal. The yard is invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_advice::questions::questions;
use snowhum_store::Store;
use snowhum_testkit::{AMERICAN, BRITISH, foreign_figures, holds};
use snowhum_units::System;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("words-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&path).unwrap();
        std::fs::write(path.join("yard.toml"), snowhum_apiary::demo_text()).unwrap();
        Self(path)
    }

    fn run(&self, arguments: &[&str]) -> Output {
        let mut command = Command::new(env!("CARGO_BIN_EXE_snowhum"));
        command.args(arguments).current_dir(&self.0).env("XDG_DATA_HOME", &self.0).stdin(Stdio::null());
        command.output().unwrap()
    }

    fn done(&self, arguments: &[&str]) -> String {
        let output = self.run(arguments);
        assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).unwrap()
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

#[test]
fn every_command_that_answers_a_question_is_there() {
    let folder = Folder::new("commands");
    for question in questions() {
        folder.done(&[&question.command, "--help"]);
    }
    assert_eq!(folder.run(&["no-such-command", "--help"]).status.code(), Some(2));
}

#[test]
fn a_word_is_explained_and_one_that_is_not_known_is_said_so() {
    let folder = Folder::new("explained");
    assert!(folder.done(&["words", "inner cover"]).starts_with("crownboard (North American: inner cover)"));
    assert!(folder.done(&["words", "--words", "north-american"]).contains("floor (North American: bottom board)"));
    assert!(folder.done(&["words", "--json"]).contains("\"british\": \"floor\""));
    let wrong = folder.run(&["words", "quux"]);
    assert_eq!(wrong.status.code(), Some(2));
}

#[test]
fn answers_are_in_the_words_asked_for_or_kept_with_the_records() {
    let folder = Folder::new("speech");
    let weighing = ["weigh", "--scale", "40", "--hive", "Langstroth 10"];
    let british = folder.done(&weighing);
    assert!(british.contains("roof 3.0 kg") && !british.contains("outer cover"), "{british}");
    let asked = folder.done(&[&weighing[..], &["--words", "north-american"]].concat());
    assert!(asked.contains("bottom board 1.8 kg") && !asked.contains("roof"), "{asked}");
    folder.done(&["import", "yard.toml"]);
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(async {
        let store = Store::open(&folder.0.join("snowhum").join("records.db")).await.unwrap();
        store.set("web.language", "en-US").await.unwrap();
        store.close().await;
    });
    assert_eq!(folder.done(&weighing), asked, "as chosen for the pages");
    assert_eq!(folder.done(&[&weighing[..], &["--words", "british"]].concat()), british);
}

#[test]
fn the_record_of_treatments_holds_what_was_noted_through_export_and_import() {
    let folder = Folder::new("record");
    folder.done(&["import", "yard.toml"]);
    let given = "treated=strips | product: Example, \"plain\" | withdrawal: nil | duration: 6 weeks";
    folder.done(&["note", "Alder", given, "--at", "2026-02-01 12:00"]);
    let sheet = folder.done(&["treatments", "--csv"]);
    let row = "2026-02-01,Alder,contact strips,\"Example, \"\"plain\"\"\",not noted,not noted,not noted,not noted,nil,6 weeks";
    assert!(sheet.lines().any(|line| line.trim_end() == row), "{sheet}");
    let told = folder.done(&["treatments"]).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("not noted: Batch, Quantity, Supplier, Proof"), "{told}");
    folder.done(&["export", "all.json"]);
    folder.done(&["import", "all.json", "--store", "second.db"]);
    assert_eq!(folder.done(&["treatments", "--csv", "--store", "second.db"]), sheet);
}

#[test]
fn sheets_are_written_into_a_folder() {
    let folder = Folder::new("print");
    let wrong = folder.run(&["print", "--out", "papers", "--address", "my laptop"]);
    assert_eq!(wrong.status.code(), Some(2));
    let arguments =
        ["print", "--out", "papers", "--members", "16", "--as-of", "2026-02-07", "--words", "north-american"];
    folder.done(&arguments);
    let cards = std::fs::read_to_string(folder.0.join("papers/cards.html")).unwrap();
    assert!(cards.contains("Alder") && !cards.contains("<svg class=\"qr\""), "without an address no code");
    let season = std::fs::read_to_string(folder.0.join("papers/season.html")).unwrap();
    assert!(season.contains("lang=\"en-US\"") && season.contains("oxalic acid"));
}

/// What is asked of the rest of the year, and of the watch.
const ASKED: [&[&str]; 18] = [
    &["jobs", "--members", "16"],
    &["spring", "--members", "16", "--as-of", "2026-04-10"],
    &["plan", "--members", "16"],
    &["plan", "--all", "--members", "16"],
    &["plan", "Juniper", "--members", "16"],
    &["now", "--members", "16", "--as-of", "2026-02-07"],
    &["now", "--all", "--members", "16", "--as-of", "2026-02-07"],
    &["now", "Larch", "--members", "16", "--as-of", "2026-02-07"],
    &["losses"],
    &["losses", "--before", "4", "--dead", "1"],
    &["deadout"],
    &["deadout", "--sign", "ropy-larvae=yes"],
    &["deadout", "--sign", "small-cluster=yes", "--sign", "droppings-inside=yes"],
    &["deadout", "--list"],
    &["mites"],
    &["feed", "--short", "8"],
    &["feed", "--short", "8", "--season", "winter"],
    &["treatments"],
];

#[test]
fn every_answer_in_a_terminal_is_in_one_speech_and_fits_it() {
    let folder = Folder::new("one-speech");
    folder.done(&["import", "yard.toml"]);
    for (words, foreign) in [("north-american", &BRITISH[..]), ("british", &AMERICAN[..])] {
        for asked in ASKED {
            let said = folder.done(&[asked, &["--words", words]].concat());
            for line in said.lines() {
                assert!(line.chars().count() <= 80, "{asked:?}: {line}");
            }
            let whole = said.split_whitespace().collect::<Vec<_>>().join(" ");
            for term in foreign {
                assert_eq!(holds(&whole, term), None, "{asked:?} says \"{term}\" in {words}");
            }
        }
    }
}

#[test]
fn no_answer_in_a_terminal_tells_a_figure_in_units_that_were_not_asked_for() {
    let folder = Folder::new("units");
    folder.done(&["import", "yard.toml"]);
    let mut found = Vec::new();
    for (units, language, reads) in
        [("us", "en-GB", System::Us), ("us", "de", System::Us), ("metric", "en-GB", System::Metric)]
    {
        for asked in ASKED {
            let said = folder.done(&[asked, &["--units", units, "--language", language]].concat());
            let whole = said.split_whitespace().collect::<Vec<_>>().join(" ");
            let figures = foreign_figures(&whole, reads).into_iter();
            found.extend(figures.map(|figure| format!("{asked:?} {units} {language}: {figure}")));
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn what_is_typed_stands_as_it_is_typed() {
    let folder = Folder::new("typed");
    let said = folder.done(&["setup", "Alder", "--try", "floor=mesh", "--members", "16", "--words", "north-american"]);
    assert!(said.contains("floor=mesh") && !said.contains("bottom board=mesh"), "{said}");
}

#[test]
fn a_calendar_is_in_the_words_asked_for() {
    let folder = Folder::new("calendar");
    let file = folder.0.join("jobs.ics");
    for (words, own) in [("north-american", "bottom boards cleared"), ("british", "floors cleared")] {
        folder.done(&["jobs", "--members", "16", "--words", words, "--ics", file.to_str().unwrap()]);
        let calendar = std::fs::read_to_string(&file).unwrap().replace("\r\n ", "");
        assert!(calendar.contains(own), "{words}");
    }
}

/// What looks after records and refuses what cannot be read, one after another in one folder.
const LOOKED_AFTER: [&[&str]; 35] = [
    &["--help"],
    &["check", "yard.toml"],
    &["check", "broken.toml"],
    &["check", "none.toml"],
    &["doctor"],
    &["import", "diary.csv"],
    &["import", "yard.toml"],
    &["import", "diary.csv"],
    &["import", "diary.csv", "--keep"],
    &["import", "--undo"],
    &["import", "--undo"],
    &["import", "unknown.csv"],
    &["export", "all.json"],
    &["export", "all.json"],
    &["export", "sheets"],
    &["import", "all.json"],
    &["backup", "copy.db"],
    &["restore", "copy.db"],
    &["restore", "copy.db", "--mend"],
    &["restore", "yard.toml"],
    &["doctor"],
    &["sign-in-code"],
    &["losses", "--before", "4", "--earlier", "x"],
    &["losses", "--member", "x"],
    &["losses", "--club", "broken.toml"],
    &["deadout", "--sign", "x"],
    &["words", "quux"],
    &["season"],
    &["weather", "fetch"],
    &["weather", "import", "broken.toml"],
    &["hive", "Alder", "--outside", "warm"],
    &["hive", "--sides"],
    &["plan", "--members", "few"],
    &["plan", "--members", "3"],
    &["dead-bees", "--found", "3", "--days", "900"],
];
/// Words of every second English sentence that are none of a German one.
const ENGLISH: [&str; 17] = [
    "the", "of", "and", "with", "is", "are", "not", "there", "from", "kept", "read", "written", "such", "write",
    "cannot", "needs", "found",
];

#[test]
fn what_looks_after_the_records_speaks_german_to_who_reads_it() {
    let folder = Folder::new("german");
    let write = |name: &str, text: &str| std::fs::write(folder.0.join(name), text).unwrap();
    write("broken.toml", "[apiary]\nname = 3\nkeeper = \"x\"\n[site]\nlatitude = \"north\"\n");
    write("diary.csv", "date,hive,hum\n2026-01-18,Alder,heard by ear\n2026-01-20,Birch,none\n");
    write("unknown.csv", "one,two\n1,2\n");
    for asked in LOOKED_AFTER {
        let output = folder.run(&[asked, &["--language", "de"]].concat());
        let said = String::from_utf8([output.stdout, output.stderr].concat()).unwrap();
        assert!(output.status.code() < Some(70) && !said.is_empty(), "{asked:?}: {said}");
        let mut words = said.split(|letter: char| !letter.is_alphanumeric() && letter != '_');
        assert_eq!(words.find(|word| ENGLISH.contains(word)), None, "{asked:?}: {said}");
    }
}
