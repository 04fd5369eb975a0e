//! A hive lifted at one side and then at the other.
//!
//! With the width L between the lift points, the supports' outer edges inset by d, the centre of gravity at height h
//! and at x from the left, and the side lifted by u, the hive turns about the far support by the angle t with
//! sin t = u / (L - d). Moments about that support, the pull straight up:
//!
//! F_left (L - d) = W (L - d - x - h tan t) and F_right (L - d) = W (x - d - h tan t), so
//! W = (F_left + F_right) (L - d) / (L - 2 d - 2 h tan t), wherever the centre of gravity lies.

use snowhum_units::{Kilogram, Metre};

/// How a hive was lifted at its two sides.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoSided {
    /// Lowest steady reading at the left.
    pub left: Kilogram,
    /// Lowest steady reading at the right.
    pub right: Kilogram,
    /// Between the two lift points.
    pub width: Metre,
    /// From each lift point in to the outer edge of the support it turns on.
    pub inset: Metre,
    /// How far the side was lifted.
    pub lift: Metre,
    /// Height of the centre of gravity over the supports.
    pub centre_height: Metre,
}

impl TwoSided {
    /// What the sum of the readings must be multiplied by; none where the hive would tip.
    ///
    /// ```
    /// use snowhum_advice::sums::weigh::TwoSided;
    /// use snowhum_units::{Kilogram, Metre};
    /// let rails = TwoSided {
    ///     left: Kilogram::new(20.0),
    ///     right: Kilogram::new(18.0),
    ///     width: Metre::new(0.50),
    ///     inset: Metre::new(0.05),
    ///     lift: Metre::ZERO,
    ///     centre_height: Metre::new(0.30),
    /// };
    /// assert!((rails.factor().unwrap() - 1.125).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn factor(&self) -> Option<f64> {
        let arm_m = (self.width - self.inset).get();
        let base_m = (self.width - 2.0 * self.inset).get() - 2.0 * self.centre_height.get() * self.tilt()?;
        (arm_m > 0.0 && base_m > 0.0).then(|| arm_m / base_m)
    }

    /// The whole weight.
    #[must_use]
    pub fn whole(&self) -> Option<Kilogram> {
        Some((self.left + self.right) * self.factor()?)
    }

    /// How far the centre of gravity lies right of the middle.
    #[must_use]
    pub fn off_centre(&self) -> Option<Metre> {
        let arm = self.width - self.inset;
        let from_right = arm * (self.left / self.whole()?) + self.centre_height * self.tilt()?;
        Some(arm - from_right - self.width / 2.0)
    }

    /// Tangent of the angle the hive was turned by.
    fn tilt(&self) -> Option<f64> {
        let sine = self.lift / (self.width - self.inset);
        (0.0..0.5).contains(&sine).then(|| sine / (1.0 - sine * sine).sqrt())
    }
}
