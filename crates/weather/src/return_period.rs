//! How cold it gets once in so many years.

use snowhum_units::Same;
use snowhum_units::{Kelvin, KelvinDifference, Range};

/// Fewest winters for which a single figure may be shown.
const FEW_WINTERS: usize = 15;

/// The lowest temperature met once in `years` years, from the mean and standard deviation of each year's lowest.
///
/// T_n = M - F s, F = -(√6/π) (0.5772 + ln ln (n/(n-1))), the Gumbel distribution of extremes.
///
/// Valid for more than one year; `None` below that or with a negative spread.
///
/// Source: ASHRAE Handbook Fundamentals, chapter 14, extreme values; checked there within 0.2 K.
///
/// ```
/// use snowhum_units::{Kelvin, KelvinDifference};
/// use snowhum_weather::return_period::once_in;
/// let cold = once_in(50.0, Kelvin::from_celsius(-25.1), KelvinDifference::new(4.4)).unwrap();
/// assert!((cold.celsius() + 36.51).abs() < 0.01);
/// ```
#[must_use]
pub fn once_in(years: f64, mean: Kelvin, sd: KelvinDifference) -> Option<Kelvin> {
    const EULER: f64 = 0.577_2;
    if !(years > 1.0 && years.is_finite() && sd.get() >= 0.0) {
        return None;
    }
    let factor = -(6f64.sqrt() / std::f64::consts::PI) * (EULER + (years / (years - 1.0)).same_ln().same_ln());
    Some(mean - sd * factor)
}

/// The same from the lowest temperatures of single winters, with the range that their number leaves: one in ten below
/// `p10`, one in ten above `p90`.
///
/// The error of the estimate is s/√n √(1 + 1.1396 F + 1.1 F²), n winters with standard deviation s. Below fifteen
/// winters show the range, not the middle: [`enough_winters`].
///
/// Source: Kite 1975, Water Resources Research 11:27, Gumbel distribution by moments (from memory).
///
/// `None` with fewer than two winters.
#[must_use]
pub fn once_in_of(years: f64, lowest: &[Kelvin]) -> Option<Range<Kelvin>> {
    const Z90: f64 = 1.281_551_565_5;
    let n = lowest.len() as f64;
    if lowest.len() < 2 {
        return None;
    }
    let mean = lowest.iter().map(|t| t.get()).sum::<f64>() / n;
    let sd = (lowest.iter().map(|t| (t.get() - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt();
    let middle = once_in(years, Kelvin::new(mean), KelvinDifference::new(sd))?;
    let factor = if sd > 0.0 { (mean - middle.get()) / sd } else { 0.0 };
    let error = KelvinDifference::new(sd / n.sqrt() * (1.0 + 1.139_6 * factor + 1.1 * factor * factor).max(0.0).sqrt());
    Range::new(middle - error * Z90, middle, middle + error * Z90)
}

/// Whether a return period from so many winters may be shown as one figure.
#[must_use]
pub fn enough_winters(winters: usize) -> bool {
    winters >= FEW_WINTERS
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Mean and sd of yearly lowest temperature, years, and the value printed in the station's design conditions.
    #[test]
    fn printed_design_values_are_reproduced() {
        for (mean_c, sd, years, printed_c) in [
            (-25.1, 4.4, 5.0, -28.2),
            (-25.1, 4.4, 10.0, -30.8),
            (-25.1, 4.4, 20.0, -33.3),
            (-25.1, 4.4, 50.0, -36.5),
            (-45.8, 3.4, 5.0, -48.2),
            (-45.8, 3.4, 10.0, -50.2),
            (-45.8, 3.4, 20.0, -52.1),
            (-45.8, 3.4, 50.0, -54.5),
            (-19.5, 4.5, 5.0, -22.7),
            (-19.5, 4.5, 50.0, -31.0),
            (-9.7, 4.1, 20.0, -17.5),
            (-10.7, 2.9, 50.0, -18.3),
        ] {
            let cold = once_in(years, Kelvin::from_celsius(mean_c), KelvinDifference::new(sd)).unwrap();
            assert!((cold.celsius() - printed_c).abs() < 0.2, "{mean_c} {years}: {}", cold.celsius());
        }
        assert!(once_in(1.0, Kelvin::new(250.0), KelvinDifference::new(3.0)).is_none());
    }

    #[test]
    fn few_winters_leave_a_wider_range() {
        let winter = |i: usize| Kelvin::from_celsius(-25.0 - 4.0 * ((i * 7 % 10) as f64 / 5.0 - 0.9));
        let width = |n: usize| {
            let range = once_in_of(20.0, &(0..n).map(winter).collect::<Vec<_>>()).unwrap();
            (range.p90 - range.p10).get()
        };
        assert!(width(10) > 1.5 * width(40), "{} {}", width(10), width(40));
        assert!(!enough_winters(14) && enough_winters(15));
    }
}
