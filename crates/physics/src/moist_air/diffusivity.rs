//! Diffusivity of water vapour in air.

use snowhum_units::Same;
use snowhum_units::{Kelvin, Pascal, SquareMetrePerSecond};

/// Diffusivity of water vapour in air.
///
/// D = 0.2178 (T/273.15)^1.81 (p0/p) cm²/s
///
/// Stated for 0 to 100 °C; in frost it is extrapolated. Source: Massman 1998, Atmospheric Environment 32:1111.
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::vapour_diffusivity};
/// use snowhum_units::Kelvin;
/// let d = vapour_diffusivity(Kelvin::from_celsius(20.0), STANDARD_PRESSURE);
/// assert!((d.get() - 2.475166e-5).abs() < 1e-11);
/// ```
#[must_use]
pub fn vapour_diffusivity(t: Kelvin, total: Pascal) -> SquareMetrePerSecond {
    SquareMetrePerSecond::new(0.2178e-4 * (t.get() / 273.15).same_powf(1.81) * (crate::STANDARD_PRESSURE / total))
}
