//! Heats of evaporation, fusion and sublimation of water.

use snowhum_units::{JoulePerKilogram, Kelvin};

/// Heat of fusion of ice at 0 °C (from memory; common tables give 333.4 to 333.6 kJ/kg).
pub const FUSION: JoulePerKilogram = JoulePerKilogram::new(333_500.0);

/// Heat of sublimation at 0 °C: [`FUSION`] and 2500.9 kJ/kg of evaporation (IAPWS-95); within 0.2 % down to -40 °C.
pub const SUBLIMATION: JoulePerKilogram = JoulePerKilogram::new(2_834_400.0);

/// Heat of evaporation of water.
///
/// h_fg = 2501 - 2.361 t kJ/kg, t in °C
///
/// Valid -20 to 40 °C (within 0.03 % of IAPWS-95 from 0 to 40 °C). Source: common fit, checked against CoolProp 8.0.0.
///
/// ```
/// use snowhum_physics::moist_air::evaporation;
/// use snowhum_units::Kelvin;
/// assert!((evaporation(Kelvin::from_celsius(10.0)).get() - 2_477_390.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn evaporation(t: Kelvin) -> JoulePerKilogram {
    JoulePerKilogram::new(2_501_000.0 - 2_361.0 * t.celsius())
}
