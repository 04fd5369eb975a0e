//! Enthalpy of moist air.

use super::specific_heat::{DRY_AIR, VAPOUR};
use snowhum_units::{HumidityRatio, JoulePerKilogram, Kelvin};

/// Heat of evaporation at 0 °C as the enthalpy law has it, J/kg.
pub(super) const EVAPORATION_AT_0_C: f64 = 2_501_000.0;

/// Enthalpy of moist air a kilogram of dry air; zero for dry air at 0 °C and for liquid water at 0 °C.
///
/// h = 1006 t + W (2 501 000 + 1860 t), t in °C
///
/// Valid -50 to 60 °C. Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30.
///
/// ```
/// use snowhum_physics::moist_air::enthalpy;
/// use snowhum_units::{HumidityRatio, Kelvin};
/// let h = enthalpy(Kelvin::from_celsius(10.0), HumidityRatio::new(0.005321452));
/// assert!((h.get() - 23_467.93).abs() < 0.01);
/// ```
#[must_use]
pub fn enthalpy(t: Kelvin, ratio: HumidityRatio) -> JoulePerKilogram {
    let t_c = t.celsius();
    JoulePerKilogram::new(DRY_AIR.get() * t_c + ratio.get() * (EVAPORATION_AT_0_C + VAPOUR.get() * t_c))
}
