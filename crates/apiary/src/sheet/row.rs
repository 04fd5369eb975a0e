//! A row of a sheet as a note.

use super::columns::{Column, Layout};
use super::days::{DayOrder, moment};
use super::hive_meant::hive_meant;
use super::role::Role;
use super::wrong::{SheetFaults, rows, shown};
use super::{SheetReading, Table, TableRow};
use crate::nearest::instead;
use crate::note::split_entries;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{Apiary, Colony, ColonyId, Conditions, Entry, Note, NoteId, SnowCover, VisitId};
use jiff::Timestamp;
use jiff::tz::TimeZone;
use snowhum_say::{Message, Tongue, fault, sheet_fault as say};
use snowhum_units::{Bare, Kelvin, Measured, MetrePerSecond, ParseError, number};
use std::collections::{BTreeMap, HashMap};
use uuid::Uuid;

/// What stands in a cell in which nothing was noted.
const NOTHING: [&str; 8] = ["-", "--", "–", "—", ".", "n/a", "na", "none noted"];
/// What a spreadsheet shows where its sum went wrong.
const ERRORS: [&str; 8] = ["#DIV/0!", "#N/A", "#NAME?", "#NULL!", "#NUM!", "#REF!", "#VALUE!", "#GETTING_DATA"];
/// Other ways to write yes and no.
const YES: [&str; 6] = ["y", "true", "x", "✓", "✔", "+"];
const NO: [&str; 2] = ["n", "false"];

/// Reads row after row, and gathers what is wrong and what is to be said.
pub(super) struct Reader<'a> {
    yard: &'a Apiary,
    layout: &'a Layout,
    bare: Bare,
    zone: TimeZone,
    order: Option<DayOrder>,
    faults: SheetFaults,
    notes: Vec<(usize, Note)>,
    /// How often each look was written down.
    times: HashMap<String, u32>,
    /// Rows by what is to be said of them.
    said: BTreeMap<String, (Message, Vec<usize>)>,
}

/// What became of a cell.
enum Cell {
    Entries(Vec<Entry>),
    /// It is no sign: its words are kept.
    Free,
}

/// What one row holds.
#[derive(Default)]
struct Looked {
    conditions: Conditions,
    entries: Vec<Entry>,
    words: Vec<String>,
}

impl<'a> Reader<'a> {
    pub(super) fn new(yard: &'a Apiary, table: &'a Table, layout: &'a Layout, bare: Bare) -> Self {
        let zone = TimeZone::get(&yard.site.zone).unwrap_or(TimeZone::UTC);
        let days = layout.of_role(Role::Date).map_or(usize::MAX, |column| column.at);
        let days = table.rows[layout.below..].iter().filter_map(|row| row.cells.get(days)).map(String::as_str);
        let order = layout.order().or_else(|| DayOrder::shown(days));
        let (faults, said) = (SheetFaults::new(&table.file), BTreeMap::new());
        Self { yard, layout, bare, zone, order, faults, notes: Vec::new(), times: HashMap::new(), said }
    }

    pub(super) fn row(&mut self, row: &TableRow) {
        let (at, colony) = (self.at(row), self.colony(row));
        let mut looked = Looked::default();
        // Where dead bees lie hangs on the snow.
        let (weather, rest): (Vec<_>, Vec<_>) = self.layout.columns.iter().partition(|column| column.is_weather());
        for column in weather.into_iter().chain(rest) {
            let cell = cell(row, column);
            if ERRORS.contains(&cell) {
                self.wrong(row, column, cell, Wrong::new(say::no_value(), say::no_value_right()));
            } else if !cell.is_empty() && !matches!(column.role, Some(Role::Date | Role::Time | Role::Hive)) {
                self.cell(row, column, cell, colony, &mut looked);
            }
        }
        if let Some((at, colony)) = at.zip(colony) {
            self.keep(row, at, colony, looked);
        }
    }

    pub(super) fn done(mut self) -> Result<SheetReading, SheetFaults> {
        let columns = self.layout.written();
        if self.notes.is_empty() && self.faults.faults.is_empty() {
            self.faults.add(None, "", "", Wrong::new(say::nothing(), say::nothing_right()));
        }
        if !self.faults.faults.is_empty() {
            self.faults.columns = Some(columns);
            return Err(self.faults);
        }
        let said = self.said.into_values().map(|(what, of)| fault::at(rows(&of), what)).collect();
        Ok(SheetReading { columns, said, notes: self.notes })
    }

    fn wrong(&mut self, row: &TableRow, column: &Column, cell: &str, wrong: Wrong) {
        self.faults.add(Some(row.number), &column.heading, cell, wrong);
    }

    fn say(&mut self, row: &TableRow, what: Message) {
        let told = self.said.entry(Tongue::BRITISH.say(&what)).or_insert_with(|| (what, Vec::new()));
        told.1.push(row.number);
    }

    fn at(&mut self, row: &TableRow) -> Option<Timestamp> {
        let day = self.layout.of_role(Role::Date)?;
        let clock = self.layout.of_role(Role::Time).map_or("", |column| cell(row, column));
        let written = cell(row, day);
        let read = if written.is_empty() {
            Err(Wrong::new(say::no_day(), say::no_day_right()))
        } else {
            moment(written, clock, self.order)
        };
        let read = read.and_then(|civil| {
            let found = self.zone.to_ambiguous_timestamp(civil).compatible();
            found.map_err(|_| Wrong::new(fault::no_time(written), fault::time_right()))
        });
        read.map_err(|wrong| self.wrong(row, day, written, self.with_order(wrong, day))).ok()
    }

    /// Where a stroke leaves day and month open, the whole column may be told apart at once.
    fn with_order(&self, wrong: Wrong, day: &Column) -> Wrong {
        if self.order.is_some() || wrong.problem.id() != Some("fault-two-days") {
            return wrong;
        }
        Wrong::new(wrong.problem, say::or_order(&day.heading, wrong.remedy))
    }

    fn colony(&mut self, row: &TableRow) -> Option<&'a Colony> {
        let (yard, column) = (self.yard, self.layout.of_role(Role::Hive)?);
        let written = cell(row, column);
        let found = hive_meant(yard, written);
        if found.is_none() {
            let wrong = if written.is_empty() {
                Wrong::new(say::no_hive(), say::no_hive_right())
            } else {
                let remedy = instead(written, yard.colonies.iter().map(|colony| colony.name.as_str()));
                Wrong::new(say::no_colony(shown(written), &yard.name), remedy)
            };
            self.wrong(row, column, written, wrong);
        }
        found
    }

    /// One cell that holds something.
    fn cell(&mut self, row: &TableRow, column: &Column, cell: &str, colony: Option<&Colony>, looked: &mut Looked) {
        if cell.chars().count() > Table::MOST_LETTERS {
            let wrong = Wrong::new(say::long(), say::long_right(Table::MOST_LETTERS));
            return self.wrong(row, column, cell, wrong);
        }
        let read = match column.role {
            Some(Role::Words) => Ok(self.words(row, column, cell, colony)),
            Some(Role::Noted(word)) => self.noted(word, column, cell, colony, looked.conditions.snow),
            Some(Role::Air | Role::Wind | Role::Snow) => condition(column, cell, self.bare, &mut looked.conditions),
            _ => Ok(Cell::Free),
        };
        match read {
            Ok(Cell::Entries(entries)) => {
                if column.role == Some(Role::Noted("dead")) && is_bare(cell) && column.after.is_none() {
                    self.say(row, say::dead_taken(&column.heading));
                }
                looked.entries.extend(entries);
            }
            Ok(Cell::Free) if column.role == Some(Role::Words) => looked.words.push(plain(cell)),
            Ok(Cell::Free) => {
                looked.words.push(format!("{}: {}", column.heading, plain(cell)));
                let heading = &column.heading;
                let what = match column.role {
                    Some(role) => say::no_sign(shown(cell), heading, role.word()),
                    None => say::remark(heading),
                };
                self.say(row, what);
            }
            Err(wrong) => self.wrong(row, column, cell, wrong),
        }
    }

    /// Words, or a note as it is written elsewhere: what of it cannot be read stays words.
    fn words(&mut self, row: &TableRow, column: &Column, cell: &str, colony: Option<&Colony>) -> Cell {
        if !cell.contains('=') {
            return Cell::Free;
        }
        let read: Result<Vec<Entry>, Wrong> = split_entries(cell).map(|one| self.entry(one, colony)).collect();
        match read {
            Ok(entries) => Cell::Entries(entries),
            Err(wrong) => {
                self.say(row, say::words(&column.heading, wrong.message()));
                Cell::Free
            }
        }
    }

    fn entry(&self, written: &str, colony: Option<&Colony>) -> Result<Entry, Wrong> {
        let entry = Entry::read_in(written, &|name| hive_meant(self.yard, name).map(|colony| colony.id), self.bare)?;
        colony.map_or(Ok(()), |colony| self.yard.check_opening(colony.id, &entry))?;
        Ok(entry)
    }

    /// A sign under its own heading. A number that cannot be is wrong; what holds none is free words.
    fn noted(
        &self,
        word: &str,
        column: &Column,
        cell: &str,
        colony: Option<&Colony>,
        snow: Option<SnowCover>,
    ) -> Result<Cell, Wrong> {
        let ground = (word == "dead" && snow == Some(SnowCover::None)).then_some("on ground");
        let written = match column.after.as_deref().or(ground).filter(|_| is_bare(cell)) {
            Some(after) => format!("{word}={cell} {after}"),
            None => format!("{word}={cell}"),
        };
        if word == "humidity" && number(cell).is_ok_and(|share| share > 0.0 && share <= 1.0) {
            let hundredfold = (1e4 * number(cell).unwrap_or_default()).round() / 1e2;
            let remedy = say::two_shares_right(cell, hundredfold.to_string());
            return Err(Wrong::new(say::two_shares(cell), remedy));
        }
        let first = match self.entry(&written, colony) {
            Ok(entry) => return Ok(Cell::Entries(vec![entry])),
            Err(wrong) => wrong,
        };
        let lower = cell.to_lowercase();
        let plainer = [("yes", &YES[..]), ("no", &NO[..])].into_iter().find(|(_, ways)| ways.contains(&lower.as_str()));
        if let Some(entry) = plainer.and_then(|(plain, _)| self.entry(&format!("{word}={plain}"), colony).ok()) {
            return Ok(Cell::Entries(vec![entry]));
        }
        if cell.chars().any(|letter| letter.is_ascii_digit()) { Err(first) } else { Ok(Cell::Free) }
    }

    fn keep(&mut self, row: &TableRow, at: Timestamp, colony: &Colony, mut looked: Looked) {
        if looked.entries.is_empty() && looked.words.is_empty() {
            let weather =
                self.layout.columns.iter().filter(|column| column.is_weather() && !cell(row, column).is_empty());
            looked.words = weather.map(|column| format!("{}: {}", column.heading, cell(row, column))).collect();
        }
        if let Some(words) = looked.free_words() {
            if words.chars().count() > Table::MOST_LETTERS {
                let wrong = Wrong::new(say::long_words(), say::long_words_right(Table::MOST_LETTERS));
                return self.faults.add(Some(row.number), "", "", wrong);
            }
            looked.entries.push(Entry::Words(words));
        }
        if looked.entries.is_empty() {
            return self.say(row, say::nothing_kept());
        }
        let (id, visit) = self.ids(at, colony.id, &looked.entries);
        let Looked { conditions, entries, .. } = looked;
        self.notes.push((row.number, Note { id, visit, colony: colony.id, at, conditions, entries }));
    }

    /// The same look has the same id whenever the sheet is read; written down again it is another.
    fn ids(&mut self, at: Timestamp, colony: ColonyId, entries: &[Entry]) -> (NoteId, VisitId) {
        let written: Vec<String> = entries.iter().map(|entry| entry.written(&|id| id.0.to_string())).collect();
        let look = format!("sheet\n{at}\n{}\n{}", colony.0, written.join("\n"));
        let times = self.times.entry(look.clone()).or_default();
        *times += 1;
        let of = |name: &str| Uuid::new_v5(&self.yard.id.0, name.as_bytes());
        (NoteId(of(&format!("{look}\n{times}"))), VisitId(of(&format!("sheet\n{at}"))))
    }
}

impl Looked {
    /// All words of a row as one entry, with those of notes that were written whole.
    fn free_words(&mut self) -> Option<String> {
        let mut all = Vec::new();
        self.entries.retain(|entry| match entry {
            Entry::Words(words) => {
                all.push(words.clone());
                false
            }
            _ => true,
        });
        all.append(&mut self.words);
        (!all.is_empty()).then(|| all.join("; "))
    }
}

/// The weather as the keeper saw it.
fn condition(column: &Column, cell: &str, bare: Bare, conditions: &mut Conditions) -> Result<Cell, Wrong> {
    let holds_number = cell.chars().any(|letter| letter.is_ascii_digit());
    let written = match column.after.as_deref().filter(|_| is_bare(cell)) {
        Some(after) => format!("{cell} {after}"),
        None => cell.to_owned(),
    };
    let before = *conditions;
    match column.role {
        Some(Role::Snow) => match SnowCover::read(cell) {
            Some(snow) => conditions.snow = Some(snow),
            None => return Ok(Cell::Free),
        },
        _ if !holds_number => return Ok(Cell::Free),
        Some(Role::Wind) => conditions.wind_m_per_s = Some(MetrePerSecond::read(&written, bare)?),
        _ => conditions.air_k = Some(Kelvin::read(&written, bare)?),
    }
    conditions.check().inspect_err(|_| *conditions = before)?;
    Ok(Cell::Entries(Vec::new()))
}

/// A cell without what only says that it is empty.
fn cell<'t>(row: &'t TableRow, column: &Column) -> &'t str {
    let text = row.cells.get(column.at).map_or("", |cell| cell.trim());
    if NOTHING.iter().any(|nothing| same_name(nothing, text)) { "" } else { text }
}

/// Whether a number stands alone.
fn is_bare(cell: &str) -> bool {
    matches!(number(cell), Ok(_) | Err(ParseError::TwoReadings { .. }))
}

/// Words on one line.
fn plain(cell: &str) -> String {
    let lines = cell.split(['\r', '\n']).map(str::trim).filter(|line| !line.is_empty());
    let line = lines.collect::<Vec<_>>().join(" / ");
    line.chars().map(|letter| if letter.is_control() { ' ' } else { letter }).collect()
}
