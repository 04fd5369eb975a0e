//! Saturated air as a few multiplications: what a surface's temperature says of the water in the air at it.
//!
//! The step asks seven times an hour for saturation, more than for anything else, so the law is fitted where the model
//! needs it. The sixteenth root of the pressure is nearly straight in temperature: a polynomial through it, raised to the
//! sixteenth power by four squarings, needs neither an exponential nor a choice between ice and water.

use crate::lanes::{clamp, min};

/// Where ice ends, °C.
const TRIPLE_POINT: f64 = 0.01;
/// Sixteenth root of the pressure over water in Pa, by powers of °C.
const WATER: [f64; 7] = [
    1.493_265_459_2,
    6.779_953_328_6e-3,
    -1.247_646_299_3e-5,
    2.908_073_115_4e-9,
    9.106_256_379_5e-11,
    -4.054_858_140_1e-13,
    9.305_215_996_7e-16,
];
/// What ice adds to that, by powers of °C below the triple point.
const ICE: [f64; 3] = [9.054_189_945_2e-4, 3.839_259_501_5e-6, -1.371_241_122_6e-8];

/// Saturation vapour pressure in Pa at `t_c` °C, over ice in frost and over water above, for -60..60 °C; colder and
/// warmer count as the ends of that range.
///
/// Fitted to the law of Hyland and Wexler ([`snowhum_physics::saturation`]) for the smallest largest error: relative
/// error below 5e-7 (tested).
#[inline(always)]
pub(crate) fn saturation_pa(t_c: f64) -> f64 {
    let t = clamp(t_c, -60.0, 60.0);
    let frost = min(t - TRIPLE_POINT, 0.0);
    let [w0, w1, w2, w3, w4, w5, w6] = WATER;
    // In pairs rather than one power after the other: what waits for nothing is done meanwhile.
    let square = t * t;
    let low = (w0 + t * w1) + square * (w2 + t * w3);
    let high = (w4 + t * w5) + square * w6;
    let ice = frost * (ICE[0] + frost * (ICE[1] + frost * ICE[2]));
    let root = (low + ice) + (square * square) * high;
    let second = root * root;
    let fourth = second * second;
    let eighth = fourth * fourth;
    eighth * eighth
}

/// Ratio of the molar masses of water and dry air.
pub(crate) const MOLAR_RATIO: f64 = 0.621_945;

/// Humidity ratio of saturated air, kg/kg, at `t_c` °C; `per_pascal` is one over the air pressure.
///
/// `0.622 x / (1 - x)` with `x = e / p`, and `1 / (1 - x)` as the cubic of the smallest largest error for x <= 0.075, up
/// to 40 °C at sea level: relative error below 4e-7 besides that of the pressure (tested).
#[inline(always)]
pub(crate) fn saturation_ratio(t_c: f64, per_pascal: f64) -> f64 {
    const C0: f64 = MOLAR_RATIO * 0.999_999_711_5;
    const C1: f64 = MOLAR_RATIO * 1.000_122_789_5;
    const C2: f64 = MOLAR_RATIO * 0.991_917_590_0;
    const C3: f64 = MOLAR_RATIO * 1.166_961_859_7;
    let x = saturation_pa(t_c) * per_pascal;
    x * ((C0 + x * C1) + (x * x) * (C2 + x * C3))
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::Kelvin;

    /// The law the fit replaces, from `snowhum_physics`.
    fn law_pa(t_c: f64) -> f64 {
        snowhum_physics::saturation::over_ice_or_water(Kelvin::from_celsius(t_c)).get()
    }

    #[test]
    fn pressure_is_hyland_wexlers_within_its_stated_error() {
        for hundredth in -6_000..=6_000 {
            let t = f64::from(hundredth) / 100.0;
            assert!((saturation_pa(t) / law_pa(t) - 1.0).abs() < 5e-7, "{t}: {} {}", saturation_pa(t), law_pa(t));
        }
    }

    #[test]
    fn ratio_is_the_laws_within_both_stated_errors() {
        for (pressure, warmest) in [(101_325.0, 4_000), (80_000.0, 3_500)] {
            for hundredth in -6_000..=warmest {
                let t = f64::from(hundredth) / 100.0;
                let law = MOLAR_RATIO * law_pa(t) / (pressure - law_pa(t));
                let ratio = saturation_ratio(t, 1.0 / pressure);
                assert!((ratio / law - 1.0).abs() < 9e-7, "{t} °C at {pressure} Pa: {ratio} {law}");
            }
        }
    }

    #[test]
    fn beyond_the_range_air_holds_what_it_holds_at_its_end() {
        assert_eq!(saturation_pa(-90.0), saturation_pa(-60.0));
        assert_eq!(saturation_pa(90.0), saturation_pa(60.0));
    }
}
