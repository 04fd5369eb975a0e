//! The filter's core against models whose answers are known exactly.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "exact/bridging.rs"]
mod bridging;
#[path = "exact/chains.rs"]
mod chains;
#[path = "exact/counts.rs"]
mod counts;
#[path = "exact/gaussian.rs"]
mod gaussian;
#[path = "exact/stores.rs"]
mod stores;

use snowhum_draws::Key;

/// Standard deviations allowed to one run, and to the mean of many.
const ONE: f64 = 5.0;
const MANY: f64 = 4.0;

/// One row of `data/exact.csv`.
#[derive(Debug, Clone, Copy)]
struct Exact {
    value: f64,
    sd: f64,
    bias: f64,
}

fn exact(case: &str, item: &str) -> Exact {
    let row = include_str!("data/exact.csv").lines().find(|line| line.starts_with(&format!("{case},{item},"))).unwrap();
    let number = |place: usize| row.split(',').nth(place).unwrap().parse().unwrap();
    Exact { value: number(2), sd: number(3), bias: number(4) }
}

/// The rows of numbers of a table.
fn table(text: &str) -> Vec<Vec<f64>> {
    let rows = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    rows.map(|row| row.split(',').map(|field| field.parse().unwrap()).collect()).collect()
}

/// Draws of one run: a uniform or a normal for each (particle, time, purpose).
#[derive(Debug, Clone, Copy)]
struct Luck(Key);

impl Luck {
    fn of(seed: u64) -> Self {
        Self(Key::new(seed, 77))
    }

    fn uniform(self, who: usize, when: usize, why: u32) -> f64 {
        self.0.uniforms([who as u32, when as u32, why, 0])[0]
    }

    fn normal(self, who: usize, when: usize, why: u32) -> f64 {
        self.0.normals([who as u32, when as u32, why, 0])[0]
    }
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

fn spread(values: &[f64]) -> f64 {
    let centre = mean(values);
    (values.iter().map(|v| (v - centre).powi(2)).sum::<f64>() / (values.len() - 1) as f64).sqrt()
}

/// Logarithm of the mean of exponentials: an unbiased filter's evidence over many seeds.
fn log_mean_exp(values: &[f64]) -> f64 {
    let top = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    top + mean(&values.iter().map(|v| (v - top).exp()).collect::<Vec<_>>()).ln()
}

fn log_normal(x: f64, mean: f64, sd: f64) -> f64 {
    let z = (x - mean) / sd;
    -0.5 * (z * z + std::f64::consts::TAU.ln()) - sd.ln()
}

/// One run within five standard deviations, and the log of the mean evidence of all within four of its own.
fn assert_evidence(case: &str, runs: &[f64]) {
    let known = exact(case, "log_evidence");
    let all = log_mean_exp(runs) - known.value;
    assert!((runs[0] - known.value).abs() < ONE * known.sd, "{case}: {} against {}", runs[0], known.value);
    let band = MANY * known.sd / (runs.len() as f64).sqrt();
    assert!(all.abs() < band, "{case}: {} seeds are off by {all}, allowed {band}", runs.len());
}

/// Whether the mean of runs lies within their known bias and four of their known standard deviations.
fn within(case: &str, item: &str, runs: &[f64]) -> bool {
    let known = exact(case, item);
    let off = mean(runs) - known.value;
    let band = known.bias + MANY * known.sd / (runs.len() as f64).sqrt();
    off.abs() < band
}
