//! Answers in words for a terminal of 80 columns.

pub(crate) mod chart;
pub(crate) mod dead_bees;
pub(crate) mod deadout;
pub(crate) mod feed;
pub(crate) mod first;
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

use snowhum_advice::answer::ActionAnswer;
use snowhum_say::{Message, shared_terminal as shared};
use std::collections::BTreeSet;
use std::io::Write;

use crate::exit;
use voice::in_words;

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
            Err(exit::failed(shared::no_answer(error.to_string())))
        }
        _ => Ok(()),
    }
}

/// Breaks a text at spaces to fit the page, every line but the first indented by `indent`.
pub(crate) fn wrapped(text: impl Into<Message>, indent: usize) -> String {
    broken(&text.into(), WIDTH - indent).join(&format!("\n{}", " ".repeat(indent)))
}

/// A paragraph of its own, indented.
pub(crate) fn paragraph(text: impl Into<Message>) -> String {
    format!("  {}\n", wrapped(text, 2))
}

/// Several, one under another.
pub(crate) fn paragraphs(texts: impl IntoIterator<Item = impl Into<Message>>) -> String {
    texts.into_iter().map(paragraph).collect()
}

/// A line over what follows it.
pub(crate) fn heading(text: Message) -> String {
    format!("\n{}\n", wrapped(text, 0))
}

/// A labelled paragraph: label in the margin, text beside it.
pub(crate) fn entry(label: impl Into<Message>, text: impl Into<Message>) -> String {
    const MARGIN: usize = 14;
    let lines = broken(&text.into(), WIDTH - MARGIN).join(&format!("\n{}", " ".repeat(MARGIN)));
    format!("  {:<12}{lines}\n", in_words(&label.into()))
}

/// The last line of a sum: what it stands on.
pub(crate) fn stands_on(sources: &[Message]) -> String {
    wrapped(shared::stands_on(sources.to_vec()), 2)
}

/// What was said once and is not said again.
#[derive(Default)]
pub(crate) struct Once {
    said: BTreeSet<String>,
}

impl Once {
    /// Whether a text is said for the first time.
    pub(crate) fn is_new(&mut self, text: &Message) -> bool {
        self.said.insert(in_words(text).trim_end_matches('.').to_lowercase())
    }

    /// Labelled paragraphs of a colony, what was said before left out.
    pub(crate) fn entry(&mut self, label: impl Into<Message>, text: &Message) -> String {
        if self.is_new(text) { entry(label, text) } else { String::new() }
    }
}

/// As many of some paragraphs, the first first, as fit in so many lines.
pub(crate) fn fitting(paragraphs: &[String], most: usize) -> String {
    let mut page = String::new();
    for paragraph in paragraphs {
        if page.lines().count() + paragraph.lines().count() <= most {
            page += paragraph;
        }
    }
    page
}

/// The days for something to do.
pub(crate) fn when(action: &ActionAnswer) -> Message {
    if action.from == action.by { shared::on_day(action.by) } else { shared::from_to(action.from, action.by) }
}

/// A message of one or more lines, each as it stands where it fits the page, else broken at spaces and indented. The place
/// a line begins with, `file:line:`, stays whole; words are as the keeper may have written them and are not changed.
pub(crate) fn message(text: &str) -> String {
    let line = |line: &str| {
        if line.chars().count() <= WIDTH {
            return line.to_owned();
        }
        let indent = line.chars().take_while(|letter| *letter == ' ').count().min(WIDTH / 4);
        let (before, after) = (" ".repeat(indent), " ".repeat(indent + 2));
        let (place, rest) = line.trim_start().split_at(place(line.trim_start()));
        let words = std::iter::once(place).filter(|place| !place.is_empty()).chain(rest.split_whitespace());
        before + &filled(words, WIDTH - indent - 2).join(&format!("\n{after}"))
    };
    text.lines().map(line).collect::<Vec<_>>().join("\n")
}

/// The words of a text: a space that a language writes before a mark breaks no line.
pub(crate) fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split([' ', '\n']).filter(|word| !word.is_empty())
}

/// Length of the `file:line:` that a line begins with; nought if it begins with none.
fn place(line: &str) -> usize {
    let ends = line.match_indices(':').filter_map(|(at, _)| {
        let number = line[at + 1..].find(':').filter(|length| *length > 0)?;
        let is_number = line[at + 1..at + 1 + number].bytes().all(|byte| byte.is_ascii_digit());
        is_number.then_some(at + number + 2)
    });
    ends.min().unwrap_or(0)
}

/// Lines of at most `room` columns in the keeper's words, broken at spaces.
fn broken(text: &Message, room: usize) -> Vec<String> {
    filled(words(&in_words(text)), room)
}

/// Lines of at most `room` columns; a longer word stands alone.
fn filled<'w>(words: impl Iterator<Item = &'w str>, room: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    for word in words {
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
    use super::{WIDTH, entry, message, wrapped};

    #[test]
    fn no_line_is_wider_than_the_page() {
        let long = "a colony of bees in a cold country ".repeat(20);
        for text in [wrapped(&long, 4), entry("Food", &long)] {
            assert!(text.lines().all(|line| line.chars().count() <= WIDTH));
        }
    }

    #[test]
    fn a_message_keeps_its_places_its_indents_and_the_lines_that_fit() {
        let long = "is out of range and cannot be read, write a number between nought and one hundred".to_owned();
        let text = format!("my yard.toml:12: colony \"A\": {long}\n  hint: {long} {long}\nThe pages:  here");
        let said = message(&text);
        assert!(said.lines().all(|line| line.chars().count() <= WIDTH), "{said}");
        assert!(said.starts_with("my yard.toml:12: colony") && said.contains("\n  hint: is"), "{said}");
        assert!(said.ends_with("\nThe pages:  here"), "{said}");
        assert_eq!(said.split_whitespace().collect::<Vec<_>>(), text.split_whitespace().collect::<Vec<_>>());
    }

    #[test]
    fn a_place_with_spaces_in_its_name_is_one_word() {
        let place = format!("{}yard.toml:7:", "a folder ".repeat(7));
        let said = message(&format!("{place} name: is no name that can be read"));
        assert_eq!(said.lines().next(), Some(&*place), "{said}");
    }
}
