//! Records notice what was done behind their back, name it, and are mended from a backup or an export.

use crate::house::{Folder, demo, first_form, meddle, note, now, run};
use snowhum_say::Tongue;
use snowhum_store::{Access, Found, LastOf, Report, Store, Wrong};
use std::path::{Path, PathBuf};

/// A closed store with a yard, notes, an undo and settings.
async fn kept(folder: &Folder) -> PathBuf {
    let path = folder.store();
    let store = Store::open(&path).await.unwrap();
    store.import_yard(&demo(), now()).await.unwrap();
    for n in 0..20 {
        store.put_note(&note(n), now()).await.unwrap();
    }
    store.undo_last(LastOf::Note(note(3).id), now()).await.unwrap();
    store.set("web.units", "us").await.unwrap();
    store.set("gate.pass-phrase", "sealed").await.unwrap();
    store.close().await;
    path
}

async fn ill(path: &Path) -> String {
    let report = Store::doctor_of(path).await.unwrap();
    let ill = |report: &Report| -> Vec<String> {
        let checks = report.checks.iter();
        checks
            .filter_map(
                |check| if let Found::Ill(what) = &check.found { Some(Tongue::BRITISH.say(what)) } else { None },
            )
            .collect()
    };
    ill(&report).join(" | ")
}

async fn exported(path: &Path) -> Vec<u8> {
    let store = Store::open(path).await.unwrap();
    let mut bytes = Vec::new();
    store.export_json(&mut bytes).await.unwrap();
    store.close().await;
    bytes
}

/// What is done to a store, and what the doctor says of it.
const DONE: [(&str, &str); 11] = [
    ("UPDATE note_versions SET author = 'x' WHERE serial = 5", "note_versions 5"),
    ("UPDATE note_versions SET hash = 'x' WHERE serial = 5", "note_versions 5"),
    ("DELETE FROM note_versions WHERE serial = 9", "one version is missing before note_versions 10"),
    (
        "DELETE FROM note_versions WHERE serial = (SELECT MAX(serial) FROM note_versions)",
        "the last versions of note_versions are missing: 1",
    ),
    (
        "UPDATE note_versions SET serial = -4 WHERE serial = 7; UPDATE note_versions SET serial = 7 WHERE serial = 8; \
         UPDATE note_versions SET serial = 8 WHERE serial = -4",
        "note_versions 7",
    ),
    ("UPDATE yards SET body = replace(body, 'Rowan', 'Raven')", "yards"),
    ("UPDATE colonies SET place = place + 7 WHERE place = 1", "colonies"),
    ("UPDATE hives SET left_at = 1 WHERE place = 0", "hives"),
    ("DELETE FROM hives WHERE place = 0", "rows of hives that are missing: 1"),
    ("UPDATE settings SET value = 'metric' WHERE name = 'web.units'", "settings \"web.units\""),
    ("UPDATE note_versions SET serial = serial + 1000 WHERE serial = 20", "note_versions 1020"),
];

#[test]
fn the_doctor_names_each_row_that_was_changed_lost_or_moved() {
    for (sql, named) in DONE {
        let folder = Folder::new("noticed");
        run(async {
            let path = kept(&folder).await;
            assert_eq!(ill(&path).await, "");
            meddle(&path, sql).await;
            let told = ill(&path).await;
            assert!(told.contains(named), "{sql}: {told}");
        });
    }
}

#[test]
fn what_was_changed_lost_or_moved_is_mended_from_a_backup_and_what_came_after_it_stays() {
    for (sql, _) in DONE {
        let folder = Folder::new("mended");
        run(async {
            let path = kept(&folder).await;
            let store = Store::open(&path).await.unwrap();
            let copy = folder.path().join("copy.db");
            store.backup(&copy).await.unwrap();
            store.put_note(&note(100), now()).await.unwrap();
            store.close().await;
            let before = exported(&path).await;
            // The last version is now one that the backup has not: it is lost, and said to be.
            let is_last = sql.starts_with("DELETE FROM note_versions WHERE serial = (");
            meddle(&path, sql).await;
            let mended = Store::mend(&path, &copy, now()).await.unwrap();
            assert!(mended.report.is_well() && mended.kept_aside.unwrap().exists());
            assert_eq!(ill(&path).await, "", "{sql}");
            assert_eq!(mended.lost.is_empty(), !is_last, "{sql}: {:?}", mended.lost);
            if !is_last {
                assert!(!mended.put_back.is_empty(), "{sql}");
                assert_eq!(exported(&path).await, before, "{sql}");
            }
            let store = Store::open(&path).await.unwrap();
            let gate = store.setting("gate.pass-phrase").await.unwrap();
            assert_eq!(gate.as_deref(), Some("sealed"), "one's own gate stays");
        });
    }
}

#[test]
fn records_are_mended_from_an_export_too() {
    let folder = Folder::new("mended-from-export");
    run(async {
        let path = kept(&folder).await;
        let export = folder.path().join("all.json");
        let before = exported(&path).await;
        std::fs::write(&export, &before).unwrap();
        meddle(&path, "UPDATE note_versions SET body = '{}' WHERE serial > 4; DELETE FROM hives").await;
        let mended = Store::mend(&path, &export, now()).await.unwrap();
        assert!(mended.lost.is_empty(), "{:?}", mended.lost);
        assert_eq!(exported(&path).await, before);
    });
}

#[test]
fn records_are_not_mended_from_those_of_another_store() {
    let folder = Folder::new("stranger");
    run(async {
        let path = kept(&folder).await;
        let other = Store::open(&folder.path().join("other.db")).await.unwrap();
        other.put_note(&note(77), now()).await.unwrap();
        let copy = folder.path().join("copy.db");
        other.backup(&copy).await.unwrap();
        let fault = Store::mend(&path, &copy, now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::NotInOrder { .. }), "{fault}");
        assert_eq!(ill(&path).await, "");
    });
}

#[test]
fn a_store_of_the_form_before_is_brought_on_and_its_backups_are_restored() {
    let folder = Folder::new("first-form");
    run(async {
        let path = kept(&folder).await;
        let before = exported(&path).await;
        let old = folder.path().join("old.db");
        first_form(&path, &old).await;
        let restored = folder.path().join("restored.db");
        Store::restore(&old, &restored, Access::Taken, now()).await.unwrap();
        for brought_on in [&old, &restored] {
            assert_eq!(exported(brought_on).await, before);
            assert_eq!(ill(brought_on).await, "");
            let settings = Store::open(brought_on).await.unwrap().settings().await.unwrap();
            assert_eq!(settings.len(), 2);
        }
    });
}

#[test]
fn a_store_of_the_form_before_with_a_row_that_cannot_be_read_is_refused_and_stays_as_it_was() {
    let folder = Folder::new("first-form-ill");
    run(async {
        let path = kept(&folder).await;
        let old = folder.path().join("old.db");
        first_form(&path, &old).await;
        meddle(&old, "UPDATE note_versions SET author = x'ff00' WHERE serial = 2").await;
        let fault = Store::open(&old).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Damaged { .. }), "{fault}");
        let fault = Store::open(&old).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Damaged { .. }), "each time: {fault}");
    });
}

#[test]
fn a_backup_of_a_later_day_mends_and_adds_nothing() {
    let folder = Folder::new("later");
    run(async {
        let path = kept(&folder).await;
        let (early, late) = (folder.path().join("early.db"), folder.path().join("late.db"));
        let store = Store::open(&path).await.unwrap();
        store.backup(&early).await.unwrap();
        store.put_note(&note(100), now()).await.unwrap();
        store.set("web.words", "british").await.unwrap();
        store.backup(&late).await.unwrap();
        store.close().await;
        Store::restore(&early, &path, Access::Taken, now()).await.unwrap();
        let before = exported(&path).await;
        meddle(&path, "UPDATE note_versions SET author = 'x' WHERE serial = 5").await;
        let mended = Store::mend(&path, &late, now()).await.unwrap();
        assert_eq!((mended.put_back.len(), mended.lost.len()), (1, 0), "{mended:?}");
        assert_eq!(exported(&path).await, before);
    });
}
