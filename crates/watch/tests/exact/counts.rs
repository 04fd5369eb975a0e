//! Counts, where sums and gamma laws are exact; and learning a number that does not change.

use snowhum_watch::liu_west::Kernel;
use snowhum_watch::strata::Strata;
use snowhum_watch::{Answer, Law};

use crate::{Luck, exact, mean};

#[test]
fn counts_have_the_chances_of_the_negative_binomial() {
    for (item, count, size) in [("nbinom_7_10_2", 7, 2.0), ("nbinom_0_10_half", 0, 0.5)] {
        let law = Law::Count { mean: 10.0, size, stray: 0.0 };
        let log = law.log_probability(&Answer::Count(count, Some(count)));
        assert!((log - exact("counts", item).value).abs() < 1e-9, "{item}: {log}");
    }
}

fn log_factorial(n: usize) -> f64 {
    libm::lgamma(n as f64 + 1.0)
}

fn log_poisson(count: usize, rate: f64) -> f64 {
    count as f64 * rate.ln() - rate - log_factorial(count)
}

fn log_binomial(count: usize, of: usize, share: f64) -> f64 {
    if count > of {
        return f64::NEG_INFINITY;
    }
    let ways = log_factorial(of) - log_factorial(count) - log_factorial(of - count);
    ways + count as f64 * share.ln() + (of - count) as f64 * (1.0 - share).ln()
}

#[test]
fn a_hidden_number_counted_thrice_is_weighed_to_the_last_digits() {
    let mut strata: Strata<Vec<usize>, ()> = Strata::new((0..400).collect(), 400);
    strata.alive_mass = (0..400).map(|n| log_poisson(n, 12.0).exp()).collect();
    let mut log_evidence = 0.0;
    for count in [3, 2, 4] {
        let logs: Vec<f64> = strata.alive.iter().map(|n| log_binomial(count, *n, 0.3)).collect();
        log_evidence += strata.weigh(&logs, &[]).log_evidence;
    }
    let posterior: f64 = strata.alive.iter().zip(&strata.alive_mass).map(|(n, mass)| *n as f64 * mass).sum();
    assert!((log_evidence - exact("counts", "n_mixture_log_evidence").value).abs() < 1e-10, "{log_evidence}");
    assert!((posterior - exact("counts", "n_mixture_mean").value).abs() < 1e-10, "{posterior}");
}

const COUNTS: [usize; 12] = [12, 9, 20, 4, 15, 11, 8, 17, 10, 13, 6, 14];
const PARTICLES: usize = 1000;

/// A draw of Gamma(2, rate 0.1): the sum of two exponentials.
fn rate_before(luck: Luck, m: usize) -> f64 {
    -(luck.uniform(m, 0, 1).ln() + luck.uniform(m, 0, 2).ln()) / 0.1
}

/// Posterior mean and standard deviation of the rate, and how many rates are still told apart.
fn learn(seed: u64, mut move_on: impl FnMut(&mut Strata<Vec<f64>, ()>, Luck, usize)) -> (f64, f64, usize) {
    let luck = Luck::of(seed);
    let start = (0..PARTICLES).map(|m| rate_before(luck, m).ln()).collect();
    let mut strata: Strata<Vec<f64>, ()> = Strata::new(start, PARTICLES);
    for (t, &count) in COUNTS.iter().enumerate() {
        let logs: Vec<f64> = strata.alive.iter().map(|log_rate| log_poisson(count, log_rate.exp())).collect();
        strata.weigh(&logs, &[]);
        move_on(&mut strata, luck, t);
    }
    let rates = || strata.alive.iter().map(|log_rate| log_rate.exp()).zip(&strata.alive_mass);
    let centre: f64 = rates().map(|(rate, mass)| rate * mass).sum();
    let variance: f64 = rates().map(|(rate, mass)| (rate - centre).powi(2) * mass).sum();
    let mut told_apart = strata.alive.clone();
    told_apart.sort_by(f64::total_cmp);
    told_apart.dedup();
    (centre, variance.sqrt(), told_apart.len())
}

/// Whether the mean of the posterior means and that of the standard deviations lie within four standard errors.
fn learned_rightly(runs: &[(f64, f64, usize)]) -> bool {
    let root = (runs.len() as f64).sqrt();
    let means: Vec<f64> = runs.iter().map(|run| run.0).collect();
    let sds: Vec<f64> = runs.iter().map(|run| run.1).collect();
    let (known_mean, known_sd) = (exact("static_rate", "mean"), exact("static_rate", "sd"));
    // Spread of a standard deviation over half as many independent draws, and half again for resampling.
    let sd_spread = known_sd.value / (PARTICLES as f64).sqrt() * 1.5;
    (mean(&means) - known_mean.value).abs() < 4.0 * known_mean.sd / root
        && (mean(&sds) - known_sd.value).abs() < 4.0 * sd_spread / root
}

#[test]
fn shrinking_and_jittering_learns_a_steady_rate_and_keeps_every_particle_apart() {
    let kernel = Kernel::from_discount(0.98);
    let right = |strata: &mut Strata<Vec<f64>, ()>, luck: Luck, t: usize| {
        if strata.renew(luck.uniform(0, t, 3)) {
            kernel.renew(&mut strata.alive, &strata.alive_mass, |m| luck.normal(m, t, 4));
        }
    };
    let runs: Vec<_> = (0..256).map(|seed| learn(seed, right)).collect();
    assert!(learned_rightly(&runs));
    assert!(runs.iter().all(|run| run.2 == PARTICLES), "every particle has a rate of its own");
}

#[test]
fn jitter_without_shrinking_is_found_out() {
    let naive = |strata: &mut Strata<Vec<f64>, ()>, luck: Luck, t: usize| {
        if strata.renew(luck.uniform(0, t, 3)) {
            for (m, rate) in strata.alive.iter_mut().enumerate() {
                *rate += 0.15 * luck.normal(m, t, 4);
            }
        }
    };
    let runs: Vec<_> = (0..64).map(|seed| learn(seed, naive)).collect();
    assert!(!learned_rightly(&runs));
}
