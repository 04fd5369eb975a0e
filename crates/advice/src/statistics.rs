//! Quantiles and means over the members of an ensemble.

use snowhum_units::Range;
use snowhum_winter::{Ends, MemberEnd, Trajectory};

/// Quantiles of values with weights between 0 and 1; `None` where less than a hundredth of the weight is left, since
/// nothing is said of a state that unlikely.
///
/// ```
/// # use snowhum_advice::statistics::weighted_range;
/// let range = weighted_range(&[(1.0, 1.0), (2.0, 1.0), (3.0, 1.0)]).unwrap();
/// assert_eq!(range.p50, 2.0);
/// ```
#[must_use]
pub fn weighted_range(values: &[(f64, f64)]) -> Option<Range<f64>> {
    let mut sorted: Vec<(f64, f64)> = values.iter().copied().filter(|(v, w)| v.is_finite() && *w > 0.0).collect();
    sorted.sort_by(|a, b| a.0.total_cmp(&b.0));
    let total: f64 = sorted.iter().map(|(_, w)| w).sum();
    if sorted.is_empty() || total < 0.01 * values.len() as f64 {
        return None;
    }
    let at = |q: f64| {
        let mut sum = 0.0;
        for (value, weight) in &sorted {
            sum += weight;
            if sum >= q * total * (1.0 - 1e-12) {
                return *value;
            }
        }
        sorted[sorted.len() - 1].0
    };
    Some(Range { p10: at(0.1), p50: at(0.5), p90: at(0.9) })
}

/// A figure of the ends of a run, mean over members.
pub(crate) fn mean_of_ends(trajectory: &Trajectory, of: impl Fn(&MemberEnd) -> f64) -> f64 {
    mean_and_error(&trajectory.ends.iter().map(of).collect::<Vec<_>>()).0
}

/// Chances of each end in a run.
pub(crate) fn mean_ends(trajectory: &Trajectory) -> Ends {
    Ends::from_causes(std::array::from_fn(|cause| mean_of_ends(trajectory, |end| end.ended.by_cause()[cause].1)))
}

/// Mean of plain values; zero for none.
pub(crate) fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}

/// Quantile `q` of plain values by linear interpolation; zero for none.
#[must_use]
pub fn quantile(values: &[f64], q: f64) -> f64 {
    let mut sorted: Vec<f64> = values.iter().copied().filter(|v| !v.is_nan()).collect();
    sorted.sort_by(f64::total_cmp);
    let Some(last) = sorted.len().checked_sub(1) else { return 0.0 };
    let at = q * last as f64;
    let (low, high) = (at.floor() as usize, at.ceil() as usize);
    sorted[low] + (sorted[high] - sorted[low]) * (at - low as f64)
}

/// Mean and standard error of the mean.
#[must_use]
pub fn mean_and_error(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    if n < 2.0 {
        return (values.first().copied().unwrap_or(0.0), 0.0);
    }
    let mean = values.iter().sum::<f64>() / n;
    let variance = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (n - 1.0);
    (mean, (variance / n).sqrt())
}

/// A figure and its standard error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Estimate {
    pub(crate) value: f64,
    pub(crate) error: f64,
}

/// The mean of what was found in the first members alone, brought nearer by what is known of all: what those few differ by from
/// all in what is known, they differ by in what follows from it (a regression of two phases).
pub(crate) fn mean_by_all(found: &[f64], known: Vec<Vec<f64>>) -> Estimate {
    let few = found.len();
    if few == 0 || known.iter().any(|of_all| of_all.len() <= few) {
        return Estimate::mean(found);
    }
    let product = |a: &[f64], b: &[f64]| a.iter().zip(b).take(few).map(|(a, b)| a * b).sum::<f64>();
    let mut left = found.to_vec();
    let mut follows = vec![0.0; known.first().map_or(0, Vec::len)];
    let mut apart: Vec<Vec<f64>> = Vec::new();
    for mut column in known {
        let middle = mean(&column[..few]);
        column.iter_mut().for_each(|value| *value -= middle);
        let spread = product(&column, &column);
        for other in &apart {
            let slope = product(&column, other) / product(other, other);
            take_off(&mut column, slope, other);
        }
        let own = product(&column, &column);
        if own <= TOLD_ALREADY * spread || own <= 0.0 {
            continue;
        }
        let slope = product(&left, &column) / own;
        take_off(&mut left, slope, &column);
        take_off(&mut follows, -slope, &column);
        apart.push(column);
    }
    let (left, follows) = (Estimate::mean(&left), Estimate::mean(&follows));
    Estimate { value: left.value + follows.value, error: (left.error.powi(2) + follows.error.powi(2)).sqrt() }
}

/// Share of a figure's spread below which the figures before it tell all that it does.
const TOLD_ALREADY: f64 = 1e-6;

fn take_off(from: &mut [f64], times: f64, column: &[f64]) {
    from.iter_mut().zip(column).for_each(|(value, column)| *value -= times * column);
}

/// Parts that members are dealt to: two of them walk no weather path in common, so that an error holds the weather's part too.
const PARTS: usize = 8;
/// The same of a mean, of which small parts tell as much as large ones: so that the error itself holds still.
const PARTS_OF_A_MEAN: usize = 32;
/// Standard errors within which a figure is near its line.
const NEAR: f64 = 2.0;

impl Estimate {
    /// A figure of all members, its error from the same figure of parts of them.
    pub(crate) fn by_parts(values: &[f64], figure: impl Fn(&[f64]) -> f64) -> Self {
        Self::by(PARTS, values, figure)
    }

    fn by(parts: usize, values: &[f64], figure: impl Fn(&[f64]) -> f64) -> Self {
        let part = |part: usize| {
            let own: Vec<f64> = values.iter().skip(part).step_by(parts).copied().collect();
            figure(&own)
        };
        let parts: Vec<f64> = (0..parts.min(values.len())).map(part).collect();
        let (_, error) = mean_and_error(&parts);
        Self { value: figure(values), error }
    }

    /// Whether it stands so near a line that another draw of members may pass it.
    pub(crate) fn is_near(&self, line: f64) -> bool {
        (self.value - line).abs() <= NEAR * self.error
    }

    /// The mean of all members.
    pub(crate) fn mean(values: &[f64]) -> Self {
        Self::by(PARTS_OF_A_MEAN, values, mean)
    }
}

/// A number rounded for an answer, so that JSON carries no more digits than the model can mean.
#[must_use]
pub fn rounded(value: f64, decimals: i32) -> f64 {
    let scale = 10f64.powi(decimals);
    let rounded = (value * scale).round() / scale;
    if rounded == 0.0 { 0.0 } else { rounded }
}

#[cfg(test)]
mod tests {
    use super::{Estimate, mean_by_all};

    #[test]
    fn what_follows_from_what_is_known_of_all_is_found_as_sure_as_that() {
        let known: Vec<f64> = (0..768_u32).map(|member| f64::from(member.wrapping_mul(2_654_435_761) >> 16)).collect();
        let follows: Vec<f64> = known.iter().take(128).map(|value| 3.0 - 2.0 * value).collect();
        let told = mean_by_all(&follows, vec![known.clone(), vec![1.0; 768], known.clone()]);
        let all = Estimate::mean(&known);
        assert!((told.value - (3.0 - 2.0 * all.value)).abs() < 1e-6 * all.value, "{told:?}");
        assert!((told.error - 2.0 * all.error).abs() < 1e-6 * all.error, "{told:?}");
        assert_eq!(mean_by_all(&follows, vec![known[..128].to_vec()]), Estimate::mean(&follows));
    }

    #[test]
    fn an_error_holds_what_members_of_one_weather_share() {
        // Of each eight members one walks each path, and the paths differ by far more than the members do.
        let by_path: Vec<f64> = (0..800).map(|member| f64::from(member % 8)).collect();
        let shared = Estimate::mean(&by_path);
        let alone: Vec<f64> = (0..800).map(|member| f64::from(member / 100)).collect();
        assert!(shared.error > 5.0 * Estimate::mean(&alone).error, "{shared:?}");
    }
}
