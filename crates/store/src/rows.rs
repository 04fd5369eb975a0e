//! The tables as rows of plain cells: every row that goes in, out or is changed goes through here.

use crate::body::{self, Parts};
use crate::fault::Wrong;
use crate::hashes::{self, Links};
use snowhum_apiary::{Colony, Hive, Note};
use snowhum_say::{Message, store_found};
use sqlx::query::Query;
use sqlx::sqlite::{Sqlite, SqliteArguments, SqliteConnection, SqliteRow};
use sqlx::{AssertSqlSafe, Row as _};

pub(crate) const YARDS: Table = Table {
    name: "yards",
    columns: &[("id", Kind::Text), ("changed_at", Kind::Whole), ("body", Kind::Body), HASH],
    order: "id",
    links: Links::Alone,
    check: check_yard,
};
pub(crate) const HIVES: Table = Table {
    name: "hives",
    columns: &[
        ("id", Kind::Text),
        ("yard", Kind::Text),
        ("place", Kind::Whole),
        ("left_at", Kind::WholeOrNone),
        ("body", Kind::Body),
        HASH,
    ],
    order: "yard, place, id",
    links: Links::Alone,
    check: check_hive,
};
pub(crate) const COLONIES: Table = Table {
    name: "colonies",
    columns: &[
        ("id", Kind::Text),
        ("yard", Kind::Text),
        ("hive", Kind::Text),
        ("place", Kind::Whole),
        ("left_at", Kind::WholeOrNone),
        ("body", Kind::Body),
        HASH,
    ],
    order: "yard, place, id",
    links: Links::Alone,
    check: check_colony,
};
pub(crate) const NOTE_VERSIONS: Table = Table {
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
        HASH,
    ],
    order: "serial",
    links: Links::Chain,
    check: check_version,
};
pub(crate) const SETTINGS: Table = Table {
    name: "settings",
    columns: &[("name", Kind::Text), ("value", Kind::Text), HASH],
    order: "name",
    links: Links::Alone,
    check: |_| Ok(()),
};
pub(crate) const ALERTS: Table = Table {
    name: "alerts",
    columns: &[
        ("serial", Kind::Whole),
        ("yard", Kind::Text),
        ("colony", Kind::Text),
        ("word", Kind::Text),
        ("at", Kind::Whole),
        HASH,
    ],
    order: "serial",
    links: Links::Alone,
    check: check_alert,
};

/// The tables, each after those it points at.
pub(crate) const TABLES: [Table; 6] = [YARDS, HIVES, COLONIES, NOTE_VERSIONS, SETTINGS, ALERTS];

/// The last column of each table.
const HASH: (&str, Kind) = ("hash", Kind::Text);
/// Names of settings that open this machine's gate begin so.
const ACCESS: &str = "gate.";

/// A table. Its first column is its key.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Table {
    pub(crate) name: &'static str,
    columns: &'static [(&'static str, Kind)],
    order: &'static str,
    pub(crate) links: Links,
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
    /// Its columns in a store of a form; before the second no row had a hash.
    pub(crate) fn columns(self, form: i64) -> &'static [(&'static str, Kind)] {
        if form < hashes::SINCE { &self.columns[..self.columns.len() - 1] } else { self.columns }
    }

    /// All rows of a store of a form, in an order that is always the same.
    pub(crate) async fn read(self, form: i64, reading: &mut SqliteConnection) -> Result<Vec<Cells>, Wrong> {
        self.read_each(form, reading).await?.into_iter().collect()
    }

    /// The same, each row that cannot be read with why.
    pub(crate) async fn read_each(
        self,
        form: i64,
        reading: &mut SqliteConnection,
    ) -> Result<Vec<Result<Cells, Wrong>>, Wrong> {
        let select = format!("SELECT {} FROM {} ORDER BY {}", self.names(form), self.name, self.order);
        let rows = sqlx::query(AssertSqlSafe(select)).fetch_all(reading).await?;
        Ok(rows.iter().map(|row| self.cells(form, row)).collect())
    }

    /// The row of a key.
    pub(crate) async fn row(self, reading: &mut SqliteConnection, key: &Cell) -> Result<Option<Cells>, Wrong> {
        let select = format!("SELECT {} FROM {} WHERE {} = $1", self.names(i64::MAX), self.name, self.columns[0].0);
        let row = bound(sqlx::query(AssertSqlSafe(select)), key).fetch_optional(reading).await?;
        row.as_ref().map(|row| self.cells(i64::MAX, row)).transpose()
    }

    /// The row that SQLite itself counts by a number: how rows are looked for in a table that cannot be read through.
    pub(crate) async fn row_at(self, reading: &mut SqliteConnection, number: i64) -> Result<Option<Cells>, Wrong> {
        let select = format!("SELECT {} FROM {} WHERE rowid = $1", self.names(i64::MAX), self.name);
        let row = sqlx::query(AssertSqlSafe(select)).bind(number).fetch_optional(reading).await?;
        row.as_ref().map(|row| self.cells(i64::MAX, row)).transpose()
    }

    /// Adds a row as it is, to a store of a form; who does this sees to the hashes.
    pub(crate) async fn add(self, form: i64, writing: &mut SqliteConnection, cells: &[Cell]) -> Result<(), Wrong> {
        let places = (1..=cells.len()).map(|place| format!("${place}")).collect::<Vec<_>>().join(", ");
        let insert = format!("INSERT INTO {} ({}) VALUES ({places})", self.name, self.names(form));
        cells.iter().fold(sqlx::query(AssertSqlSafe(insert)), bound).execute(writing).await?;
        Ok(())
    }

    /// Takes a row away as it is; who does this sees to the sum.
    pub(crate) async fn remove(self, writing: &mut SqliteConnection, key: &Cell) -> Result<(), Wrong> {
        let delete = format!("DELETE FROM {} WHERE {} = $1", self.name, self.columns[0].0);
        bound(sqlx::query(AssertSqlSafe(delete)), key).execute(writing).await?;
        Ok(())
    }

    /// Gives a row that is there other cells.
    pub(crate) async fn change(self, writing: &mut SqliteConnection, cells: &[Cell]) -> Result<(), Wrong> {
        let set = (1..).zip(self.columns).map(|(place, (name, _))| format!("{name} = ${place}"));
        let set = set.collect::<Vec<_>>().join(", ");
        let update = format!("UPDATE {} SET {set} WHERE {} = $1", self.name, self.columns[0].0);
        cells.iter().fold(sqlx::query(AssertSqlSafe(update)), bound).execute(writing).await?;
        Ok(())
    }

    /// What stands in a column of a row.
    pub(crate) fn cell<'a>(self, row: &'a [Cell], column: &str) -> Option<&'a Cell> {
        self.columns.iter().position(|(name, _)| *name == column).and_then(|place| row.get(place))
    }

    /// A row with another value in one column.
    pub(crate) fn with(self, row: &[Cell], column: &str, value: Cell) -> Cells {
        let cells = self.columns.iter().zip(row);
        cells.map(|((name, _), cell)| if *name == column { value.clone() } else { cell.clone() }).collect()
    }

    /// Whether a row is in itself in order: its body can be read and says the same as the columns beside it.
    pub(crate) fn check(self, cells: &[Cell]) -> Result<(), Wrong> {
        for cell in cells {
            if let Cell::Text(text) = cell {
                body::text(text, "row")?;
            }
        }
        (self.check)(&Row { table: self, cells })
    }

    /// A row in words: its table and key.
    pub(crate) fn called(self, cells: &[Cell]) -> Message {
        match (self.links, cells) {
            (Links::Chain, [Cell::Text(key), Cell::Whole(serial), ..]) => {
                format!("{} {serial} ({key})", self.name).into()
            }
            (_, [Cell::Text(key), ..]) if is_access(key) => store_found::of_gate(self.name),
            (_, [Cell::Text(key), ..]) => format!("{} {key:?}", self.name).into(),
            (_, [Cell::Whole(key), ..]) => format!("{} {key}", self.name).into(),
            _ => store_found::no_key(self.name),
        }
    }

    fn names(self, form: i64) -> String {
        self.columns(form).iter().map(|(name, _)| *name).collect::<Vec<_>>().join(", ")
    }

    fn cells(self, form: i64, row: &SqliteRow) -> Result<Cells, Wrong> {
        let cell = |(name, kind): &(&str, Kind)| -> Result<Cell, Wrong> {
            let wrong = |_| Wrong::damaged(format!("a row of {} has a {name} of another kind", self.name));
            let cell = match kind {
                Kind::Whole | Kind::WholeOrNone => {
                    row.try_get::<Option<i64>, _>(*name).map_err(wrong)?.map_or(Cell::None, Cell::Whole)
                }
                Kind::Text | Kind::TextOrNone | Kind::Body => {
                    row.try_get::<Option<String>, _>(*name).map_err(wrong)?.map_or(Cell::None, Cell::Text)
                }
            };
            let may_be_none = matches!(kind, Kind::WholeOrNone | Kind::TextOrNone);
            let none = || Wrong::damaged(format!("a row of {} has no {name}", self.name));
            if cell == Cell::None && !may_be_none { Err(none()) } else { Ok(cell) }
        };
        self.columns(form).iter().map(cell).collect()
    }
}

/// Whether a setting opens this machine's gate: a pass phrase, a session, a link, a key.
pub(crate) fn is_access(name: &str) -> bool {
    name.starts_with(ACCESS)
}

/// Whether a row does.
pub(crate) fn opens_the_gate(table: Table, cells: &[Cell]) -> bool {
    table.name == SETTINGS.name && matches!(cells, [Cell::Text(name), ..] if is_access(name))
}

fn bound<'q>(query: Query<'q, Sqlite, SqliteArguments>, cell: &Cell) -> Query<'q, Sqlite, SqliteArguments> {
    match cell {
        Cell::None => query.bind(None::<String>),
        Cell::Whole(number) => query.bind(*number),
        Cell::Text(text) => query.bind(text.clone()),
    }
}

impl Row<'_> {
    fn cell(&self, column: &str) -> &Cell {
        self.table.cell(self.cells, column).unwrap_or(&Cell::None)
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

/// What happened to a note.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum VersionKind {
    /// It was made.
    Made,
    /// It was changed.
    Edited,
    /// It was taken out of the answers.
    Withdrawn,
    /// It was put back.
    Restored,
}

impl VersionKind {
    /// The word it is kept under.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Made => "made",
            Self::Edited => "edited",
            Self::Withdrawn => "withdrawn",
            Self::Restored => "restored",
        }
    }

    pub(crate) fn from_word(word: &str) -> Option<Self> {
        [Self::Made, Self::Edited, Self::Withdrawn, Self::Restored].into_iter().find(|kind| kind.word() == word)
    }
}
