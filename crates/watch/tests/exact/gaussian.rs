//! Straight-line Gaussian models, where a Kalman filter is exact.

use snowhum_watch::strata::Strata;

use crate::{Luck, MANY, assert_evidence, log_normal, mean, spread, table};

const PARTICLES: usize = 1000;
const SEEDS: u64 = 64;
/// A filter's mean may scatter this many times as much as one weighing of as many independent draws would make it.
const SCATTER: f64 = 2.0;

struct Line {
    start_mean: f64,
    start_sd: f64,
    keeps: f64,
    step_sd: f64,
    read_sd: f64,
}

/// Log evidence, and the filtered mean after every step.
fn filter(line: &Line, readings: &[f64], luck: Luck) -> (f64, Vec<f64>) {
    let start = (0..PARTICLES).map(|m| line.start_mean + line.start_sd * luck.normal(m, 0, 1)).collect();
    let mut strata: Strata<Vec<f64>, ()> = Strata::new(start, PARTICLES);
    let (mut log_evidence, mut means) = (0.0, Vec::new());
    for (t, &reading) in readings.iter().enumerate() {
        if t > 0 {
            for (m, x) in strata.alive.iter_mut().enumerate() {
                *x = line.keeps * *x + line.step_sd * luck.normal(m, t, 1);
            }
        }
        if !reading.is_nan() {
            let logs: Vec<f64> = strata.alive.iter().map(|x| log_normal(reading, *x, line.read_sd)).collect();
            let evidence = strata.weigh(&logs, &[]);
            assert!(!evidence.unexplained);
            log_evidence += evidence.log_evidence;
        }
        means.push(strata.alive.iter().zip(&strata.alive_mass).map(|(x, mass)| x * mass).sum());
        strata.renew(luck.uniform(0, t, 2));
    }
    (log_evidence, means)
}

/// Standard deviation of the weighed mean of independent draws made before a reading: `∫ (x − m)² p² / q dx / N`, with
/// p the exact law after the reading, `N(m, v)`, and q the one before, `N(m + off, before)`.
fn scatter(line: &Line, rows: &[Vec<f64>], t: usize) -> f64 {
    let (m, v) = (rows[t][2], rows[t][3]);
    let (off, before) = match t {
        0 => (line.start_mean - m, line.start_sd.powi(2)),
        _ => (line.keeps * rows[t - 1][2] - m, line.keeps.powi(2) * rows[t - 1][3] + line.step_sd.powi(2)),
    };
    let precision = 2.0 / v - 1.0 / before;
    let centre = -off / before / precision;
    let height = (0.5 * (off * off / before + precision * centre * centre)).exp() * (before / precision).sqrt() / v;
    (height * (1.0 / precision + centre * centre) / PARTICLES as f64).sqrt()
}

fn check(case: &str, line: &Line, rows: &[Vec<f64>]) {
    let readings: Vec<f64> = rows.iter().map(|row| row[1]).collect();
    let runs: Vec<(f64, Vec<f64>)> = (0..SEEDS).map(|seed| filter(line, &readings, Luck::of(seed))).collect();
    assert_evidence(case, &runs.iter().map(|(log, _)| *log).collect::<Vec<_>>());
    for t in [0, 27, 42, 49, 99] {
        let means: Vec<f64> = runs.iter().map(|(_, means)| means[t]).collect();
        let (off, sd) = (mean(&means) - rows[t][2], spread(&means));
        let widest = SCATTER * scatter(line, rows, t);
        assert!(sd < widest, "{case} at {}: scatters {sd}, at most {widest}", t + 1);
        assert!(off.abs() < MANY * sd / (SEEDS as f64).sqrt(), "{case} at {}: off by {off}, sd {sd}", t + 1);
    }
}

#[test]
fn the_nile_is_filtered_as_exactly_as_chance_allows() {
    let line = Line {
        start_mean: 1000.0,
        start_sd: 500.0,
        keeps: 1.0,
        step_sd: 1469.1_f64.sqrt(),
        read_sd: 15099.0_f64.sqrt(),
    };
    check("nile", &line, &table(include_str!("../data/nile.csv")));
}

fn autoregressive() -> Line {
    let start_sd = (0.25_f64 / (1.0 - 0.95 * 0.95)).sqrt();
    Line { start_mean: 0.0, start_sd, keeps: 0.95, step_sd: 0.5, read_sd: 1.0 }
}

#[test]
fn a_series_read_every_time_is_filtered_as_exactly_as_chance_allows() {
    check("ar1_full", &autoregressive(), &table(include_str!("../data/ar1_full.csv")));
}

#[test]
fn a_series_read_now_and_then_is_filtered_as_exactly_as_chance_allows() {
    check("ar1_gappy", &autoregressive(), &table(include_str!("../data/ar1_gappy.csv")));
}
