//! Melt of lying snow.

use snowhum_units::{Kelvin, KilogramPerSquareMetreSecond};

/// Melt of lying snow by the degree-day law, as mass of water.
///
/// M = 3 mm/(K d) · max(0, t), t the air temperature in °C
///
/// Holds for means of a day or longer, open ground, no rain on snow; factors of 2 to 6 are met. The caller caps it by
/// the snow that lies. Source: degree-day method with a common winter factor (from memory).
///
/// ```
/// use snowhum_physics::snow::melt;
/// use snowhum_units::Kelvin;
/// assert!((melt(Kelvin::from_celsius(2.0)).get() * 86_400.0 - 6.0).abs() < 1e-9);
/// assert_eq!(melt(Kelvin::from_celsius(-2.0)).get(), 0.0);
/// ```
#[must_use]
pub fn melt(air: Kelvin) -> KilogramPerSquareMetreSecond {
    const FACTOR_KG_PER_M2_K_DAY: f64 = 3.0;
    KilogramPerSquareMetreSecond::new(FACTOR_KG_PER_M2_K_DAY / 86_400.0 * air.celsius().max(0.0))
}
