//! Wet-bulb temperature.

use super::enthalpy::EVAPORATION_AT_0_C;
use super::specific_heat::{DRY_AIR, ICE, VAPOUR, WATER};
use super::{frost_or_dew_point, humidity_ratio, vapour_pressure};
use crate::saturation::over_ice_or_water;
use snowhum_units::{HumidityRatio, Kelvin, Pascal};

/// The thermodynamic wet-bulb temperature; below 0 °C the bulb is iced. `None` for air without vapour or
/// supersaturated.
///
/// t* ≥ 0: W = ((2501 - 2.326 t*) W_s* - 1.006 (t - t*)) / (2501 + 1.86 t - 4.186 t*);
/// t* < 0: W = ((2830 - 0.24 t*) W_s* - 1.006 (t - t*)) / (2830 + 1.86 t - 2.1 t*)
///
/// Valid -50 to 60 °C. Found by bisection between the frost or dew point and the air temperature, to 1e-9 K.
///
/// Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35.
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::wet_bulb};
/// use snowhum_units::{HumidityRatio, Kelvin};
/// let bulb = wet_bulb(Kelvin::from_celsius(10.0), HumidityRatio::new(0.005321452), STANDARD_PRESSURE).unwrap();
/// assert!((bulb.celsius() - 7.3988).abs() < 1e-3);
/// ```
#[must_use]
pub fn wet_bulb(t: Kelvin, ratio: HumidityRatio, total: Pascal) -> Option<Kelvin> {
    let settles = frost_or_dew_point(vapour_pressure(ratio, total))?;
    // Air that is saturated to the last digits has its wet bulb at the air temperature.
    if settles.get() > t.get() + 1e-6 {
        return None;
    }
    let (mut low, mut high) = (settles.min(t), t);
    while (high - low).get() > 1e-9 {
        let middle = low + (high - low) / 2.0;
        if ratio_at_bulb(t, middle, total) > ratio {
            high = middle;
        } else {
            low = middle;
        }
    }
    Some(high)
}

/// The humidity ratio of air at `t` whose wet bulb shows `bulb`.
fn ratio_at_bulb(t: Kelvin, bulb: Kelvin, total: Pascal) -> HumidityRatio {
    /// Sublimation at 0 °C as these equations have it, J/kg, and its slopes, J/(kg K).
    const SUBLIMATION_AT_0_C: f64 = 2_830_000.0;
    const SLOPE_ICE: f64 = 240.0;
    const SLOPE_WATER: f64 = 2_326.0;
    let (t_c, bulb_c) = (t.celsius(), bulb.celsius());
    let saturated = humidity_ratio(over_ice_or_water(bulb), total).get();
    let (latent, slope, bulb_heat) =
        if bulb_c < 0.0 { (SUBLIMATION_AT_0_C, SLOPE_ICE, ICE) } else { (EVAPORATION_AT_0_C, SLOPE_WATER, WATER) };
    let above = (latent - slope * bulb_c) * saturated - DRY_AIR.get() * (t_c - bulb_c);
    HumidityRatio::new(above / (latent + VAPOUR.get() * t_c - bulb_heat.get() * bulb_c))
}
