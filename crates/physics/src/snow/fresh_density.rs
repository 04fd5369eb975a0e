//! Density of snow as it falls.

use snowhum_units::Same;
use snowhum_units::{Kelvin, KilogramPerCubicMetre};

/// Density of fresh snow by air temperature.
///
/// ρ = 67.92 + 51.25 exp(t / 2.59), t in °C, taken at 0 °C in warmer air
///
/// Valid -20 to 0 °C in calm air; drifted snow packs to 200 and more. It stays within the 50 to 150 kg/m³ that
/// glossaries give for fresh snow.
///
/// Source: Hedstrom and Pomeroy 1998, Hydrological Processes 12:1611 (from memory).
///
/// ```
/// use snowhum_physics::snow::fresh_density;
/// use snowhum_units::Kelvin;
/// assert!((fresh_density(Kelvin::from_celsius(0.0)).get() - 119.17).abs() < 1e-9);
/// assert!(fresh_density(Kelvin::from_celsius(-15.0)).get() < 69.0);
/// ```
#[must_use]
pub fn fresh_density(air: Kelvin) -> KilogramPerCubicMetre {
    KilogramPerCubicMetre::new(67.92 + 51.25 * (air.celsius().min(0.0) / 2.59).same_exp())
}
