//! An uncertain number: what is likely, and how far it may lie.

use crate::Same;
use serde::{Deserialize, Serialize};

/// Three quantiles of something uncertain: one in ten lies below `p10`, half below `p50`, one in ten above `p90`.
///
/// ```
/// use snowhum_units::Range;
/// let bees = Range::new(9_000.0, 12_000.0, 16_000.0).unwrap();
/// assert_eq!(bees.map(|b| b / 1_000.0).p50, 12.0);
/// assert!(Range::new(2.0, 1.0, 3.0).is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Range<T> {
    /// One in ten below.
    pub p10: T,
    /// As likely below as above.
    pub p50: T,
    /// One in ten above.
    pub p90: T,
}

impl<T: Copy + PartialOrd> Range<T> {
    /// A range whose quantiles are in order; `None` if they are not.
    #[must_use]
    pub fn new(p10: T, p50: T, p90: T) -> Option<Self> {
        (p10 <= p50 && p50 <= p90).then_some(Self { p10, p50, p90 })
    }

    /// A number known exactly.
    #[must_use]
    pub fn exact(value: T) -> Self {
        Self { p10: value, p50: value, p90: value }
    }

    /// The same range in another unit; `f` must not turn the order round.
    #[must_use]
    pub fn map<U>(self, f: impl Fn(T) -> U) -> Range<U> {
        Range { p10: f(self.p10), p50: f(self.p50), p90: f(self.p90) }
    }
}

impl Range<f64> {
    /// The value at `z` standard normal deviates: two half-lognormals joined at `p50` if all three are positive,
    /// otherwise two half-normals. A range is what keepers give; this is how a member of an ensemble draws from it.
    ///
    /// ```
    /// use snowhum_units::Range;
    /// let stores = Range::new(10.0, 12.0, 16.0).unwrap();
    /// assert_eq!(stores.at(0.0), 12.0);
    /// assert!((stores.at(1.281_551_565_544_6) - 16.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn at(self, z: f64) -> f64 {
        const Z90: f64 = 1.281_551_565_544_6;
        let outer = if z < 0.0 { self.p10 } else { self.p90 };
        if self.p10 > 0.0 {
            self.p50 * (outer / self.p50).same_powf(z.abs() / Z90)
        } else {
            self.p50 + (outer - self.p50) * z.abs() / Z90
        }
    }
}
