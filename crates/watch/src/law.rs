//! The chance of what is seen: one type for judging a sign and for making one up.

use snowhum_draws::normal_quantile;
use snowhum_figures::watch_looks::{STRAY_MEAN, STRAY_SIZE};
use snowhum_units::Same;

/// The law of one sign, given the hive it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Law {
    /// Something that is there with this chance.
    There(f64),
    /// One of up to four things, each with its weight; weights need not sum to one.
    Choice([f64; 4]),
    /// A count: negative binomial of this mean and size (a small size is a wide spread), and with the chance `stray` a
    /// count that has nothing to do with the hive.
    Count {
        /// Mean.
        mean: f64,
        /// Size: variance is `mean + mean²/size`.
        size: f64,
        /// Chance of a stray count.
        stray: f64,
    },
    /// A reading: normal, and with the chance `stray` off by far more (a slip of the pen, a bumped scale).
    Reading {
        /// Mean.
        mean: f64,
        /// Standard deviation.
        sd: f64,
        /// Chance of a stray reading.
        stray: f64,
        /// Standard deviation of a stray one.
        wide: f64,
    },
}

/// What was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Answer {
    /// There or not.
    There(bool),
    /// Which of the things.
    Choice(usize),
    /// At least the first and at most the second.
    Count(u32, Option<u32>),
    /// The number read.
    Reading(f64),
}

/// No chance is taken for less, so that nothing seen is ever impossible.
const LEAST: f64 = 1e-9;

impl Law {
    /// Natural logarithm of the chance (of the density, for a reading) of an answer. An answer of another kind than the
    /// law's says nothing: 0.
    ///
    /// ```
    /// use snowhum_watch::{Answer, Law};
    /// let hum = Law::There(0.4);
    /// assert!((hum.log_probability(&Answer::There(true)).exp() - 0.4).abs() < 1e-12);
    /// // scipy: nbinom.logpmf(7, n = 2, p = 2/12).
    /// let dead = Law::Count { mean: 10.0, size: 2.0, stray: 0.0 };
    /// assert!((dead.log_probability(&Answer::Count(7, Some(7))) - -2.780_328_294_333_956).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn log_probability(&self, answer: &Answer) -> f64 {
        self.probability(answer).same_ln()
    }

    /// Chance (density, for a reading) of an answer, at least the least that is told from none; 1 for an answer of another kind.
    pub(crate) fn probability(&self, answer: &Answer) -> f64 {
        let chance = match (self, answer) {
            (Self::There(p), Answer::There(there)) => {
                if *there {
                    *p
                } else {
                    1.0 - *p
                }
            }
            (Self::Choice(weights), Answer::Choice(which)) => {
                weights.get(*which).copied().unwrap_or(0.0) / weights.iter().sum::<f64>().max(LEAST)
            }
            (Self::Count { mean, size, stray }, Answer::Count(least, most)) => {
                let clean = between(*mean, *size, *least, *most);
                (1.0 - stray) * clean + stray * between(STRAY_MEAN, STRAY_SIZE, *least, *most)
            }
            (Self::Reading { mean, sd, stray, wide }, Answer::Reading(read)) => {
                (1.0 - stray) * density(*read, *mean, *sd) + stray * density(*read, *mean, *wide)
            }
            _ => return 1.0,
        };
        chance.max(LEAST)
    }

    /// Chance that an answer has nothing to do with the hive: a slip of the pen, a stray reading. 0 for laws without any.
    ///
    /// ```
    /// use snowhum_watch::{Answer, Law};
    /// let scale = Law::Reading { mean: 40.0, sd: 0.5, stray: 0.03, wide: 20.0 };
    /// assert!(scale.slip(&Answer::Reading(40.3)) < 0.01);
    /// assert!(scale.slip(&Answer::Reading(80.0)) > 0.99);
    /// ```
    #[must_use]
    pub fn slip(&self, answer: &Answer) -> f64 {
        let (clean, stray) = match (self, answer) {
            (Self::Count { mean, size, stray }, Answer::Count(least, most)) => (
                (1.0 - stray) * between(*mean, *size, *least, *most),
                stray * between(STRAY_MEAN, STRAY_SIZE, *least, *most),
            ),
            (Self::Reading { mean, sd, stray, wide }, Answer::Reading(read)) => {
                ((1.0 - stray) * density(*read, *mean, *sd), stray * density(*read, *mean, *wide))
            }
            _ => return 0.0,
        };
        if clean + stray > 0.0 { stray / (clean + stray) } else { 1.0 }
    }

    /// An answer drawn with the law's own chances, from four independent uniforms.
    #[must_use]
    pub fn sample(&self, uniforms: [f64; 4]) -> Answer {
        let [first, second, third, fourth] = uniforms;
        match self {
            Self::There(p) => Answer::There(first < *p),
            Self::Choice(weights) => Answer::Choice(pick(weights, first)),
            Self::Count { mean, size, stray } => {
                let (mean, size) = if second < *stray { (STRAY_MEAN, STRAY_SIZE) } else { (*mean, *size) };
                let n = count_at(mean, size, first);
                Answer::Count(n, Some(n))
            }
            Self::Reading { mean, sd, stray, wide } => {
                let sd = if third < *stray { wide } else { sd };
                Answer::Reading(mean + sd * normal_quantile(fourth))
            }
        }
    }
}

/// The place of the weight in which share `u` of their sum falls.
fn pick(weights: &[f64; 4], u: f64) -> usize {
    let aim = u * weights.iter().sum::<f64>();
    let mut sum = 0.0;
    for (place, weight) in weights.iter().enumerate() {
        sum += weight;
        if aim < sum {
            return place;
        }
    }
    weights.iter().rposition(|weight| *weight > 0.0).unwrap_or(0)
}

fn density(read: f64, mean: f64, sd: f64) -> f64 {
    let z = (read - mean) / sd;
    (-0.5 * z * z).same_exp() / (sd * (2.0 * std::f64::consts::PI).sqrt())
}

/// Chance that a negative binomial count lies from `least` to `most`.
fn between(mean: f64, size: f64, least: u32, most: Option<u32>) -> f64 {
    match most {
        Some(most) if most == least => log_pmf(mean, size, least).same_exp(),
        Some(most) => (sum_to(mean, size, most) - below(mean, size, least)).max(0.0),
        None => (1.0 - below(mean, size, least)).max(0.0),
    }
}

fn below(mean: f64, size: f64, n: u32) -> f64 {
    n.checked_sub(1).map_or(0.0, |last| sum_to(mean, size, last))
}

/// Chance of at most `most`. Bands of the round end at a hundred, so the sum is short.
fn sum_to(mean: f64, size: f64, most: u32) -> f64 {
    const FAR: u32 = 5_000;
    let ratio = mean / (mean + size);
    let mut term = log_pmf(mean, size, 0).same_exp();
    let mut sum = term;
    for n in 1..=most.min(FAR) {
        term *= ratio * (f64::from(n) - 1.0 + size) / f64::from(n);
        sum += term;
    }
    sum.min(1.0)
}

fn log_pmf(mean: f64, size: f64, n: u32) -> f64 {
    let n = f64::from(n);
    let p = size / (size + mean);
    libm::lgamma(n + size) - libm::lgamma(size) - libm::lgamma(n + 1.0)
        + size * p.same_ln()
        + n * (1.0 - p).max(1e-300).same_ln()
}

/// The count below which share `u` of a negative binomial lies.
fn count_at(mean: f64, size: f64, u: f64) -> u32 {
    const MOST: u32 = 20_000;
    let ratio = mean / (mean + size);
    let mut term = log_pmf(mean, size, 0).same_exp();
    let (mut sum, mut n) = (term, 0);
    while sum < u && n < MOST {
        n += 1;
        term *= ratio * (f64::from(n) - 1.0 + size) / f64::from(n);
        sum += term;
    }
    n
}
