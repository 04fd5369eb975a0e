//! Hourly relative humidity from the days' dew points.

use super::days::DayWeather;
use super::frame::Frame;
use super::season::Season;
use snowhum_figures::weather_generator as figures;
use snowhum_physics::moist_air::relative_humidity;
use snowhum_physics::saturation::over_water;
use snowhum_units::{Fraction, Kelvin, Pascal};

/// Vapour pressure follows straight lines between the middays' dew points (over water, as stations report them); the
/// humidity is over ice in frost and at most 1.
pub(crate) fn hourly(frame: &Frame, days: &[DayWeather], season: &Season, air: &[f64]) -> Vec<Fraction> {
    let asked = air.len().div_ceil(24);
    let first = frame.spin_up - 1;
    let vapour: Vec<f64> = (first..first + asked + 2)
        .map(|index| {
            let day = &days[index];
            let offset_k = season.dew_offset_k(frame.days[index].sky.cover(day.sky));
            dew_vapour(day.coldest_c() + offset_k, day.dew_deviate)
        })
        .collect();
    air.iter()
        .enumerate()
        .map(|(hour, t_c)| {
            let middays = (hour as f64 + 0.5) / 24.0 + 0.5;
            let (at, part) = (middays as usize, middays.fract());
            let p_pa = (1.0 - part) * vapour[at] + part * vapour[at + 1];
            relative_humidity(Kelvin::from_celsius(*t_c), Pascal::new(p_pa)).min(Fraction::new(1.0))
        })
        .collect()
}

fn dew_vapour(dew_c: f64, deviate: f64) -> f64 {
    over_water(Kelvin::from_celsius(dew_c + figures::DEW_SPREAD * deviate)).get()
}
