//! Everything out of a store as JSON, and into an empty one.

use crate::body;
use crate::doctor;
use crate::fault::{Fault, Wrong};
use crate::hashes::{self, Links, SINCE, Sum};
use crate::migrations::KNOWN;
use crate::rows::{Cell, Cells, Kind, TABLES, Table, opens_the_gate};
use crate::store::Store;
use jiff::tz::TimeZone;
use serde_json::value::RawValue;
use snowhum_apiary::YEARS;
use snowhum_say::{Message, store_found as say};
use sqlx::sqlite::SqliteConnection;
use std::collections::BTreeMap;
use std::io::{self, Read, Write};

/// What the export calls itself, with the form of the store after it.
const SCHEMA: &str = "snowhum.store/";
/// Largest export that is read, bytes: some hundred thousand notes.
const LARGEST: u64 = 512 << 20;
/// Of which so much is looked at to tell an export from something else, bytes.
const LEAD: u64 = 64;

type Object = BTreeMap<String, Box<RawValue>>;

impl Store {
    /// Writes everything, one row a line, in an order that is always the same: what is read in elsewhere is written
    /// out there to the same bytes.
    ///
    /// # Errors
    /// When the store cannot be read or is damaged, or the writer refuses.
    pub async fn export_json(&self, mut to: impl Write) -> Result<(), Fault> {
        let export = async {
            let mut reading = self.reading().await?;
            let mut text = format!("{{\"schema\":\"{SCHEMA}{KNOWN}\"");
            for table in TABLES {
                let rows = table.read(KNOWN, &mut reading).await?;
                let rows = rows.iter().filter(|row| !opens_the_gate(table, row));
                let rows: Result<Vec<String>, Wrong> = rows.map(|row| object(table, row)).collect();
                text += &format!(",\n\"{}\":[\n{}\n]", table.name, rows?.join(",\n"));
            }
            text += "}\n";
            to.write_all(text.as_bytes())?;
            Ok(to.flush()?)
        };
        self.named(export).await
    }

    /// Reads an export into this store, which must be empty. All of it or nothing.
    ///
    /// # Errors
    /// When the store holds records, the export is not in order or of a newer form, or the store cannot be written.
    pub async fn import_json(&self, from: impl Read) -> Result<(), Fault> {
        let import = async {
            let mut writing = self.writing().await?;
            for table in TABLES {
                let rows = table.read(KNOWN, &mut writing).await?;
                if rows.iter().any(|row| !opens_the_gate(table, row)) {
                    return Err(Wrong::NotEmpty);
                }
            }
            take_in(from, &mut writing).await?;
            Ok(writing.commit().await?)
        };
        self.named(import).await
    }
}

/// Whether a file begins as an export does.
pub(crate) fn is_export(from: impl Read) -> io::Result<bool> {
    let mut begin = Vec::new();
    from.take(LEAD).read_to_end(&mut begin)?;
    Ok(begin.iter().find(|byte| !byte.is_ascii_whitespace()) == Some(&b'{'))
}

/// Takes the rows of an export into empty tables.
pub(crate) async fn take_in(from: impl Read, writing: &mut SqliteConnection) -> Result<(), Wrong> {
    for (table, rows) in tables(from)? {
        let mut sum = Sum::read(table, writing).await?;
        for (number, row) in (1..).zip(rows) {
            sum.add(hashes::kept(&row).1);
            table.add(KNOWN, writing, &row).await.map_err(|wrong| refused(table, number, wrong))?;
        }
        sum.write(table, writing).await?;
    }
    match doctor::broken_links(writing).await? {
        Some(what) => Err(unreadable(say::export(), what)),
        None => Ok(()),
    }
}

/// A row as a JSON object.
fn object(table: Table, cells: &[Cell]) -> Result<String, Wrong> {
    let damaged = |error: serde_json::Error| Wrong::damaged(format!("a row of {} is no JSON ({error})", table.name));
    let fields: Result<Vec<String>, Wrong> = table
        .columns(KNOWN)
        .iter()
        .zip(cells)
        .map(|((name, kind), cell)| {
            let value = match (kind, cell) {
                (_, Cell::None) => "null".to_owned(),
                (_, Cell::Whole(number)) => number.to_string(),
                (Kind::Body, Cell::Text(text)) => {
                    serde_json::from_str::<&RawValue>(text).map_err(damaged)?.get().to_owned()
                }
                (_, Cell::Text(text)) => serde_json::to_string(text).map_err(damaged)?,
            };
            Ok(format!("\"{name}\":{value}"))
        })
        .collect();
    Ok(format!("{{{}}}", fields?.join(",")))
}

/// All tables of an export, checked.
fn tables(from: impl Read) -> Result<Vec<(Table, Vec<Cells>)>, Wrong> {
    let mut text = String::new();
    let read = from.take(LARGEST + 1).read_to_string(&mut text);
    read.map_err(|error| match error.kind() {
        io::ErrorKind::InvalidData => unreadable(say::export(), say::no_text()),
        _ => Wrong::from(error),
    })?;
    if text.len() as u64 > LARGEST {
        return Err(unreadable(say::export(), say::large(LARGEST >> 20)));
    }
    let mut parts: Object =
        serde_json::from_str(&text).map_err(|error| unreadable(say::export(), error.to_string()))?;
    let form = form(parts.remove("schema"))?;
    let mut tables = Vec::new();
    for table in TABLES {
        let missing = || unreadable(say::export(), say::has_no(table.name));
        let rows = parts.remove(table.name).ok_or_else(missing)?;
        tables.push((table, rows_of(table, form, &rows)?));
    }
    match parts.keys().next() {
        Some(unknown) => Err(unreadable(say::export(), say::unknown(format!("{unknown:?}")))),
        None => Ok(tables),
    }
}

/// The form of the store that an export is of.
fn form(schema: Option<Box<RawValue>>) -> Result<i64, Wrong> {
    let schema: Option<String> = schema.and_then(|schema| serde_json::from_str(schema.get()).ok());
    let form = schema.as_deref().and_then(|schema| schema.strip_prefix(SCHEMA)?.parse::<i64>().ok());
    match form {
        Some(found) if found > KNOWN => Err(Wrong::Newer { found, known: KNOWN }),
        Some(form @ 1..) => Ok(form),
        _ => Err(unreadable("schema", say::no_schema(format!("{SCHEMA}{KNOWN}")))),
    }
}

/// The rows of a table with their hashes, which must be right where the export has them.
fn rows_of(table: Table, form: i64, rows: &RawValue) -> Result<Vec<Cells>, Wrong> {
    let rows: Vec<Object> =
        serde_json::from_str(rows.get()).map_err(|error| unreadable(table.name, error.to_string()))?;
    let (mut read, mut before) = (Vec::new(), String::new());
    for (number, row) in (1..).zip(rows) {
        let mut cells = cells_of(table, form, &format!("{} {number}", table.name), row)?;
        table.check(&cells).map_err(|wrong| refused(table, number, wrong))?;
        let hash = hashes::of(table, &before, if form < SINCE { &cells } else { hashes::kept(&cells).0 });
        if form < SINCE {
            cells.push(Cell::Text(hash.clone()));
        } else if hashes::kept(&cells).1 != hash {
            return Err(unreadable(format!("{} {number}", table.name), say::changed_or_gap(table.called(&cells))));
        }
        if table.links == Links::Chain {
            before = hash;
        }
        read.push(cells);
    }
    Ok(read)
}

fn cells_of(table: Table, form: i64, at_row: &str, mut row: Object) -> Result<Cells, Wrong> {
    let mut cells = Vec::new();
    for (name, kind) in table.columns(form) {
        let missing = || unreadable(at_row, say::has_no(*name));
        let value = row.remove(*name).ok_or_else(missing)?;
        cells.push(cell(*kind, &value).map_err(|error| unreadable(at_row, format!("{name}: {error}")))?);
    }
    if let Some(unknown) = row.keys().next() {
        return Err(unreadable(at_row, say::unknown(format!("{unknown:?}"))));
    }
    if let (Links::Chain, Some(Cell::Whole(at))) = (table.links, table.cell(&cells, "at"))
        && !body::time(*at).is_ok_and(|at| YEARS.contains(&at.to_zoned_datetime(TimeZone::UTC).year()))
    {
        return Err(unreadable(at_row, say::year()));
    }
    if opens_the_gate(table, &cells) {
        return Err(unreadable(at_row, say::opens_gate()));
    }
    Ok(cells)
}

fn cell(kind: Kind, value: &RawValue) -> Result<Cell, serde_json::Error> {
    let value = value.get();
    Ok(match kind {
        Kind::Whole => Cell::Whole(serde_json::from_str(value)?),
        Kind::WholeOrNone => serde_json::from_str::<Option<i64>>(value)?.map_or(Cell::None, Cell::Whole),
        Kind::Text => Cell::Text(serde_json::from_str(value)?),
        Kind::TextOrNone => serde_json::from_str::<Option<String>>(value)?.map_or(Cell::None, Cell::Text),
        Kind::Body => Cell::Text(value.to_owned()),
    })
}

/// A row that cannot be taken in is a fault of the export; a full disk is not.
fn refused(table: Table, number: u64, wrong: Wrong) -> Wrong {
    match wrong {
        Wrong::Refused { what } => unreadable(format!("{} {number}", table.name), what),
        Wrong::Damaged { what } | Wrong::Unfit { what, .. } => unreadable(format!("{} {number}", table.name), what),
        other => other,
    }
}

fn unreadable(at: impl Into<Message>, what: impl Into<Message>) -> Wrong {
    Wrong::Unreadable { at: Box::new(at.into()), what: what.into(), form: "export" }
}
