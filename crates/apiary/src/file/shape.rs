//! Checks before anything is parsed, so that no file can take long or deep.

use super::report::{Report, Spot};

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
        report.fault(&file(1), "is empty", "start from the template that `snowhum new` writes");
        return None;
    }
    if text.len() > LONGEST_FILE {
        let problem = format!("is {} MiB long", text.len() / 1024 / 1024);
        report.fault(&file(1), problem, format!("a yard of {MOST_HIVES} hives fits in 4 MiB; split it into yards"));
        return None;
    }
    if text.lines().count() > MOST_LINES {
        let problem = format!("has more than {MOST_LINES} lines");
        report.fault(&file(1), problem, format!("keep a yard file to {MOST_HIVES} hives; split it into yards"));
        return None;
    }
    let mut sound = Some(());
    for (at, line) in text.lines().enumerate() {
        if line.trim_start().starts_with('#') {
            continue;
        }
        if line.len() > LONGEST_LINE {
            report.fault(&file(at + 1), "this line is far too long", "break it into lines of under 2,000 letters");
            sound = None;
        } else if line.matches('.').count() > MOST_STOPS {
            report.fault(&file(at + 1), "this line has far too many full stops", "write one key and one value a line");
            sound = None;
        }
    }
    sound
}
