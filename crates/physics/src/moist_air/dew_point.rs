//! Dew and frost point: at which temperature a vapour pressure saturates.

use crate::saturation::{LnPressure, TRIPLE_POINT, ln_over_ice, ln_over_water, over_water};
use snowhum_units::Same;
use snowhum_units::{Kelvin, Pascal};

/// The temperature at which vapour begins to settle: as frost below 0.01 °C, as dew above.
///
/// T with p_ws(T) = p_w, found by Newton's method on ln p_ws over 1/T. Valid -100 to 200 °C: `None` outside, and
/// without vapour.
///
/// Source: inverse of [`crate::saturation::over_ice_or_water`].
///
/// ```
/// use snowhum_physics::moist_air::frost_or_dew_point;
/// use snowhum_units::Pascal;
/// let frost = frost_or_dew_point(Pascal::new(82.6083)).unwrap();
/// assert!((frost.celsius() + 22.30395).abs() < 1e-5);
/// assert!(frost_or_dew_point(Pascal::ZERO).is_none());
/// ```
#[must_use]
pub fn frost_or_dew_point(vapour: Pascal) -> Option<Kelvin> {
    if vapour < over_water(TRIPLE_POINT) { invert(vapour, ln_over_ice) } else { invert(vapour, ln_over_water) }
}

/// The dew point over liquid water, which in frost lies below the frost point.
///
/// T with p_ws,water(T) = p_w; below 0 °C for supercooled water. `None` outside -100 to 200 °C and without vapour.
///
/// Source: inverse of [`crate::saturation::over_water`].
///
/// ```
/// use snowhum_physics::moist_air::dew_point_over_water;
/// use snowhum_units::Pascal;
/// assert!((dew_point_over_water(Pascal::new(82.6083)).unwrap().celsius() + 24.76771).abs() < 1e-5);
/// ```
#[must_use]
pub fn dew_point_over_water(vapour: Pascal) -> Option<Kelvin> {
    invert(vapour, ln_over_water)
}

/// Newton on ln p over x = 1/T, in which the law is nearly a straight line, so that a few steps reach the last digit.
fn invert(vapour: Pascal, law: fn(f64) -> LnPressure) -> Option<Kelvin> {
    const COLDEST_K: f64 = 173.15;
    const WARMEST_K: f64 = 473.15;
    let target = vapour.get().same_ln();
    if !(law(COLDEST_K).value..=law(WARMEST_K).value).contains(&target) {
        return None;
    }
    let mut t_k: f64 = 273.15;
    for _ in 0..20 {
        let ln_pressure = law(t_k);
        let step = (target - ln_pressure.value) / (-t_k * t_k * ln_pressure.slope_per_k);
        let next_k = (1.0 / t_k + step).recip().clamp(COLDEST_K, WARMEST_K);
        let moved_k = (next_k - t_k).abs();
        t_k = next_k;
        if moved_k < 1e-11 {
            break;
        }
    }
    Some(Kelvin::new(t_k))
}
