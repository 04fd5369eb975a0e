//! The days of one path: temperature, range, sky, rain.

use super::frame::{Day, Frame};
use super::purpose;
use super::residuals::{Deviates, cold_tailed};
use super::slow::Slow;
use snowhum_draws::{Key, normal_quantile};
use snowhum_figures::weather_generator as figures;
use snowhum_figures::weather_limits as limits;
use snowhum_units::Same;

/// Γ(2.3), by which the depth of a wet day is divided so that its mean is kept.
const DEPTH_MEAN: f64 = 1.166_711_905_2;

/// One day of one path.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct DayWeather {
    pub(crate) mean_c: f64,
    /// The slow term in it.
    pub(crate) slow_k: f64,
    pub(crate) range_k: f64,
    pub(crate) sky: f64,
    pub(crate) dew_deviate: f64,
    pub(crate) rain_mm: f64,
    /// First hour of rain and hours of it.
    pub(crate) rain_from: usize,
    pub(crate) rain_hours: usize,
    /// Hours at which the extremes come when the sun does not set them: in the first half, in the second half.
    pub(crate) turns_h: [f64; 2],
    pub(crate) coldest_first: bool,
}

impl DayWeather {
    pub(crate) fn coldest_c(&self) -> f64 {
        self.mean_c - 0.5 * self.range_k
    }

    pub(crate) fn warmest_c(&self) -> f64 {
        self.mean_c + 0.5 * self.range_k
    }
}

/// All days of a path, spin-up first.
pub(crate) fn days(frame: &Frame, key: Key, path: u32) -> Vec<DayWeather> {
    let mut slow = Slow::new(key, path, figures::WINTER_LAG);
    let mut before: Option<Deviates> = None;
    frame
        .days
        .iter()
        .map(|day| {
            let [mean, range, sky, wet] = key.normals([path, day.number, purpose::RESIDUALS, 0]);
            let e = [mean, range, sky];
            let deviates = before.map_or_else(|| day.residuals.first(e), |before| day.residuals.next(before, e));
            before = Some(deviates);
            one(day, deviates, slow.on(day.slow) * day.slow_sd_k, wet, key, path)
        })
        .collect()
}

fn one(day: &Day, [mean, range, sky]: Deviates, slow_k: f64, wet: f64, key: Key, path: u32) -> DayWeather {
    let [first, second, order, dew] = key.uniforms([path, day.number, purpose::TURNS, 0]);
    let wetness = figures::WET_WITH_SKY * sky + (1.0 - figures::WET_WITH_SKY * figures::WET_WITH_SKY).sqrt() * wet;
    let mut weather = DayWeather {
        mean_c: day.mean_c + slow_k + day.sd_k * cold_tailed(mean, day.tail),
        slow_k,
        range_k: day.range_k
            * (figures::RANGE_SPREAD * range - 0.5 * figures::RANGE_SPREAD * figures::RANGE_SPREAD).same_exp(),
        sky,
        dew_deviate: normal_quantile(dew),
        turns_h: [12.0 * first, 12.0 + 12.0 * second],
        coldest_first: order < 0.5,
        ..DayWeather::default()
    };
    if wetness > day.rain.wet_above {
        let [depth, length, start, _] = key.uniforms([path, day.number, purpose::RAIN, 0]);
        weather.rain_mm = day.rain.wet_day_mm * (-depth.same_ln()).same_powf(limits::DEPTH_POWER) / DEPTH_MEAN;
        weather.rain_hours = 3 + (10.0 * length) as usize;
        weather.rain_from = ((25 - weather.rain_hours) as f64 * start) as usize;
    }
    weather
}
