//! What is refused, and with which words.

use crate::house::{Folder, demo, meddle, note, now, run};
use snowhum_store::{Access, Store, Wrong};
use sqlx::Connection;
use sqlx::sqlite::{SqliteConnectOptions, SqliteConnection};
use std::fs;

#[test]
fn a_store_of_a_newer_program_is_refused_and_left_as_it_is() {
    let folder = Folder::new("newer");
    run(async {
        Store::open(&folder.store()).await.unwrap().close().await;
        meddle(&folder.store(), "INSERT INTO snowhum_steps VALUES (3)").await;
        let kept = fs::read(folder.store()).unwrap();
        let fault = Store::open(&folder.store()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Newer { found: 3, known: 2 }), "{fault}");
        assert!(fault.to_string().contains("use the newer program"), "{fault}");
        assert_eq!(fs::read(folder.store()).unwrap(), kept);
        let into = folder.path().join("other.db");
        let fault = Store::restore(&folder.store(), &into, Access::Left, now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Newer { .. }) && !into.exists(), "{fault}");
    });
}

#[test]
fn a_file_that_is_no_store_is_refused_and_left_as_it_is() {
    let folder = Folder::new("foreign");
    run(async {
        let (letter, other) = (folder.path().join("letter"), folder.path().join("other"));
        fs::write(&letter, "dear keeper, this is a letter and no database at all. ".repeat(40)).unwrap();
        meddle(&other, "CREATE TABLE bills (sum BIGINT)").await;
        for file in [&letter, &other] {
            let kept = fs::read(file).unwrap();
            let fault = Store::open(file).await.unwrap_err();
            assert!(matches!(fault.wrong, Wrong::NotADatabase | Wrong::OtherProgram), "{fault}");
            assert_eq!(fs::read(file).unwrap(), kept);
        }
        assert_eq!(folder.names(), ["letter", "other"]);
    });
}

#[test]
fn a_place_that_cannot_be_written_is_named() {
    let folder = Folder::new("place");
    run(async {
        // Holds for every user, also one whom permissions do not bind.
        fs::write(folder.path().join("file"), "x").unwrap();
        let under = folder.path().join("file/snowhum.db");
        let fault = Store::open(&under).await.unwrap_err();
        assert_eq!(fault.place, under.display().to_string());
        assert!(matches!(fault.wrong, Wrong::Disk { .. } | Wrong::AlreadyThere), "{fault}");
        let fault = Store::open(folder.path()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Disk { .. }), "a folder is no file: {fault}");
    });
}

#[cfg(unix)]
#[test]
fn a_read_only_store_says_so() {
    use std::os::unix::fs::PermissionsExt;
    let folder = Folder::new("read-only");
    run(async {
        Store::open(&folder.store()).await.unwrap().close().await;
        let set = |mode| fs::set_permissions(folder.path(), fs::Permissions::from_mode(mode)).unwrap();
        set(0o555);
        if fs::write(folder.path().join("probe"), "").is_ok() {
            // This user may write anywhere; the test above holds for it.
            return set(0o755);
        }
        let fault = Store::open(&folder.store()).await.unwrap_err();
        set(0o755);
        assert!(matches!(fault.wrong, Wrong::ReadOnly | Wrong::Disk { .. }), "{fault}");
    });
}

#[test]
fn a_store_held_by_another_program_says_so() {
    let folder = Folder::new("locked");
    run(async {
        let store = Store::open(&folder.store()).await.unwrap();
        let options = SqliteConnectOptions::new().filename(folder.store());
        let mut other = SqliteConnection::connect_with(&options).await.unwrap();
        let holding = other.begin_with("BEGIN IMMEDIATE").await.unwrap();
        let fault = store.put_note(&note(1), now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Locked), "{fault}");
        holding.rollback().await.unwrap();
        store.put_note(&note(1), now()).await.unwrap();
    });
}

#[test]
fn a_backup_that_cannot_be_written_names_its_place() {
    let folder = Folder::new("nowhere");
    run(async {
        let store = Store::open(&folder.store()).await.unwrap();
        let to = folder.path().join("missing/copy");
        let fault = store.backup(&to).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Disk { .. }), "{fault}");
        assert_eq!(fault.place, to.display().to_string());
    });
}

#[test]
fn the_doctor_finds_each_kind_of_illness() {
    let folder = Folder::new("doctor");
    run(async {
        for (number, sql, what) in [
            (0, "UPDATE note_versions SET body = '{}' WHERE serial = 1", "bodies"),
            (1, "UPDATE note_versions SET colony = note WHERE serial = 2", "bodies"),
            (2, "UPDATE note_versions SET at = at + 1 WHERE serial = 1", "bodies"),
            (3, "UPDATE hives SET body = 'no JSON'", "bodies"),
            (4, "DELETE FROM hives", "links"),
            (6, "UPDATE hives SET left_at = 1", "links"),
            (5, "UPDATE yards SET body = '[]'", "bodies"),
        ] {
            let path = folder.path().join(format!("{number}.db"));
            let store = Store::open(&path).await.unwrap();
            store.import_yard(&demo(), now()).await.unwrap();
            assert!(store.doctor().await.unwrap().is_well());
            store.close().await;
            meddle(&path, sql).await;
            let store = Store::open(&path).await.unwrap();
            let report = store.doctor().await.unwrap();
            let ill: Vec<_> =
                report.checks.iter().filter(|check| matches!(check.found, snowhum_store::Found::Ill(_))).collect();
            assert!(!report.is_well() && ill.iter().any(|check| check.what == what), "{sql}: {report:?}");
            // What can be saved is saved, and said to be ill.
            let copy = folder.path().join(format!("{number}.copy"));
            assert!(!store.backup(&copy).await.unwrap().is_well());
            let other = folder.path().join(format!("{number}.other"));
            let fault = Store::restore(&copy, &other, Access::Left, now()).await.unwrap_err();
            assert!(matches!(fault.wrong, Wrong::NotInOrder { .. }) && !other.exists(), "{fault}");
        }
    });
}
