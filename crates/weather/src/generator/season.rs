//! What the generator draws from in each month, by laws on the monthly means.

use crate::Climate;
use crate::climatology::days_in_month;
use snowhum_draws::normal_quantile;
use snowhum_figures::weather_generator as figures;
use snowhum_units::Same;
use snowhum_units::WattPerSquareMetre;

/// Logit of the sky's cover whose mean over the days is the month's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Sky {
    pub(crate) logit: f64,
    pub(crate) spread: f64,
}

impl Sky {
    /// Cover at a standard deviate of the sky.
    pub(crate) fn cover(&self, deviate: f64) -> f64 {
        1.0 / (1.0 + (-self.logit - self.spread * deviate).same_exp())
    }
}

/// Rain and snow of a month.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Rain {
    /// Deviate above which a day is wet.
    pub(crate) wet_above: f64,
    /// Mean depth on a wet day.
    pub(crate) wet_day_mm: f64,
    share_wet: f64,
}

/// Laws of one place, ready for any day.
#[derive(Debug, Clone)]
pub(crate) struct Season {
    warmest_c: f64,
    annual_range_k: f64,
    winter_sd_k: f64,
    rain: [Rain; 12],
}

impl Season {
    pub(crate) fn of(climate: &Climate) -> Self {
        let annual_range_k = climate.annual_range().get();
        Self {
            warmest_c: climate.warmest_month().celsius(),
            annual_range_k,
            winter_sd_k: winter_sd(climate),
            rain: std::array::from_fn(|month| rain(climate, month)),
        }
    }

    /// 1 in the coldest month, 0 in the warmest, by the day's mean temperature.
    pub(crate) fn winterness(&self, mean_c: f64) -> f64 {
        ((self.warmest_c - mean_c) / self.annual_range_k.max(1.0)).clamp(0.0, 1.0)
    }

    /// Standard deviation of the daily residual; autumn and spring are nearer to summer than to winter.
    pub(crate) fn sd_k(&self, winterness: f64) -> f64 {
        let summer = figures::SD_SUMMER;
        self.winter_sd_k * (summer + (1.0 - summer) * winterness * winterness)
    }

    /// Weight of the squared deviate that makes the cold tail longer than the warm one.
    pub(crate) fn cold_tail(&self, winterness: f64) -> f64 {
        const WHOLE_TO_K: f64 = 20.0;
        let left = (figures::COLD_TAIL_GONE_AT - self.annual_range_k) / (figures::COLD_TAIL_GONE_AT - WHOLE_TO_K);
        figures::COLD_TAIL * left.clamp(0.0, 1.0) * winterness
    }

    /// Standard deviation of the slow term.
    pub(crate) fn slow_sd_k(&self, winterness: f64) -> f64 {
        figures::WINTER_SD * (0.6 + 0.4 * winterness)
    }

    /// Median of the daily range.
    pub(crate) fn range_k(&self, clear_mean: WattPerSquareMetre) -> f64 {
        figures::RANGE_BASE
            + figures::RANGE_PER_ANNUAL_RANGE * self.annual_range_k
            + figures::RANGE_BY_SUN * clear_mean.get() / 300.0
    }

    pub(crate) fn rain(&self, month: usize) -> Rain {
        self.rain[month]
    }

    pub(crate) fn sky(&self, month: usize, winterness: f64) -> Sky {
        let by_wet_days = figures::SKY_BY_WET_DAYS * (0.6 + 0.4 * winterness);
        let cover = (figures::SKY_BASE + by_wet_days * self.rain[month].share_wet).clamp(0.05, 0.95);
        // The mean of a logistic of a normal deviate: probit approximation.
        let flattened = (1.0 + std::f64::consts::PI / 8.0 * figures::SKY_SPREAD * figures::SKY_SPREAD).sqrt();
        Sky { logit: (cover / (1.0 - cover)).same_ln() * flattened, spread: figures::SKY_SPREAD }
    }

    /// Dew point less the day's lowest temperature, without its scatter.
    pub(crate) fn dew_offset_k(&self, cover: f64) -> f64 {
        figures::DEW_OFFSET + figures::DEW_BY_SKY * (cover - 0.6)
    }
}

/// Share of wet days and depth on one, such that the month's sum is kept.
fn rain(climate: &Climate, month: usize) -> Rain {
    const RAINIEST: f64 = 0.95;
    let a_day_mm = climate.precipitation[month].get() * 1000.0 / days_in_month(month) as f64;
    let depth_mm =
        figures::WET_DAY_DEPTH + figures::WET_DAY_DEPTH_BY_WARMTH * climate.temperature[month].celsius().max(0.0);
    let share_wet = (1.0 - (-a_day_mm / depth_mm).same_exp()).clamp(1e-6, RAINIEST);
    Rain { wet_above: normal_quantile(1.0 - share_wet), wet_day_mm: a_day_mm / share_wet, share_wet }
}

/// Standard deviation of the daily residual in the coldest month: by the climate's annual range, or such that the
/// keeper's known cold is undercut one hour in a hundred.
fn winter_sd(climate: &Climate) -> f64 {
    // One hour in a hundred of the year is one in twenty-five of the three coldest months, 1.9 sd below their mean
    // with the cold tail.
    const DEVIATES: f64 = 1.9;
    const LOWEST_K: f64 = 1.0;
    let Some(cold) = climate.design_cold else {
        return figures::SD_BASE + figures::SD_PER_ANNUAL_RANGE * climate.annual_range().get();
    };
    let below_k = (climate.coldest_month() - cold).get().max(0.0) / DEVIATES;
    let within_day_k =
        (figures::RANGE_BASE + figures::RANGE_PER_ANNUAL_RANGE * climate.annual_range().get()) / 8f64.sqrt();
    (below_k * below_k - figures::WINTER_SD * figures::WINTER_SD - within_day_k * within_day_k)
        .max(LOWEST_K * LOWEST_K)
        .sqrt()
}
