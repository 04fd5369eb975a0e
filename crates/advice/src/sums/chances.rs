//! Distribution functions behind intervals and chances, alike to the last bit on every machine: the incomplete beta and
//! gamma functions of the `special` library, which asks no C library, and halving.

use special::{Beta, Gamma};

/// Halvings of a bracket: past these a number of 53 bits no longer moves, were it a thousandth of a millionth of it.
const HALVINGS: usize = 90;

/// Chance that a beta variable of shapes `a` and `b` is at most `share`; NaN where there is no such variable.
pub(super) fn beta_at_most(share: f64, a: f64, b: f64) -> f64 {
    if share.is_nan() || !is_shape(a) || !is_shape(b) {
        return f64::NAN;
    }
    share.clamp(0.0, 1.0).inc_beta(a, b, a.ln_beta(b))
}

/// The share that a beta variable of shapes `a` and `b` is at most with the chance `q`; `None` as above.
pub(super) fn beta_quantile(q: f64, a: f64, b: f64) -> Option<f64> {
    (is_shape(a) && is_shape(b)).then(|| where_it_stops(1.0, |share| beta_at_most(share, a, b) < q))
}

/// Chance of `k` or more, `k` one or more, where counts fall evenly about `mean`.
pub(super) fn even_at_least(k: f64, mean: f64) -> f64 {
    if mean.is_nan() || mean < 0.0 || !is_shape(k) { f64::NAN } else { mean.inc_gamma(k) }
}

/// Chance of `k` or more of `n`, `k` one or more, at the rate `share`.
pub(super) fn share_at_least(k: f64, n: f64, share: f64) -> f64 {
    beta_at_most(share, k, n - k + 1.0)
}

/// Where `below` stops holding between none and `most`, by halving.
pub(super) fn where_it_stops(most: f64, below: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (0.0, most);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if below(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

fn is_shape(shape: f64) -> bool {
    shape.is_finite() && shape > 0.0
}

#[cfg(test)]
mod tests {
    use super::{beta_at_most, beta_quantile, even_at_least, share_at_least};
    use statrs::distribution::{Beta, Binomial, ContinuousCDF, DiscreteCDF, Poisson};

    /// Logarithms of gamma of a hundred thousand are known to some 1e-10 in either library, and so are their tails.
    fn near(own: f64, other: f64, what: &str) {
        assert!((own - other).abs() <= 1e-8 * other.abs().max(1e-3), "{what}: {own} {other}");
    }

    #[test]
    fn each_is_what_another_library_says() {
        for (a, b) in [(0.5, 0.5), (4.0, 16.0), (9.0, 292.0), (1.0, 300.0), (2_500.0, 7_500.0), (50_000.0, 50_001.0)] {
            let other = Beta::new(a, b).unwrap();
            for spread in [-3.0, -1.0, -0.1, 0.0, 0.3, 2.0, 4.0] {
                let middle = a / (a + b);
                let share = (middle + spread * (middle * (1.0 - middle) / (a + b + 1.0)).sqrt()).clamp(0.0, 1.0);
                near(beta_at_most(share, a, b), other.cdf(share), &format!("{share} of {a} and {b}"));
            }
            for q in [0.025, 0.5, 0.975] {
                near(other.cdf(beta_quantile(q, a, b).unwrap()), q, &format!("{q} of {a} and {b}"));
            }
        }
        for (k, n, share) in [(1_u32, 1_u32, 0.2), (3, 20, 0.2), (30, 100, 0.2), (21_000, 100_000, 0.2)] {
            let other = Binomial::new(share, u64::from(n)).unwrap().sf(u64::from(k - 1));
            near(share_at_least(f64::from(k), f64::from(n), share), other, &format!("{k} of {n}"));
        }
        for (k, mean) in [(1_u32, 0.01), (1, 3.0), (9, 4.0), (300, 310.0), (100_000, 99_000.0)] {
            let other = Poisson::new(mean).unwrap().sf(u64::from(k - 1));
            near(even_at_least(f64::from(k), mean), other, &format!("{k} about {mean}"));
        }
    }

    #[test]
    fn what_is_no_distribution_has_no_chance_and_ends() {
        assert!(beta_at_most(f64::NAN, 1.0, 1.0).is_nan() && beta_at_most(0.5, 0.0, 1.0).is_nan());
        assert!(beta_at_most(0.5, 1.0, f64::INFINITY).is_nan() && even_at_least(1.0, f64::NAN).is_nan());
        assert_eq!(beta_quantile(0.5, -1.0, 1.0), None);
    }
}
