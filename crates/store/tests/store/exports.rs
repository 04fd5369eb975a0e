//! Everything out and in again.

use crate::house::{Folder, demo, note, note_of, now, run};
use jiff::Timestamp;
use snowhum_apiary::{Entry, Note};
use snowhum_store::{Alert, LastOf, Recorded, Store, Taken, Wrong};
use std::fs;

/// A store with something in every table and of every kind.
async fn full() -> Store {
    let store = Store::in_memory().await.unwrap();
    let yard = demo();
    store.import_yard(&yard, now()).await.unwrap();
    let mut edited = yard.notes[0].clone();
    edited.entries.push(Entry::Words("line\nbreak, \"quotes\"; and = more".to_owned()));
    store.put_note(&edited, Recorded::by(now(), "Väinö, \"the younger\"")).await.unwrap();
    store.withdraw_note(yard.notes[1].id, now()).await.unwrap();
    store.undo_last(LastOf::Note(yard.notes[2].id), now()).await.unwrap();
    store.put_note(&note(1), now()).await.unwrap();
    store.set("zone", "Europe/Helsinki").await.unwrap();
    let alert = Alert { yard: yard.id, colony: None, word: "gale".to_owned(), at: Timestamp::UNIX_EPOCH };
    store.put_alert(&alert).await.unwrap();
    let mut smaller = yard.clone();
    smaller.colonies.pop();
    store.import_yard(&smaller, now()).await.unwrap();
    store
}

async fn exported(store: &Store) -> String {
    let mut bytes = Vec::new();
    store.export_json(&mut bytes).await.unwrap();
    String::from_utf8(bytes).unwrap()
}

#[test]
fn an_export_read_in_is_exported_to_the_same_bytes_and_answers_the_same() {
    run(async {
        let (store, again) = (full().await, Store::in_memory().await.unwrap());
        let text = exported(&store).await;
        assert!(text.starts_with("{\"schema\":\"snowhum.store/2\","));
        let json: serde_json::Value = serde_json::from_str(&text).unwrap();
        for table in ["yards", "hives", "colonies", "note_versions", "settings", "alerts"] {
            assert!(!json[table].as_array().unwrap().is_empty(), "{table}");
        }
        again.import_json(text.as_bytes()).await.unwrap();
        assert_eq!(exported(&again).await, text);
        let id = demo().id;
        assert_eq!(again.yard(id).await.unwrap(), store.yard(id).await.unwrap());
        assert_eq!(again.alert_last(id).await.unwrap(), store.alert_last(id).await.unwrap());
        assert!(again.doctor().await.unwrap().is_well());
    });
}

/// The same as a program wrote it before rows had hashes.
fn of_first_form(text: &str) -> serde_json::Value {
    let mut json: serde_json::Value = serde_json::from_str(text).unwrap();
    json["schema"] = "snowhum.store/1".into();
    for row in json.as_object_mut().unwrap().values_mut().filter_map(|rows| rows.as_array_mut()).flatten() {
        row.as_object_mut().unwrap().remove("hash").unwrap();
    }
    json
}

#[test]
fn an_export_of_the_form_before_is_taken_in_and_its_rows_get_hashes() {
    run(async {
        let (store, again) = (full().await, Store::in_memory().await.unwrap());
        let old = of_first_form(&exported(&store).await).to_string();
        again.import_json(old.as_bytes()).await.unwrap();
        assert_eq!(again.yard(demo().id).await.unwrap(), store.yard(demo().id).await.unwrap());
        assert!(again.doctor().await.unwrap().is_well());
    });
}

#[test]
fn an_export_that_somebody_changed_is_refused_with_the_row() {
    run(async {
        let text = exported(&full().await).await;
        for (from, to, row) in [
            ("\"author\":\"V", "\"author\":\"W", "note_versions"),
            ("\"value\":\"Europe/", "\"value\":\"Europa/", "settings 1"),
            ("\"word\":\"gale", "\"word\":\"calm", "alerts 1"),
        ] {
            assert!(text.contains(from), "{from}");
            let store = Store::in_memory().await.unwrap();
            let fault = store.import_json(text.replacen(from, to, 1).as_bytes()).await.unwrap_err().to_string();
            assert!(fault.contains(row) && fault.contains("was changed"), "{fault}");
        }
    });
}

#[test]
fn an_export_goes_into_an_empty_store_only() {
    run(async {
        let store = full().await;
        let text = exported(&store).await;
        let fault = store.import_json(text.as_bytes()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::NotEmpty), "{fault}");
        assert_eq!(exported(&store).await, text);
    });
}

#[test]
fn an_export_that_is_not_in_order_is_refused_with_its_place_and_nothing_is_kept() {
    run(async {
        let text = exported(&full().await).await;
        let schema = "snowhum.store/2";
        let colony = demo().colonies[0].id.0.to_string();
        for (from, to, expected) in [
            (schema, "snowhum.store/3", "newer Snowhum (form 3"),
            (schema, "honey/1", "schema: it does not say snowhum.store/2"),
            ("\"settings\":", "\"setings\":", "it has no settings"),
            ("\"kind\":\"edited\"", "\"kind\":\"mended\"", "\"mended\" is no kind of version"),
            ("\"kind\":\"edited\"", "\"kind\":7", "kind: invalid type"),
            ("\"place\":0", "\"plaice\":0", "hives 1: it has no place"),
            ("\"recorded_at\":1", "\"recorded_at\":9991", "is no time"),
            ("\"at\":1", "\"at\":999999", "of a year that no record is of"),
            ("\"value\":\"Europe/", "\"value\":\"\\u0000", "the character NUL"),
            (
                &format!("\"colonies\":[\n{{\"id\":\"{colony}"),
                "\"colonies\":[\n{\"id\":\"x",
                "colonies 1: in colonies id",
            ),
            ("{", "", "the export: "),
        ] {
            assert!(text.contains(from), "{from}");
            let store = Store::in_memory().await.unwrap();
            let fault = store.import_json(text.replacen(from, to, 1).as_bytes()).await.unwrap_err().to_string();
            assert!(fault.contains(expected), "{expected}: {fault}");
            assert!(store.yards().await.unwrap().is_empty());
            assert!(store.settings().await.unwrap().is_empty());
        }
    });
}

#[test]
fn rows_that_point_nowhere_or_come_twice_are_refused_whole() {
    run(async {
        let old = of_first_form(&exported(&full().await).await);
        let (mut json, mut twice, mut astray) = (old.clone(), old.clone(), old);
        json["hives"].as_array_mut().unwrap().clear();
        let hives = twice["hives"].as_array_mut().unwrap();
        hives.push(hives[0].clone());
        astray["hives"][0]["left_at"] = 1.into();
        for (json, expected) in [(json, "colonies 1"), (twice, "hives 6"), (astray, "do not stand in their yard")] {
            let store = Store::in_memory().await.unwrap();
            let fault = store.import_json(json.to_string().as_bytes()).await.unwrap_err().to_string();
            assert!(fault.contains(expected), "{expected}: {fault}");
            assert!(store.yards().await.unwrap().is_empty());
        }
    });
}

#[test]
fn sheets_hold_every_row_and_their_notes_go_into_another_store_once() {
    let folder = Folder::new("sheets");
    run(async {
        let store = full().await;
        let files = store.export_csv(&folder.path().join("out")).await.unwrap();
        assert_eq!(files.len(), 6);
        let json: serde_json::Value = serde_json::from_str(&exported(&store).await).unwrap();
        for file in &files {
            let table = file.file_stem().unwrap().to_str().unwrap();
            let mut sheet = csv::Reader::from_path(file).unwrap();
            let rows: Vec<csv::StringRecord> = sheet.records().map(Result::unwrap).collect();
            let expected = json[table].as_array().unwrap();
            assert_eq!(rows.len(), expected.len(), "{table}");
            let head = sheet.headers().unwrap().clone();
            for (row, expected) in rows.iter().zip(expected) {
                for (name, cell) in head.iter().zip(row).filter(|(name, _)| *name != "words") {
                    let text = match &expected[name] {
                        serde_json::Value::String(text) => text.clone(),
                        serde_json::Value::Null => String::new(),
                        serde_json::Value::Number(number) => number.to_string(),
                        _ => serde_json::from_str::<serde_json::Value>(cell).map(|_| cell.to_owned()).unwrap(),
                    };
                    assert_eq!(cell, text, "{table}.{name}");
                }
            }
        }
        let fault = store.export_csv(&folder.path().join("out")).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::AlreadyThere), "{fault}");

        let again = Store::in_memory().await.unwrap();
        let mut yard = demo();
        yard.notes.clear();
        yard.colonies.pop();
        again.import_yard(&yard, now()).await.unwrap();
        let sheet = fs::read(folder.path().join("out/note_versions.csv")).unwrap();
        assert!(String::from_utf8_lossy(&sheet).contains("dead=22 on snow"), "in words too");
        let standing = demo().notes.len() + 1 - 2;
        let notes = snowhum_store::notes_in_csv(&sheet[..]).unwrap().unwrap();
        let notes: Vec<Note> = notes.into_iter().map(|(_, note)| note).collect();
        let taken = again.import_notes(&notes, now()).await.unwrap();
        assert_eq!(taken, Taken { stored: standing, known: 0, differing: 0 });
        let taken = again.import_notes(&notes, now()).await.unwrap();
        assert_eq!(taken, Taken { stored: 0, known: standing, differing: 0 });
        let notes = async |store: &Store| store.notes(yard.id, Timestamp::MAX).await.unwrap();
        assert_eq!(notes(&again).await, notes(&store).await);
    });
}

#[test]
fn a_sheet_that_is_not_in_order_is_refused_with_its_line_and_one_of_another_hand_is_not_read() {
    let good = serde_json::to_string(&note(1)).unwrap().replace('"', "\"\"");
    for (sheet, expected) in [
        (format!("body\n\"{good}\"\n\"{{}}\"\n"), "line 3: the body cannot be read"),
        (format!("kind,body\nmended,\"{good}\"\n"), "line 2: \"mended\" is no kind"),
        (format!("kind,body\nmade,\"{good}\",more\n"), "line 2"),
    ] {
        let wrong = snowhum_store::notes_in_csv(sheet.as_bytes()).unwrap_err().to_string();
        assert!(wrong.contains(expected), "{expected}: {wrong}");
    }
    for other in ["name\nx\n", "", "Date;Hive\n2026-01-25;Alder\n"] {
        assert_eq!(snowhum_store::notes_in_csv(other.as_bytes()).unwrap(), None, "{other}");
    }
}

#[test]
fn notes_brought_in_together_are_taken_back_together_but_for_those_that_were_changed() {
    run(async {
        let store = Store::in_memory().await.unwrap();
        store.import_yard(&demo(), now()).await.unwrap();
        let standing = async || store.notes(demo().id, Timestamp::MAX).await.unwrap();
        let before = standing().await;
        let note = |n| note_of(demo().colonies[0].id, n, &format!("note {n}"));
        store.put_note(&note(1), now()).await.unwrap();
        assert_eq!(store.undo_import(now()).await.unwrap(), None, "nothing came in yet");
        let four: Vec<_> = (1..=4).map(note).collect();
        let taken = store.import_notes(&four, now()).await.unwrap();
        assert_eq!(taken, Taken { stored: 3, known: 1, differing: 0 });
        let mut changed = note(3);
        changed.entries.push(Entry::Words("seen again".to_owned()));
        store.put_note(&changed, now()).await.unwrap();
        let back = store.undo_import(now()).await.unwrap().unwrap();
        assert_eq!((back.withdrawn, back.changed), (2, 1));
        let mut left = standing().await;
        left.retain(|note| !before.contains(note));
        assert_eq!(left.len(), 2, "the one that was there and the one that was changed: {left:?}");
        assert_eq!(store.undo_import(now()).await.unwrap(), None, "once");

        // What was taken back can come in again.
        let taken = store.import_notes(&four, now()).await.unwrap();
        assert_eq!(taken, Taken { stored: 2, known: 1, differing: 1 });
        assert_eq!(standing().await.len(), before.len() + 4);
        assert!(store.doctor().await.unwrap().is_well());
    });
}
