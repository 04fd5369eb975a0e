//! What is wrong with a sheet, all of it at once.

use crate::wrong::Wrong;
use serde::Serialize;
use std::fmt;

/// Most faults that are listed, and most rows that are named of each.
const LISTED: usize = 20;
const ROWS: usize = 5;

/// One fault of a sheet, in every row that has it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SheetFault {
    /// The rows; none where it is of the whole sheet.
    pub rows: Vec<usize>,
    /// The column's heading.
    pub column: String,
    /// What stands in the cell.
    pub cell: String,
    /// What is wrong.
    pub problem: String,
    /// What would be right.
    pub remedy: String,
}

/// Every fault of a sheet, of which nothing is kept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SheetFaults {
    /// The file.
    pub file: String,
    /// The faults; never empty.
    pub faults: Vec<SheetFault>,
    /// How many more there are than are listed.
    pub more: usize,
    /// What the columns were taken for, with what would make them readable: given as `--columns` it is read so.
    pub columns: Option<String>,
}

impl SheetFaults {
    pub(super) fn new(file: &str) -> Self {
        Self { file: file.to_owned(), faults: Vec::new(), more: 0, columns: None }
    }

    /// One that is of the whole sheet.
    pub(super) fn whole(file: &str, wrong: Wrong) -> Self {
        let mut faults = Self::new(file);
        faults.add(None, "", "", wrong);
        faults
    }

    /// Adds a fault, or its row to one that is there just so.
    pub(super) fn add(&mut self, row: Option<usize>, column: &str, cell: &str, wrong: Wrong) {
        let cell = shown(cell);
        let same =
            |fault: &&mut SheetFault| fault.column == column && fault.cell == cell && fault.problem == wrong.problem;
        if let Some(fault) = self.faults.iter_mut().find(same) {
            fault.rows.extend(row);
        } else if self.faults.len() < LISTED {
            let Wrong { problem, remedy } = wrong;
            let rows = row.into_iter().collect();
            self.faults.push(SheetFault { rows, column: column.to_owned(), cell, problem, remedy });
        } else {
            self.more += 1;
        }
    }
}

impl fmt::Display for SheetFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.rows.is_empty() {
            write!(f, "{}: ", rows(&self.rows))?;
        }
        if !self.column.is_empty() {
            write!(f, "{}: ", self.column)?;
        }
        // Most problems begin with the cell.
        if !self.cell.is_empty() && !self.problem.contains(&self.cell) {
            write!(f, "\"{}\": ", self.cell)?;
        }
        write!(f, "{}", self.problem)
    }
}

impl fmt::Display for SheetFaults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, fault) in self.faults.iter().enumerate() {
            let line = if at == 0 { "" } else { "\n" };
            write!(f, "{line}{}: {fault}\n  hint: {}", self.file, fault.remedy)?;
        }
        if self.more > 0 {
            write!(f, "\nand {} more of other kinds", self.more)?;
        }
        match &self.columns {
            Some(columns) => write!(f, "\nNothing was kept. To say what the columns are:\n  --columns \"{columns}\""),
            None => write!(f, "\nNothing was kept."),
        }
    }
}

impl std::error::Error for SheetFaults {}

/// Rows in words: `row 4`, `rows 4, 5 and 12 more`.
pub(super) fn rows(rows: &[usize]) -> String {
    let named: Vec<String> = rows.iter().take(ROWS).map(usize::to_string).collect();
    let more = rows.len().saturating_sub(ROWS);
    match (named.as_slice(), more) {
        ([one], _) => format!("row {one}"),
        (_, 0) => format!("rows {}", named.join(", ")),
        _ => format!("rows {} and {more} more", named.join(", ")),
    }
}

/// A cell short enough for a message.
pub(super) fn shown(cell: &str) -> String {
    const LETTERS: usize = 40;
    let plain = cell.trim().chars().map(|letter| if letter.is_control() { ' ' } else { letter });
    let mut shown: String = plain.clone().take(LETTERS).collect();
    if plain.count() > LETTERS {
        shown.push('…');
    }
    shown
}
