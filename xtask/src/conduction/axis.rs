//! Mesh lines along one axis.

/// Mesh lines along one axis, m, rising.
#[derive(Debug, Clone)]
pub(crate) struct Axis(Vec<f64>);

impl Axis {
    /// An axis whose first line lies at `at_m`.
    pub(crate) fn from(at_m: f64) -> Self {
        Self(vec![at_m])
    }

    /// Goes on to `to_m` in cells of one width, none wider than `widest_m`.
    pub(crate) fn even(mut self, to_m: f64, widest_m: f64) -> Self {
        let from_m = self.end();
        // A hair is taken off so that 0.019 / 0.001 makes 19 cells, not 20.
        let cells = ((to_m - from_m) / widest_m - 1e-9).ceil().max(1.0) as usize;
        self.0.extend((1..=cells).map(|cell| from_m + (to_m - from_m) * cell as f64 / cells as f64));
        self
    }

    /// Goes on to `to_m` in cells that begin no wider than `first_m` and grow by `growth` (over 1) each.
    pub(crate) fn growing(mut self, to_m: f64, first_m: f64, growth: f64) -> Self {
        let (from_m, length_m) = (self.end(), to_m - self.end());
        let cells = (length_m / first_m * (growth - 1.0)).ln_1p() / growth.ln();
        let cells = cells.ceil().max(1.0) as i32;
        let whole = growth.powi(cells) - 1.0;
        self.0.extend((1..=cells).map(|cell| from_m + length_m * (growth.powi(cell) - 1.0) / whole));
        self
    }

    /// The lines.
    pub(crate) fn lines(&self) -> &[f64] {
        &self.0
    }

    /// Widths of the cells between the lines.
    pub(crate) fn widths(&self) -> Vec<f64> {
        self.0.windows(2).map(|pair| pair[1] - pair[0]).collect()
    }

    /// Middles of the cells.
    pub(crate) fn middles(&self) -> Vec<f64> {
        self.0.windows(2).map(|pair| (pair[0] + pair[1]) / 2.0).collect()
    }

    fn end(&self) -> f64 {
        self.0[self.0.len() - 1]
    }
}

#[cfg(test)]
mod tests {
    use super::Axis;

    #[test]
    fn even_cells_are_never_wider_than_asked() {
        let axis = Axis::from(-0.019).even(0.0, 0.001).even(0.0035, 0.001);
        assert_eq!(axis.widths().len(), 19 + 4);
        assert!(axis.widths().iter().all(|width| *width <= 0.001 + 1e-12));
        assert_eq!(axis.lines()[19], 0.0);
    }

    #[test]
    fn growing_cells_reach_the_end_and_grow_steadily() {
        let axis = Axis::from(0.0).growing(0.3, 0.001, 1.2);
        let widths = axis.widths();
        assert!((axis.end() - 0.3).abs() < 1e-12);
        assert!(widths[0] <= 0.001);
        assert!(widths.windows(2).all(|pair| (pair[1] / pair[0] - 1.2).abs() < 1e-9));
    }
}
