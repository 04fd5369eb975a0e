//! Notes that are about to come into a yard: each is told and asked about before any is kept.

use super::SheetReading;
use crate::{Apiary, Doubt, Note};
use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use serde::Serialize;
use snowhum_say::{Message, fault, sheet_fault as say};

/// Most rows that are named where it is asked about them.
const NAMED: usize = 10;

/// Notes from outside, as they would come in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Incoming {
    /// What the columns were taken for; empty where they are this program's own.
    pub columns: String,
    /// What is to be said about the reading.
    pub said: Vec<Message>,
    /// The rows in their order.
    pub rows: Vec<IncomingRow>,
}

/// One note of them.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct IncomingRow {
    /// Its row.
    pub row: usize,
    /// The colony's name.
    pub colony: String,
    /// When, on the yard's clock.
    pub at: DateTime,
    /// What it says, as it would be written.
    pub says: String,
    /// Whether it is kept already.
    pub known: bool,
    /// What there is to ask.
    pub asks: Option<Message>,
    #[serde(skip)]
    doubt: Option<Doubt>,
    #[serde(skip)]
    note: Note,
}

/// What is done with rows that are asked about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AskedRows {
    /// Nobody has answered yet: nothing is kept while there are any.
    Open,
    /// They are right.
    Kept,
    /// They stay out.
    LeftOut,
}

impl Apiary {
    /// What there is to ask about notes that would come in together.
    #[must_use]
    pub fn incoming(&self, reading: SheetReading, now: Timestamp) -> Incoming {
        let zone = TimeZone::get(&self.site.zone).unwrap_or(TimeZone::UTC);
        // A day without its hour is noted at noon, which may be still to come today.
        let tonight = zone.to_datetime(now).date().at(23, 59, 59, 0);
        let until = zone.to_timestamp(tonight).map_or(now, |tonight| tonight.max(now));
        let history = self.past.iter().flat_map(|winter| &winter.notes);
        let kept: std::collections::HashSet<_> = self.notes.iter().chain(history).map(|note| note.id).collect();
        let mut so_far = self.clone();
        let rows = reading.notes.into_iter().map(|(row, note)| {
            let known = kept.contains(&note.id);
            let stands = self.colonies.iter().any(|colony| colony.id == note.colony);
            let doubt = if known || !stands { None } else { so_far.doubts(&note, until).first().copied() };
            so_far.notes.push(note.clone());
            let asks = doubt.map(|doubt| doubt.message());
            let (colony, says) = (self.colony_name(note.colony), self.note_text(&note));
            IncomingRow { row, colony, at: zone.to_datetime(note.at), says, known, asks, doubt, note }
        });
        Incoming { columns: reading.columns, said: reading.said, rows: rows.collect() }
    }
}

impl Incoming {
    /// Rows that are asked about.
    pub fn asked(&self) -> impl Iterator<Item = &IncomingRow> {
        self.rows.iter().filter(|row| row.doubt.is_some())
    }

    /// The notes that are kept under an answer to what was asked.
    ///
    /// # Errors
    /// Where rows are asked about that the answer does not settle, with them.
    pub fn kept(&self, asked: AskedRows) -> Result<Vec<Note>, Vec<Message>> {
        let stays_open = |row: &&IncomingRow| match asked {
            AskedRows::Open => true,
            AskedRows::Kept => row.doubt.is_some_and(|doubt| !doubt.may_be_right()),
            AskedRows::LeftOut => false,
        };
        let open: Vec<&IncomingRow> = self.asked().filter(stays_open).collect();
        if !open.is_empty() {
            let more = open.len().saturating_sub(NAMED);
            let more = (more > 0).then(|| say::more_rows(more));
            return Err(open.iter().take(NAMED).map(|row| row.message()).chain(more).collect());
        }
        let is_kept = |row: &&IncomingRow| row.doubt.is_none() || asked == AskedRows::Kept;
        Ok(self.rows.iter().filter(is_kept).map(|row| row.note.clone()).collect())
    }
}

impl IncomingRow {
    /// The note with its row, and what there is to ask about it.
    #[must_use]
    pub fn message(&self) -> Message {
        let says = say::row(self.at.strftime("%Y-%m-%d %H:%M").to_string(), &self.colony, &self.says, self.row);
        self.asks.as_ref().map_or(says.clone(), |asks| fault::at(says, asks))
    }
}
