//! What a store promises, held against files on a disk.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod backups;
mod bench;
mod elsewhere;
mod exports;
mod flipped;
mod hostile;
mod house;
mod killed;
mod model;
mod notes;
mod noticed;
#[cfg(target_os = "linux")]
mod power;
mod refusals;
mod yards;
