//! Numbers side by side: how a mechanism works on many members at once.
//!
//! A [`Lanes`] holds one quantity for [`LANES`] members. Every mechanism is a loop over the lanes without branches or
//! fused multiply-add, which the compiler turns into vector instructions of whatever width the machine has; since each
//! lane only ever sees its own operations in their written order, all widths give the same bits.

/// Members stepped together in one block.
pub const LANES: usize = 32;

/// One quantity for the members of a block.
pub(crate) type Lanes = [f64; LANES];

/// The larger of two, as one vector instruction (unlike `f64::max`, which also orders NaN).
#[inline(always)]
pub(crate) fn max(a: f64, b: f64) -> f64 {
    if a > b { a } else { b }
}

/// The smaller of two.
#[inline(always)]
pub(crate) fn min(a: f64, b: f64) -> f64 {
    if a < b { a } else { b }
}

/// `x` held between `low` and `high`.
#[inline(always)]
pub(crate) fn clamp(x: f64, low: f64, high: f64) -> f64 {
    min(max(x, low), high)
}

/// 1 where `yes`, else 0: a branch as a factor.
#[inline(always)]
pub(crate) fn gate(yes: bool) -> f64 {
    if yes { 1.0 } else { 0.0 }
}

/// The exponential for |x| < 700, relative error below 8e-9.
///
/// Range reduction to |r| <= ln 2 / 2 and the Taylor polynomial of degree 7; the power of two is put together in the
/// bits of the double, so that nothing leaves the vector registers.
#[inline(always)]
pub(crate) fn exp(x: f64) -> f64 {
    /// 1.5 * 2^52: adding it leaves the nearest integer in the low bits of the sum.
    const SHIFTER: f64 = 6_755_399_441_055_744.0;
    const LN2_HIGH: f64 = 0.693_147_180_369_123_8;
    const LN2_LOW: f64 = 1.908_214_929_270_587_7e-10;
    let shifted = x * std::f64::consts::LOG2_E + SHIFTER;
    let power = shifted - SHIFTER;
    let r = (x - power * LN2_HIGH) - power * LN2_LOW;
    let high = 1.0 / 120.0 + r * (1.0 / 720.0 + r * (1.0 / 5_040.0));
    let series = 1.0 + r * (1.0 + r * (0.5 + r * (1.0 / 6.0 + r * (1.0 / 24.0 + r * high))));
    series * f64::from_bits(shifted.to_bits().wrapping_add(1_023) << 52)
}

/// Saturation vapour pressure in Pa at `t_c` °C, over ice below 0 °C and over water above, for -60..60 °C.
///
/// Two polynomials of degree five fitted to the logarithm of the Hyland-Wexler law
/// ([`snowhum_physics::saturation`]); relative error below 5e-6 (tested).
#[inline(always)]
pub(crate) fn saturation_pa(t_c: f64) -> f64 {
    let t = clamp(t_c, -60.0, 60.0);
    let frozen = t < 0.0;
    let c = |ice: f64, water: f64| if frozen { ice } else { water };
    let logarithm = c(6.415_350_843_475, 6.415_445_926_975)
        + t * (c(8.234_973_171_871e-2, 7.264_452_246_101e-2)
            + t * (c(-3.038_695_838_688e-4, -2.983_938_954_053e-4)
                + t * (c(1.127_387_263_739e-6, 1.123_043_253_226e-6)
                    + t * (c(-2.754_626_890_882e-9, -3.712_874_433_606e-9)
                        + t * c(2.920_376_017_239e-11, 8.120_445_269_622e-12)))));
    exp(logarithm)
}

/// Ratio of the molar masses of water and dry air.
pub(crate) const MOLAR_RATIO: f64 = 0.621_945;

/// Humidity ratio of saturated air, kg/kg, at `t_c` °C; `per_pascal` is one over the air pressure.
///
/// `0.622 x / (1 - x)` with `x = e / p` written as a power series to the fifth order, which needs no division; relative
/// error below `x^5`, 1e-8 at 20 °C and 6e-7 at 35 °C.
#[inline(always)]
pub(crate) fn saturation_ratio(t_c: f64, per_pascal: f64) -> f64 {
    let x = saturation_pa(t_c) * per_pascal;
    MOLAR_RATIO * x * (1.0 + x * (1.0 + x * (1.0 + x * (1.0 + x))))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The law the vector kernel replaces, from `snowhum_physics`.
    #[test]
    fn saturation_is_hyland_wexlers_within_its_stated_error() {
        for tenth in -600..=600 {
            let t = f64::from(tenth) / 10.0;
            // At 0 °C and just above the two laws differ in where ice ends: 0 °C here, the triple point there.
            if (0..=1).contains(&tenth) {
                continue;
            }
            let law = snowhum_physics::saturation::over_ice_or_water(snowhum_units::Kelvin::from_celsius(t)).get();
            assert!((saturation_pa(t) / law - 1.0).abs() < 5e-6, "{t}: {} {law}", saturation_pa(t));
        }
    }

    #[test]
    fn exponential_is_within_its_stated_error() {
        for i in -6_000..=6_000 {
            let x = f64::from(i) * 0.01;
            assert!((exp(x) / x.exp() - 1.0).abs() < 8e-9, "{x}");
        }
    }
}
