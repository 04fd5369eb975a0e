//! Readers of open weather formats: bytes in, [`crate::Reading`] out.
//!
//! Text that is not UTF-8 is taken as Latin-1. Values no weather can have are dropped and counted in the notes; fields
//! that are no numbers, dates that do not exist and broken rows are faults with line, field and remedy.

mod columns;
pub mod epw;
mod epw_header;
pub mod ghcn_daily;
mod guess;
pub mod isd_lite;
mod mapping;
pub mod station_csv;
mod station_time;
mod station_when;

pub use epw::epw;
pub use ghcn_daily::ghcn_daily;
pub use guess::guessed_columns;
pub use isd_lite::isd_lite;
pub use mapping::{DecimalMark, Mapping, MappingFault, Role};
pub use station_csv::station_csv;

use std::borrow::Cow;

/// Bytes as text: UTF-8 without its mark, else Latin-1.
fn text(bytes: &[u8]) -> Cow<'_, str> {
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    match std::str::from_utf8(bytes) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => Cow::Owned(bytes.iter().map(|byte| char::from(*byte)).collect()),
    }
}

/// At most forty characters of what was found, for a message.
fn shown(text: &str) -> String {
    let cut: String = text.trim().chars().take(40).filter(|c| !c.is_control()).collect();
    if text.trim().chars().count() > 40 { format!("{cut}…") } else { cut }
}
