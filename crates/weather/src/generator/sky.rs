//! Hourly cover of the sky, and the sun that comes through.

use super::days::DayWeather;
use super::frame::Frame;
use super::purpose;
use crate::sun_day::SunHour;
use snowhum_draws::Key;
use snowhum_figures::weather_generator as figures;
use snowhum_physics::sun::{Irradiance, under_cloud};
use snowhum_units::{Fraction, WattPerSquareMetre};

/// Cover of the hours asked for: the day's deviate, straight between middays, and an hourly part.
pub(crate) fn cover(frame: &Frame, days: &[DayWeather], key: Key, path: u32) -> Vec<Fraction> {
    let mut cover = Vec::with_capacity(frame.hours);
    let keep = (1.0 - figures::SKY_HOURLY * figures::SKY_HOURLY).sqrt();
    let mut four = [0.0; 4];
    for hour in 0..frame.hours {
        let index = frame.spin_up + hour / 24;
        let day = &frame.days[index];
        if hour % 4 == 0 {
            four = key.normals([path, day.number, purpose::SKY, (hour % 24 / 4) as u32]);
        }
        let from_midday = (hour % 24) as f64 / 24.0 + 0.5 / 24.0 - 0.5;
        let other = if from_midday < 0.0 { index - 1 } else { index + 1 };
        let part = from_midday.abs();
        let slow = (1.0 - part) * days[index].sky + part * days[other].sky;
        cover.push(Fraction::new(day.sky.cover(keep * slow + figures::SKY_HOURLY * four[hour % 4])));
    }
    cover
}

/// Sun of an hour under a cover.
pub(crate) fn light(sun: &SunHour, cover: Fraction) -> Irradiance {
    if sun.clear <= WattPerSquareMetre::ZERO {
        let dark = WattPerSquareMetre::ZERO;
        return Irradiance { global: dark, direct_normal: dark, diffuse: dark };
    }
    sun.split(under_cloud(sun.clear, cover))
}
