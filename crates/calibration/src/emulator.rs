//! What stands in for the engine: each row's figure as a smooth function of the parameters.
//!
//! A figure's scale (log-odds of shares, logarithms of food) is a Gaussian process with a kernel of degree two: Bayesian
//! regression on all parameters, their squares and products. It is fitted to the figures themselves by their quasi-likelihood
//! (McCullagh and Nelder's generalised linear models), so that the scatter of few colonies a point neither bends nor shifts
//! it. What it misses is measured on points of their own with many colonies each.

use nalgebra::{DMatrix, DVector};

use crate::CalibrationError;
use crate::study::Scale;

/// Prior standard deviations of a coefficient of degree one and two, in standard deviations of the figure.
const LINEAR: f64 = 1.0;
const QUADRATIC: f64 = 0.3;
/// Fewest points a row can be emulated from.
const FEWEST: usize = 200;
/// Rounds of reweighting: the fit settles in fewer.
const ROUNDS: usize = 12;

/// One row's figure, on its scale.
#[derive(Debug, Clone)]
pub struct Emulator {
    mean: f64,
    linear: Vec<f64>,
    /// Upper triangle, row by row.
    quadratic: Vec<f64>,
    /// Root of the mean square of what it misses on points held out, on its scale.
    pub error: f64,
}

/// Figures found at points.
pub struct Found<'a> {
    /// Where.
    pub points: &'a [Vec<f64>],
    /// What; not a number where nothing was found.
    pub values: &'a [f64],
}

impl Found<'_> {
    fn sound(&self) -> Vec<(&Vec<f64>, f64)> {
        self.points.iter().zip(self.values.iter().copied()).filter(|(_, value)| value.is_finite()).collect()
    }
}

impl Emulator {
    /// Fits to what was `found`, and measures what it misses of what was `held_out`.
    ///
    /// # Errors
    /// With too few points.
    pub fn fit(name: &str, scale: Scale, found: &Found<'_>, held_out: &Found<'_>) -> Result<Self, CalibrationError> {
        let points = found.sound();
        let failed = || CalibrationError::Emulator(name.to_owned());
        if points.len() < FEWEST {
            return Err(failed());
        }
        let mut fitted = Self::solve(scale, &points).ok_or_else(failed)?;
        let held = held_out.sound();
        let missed = held.iter().map(|(point, value)| (fitted.at(point) - scale.to(*value)).powi(2)).sum::<f64>();
        fitted.error = (missed / held.len().max(1) as f64).sqrt();
        Ok(fitted)
    }

    /// Newton's method on the quasi-likelihood with the prior on top.
    fn solve(scale: Scale, points: &[(&Vec<f64>, f64)]) -> Option<Self> {
        let dimensions = points.first()?.0.len();
        let rows: Vec<Vec<f64>> = points.iter().map(|(point, _)| features(point)).collect();
        let width = rows.first()?.len();
        let design = DMatrix::from_row_iterator(rows.len(), width, rows.into_iter().flatten());
        let found = DVector::from_iterator(points.len(), points.iter().map(|(_, value)| *value));
        let mean = found.mean();
        let spread = (found.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / points.len() as f64).sqrt();
        let unit = scale.unit(mean, spread).max(1e-6);
        let mut weights = DVector::zeros(width);
        weights[0] = scale.to(mean);
        let mut noise = 1.0;
        for round in 0..ROUNDS {
            let line: DVector<f64> = &design * &weights;
            let value = line.map(|line| scale.back(line));
            let slope = value.map(|value| scale.slope(value));
            let variance = value.map(|value| scale.variance(value));
            let off: DVector<f64> = &found - &value;
            let pearson = off.iter().zip(&variance).map(|(off, variance)| off * off / variance).sum::<f64>();
            noise = if round == 0 { noise } else { (pearson / points.len() as f64).max(1e-9) };
            let weigh = slope.zip_map(&variance, |slope, variance| slope * slope / variance / noise);
            let mut weighed = design.clone();
            for (mut row, weight) in weighed.row_iter_mut().zip(&weigh) {
                row *= *weight;
            }
            let mut normal = design.tr_mul(&weighed);
            let step = off.zip_zip_map(&slope, &variance, |off, slope, variance| off * slope / variance / noise);
            let mut gradient = design.tr_mul(&step);
            for at in 1..width {
                let prior = (unit * if at <= dimensions { LINEAR } else { QUADRATIC }).powi(-2);
                normal[(at, at)] += prior;
                gradient[at] -= prior * weights[at];
            }
            weights += normal.cholesky()?.solve(&gradient);
        }
        let weights: Vec<f64> = weights.iter().copied().collect();
        let (linear, quadratic) = weights[1..].split_at(dimensions);
        Some(Self { mean: weights[0], linear: linear.to_vec(), quadratic: quadratic.to_vec(), error: noise })
    }

    /// The figure at a point.
    #[must_use]
    pub fn at(&self, point: &[f64]) -> f64 {
        let mut sum = self.mean;
        let mut quadratic = self.quadratic.iter();
        for (at, x) in point.iter().enumerate() {
            let bent: f64 = quadratic.by_ref().zip(&point[at..]).map(|(weight, y)| weight * y).sum();
            sum += x * (self.linear[at] + bent);
        }
        sum
    }
}

/// One, each number, and the products of all pairs.
fn features(point: &[f64]) -> Vec<f64> {
    let pairs = point.iter().enumerate().flat_map(|(at, x)| point[at..].iter().map(move |y| x * y));
    std::iter::once(1.0).chain(point.iter().copied()).chain(pairs).collect()
}

#[cfg(test)]
mod tests {
    use super::{Emulator, Found};
    use crate::design::latin_hypercube;
    use crate::study::Scale;

    #[test]
    fn a_bent_surface_is_found_again_from_few_colonies_a_point() {
        let points = latin_hypercube(1_500, 4, 7);
        let chance = latin_hypercube(1_500, 12, 8);
        let truth = |x: &[f64]| -1.5 + 0.8 * x[0] - 0.4 * x[1] + 0.2 * x[0] * x[2] + 0.1 * x[3] * x[3];
        let lost = |(x, z): (&Vec<f64>, &Vec<f64>)| {
            let p = Scale::Logit.back(truth(x));
            let normal = statrs::distribution::Normal::standard();
            let below = |z: &&f64| statrs::distribution::ContinuousCDF::cdf(&normal, **z) < p;
            z.iter().filter(below).count() as f64 / 12.0
        };
        let values: Vec<f64> = points.iter().zip(&chance).map(lost).collect();
        let held = latin_hypercube(100, 4, 9);
        let exact: Vec<f64> = held.iter().map(|x| Scale::Logit.back(truth(x))).collect();
        let (found, held_out) = (Found { points: &points, values: &values }, Found { points: &held, values: &exact });
        let emulator = Emulator::fit("a surface", Scale::Logit, &found, &held_out).unwrap();
        assert!(emulator.error < 0.15, "{}", emulator.error);
    }
}
