//! What the generator draws from in each month, by laws on the monthly means.

use super::parameters::Parameters;
use crate::Climate;
use crate::climatology::days_in_month;
use snowhum_draws::normal_quantile;
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
pub(crate) struct Season<'a> {
    pub(crate) parameters: &'a Parameters,
    warmest_c: f64,
    annual_range_k: f64,
    winter_sd_k: f64,
    rain: [Rain; 12],
}

impl<'a> Season<'a> {
    pub(crate) fn of(climate: &Climate, parameters: &'a Parameters) -> Self {
        let annual_range_k = climate.annual_range().get();
        Self {
            parameters,
            warmest_c: climate.warmest_month().celsius(),
            annual_range_k,
            winter_sd_k: winter_sd(climate, parameters),
            rain: std::array::from_fn(|month| rain(climate, month, parameters)),
        }
    }

    /// 1 in the coldest month, 0 in the warmest, by the day's mean temperature.
    pub(crate) fn winterness(&self, mean_c: f64) -> f64 {
        ((self.warmest_c - mean_c) / self.annual_range_k.max(1.0)).clamp(0.0, 1.0)
    }

    /// Standard deviation of the daily residual; autumn and spring are nearer to summer than to winter.
    pub(crate) fn sd_k(&self, winterness: f64) -> f64 {
        let summer = self.parameters.sd_summer;
        self.winter_sd_k * (summer + (1.0 - summer) * winterness * winterness)
    }

    /// Weight of the squared deviate that makes the cold tail longer than the warm one.
    pub(crate) fn cold_tail(&self, winterness: f64) -> f64 {
        const WHOLE_TO_K: f64 = 20.0;
        let p = self.parameters;
        let left = (p.cold_tail_gone_at - self.annual_range_k) / (p.cold_tail_gone_at - WHOLE_TO_K);
        p.cold_tail * left.clamp(0.0, 1.0) * winterness
    }

    /// Standard deviation of the slow term.
    pub(crate) fn slow_sd_k(&self, winterness: f64) -> f64 {
        self.parameters.winter_sd * (0.6 + 0.4 * winterness)
    }

    /// Median of the daily range.
    pub(crate) fn range_k(&self, clear_mean: WattPerSquareMetre) -> f64 {
        let p = self.parameters;
        p.range_base + p.range_per_annual_range * self.annual_range_k + p.range_by_sun * clear_mean.get() / 300.0
    }

    pub(crate) fn rain(&self, month: usize) -> Rain {
        self.rain[month]
    }

    pub(crate) fn sky(&self, month: usize, winterness: f64) -> Sky {
        let p = self.parameters;
        let by_wet_days = p.sky_by_wet_days * (0.6 + 0.4 * winterness);
        let cover = (p.sky_base + by_wet_days * self.rain[month].share_wet).clamp(0.05, 0.95);
        // The mean of a logistic of a normal deviate: probit approximation.
        let flattened = (1.0 + std::f64::consts::PI / 8.0 * p.sky_spread * p.sky_spread).sqrt();
        Sky { logit: (cover / (1.0 - cover)).same_ln() * flattened, spread: p.sky_spread }
    }

    /// Dew point less the day's lowest temperature, without its scatter.
    pub(crate) fn dew_offset_k(&self, cover: f64) -> f64 {
        self.parameters.dew_offset + self.parameters.dew_by_sky * (cover - 0.6)
    }
}

/// Share of wet days and depth on one, such that the month's sum is kept.
fn rain(climate: &Climate, month: usize, p: &Parameters) -> Rain {
    const RAINIEST: f64 = 0.95;
    let a_day_mm = climate.precipitation[month].get() * 1000.0 / days_in_month(month) as f64;
    let depth_mm = p.wet_day_depth + p.wet_day_depth_by_warmth * climate.temperature[month].celsius().max(0.0);
    let share_wet = (1.0 - (-a_day_mm / depth_mm).same_exp()).clamp(1e-6, RAINIEST);
    Rain { wet_above: normal_quantile(1.0 - share_wet), wet_day_mm: a_day_mm / share_wet, share_wet }
}

/// Standard deviation of the daily residual in the coldest month: by the climate's annual range, or such that the
/// keeper's known cold is undercut one hour in a hundred.
fn winter_sd(climate: &Climate, p: &Parameters) -> f64 {
    // One hour in a hundred of the year is one in twenty-five of the three coldest months, 1.9 sd below their mean
    // with the cold tail.
    const DEVIATES: f64 = 1.9;
    const LOWEST_K: f64 = 1.0;
    let Some(cold) = climate.design_cold else {
        return p.sd_base + p.sd_per_annual_range * climate.annual_range().get();
    };
    let below_k = (climate.coldest_month() - cold).get().max(0.0) / DEVIATES;
    let within_day_k = (p.range_base + p.range_per_annual_range * climate.annual_range().get()) / 8f64.sqrt();
    (below_k * below_k - p.winter_sd * p.winter_sd - within_day_k * within_day_k).max(LOWEST_K * LOWEST_K).sqrt()
}
