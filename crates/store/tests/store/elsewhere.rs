//! Files from elsewhere are hostile: what they carry beside records is refused by name and never run.

use crate::house::{Folder, demo, meddle, note, now, run};
use snowhum_store::{Access, Fault, Store, Wrong};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// A backup of a store with a yard, a note and an open gate.
async fn backup(folder: &Folder) -> PathBuf {
    let store = Store::open(&folder.path().join("from.db")).await.unwrap();
    store.import_yard(&demo(), now()).await.unwrap();
    store.put_note(&note(1), now()).await.unwrap();
    store.set("web.units", "us").await.unwrap();
    store.set("gate.pass-phrase", "$argon2id$v=19$m=4194304,t=1000,p=1$c2FsdHNhbHQ$aGFzaA").await.unwrap();
    store.set("gate.session.00", "1 1").await.unwrap();
    store.set("gate.link-key", "00").await.unwrap();
    let to = folder.path().join("backup.db");
    assert!(store.backup(&to).await.unwrap().is_well());
    store.close().await;
    to
}

async fn restored(from: &Path, folder: &Folder) -> Result<Store, Fault> {
    let into = folder.store();
    Store::restore(from, &into, Access::Left, now()).await?;
    Store::open(&into).await
}

#[test]
fn what_no_store_holds_is_refused_by_name_and_nothing_is_put_in_place() {
    for (sql, named) in [
        ("CREATE TRIGGER gone AFTER INSERT ON note_versions BEGIN DELETE FROM note_versions; END", "trigger \"gone\""),
        ("CREATE VIEW peek AS SELECT * FROM settings", "view \"peek\""),
        ("CREATE TABLE bills (sum BIGINT)", "table \"bills\""),
        ("CREATE INDEX slow ON note_versions (body)", "index \"slow\""),
        ("CREATE VIRTUAL TABLE words USING fts5 (a)", "table \"words"),
        ("ANALYZE", "table \"sqlite_stat"),
        ("ALTER TABLE settings ADD COLUMN more TEXT", "table \"settings\" is not made"),
        ("DROP INDEX versions_of_note", "index \"versions_of_note\" is missing"),
        ("DROP TABLE alerts", "\"alerts_of_yard\" is missing"),
        (
            "DROP TABLE settings; CREATE VIEW settings AS SELECT 'gate.x' AS name, 'y' AS value, '' AS hash",
            "view \"settings\"",
        ),
        ("DROP TABLE snowhum_steps; CREATE VIEW snowhum_steps AS SELECT 2 AS number", "another program"),
        ("DROP TABLE snowhum_steps; CREATE TABLE snowhum_steps (number)", "table of steps"),
    ] {
        let folder = Folder::new("planted");
        run(async {
            let from = backup(&folder).await;
            meddle(&from, sql).await;
            for fault in [restored(&from, &folder).await.unwrap_err(), Store::open(&from).await.unwrap_err()] {
                assert!(fault.to_string().contains(named), "{sql}: {fault}");
                assert_eq!(fault.place, from.display().to_string());
            }
            assert!(!folder.names().iter().any(|name| name.starts_with("snowhum.db")), "{:?}", folder.names());
        });
    }
}

#[test]
fn a_type_that_is_no_text_is_refused_and_ends_no_thread() {
    let folder = Folder::new("no-text");
    run(async {
        let from = backup(&folder).await;
        // A byte of the word BIGINT that no text has.
        let mut bytes = std::fs::read(&from).unwrap();
        let at = bytes.windows(17).position(|word| word == b"changed_at BIGINT").unwrap();
        bytes[at + 11] |= 0x80;
        std::fs::write(&from, bytes).unwrap();
        for fault in [restored(&from, &folder).await.unwrap_err(), Store::doctor_of(&from).await.unwrap_err()] {
            assert!(fault.to_string().contains("table \"yards\" is not made"), "{fault}");
        }
    });
}

#[test]
fn what_opens_the_gate_stays_behind_unless_asked_for() {
    let folder = Folder::new("gate");
    run(async {
        let from = backup(&folder).await;
        let left = Store::restore(&from, &folder.store(), Access::Left, now()).await.unwrap();
        assert_eq!(left.access_left, 3);
        let store = Store::open(&folder.store()).await.unwrap();
        let settings = store.settings().await.unwrap();
        assert_eq!(settings.keys().collect::<Vec<_>>(), ["web.units"]);
        assert!(store.doctor().await.unwrap().is_well(), "and nothing is missed");
        store.close().await;
        let taken = Store::restore(&from, &folder.store(), Access::Taken, now()).await.unwrap();
        assert_eq!(taken.access_left, 0);
        let settings = Store::open(&folder.store()).await.unwrap().settings().await.unwrap();
        assert_eq!(settings.len(), 4);
    });
}

#[test]
fn an_export_opens_no_gate_and_plants_none() {
    let folder = Folder::new("export");
    run(async {
        let from = backup(&folder).await;
        let store = Store::open(&from).await.unwrap();
        let mut bytes = Vec::new();
        store.export_json(&mut bytes).await.unwrap();
        let text = String::from_utf8(bytes).unwrap();
        assert!(text.contains("web.units") && !text.contains("gate."));
        let sheets = store.export_csv(&folder.path().join("sheets")).await.unwrap();
        assert!(sheets.iter().all(|sheet| !std::fs::read_to_string(sheet).unwrap().contains("gate.")));
        let planted =
            text.replace("\"settings\":[", "\"settings\":[\n{\"name\":\"gate.x\",\"value\":\"\",\"hash\":\"\"},");
        let file = folder.path().join("planted.json");
        std::fs::write(&file, &planted).unwrap();
        let empty = Store::in_memory().await.unwrap();
        for fault in [
            empty.import_json(planted.as_bytes()).await.unwrap_err(),
            Store::restore(&file, &folder.store(), Access::Taken, now()).await.unwrap_err(),
        ] {
            assert!(fault.to_string().contains("settings 1"), "{fault}");
        }
        assert!(empty.settings().await.unwrap().is_empty());
    });
}

#[test]
fn an_export_is_restored_as_a_backup_is() {
    let folder = Folder::new("from-export");
    run(async {
        let from = backup(&folder).await;
        let store = Store::open(&from).await.unwrap();
        let file = folder.path().join("all.json");
        store.export_json(std::fs::File::create(&file).unwrap()).await.unwrap();
        let again = restored(&file, &folder).await.unwrap();
        assert_eq!(again.yard(demo().id).await.unwrap(), store.yard(demo().id).await.unwrap());
        assert_eq!(again.versions(note(1).id).await.unwrap(), store.versions(note(1).id).await.unwrap());
        assert!(again.doctor().await.unwrap().is_well());
    });
}

#[test]
fn a_backup_whose_rows_are_not_in_order_is_refused_with_their_names_and_the_store_stays() {
    for (sql, named) in [
        ("UPDATE hives SET body = 'no JSON' WHERE place = 0", "the body of hive"),
        ("UPDATE yards SET body = replace(body, 'Rowan', 'Raven')", "was changed"),
        ("UPDATE note_versions SET author = 'x' WHERE serial = 2", "note_versions 2"),
        ("UPDATE note_versions SET body = x'ff' WHERE serial = 2", "note_versions"),
        ("DELETE FROM hives", "rows that point at rows that are not there"),
        ("UPDATE settings SET value = zeroblob(10)", "settings"),
        ("DELETE FROM sums", "the sum of"),
    ] {
        let folder = Folder::new("rows");
        run(async {
            let from = backup(&folder).await;
            Store::open(&folder.store()).await.unwrap().close().await;
            let kept = std::fs::read(folder.store()).unwrap();
            meddle(&from, sql).await;
            let fault = restored(&from, &folder).await.unwrap_err();
            assert!(fault.to_string().contains(named), "{sql}: {fault}");
            assert_eq!(std::fs::read(folder.store()).unwrap(), kept);
        });
    }
}

#[test]
fn a_file_made_to_be_slow_is_given_up_in_time() {
    let folder = Folder::new("slow");
    run(async {
        let from = backup(&folder).await;
        let store = Store::open(&from).await.unwrap();
        let begun = Instant::now();
        let fault = store.doctor_within(Duration::ZERO).await.unwrap();
        assert!(begun.elapsed() < Duration::from_secs(5));
        assert!(!fault.is_well() && format!("{fault:?}").contains("store-too-long"), "{fault:?}");
        assert!(store.doctor().await.unwrap().is_well(), "and the store goes on");
    });
}

#[test]
fn a_restore_that_is_refused_leaves_nothing_behind() {
    let folder = Folder::new("nothing");
    run(async {
        let from = backup(&folder).await;
        meddle(&from, "UPDATE alerts SET word = 'x'; UPDATE yards SET changed_at = 7").await;
        let before = folder.names();
        let fault = restored(&from, &folder).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::NotInOrder { .. }), "{fault}");
        assert_eq!(folder.names(), before);
    });
}

#[cfg(unix)]
#[test]
fn what_is_kept_is_its_owners_alone() {
    use std::os::unix::fs::PermissionsExt;
    let folder = Folder::new("private");
    run(async {
        let deep = folder.path().join("deep/er");
        let store = Store::open(&deep.join("a.db")).await.unwrap();
        store.put_note(&note(1), now()).await.unwrap();
        store.backup(&deep.join("copy.db")).await.unwrap();
        Store::restore(&deep.join("copy.db"), &deep.join("b.db"), Access::Left, now()).await.unwrap();
        store.export_csv(&deep.join("sheets")).await.unwrap();
        let mode = |path: &Path| std::fs::metadata(path).unwrap().permissions().mode() & 0o777;
        for made in ["deep", "deep/er", "deep/er/sheets"] {
            assert_eq!(mode(&folder.path().join(made)), 0o700, "{made}");
        }
        for made in ["a.db", "a.db-wal", "copy.db", "b.db", "sheets/yards.csv"] {
            assert_eq!(mode(&deep.join(made)), 0o600, "{made}");
        }
    });
}
