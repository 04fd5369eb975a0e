//! Notes out of a table as a spreadsheet keeps it: each row one look at one hive, each column one thing that was seen.

mod columns;
mod days;
mod headings;
mod hive_meant;
mod incoming;
mod role;
mod row;
mod wrong;

pub use columns::SheetColumns;
pub use incoming::{AskedRows, Incoming, IncomingRow};
pub use wrong::{SheetFault, SheetFaults};

use crate::{Apiary, Note};
use columns::Layout;
use row::Reader;
use snowhum_say::Message;
use snowhum_units::Bare;

/// A table of texts, each as its keeper saw it in the cell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Table {
    /// The file's name, and the sheet's if it has several: for messages.
    pub file: String,
    /// Rows, those with nothing in them left out.
    pub rows: Vec<TableRow>,
}

/// A row of a table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TableRow {
    /// Its number in the sheet, from 1; of a text file its line.
    pub number: usize,
    /// Its cells; rows may be of different lengths.
    pub cells: Vec<String>,
}

impl Table {
    /// Most rows that are read: thirty hives looked at every week for six years.
    pub const MOST_ROWS: usize = 10_000;
    /// Most columns, several times those of a wide table.
    pub const MOST_COLUMNS: usize = 200;
    /// Most letters of a cell: those of the longest note.
    pub const MOST_LETTERS: usize = 800;
}

/// What a sheet says, before anything is asked about it.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetReading {
    /// What its columns were taken for, as it may be given again.
    pub columns: String,
    /// What is to be said about the reading: columns and cells that no sum reads.
    pub said: Vec<Message>,
    /// The notes, each with its row.
    pub notes: Vec<(usize, Note)>,
}

impl Apiary {
    /// Reads notes of this yard out of a table: `columns` says what its columns are, and where it does not, their
    /// headings do. Numbers without a unit are as `bare` says.
    ///
    /// # Errors
    /// Every row that cannot be read, with what would be right and the columns as they were taken.
    pub fn read_sheet(
        &self,
        table: &Table,
        columns: Option<&SheetColumns>,
        bare: Bare,
    ) -> Result<SheetReading, SheetFaults> {
        let layout = Layout::of(table, columns, self)?;
        let mut reader = Reader::new(self, table, &layout, bare);
        for row in &table.rows[layout.below..] {
            reader.row(row);
        }
        reader.done()
    }
}

#[cfg(test)]
mod tests;
