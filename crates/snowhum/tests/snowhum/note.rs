//! Records as a keeper uses them: a yard brought in, notes made, put right and taken back, copies made. The yard is
//! invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use serde_json::Value;

/// A folder of its own for each test, gone at the end.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("snowhum-note-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        std::fs::create_dir_all(&path).unwrap();
        std::fs::write(path.join("yard.toml"), snowhum_apiary::demo_text()).unwrap();
        Self(path)
    }

    fn run(&self, arguments: &[&str]) -> Output {
        Command::new(env!("CARGO_BIN_EXE_snowhum"))
            .args(arguments)
            .current_dir(&self.0)
            .env("XDG_DATA_HOME", &self.0)
            .stdin(Stdio::null())
            .output()
            .unwrap()
    }

    fn done(&self, arguments: &[&str]) -> String {
        let output = self.run(arguments);
        assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).unwrap()
    }

    fn json(&self, arguments: &[&str]) -> Value {
        serde_json::from_str(&self.done(&[arguments, &["--json"]].concat())).unwrap()
    }

    fn refused(&self, arguments: &[&str], code: i32) -> String {
        let output = self.run(arguments);
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(code), "{arguments:?}: {said}");
        // The words, however they are broken to the page.
        said.split_whitespace().collect::<Vec<_>>().join(" ")
    }

    fn with_yard(name: &str) -> Self {
        let folder = Self::new(name);
        folder.done(&["import", "yard.toml"]);
        folder
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

const NOW: &[&str] = &["now", "--as-of", "2025-12-20", "--members", "64"];

fn note<'a>(more: &[&'a str]) -> Vec<&'a str> {
    [&["note", "Alder", "--at", "2025-12-19 10:00", "--air", "-6"], more].concat()
}

#[test]
fn a_note_moves_the_estimate_and_undo_gives_the_former_one_back() {
    let folder = Folder::with_yard("undo");
    let before = folder.done(&[NOW, &["--json"]].concat());
    let noted = folder.json(&note(&["hum=silent by ear; dead=0 on snow"]));
    assert_eq!(noted["colony"], "Alder");
    assert_eq!(noted["at"], "2025-12-19T08:00:00Z");
    assert!(noted["id"].is_string());
    let after = folder.done(&[NOW, &["--json"]].concat());
    assert_ne!(before, after);
    assert!(after.contains("hum=silent by ear"));
    folder.done(&["undo", "Alder"]);
    assert_eq!(folder.done(&[NOW, &["--json"]].concat()), before, "to the byte");
}

#[test]
fn a_note_put_right_keeps_its_id_and_is_listed_once() {
    let folder = Folder::with_yard("edit");
    let id = folder.json(&note(&["dead=300 on snow"]))["id"].as_str().unwrap().to_owned();
    let edited = folder.json(&["note", "Alder", "dead=30 on snow", "--edit", &id]);
    assert_eq!((edited["id"].as_str(), edited["done"].as_str()), (Some(id.as_str()), Some("edited")));
    let all = folder.json(&["note", "Alder", "--list"]);
    let with_id: Vec<&Value> = all.as_array().unwrap().iter().filter(|one| one["id"] == id.as_str()).collect();
    assert_eq!(with_id.len(), 1);
    assert_eq!(with_id[0]["note"], "dead=30 on snow");
    folder.done(&["undo", "Alder"]);
    assert!(folder.done(&["note", "Alder", "--list"]).contains("dead=300 on snow"));
}

#[test]
fn every_word_of_a_note_is_in_its_help() {
    let help = Folder::new("help").done(&["note", "--help"]);
    for (_, example) in snowhum_apiary::sign_examples() {
        assert!(help.contains(example), "{example}");
    }
}

#[test]
fn what_is_wrong_says_what_would_be_right_and_keeps_nothing() {
    let folder = Folder::new("wrong");
    assert!(folder.refused(&note(&["hum=heard"]), 2).contains("snowhum import my-yard.toml"));
    folder.done(&["import", "yard.toml"]);
    assert!(folder.refused(&note(&["hmu=heard"]), 2).contains("hum=heard by ear"));
    assert!(folder.refused(&["note", "Oak", "hum=heard"], 2).contains("Alder"));
    assert!(folder.refused(&["note", "Alder", "hum=heard", "--at", "some day"], 2).contains("2026-01-06 10:00"));
    assert!(folder.refused(&["undo", "Alder", "--store", "none.db"], 2).contains("none.db"));
    let listed = folder.json(&["note", "Alder", "--list"]);
    assert!(listed.as_array().unwrap().iter().all(|one| !one["note"].as_str().unwrap().contains("heard by tube")));
}

#[test]
fn hostile_words_are_kept_as_words() {
    let folder = Folder::with_yard("hostile");
    let words = "words=<script>alert(1)</script> '); DROP TABLE notes; --";
    folder.done(&note(&[words]));
    let listed = folder.json(&["note", "Alder", "--list"]);
    assert!(listed.as_array().unwrap().iter().any(|one| one["note"] == words), "{listed}");
    assert!(folder.done(&["doctor"]).contains("in order"));
}

#[test]
fn an_opening_noted_and_taken_back_leaves_the_answer_as_it_was_to_the_byte() {
    let folder = Folder::with_yard("opening");
    let now = [NOW, &["--json"]].concat();
    let before = folder.done(&now);
    folder.done(&note(&["upper=blocked; poke=not tried"]));
    let alder = [&["now", "Alder"], &NOW[1..]].concat();
    let words = folder.done(&alder).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("upper hole noted blocked on 19 December"), "{words}");
    assert_ne!(folder.done(&now), before);
    folder.done(&["undo", "Alder"]);
    assert_eq!(folder.done(&now), before);
    // Of the hole itself what belongs to the opening is understood, and written as it is kept.
    assert_eq!(folder.json(&note(&["hole=plugged with bees"]))["note"], "upper=plugged with bees");
    let refused = folder.refused(&["note", "Birch", "upper=iced"], 2);
    assert!(refused.contains("no upper hole") && refused.contains("changed=upper hole=25 mm"), "{refused}");
}

#[test]
fn what_is_noted_at_the_hive_goes_out_and_comes_in_again() {
    let folder = Folder::with_yard("looks");
    let line = "poke=answered; upper=drifted over; entrance=plugged with bees; hook=31; entrance=not visible";
    folder.done(&note(&[line]));
    folder.done(&["export", "all.json"]);
    folder.done(&["import", "all.json", "--store", "other.db"]);
    let listed = folder.done(&["note", "Alder", "--list", "--store", "other.db"]);
    let listed = listed.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(listed.contains(line), "{listed}");
    let told = |more: &[&str]| folder.done(&[NOW, &["--json"], more].concat());
    assert_eq!(told(&["--store", "other.db"]), told(&[]), "a copy tells the same");
}

#[test]
fn everything_goes_out_and_comes_in_again() {
    let folder = Folder::with_yard("round");
    folder.done(&note(&["hum=heard by tube"]));
    folder.done(&["export", "all.json"]);
    assert!(folder.refused(&["export", "all.json"], 2).contains("all.json"), "nothing is overwritten");
    folder.done(&["import", "all.json", "--store", "other.db"]);
    folder.done(&["export", "again.json", "--store", "other.db"]);
    let read = |name: &str| std::fs::read(folder.0.join(name)).unwrap();
    assert!(read("all.json") == read("again.json"), "byte for byte");
    folder.done(&["export", "sheets"]);
    assert!(folder.0.join("sheets").read_dir().unwrap().count() >= 3);
}

#[test]
fn a_backup_is_restored_and_what_was_there_is_kept_beside() {
    let folder = Folder::with_yard("backup");
    folder.done(&["backup", "copy.db"]);
    folder.done(&note(&["hum=heard by tube"]));
    let listed = |folder: &Folder| folder.done(&["note", "Alder", "--list"]);
    assert!(listed(&folder).contains("heard by tube"));
    assert!(folder.done(&["restore", "copy.db"]).contains("what was there is now"));
    assert!(!listed(&folder).contains("heard by tube"));
    assert!(folder.refused(&["restore", "yard.toml"], 2).contains("yard.toml"), "no database");
    assert_eq!(folder.json(&["doctor"])["well"], true);
}

#[test]
fn a_place_that_cannot_be_written_is_the_machines_fault() {
    let folder = Folder::with_yard("place");
    // A file where a folder should be fails for anyone, root too.
    let within = Path::new("yard.toml").join("records.db");
    let said = folder.refused(&["import", "yard.toml", "--store", within.to_str().unwrap()], 3);
    assert!(said.contains("records.db"), "{said}");
}

#[test]
fn the_records_stand_before_the_demo_and_a_file_before_the_records() {
    let folder = Folder::with_yard("truth");
    let said = |output: Output| String::from_utf8(output.stderr).unwrap();
    let kept = said(folder.run(&["hive", "Alder", "--outside", "-5"]));
    assert!(kept.contains("of your records"), "{kept}");
    let file = said(folder.run(&["hive", "Alder", "--outside", "-5", "--apiary", "yard.toml"]));
    assert!(!file.contains("records") && !file.contains("demo"), "{file}");
}

#[test]
fn the_same_is_told_once_a_week() {
    let folder = Folder::with_yard("alert");
    let on = |day: &'static str| folder.done(&["now", "--alert", "--members", "64", "--as-of", day]);
    assert!(on("2026-04-10").contains("Juniper"));
    assert_eq!(on("2026-04-10").trim(), "nothing new");
    folder.done(&["note", "Alder", "colony=dead", "--at", "2026-04-10 12:00"]);
    assert!(on("2026-04-10").contains("Alder"), "its word has changed");
}

const DEAD: &[&str] = &["deadout", "Larch", "--at", "2026-03-20 12:00", "--sign", "ropy-larvae=no"];

#[test]
fn a_dead_colony_is_examined_kept_and_found_among_the_losses() {
    let folder = Folder::with_yard("dead");
    let answer = folder.json(&[DEAD, &["--sign", "small-cluster=yes", "--keep"]].concat());
    assert!(answer["from_records"].as_array().unwrap().iter().any(|one| one["sign"] == "mites-over-line"));
    let listed = folder.done(&["note", "Larch", "--list"]);
    assert!(listed.contains("examined=ropy-larvae no, small-cluster yes") && listed.contains("likeliest mites"));
    let now = folder.json(&["now", "--as-of", "2026-03-25", "--members", "64"]);
    assert!(now["colonies"][3]["about"].as_str().unwrap().starts_with("dead and examined"), "{}", now["colonies"][3]);
    for (name, count) in [("Alder", "alive"), ("Birch", "alive"), ("Juniper", "weak"), ("Aspen", "queen failed")] {
        let count = format!("bees=seen; counted={count}");
        folder.done(&["note", name, &count, "--at", "2026-05-22 12:00"]);
    }
    let losses: &[&str] = &["losses", "--as-of", "2026-06-01", "--members", "32"];
    let closed = folder.json(&[losses, &["--season", "2025"]].concat());
    assert_eq!(closed["losses"]["yard"]["lost"], 2);
    assert_eq!(closed["forecast"]["colonies"].as_array().unwrap().len(), 5);
    assert_eq!(closed["schema"], "snowhum.lessons/1");
    let page = folder.done(losses);
    assert!(page.contains("2 of 5 colonies lost") && page.contains("Five hives cannot tell"), "{page}");
    assert!(page.lines().all(|line| line.chars().count() <= 80), "{page}");
    folder.done(&["export", "all.json"]);
    folder.done(&["import", "all.json", "--store", "other.db"]);
    assert_eq!(folder.done(&[losses, &["--store", "other.db"]].concat()), page, "a copy tells the same");
    folder.done(&["export", "sheets"]);
    let notes = std::fs::read_to_string(folder.0.join("sheets").join("note_versions.csv")).unwrap();
    assert!(notes.contains("examined=ropy-larvae no"));
}

#[test]
fn an_examination_in_which_nobody_looked_is_not_kept() {
    let folder = Folder::with_yard("unlooked");
    assert!(folder.refused(&["deadout", "Larch", "--keep"], 2).contains("look first"));
    assert!(folder.refused(&["deadout", "Oak", "--sign", "wet-mould=yes"], 2).contains("Alder"));
    assert!(folder.refused(&["losses", "--season", "2025", "--before", "3"], 2).contains("--season"));
    let stopped = folder.done(&["deadout", "Larch", "--sign", "foul-smell=yes", "--keep", "--at", "2026-03-20 12:00"]);
    assert!(stopped.starts_with("STOP") && !stopped.contains("Wax moth"));
    assert!(folder.done(&["losses", "--as-of", "2026-04-01"]).contains("authority"));
}

#[test]
fn a_malformed_import_is_the_inputs_fault_and_names_it() {
    let folder = Folder::with_yard("malformed");
    for (name, text) in [
        ("half.json", "{\"schema\":\"snowhum.store/2\",\"yards\":["),
        ("other.json", "[]"),
        ("newer.json", "{\"schema\":\"snowhum.store/99\"}"),
        ("sheet.csv", "name\nx\n"),
        ("torn.csv", "body\n{}\n"),
        ("yard2.toml", "not toml at all ["),
    ] {
        std::fs::write(folder.0.join(name), text).unwrap();
        let fresh = format!("{name}.db");
        let said = folder.refused(&["import", name, "--store", &fresh], 2);
        assert!(said.contains(name) && !said.contains(&fresh), "{name}: {said}");
        if name.ends_with(".csv") {
            let said = folder.refused(&["import", name], 2);
            assert!(said.contains(name) && !said.contains("no yard is kept"), "{name}: {said}");
        }
    }
}

/// Chooses something on the pages of a folder's records.
fn choose(folder: &Folder, setting: &str, value: &str) {
    let path = folder.0.join("snowhum").join("records.db");
    let runtime = tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap();
    runtime.block_on(async {
        let store = snowhum_store::Store::open(&path).await.unwrap();
        store.set(setting, value).await.unwrap();
        store.close().await;
    });
}

#[test]
fn units_chosen_for_the_pages_hold_on_the_command_line_unless_others_are_asked_for() {
    let folder = Folder::with_yard("chosen");
    let noted = |more: &[&str]| folder.json(&[&note(&["scale=90"])[..], more].concat())["note"].clone();
    assert_eq!(noted(&[]), "scale=90 kg", "nobody chose");
    choose(&folder, "web.units", "us");
    assert_eq!(noted(&[]), "scale=40.823 kg");
    assert_eq!(noted(&["--units", "metric", "--sure"]), "scale=90 kg");
    assert!(folder.done(&["weigh", "--one-side", "40"]).contains(" lb at one side"));
    assert!(folder.done(&["weigh", "--one-side", "40", "--units", "metric"]).contains("40.0 kg at one side"));
    std::fs::write(folder.0.join("diary.csv"), "Date,Hive,Weight\n2025-12-21,Birch,90\n").unwrap();
    assert_eq!(folder.json(&["import", "diary.csv"])["read"]["rows"][0]["says"], "scale=40.823 kg");
    choose(&folder, "web.units", "metric");
    assert_eq!(noted(&["--units", "us", "--sure"]), "scale=40.823 kg");
}

/// A diary in two hands: a workbook, and text with other headings.
fn diary(folder: &Folder) {
    let rows = snowhum_testkit::workbooks::rows(&[
        "Date | Hive | Weight (kg) | Remarks",
        "@46011 | Alder | 42.5 | quiet",
        "@46011 | Birch | 38 | forgot the lid",
    ]);
    std::fs::write(folder.0.join("diary.xlsx"), snowhum_testkit::workbooks::workbook(&[("2025", &rows)])).unwrap();
    let text = "Datum;Volk;Gewicht;Notiz\n20.12.2025;Alder;42,5;ruhig\n20.12.2025;Brich;1,500;\n";
    std::fs::write(folder.0.join("tagebuch.csv"), text).unwrap();
}

#[test]
fn a_sheet_is_shown_before_it_is_kept_kept_once_and_taken_back_in_one_step() {
    let folder = Folder::with_yard("sheet");
    diary(&folder);
    let count = || folder.json(&["note", "Alder", "--list"]).as_array().unwrap().len();
    let before = count();
    let shown = folder.done(&["import", "diary.xlsx"]);
    assert!(shown.contains("scale=42.5 kg; words=quiet") && shown.contains("import diary.xlsx --keep"), "{shown}");
    assert!(shown.lines().all(|line| line.chars().count() <= 80), "{shown}");
    assert_eq!(count(), before, "nothing is kept yet");
    assert!(folder.done(&["import", "diary.xlsx", "--keep"]).contains("brought in: 2"));
    assert_eq!(count(), before + 1);
    assert_eq!(folder.json(&["import", "diary.xlsx", "--keep"])["kept"]["known"], 2, "once");
    assert_eq!(folder.json(&["import", "--undo"])["withdrawn"], 2);
    assert_eq!(count(), before);
    assert!(folder.refused(&["import", "--undo"], 2).contains("no sheet came in"));
    assert_eq!(folder.json(&["import", "diary.xlsx", "--keep"])["kept"]["stored"], 2, "and in again");
    assert_eq!(folder.json(&["doctor"])["well"], true);
}

#[test]
fn other_headings_are_refused_with_the_line_that_reads_them_and_that_is_said_once() {
    let folder = Folder::with_yard("headings");
    diary(&folder);
    let mend = folder.refused(&["import", "tagebuch.csv"], 2);
    assert!(mend.contains("--columns \"date=Datum, hive=Volk\""), "{mend}");
    let columns = ["--columns", "date=Datum, hive=Volk, scale=Gewicht:kg, words=Notiz"];
    let faults = folder.refused(&[&["import", "tagebuch.csv"][..], &columns].concat(), 2);
    for part in ["tagebuch.csv: row 3: Volk: \"Brich\"", "did you mean \"Birch\"?", "row 3: Gewicht: \"1,500 kg\""] {
        assert!(faults.contains(part), "{part}: {faults}");
    }
    let text = "Datum;Volk;Gewicht;Notiz\n20.12.2025;Alder;42,5;ruhig\n";
    std::fs::write(folder.0.join("tagebuch.csv"), text).unwrap();
    folder.done(&[&["import", "tagebuch.csv", "--keep"][..], &columns].concat());
    let again = folder.json(&["import", "tagebuch.csv"]);
    assert_eq!(
        (&again["read"]["rows"][0]["says"], &again["read"]["rows"][0]["known"]),
        (&"scale=42.5 kg; words=ruhig".into(), &true.into())
    );
}

#[test]
fn a_sheet_asks_about_doubles_days_to_come_and_days_before_the_count() {
    let folder = Folder::with_yard("asked");
    folder.done(&note(&["words=quiet"]));
    let write = |text: &str| std::fs::write(folder.0.join("diary.csv"), text).unwrap();
    write("Date,Hive,Note\n2025-12-19 10:00,Alder,quiet\n2024-12-19,Alder,quiet\n2025-12-20,Alder,loud\n");
    let asked = folder.refused(&["import", "diary.csv", "--keep"], 2);
    for part in [
        "row 2: Alder, 2025-12-19 10:00: words=quiet: the same",
        "row 3:",
        "before the colonies were counted",
        "--sure",
    ] {
        assert!(asked.contains(part), "{part}: {asked}");
    }
    assert!(!asked.contains("row 4"), "{asked}");
    assert_eq!(folder.json(&["import", "diary.csv", "--keep", "--leave-asked"])["kept"]["stored"], 1);
    assert_eq!(folder.json(&["import", "diary.csv", "--keep", "--sure"])["kept"]["stored"], 2);
    write("Date,Hive,Note\n2149-12-19,Alder,quiet\n");
    let ahead = folder.refused(&["import", "diary.csv", "--keep", "--sure"], 2);
    assert!(ahead.contains("still to come") && ahead.contains("--leave-asked"), "{ahead}");
}

#[test]
fn a_sheet_that_was_exported_comes_in_again_and_is_asked_about_too() {
    let folder = Folder::with_yard("exported");
    folder.done(&note(&["hum=heard by tube"]));
    folder.done(&["export", "sheets"]);
    let read = folder.json(&["import", "sheets/note_versions.csv"]);
    assert!(read["read"]["rows"].as_array().unwrap().iter().all(|row| row["known"] == true && row["asks"].is_null()));
    folder.done(&["import", "yard.toml", "--store", "other.db"]);
    let kept = folder.json(&["import", "sheets/note_versions.csv", "--store", "other.db", "--keep"]);
    assert_eq!(kept["kept"]["stored"], 1);
}

#[test]
fn records_are_mended_from_a_backup_and_keep_what_came_after_it() {
    let folder = Folder::with_yard("mend");
    folder.done(&["backup", "copy.db"]);
    folder.done(&note(&["hum=heard by tube"]));
    assert!(folder.done(&["restore", "copy.db", "--mend"]).contains("mended"));
    assert!(folder.done(&["note", "Alder", "--list"]).contains("heard by tube"));
    assert!(folder.refused(&["restore", "yard.toml", "--mend"], 2).contains("yard.toml"), "no backup");
    assert_eq!(folder.json(&["doctor"])["well"], true);
}
