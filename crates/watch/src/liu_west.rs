//! Learning numbers that do not change: particles are drawn towards their mean and jittered by as much as that took
//! from their spread.
//!
//! Copies made by resampling share their unchanging numbers; jitter alone would tell them apart but widen what is
//! known with every reading. Drawing in first keeps mean and variance. Source: J. Liu and M. West, "Combined parameter
//! and state estimation in simulation-based filtering", in Doucet, de Freitas and Gordon (eds.), Sequential Monte Carlo
//! Methods in Practice (2001), chapter 10 (from memory). Numbers are moved on a scale on which a bell curve does them
//! no wrong (logarithm, log-odds), and only just after resampling.

/// How far particles are drawn in and jittered: `θ ← a·θ + (1 − a)·mean + h·sd·z`, with `a² + h² = 1`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kernel {
    /// `a`: the share of its distance from the mean that a particle keeps.
    pub a: f64,
    /// `h`: the jitter, in standard deviations of the particles.
    pub h: f64,
}

impl Kernel {
    /// From the discount δ, 0.95 to 0.99 by custom: `a = (3δ − 1) / 2δ`. Taken between 0.5 and 1; at 1 nothing moves.
    ///
    /// ```
    /// let kernel = snowhum_watch::liu_west::Kernel::from_discount(0.98);
    /// assert!((kernel.a - 0.989_795_918_367_346_9).abs() < 1e-15);
    /// assert!((kernel.h * kernel.h - 0.020_304_039_983_340_294).abs() < 1e-15);
    /// ```
    #[must_use]
    pub fn from_discount(delta: f64) -> Self {
        let delta = if delta.is_nan() { 1.0 } else { delta.clamp(0.5, 1.0) };
        let a = (3.0 * delta - 1.0) / (2.0 * delta);
        Self { a, h: (1.0 - a * a).max(0.0).sqrt() }
    }

    /// Moves one number of every particle, `z` giving the standard normal draw of the particle in a place.
    pub fn renew(&self, values: &mut [f64], weights: &[f64], mut z: impl FnMut(usize) -> f64) {
        let mut rows: Vec<[f64; 1]> = values.iter().map(|value| [*value]).collect();
        self.renew_jointly(&mut rows, weights, |place| [z(place)]);
        for (value, [moved]) in values.iter_mut().zip(rows) {
            *value = moved;
        }
    }

    /// Moves several numbers of every particle at once, keeping what they have to do with each other: the jitter has
    /// the particles' own covariance. Numbers in which the particles agree stay as they are. Nothing moves if no weight
    /// counts or a value is not finite.
    pub fn renew_jointly<const D: usize>(
        &self,
        values: &mut [[f64; D]],
        weights: &[f64],
        mut z: impl FnMut(usize) -> [f64; D],
    ) {
        let Some((mean, covariance)) = moments(values, weights) else { return };
        let root = cholesky(&covariance);
        for (place, value) in values.iter_mut().enumerate() {
            let z = z(place);
            for row in 0..D {
                let jitter: f64 = (0..=row).map(|column| root[row][column] * z[column]).sum();
                value[row] = self.a * value[row] + (1.0 - self.a) * mean[row] + self.h * jitter;
            }
        }
    }
}

/// Weighted mean and covariance, if there are any.
fn moments<const D: usize>(values: &[[f64; D]], weights: &[f64]) -> Option<([f64; D], [[f64; D]; D])> {
    let sum: f64 = weights.iter().sum();
    let usable = sum > 0.0 && sum.is_finite() && values.iter().flatten().all(|value| value.is_finite());
    if !usable {
        return None;
    }
    let mut mean = [0.0; D];
    let mut covariance = [[0.0; D]; D];
    for (value, weight) in values.iter().zip(weights) {
        for row in 0..D {
            mean[row] += weight / sum * value[row];
        }
    }
    for (value, weight) in values.iter().zip(weights) {
        for row in 0..D {
            for column in 0..=row {
                covariance[row][column] += weight / sum * (value[row] - mean[row]) * (value[column] - mean[column]);
            }
        }
    }
    Some((mean, covariance))
}

/// Share of a variance below which what is left of it counts as rounding.
const ROUNDING: f64 = 1e-12;

/// Lower triangular root of a covariance, given by its lower triangle. A number that the earlier ones settle gets no
/// jitter of its own.
fn cholesky<const D: usize>(covariance: &[[f64; D]; D]) -> [[f64; D]; D] {
    let mut root = [[0.0; D]; D];
    for column in 0..D {
        let known: f64 = (0..column).map(|k| root[column][k] * root[column][k]).sum();
        let left = covariance[column][column] - known;
        if left <= ROUNDING * covariance[column][column] {
            continue;
        }
        root[column][column] = left.sqrt();
        for row in column + 1..D {
            let known: f64 = (0..column).map(|k| root[row][k] * root[column][k]).sum();
            root[row][column] = (covariance[row][column] - known) / root[column][column];
        }
    }
    root
}

#[cfg(test)]
mod tests {
    use snowhum_draws::Key;

    use super::*;

    fn rows(count: u32) -> Vec<[f64; 3]> {
        let key = Key::new(3, 1);
        let row = |m| {
            let [x, y, ..] = key.normals([m, 0, 0, 0]);
            [4.0 + 2.0 * x, -1.0 + 1.5 * x + 0.5 * y, 7.0]
        };
        (0..count).map(row).collect()
    }

    #[test]
    fn the_root_of_a_covariance_gives_it_back() {
        let covariance = [[4.0, 0.0, 0.0], [2.0, 5.0, 0.0], [-1.0, 0.5, 3.0]];
        let root = cholesky(&covariance);
        for row in 0..3 {
            for column in 0..=row {
                let product: f64 = (0..3).map(|k| root[row][k] * root[column][k]).sum();
                assert!((product - covariance[row][column]).abs() < 1e-12, "{row} {column}: {product}");
            }
        }
    }

    #[test]
    fn means_and_covariances_outlast_a_hundred_renewals() {
        let mut values = rows(4000);
        let weights = vec![1.0; values.len()];
        let none = ([f64::NAN; 3], [[f64::NAN; 3]; 3]);
        let (mean, covariance) = moments(&values, &weights).unwrap_or(none);
        let kernel = Kernel::from_discount(0.95);
        for t in 0..100 {
            let key = Key::new(3, 2);
            kernel.renew_jointly(&mut values, &weights, |m| {
                let [x, y, z, _] = key.normals([m as u32, t, 0, 0]);
                [x, y, z]
            });
        }
        let (mean_after, after) = moments(&values, &weights).unwrap_or(none);
        // A hundred renewals mix in the noise of 100 h² ≈ 5 fresh sets of 4,000: five standard errors of that.
        let error = 5.0 * (100.0 * kernel.h * kernel.h / 4000.0).sqrt();
        for row in 0..3 {
            assert!((mean_after[row] - mean[row]).abs() <= error * covariance[row][row].sqrt() + 1e-9, "mean {row}");
            for column in 0..=row {
                let scale = (covariance[row][row] * covariance[column][column]).sqrt();
                let off = (after[row][column] - covariance[row][column]).abs();
                assert!(off <= 1.5 * error * scale + 1e-9, "{row} {column}: {off}");
            }
        }
        assert!(values.iter().all(|value| (value[2] - 7.0).abs() < 1e-9), "what all agree in stays");
    }

    #[test]
    fn what_cannot_be_weighed_stays_as_it_is() {
        let kernel = Kernel::from_discount(0.95);
        for (mut values, weights) in [(vec![1.0, 2.0], vec![0.0, 0.0]), (vec![1.0, f64::INFINITY], vec![0.5, 0.5])] {
            let before = values.clone();
            kernel.renew(&mut values, &weights, |_| 1.0);
            assert_eq!(values, before);
        }
    }
}
