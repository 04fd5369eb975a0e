//! Thermal conductivity of wood across the grain.

use snowhum_units::{Fraction, WattPerMetreKelvin};

/// Thermal conductivity of wood across the grain, from its specific gravity and moisture content.
///
/// k = G (B + C x) + A, with A = 0.01864, B = 0.1941, C = 0.004064 W/(m K), x the moisture in percent of dry mass.
/// `specific_gravity` is ovendry mass over the mass of water of the wood's volume; `moisture` is a part of dry mass.
///
/// Valid for G > 0.3, moisture below 0.25 and 24 °C, within 20 %; 2 to 3 % more a 10 K of warmth, so that wood in frost
/// conducts up to a tenth less. Along the grain it is 1.5 to 2.8 times as much.
///
/// Source: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), equation 4-15.
///
/// ```
/// use snowhum_physics::wood::conductivity;
/// use snowhum_units::Fraction;
/// let white_pine = conductivity(Fraction::new(0.37), Fraction::new(0.12));
/// assert!((white_pine.get() - 0.1085).abs() < 1e-4);
/// ```
#[must_use]
pub fn conductivity(specific_gravity: Fraction, moisture: Fraction) -> WattPerMetreKelvin {
    const A: f64 = 0.018_64;
    const B: f64 = 0.194_1;
    const C_PER_PERCENT: f64 = 0.004_064;
    WattPerMetreKelvin::new(specific_gravity.get() * (B + C_PER_PERCENT * 100.0 * moisture.get()) + A)
}
