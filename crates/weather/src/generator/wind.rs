//! Hourly wind: Weibull in every hour, correlated from hour to hour.
//!
//! Half the sum of two squared standard deviates is an exponential deviate; its 1/k-th power times the scale is
//! Weibull. Each deviate follows a first-order autoregression.

use super::days::DayWeather;
use super::frame::Frame;
use super::gamma::gamma;
use super::purpose;
use snowhum_draws::Key;
use snowhum_figures::weather_generator as figures;
use snowhum_units::MetrePerSecond;
use snowhum_units::Same;

pub(crate) fn hourly(frame: &Frame, days: &[DayWeather], key: Key, path: u32) -> Vec<MetrePerSecond> {
    // The correlation of the squares is the square of that of the deviates.
    let lag = figures::WIND_LAG.sqrt();
    let fresh = (1.0 - figures::WIND_LAG).sqrt();
    let scale = figures::WIND_MEAN / gamma(1.0 + 1.0 / figures::WIND_SHAPE);
    let first = frame.days[frame.spin_up].number;
    let [mut x, mut y, ..] = key.normals([path, first, purpose::WIND, u32::MAX]);
    let mut four = [0.0; 4];
    let mut of_day = 1.0;
    (0..frame.hours)
        .map(|hour| {
            let index = frame.spin_up + hour / 24;
            if hour % 24 == 0 {
                let w = figures::WIND_WITH_SKY;
                of_day = scale * (w * days[index].sky - 0.5 * w * w).same_exp();
            }
            if hour % 2 == 0 {
                four = key.normals([path, frame.days[index].number, purpose::WIND, (hour % 24 / 2) as u32]);
            }
            x = lag * x + fresh * four[hour % 2 * 2];
            y = lag * y + fresh * four[hour % 2 * 2 + 1];
            MetrePerSecond::new(of_day * (0.5 * (x * x + y * y)).same_powf(1.0 / figures::WIND_SHAPE))
        })
        .collect()
}
