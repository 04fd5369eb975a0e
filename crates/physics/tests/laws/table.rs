//! Tables of check values: lines of cells parted by semicolons, a header row, remarks after `#`.

/// A table read whole.
pub(crate) struct Table {
    header: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
}

/// One row of a table.
pub(crate) struct Row<'a> {
    header: &'a [&'static str],
    cells: &'a [&'static str],
}

impl Table {
    pub(crate) fn new(text: &'static str) -> Self {
        let mut lines = text.lines().filter(|line| !line.starts_with('#')).map(|line| line.split(';').collect());
        let header = lines.next().unwrap_or_default();
        let rows: Vec<_> = lines.collect();
        assert!(rows.len() > 1, "a table without rows proves nothing");
        Self { header, rows }
    }

    pub(crate) fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row { header: &self.header, cells })
    }
}

impl Row<'_> {
    pub(crate) fn text(&self, column: &str) -> &'static str {
        let at = self.header.iter().position(|name| *name == column);
        at.and_then(|at| self.cells.get(at).copied()).unwrap_or("no such column")
    }

    /// The number in a column; not a number if there is none, which fails every comparison.
    pub(crate) fn number(&self, column: &str) -> f64 {
        self.text(column).parse().unwrap_or(f64::NAN)
    }

    /// The number in a column that may be empty.
    pub(crate) fn optional(&self, column: &str) -> Option<f64> {
        (!self.text(column).is_empty()).then(|| self.number(column))
    }
}

/// The closed forms of `worked.csv`.
pub(crate) fn worked(case: &str, quantity: &str) -> f64 {
    let table = Table::new(include_str!("../data/worked.csv"));
    table
        .rows()
        .find(|row| row.text("case") == case && row.text("quantity") == quantity)
        .map_or(f64::NAN, |row| row.number("value"))
}

/// Fails unless `got` is within `tolerance` of `expected`.
pub(crate) fn near(what: &str, got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{what}: {got} where {expected} within {tolerance} was expected");
}

/// Fails unless `got` agrees with `expected` to a part of it.
pub(crate) fn near_part(what: &str, got: f64, expected: f64, part: f64) {
    near(what, got, expected, part * expected.abs());
}

/// Seven or eight digits are printed in the tables of closed forms.
pub(crate) const PRINTED: f64 = 1e-7;
