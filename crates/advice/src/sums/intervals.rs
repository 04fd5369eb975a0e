//! Intervals for counts, and chances of counts.
//!
//! Sources: Clopper and Pearson 1934 (exact binomial), Wilson 1927 (score), Garwood 1936 (exact Poisson). Quantiles and
//! distribution functions are those of the `statrs` library.

use serde::{Deserialize, Serialize};
use snowhum_draws::normal_quantile;
use statrs::distribution::{Beta, ChiSquared, ContinuousCDF, DiscreteCDF, NegativeBinomial, StudentsT};

/// Chance outside a 95 % interval on either side.
const TAIL: f64 = 0.025;

/// From least to most.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Interval {
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
}

impl Interval {
    /// The same interval in another unit; `f` must not turn the order round.
    #[must_use]
    pub fn map(self, f: impl Fn(f64) -> f64) -> Self {
        Self { low: f(self.low), high: f(self.high) }
    }
}

/// Exact 95 % interval of a share from `k` of `n` (Clopper and Pearson); `None` where `k` is more than `n` or `n` is none.
///
/// ```
/// use snowhum_advice::sums::intervals::clopper_pearson;
/// let share = clopper_pearson(9, 300).unwrap();
/// assert!((share.low - 0.0138).abs() < 1e-4 && (share.high - 0.0562).abs() < 1e-4);
/// ```
#[must_use]
pub fn clopper_pearson(k: u32, n: u32) -> Option<Interval> {
    if k > n || n == 0 {
        return None;
    }
    let (k, n) = (f64::from(k), f64::from(n));
    let low = if k > 0.0 { Beta::new(k, n - k + 1.0).ok()?.inverse_cdf(TAIL) } else { 0.0 };
    let high = if k < n { Beta::new(k + 1.0, n - k).ok()?.inverse_cdf(1.0 - TAIL) } else { 1.0 };
    Some(Interval { low, high })
}

/// Score 95 % interval of a share from `k` of `n` (Wilson); `None` where `k` is more than `n` or `n` is none.
#[must_use]
pub fn wilson(k: u32, n: u32) -> Option<Interval> {
    if k > n || n == 0 {
        return None;
    }
    let (k, n, z) = (f64::from(k), f64::from(n), normal_quantile(1.0 - TAIL));
    let share = k / n;
    let middle = (share + z * z / (2.0 * n)) / (1.0 + z * z / n);
    let half = z * (share * (1.0 - share) / n + z * z / (4.0 * n * n)).sqrt() / (1.0 + z * z / n);
    Some(Interval { low: (middle - half).max(0.0), high: (middle + half).min(1.0) })
}

/// Exact 95 % interval of the mean of a count that falls evenly (Garwood).
#[must_use]
pub fn garwood(k: u32) -> Interval {
    let k = f64::from(k);
    let half_chi = |q: f64, freedom: f64| ChiSquared::new(freedom).map_or(f64::NAN, |chi| 0.5 * chi.inverse_cdf(q));
    let low = if k > 0.0 { half_chi(TAIL, 2.0 * k) } else { 0.0 };
    Interval { low, high: half_chi(1.0 - TAIL, 2.0 * k + 2.0) }
}

/// 95 % interval of the mean of a count that falls unevenly: negative binomial with variance mean + mean²/`evenness`,
/// by turning its two tails round.
#[must_use]
pub fn uneven(k: u32, evenness: f64) -> Interval {
    let low = if k > 0 { mean_where(k, evenness, |mean| uneven_at_least(k, mean, evenness) < TAIL) } else { 0.0 };
    let high = mean_where(k, evenness, |mean| 1.0 - uneven_at_least(k + 1, mean, evenness) > TAIL);
    Interval { low, high }
}

/// The mean where `below` stops holding, by halving.
fn mean_where(k: u32, evenness: f64, below: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (0.0, (f64::from(k) + 10.0 * f64::from(k).sqrt() + 10.0) * (1.0 + 100.0 / evenness));
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if below(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

/// Chance of `k` or more where the mean is `mean` and the variance mean + mean²/`evenness`.
#[must_use]
pub fn uneven_at_least(k: u32, mean: f64, evenness: f64) -> f64 {
    let Some(most) = k.checked_sub(1) else { return 1.0 };
    let success = evenness / (evenness + mean);
    NegativeBinomial::new(evenness, success).map_or(f64::NAN, |count| count.sf(u64::from(most)))
}

/// Chance that the share is above `line` after `k` of `n`, from a beta prior of shapes `a` and `b`.
#[must_use]
pub fn chance_above(line: f64, k: u32, n: u32, [a, b]: [f64; 2]) -> Option<f64> {
    let rest = f64::from(n.checked_sub(k)?);
    Some(Beta::new(a + f64::from(k), b + rest).ok()?.sf(line))
}

/// The same chance where mites sit unevenly: the beta prior times the negative binomial chance of `k` at each rate, summed
/// over rates from none to one a bee.
#[must_use]
pub fn uneven_chance_above(line: f64, k: u32, n: u32, [a, b]: [f64; 2], evenness: f64) -> f64 {
    const STEPS: u32 = 4_000;
    let ln_weight = |share: f64| {
        let mean = share * f64::from(n);
        (a - 1.0) * share.ln() + (b - 1.0) * (1.0 - share).ln() + f64::from(k) * mean.ln()
            - (f64::from(k) + evenness) * (evenness + mean).ln()
    };
    let shares: Vec<f64> = (0..STEPS).map(|step| (f64::from(step) + 0.5) / f64::from(STEPS)).collect();
    let highest = shares.iter().map(|share| ln_weight(*share)).fold(f64::NEG_INFINITY, f64::max);
    let weight = |share: &f64| (ln_weight(*share) - highest).exp();
    let above: f64 = shares.iter().filter(|share| **share > line).map(weight).sum();
    above / shares.iter().map(weight).sum::<f64>()
}

/// Mean and 95 % interval of the share after `k` of `n`, from a beta prior of shapes `a` and `b`.
#[must_use]
pub fn beta_share(k: u32, n: u32, [a, b]: [f64; 2]) -> Option<(f64, Interval)> {
    let (a, b) = (a + f64::from(k), b + f64::from(n.checked_sub(k)?));
    let share = Beta::new(a, b).ok()?;
    Some((a / (a + b), Interval { low: share.inverse_cdf(TAIL), high: share.inverse_cdf(1.0 - TAIL) }))
}

/// The 97.5 % point of Student's t.
#[must_use]
pub fn student(freedom: f64) -> f64 {
    StudentsT::new(0.0, 1.0, freedom).map_or(f64::INFINITY, |t| t.inverse_cdf(1.0 - TAIL))
}
