//! What a store promises, held against files on a disk.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod backups;
mod bench;
mod exports;
mod hostile;
mod house;
mod killed;
mod notes;
mod refusals;
mod yards;
