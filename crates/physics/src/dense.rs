//! Small dense linear systems.

/// A square matrix split into triangles, rows exchanged where that is safer.
#[derive(Debug, Clone)]
pub struct Factors {
    size: usize,
    /// Row after row: below the diagonal the multipliers, on and above it the upper triangle.
    cells: Vec<f64>,
    /// Which given row each row is.
    rows: Vec<usize>,
}

impl Factors {
    /// Factors a matrix given row after row; the number of the first column without a pivot if it is singular.
    ///
    /// # Errors
    /// The number of that column.
    pub fn new(size: usize, mut cells: Vec<f64>) -> Result<Self, usize> {
        let mut rows: Vec<usize> = (0..size).collect();
        let largest = cells.iter().fold(0.0f64, |most, cell| most.max(cell.abs()));
        for column in 0..size {
            let at = |row: usize| cells[row * size + column].abs();
            let pivot = (column..size).max_by(|&a, &b| at(a).total_cmp(&at(b))).unwrap_or(column);
            if !at(pivot).is_finite() || at(pivot) <= f64::EPSILON * largest {
                return Err(column);
            }
            if pivot != column {
                rows.swap(pivot, column);
                (0..size).for_each(|k| cells.swap(pivot * size + k, column * size + k));
            }
            eliminate(&mut cells, size, column);
        }
        Ok(Self { size, cells, rows })
    }

    /// Solves for a right-hand side, which must have as many numbers as the matrix has rows.
    pub fn solve(&self, right: &[f64], solution: &mut [f64]) {
        let n = self.size;
        for row in 0..n {
            let known: f64 = (0..row).map(|k| self.cells[row * n + k] * solution[k]).sum();
            solution[row] = right[self.rows[row]] - known;
        }
        for row in (0..n).rev() {
            let known: f64 = (row + 1..n).map(|k| self.cells[row * n + k] * solution[k]).sum();
            solution[row] = (solution[row] - known) / self.cells[row * n + row];
        }
    }
}

fn eliminate(cells: &mut [f64], size: usize, column: usize) {
    for row in column + 1..size {
        let factor = cells[row * size + column] / cells[column * size + column];
        cells[row * size + column] = factor;
        for k in column + 1..size {
            cells[row * size + k] -= factor * cells[column * size + k];
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Factors;

    #[test]
    fn a_system_that_needs_row_exchange_is_solved() {
        let factors = Factors::new(3, vec![0.0, 2.0, 1.0, 1.0, 0.0, 3.0, 4.0, 1.0, 0.0]).unwrap();
        let mut x = [0.0; 3];
        factors.solve(&[7.0, 10.0, 6.0], &mut x);
        for (got, expected) in x.into_iter().zip([1.0, 2.0, 3.0]) {
            assert!((got - expected).abs() < 1e-12, "{x:?}");
        }
    }

    #[test]
    fn a_singular_matrix_is_refused() {
        assert_eq!(Factors::new(2, vec![1.0, -1.0, -1.0, 1.0]).unwrap_err(), 1);
        assert_eq!(Factors::new(1, vec![f64::NAN]).unwrap_err(), 0);
    }
}
