//! Tables of check values: lines of cells parted by semicolons, a header row, remarks after `#`.

/// A table read whole.
pub(crate) struct Table {
    header: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
}

/// One row of a table.
#[derive(Clone, Copy)]
pub(crate) struct Row<'a> {
    header: &'a [&'static str],
    cells: &'a [&'static str],
}

impl Table {
    pub(crate) fn new(text: &'static str) -> Self {
        let mut lines = text.lines().filter(|line| !line.starts_with('#')).map(|line| line.split(';').collect());
        Self { header: lines.next().unwrap_or_default(), rows: lines.collect() }
    }

    pub(crate) fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row { header: &self.header, cells })
    }

    /// The rows whose `column` holds `text`.
    pub(crate) fn rows_where<'a>(&'a self, column: &'a str, text: &'a str) -> impl Iterator<Item = Row<'a>> {
        self.rows().filter(move |row| row.text(column) == text)
    }
}

impl Row<'_> {
    pub(crate) fn text(&self, column: &str) -> &'static str {
        let at = self.header.iter().position(|name| *name == column);
        at.and_then(|at| self.cells.get(at).copied()).unwrap_or("no such column")
    }

    /// The number in a column; not a number if there is none, which no check passes.
    pub(crate) fn number(&self, column: &str) -> f64 {
        self.text(column).parse().unwrap_or(f64::NAN)
    }
}

/// The closed forms of `worked.csv`.
pub(crate) fn worked(case: &str, quantity: &str) -> f64 {
    let table = Table::new(include_str!("../data/worked.csv"));
    table
        .rows_where("case", case)
        .find(|row| row.text("quantity") == quantity)
        .map_or(f64::NAN, |row| row.number("value"))
}

/// The largest of many differences; not a number if any of them is not, or if there are none.
pub(crate) fn largest(differences: impl IntoIterator<Item = f64>) -> f64 {
    let mut largest = f64::NAN;
    for difference in differences {
        if difference.is_nan() {
            return f64::NAN;
        }
        largest = difference.abs().max(largest);
    }
    largest
}

/// Difference of `got` from `expected` as a part of it.
pub(crate) fn part(got: f64, expected: f64) -> f64 {
    (got - expected) / expected
}
