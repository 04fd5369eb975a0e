//! Checks before anything is parsed, so that no file can take long or deep.

use super::report::{Report, Spot};
use snowhum_say::yard_fault as say;

/// Longest yard file that is read, in bytes.
pub const LONGEST_FILE: usize = 4 * 1024 * 1024;

/// Most hives, and most colonies, in one yard file.
pub const MOST_HIVES: usize = 2_000;

/// Longest line and most full stops in it. Each stop in a key opens a table within a table, and what is nested deeply
/// must be taken apart as deeply.
const LONGEST_LINE: usize = 2_000;
const MOST_STOPS: usize = 40;

/// Most sections and keys, by lines that are not empty.
const MOST_LINES: usize = 250_000;

/// `None`, with the fault reported, if the text is no shape for a yard file.
pub(crate) fn check(text: &str, report: &mut Report) -> Option<()> {
    let file = |line: usize| Spot { line, field: "file".to_owned() };
    if text.trim().is_empty() {
        report.fault(&file(1), say::empty(), say::template_right());
        return None;
    }
    if text.len() > LONGEST_FILE {
        report.fault(&file(1), say::long(text.len() / 1024 / 1024), say::long_right(MOST_HIVES));
        return None;
    }
    if text.lines().count() > MOST_LINES {
        report.fault(&file(1), say::lines(MOST_LINES), say::many_right(MOST_HIVES));
        return None;
    }
    let mut sound = Some(());
    for (at, line) in text.lines().enumerate() {
        if line.trim_start().starts_with('#') {
            continue;
        }
        if line.len() > LONGEST_LINE {
            report.fault(&file(at + 1), say::long_line(), say::long_line_right());
            sound = None;
        } else if line.matches('.').count() > MOST_STOPS {
            report.fault(&file(at + 1), say::stops(), say::stops_right());
            sound = None;
        }
    }
    sound
}
