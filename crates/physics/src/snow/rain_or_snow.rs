//! What falls: rain or snow.

use snowhum_units::{Fraction, Kelvin};

/// The part of precipitation that falls as snow.
///
/// 1 up to 0 °C, falling in a straight line to 0 at 2 °C and above.
///
/// Holds for hourly or daily air temperature; dry air lets snow reach the ground in warmer air. Source: common split
/// (from memory).
///
/// ```
/// use snowhum_physics::snow::snow_share;
/// use snowhum_units::Kelvin;
/// assert!((snow_share(Kelvin::from_celsius(0.5)).get() - 0.75).abs() < 1e-9);
/// ```
#[must_use]
pub fn snow_share(air: Kelvin) -> Fraction {
    const ALL_RAIN_C: f64 = 2.0;
    Fraction::new((1.0 - air.celsius() / ALL_RAIN_C).clamp(0.0, 1.0))
}
