//! A table of the file with its place, and the values in it.

use super::report::{Report, Spot};
use crate::nearest::{instead, nearest};
use snowhum_say::{Message, fault, yard_fault as say};
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Known keys that are told whole where one is not known.
const FEW: usize = 12;

/// A value with its place.
pub(crate) struct Entry<'a> {
    pub(crate) value: &'a DeValue<'a>,
    pub(crate) spot: Spot,
}

/// A table with its place.
pub(crate) struct Section<'a> {
    table: &'a DeTable<'a>,
    pub(crate) spot: Spot,
}

impl<'a> Section<'a> {
    /// The whole file.
    pub(crate) fn root(table: &'a DeTable<'a>) -> Self {
        Self { table, spot: Spot { line: 1, field: String::new() } }
    }

    pub(crate) fn of(table: &'a DeTable<'a>, spot: Spot) -> Self {
        Self { table, spot }
    }

    /// The value of a key, if it is there.
    pub(crate) fn get(&self, key: &str, report: &Report) -> Option<Entry<'a>> {
        let (name, value) = self.table.get_key_value(key)?;
        let spot = Spot { line: report.line_at(name.span().start), field: self.field(key) };
        Some(Entry { value: value.get_ref(), spot })
    }

    /// Every value of the table with its place, in the order written.
    pub(crate) fn entries(&self, report: &Report) -> Vec<Entry<'a>> {
        let mut entries: Vec<(usize, Entry<'a>)> = Vec::new();
        for (name, value) in self.table.iter() {
            let key: &str = name.get_ref();
            let spot = Spot { line: report.line_at(name.span().start), field: self.field(key) };
            entries.push((name.span().start, Entry { value: value.get_ref(), spot }));
        }
        entries.sort_by_key(|(start, _)| *start);
        entries.into_iter().map(|(_, entry)| entry).collect()
    }

    /// The value of a key; a fault if it is not there.
    pub(crate) fn need(&self, key: &str, remedy: impl FnOnce() -> Message, report: &mut Report) -> Option<Entry<'a>> {
        let found = self.get(key, report);
        if found.is_none() {
            report.missing(&self.spot, key, remedy());
        }
        found
    }

    /// Reports every key that is not known.
    pub(crate) fn only(&self, known: &[&str], report: &mut Report) {
        for (name, _) in self.table.iter() {
            let key: &str = name.get_ref();
            if known.contains(&key) {
                continue;
            }
            let called = if key.is_empty() { "\"\"".to_owned() } else { shown(key) };
            let spot = Spot { line: report.line_at(name.span().start), field: self.field(&called) };
            let remedy = match nearest(key, known.iter().copied()) {
                Some(near) => fault::did_you_mean(near),
                // Of a few all are told: a vast file of keys that are not known is refused soon, too.
                None if known.len() <= FEW => say::key_out(known.iter().map(|key| (*key).into()).collect()),
                None => say::key_out_near(instead(key, known.iter().copied())),
            };
            report.fault(&spot, say::no_key(), remedy);
        }
    }

    /// The elements of an array of tables `[[key]]`, each as a section called by its own name where it has one.
    pub(crate) fn tables(&self, key: &str, report: &mut Report) -> Vec<Section<'a>> {
        let Some(entry) = self.get(key, report) else { return Vec::new() };
        let DeValue::Array(items) = entry.value else {
            report.fault(&entry.spot, say::tables(key), say::tables_right(key));
            return Vec::new();
        };
        let mut sections = Vec::new();
        for (at, item) in items.iter().enumerate() {
            match item.get_ref() {
                DeValue::Table(table) => sections.push(Self::of(table, place(key, at, item, table, report))),
                _ => report.fault(
                    &Spot { line: report.line_at(item.span().start), field: format!("{key}[{at}]") },
                    say::table(key),
                    say::table_below_right(key),
                ),
            }
        }
        sections
    }

    /// The place of a key that the section does not have.
    pub(crate) fn at(&self, key: &str) -> Spot {
        Spot { line: self.spot.line, field: self.field(key) }
    }

    fn field(&self, key: &str) -> String {
        if self.spot.field.is_empty() { key.to_owned() } else { format!("{}.{key}", self.spot.field) }
    }
}

/// What is not there is not known; what is there and wrong spoils the visit.
pub(crate) fn shared<T>(value: Option<Option<T>>) -> Option<Option<T>> {
    match value {
        None => Some(None),
        Some(None) => None,
        Some(Some(value)) => Some(Some(value)),
    }
}

/// A keeper's own text, cut short and without control characters.
pub(crate) fn shown(text: &str) -> String {
    const LONGEST: usize = 60;
    let mut short: String = text.chars().take(LONGEST).flat_map(char::escape_debug).collect();
    if text.chars().nth(LONGEST).is_some() {
        short.push('…');
    }
    short
}

fn place(key: &str, at: usize, item: &Spanned<DeValue<'_>>, table: &DeTable<'_>, report: &Report) -> Spot {
    let name = table.get("name").and_then(|name| name.get_ref().as_str()).filter(|name| !name.trim().is_empty());
    let field = match name {
        Some(name) => format!("{key} \"{}\"", shown(name.trim())),
        None => format!("{key}[{at}]"),
    };
    Spot { line: report.line_at(item.span().start), field }
}
