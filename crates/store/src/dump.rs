//! Everything out of a store as JSON, and into an empty one.

use crate::doctor;
use crate::fault::{Fault, Wrong};
use crate::migrations::KNOWN;
use crate::rows::{Cell, Cells, Kind, TABLES, Table};
use crate::store::Store;
use serde_json::value::RawValue;
use std::collections::BTreeMap;
use std::io::{self, Read, Write};

/// What the export calls itself, with the form of the store after it.
const SCHEMA: &str = "snowhum.store/";
/// Largest export that is read, bytes: some hundred thousand notes.
const LARGEST: u64 = 512 << 20;
const RIGHT: &str = "read in an export as `export` wrote it";

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
                let rows = table.read(&mut reading).await?;
                let rows: Result<Vec<String>, Wrong> = rows.iter().map(|row| object(table, row)).collect();
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
            let tables = tables(from)?;
            let mut writing = self.writing().await?;
            for table in TABLES {
                if !table.read(&mut writing).await?.is_empty() {
                    return Err(Wrong::NotEmpty);
                }
            }
            for (table, rows) in tables {
                for (number, cells) in (1..).zip(rows) {
                    let add = table.add(&mut writing, cells).await;
                    add.map_err(|wrong| refused(table, number, wrong))?;
                }
            }
            if let Some(what) = doctor::broken_links(&mut writing).await? {
                return Err(unreadable("the export", what));
            }
            Ok(writing.commit().await?)
        };
        self.named(import).await
    }
}

/// A row as a JSON object.
fn object(table: Table, cells: &[Cell]) -> Result<String, Wrong> {
    let damaged = |error: serde_json::Error| Wrong::damaged(format!("a row of {} is no JSON ({error})", table.name));
    let fields: Result<Vec<String>, Wrong> = table
        .columns
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
        io::ErrorKind::InvalidData => unreadable("the export", "it is no text".to_owned()),
        _ => Wrong::from(error),
    })?;
    if text.len() as u64 > LARGEST {
        return Err(unreadable("the export", format!("it is larger than {} MB", LARGEST >> 20)));
    }
    let mut parts: Object = serde_json::from_str(&text).map_err(|error| unreadable("the export", error.to_string()))?;
    check_schema(parts.remove("schema"))?;
    let mut tables = Vec::new();
    for table in TABLES {
        let missing = || unreadable("the export", format!("it has no {}", table.name));
        let rows = parts.remove(table.name).ok_or_else(missing)?;
        tables.push((table, rows_of(table, &rows)?));
    }
    match parts.keys().next() {
        Some(unknown) => Err(unreadable("the export", format!("it holds {unknown:?}, which no store has"))),
        None => Ok(tables),
    }
}

fn check_schema(schema: Option<Box<RawValue>>) -> Result<(), Wrong> {
    let schema: Option<String> = schema.and_then(|schema| serde_json::from_str(schema.get()).ok());
    let form = schema.as_deref().and_then(|schema| schema.strip_prefix(SCHEMA)?.parse::<i64>().ok());
    match form {
        Some(found) if found > KNOWN => Err(Wrong::Newer { found, known: KNOWN }),
        Some(KNOWN) => Ok(()),
        _ => Err(unreadable("schema", format!("it does not say {SCHEMA}{KNOWN}"))),
    }
}

fn rows_of(table: Table, rows: &RawValue) -> Result<Vec<Cells>, Wrong> {
    let rows: Vec<Object> =
        serde_json::from_str(rows.get()).map_err(|error| unreadable(table.name, error.to_string()))?;
    let mut read = Vec::new();
    for (number, mut row) in (1..).zip(rows) {
        let at = format!("{} {number}", table.name);
        let mut cells = Vec::new();
        for (name, kind) in table.columns {
            let missing = || unreadable(&at, format!("it has no {name}"));
            let value = row.remove(*name).ok_or_else(missing)?;
            cells.push(cell(*kind, &value).map_err(|error| unreadable(&at, format!("{name}: {error}")))?);
        }
        if let Some(unknown) = row.keys().next() {
            return Err(unreadable(&at, format!("it holds {unknown:?}, which no row of it has")));
        }
        table.check(&cells).map_err(|wrong| refused(table, number, wrong))?;
        read.push(cells);
    }
    Ok(read)
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
        Wrong::Damaged { what } | Wrong::Unfit { what, .. } | Wrong::Refused { what } => {
            unreadable(format!("{} {number}", table.name), what)
        }
        other => other,
    }
}

fn unreadable(at: impl Into<String>, what: String) -> Wrong {
    Wrong::Unreadable { at: at.into(), what, right: RIGHT }
}
