//! The gamma function.

use snowhum_units::Same;

/// Γ(x) for x above 0, within 1e-10 of its value: Stirling's series, reached by raising x above 8.
pub(crate) fn gamma(x: f64) -> f64 {
    let mut raised = x;
    let mut product = 1.0;
    while raised < 8.0 {
        product *= raised;
        raised += 1.0;
    }
    let r = 1.0 / raised;
    let series = r * (1.0 / 12.0 - r * r * (1.0 / 360.0 - r * r * (1.0 / 1260.0 - r * r / 1680.0)));
    let ln = (raised - 0.5) * raised.same_ln() - raised + 0.5 * std::f64::consts::TAU.same_ln() + series;
    ln.same_exp() / product
}

#[cfg(test)]
mod tests {
    #[test]
    fn known_values_are_reproduced() {
        for (x, value) in [(0.5, std::f64::consts::PI.sqrt()), (1.0, 1.0), (5.0, 24.0), (2.3, 1.166_711_905_2)] {
            assert!((super::gamma(x) / value - 1.0).abs() < 1e-9, "{x}: {}", super::gamma(x));
        }
    }
}
