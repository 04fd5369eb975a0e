//! Vapour pressure, relative humidity, humidity ratio and vapour density, one from another.

use crate::saturation::over_ice_or_water;
use snowhum_units::{Fraction, HumidityRatio, Kelvin, KilogramPerCubicMetre, Pascal};

/// Ratio of the molar masses of water and dry air (ASHRAE Handbook Fundamentals 2017, chapter 1).
const MOLAR_MASS_RATIO: f64 = 0.621_945;

/// Gas constant of water vapour, J/(kg K) (8.314 46 / 0.018 015 3).
const R_VAPOUR: f64 = 461.52;

/// Humidity ratio of air whose vapour has this pressure.
///
/// W = 0.621945 p_w / (p - p_w), for p_w well below p.
///
/// Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20.
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::humidity_ratio};
/// use snowhum_units::Pascal;
/// assert!((humidity_ratio(Pascal::new(859.5967), STANDARD_PRESSURE).get() - 0.005321452).abs() < 1e-9);
/// ```
#[must_use]
pub fn humidity_ratio(vapour: Pascal, total: Pascal) -> HumidityRatio {
    HumidityRatio::new(MOLAR_MASS_RATIO * vapour.get() / (total - vapour).get())
}

/// Vapour pressure of air of this humidity ratio: the inverse of [`humidity_ratio`].
///
/// p_w = p W / (0.621945 + W)
///
/// Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 36.
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::vapour_pressure};
/// use snowhum_units::HumidityRatio;
/// assert!((vapour_pressure(HumidityRatio::new(0.005321452), STANDARD_PRESSURE).get() - 859.597).abs() < 0.001);
/// ```
#[must_use]
pub fn vapour_pressure(ratio: HumidityRatio, total: Pascal) -> Pascal {
    Pascal::new(total.get() * ratio.get() / (MOLAR_MASS_RATIO + ratio.get()))
}

/// Vapour pressure of air at a temperature and relative humidity.
///
/// p_w = φ p_ws(t), with saturation over ice in frost: a humidity given over water in frost must be turned first.
///
/// Source: definition of relative humidity.
///
/// ```
/// use snowhum_physics::moist_air::vapour_pressure_at;
/// use snowhum_units::{Fraction, Kelvin};
/// assert!((vapour_pressure_at(Kelvin::from_celsius(-10.0), Fraction::new(0.9)).get() - 233.9126).abs() < 1e-3);
/// ```
#[must_use]
pub fn vapour_pressure_at(t: Kelvin, relative_humidity: Fraction) -> Pascal {
    over_ice_or_water(t) * relative_humidity.get()
}

/// Relative humidity, over ice in frost; above 1 the air is supersaturated.
///
/// φ = p_w / p_ws(t)
///
/// Source: definition.
///
/// ```
/// use snowhum_physics::moist_air::relative_humidity;
/// use snowhum_units::{Kelvin, Pascal};
/// assert!((relative_humidity(Kelvin::from_celsius(20.0), Pascal::new(1169.402)).get() - 0.5).abs() < 1e-6);
/// ```
#[must_use]
pub fn relative_humidity(t: Kelvin, vapour: Pascal) -> Fraction {
    Fraction::new(vapour / over_ice_or_water(t))
}

/// Humidity ratio of air at a temperature and relative humidity: [`humidity_ratio`] of [`vapour_pressure_at`].
///
/// ```
/// use snowhum_physics::{STANDARD_PRESSURE, moist_air::humidity_ratio_at};
/// use snowhum_units::{Fraction, Kelvin};
/// let ratio = humidity_ratio_at(Kelvin::from_celsius(10.0), Fraction::new(0.7), STANDARD_PRESSURE);
/// assert!((ratio.get() - 0.005321452).abs() < 1e-9);
/// ```
#[must_use]
pub fn humidity_ratio_at(t: Kelvin, relative_humidity: Fraction, total: Pascal) -> HumidityRatio {
    humidity_ratio(vapour_pressure_at(t, relative_humidity), total)
}

/// Mass of vapour in a cubic metre of air.
///
/// ρ_v = p_w / (461.52 T)
///
/// Source: ideal-gas law.
///
/// ```
/// use snowhum_physics::moist_air::vapour_density;
/// use snowhum_units::{Kelvin, Pascal};
/// assert!((vapour_density(Kelvin::from_celsius(10.0), Pascal::new(859.5967)).get() - 6.577906e-3).abs() < 1e-8);
/// ```
#[must_use]
pub fn vapour_density(t: Kelvin, vapour: Pascal) -> KilogramPerCubicMetre {
    KilogramPerCubicMetre::new(vapour.get() / (R_VAPOUR * t.get()))
}
