//! Power cuts. A process writes a store while everything it sends to the disk is written down beside it (`recorder.c`,
//! loaded before it; this code may not reach below SQLite itself, where `unsafe` would be needed). Then the power is cut
//! at any place of that log: what was waited for is on the disk; of all else each sector of 512 bytes is there or not,
//! in no order; and of the names given and taken since the folder was waited for, some first ones are.
//!
//! Nothing answered as stored may be lost, and the doctor must find the store in order.

mod disk;

use crate::house::{Folder, note, now, run};
use disk::{Disk, Event, events};
use snowhum_store::{Access, Store};
use std::fs::File;
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

const PLACE: &str = "SNOWHUM_TEST_RECORDED";
const LOG: &str = "SNOWHUM_TEST_LOG";
/// Where the writer says which notes it was answered for.
const ANSWERED: &str = "answered";

#[test]
#[ignore = "the other half of the tests below, which record what it writes"]
fn writes_while_it_is_recorded() {
    let folder = std::path::PathBuf::from(std::env::var(PLACE).unwrap());
    let path = folder.join("snowhum.db");
    let mut answered = File::create(folder.join(ANSWERED)).unwrap();
    let mut put = async |store: &Store, notes: std::ops::Range<u128>| {
        for n in notes {
            store.put_note(&note(n), now()).await.unwrap();
            writeln!(answered, "{n}").unwrap();
        }
    };
    run(async {
        let store = Store::open(&path).await.unwrap();
        put(&store, 0..170).await;
        store.close().await;
        let store = Store::open(&path).await.unwrap();
        put(&store, 170..200).await;
        let copy = folder.join("copy.db");
        store.backup(&copy).await.unwrap();
        store.close().await;
        Store::restore(&copy, &path, Access::Left, now()).await.unwrap();
        let store = Store::open(&path).await.unwrap();
        put(&store, 200..220).await;
        store.close().await;
    });
}

#[test]
fn thirty_power_cuts_lose_nothing_that_was_answered_for() {
    cut(1, |events| spread(events, 30));
}

#[test]
fn a_power_cut_at_any_place_of_making_a_store_leaves_one_that_opens() {
    cut(3, |_| (0..120).collect());
}

#[test]
#[ignore = "takes a minute: cargo test -p snowhum-store -- --ignored two_hundred_power_cuts"]
fn two_hundred_power_cuts_lose_nothing_that_was_answered_for() {
    cut(2, |events| spread(events, 200));
}

#[test]
#[ignore = "takes minutes: cargo test -p snowhum-store -- --ignored each_place_of_backup"]
fn a_power_cut_at_each_place_of_backup_and_restore_leaves_one_of_the_two_stores() {
    cut(4, |events| (events * 3 / 4..events).collect());
}

/// So many places spread over the whole.
fn spread(events: usize, cuts: usize) -> Vec<usize> {
    (0..cuts).map(|number| (events * number + events / 2) / cuts).collect()
}

/// Cuts the power after so many events of one writing.
fn cut(seed: u64, places: impl FnOnce(usize) -> Vec<usize>) {
    let (folder, after) = (Folder::new("recorded"), Folder::new("after"));
    let events = recorded(folder.path());
    let syncs = events.iter().filter(|event| matches!(event, Event::Sync { .. })).count();
    assert!(syncs > 200, "{syncs} waits among {} events", events.len());
    let mut dropped = 0;
    let places = places(events.len());
    let cuts = places.len();
    for (number, at) in places.into_iter().enumerate() {
        let mut disk = Disk::new(seed * 10_000 + number as u64);
        events[..at].iter().for_each(|event| disk.take(event));
        let answered = disk.answered(&folder.path().join(ANSWERED));
        let place = after.path().join(number.to_string());
        std::fs::create_dir_all(&place).unwrap();
        dropped += disk.after_the_cut(folder.path(), &place);
        run(check(&place, answered, at));
        std::fs::remove_dir_all(&place).unwrap();
    }
    assert!(dropped > cuts, "the cuts lost {dropped} sectors: too few to try anything");
}

async fn check(place: &Path, answered: u128, at: usize) {
    let path = place.join("snowhum.db");
    assert!(answered == 0 || path.exists(), "cut at {at}: the store is gone, {answered} notes with it");
    if !path.exists() {
        return;
    }
    let opened = Store::open(&path).await;
    assert!(opened.is_ok(), "cut at {at}: {opened:?}");
    let store = opened.unwrap();
    for n in 0..answered {
        let versions = store.versions(note(n).id).await.unwrap();
        assert_eq!(versions.len(), 1, "cut at {at}: note {n} of {answered}");
        assert_eq!(versions[0].note, note(n));
    }
    let report = store.doctor().await.unwrap();
    assert!(report.is_well(), "cut at {at}: {report:?}");
    store.put_note(&note(5000), now()).await.unwrap();
    store.close().await;
}

/// Runs the writer with the recorder before it.
fn recorded(folder: &Path) -> Vec<Event> {
    let tools = Folder::new("recorder");
    let (source, recorder) = (tools.path().join("recorder.c"), tools.path().join("recorder.so"));
    std::fs::write(&source, include_str!("power/recorder.c")).unwrap();
    // The C compiler that built SQLite.
    let mut compiler = Command::new("cc");
    compiler.args(["-O1", "-shared", "-fPIC", "-o"]).arg(&recorder).arg(&source).arg("-ldl");
    let status = compiler.status().unwrap();
    assert!(status.success(), "the recorder did not build");
    let log = tools.path().join("log");
    let writer = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "power::writes_while_it_is_recorded", "--ignored"])
        .env("LD_PRELOAD", &recorder)
        .env(PLACE, folder)
        .env(LOG, &log)
        .stdout(Stdio::null())
        .status()
        .unwrap();
    assert!(writer.success(), "the writer failed");
    events(&std::fs::read(&log).unwrap())
}
