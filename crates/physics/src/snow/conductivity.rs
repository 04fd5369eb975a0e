//! Effective thermal conductivity of snow.

use snowhum_units::Same;
use snowhum_units::{KilogramPerCubicMetre, WattPerMetreKelvin};

/// Conductivity of ice near 0 °C, which no snow passes (from memory).
const ICE: f64 = 2.2;

/// Effective thermal conductivity of snow, logarithmic form.
///
/// k = 10^(2.650 ρ - 1.652), ρ in g/cm³; not above ice, 2.2 W/(m K)
///
/// Valid 50 to 600 kg/m³; the better of the two forms for light snow.
///
/// Source: Sturm, Holmgren, König and Morris 1997, Journal of Glaciology 43(143):26.
///
/// ```
/// use snowhum_physics::snow::conductivity;
/// use snowhum_units::KilogramPerCubicMetre;
/// assert!((conductivity(KilogramPerCubicMetre::new(150.0)).get() - 0.055654463).abs() < 1e-9);
/// ```
#[must_use]
pub fn conductivity(density: KilogramPerCubicMetre) -> WattPerMetreKelvin {
    WattPerMetreKelvin::new(10f64.same_powf(2.650 * density.get() / 1000.0 - 1.652).min(ICE))
}

/// Effective thermal conductivity of snow, quadratic form.
///
/// ρ ≥ 0.156: k = 0.138 - 1.01 ρ + 3.233 ρ²; below: k = 0.023 + 0.234 ρ, ρ in g/cm³; not above ice
///
/// Valid to 600 kg/m³ (R² 0.79 over 488 samples).
///
/// Source: Sturm, Holmgren, König and Morris 1997, Journal of Glaciology 43(143):26.
///
/// ```
/// use snowhum_physics::snow::conductivity_quadratic;
/// use snowhum_units::KilogramPerCubicMetre;
/// assert!((conductivity_quadratic(KilogramPerCubicMetre::new(200.0)).get() - 0.06532).abs() < 1e-9);
/// ```
#[must_use]
pub fn conductivity_quadratic(density: KilogramPerCubicMetre) -> WattPerMetreKelvin {
    let rho = density.get() / 1000.0;
    let k = if rho < 0.156 { 0.023 + 0.234 * rho } else { 0.138 - 1.01 * rho + 3.233 * rho * rho };
    WattPerMetreKelvin::new(k.min(ICE))
}
