//! Daily residuals of mean temperature, range and sky: one first-order autoregression of three.
//!
//! x(t) = A x(t-1) + B e(t), A diagonal, B Bᵀ = M - A M Aᵀ with M the correlations of a day, after Richardson 1981
//! (Water Resources Research 17:182). Nothing is clipped.

use snowhum_figures::weather_generator as figures;

/// Standard deviates of one day: mean temperature, range, sky.
pub(crate) type Deviates = [f64; 3];

/// Lower triangle of a 3 × 3 matrix by rows.
type Triangle = [f64; 6];

/// How a day follows from the day before.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Residuals {
    lag: Deviates,
    fresh: Triangle,
    first: Triangle,
}

impl Residuals {
    /// The law for a time of the year; correlations with the mean turn their sign from winter to summer.
    pub(crate) fn of(winterness: f64) -> Self {
        let lag = [figures::MEAN_LAG, figures::RANGE_LAG, figures::SKY_LAG];
        let turn = 2.0 * winterness - 1.0;
        let day =
            [1.0, turn * figures::MEAN_WITH_RANGE, 1.0, turn * figures::MEAN_WITH_SKY, figures::RANGE_WITH_SKY, 1.0];
        let mut fresh = day;
        for (at, (row, column)) in [(0, 0), (1, 0), (1, 1), (2, 0), (2, 1), (2, 2)].into_iter().enumerate() {
            fresh[at] *= 1.0 - lag[row] * lag[column];
        }
        Self { lag, fresh: root(fresh), first: root(day) }
    }

    /// A day without a day before.
    pub(crate) fn first(&self, e: Deviates) -> Deviates {
        times(&self.first, e)
    }

    /// The day after `before`.
    pub(crate) fn next(&self, before: Deviates, e: Deviates) -> Deviates {
        let fresh = times(&self.fresh, e);
        std::array::from_fn(|i| self.lag[i] * before[i] + fresh[i])
    }
}

/// A standard deviate leaning to the cold: mean 0, sd 1, skewness -(6 c + 8 c³)/(1 + 2 c²)^1.5, never clipped.
pub(crate) fn cold_tailed(z: f64, tail: f64) -> f64 {
    (z - tail * (z * z - 1.0)) / (1.0 + 2.0 * tail * tail).sqrt()
}

fn times(l: &Triangle, e: Deviates) -> Deviates {
    [l[0] * e[0], l[1] * e[0] + l[2] * e[1], l[3] * e[0] + l[4] * e[1] + l[5] * e[2]]
}

/// Cholesky root of a symmetric matrix.
fn root(m: Triangle) -> Triangle {
    let a = m[0].max(0.0).sqrt();
    let (b, d) = (m[1] / a, m[3] / a);
    let c = (m[2] - b * b).max(0.0).sqrt();
    let e = (m[4] - d * b) / c;
    [a, b, c, d, e, (m[5] - d * d - e * e).max(0.0).sqrt()]
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_draws::Key;

    #[test]
    fn correlations_and_lags_are_those_of_the_parameters() {
        let law = Residuals::of(1.0);
        let key = Key::new(1, 2);
        let draw = |day: u32| {
            let [a, b, c, _] = key.normals([0, day, 0, 0]);
            [a, b, c]
        };
        let days = 100_000;
        let mut day = law.first(draw(0));
        let mut sums = [[0.0; 3]; 2];
        for t in 1..days {
            let next = law.next(day, draw(t));
            sums[0] = [sums[0][0] + next[0] * next[1], sums[0][1] + next[0] * next[2], sums[0][2] + next[1] * next[2]];
            sums[1] = std::array::from_fn(|i| sums[1][i] + day[i] * next[i]);
            day = next;
        }
        let expected = [
            [figures::MEAN_WITH_RANGE, figures::MEAN_WITH_SKY, figures::RANGE_WITH_SKY],
            [figures::MEAN_LAG, figures::RANGE_LAG, figures::SKY_LAG],
        ];
        for (found, given) in sums.as_flattened().iter().zip(expected.as_flattened()) {
            assert!((found / f64::from(days) - given).abs() < 0.02, "{found} {given}");
        }
    }

    #[test]
    fn the_cold_tail_keeps_mean_and_spread_and_leans_cold() {
        let deviates: Vec<f64> =
            (1..20_000).map(|i| cold_tailed(snowhum_draws::normal_quantile(f64::from(i) / 20_000.0), 0.1)).collect();
        let moment = |k: i32| deviates.iter().map(|x| x.powi(k)).sum::<f64>() / deviates.len() as f64;
        assert!(moment(1).abs() < 1e-3 && (moment(2) - 1.0).abs() < 5e-3);
        assert!((moment(3) + 0.608 / 1.02_f64.powf(1.5)).abs() < 0.02, "{}", moment(3));
    }
}
