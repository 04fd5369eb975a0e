//! The course of temperature between a day's coldest and warmest hour.

use crate::Place;
use crate::sun_day::SunDay;
use snowhum_units::Same;

/// Lag of the warmest hour behind noon, h; cooling of the night; lag of the coldest hour behind sunrise, h.
///
/// Source: Parton and Logan 1981, Agricultural Meteorology 23:205: Denver, air at 150 cm.
const A_H: f64 = 1.86;
const B: f64 = 2.20;
const C_H: f64 = -0.17;

/// When a day's temperature turns, in hours from the day's beginning.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Turns {
    coldest_h: f64,
    sunset_h: f64,
    length_h: f64,
}

/// Temperature of an hour as weights on a day's coldest and warmest and the next day's coldest.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Weights {
    /// 0 for the day before, 1 for the day itself, 2 for the next.
    pub(crate) base: usize,
    pub(crate) coldest: f64,
    pub(crate) warmest: f64,
    pub(crate) next_coldest: f64,
}

impl Turns {
    pub(crate) fn of(sun: &SunDay) -> Self {
        // Polar night and midnight sun still need an order of turns.
        let length_h = sun.length_h().clamp(2.0, 20.0);
        Self { coldest_h: sun.noon_h - length_h / 2.0 + C_H, sunset_h: sun.noon_h + length_h / 2.0, length_h }
    }

    fn rise(&self, hour: f64) -> f64 {
        (std::f64::consts::PI * (hour - self.coldest_h) / (self.length_h + 2.0 * A_H)).same_sin()
    }

    /// Weights at an hour of this day; `next_coldest_h` counts from this day's beginning.
    fn weights(&self, base: usize, hour: f64, next_coldest_h: f64) -> Weights {
        if hour <= self.sunset_h {
            let warmest = self.rise(hour);
            return Weights { base, coldest: 1.0 - warmest, warmest, next_coldest: 0.0 };
        }
        // The exponential never reaches its end; stretched so that it meets the next coldest hour.
        let night = (hour - self.sunset_h) / (next_coldest_h - self.sunset_h);
        let left = ((-B * night).same_exp() - (-B).same_exp()) / (1.0 - (-B).same_exp());
        let at_sunset = self.rise(self.sunset_h);
        Weights { base, coldest: left * (1.0 - at_sunset), warmest: left * at_sunset, next_coldest: 1.0 - left }
    }
}

/// Weights for the middle of each hour of the second of three days.
pub(crate) fn weights(days: &[Turns; 3]) -> [Weights; 24] {
    std::array::from_fn(|hour| {
        let hour = hour as f64 + 0.5;
        let [before, this, after] = days;
        if hour < this.coldest_h {
            before.weights(0, hour + 24.0, this.coldest_h + 24.0)
        } else if hour < after.coldest_h + 24.0 {
            this.weights(1, hour, after.coldest_h + 24.0)
        } else {
            after.weights(2, hour - 24.0, after.coldest_h + 24.0)
        }
    })
}

/// Temperatures of the 24 hours of a day with these extremes, by the sun's course over the place.
pub(crate) fn spread_extremes(
    place: Place,
    begins_s: i64,
    coldest_c: f64,
    warmest_c: f64,
    next_coldest_c: f64,
) -> [f64; 24] {
    let Ok(sun) = SunDay::at(place, begins_s) else { return [0.5 * (coldest_c + warmest_c); 24] };
    let turns = Turns::of(&sun);
    weights(&[turns; 3]).map(|w| {
        let next_c = if w.base == 0 { coldest_c } else { next_coldest_c };
        w.coldest * coldest_c + w.warmest * warmest_c + w.next_coldest * next_c
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The law as published, without the stretch of the night: coldest -10, warmest 0.
    fn published(hour: f64, sunrise_h: f64, sunset_h: f64) -> f64 {
        let turns = Turns { coldest_h: sunrise_h + C_H, sunset_h, length_h: sunset_h - sunrise_h };
        if (turns.coldest_h..=sunset_h).contains(&hour) {
            return -10.0 + 10.0 * turns.rise(hour);
        }
        let since = (hour - sunset_h).rem_euclid(24.0);
        -10.0 + 10.0 * turns.rise(sunset_h) * (-B * since / (24.0 - turns.length_h)).exp()
    }

    /// Computed independently from Parton and Logan 1981 with the Denver values.
    #[test]
    fn the_published_course_is_reproduced() {
        const SHORT: [f64; 24] = [
            -6.965, -7.314, -7.623, -7.897, -8.139, -8.353, -8.542, -8.71, -8.858, -9.451, -6.308, -3.547, -1.455,
            -0.248, -0.05, -0.883, -1.932, -2.86, -3.682, -4.409, -5.052, -5.621, -6.125, -6.571,
        ];
        const LONG: [f64; 24] = [
            -7.582, -7.934, -8.234, -8.491, -8.711, -8.898, -9.058, -9.611, -7.353, -5.233, -3.362, -1.838, -0.739,
            -0.125, -0.025, -0.447, -1.367, -2.737, -3.793, -4.696, -5.467, -6.126, -6.69, -7.171,
        ];
        for (table, sunrise_h, sunset_h) in [(SHORT, 9.0, 15.0), (LONG, 7.0, 17.0)] {
            for (hour, expected) in table.iter().enumerate() {
                let found = published(hour as f64, sunrise_h, sunset_h);
                assert!((found - expected).abs() < 1e-3, "{hour}: {found} {expected}");
            }
        }
    }

    #[test]
    fn the_course_stays_between_the_extremes_and_does_not_jump() {
        for noon_h in [0.3, 6.0, 12.2, 21.5] {
            for length_h in [2.0, 6.0, 12.0, 20.0] {
                let turns =
                    Turns { coldest_h: noon_h - length_h / 2.0 + C_H, sunset_h: noon_h + length_h / 2.0, length_h };
                let day: Vec<f64> = weights(&[turns; 3]).iter().map(|w| w.warmest).collect();
                for hour in 0..24 {
                    assert!((-1e-9..=1.0 + 1e-9).contains(&day[hour]));
                    assert!((day[(hour + 1) % 24] - day[hour]).abs() < 0.55, "{noon_h} {length_h} {hour}");
                }
            }
        }
    }
}
