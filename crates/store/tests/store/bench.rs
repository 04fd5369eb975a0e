//! How long a note takes; run by hand: `cargo test -p snowhum-store --release -- --ignored --nocapture a_note_takes`.

use crate::house::{Folder, note, now, run};
use snowhum_store::Store;
use std::io::Write;
use std::time::Instant;

#[test]
#[ignore = "a measurement, not a promise"]
fn a_note_takes() {
    let folder = Folder::new("bench");
    run(async {
        let store = Store::open(&folder.store()).await.unwrap();
        let begun = Instant::now();
        for n in 0..1000 {
            store.put_note(&note(n), now()).await.unwrap();
        }
        let each = begun.elapsed() / 1000;
        let begun = Instant::now();
        for n in 0..1000 {
            store.put_note(&note(n), now()).await.unwrap();
        }
        let again = begun.elapsed() / 1000;
        writeln!(std::io::stdout(), "a new note {each:?}, one that is there {again:?}").unwrap();
    });
}
