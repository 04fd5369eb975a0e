//! Intervals for counts, and chances of counts.
//!
//! Sources: Clopper and Pearson 1934 (exact binomial), Wilson 1927 (score), Garwood 1936 (exact Poisson).

use serde::{Deserialize, Serialize};
use snowhum_draws::normal_quantile;
use snowhum_units::Same;

use super::chances::{beta_at_most, beta_quantile, even_at_least, where_it_stops};

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
    let low = if k > 0.0 { beta_quantile(TAIL, k, n - k + 1.0)? } else { 0.0 };
    let high = if k < n { beta_quantile(1.0 - TAIL, k + 1.0, n - k)? } else { 1.0 };
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
    turned_round(k, most_mean(k), |k, mean| even_at_least(f64::from(k), mean))
}

/// 95 % interval of the mean of a count that falls unevenly: negative binomial with variance mean + mean²/`evenness`,
/// by turning its two tails round.
#[must_use]
pub fn uneven(k: u32, evenness: f64) -> Interval {
    turned_round(k, most_mean(k) * (1.0 + 100.0 / evenness), |k, mean| uneven_at_least(k, mean, evenness))
}

/// The means, up to `most`, at which `k` or more and `k` or fewer are as rare as the tails.
fn turned_round(k: u32, most: f64, at_least: impl Fn(u32, f64) -> f64) -> Interval {
    let low = if k > 0 { where_it_stops(most, |mean| at_least(k, mean) < TAIL) } else { 0.0 };
    let high = where_it_stops(most, |mean| 1.0 - at_least(k.saturating_add(1), mean) > TAIL);
    Interval { low, high }
}

/// More than the mean that `k` can be few of, where counts fall evenly.
fn most_mean(k: u32) -> f64 {
    f64::from(k) + 10.0 * f64::from(k).sqrt() + 10.0
}

/// Chance of `k` or more where the mean is `mean` and the variance mean + mean²/`evenness`.
#[must_use]
pub fn uneven_at_least(k: u32, mean: f64, evenness: f64) -> f64 {
    if k == 0 { 1.0 } else { beta_at_most(mean / (evenness + mean), f64::from(k), evenness) }
}

/// Chance that the share is above `line` after `k` of `n`, from a beta prior of shapes `a` and `b`.
#[must_use]
pub fn chance_above(line: f64, k: u32, n: u32, [a, b]: [f64; 2]) -> Option<f64> {
    let rest = f64::from(n.checked_sub(k)?);
    Some(beta_at_most(1.0 - line, b + rest, a + f64::from(k))).filter(|chance| !chance.is_nan())
}

/// The same chance where mites sit unevenly: the beta prior times the negative binomial chance of `k` at each rate, summed
/// over rates from none to one a bee.
#[must_use]
pub fn uneven_chance_above(line: f64, k: u32, n: u32, [a, b]: [f64; 2], evenness: f64) -> f64 {
    const STEPS: u32 = 4_000;
    let ln_weight = |share: f64| {
        let mean = share * f64::from(n);
        (a - 1.0) * share.same_ln() + (b - 1.0) * (1.0 - share).same_ln() + f64::from(k) * mean.same_ln()
            - (f64::from(k) + evenness) * (evenness + mean).same_ln()
    };
    let shares: Vec<f64> = (0..STEPS).map(|step| (f64::from(step) + 0.5) / f64::from(STEPS)).collect();
    let highest = shares.iter().map(|share| ln_weight(*share)).fold(f64::NEG_INFINITY, f64::max);
    let weight = |share: &f64| (ln_weight(*share) - highest).same_exp();
    let above: f64 = shares.iter().filter(|share| **share > line).map(weight).sum();
    above / shares.iter().map(weight).sum::<f64>()
}

/// Mean and 95 % interval of the share after `k` of `n`, from a beta prior of shapes `a` and `b`.
#[must_use]
pub fn beta_share(k: u32, n: u32, [a, b]: [f64; 2]) -> Option<(f64, Interval)> {
    let (a, b) = (a + f64::from(k), b + f64::from(n.checked_sub(k)?));
    Some((a / (a + b), Interval { low: beta_quantile(TAIL, a, b)?, high: beta_quantile(1.0 - TAIL, a, b)? }))
}

/// The 97.5 % point of Student's t, whose square over itself and the freedom is a beta variable.
#[must_use]
pub fn student(freedom: f64) -> f64 {
    let share = beta_quantile(1.0 - 2.0 * TAIL, 0.5, 0.5 * freedom);
    share.map_or(f64::INFINITY, |share| (freedom * share / (1.0 - share)).sqrt())
}
