//! Weights of particles: how many count, and which are carried on.

use snowhum_units::Same;

/// Effective number of particles: `(Σw)² / Σw²`.
#[must_use]
pub(crate) fn effective(weights: &[f64]) -> f64 {
    let sum: f64 = weights.iter().sum();
    let squares: f64 = weights.iter().map(|w| w * w).sum();
    if squares > 0.0 { sum * sum / squares } else { 0.0 }
}

/// Logarithm of a sum of what is given by its logarithms.
#[must_use]
pub(crate) fn log_sum(logs: &[f64]) -> f64 {
    let greatest = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if !greatest.is_finite() {
        return greatest;
    }
    greatest + logs.iter().map(|log| (log - greatest).same_exp()).sum::<f64>().same_ln()
}

/// Systematic resampling: places of `count` survivors at positions `(i + u) / count` of the summed weights.
#[must_use]
pub(crate) fn systematic(weights: &[f64], count: usize, u: f64) -> Vec<usize> {
    let sum: f64 = weights.iter().sum();
    let last = weights.len().saturating_sub(1);
    let mut places = Vec::with_capacity(count);
    let (mut place, mut reached) = (0, weights.first().copied().unwrap_or(0.0));
    for i in 0..count {
        let aim = (i as f64 + u) / count as f64 * sum;
        while reached <= aim && place < last {
            place += 1;
            reached += weights[place];
        }
        places.push(place);
    }
    places
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fixed_uniform_gives_the_reference_choice() {
        // Exact method, by hand: weights .1 .2 .3 .4, ten draws, u = 0.5.
        assert_eq!(systematic(&[0.1, 0.2, 0.3, 0.4], 10, 0.5), [0, 1, 1, 2, 2, 2, 3, 3, 3, 3]);
        // NumPy: searchsorted(cumsum(w), (i + u) / N, side = "right"); 1 / sum(w²).
        assert_eq!(systematic(&[0.1, 0.2, 0.3, 0.4], 7, 0.25), [0, 1, 2, 2, 3, 3, 3]);
        assert_eq!(systematic(&[0.1, 0.2, 0.3, 0.4], 4, 0.999), [1, 2, 3, 3]);
        assert!((effective(&[0.1, 0.2, 0.3, 0.4]) - 3.333_333_333_333_333).abs() < 1e-12);
    }

    #[test]
    fn a_weightless_tail_is_never_chosen() {
        let places = systematic(&[0.5, 0.5, 0.0, 0.0], 7, 0.999_999);
        assert!(places.iter().all(|place| *place < 2), "{places:?}");
    }
}
