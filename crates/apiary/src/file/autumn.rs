//! The rest of an autumn look: air at the count, how the queen stands, what ails the bees, what is left on the hive.

use super::outdoors::air;
use super::report::Report;
use super::section::{Entry, Section, shared};
use crate::{Autumn, LeftOn, QueenState, Trouble};
use toml::de::DeValue;

pub(crate) fn read(section: &Section<'_>, report: &mut Report) -> Option<Autumn> {
    let counted_at = section.get("counted_at", report).map(|entry| air(&entry, report));
    let queen = section.get("queen", report).map_or(Some(None), |entry| queen(&entry, report));
    let troubles = section.get("troubles", report).map(|entry| listed(&entry, &Trouble::WORDS, report));
    let left_on = section.get("left_on", report).map(|entry| listed(&entry, &LeftOn::WORDS, report));
    Some(Autumn {
        counted_at: shared(counted_at)?,
        queen: queen?,
        troubles: shared(troubles)?,
        left_on: shared(left_on)?,
    })
}

/// How the queen stands; `unknown` says no more than leaving it out. The outer `None` is a fault.
fn queen(entry: &Entry<'_>, report: &mut Report) -> Option<Option<QueenState>> {
    let known = QueenState::WORDS.map(|(word, state)| (word, Some(state)));
    let words: Vec<(&str, Option<QueenState>)> = known.into_iter().chain([("unknown", None)]).collect();
    entry.word(&words, report)
}

/// `"none"`, one word, or a list of words.
fn listed<T: Copy>(entry: &Entry<'_>, words: &[(&str, T)], report: &mut Report) -> Option<Vec<T>> {
    if let DeValue::String(text) = entry.value
        && text.trim().eq_ignore_ascii_case("none")
    {
        return Some(Vec::new());
    }
    if matches!(entry.value, DeValue::String(_)) {
        return entry.word(words, report).map(|one| vec![one]);
    }
    let items = entry.list(report)?;
    let read: Vec<Option<T>> = items.iter().map(|item| item.word(words, report)).collect();
    read.into_iter().collect()
}
