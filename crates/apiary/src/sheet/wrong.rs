//! What is wrong with a sheet, all of it at once.

use crate::wrong::Wrong;
use serde::Serialize;
use snowhum_say::{Message, Tongue, fault, sheet_fault as say};
use std::fmt;

/// Most faults that are listed, and most rows that are named of each.
const LISTED: usize = 20;
const ROWS: usize = 5;

/// One fault of a sheet, in every row that has it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SheetFault {
    /// The rows; none where it is of the whole sheet.
    pub rows: Vec<usize>,
    /// The column's heading.
    pub column: String,
    /// What stands in the cell.
    pub cell: String,
    /// What is wrong.
    pub problem: Message,
    /// What would be right.
    pub remedy: Message,
}

/// Every fault of a sheet, of which nothing is kept.
#[derive(Debug, Clone, PartialEq, Serialize)]
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

impl SheetFault {
    /// What is wrong, in which rows and which column.
    #[must_use]
    pub fn message(&self) -> Message {
        // Most problems begin with the cell.
        let names_cell = self.cell.is_empty() || Tongue::BRITISH.say(&self.problem).contains(&self.cell);
        let cell = (!names_cell).then(|| fault::quoted(&self.cell));
        let column = (!self.column.is_empty()).then(|| Message::from(&self.column));
        let rows = (!self.rows.is_empty()).then(|| rows(&self.rows));
        [cell, column, rows].into_iter().flatten().fold(self.problem.clone(), |says, place| fault::at(place, says))
    }
}

impl SheetFaults {
    /// Each with what would be right, and what to say of the columns.
    #[must_use]
    pub fn said(&self, tongue: Tongue) -> String {
        let one = |fault: &SheetFault| {
            let [says, hint] = [fault.message(), fault::hint(&fault.remedy)].map(|message| tongue.say(&message));
            format!("{}: {says}\n  {hint}", self.file)
        };
        let more = (self.more > 0).then(|| tongue.say(&say::more_kinds(self.more)));
        let kept = tongue.say(&say::none_kept());
        let columns = self.columns.as_ref();
        let columns = columns.map(|columns| format!("{}\n  --columns \"{columns}\"", tongue.say(&say::say_columns())));
        let end = [Some(kept), columns].into_iter().flatten().collect::<Vec<_>>().join(" ");
        self.faults.iter().map(one).chain(more).chain([end]).collect::<Vec<_>>().join("\n")
    }
}

impl fmt::Display for SheetFaults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Tongue::BRITISH))
    }
}

impl std::error::Error for SheetFaults {}

/// Rows in words: `row 4`, `rows 4, 5 and 12 more`.
pub(super) fn rows(rows: &[usize]) -> Message {
    let named = rows.iter().take(ROWS).map(|row| row.to_string().into()).collect();
    match rows.len().saturating_sub(ROWS) {
        0 => say::rows(rows.len(), named),
        more => say::rows_more(more, named),
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
