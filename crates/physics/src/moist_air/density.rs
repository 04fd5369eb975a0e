//! Density of moist air.

use snowhum_units::{HumidityRatio, Kelvin, KilogramPerCubicMetre, Pascal};

/// Gas constant of dry air, J/(kg K) (ASHRAE Handbook Fundamentals 2017, chapter 1).
const R_DRY_AIR: f64 = 287.042;

/// Density of moist air: dry air and its vapour together.
///
/// ρ = (1 + W) p / (287.042 T (1 + 1.607858 W))
///
/// Valid for outdoor pressures and -50 to 60 °C.
///
/// Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 26 and 27.
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::density};
/// use snowhum_units::{HumidityRatio, Kelvin};
/// let rho = density(Kelvin::from_celsius(10.0), HumidityRatio::new(0.005321452), STANDARD_PRESSURE);
/// assert!((rho.get() - 1.24268).abs() < 1e-5);
/// ```
#[must_use]
pub fn density(t: Kelvin, ratio: HumidityRatio, total: Pascal) -> KilogramPerCubicMetre {
    dry_density(t, total) * ((1.0 + ratio.get()) / (1.0 + 1.607_858 * ratio.get()))
}

/// Density of dry air.
///
/// ρ = p / (287.042 T)
///
/// Source: ideal-gas law with the gas constant of ASHRAE Handbook Fundamentals 2017, chapter 1.
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::dry_density};
/// use snowhum_units::Kelvin;
/// assert!((dry_density(Kelvin::from_celsius(0.0), STANDARD_PRESSURE).get() - 1.2923).abs() < 1e-4);
/// ```
#[must_use]
pub fn dry_density(t: Kelvin, total: Pascal) -> KilogramPerCubicMetre {
    KilogramPerCubicMetre::new(total.get() / (R_DRY_AIR * t.get()))
}
