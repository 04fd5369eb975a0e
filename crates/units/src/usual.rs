//! A count held against what is usual.

use serde::{Deserialize, Serialize};

/// What is usual: nine in ten lie from `least` to `most`, one in twenty below, one in twenty above.
///
/// ```
/// use snowhum_units::{Against, Usual};
/// let usual = Usual::of(&[(2.0, 1.0), (30.0, 18.0), (200.0, 1.0)]).unwrap();
/// assert_eq!(usual, Usual { least: 2, middle: 30, most: 30 });
/// assert_eq!(usual.against(6, Some(20)), Against::Expected);
/// assert_eq!(usual.against(101, None), Against::More);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Usual {
    /// One in twenty below.
    pub least: u32,
    /// As likely below as above.
    pub middle: u32,
    /// One in twenty above.
    pub most: u32,
}

/// A count against what is usual.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Against {
    /// Below it.
    #[serde(rename = "fewer than expected")]
    Fewer,
    /// Within it.
    #[serde(rename = "as expected")]
    Expected,
    /// Above it.
    #[serde(rename = "more than expected")]
    More,
}

impl Usual {
    /// Nothing at all.
    pub const NONE: Self = Self { least: 0, middle: 0, most: 0 };

    /// Of values with their weights; `None` without weight.
    #[must_use]
    pub fn of(values: &[(f64, f64)]) -> Option<Self> {
        let mut sorted: Vec<(f64, f64)> = values.iter().copied().filter(|(v, w)| v.is_finite() && *w > 0.0).collect();
        sorted.sort_by(|a, b| a.0.total_cmp(&b.0));
        let all: f64 = sorted.iter().map(|(_, weight)| weight).sum();
        let at = |share: f64| {
            let mut sum = 0.0;
            let found = sorted.iter().find(|(_, weight)| {
                sum += weight;
                sum >= share * all * (1.0 - 1e-12)
            });
            found.or(sorted.last()).map(|(value, _)| value.max(0.0).round() as u32)
        };
        Some(Self { least: at(0.05)?, middle: at(0.5)?, most: at(0.95)? })
    }

    /// How a count of at least the first and at most the second stands to it: outside only where all of it is.
    #[must_use]
    pub fn against(&self, least: u32, most: Option<u32>) -> Against {
        if least > self.most {
            Against::More
        } else if most.is_some_and(|most| most < self.least) {
            Against::Fewer
        } else {
            Against::Expected
        }
    }
}
