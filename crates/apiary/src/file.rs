//! The yard file: TOML that a keeper can write by hand.

mod autumn;
mod bees;
mod boxes;
mod colony;
mod hive;
mod ids;
mod indoors;
mod layers;
mod named_hive;
mod outdoors;
mod record;
mod report;
mod scalar;
mod section;
mod shape;
mod site;
mod stores;
mod visits;
mod yard;

pub use shape::{LONGEST_FILE, MOST_HIVES};

use crate::{Advisory, Apiary, Faults};
use report::Report;
use snowhum_say::yard_fault as say;

/// Reads a yard file.
///
/// # Errors
/// Every fault of the file at once, each with its line, its field and what would be right.
pub fn read(text: &str, file_name: &str) -> Result<(Apiary, Vec<Advisory>), Faults> {
    let mut report = Report::of(text);
    let yard = shape::check(text, &mut report).and_then(|()| yard::read(text, &mut report));
    report.close(yard, file_name)
}

/// Reads a yard file that may not even be text.
///
/// # Errors
/// As [`read`], and when the bytes are not UTF-8.
pub fn read_bytes(bytes: &[u8], file_name: &str) -> Result<(Apiary, Vec<Advisory>), Faults> {
    match std::str::from_utf8(bytes) {
        Ok(text) => read(text, file_name),
        Err(error) => {
            let before = bytes.get(..error.valid_up_to()).unwrap_or_default();
            let line = 1 + before.iter().filter(|byte| **byte == b'\n').count();
            Err(Report::single(file_name, line, say::no_text(), say::no_text_right()))
        }
    }
}
