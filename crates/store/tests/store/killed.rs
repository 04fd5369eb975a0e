//! A program killed in the middle of writing loses nothing it answered for.

use crate::house::{Folder, note, now, run};
use snowhum_store::Store;
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Command, Stdio};

/// Where the child writes.
const PLACE: &str = "SNOWHUM_TEST_STORE";
const NOTES: u128 = 1000;

#[test]
#[ignore = "the other half of the test below, which starts it in a process of its own and kills it"]
fn writes_until_it_is_killed() {
    let path = std::env::var(PLACE).unwrap();
    run(async {
        let store = Store::open(Path::new(&path)).await.unwrap();
        for n in 0..NOTES {
            store.put_note(&note(n), now()).await.unwrap();
            let mut out = std::io::stdout().lock();
            writeln!(out, "\nstored {n}").unwrap();
            out.flush().unwrap();
        }
    });
}

#[test]
fn a_killed_writer_loses_no_note_it_answered_for() {
    for kill_after in [0, 1, 40, 333, 700] {
        let folder = Folder::new("killed");
        let acknowledged = killed_after(&folder.store(), kill_after);
        assert!(acknowledged > kill_after && acknowledged < NOTES, "killed in the middle: {acknowledged}");
        run(async {
            let store = Store::open(&folder.store()).await.unwrap();
            for n in 0..acknowledged {
                let versions = store.versions(note(n).id).await.unwrap();
                assert_eq!(versions.len(), 1, "note {n} of {acknowledged}");
                assert_eq!(versions[0].note, note(n));
            }
            assert!(store.doctor().await.unwrap().is_well());
            store.put_note(&note(NOTES), now()).await.unwrap();
        });
    }
}

/// Kills the writer once it answered for a note; gives how many it had answered for by then.
fn killed_after(store: &Path, last: u128) -> u128 {
    let mut child = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "killed::writes_until_it_is_killed", "--ignored", "--nocapture"])
        .env(PLACE, store)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut acknowledged = 0;
    for line in BufReader::new(child.stdout.take().unwrap()).lines() {
        let line = line.unwrap();
        let Some(number) = line.strip_prefix("stored ").and_then(|number| number.parse::<u128>().ok()) else {
            continue;
        };
        acknowledged = number + 1;
        if number == last {
            child.kill().unwrap();
        }
    }
    child.wait().unwrap();
    acknowledged
}
