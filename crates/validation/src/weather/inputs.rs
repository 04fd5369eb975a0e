//! What the generator is given, evaluated apart from it: `data/weather_generator.toml` and the climate.

use jiff::civil::Date;
use snowhum_draws::normal_quantile;
use snowhum_figures::weather_generator as figures;
use snowhum_weather::Climate;

/// The parameters that set mean, spread, lag and lean of daily means.
pub(super) struct Inputs {
    lag: f64,
    sd_base_k: f64,
    sd_per_annual_range: f64,
    sd_summer: f64,
    cold_tail: f64,
    cold_tail_gone_at_k: f64,
    slow_sd_k: f64,
}

/// Distribution of one day's mean temperature: the climate's mean, a residual leaning to the cold and a slow term.
#[derive(Debug, Clone, Copy)]
pub(super) struct DayLaw {
    pub(super) mean_c: f64,
    residual_k: f64,
    tail: f64,
    slow_k: f64,
    lag: f64,
}

impl Inputs {
    pub(super) fn shipped() -> Self {
        Self {
            lag: figures::MEAN_LAG,
            sd_base_k: figures::SD_BASE,
            sd_per_annual_range: figures::SD_PER_ANNUAL_RANGE,
            sd_summer: figures::SD_SUMMER,
            cold_tail: figures::COLD_TAIL,
            cold_tail_gone_at_k: figures::COLD_TAIL_GONE_AT,
            slow_sd_k: figures::WINTER_SD,
        }
    }

    /// The law of each day of a climate.
    pub(super) fn days(&self, climate: &Climate, from: Date, days: usize) -> Vec<DayLaw> {
        let year = climate.daily_means();
        let first = from.day_of_year() as usize - 1;
        (0..days).map(|day| self.day(climate, year.on((first + day) % 365))).collect()
    }

    /// Between the warmest month (0) and the coldest (1): the residual's sd by the square of the way, the slow term's
    /// from three fifths, the lean in proportion; the lean is whole to 20 K of annual range and gone at its parameter.
    fn day(&self, climate: &Climate, mean_c: f64) -> DayLaw {
        let range_k = climate.annual_range().get();
        let way = ((climate.warmest_month().celsius() - mean_c) / range_k.max(1.0)).clamp(0.0, 1.0);
        let coldest_k = self.sd_base_k + self.sd_per_annual_range * range_k;
        let lean = ((self.cold_tail_gone_at_k - range_k) / (self.cold_tail_gone_at_k - 20.0)).clamp(0.0, 1.0);
        DayLaw {
            mean_c,
            residual_k: coldest_k * (self.sd_summer + (1.0 - self.sd_summer) * way * way),
            tail: self.cold_tail * lean * way,
            slow_k: self.slow_sd_k * (0.6 + 0.4 * way),
            lag: self.lag,
        }
    }
}

impl DayLaw {
    /// K².
    pub(super) fn variance(&self) -> f64 {
        self.residual_k.powi(2) + self.slow_k.powi(2)
    }

    /// Covariance with the next day, K²: squares of correlated deviates correlate by the square. The slow term's own
    /// loss in a day is under a thousandth.
    pub(super) fn with_next(&self) -> f64 {
        let squares = 2.0 * self.tail * self.tail;
        let residual = (self.lag + squares * self.lag * self.lag) / (1.0 + squares);
        residual * self.residual_k.powi(2) + self.slow_k.powi(2)
    }

    /// Third moment about the mean, K³.
    pub(super) fn third_moment(&self) -> f64 {
        let c = self.tail;
        -(6.0 * c + 8.0 * c.powi(3)) * (self.residual_k / (1.0 + 2.0 * c * c).sqrt()).powi(3)
    }

    /// Chance of a day more than `deviates` standard deviations below the mean, if nothing is clipped.
    pub(super) fn chance_below(&self, deviates: f64) -> f64 {
        // Trapezia over ±8 deviates of the slow term, which for a normal density leave no error to speak of.
        const STEP: f64 = 0.1;
        let limit_k = -deviates * self.variance().sqrt();
        let at = |step: i32| {
            let z = f64::from(step) * STEP;
            let density = (-0.5 * z * z).exp() / std::f64::consts::TAU.sqrt();
            STEP * density * self.chance_of_residual_below((limit_k - self.slow_k * z) / self.residual_k)
        };
        (-80..=80).map(at).sum()
    }

    /// Of (z - c (z² - 1)) / √(1 + 2 c²) below `x`, z a normal deviate: z below the lower root or above the upper.
    fn chance_of_residual_below(&self, x: f64) -> f64 {
        let c = self.tail;
        let level = x * (1.0 + 2.0 * c * c).sqrt();
        if c < 1e-9 {
            return chance_under(level);
        }
        let root = (1.0 - 4.0 * c * (level - c)).max(0.0).sqrt();
        chance_under((1.0 - root) / (2.0 * c)) + 1.0 - chance_under((1.0 + root) / (2.0 * c))
    }
}

/// Share of normal deviates under `z`: the quantile's inverse by halving.
fn chance_under(z: f64) -> f64 {
    let (mut low, mut high) = (1e-12, 1.0 - 1e-12);
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        if normal_quantile(middle) < z { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_chance_of_a_plain_deviate_is_the_normal_one() {
        assert!((chance_under(-3.0) - 0.001_349_898).abs() < 1e-8);
        let plain = DayLaw { mean_c: 0.0, residual_k: 4.0, tail: 0.0, slow_k: 3.0, lag: 0.7 };
        assert!((plain.chance_below(3.0) / 0.001_349_898 - 1.0).abs() < 1e-5, "{}", plain.chance_below(3.0));
    }

    #[test]
    fn a_lean_to_the_cold_makes_deep_cold_likelier() {
        let leaning = DayLaw { mean_c: 0.0, residual_k: 4.0, tail: 0.13, slow_k: 1.75, lag: 0.7 };
        assert!(leaning.chance_below(3.0) > 2.0 * 0.001_35 && leaning.third_moment() < 0.0);
        assert!((leaning.chance_below(0.0) - 0.5).abs() < 0.1);
    }
}
