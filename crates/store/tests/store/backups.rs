//! Backups made in the middle of things, and restores that lose nothing.

use crate::house::{Folder, demo, meddle, note, now, run};
use snowhum_store::{Access, Put, Restored, Store, Wrong};
use std::fs;
use std::path::Path;

async fn store_with(path: &Path, notes: u128) -> Store {
    let store = Store::open(path).await.unwrap();
    for n in 0..notes {
        store.put_note(&note(n), now()).await.unwrap();
    }
    store
}

async fn has(store: &Store, n: u128) -> bool {
    !store.versions(note(n).id).await.unwrap().is_empty()
}

#[test]
fn a_backup_made_while_others_write_is_whole_and_holds_all_that_was_stored_before() {
    let folder = Folder::new("backup");
    run(async {
        let store = store_with(&folder.store(), 20).await;
        let busy = store.clone();
        let writer = tokio::spawn(async move {
            for n in 1000..1200 {
                assert_eq!(busy.put_note(&note(n), now()).await.unwrap(), Put::Stored);
            }
        });
        for number in 0..3 {
            tokio::time::sleep(std::time::Duration::from_millis(20)).await;
            let to = folder.path().join(format!("{number}.db"));
            store.backup(&to).await.unwrap();
            let copy = Store::open(&to).await.unwrap();
            assert!(copy.doctor().await.unwrap().is_well());
            for n in 0..20 {
                assert!(has(&copy, n).await, "note {n}");
            }
            let mut held = Vec::new();
            for n in 1000..1200 {
                held.push(has(&copy, n).await);
            }
            let first_missing = held.iter().position(|held| !held).unwrap_or(held.len());
            assert!(held[first_missing..].iter().all(|held| !held), "a copy is of one moment");
            copy.close().await;
        }
        writer.await.unwrap();
    });
}

#[test]
fn a_backup_leaves_one_file_and_overwrites_none() {
    let (folder, elsewhere) = (Folder::new("store"), Folder::new("copies"));
    run(async {
        let store = store_with(&folder.store(), 3).await;
        let to = elsewhere.path().join("copy of 'records'.db");
        store.backup(&to).await.unwrap();
        assert_eq!(elsewhere.names(), ["copy of 'records'.db"]);
        let before = fs::read(&to).unwrap();
        let fault = store.backup(&to).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::AlreadyThere), "{fault}");
        assert_eq!(fs::read(&to).unwrap(), before);
        assert_eq!(elsewhere.names().len(), 1);
    });
}

#[test]
fn a_restored_store_is_as_it_was_at_the_backup_and_the_one_before_is_kept_aside() {
    let folder = Folder::new("restore");
    run(async {
        let store = store_with(&folder.store(), 2).await;
        store.import_yard(&demo(), now()).await.unwrap();
        let copy = folder.path().join("copy");
        store.backup(&copy).await.unwrap();
        store.put_note(&note(77), now()).await.unwrap();
        store.close().await;
        let Restored { kept_aside, report, .. } =
            Store::restore(&copy, &folder.store(), Access::Left, now()).await.unwrap();
        let aside = kept_aside.unwrap();
        assert!(report.is_well());
        assert_eq!(aside.file_name().unwrap(), "snowhum.db.20260110T120000Z");
        assert_eq!(folder.names(), ["copy", "snowhum.db", "snowhum.db.20260110T120000Z"]);
        let (new, old) = (Store::open(&folder.store()).await.unwrap(), Store::open(&aside).await.unwrap());
        assert_eq!((has(&new, 1).await, has(&new, 77).await), (true, false));
        assert!(has(&old, 77).await);
        assert_eq!(new.yard(demo().id).await.unwrap(), Some(demo()));
        new.close().await;
        let again = Store::restore(&copy, &folder.store(), Access::Left, now()).await.unwrap().kept_aside.unwrap();
        assert_eq!(again.file_name().unwrap(), "snowhum.db.20260110T120000Z-2", "a kept store is not overwritten");
    });
}

#[test]
fn a_restore_needs_no_store_to_be_there() {
    let folder = Folder::new("first");
    run(async {
        let copy = folder.path().join("copy");
        store_with(&folder.store(), 4).await.backup(&copy).await.unwrap();
        let new = folder.path().join("deep/er/new.db");
        assert_eq!(Store::restore(&copy, &new, Access::Left, now()).await.unwrap().kept_aside, None);
        assert!(has(&Store::open(&new).await.unwrap(), 3).await);
    });
}

#[test]
fn a_restore_takes_the_place_of_a_damaged_store_and_its_unfinished_writing() {
    let folder = Folder::new("damaged");
    run(async {
        let store = store_with(&folder.store(), 4).await;
        let copy = folder.path().join("copy");
        store.backup(&copy).await.unwrap();
        // As after a kill: what was written last stands in the log beside the file, and not its first page.
        meddle(&folder.store(), "PRAGMA wal_checkpoint(TRUNCATE)").await;
        store.withdraw_note(note(3).id, now()).await.unwrap();
        for name in ["snowhum.db", "snowhum.db-wal"] {
            fs::copy(folder.path().join(name), folder.path().join(format!("left-{name}"))).unwrap();
        }
        store.close().await;
        let log = fs::read(folder.path().join("left-snowhum.db-wal")).unwrap();
        assert!(!log.is_empty());
        let left = folder.path().join("left-snowhum.db");
        let mut bytes = fs::read(&left).unwrap();
        bytes[..16].copy_from_slice(b"not any more so!");
        fs::write(&left, bytes).unwrap();
        let aside = Store::restore(&copy, &left, Access::Left, now()).await.unwrap().kept_aside.unwrap();
        let restored = Store::open(&left).await.unwrap();
        assert!(restored.doctor().await.unwrap().is_well());
        assert!(has(&restored, 3).await);
        assert_eq!(restored.versions(note(3).id).await.unwrap().len(), 1, "nothing of the old log is read into it");
        assert!(fs::read(&aside).unwrap().starts_with(b"not any more so!"));
        assert_eq!(fs::read(format!("{}-wal", aside.display())).unwrap(), log);
    });
}

#[test]
fn a_restore_refuses_what_is_no_whole_store_and_leaves_the_store_as_it_was() {
    let folder = Folder::new("refuse");
    run(async {
        let store = store_with(&folder.store(), 60).await;
        let good = folder.path().join("good");
        store.backup(&good).await.unwrap();
        store.close().await;
        let bytes = fs::read(&good).unwrap();
        let mut torn = bytes.clone();
        let pages = torn.len() / 4096;
        torn[4096 * (pages / 2)..4096 * (pages / 2 + 2)].fill(0x5a);
        let cut = bytes[..bytes.len() / 2].to_vec();
        let kept = fs::read(folder.store()).unwrap();
        for (name, content) in
            [("text", b"dear keeper, this is a letter".to_vec()), ("empty", Vec::new()), ("torn", torn), ("cut", cut)]
        {
            let from = folder.path().join(name);
            fs::write(&from, content).unwrap();
            let fault = Store::restore(&from, &folder.store(), Access::Left, now()).await.unwrap_err();
            let told = matches!(fault.wrong, Wrong::NotADatabase | Wrong::Damaged { .. });
            assert!(told && fault.place.ends_with(name), "{name}: {fault}");
            assert_eq!(fs::read(folder.store()).unwrap(), kept, "{name}");
        }
        let fault =
            Store::restore(&folder.path().join("nothing"), &folder.store(), Access::Left, now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Missing), "{fault}");
        assert!(!folder.names().iter().any(|name| name.contains("restoring")), "{:?}", folder.names());
    });
}

#[test]
fn a_store_in_use_is_not_restored_over() {
    let folder = Folder::new("in-use");
    run(async {
        let store = store_with(&folder.store(), 2).await;
        let copy = folder.path().join("copy");
        store.backup(&copy).await.unwrap();
        let fault = Store::restore(&copy, &folder.store(), Access::Left, now()).await.unwrap_err();
        assert!(matches!(fault.wrong, Wrong::Locked), "{fault}");
        assert_eq!(store.put_note(&note(5), now()).await.unwrap(), Put::Stored, "and it goes on");
    });
}
