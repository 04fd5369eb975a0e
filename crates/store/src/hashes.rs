//! A hash in each row, so that a row that was changed, lost or moved behind the program's back is noticed and named.
//!
//! A note's version is hashed with the hash of the version before it: the versions are one chain. Rows of the other
//! tables, which are brought up to date, stand each alone. Each table's rows are counted and their hashes summed.
//! Whoever can write the file can write the hashes too: this notices disks and accidents, and no forger.

use crate::fault::Wrong;
use crate::migrations::KNOWN;
use crate::rows::{Cell, Cells, NOTE_VERSIONS, TABLES, Table};
use sha2::{Digest, Sha256};
use snowhum_say::{Message, store_found as found};
use sqlx::sqlite::SqliteConnection;
use std::fmt::Write;

/// The form of the store from which on rows have hashes.
pub(crate) const SINCE: i64 = 2;
/// What is hashed begins so.
const BEGIN: &[u8] = b"snowhum.row/1";
/// Bytes of a hash.
const BYTES: usize = 32;

/// What a row is hashed with beside itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Links {
    /// Nothing.
    Alone,
    /// The hash of the row before it.
    Chain,
}

/// SHA-256 of a row without its hash, and of the hash before it, which is empty for a first row or one alone.
pub(crate) fn of(table: Table, before: &str, cells: &[Cell]) -> String {
    let mut hasher = Sha256::new();
    for text in [BEGIN, table.name.as_bytes(), before.as_bytes()] {
        add_text(&mut hasher, text);
    }
    for cell in cells {
        match cell {
            Cell::None => hasher.update([0]),
            Cell::Whole(number) => {
                hasher.update([1]);
                hasher.update(number.to_le_bytes());
            }
            Cell::Text(text) => {
                hasher.update([2]);
                add_text(&mut hasher, text.as_bytes());
            }
        }
    }
    hex(&hasher.finalize())
}

/// With its length before it, so that no two rows are hashed from the same bytes.
fn add_text(hasher: &mut Sha256, text: &[u8]) {
    hasher.update((text.len() as u64).to_le_bytes());
    hasher.update(text);
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::with_capacity(2 * bytes.len()), |mut text, byte| {
        // Writing to a text does not fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// Keeps a row that stands alone under its key: a new one, or in place of the one there is.
pub(crate) async fn keep(table: Table, writing: &mut SqliteConnection, mut cells: Cells) -> Result<(), Wrong> {
    let hash = of(table, "", &cells);
    let old = table.row(writing, &cells[0]).await?;
    let mut sum = Sum::read(table, writing).await?;
    if let Some(old) = &old {
        if kept(old).1 == hash {
            return Ok(());
        }
        sum.take(kept(old).1);
    }
    sum.add(&hash);
    cells.push(Cell::Text(hash));
    match old {
        Some(_) => table.change(writing, &cells).await?,
        None => table.add(KNOWN, writing, &cells).await?,
    }
    sum.write(table, writing).await
}

/// Takes a row away; nothing happens if it is not there.
pub(crate) async fn forget(table: Table, writing: &mut SqliteConnection, key: &Cell) -> Result<(), Wrong> {
    let Some(old) = table.row(writing, key).await? else { return Ok(()) };
    let mut sum = Sum::read(table, writing).await?;
    sum.take(kept(&old).1);
    table.remove(writing, key).await?;
    sum.write(table, writing).await
}

/// Adds a version after all others; `cells` makes it for its serial.
pub(crate) async fn append(writing: &mut SqliteConnection, cells: impl FnOnce(i64) -> Cells) -> Result<(), Wrong> {
    let last = "SELECT serial, hash FROM note_versions ORDER BY serial DESC LIMIT 1";
    let last: Option<(i64, String)> = sqlx::query_as(last).fetch_optional(&mut *writing).await?;
    let (serial, before) = last.unwrap_or_default();
    let mut cells = cells(serial + 1);
    let hash = of(NOTE_VERSIONS, &before, &cells);
    let mut sum = Sum::read(NOTE_VERSIONS, writing).await?;
    sum.add(&hash);
    cells.push(Cell::Text(hash));
    NOTE_VERSIONS.add(KNOWN, writing, &cells).await?;
    sum.write(NOTE_VERSIONS, writing).await
}

/// Gives every row of a store its hash, and every table its sum: how a store of an older form is brought on.
pub(crate) async fn seal(writing: &mut SqliteConnection) -> Result<(), Wrong> {
    for table in TABLES {
        let (mut sum, mut before) = (Sum::default(), String::new());
        for mut cells in table.read(SINCE - 1, writing).await? {
            let hash = of(table, &before, &cells);
            sum.add(&hash);
            cells.push(Cell::Text(hash.clone()));
            table.change(writing, &cells).await?;
            if table.links == Links::Chain {
                before = hash;
            }
        }
        sum.write(table, writing).await?;
    }
    Ok(())
}

/// Chains rows anew, as after some were lost; a chain that is whole stays as it is.
pub(crate) fn chain_anew(table: Table, rows: &mut [Cells]) {
    let mut before = String::new();
    for row in rows {
        before = of(table, &before, kept(row).0);
        if let Some(hash) = row.last_mut() {
            *hash = Cell::Text(before.clone());
        }
    }
}

/// A row apart from its hash, and the hash.
pub(crate) fn kept(cells: &[Cell]) -> (&[Cell], &str) {
    match cells.split_last() {
        Some((Cell::Text(hash), row)) => (row, hash),
        _ => (cells, ""),
    }
}

/// What of the rows of a table is not as it was kept, each in words.
pub(crate) async fn faults(
    table: Table,
    rows: &[Cells],
    reading: &mut SqliteConnection,
) -> Result<Vec<Message>, Wrong> {
    let mut faults = match table.links {
        Links::Alone => changed(table, rows),
        Links::Chain => broken(table, rows),
    };
    if faults.is_empty() {
        faults.extend(Sum::read(table, reading).await?.fault(table, rows));
    }
    Ok(faults)
}

/// Rows that say something else than was kept.
fn changed(table: Table, rows: &[Cells]) -> Vec<Message> {
    let changed = rows.iter().filter(|row| !is_as_kept(table, row));
    changed.map(|row| found::changed(table.called(row))).collect()
}

/// The same along a chain, where a row that is gone is missed by the one after it.
fn broken(table: Table, rows: &[Cells]) -> Vec<Message> {
    let mut faults = Vec::new();
    let (mut before, mut last) = (Before::default(), 0);
    for row in rows {
        if !before.leads_to(table, row) {
            faults.push(match serial(row) - last {
                1 => found::moved(table.called(row)),
                gap => found::gap(table.called(row), gap - 1),
            });
        }
        before = before.next(table, row);
        last = serial(row);
    }
    faults
}

/// What may stand before a row of a chain: the hash that the row before was kept with, and the one it should have been
/// kept with. Where they differ either the row or its hash was changed, and the next row says which.
#[derive(Debug, Clone)]
pub(crate) struct Before(Vec<String>);

impl Default for Before {
    fn default() -> Self {
        Self(vec![String::new()])
    }
}

impl Before {
    /// Whether a row stands where it was kept, as it was kept.
    pub(crate) fn leads_to(&self, table: Table, row: &[Cell]) -> bool {
        let (cells, hash) = kept(row);
        self.0.iter().any(|before| of(table, before, cells) == hash)
    }

    /// What stands before the row after this one.
    pub(crate) fn next(&self, table: Table, row: &[Cell]) -> Self {
        let (cells, hash) = kept(row);
        let should_be = self.0.iter().map(|before| of(table, before, cells));
        Self(std::iter::once(hash.to_owned()).chain(should_be.take(1)).collect())
    }

    /// One more that may.
    pub(crate) fn or(mut self, hash: &str) -> Self {
        self.0.push(hash.to_owned());
        self
    }
}

/// Whether a row that stands alone is as it was kept.
pub(crate) fn is_as_kept(table: Table, row: &[Cell]) -> bool {
    Before::default().leads_to(table, row)
}

/// The serial of a version.
pub(crate) fn serial(row: &[Cell]) -> i64 {
    match row {
        [_, Cell::Whole(serial), ..] => *serial,
        _ => 0,
    }
}

/// How many rows a table holds, and all their hashes in one: bit by bit, an odd number of ones is a one.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Sum {
    held: i64,
    sum: [u8; BYTES],
}

impl Sum {
    /// As kept beside the table.
    pub(crate) async fn read(table: Table, reading: &mut SqliteConnection) -> Result<Self, Wrong> {
        let row = "SELECT held, sum FROM sums WHERE name = $1";
        let row: Option<(i64, String)> = sqlx::query_as(row).bind(table.name).fetch_optional(reading).await?;
        let lost = || Wrong::damaged(format!("the sum of {} cannot be read", table.name));
        let (held, sum) = row.ok_or_else(lost)?;
        Ok(Self { held, sum: bytes(&sum).ok_or_else(lost)? })
    }

    /// How many rows there should be.
    pub(crate) fn held(&self) -> i64 {
        self.held
    }

    /// Of these rows.
    pub(crate) fn of(rows: &[Cells]) -> Self {
        rows.iter().fold(Self::default(), |mut sum, row| {
            sum.add(kept(row).1);
            sum
        })
    }

    pub(crate) async fn write(&self, table: Table, writing: &mut SqliteConnection) -> Result<(), Wrong> {
        let row = "INSERT INTO sums (name, held, sum) VALUES ($1, $2, $3) \
                   ON CONFLICT (name) DO UPDATE SET held = excluded.held, sum = excluded.sum";
        sqlx::query(row).bind(table.name).bind(self.held).bind(hex(&self.sum)).execute(writing).await?;
        Ok(())
    }

    /// A row more.
    pub(crate) fn add(&mut self, hash: &str) {
        self.held += 1;
        self.turn(hash);
    }

    /// A row fewer.
    pub(crate) fn take(&mut self, hash: &str) {
        self.held -= 1;
        self.turn(hash);
    }

    /// A hash that is none counts for nothing here: its row is found ill by itself.
    fn turn(&mut self, hash: &str) {
        let hash = bytes(hash).unwrap_or_default();
        self.sum.iter_mut().zip(hash).for_each(|(sum, byte)| *sum ^= byte);
    }

    fn fault(&self, table: Table, rows: &[Cells]) -> Option<Message> {
        let (sum, name) = (Self::of(rows), table.name);
        let missing = self.held - sum.held;
        match missing {
            _ if *self == sum => None,
            0 => Some(found::not_kept(name)),
            1.. if table.links == Links::Chain => Some(found::last_missing(name, missing)),
            1.. => Some(found::missing(missing, name)),
            _ => Some(found::strange(-missing, name)),
        }
    }
}

fn bytes(hex: &str) -> Option<[u8; BYTES]> {
    // As written here: a digit in a capital letter is one that was changed.
    let digit = |digit: char| u8::try_from(digit.to_digit(16).filter(|_| !digit.is_ascii_uppercase())?).ok();
    let digits: Option<Vec<u8>> = hex.chars().map(digit).collect();
    let pairs: Vec<u8> = digits?.chunks(2).map(|pair| pair.iter().fold(0, |byte, digit| byte << 4 | digit)).collect();
    (hex.len() == 2 * BYTES).then(|| pairs.try_into().ok())?
}

#[cfg(test)]
mod tests {
    use super::{Sum, broken, found, of};
    use crate::rows::{Cell, Cells, NOTE_VERSIONS, SETTINGS};

    fn chain(length: i64) -> Vec<Cells> {
        let mut before = String::new();
        let row = |serial: i64| {
            let mut cells = vec![Cell::Text(format!("v{serial}")), Cell::Whole(serial), Cell::Text("x".to_owned())];
            before = of(NOTE_VERSIONS, &before, &cells);
            cells.push(Cell::Text(before.clone()));
            cells
        };
        (1..=length).map(row).collect()
    }

    #[test]
    fn no_two_rows_are_hashed_from_the_same_bytes() {
        let text = |text: &str| Cell::Text(text.to_owned());
        let all = [
            of(SETTINGS, "", &[text("ab"), text("c")]),
            of(SETTINGS, "", &[text("a"), text("bc")]),
            of(SETTINGS, "ab", &[text("c")]),
            of(SETTINGS, "", &[text("ab"), text("c"), Cell::None]),
            of(SETTINGS, "", &[text("ab"), Cell::Whole(99)]),
            of(NOTE_VERSIONS, "", &[text("ab"), text("c")]),
        ];
        for (at, one) in all.iter().enumerate() {
            assert!(!all[at + 1..].contains(one), "{at}");
        }
    }

    #[test]
    fn a_changed_version_is_named_alone_and_a_missing_one_by_the_next() {
        assert!(broken(NOTE_VERSIONS, &chain(5)).is_empty());
        let mut changed = chain(5);
        changed[2][2] = Cell::Text("y".to_owned());
        assert_eq!(broken(NOTE_VERSIONS, &changed), [found::moved("note_versions 3 (v3)")]);
        let mut hash_changed = chain(5);
        hash_changed[2][3] = Cell::Text("0".repeat(64));
        assert_eq!(broken(NOTE_VERSIONS, &hash_changed), [found::moved("note_versions 3 (v3)")]);
        let mut missing = chain(5);
        missing.drain(1..3);
        assert_eq!(broken(NOTE_VERSIONS, &missing), [found::gap("note_versions 4 (v4)", 2)]);
    }

    #[test]
    fn versions_that_changed_places_are_named() {
        let mut rows = chain(5);
        rows[1][1] = Cell::Whole(3);
        rows[2][1] = Cell::Whole(2);
        rows.swap(1, 2);
        let faults = broken(NOTE_VERSIONS, &rows);
        assert!(faults.contains(&found::moved("note_versions 3 (v2)")), "{faults:?}");
        assert!(faults.contains(&found::moved("note_versions 2 (v3)")), "{faults:?}");
    }

    #[test]
    fn a_sum_is_read_as_it_is_written_and_in_no_other_way() {
        let sum = super::hex(&[0xab; super::BYTES]);
        assert_eq!(super::bytes(&sum), Some([0xab; super::BYTES]));
        for other in [sum.to_uppercase(), sum[1..].to_owned(), format!("{sum}0"), sum.replacen('a', "g", 1)] {
            assert_eq!(super::bytes(&other), None, "{other}");
        }
    }

    #[test]
    fn the_last_ones_missing_are_counted() {
        let rows = chain(5);
        let fault = Sum::of(&rows).fault(NOTE_VERSIONS, &rows[..3]);
        assert_eq!(fault, Some(found::last_missing("note_versions", 2)));
        assert_eq!(Sum::of(&rows).fault(NOTE_VERSIONS, &rows), None);
    }
}
