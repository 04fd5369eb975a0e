//! The tables as rows of plain cells, for everything that goes in or out whole.

use crate::body::{self, Parts};
use crate::fault::Wrong;
use crate::notes::VersionKind;
use snowhum_apiary::{Colony, Hive, Note};
use sqlx::Row as _;
use sqlx::sqlite::{SqliteConnection, SqliteRow};

/// The tables, each after those it points at.
pub(crate) const TABLES: [Table; 6] = [
    Table {
        name: "yards",
        columns: &[("id", Kind::Text), ("changed_at", Kind::Whole), ("body", Kind::Body)],
        select: "SELECT id, changed_at, body FROM yards ORDER BY id",
        insert: "INSERT INTO yards (id, changed_at, body) VALUES ($1, $2, $3)",
        check: check_yard,
    },
    Table {
        name: "hives",
        columns: &[
            ("id", Kind::Text),
            ("yard", Kind::Text),
            ("place", Kind::Whole),
            ("left_at", Kind::WholeOrNone),
            ("body", Kind::Body),
        ],
        select: "SELECT id, yard, place, left_at, body FROM hives ORDER BY yard, place, id",
        insert: "INSERT INTO hives (id, yard, place, left_at, body) VALUES ($1, $2, $3, $4, $5)",
        check: check_hive,
    },
    Table {
        name: "colonies",
        columns: &[
            ("id", Kind::Text),
            ("yard", Kind::Text),
            ("hive", Kind::Text),
            ("place", Kind::Whole),
            ("left_at", Kind::WholeOrNone),
            ("body", Kind::Body),
        ],
        select: "SELECT id, yard, hive, place, left_at, body FROM colonies ORDER BY yard, place, id",
        insert: "INSERT INTO colonies (id, yard, hive, place, left_at, body) VALUES ($1, $2, $3, $4, $5, $6)",
        check: check_colony,
    },
    Table {
        name: "note_versions",
        columns: &[
            ("version", Kind::Text),
            ("serial", Kind::Whole),
            ("note", Kind::Text),
            ("visit", Kind::Text),
            ("colony", Kind::Text),
            ("at", Kind::Whole),
            ("recorded_at", Kind::Whole),
            ("kind", Kind::Text),
            ("undoes", Kind::TextOrNone),
            ("author", Kind::Text),
            ("body", Kind::Body),
        ],
        select: "SELECT version, serial, note, visit, colony, at, recorded_at, kind, undoes, author, body \
                 FROM note_versions ORDER BY serial",
        insert: "INSERT INTO note_versions \
                 (version, serial, note, visit, colony, at, recorded_at, kind, undoes, author, body) \
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)",
        check: check_version,
    },
    Table {
        name: "settings",
        columns: &[("name", Kind::Text), ("value", Kind::Text)],
        // Sessions and keys of the pages open this machine's gate and stay with it.
        select: "SELECT name, value FROM settings WHERE name NOT LIKE 'gate.%' ORDER BY name",
        insert: "INSERT INTO settings (name, value) VALUES ($1, $2)",
        check: |_| Ok(()),
    },
    Table {
        name: "alerts",
        columns: &[
            ("serial", Kind::Whole),
            ("yard", Kind::Text),
            ("colony", Kind::Text),
            ("word", Kind::Text),
            ("at", Kind::Whole),
        ],
        select: "SELECT serial, yard, colony, word, at FROM alerts ORDER BY serial",
        insert: "INSERT INTO alerts (serial, yard, colony, word, at) VALUES ($1, $2, $3, $4, $5)",
        check: check_alert,
    },
];

/// A table.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Table {
    pub(crate) name: &'static str,
    pub(crate) columns: &'static [(&'static str, Kind)],
    select: &'static str,
    insert: &'static str,
    check: fn(&Row<'_>) -> Result<(), Wrong>,
}

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    Whole,
    WholeOrNone,
    Text,
    TextOrNone,
    /// JSON.
    Body,
}

/// A value.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Cell {
    None,
    Whole(i64),
    Text(String),
}

/// The values of a row, in the order of the columns.
pub(crate) type Cells = Vec<Cell>;

/// Cells with the names of their columns.
struct Row<'a> {
    table: Table,
    cells: &'a [Cell],
}

impl Table {
    /// All rows, in an order that is always the same.
    pub(crate) async fn read(self, reading: &mut SqliteConnection) -> Result<Vec<Cells>, Wrong> {
        let rows = sqlx::query(self.select).fetch_all(reading).await?;
        rows.iter().map(|row| self.cells(row)).collect()
    }

    /// Adds a row.
    pub(crate) async fn add(self, writing: &mut SqliteConnection, cells: Cells) -> Result<(), Wrong> {
        let mut insert = sqlx::query(self.insert);
        for cell in cells {
            insert = match cell {
                Cell::None => insert.bind(None::<String>),
                Cell::Whole(number) => insert.bind(number),
                Cell::Text(text) => insert.bind(text),
            };
        }
        insert.execute(writing).await?;
        Ok(())
    }

    /// Whether a row is in itself in order: its body can be read and says the same as the columns beside it.
    pub(crate) fn check(self, cells: &[Cell]) -> Result<(), Wrong> {
        for cell in cells {
            if let Cell::Text(text) = cell {
                body::text(text, self.name)?;
            }
        }
        (self.check)(&Row { table: self, cells })
    }

    fn cells(self, row: &SqliteRow) -> Result<Cells, Wrong> {
        let cell = |(name, kind): &(&str, Kind)| -> Result<Cell, Wrong> {
            Ok(match kind {
                Kind::Whole | Kind::WholeOrNone => {
                    row.try_get::<Option<i64>, _>(*name)?.map_or(Cell::None, Cell::Whole)
                }
                Kind::Text | Kind::TextOrNone | Kind::Body => {
                    row.try_get::<Option<String>, _>(*name)?.map_or(Cell::None, Cell::Text)
                }
            })
        };
        self.columns.iter().map(cell).collect()
    }
}

impl Row<'_> {
    fn cell(&self, column: &str) -> &Cell {
        let at = self.table.columns.iter().position(|(name, _)| *name == column);
        at.and_then(|at| self.cells.get(at)).unwrap_or(&Cell::None)
    }

    fn text(&self, column: &str) -> &str {
        match self.cell(column) {
            Cell::Text(text) => text,
            Cell::None | Cell::Whole(_) => "",
        }
    }

    fn whole(&self, column: &str) -> Option<i64> {
        match self.cell(column) {
            Cell::Whole(number) => Some(*number),
            Cell::None | Cell::Text(_) => None,
        }
    }

    /// Faults a column that says something else than the body.
    fn same(&self, column: &str, body: &impl ToString) -> Result<(), Wrong> {
        if self.text(column) == body.to_string() {
            return Ok(());
        }
        let (table, body) = (self.table.name, body.to_string());
        let what = format!("in {table} {column} is {:?} and the body beside it says {body:?}", self.text(column));
        Err(Wrong::damaged(what))
    }

    fn time(&self, column: &str) -> Result<(), Wrong> {
        body::time(self.whole(column).unwrap_or(i64::MIN)).map(drop)
    }
}

fn check_yard(row: &Row<'_>) -> Result<(), Wrong> {
    let yard = body::yard(row.text("body"), row.text("id"), Parts::default())?;
    row.time("changed_at")?;
    row.same("id", &yard.id.0)
}

fn check_hive(row: &Row<'_>) -> Result<(), Wrong> {
    let hive: Hive = body::read(row.text("body"), "hive", row.text("id"))?;
    row.same("id", &hive.id.0)
}

fn check_colony(row: &Row<'_>) -> Result<(), Wrong> {
    let colony: Colony = body::read(row.text("body"), "colony", row.text("id"))?;
    row.same("id", &colony.id.0)?;
    row.same("hive", &colony.hive.0)
}

fn check_version(row: &Row<'_>) -> Result<(), Wrong> {
    let note: Note = body::read(row.text("body"), "note version", row.text("version"))?;
    body::id(row.text("version"))?;
    row.time("recorded_at")?;
    row.same("note", &note.id.0)?;
    row.same("visit", &note.visit.0)?;
    row.same("colony", &note.colony.0)?;
    if row.whole("at") != Some(note.at.as_millisecond()) {
        return Err(Wrong::damaged(format!(
            "the time of note version {} is not that of its body",
            row.text("version")
        )));
    }
    let kind = row.text("kind");
    VersionKind::from_word(kind).map(drop).ok_or_else(|| Wrong::damaged(format!("{kind:?} is no kind of version")))
}

fn check_alert(row: &Row<'_>) -> Result<(), Wrong> {
    body::id(row.text("yard"))?;
    if !row.text("colony").is_empty() {
        body::id(row.text("colony"))?;
    }
    row.time("at")
}
