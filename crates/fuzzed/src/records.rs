//! What is brought into the records.

use jiff::Timestamp;
use snowhum_apiary::AskedRows;
use snowhum_store::{Access, Store};
use snowhum_units::System;
use snowhum_web::{SheetFile, bring_in};
use std::future::Future;
use std::path::PathBuf;

use crate::forms::small_yard;

pub(crate) fn run<T>(work: impl Future<Output = T>) -> Option<T> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_time().build().ok()?;
    Some(runtime.block_on(work))
}

/// A sheet of notes, a workbook or CSV of any hand: what was taken in is in order, and comes back out as text alike.
pub fn notes_sheet(bytes: &[u8]) {
    let Some(yard) = small_yard() else { return };
    let file = SheetFile { bytes, file: "fuzzed", ..SheetFile::default() };
    let incoming = match file.read(&yard, System::Metric, Timestamp::UNIX_EPOCH) {
        Ok(incoming) => incoming,
        Err(refused) => return assert!(!refused.to_string().is_empty()),
    };
    run(async {
        let Ok(store) = Store::in_memory().await else { return };
        let notes = incoming.kept(AskedRows::LeftOut).unwrap_or_default();
        let taken = bring_in(&store, &notes, None, Timestamp::UNIX_EPOCH).await;
        in_order(&store, taken.is_ok()).await;
    });
}

/// Everything as JSON: what was taken in comes out and in again.
pub fn export(bytes: &[u8]) {
    run(async {
        let (Ok(store), Ok(again)) = (Store::in_memory().await, Store::in_memory().await) else { return };
        let is_taken = store.import_json(bytes).await.is_ok();
        in_order(&store, is_taken).await;
        if is_taken {
            let mut out = Vec::new();
            assert!(store.export_json(&mut out).await.is_ok(), "what was taken in does not come out");
            let back = again.import_json(&out[..]).await;
            assert!(back.is_ok(), "{back:?}");
        }
    });
}

pub(crate) async fn in_order(store: &Store, is_taken: bool) {
    let report = store.doctor().await;
    assert!(report.as_ref().is_ok_and(snowhum_store::Report::is_well), "taken in: {is_taken}; {report:?}");
}

/// A file handed to the doctor and to restore: what takes the place of the records is in order.
pub fn database(bytes: &[u8]) {
    let (from, into) = (scratch("from"), scratch("into"));
    if std::fs::write(&from, bytes).is_err() {
        return;
    }
    run(async {
        if Store::restore(&from, &into, Access::Taken, Timestamp::UNIX_EPOCH).await.is_ok() {
            let report = Store::doctor_of(&into).await;
            assert!(report.as_ref().is_ok_and(snowhum_store::Report::is_well), "{report:?}");
        }
        // It may find what it likes, and must end.
        drop(Store::doctor_of(&from).await);
    });
    for file in [from, into] {
        for ending in ["", "-wal", "-shm", "-journal"] {
            let mut name = file.clone().into_os_string();
            name.push(ending);
            // One that is not there need not be removed.
            let _ = std::fs::remove_file(name);
        }
    }
}

fn scratch(name: &str) -> PathBuf {
    let thread = format!("{:?}", std::thread::current().id()).replace(['(', ')'], "");
    std::env::temp_dir().join(format!("snowhum-fuzzed-{}-{thread}-{name}.db", std::process::id()))
}
