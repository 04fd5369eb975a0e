//! What kind of hour it was at the hives: unseen, and the same for all hives that were looked at in it.

use crate::Parameters;
use crate::weights::log_sum;
use snowhum_units::Same;

/// Kinds of hours that are told apart: one in which no bee flies whatever the day, and seven evenly likely ones from the
/// kindest to the harshest.
pub const KINDS: usize = 8;

/// Normal quantiles of seven evenly likely classes (at 1/14, 3/14, …), stretched to a standard deviation of one.
const HARSHNESS: [f64; KINDS - 1] = [-1.6077, -0.8688, -0.4017, 0.0, 0.4017, 0.8688, 1.6077];

/// One kind of hour.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hour(usize);

impl Hour {
    /// An hour as its day has most of them.
    pub const PLAIN: Self = Self(KINDS / 2);

    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..KINDS).map(Self)
    }

    /// The one that falls on a uniform draw.
    #[must_use]
    pub fn drawn(u: f64, p: &Parameters) -> Self {
        let mut left = u;
        let found = Self::all().find(|hour| {
            left -= hour.chance(p);
            left < 0.0
        });
        found.unwrap_or(Self::PLAIN)
    }

    /// Chance of it before anything is seen.
    pub(crate) fn chance(self, p: &Parameters) -> f64 {
        let missed = p.flight_missed.value;
        if self.0 == 0 { missed } else { (1.0 - missed) / (KINDS - 1) as f64 }
    }

    /// Degrees more that it asks before bees fly; `None` where none fly.
    pub(super) fn asks_k(self, p: &Parameters) -> Option<f64> {
        let harshness = HARSHNESS.get(self.0.checked_sub(1)?)?;
        Some(p.flight_hour.value * harshness)
    }
}

/// What is believed of the hour of a look: the chance of each kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hours([f64; KINDS]);

impl Hours {
    /// Of an hour of which nothing was seen.
    #[must_use]
    pub fn unknown(p: &Parameters) -> Self {
        Self(std::array::from_fn(|kind| Hour(kind).chance(p)))
    }

    /// After hives of the same hour were seen, each given as the logarithm of its signs' chance in every kind of hour. What
    /// nothing explains tells nothing of the hour.
    #[must_use]
    pub fn told<'a>(self, seen: impl Iterator<Item = &'a [f64; KINDS]>) -> Self {
        let mut logs = self.0.map(Same::same_ln);
        for chances in seen.filter(|chances| chances.iter().all(|log| log.is_finite())) {
            logs.iter_mut().zip(chances).for_each(|(log, chance)| *log += chance);
        }
        let all = log_sum(&logs);
        if all.is_finite() { Self(logs.map(|log| (log - all).same_exp())) } else { self }
    }

    /// The logarithm of a chance whichever kind of hour it was.
    #[must_use]
    pub fn over(&self, chances: &[f64; KINDS]) -> f64 {
        // What does not hang on the hour is as likely in each of them.
        if chances.iter().all(|chance| *chance == chances[0]) {
            return chances[0];
        }
        let logs: [f64; KINDS] = std::array::from_fn(|kind| self.0[kind].same_ln() + chances[kind]);
        log_sum(&logs)
    }
}
