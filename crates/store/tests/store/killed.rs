//! A program killed in the middle of writing loses nothing it answered for.

use crate::house::{Folder, note, now, run};
use snowhum_store::Store;
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

/// Where the child writes.
const PLACE: &str = "SNOWHUM_TEST_STORE";
/// Its first note.
const FROM: &str = "SNOWHUM_TEST_FROM";
const NOTES: u128 = 1000;

#[test]
#[ignore = "the other half of the tests below, which start it in a process of its own and kill it"]
fn writes_until_it_is_killed() {
    let path = std::env::var(PLACE).unwrap();
    let from: u128 = std::env::var(FROM).map_or(0, |from| from.parse().unwrap());
    run(async {
        let store = Store::open(Path::new(&path)).await.unwrap();
        for n in from..from + NOTES {
            store.put_note(&note(n), now()).await.unwrap();
            let mut out = std::io::stdout().lock();
            writeln!(out, "\nstored {n}").unwrap();
            out.flush().unwrap();
        }
    });
}

#[test]
fn twenty_kills_of_one_store_lose_no_note_that_was_answered_for() {
    kills(20);
}

#[test]
#[ignore = "takes minutes: cargo test -p snowhum-store -- --ignored a_thousand_kills"]
fn a_thousand_kills_of_one_store_lose_no_note_that_was_answered_for() {
    kills(1000);
}

/// Writes, is killed, is looked at, and goes on, again and again.
fn kills(count: u64) {
    let folder = Folder::new("kills");
    let mut next = 0;
    for number in 0..count {
        let last = next + u128::from(number * 7 % 5);
        // Some while after the answer, so that it falls into all places of the next note.
        let answered = killed(&folder.store(), next, last, Duration::from_micros(number * 137 % 4000));
        run(async {
            let store = Store::open(&folder.store()).await.unwrap();
            for n in next..answered {
                assert_eq!(store.versions(note(n).id).await.unwrap().len(), 1, "kill {number}: note {n}");
            }
            assert!(store.doctor().await.unwrap().is_well(), "kill {number}");
            // What was being written when the kill came is there whole, or not at all.
            next = answered;
            while !store.versions(note(next).id).await.unwrap().is_empty() {
                next += 1;
            }
            store.close().await;
        });
    }
    run(async {
        let store = Store::open(&folder.store()).await.unwrap();
        for n in 0..next {
            assert_eq!(store.versions(note(n).id).await.unwrap()[0].note, note(n));
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
    killed(store, 0, last, Duration::ZERO)
}

/// The same for a writer that begins at a note, some while later.
fn killed(store: &Path, from: u128, last: u128, later: Duration) -> u128 {
    let mut child = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "killed::writes_until_it_is_killed", "--ignored", "--nocapture"])
        .env(PLACE, store)
        .env(FROM, from.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut acknowledged = from;
    for line in BufReader::new(child.stdout.take().unwrap()).lines() {
        let line = line.unwrap();
        let Some(number) = line.strip_prefix("stored ").and_then(|number| number.parse::<u128>().ok()) else {
            continue;
        };
        acknowledged = number + 1;
        if number == last {
            std::thread::sleep(later);
            child.kill().unwrap();
        }
    }
    child.wait().unwrap();
    acknowledged
}
