//! Records mended from a backup or an export of them: what is whole stays, and the rest is put back where it can be.

use crate::connect;
use crate::copy::{self, Access};
use crate::doctor::Report;
use crate::fault::{Fault, Wrong};
use crate::files;
use crate::hashes::{self, Before, Links, Sum};
use crate::migrations::{self, KNOWN};
use crate::restore::{self, at_rest};
use crate::rows::{Cells, TABLES, Table};
use crate::schema;
use crate::store::Store;
use jiff::Timestamp;
use snowhum_say::{Message, store_found as say};
use sqlx::Connection;
use sqlx::sqlite::SqliteConnection;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// Rows looked for one by one beyond those that a table says it holds, where it cannot be read through.
const BEYOND: i64 = 64;

/// What mending did.
#[derive(Debug, Clone, PartialEq)]
pub struct Mended {
    /// Where the records are as they were.
    pub kept_aside: Option<PathBuf>,
    /// Rows put back, by name.
    pub put_back: Vec<Message>,
    /// Rows that neither holds as they were kept, by name; and such as stand though nothing proves them any more.
    pub lost: Vec<Message>,
    /// On the mended records.
    pub report: Report,
}

impl Store {
    /// Mends records, which must be closed, from a backup or an export of them. Every row of theirs that is as it was
    /// kept stays; every other, and every one missing, is taken from there. What neither has is lost, and named. The
    /// records as they were are kept beside under a name with the time `at`.
    ///
    /// # Errors
    /// When either cannot be read, the file is not in order or is of other records, or the folder cannot be written.
    /// The records are as they were then.
    pub async fn mend(records: &Path, from: &Path, at: Timestamp) -> Result<Mended, Fault> {
        let (from, into) = at_rest(from, records)?;
        let (other, new) = (files::beside(&into, ".mending"), files::beside(&into, ".restoring"));
        let mended = async {
            let fetched = restore::fetch(&from, &other, Access::Left).await;
            fetched.map_err(|wrong| Fault::about(&from, wrong))?;
            let in_records = |wrong| Fault::about(&into, wrong);
            let found = merged(&into, &other).await.map_err(in_records)?;
            write(&new, &found.tables).await.map_err(in_records)?;
            let report = restore::refuse_ill(&new).await.map_err(in_records)?;
            let kept_aside = restore::place(&new, &into, at).await.map_err(in_records)?;
            Ok(Mended { kept_aside, put_back: found.put_back, lost: found.lost, report })
        };
        let mended = mended.await;
        // Copies are of no use any more; one that cannot be removed does no harm.
        let _ = files::remove(&other);
        mended.inspect_err(|_| drop(files::remove(&new)))
    }
}

/// The rows of all tables, and what became of those that were not whole.
#[derive(Default)]
struct Found {
    tables: Vec<(Table, Vec<Cells>)>,
    put_back: Vec<Message>,
    lost: Vec<Message>,
}

async fn merged(records: &Path, other: &Path) -> Result<Found, Wrong> {
    let (mut own, mut other) = (connect::looking(records).await?, connect::looking(other).await?);
    let read = async {
        if schema::form(&mut own).await? != KNOWN {
            return Err(Wrong::damaged(say::older()));
        }
        let mut found = Found::default();
        for table in TABLES {
            let rows = (readable(table, &mut own).await, table.read(KNOWN, &mut other).await?);
            let held = Sum::read(table, &mut own).await.ok().map(|sum| sum.held());
            match table.links {
                Links::Alone => found.take_alone(table, rows.0, rows.1, held),
                Links::Chain => found.take_chain(table, &rows.0, &rows.1, held)?,
            }
        }
        Ok(found)
    };
    let found = read.await;
    // Files that were only looked at: a fault of closing them changes nothing.
    let _ = (own.close().await, other.close().await);
    found
}

/// The rows of a table that can be read: all at once, else one by one.
async fn readable(table: Table, own: &mut SqliteConnection) -> Vec<Cells> {
    if let Ok(rows) = table.read_each(KNOWN, own).await {
        return rows.into_iter().flatten().collect();
    }
    let held = Sum::read(table, own).await.map_or(0, |sum| sum.held());
    let mut rows = Vec::new();
    for number in 1..=held + BEYOND {
        rows.extend(table.row_at(own, number).await.ok().flatten());
    }
    rows
}

impl Found {
    /// Rows that stand alone: one's own where it is as it was kept, else the other's of that key. What the other alone
    /// has is taken only where one's own lack some: it may be of a later day, or a setting taken away since.
    fn take_alone(&mut self, table: Table, own: Vec<Cells>, other: Vec<Cells>, held: Option<i64>) {
        let is_short = held.is_none_or(|held| held > own.len() as i64);
        let (whole, broken): (Vec<_>, Vec<_>) = own.into_iter().partition(|row| hashes::is_as_kept(table, row));
        let has = |rows: &[Cells], row: &Cells| rows.iter().any(|one| one.first() == row.first());
        let is_wanted = |row: &Cells| !has(&whole, row) && (is_short || !broken.is_empty());
        let back: Vec<Cells> = other.into_iter().filter(is_wanted).collect();
        let still = held.map_or(0, |held| held - (whole.len() + back.len() + broken.len()) as i64);
        if still > 0 {
            self.lost.push(say::missing(still, table.name));
        }
        self.lost.extend(broken.iter().filter(|row| !has(&back, row)).map(|row| table.called(row)));
        self.put_back.extend(back.iter().map(|row| table.called(row)));
        self.tables.push((table, whole.into_iter().chain(back).collect()));
    }

    /// A chain, row by row, as far as one's own went.
    fn take_chain(&mut self, table: Table, own: &[Cells], other: &[Cells], held: Option<i64>) -> Result<(), Wrong> {
        let by_serial = |rows: &[Cells]| -> BTreeMap<i64, Cells> {
            rows.iter().map(|row| (hashes::serial(row), row.clone())).collect()
        };
        let (own, other) = (by_serial(own), by_serial(other));
        let is_theirs = |serial: &&i64| held.is_none_or(|held| **serial <= held);
        let theirs = other.keys().filter(is_theirs);
        let serials: BTreeSet<i64> = own.keys().chain(theirs).copied().chain(1..=held.unwrap_or(0)).collect();
        let (mut rows, mut before, mut is_proved) = (Vec::new(), Before::default(), true);
        let mut gone = Vec::new();
        for serial in serials {
            let (mine, theirs) = (own.get(&serial), other.get(&serial));
            let is_whole = |row: &&Cells| before.leads_to(table, row) || (!is_proved && table.check(row).is_ok());
            let chosen = mine.filter(is_whole).or(theirs);
            refuse_stranger(table, mine.filter(is_whole), theirs)?;
            match chosen {
                Some(row) => {
                    if Some(row) != mine {
                        self.put_back.push(table.called(row));
                    } else if !before.leads_to(table, row) {
                        self.lost.push(say::unproved(table.called(row)));
                    }
                    before = before.next(table, row);
                    rows.push(row.clone());
                }
                None => gone.push((mine, Message::own(format!("{} {serial}", table.name)))),
            }
            is_proved = chosen.is_some();
            before = mine.map_or(before.clone(), |mine| before.clone().or(hashes::kept(mine).1));
        }
        // One that was only moved stands where it belongs.
        let is_moved = |one: &Option<&Cells>| rows.iter().any(|row| one.is_some_and(|one| one.first() == row.first()));
        self.lost.extend(gone.into_iter().filter(|(one, _)| !is_moved(one)).map(|(_, name)| name));
        hashes::chain_anew(table, &mut rows);
        self.tables.push((table, rows));
        Ok(())
    }
}

/// A row that is whole in both and not the same was written by two who went apart: one is no backup of the other.
fn refuse_stranger(table: Table, mine: Option<&Cells>, theirs: Option<&Cells>) -> Result<(), Wrong> {
    match (mine, theirs) {
        (Some(mine), Some(theirs)) if mine != theirs => {
            Err(Wrong::NotInOrder { what: say::stranger(table.called(mine)) })
        }
        _ => Ok(()),
    }
}

/// Writes the rows into a fresh store.
async fn write(new: &Path, tables: &[(Table, Vec<Cells>)]) -> Result<(), Wrong> {
    let mut fresh = connect::fresh(new).await?;
    let written = async {
        let mut writing = fresh.begin_with(migrations::BEGIN_WRITING).await?;
        migrations::make(&mut writing, KNOWN).await?;
        for (table, rows) in tables {
            for row in rows {
                table.add(KNOWN, &mut writing, row).await.map_err(|wrong| copy::misfit(*table, row, wrong))?;
            }
            Sum::of(rows).write(*table, &mut writing).await?;
        }
        Ok(writing.commit().await?)
    };
    let written: Result<(), Wrong> = written.await;
    fresh.close().await?;
    written?;
    Ok(files::settle(new)?)
}
