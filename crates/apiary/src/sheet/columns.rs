//! What the columns of a sheet are: as the keeper says, else as their headings do.

use super::days::{DayOrder, moment};
use super::headings;
use super::hive_meant::hive_meant;
use super::role::Role;
use super::wrong::{SheetFaults, shown};
use super::{Table, TableRow};
use crate::Apiary;
use crate::nearest::{instead, quoted};
use crate::note::sign_examples;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use snowhum_say::{fault, sheet_fault as say};

/// Rows among which the headings are looked for: titles stand above them.
const ABOVE: usize = 20;

/// What columns a keeper names, each part `what=heading`, or `what=heading:unit` for numbers that bear none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SheetColumns(Vec<(Role, String)>);

impl SheetColumns {
    /// Reads `date=Datum, hive=Volk, scale=Gewicht:kg`.
    ///
    /// ```
    /// use snowhum_apiary::SheetColumns;
    /// assert!(SheetColumns::read("date=Datum:dmy; hive=Volk; scale=Gewicht, brutto:kg").is_ok());
    /// assert!(SheetColumns::read("Datum=date").unwrap_err().to_string().contains("date=Datum"));
    /// ```
    ///
    /// # Errors
    /// When it is no such line, with what would be right.
    pub fn read(text: &str) -> Result<Self, Wrong> {
        let mut columns: Vec<(Role, String)> = Vec::new();
        for part in parts(text) {
            let Some((word, heading)) = part.split_once('=').map(|(word, heading)| (word.trim(), heading.trim()))
            else {
                return Err(Wrong::new(say::no_column(shown(part)), say::columns_right()));
            };
            let role = Role::of(word).ok_or_else(|| unknown(word, heading))?;
            if heading.is_empty() {
                return Err(Wrong::new(say::no_heading(word), say::columns_right()));
            }
            if !role.may_repeat() && columns.iter().any(|(other, _)| *other == role) {
                return Err(Wrong::new(say::named_twice(word), fault::once()));
            }
            columns.push((role, heading.to_owned()));
        }
        if columns.is_empty() {
            return Err(Wrong::new(say::none_named(), say::columns_right()));
        }
        Ok(Self(columns))
    }

    /// Whether a sheet has every heading that is named.
    #[must_use]
    pub fn fits(&self, table: &Table) -> bool {
        table.rows.iter().take(ABOVE).any(|row| self.missing(row).next().is_none())
    }

    fn missing<'a>(&'a self, row: &'a TableRow) -> impl Iterator<Item = &'a str> {
        self.0.iter().map(|(_, heading)| heading.as_str()).filter(|heading| place(row, heading).is_none())
    }
}

/// The parts of a mapping: what stands behind a comma without a `=` belongs to the heading before it.
fn parts(text: &str) -> impl Iterator<Item = &str> {
    const BETWEEN: [char; 2] = [',', ';'];
    let begins = |at: &usize| text[*at..].split(BETWEEN).next().is_some_and(|part| part.contains('='));
    let behind = text.match_indices(BETWEEN).map(|(at, _)| at + 1).filter(begins);
    let starts: Vec<usize> = std::iter::once(0).chain(behind).collect();
    let ends = starts.iter().skip(1).copied().chain([text.len()]).collect::<Vec<_>>();
    let parts = starts.into_iter().zip(ends).map(move |(from, to)| text[from..to].trim());
    parts.map(|part| part.trim_end_matches(BETWEEN).trim()).filter(|part| !part.is_empty())
}

fn unknown(word: &str, heading: &str) -> Wrong {
    let problem = say::no_role(shown(word));
    if Role::of(heading).is_some() {
        return Wrong::new(problem, say::turned_right(heading, shown(word)));
    }
    let known = Role::WORDS.iter().map(|(own, _)| *own).chain(sign_examples().iter().map(|(noted, _)| *noted));
    Wrong::new(problem, instead(word, known))
}

/// Where a heading stands in a row, and what is said behind it: the unit of its bare numbers.
fn place<'a>(row: &TableRow, written: &'a str) -> Option<(usize, Option<&'a str>)> {
    let spaced = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    let at = |heading: &str| row.cells.iter().position(|cell| same_name(&spaced(cell), &spaced(heading)));
    let whole = at(written).map(|at| (at, None));
    whole.or_else(|| {
        let (heading, after) = written.rsplit_once(':')?;
        at(heading).map(|at| (at, Some(after.trim())))
    })
}

/// One column of a sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Column {
    pub(super) at: usize,
    pub(super) heading: String,
    /// None where nothing tells what it is.
    pub(super) role: Option<Role>,
    /// What stands behind each bare number.
    pub(super) after: Option<String>,
}

impl Column {
    pub(super) fn is_weather(&self) -> bool {
        matches!(self.role, Some(Role::Air | Role::Wind | Role::Snow))
    }
}

/// What the columns of one sheet were taken for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Layout {
    /// Where the rows below the headings begin.
    pub(super) below: usize,
    pub(super) columns: Vec<Column>,
}

impl Layout {
    pub(super) fn of(table: &Table, columns: Option<&SheetColumns>, yard: &Apiary) -> Result<Self, SheetFaults> {
        if table.rows.is_empty() {
            let wrong = Wrong::new(say::empty(), say::empty_right());
            return Err(SheetFaults::whole(&table.file, wrong));
        }
        let head = head(table, columns).map_err(|wrong| SheetFaults::whole(&table.file, wrong))?;
        let mut layout = Self { below: head + 1, columns: own_columns(table, head) };
        layout.name(&table.rows[head], columns);
        layout.tell_hives(&table.rows[head + 1..], yard);
        let lacking: Vec<Role> =
            [Role::Date, Role::Hive].into_iter().filter(|role| layout.of_role(*role).is_none()).collect();
        if lacking.is_empty() {
            return Ok(layout);
        }
        Err(layout.lacks(&lacking, table, yard))
    }

    pub(super) fn of_role(&self, role: Role) -> Option<&Column> {
        self.columns.iter().find(|column| column.role == Some(role))
    }

    /// The order of day and month that was said for the days.
    pub(super) fn order(&self) -> Option<DayOrder> {
        let said = self.of_role(Role::Date)?.after.as_deref()?;
        DayOrder::WORDS.iter().find(|(word, _)| same_name(word, said)).map(|(_, order)| *order)
    }

    /// As it may be given again.
    pub(super) fn written(&self) -> String {
        let one = |column: &Column| {
            let after = column.after.as_ref().map_or(String::new(), |after| format!(":{after}"));
            column.role.map(|role| format!("{}={}{after}", role.word(), column.heading))
        };
        self.columns.iter().filter_map(one).collect::<Vec<_>>().join(", ")
    }

    /// What was said first, and then what headings tell, each role once.
    fn name(&mut self, head: &TableRow, said: Option<&SheetColumns>) {
        for (role, written) in said.map(|said| said.0.as_slice()).unwrap_or_default() {
            let Some((at, after)) = place(head, written) else { continue };
            if let Some(column) = self.columns.iter_mut().find(|column| column.at == at) {
                (column.role, column.after) = (Some(*role), after.map(str::to_owned));
            }
        }
        for at in 0..self.columns.len() {
            if self.columns[at].role.is_none()
                && let Some((role, after)) = headings::meant(&self.columns[at].heading)
                && (role.may_repeat() || self.of_role(role).is_none())
            {
                (self.columns[at].role, self.columns[at].after) = (Some(role), after);
            }
        }
    }

    /// Where another heading may name the hive too and its cells do, while those of the first do not, it is that one.
    fn tell_hives(&mut self, below: &[TableRow], yard: &Apiary) {
        let names = |column: &Column| most(below, column.at, |cell| hive_meant(yard, cell).is_some());
        let first = self.columns.iter().position(|column| column.role == Some(Role::Hive));
        let may = |column: &Column| {
            column.role.is_none() && headings::meant(&column.heading).is_some_and(|(role, _)| role == Role::Hive)
        };
        let other = self.columns.iter().position(|column| may(column) && names(column));
        if let Some((first, other)) = first.zip(other).filter(|(first, _)| !names(&self.columns[*first])) {
            self.columns[first].role = None;
            self.columns[other].role = Some(Role::Hive);
        }
    }

    /// The fault of a sheet in which no heading tells day or hive, with the mapping that its cells speak for.
    fn lacks(mut self, lacking: &[Role], table: &Table, yard: &Apiary) -> SheetFaults {
        let below = &table.rows[self.below..];
        let order = |at: usize| DayOrder::shown(below.iter().filter_map(|row| row.cells.get(at)).map(String::as_str));
        let fits = |role: &Role, at: usize| match role {
            Role::Hive => most(below, at, |cell| hive_meant(yard, cell).is_some()),
            _ => most(below, at, |cell| moment(cell, "", order(at).or(Some(DayOrder::Day))).is_ok()),
        };
        let mut faults = SheetFaults::new(&table.file);
        let named: Vec<&str> = self.columns.iter().map(|column| column.heading.as_str()).collect();
        let there = quoted(named.iter().take(ABOVE).map(|name| shown(name)));
        let mut unknown = Vec::new();
        for role in lacking {
            let problem = say::no_role_told(if *role == Role::Hive { "hive" } else { "day" });
            faults.add(None, "", "", Wrong::new(problem, say::no_role_told_right(there.clone())));
            match self.columns.iter_mut().find(|column| column.role.is_none() && fits(role, column.at)) {
                Some(column) => column.role = Some(*role),
                None => unknown.push(format!("{}=HEADING", role.word())),
            }
        }
        let known = Some(self.written()).filter(|known| !known.is_empty());
        faults.columns = Some(unknown.into_iter().chain(known).collect::<Vec<_>>().join(", "));
        faults
    }
}

/// Whether most cells of a column that hold something are of a kind: a slip in one of them changes no column.
fn most(rows: &[TableRow], at: usize, is_one: impl Fn(&str) -> bool) -> bool {
    let cells = rows.iter().filter_map(|row| row.cells.get(at)).filter(|cell| !cell.trim().is_empty());
    let (those, others): (Vec<&String>, Vec<&String>) = cells.partition(|cell| is_one(cell));
    !those.is_empty() && those.len() >= others.len()
}

/// The row of headings: where all stand that were named, else where most are understood.
fn head(table: &Table, columns: Option<&SheetColumns>) -> Result<usize, Wrong> {
    let rows = &table.rows[..table.rows.len().min(ABOVE)];
    if let Some(columns) = columns {
        let near = rows.iter().enumerate().min_by_key(|(_, row)| columns.missing(row).count());
        let missing = near.and_then(|(_, row)| columns.missing(row).next().map(|heading| (heading, row)));
        return match (near, missing) {
            (_, Some((heading, row))) => {
                let there: Vec<&str> =
                    row.cells.iter().map(|cell| cell.trim()).filter(|cell| !cell.is_empty()).collect();
                let remedy = instead(heading.split(':').next().unwrap_or_default(), there);
                Err(Wrong::new(say::no_such_heading(shown(heading)), remedy))
            }
            (near, None) => Ok(near.map_or(0, |(at, _)| at)),
        };
    }
    let understood = |row: &TableRow| row.cells.iter().filter(|cell| headings::meant(cell).is_some()).count();
    let most = rows.iter().map(understood).max().unwrap_or_default();
    Ok(rows.iter().position(|row| understood(row) == most && row.cells.len() > usize::from(most == 0)).unwrap_or(0))
}

/// Every column that holds something, one without a heading by its letters.
fn own_columns(table: &Table, head: usize) -> Vec<Column> {
    let rows = &table.rows[head..];
    let width = rows.iter().map(|row| row.cells.len()).max().unwrap_or_default();
    let is_used = |at: &usize| rows.iter().any(|row| row.cells.get(*at).is_some_and(|cell| !cell.trim().is_empty()));
    let heading = |at: usize| {
        let written = table.rows[head].cells.get(at).map(|cell| cell.split_whitespace().collect::<Vec<_>>().join(" "));
        written.filter(|written| !written.is_empty()).unwrap_or_else(|| format!("column {}", letters(at)))
    };
    (0..width).filter(is_used).map(|at| Column { at, heading: heading(at), role: None, after: None }).collect()
}

/// A column's letters as spreadsheets count them.
fn letters(at: usize) -> String {
    let last = char::from(b'A' + u8::try_from(at % 26).unwrap_or_default());
    if at < 26 { last.to_string() } else { letters(at / 26 - 1) + &last.to_string() }
}
