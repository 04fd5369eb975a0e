//! Temperature. Absolute, in kelvin; keepers read and write Celsius or Fahrenheit.

use crate::KelvinDifference;
use serde::{Deserialize, Serialize};
use std::ops::{Add, Sub};

/// 0 °C in kelvin.
const ZERO_CELSIUS: f64 = 273.15;

/// Absolute temperature.
///
/// ```
/// use snowhum_units::Kelvin;
/// assert_eq!(Kelvin::from_celsius(0.0).get(), 273.15);
/// assert_eq!("14 F".parse::<Kelvin>().unwrap().celsius(), -10.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Kelvin(f64);

impl Kelvin {
    /// A value in kelvin.
    #[must_use]
    pub const fn new(value: f64) -> Self {
        Self(value)
    }

    /// A value in degrees Celsius.
    #[must_use]
    pub const fn from_celsius(value: f64) -> Self {
        Self(value + ZERO_CELSIUS)
    }

    /// A value in degrees Fahrenheit.
    #[must_use]
    pub const fn from_fahrenheit(value: f64) -> Self {
        Self((value - 32.0) / 1.8 + ZERO_CELSIUS)
    }

    /// The number in kelvin.
    #[must_use]
    pub const fn get(self) -> f64 {
        self.0
    }

    /// The number in degrees Celsius.
    #[must_use]
    pub const fn celsius(self) -> f64 {
        self.0 - ZERO_CELSIUS
    }

    /// The number in degrees Fahrenheit.
    #[must_use]
    pub const fn fahrenheit(self) -> f64 {
        self.celsius() * 1.8 + 32.0
    }

    /// The colder of two.
    #[must_use]
    pub fn min(self, other: Self) -> Self {
        Self(self.0.min(other.0))
    }

    /// The warmer of two.
    #[must_use]
    pub fn max(self, other: Self) -> Self {
        Self(self.0.max(other.0))
    }
}

impl Sub for Kelvin {
    type Output = KelvinDifference;
    fn sub(self, other: Self) -> KelvinDifference {
        KelvinDifference::new(self.0 - other.0)
    }
}

impl Add<KelvinDifference> for Kelvin {
    type Output = Self;
    fn add(self, difference: KelvinDifference) -> Self {
        Self(self.0 + difference.get())
    }
}

impl Sub<KelvinDifference> for Kelvin {
    type Output = Self;
    fn sub(self, difference: KelvinDifference) -> Self {
        Self(self.0 - difference.get())
    }
}

impl std::fmt::Display for Kelvin {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        std::fmt::Display::fmt(&self.0, f)?;
        f.write_str(" K")
    }
}
