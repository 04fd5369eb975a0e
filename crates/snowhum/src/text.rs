//! Answers in words for a terminal of 80 columns.

pub(crate) mod chart;
pub(crate) mod dead_bees;
pub(crate) mod deadout;
pub(crate) mod feed;
pub(crate) mod fit;
pub(crate) mod hive;
pub(crate) mod jobs;
pub(crate) mod lessons;
pub(crate) mod losses;
pub(crate) mod mites;
pub(crate) mod now;
pub(crate) mod plan;
pub(crate) mod setup;
pub(crate) mod spring;
pub(crate) mod voice;
pub(crate) mod weather;
pub(crate) mod weigh;

use std::io::Write;

use crate::exit;

/// Columns of the page.
pub(crate) const WIDTH: usize = 80;

/// Prints to stdout. A reader that has gone away (a closed pipe) is no fault of the answer.
///
/// # Errors
/// When the answer cannot be written, as on a full disk.
pub(crate) fn say(text: &str) -> anyhow::Result<()> {
    let mut out = std::io::stdout().lock();
    match writeln!(out, "{}", text.trim_end_matches('\n')).and_then(|()| out.flush()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => {
            Err(exit::environment(format!("the answer cannot be written: {error}")))
        }
        _ => Ok(()),
    }
}

/// Breaks a text at spaces to fit the page, every line but the first indented by `indent`.
pub(crate) fn wrapped(text: &str, indent: usize) -> String {
    broken(text, WIDTH - indent).join(&format!("\n{}", " ".repeat(indent)))
}

/// A labelled paragraph: label in the margin, text beside it.
pub(crate) fn entry(label: &str, text: &str) -> String {
    const MARGIN: usize = 14;
    let lines = broken(text, WIDTH - MARGIN).join(&format!("\n{}", " ".repeat(MARGIN)));
    format!("  {label:<12}{lines}\n")
}

/// Lines of at most `room` columns, broken at spaces; a longer word stands alone.
fn broken(text: &str, room: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    for word in voice::said(text).split_whitespace() {
        if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > room {
            lines.push(std::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    lines.push(line);
    lines
}

#[cfg(test)]
mod tests {
    use super::{WIDTH, entry, wrapped};

    #[test]
    fn no_line_is_wider_than_the_page() {
        let long = "a colony of bees in a cold country ".repeat(20);
        for text in [wrapped(&long, 4), entry("Food", &long)] {
            assert!(text.lines().all(|line| line.chars().count() <= WIDTH));
        }
    }
}
