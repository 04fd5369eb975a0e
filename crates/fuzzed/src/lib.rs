//! Every way in as one function of bytes: whatever the bytes are, none of these may panic or hang, and what goes in comes
//! out again. The fuzzer in `fuzz/` calls them, and a test calls them with the corpus that is kept.

mod forms;
mod records;
mod weather;

use snowhum_apiary::{ColonyId, Entry};
use uuid::Uuid;

pub use forms::forms;
pub use records::{database, export, notes_sheet};
pub use weather::{epw, ghcn_daily, isd_lite, station_csv};

/// One way in.
pub type WayIn = fn(&[u8]);

/// The ways in, by the names of their corpora.
pub const TARGETS: [(&str, WayIn); 10] = [
    ("yard", yard),
    ("note", note),
    ("epw", epw),
    ("isd_lite", isd_lite),
    ("ghcn_daily", ghcn_daily),
    ("station_csv", station_csv),
    ("notes_sheet", notes_sheet),
    ("export", export),
    ("database", database),
    ("forms", forms),
];

/// A yard file.
pub fn yard(bytes: &[u8]) {
    match snowhum_apiary::read_bytes(bytes, "fuzzed.toml") {
        Ok((yard, _)) => assert!(!yard.hives.is_empty() || yard.colonies.is_empty(), "colonies without hives"),
        Err(faults) => assert!(faults.to_string().starts_with("fuzzed.toml"), "{faults}"),
    }
}

/// What a keeper writes of one look: what was read is read the same once it is written out.
pub fn note(bytes: &[u8]) {
    let Ok(line) = std::str::from_utf8(bytes) else { return };
    let colony = |_: &str| Some(ColonyId(Uuid::nil()));
    for written in snowhum_apiary::split_entries(line) {
        let Ok(entry) = Entry::read(written, &colony) else { continue };
        let again = entry.written(&|_| "Alder".to_owned());
        let read = Entry::read(&again, &colony);
        assert!(read.is_ok(), "{written:?} is written out as {again:?}, which cannot be read");
    }
}
