//! The standard normal by inversion, so that one uniform gives one normal.

use snowhum_units::Same;

/// Standard normal quantile of `p` in (0, 1), relative error below 1.2e-9.
///
/// Source: P. J. Acklam's rational approximation (2003); coefficients from memory, accuracy checked in the tests
/// against published quantiles.
///
/// ```
/// assert!((snowhum_draws::normal_quantile(0.975) - 1.959_963_985).abs() < 1e-8);
/// ```
#[inline]
#[must_use]
pub fn normal_quantile(p: f64) -> f64 {
    const LOW: f64 = 0.02425;
    if p < LOW {
        tail((-2.0 * p.same_ln()).sqrt())
    } else if p > 1.0 - LOW {
        -tail((-2.0 * (1.0 - p).same_ln()).sqrt())
    } else {
        centre(p - 0.5)
    }
}

fn centre(q: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 6] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
        1.0,
    ];
    let r = q * q;
    q * horner(&A, r) / horner(&B, r)
}

fn tail(q: f64) -> f64 {
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 5] =
        [7.784_695_709_041_462e-3, 3.224_671_290_700_398e-1, 2.445_134_137_142_996, 3.754_408_661_907_416, 1.0];
    horner(&C, q) / horner(&D, q)
}

fn horner(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().fold(0.0, |sum, c| sum * x + c)
}

#[cfg(test)]
mod tests {
    use super::normal_quantile;

    /// Quantiles as printed in any table of the normal distribution.
    #[test]
    fn tabulated_quantiles_are_reproduced() {
        for (p, z) in
            [(0.5, 0.0), (0.841_344_746, 1.0), (0.99, 2.326_347_874), (0.999_9, 3.719_016_485), (0.001, -3.090_232_306)]
        {
            assert!((normal_quantile(p) - z).abs() < 2e-8, "{p}: {}", normal_quantile(p));
        }
    }
}
