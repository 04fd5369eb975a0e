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
    let shifted = x * std::f64::consts::LOG2_E + SHIFTER;
    let power = shifted - SHIFTER;
    let r = x - power * std::f64::consts::LN_2;
    // In pairs rather than one power after the other: what waits for nothing is done meanwhile.
    let square = r * r;
    let low = (1.0 + r) + square * (0.5 + r * (1.0 / 6.0));
    let high = (1.0 / 24.0 + r * (1.0 / 120.0)) + square * (1.0 / 720.0 + r * (1.0 / 5_040.0));
    (low + (square * square) * high) * f64::from_bits(shifted.to_bits().wrapping_add(1_023) << 52)
}

/// The exponential for |x| <= 1.2, relative error below 5e-9: for factors that stay near one.
///
/// The Taylor polynomial of degree 5 at a sixteenth of x, squared four times over.
#[inline(always)]
pub(crate) fn exp_near_one(x: f64) -> f64 {
    let y = x * (1.0 / 16.0);
    let square = y * y;
    let low = (1.0 + y) + square * (0.5 + y * (1.0 / 6.0));
    let root = low + (square * square) * (1.0 / 24.0 + y * (1.0 / 120.0));
    let fourth = (root * root) * (root * root);
    (fourth * fourth) * (fourth * fourth)
}

/// The natural logarithm for normal x > 0, absolute error below 2e-9.
///
/// The double is taken apart into a power of two and a number m between 1/sqrt 2 and sqrt 2; ln m is the series of
/// `2 artanh((m - 1) / (m + 1))`.
#[inline(always)]
pub(crate) fn ln(x: f64) -> f64 {
    /// 2^52 as bits: or'ed under an exponent it makes a double of it.
    const WHOLE: u64 = 0x4330_0000_0000_0000;
    /// The bits of 1 / sqrt 2.
    const LEAST: u64 = 0x3FE6_A09E_667F_3BCD;
    let above = x.to_bits().wrapping_sub(LEAST).wrapping_add(1_023 << 52);
    let power = f64::from_bits((above >> 52) | WHOLE) - 4_503_599_627_370_496.0 - 1_023.0;
    let m = f64::from_bits((above & 0x000F_FFFF_FFFF_FFFF).wrapping_add(LEAST));
    let s = (m - 1.0) / (m + 1.0);
    let square = s * s;
    let series = 1.0 / 3.0 + square * (1.0 / 5.0 + square * (1.0 / 7.0 + square * (1.0 / 9.0)));
    power * std::f64::consts::LN_2 + 2.0 * s * (1.0 + square * series)
}

/// One over each of two numbers for one division.
///
/// `1 / a = b / (a b)`: a division costs as much as a dozen multiplications. Relative error below 4 units in the last
/// place; the product must neither overflow nor vanish.
#[inline(always)]
pub(crate) fn inverses2(a: f64, b: f64) -> (f64, f64) {
    let inverse = 1.0 / (a * b);
    (inverse * b, inverse * a)
}

/// One over each of four numbers for one division; see [`inverses2`].
#[inline(always)]
pub(crate) fn inverses4(of: [f64; 4]) -> [f64; 4] {
    let (first, second) = (of[0] * of[1], of[2] * of[3]);
    let (first, second) = inverses2(first, second);
    [first * of[1], first * of[0], second * of[3], second * of[2]]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn exponential_is_within_its_stated_error() {
        for i in -6_000..=6_000 {
            let x = f64::from(i) * 0.01;
            assert!((exp(x) / x.exp() - 1.0).abs() < 8e-9, "{x}");
        }
    }

    #[test]
    fn exponential_near_one_is_within_its_stated_error() {
        for i in -1_200..=1_200 {
            let x = f64::from(i) * 1e-3;
            assert!((exp_near_one(x) / x.exp() - 1.0).abs() < 5e-9, "{x}");
        }
    }

    #[test]
    fn logarithm_is_within_its_stated_error() {
        for i in 1..=60_000 {
            for x in [f64::from(i) * 1e-4, 1.0 / f64::from(i), f64::from(i) * 1e-12] {
                assert!((ln(x) - x.ln()).abs() < 2e-9, "{x}: {}", ln(x));
            }
        }
    }

    #[test]
    fn inverses_in_one_division_are_inverses_to_the_last_places() {
        for i in 1..=10_000 {
            let x = f64::from(i);
            let of = [1e-7 * x, 1.0 / x, 273.15 + x, x.sqrt() * 1e3];
            for (inverse, of) in inverses4(of).into_iter().zip(of) {
                assert!((inverse * of - 1.0).abs() < 4.0 * f64::EPSILON, "{of}");
            }
        }
    }
}
