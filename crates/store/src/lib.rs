//! The keeper's records in one SQLite file.
//!
//! A [`Store`] keeps yards as they are now, and notes with every version they ever had: a note is made, edited,
//! withdrawn and restored by adding a row, never by changing one. What is answered as stored is on the disk.
//!
//! ```
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! # tokio::runtime::Builder::new_current_thread().enable_time().build()?.block_on(async {
//! use snowhum_store::{Put, Store};
//! let (yard, _) = snowhum_apiary::read(snowhum_apiary::demo_text(), "rowan-bank.toml")?;
//! let now: jiff::Timestamp = "2026-01-10T12:00:00Z".parse()?;
//!
//! let store = Store::in_memory().await?;
//! store.import_yard(&yard, now).await?;
//! assert_eq!(store.yard(yard.id).await?.as_ref(), Some(&yard));
//! assert_eq!(store.put_note(&yard.notes[0], now).await?, Put::AlreadyThere);
//! # Ok(())
//! # })
//! # }
//! ```

mod alerts;
mod backup;
mod body;
mod connect;
mod copy;
mod doctor;
mod dump;
mod fault;
mod files;
mod hashes;
mod header;
mod imports;
mod mark;
mod mend;
mod migrations;
mod notes;
mod recorded;
mod restore;
mod rows;
mod schema;
mod settings;
mod sheets;
mod store;
mod undo;
mod yards;

pub use alerts::Alert;
pub use copy::Access;
pub use doctor::{Check, Found, Report};
pub use fault::{Fault, Wrong};
pub use imports::TakenBack;
pub use mark::Mark;
pub use mend::Mended;
pub use notes::{Put, Taken, Version};
pub use recorded::Recorded;
pub use restore::Restored;
pub use rows::VersionKind;
pub use sheets::notes_in_csv;
pub use store::Store;
pub use undo::{LastOf, Undone};
pub use yards::{Imported, YardName};
