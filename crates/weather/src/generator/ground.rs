//! Rain, snow and snow on the ground of one path.

use super::days::DayWeather;
use super::frame::Frame;
use crate::snow_pack::SnowPack;
use snowhum_units::{Kelvin, Metre};

/// Hourly precipitation and depth of snow; the spin-up builds the snow that lies at the start, day by day.
pub(crate) fn hourly(frame: &Frame, days: &[DayWeather], air: &[f64]) -> (Vec<Metre>, Vec<Metre>) {
    let mut pack = SnowPack::default();
    for day in &days[..frame.spin_up] {
        let mean = Kelvin::from_celsius(day.mean_c);
        pack.step(24.0, Metre::new(day.rain_mm / 1000.0), mean, mean);
    }
    let mut fallen = Vec::with_capacity(air.len());
    let mut lying = Vec::with_capacity(air.len());
    for (hour, t_c) in air.iter().enumerate() {
        let day = &days[frame.spin_up + hour / 24];
        let wet = (day.rain_from..day.rain_from + day.rain_hours).contains(&(hour % 24));
        let depth = if wet { Metre::new(day.rain_mm / 1000.0 / day.rain_hours as f64) } else { Metre::ZERO };
        pack.step(1.0, depth, Kelvin::from_celsius(*t_c), Kelvin::from_celsius(day.mean_c));
        fallen.push(depth);
        lying.push(pack.depth());
    }
    (fallen, lying)
}
