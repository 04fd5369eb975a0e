//! Saturation vapour pressure after Hyland and Wexler.

use snowhum_units::Same;
use snowhum_units::{Kelvin, Pascal};

/// The triple point of water, where the laws over ice and over water meet (0.01 °C).
pub const TRIPLE_POINT: Kelvin = Kelvin::new(273.16);

/// Saturation vapour pressure over liquid water.
///
/// ln p_ws = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T
///
/// Valid 0 to 200 °C; below 0 °C it is the extrapolation for supercooled water, 0.25 % above Murphy and Koop 2005 at
/// -30 °C.
///
/// Source: Hyland and Wexler 1983, constants as in ASHRAE Handbook Fundamentals 2017, chapter 1, equation 6.
///
/// ```
/// use snowhum_physics::saturation::over_water;
/// use snowhum_units::Kelvin;
/// assert!((over_water(Kelvin::from_celsius(20.0)).get() - 2338.804).abs() < 0.001);
/// ```
#[must_use]
pub fn over_water(t: Kelvin) -> Pascal {
    Pascal::new(ln_over_water(t.get()).value.same_exp())
}

/// Saturation vapour pressure over ice.
///
/// ln p_ws = C1/T + C2 + C3 T + C4 T² + C5 T³ + C6 T⁴ + C7 ln T
///
/// Valid -100 to 0 °C.
///
/// Source: Hyland and Wexler 1983, constants as in ASHRAE Handbook Fundamentals 2017, chapter 1, equation 5.
///
/// ```
/// use snowhum_physics::saturation::over_ice;
/// use snowhum_units::Kelvin;
/// assert!((over_ice(Kelvin::from_celsius(-20.0)).get() - 103.2604).abs() < 0.0001);
/// ```
#[must_use]
pub fn over_ice(t: Kelvin) -> Pascal {
    Pascal::new(ln_over_ice(t.get()).value.same_exp())
}

/// Saturation vapour pressure over what lies there: ice in frost, water above.
///
/// The change is at the [`TRIPLE_POINT`], so that the law has no step. Valid -100 to 200 °C.
///
/// Source: see [`over_ice`] and [`over_water`].
///
/// ```
/// use snowhum_physics::saturation::{over_ice, over_ice_or_water, over_water};
/// use snowhum_units::Kelvin;
/// let (frost, mild) = (Kelvin::from_celsius(-10.0), Kelvin::from_celsius(5.0));
/// assert_eq!(over_ice_or_water(frost), over_ice(frost));
/// assert_eq!(over_ice_or_water(mild), over_water(mild));
/// ```
#[must_use]
pub fn over_ice_or_water(t: Kelvin) -> Pascal {
    if t < TRIPLE_POINT { over_ice(t) } else { over_water(t) }
}

/// A logarithm of a pressure in pascal and its slope a kelvin.
pub(crate) struct LnPressure {
    pub(crate) value: f64,
    pub(crate) slope_per_k: f64,
}

pub(crate) fn ln_over_water(t_k: f64) -> LnPressure {
    const C8: f64 = -5.800_220_6e3;
    const C9: f64 = 1.391_499_3;
    const C10: f64 = -4.864_023_9e-2;
    const C11: f64 = 4.176_476_8e-5;
    const C12: f64 = -1.445_209_3e-8;
    const C13: f64 = 6.545_967_3;
    LnPressure {
        value: C8 / t_k + C9 + t_k * (C10 + t_k * (C11 + t_k * C12)) + C13 * t_k.same_ln(),
        slope_per_k: -C8 / (t_k * t_k) + C10 + t_k * (2.0 * C11 + t_k * 3.0 * C12) + C13 / t_k,
    }
}

pub(crate) fn ln_over_ice(t_k: f64) -> LnPressure {
    const C1: f64 = -5.674_535_9e3;
    const C2: f64 = 6.392_524_7;
    const C3: f64 = -9.677_843_0e-3;
    const C4: f64 = 6.221_570_1e-7;
    const C5: f64 = 2.074_782_5e-9;
    const C6: f64 = -9.484_024_0e-13;
    const C7: f64 = 4.163_501_9;
    LnPressure {
        value: C1 / t_k + C2 + t_k * (C3 + t_k * (C4 + t_k * (C5 + t_k * C6))) + C7 * t_k.same_ln(),
        slope_per_k: -C1 / (t_k * t_k) + C3 + t_k * (2.0 * C4 + t_k * (3.0 * C5 + t_k * 4.0 * C6)) + C7 / t_k,
    }
}
