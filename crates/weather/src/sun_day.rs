//! The sun of one day over one place: one exact position at midday, the rest by spherical trigonometry.
//!
//! All paths of an ensemble share it. Within a day the declination moves by at most 0.4°, by half of that from midday.

use crate::Place;
use snowhum_physics::sun::{self, SunError};
use snowhum_units::Same;
use snowhum_units::{Degree, Metre, Pascal, WattPerSquareMetre};

/// The sun over a day that begins at some second; hours count from there.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SunDay {
    sin_latitude: f64,
    cos_latitude: f64,
    sin_declination: f64,
    cos_declination: f64,
    /// Hour at which the sun is highest, 0 to 24.
    pub(crate) noon_h: f64,
    outside: WattPerSquareMetre,
}

/// The sun of one hour, taken at its middle.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SunHour {
    pub(crate) zenith: Degree,
    /// Global under a clear sky.
    pub(crate) clear: WattPerSquareMetre,
    outside: WattPerSquareMetre,
}

impl SunDay {
    pub(crate) fn at(place: Place, begins_s: i64) -> Result<Self, SunError> {
        let midday_s = begins_s + 43_200;
        let (sin_latitude, cos_latitude) = place.latitude.radians().same_sin_cos();
        let position = sun::position(midday_s, place.latitude, place.longitude)?;
        let (sin_z, cos_z) = position.zenith.radians().same_sin_cos();
        let (sin_a, cos_a) = position.azimuth.radians().same_sin_cos();
        let sin_declination = sin_latitude * cos_z + cos_latitude * sin_z * cos_a;
        let cos_declination = (1.0 - sin_declination * sin_declination).max(0.0).sqrt();
        // Hour angle from its sine and cosine, both times cos(declination).
        let angle = (-sin_z * sin_a).same_atan2(cos_latitude * cos_z - sin_latitude * sin_z * cos_a);
        let noon_h = (12.0 - angle.to_degrees() / 15.0).rem_euclid(24.0);
        let outside = sun::extraterrestrial_normal(midday_s);
        Ok(Self { sin_latitude, cos_latitude, sin_declination, cos_declination, noon_h, outside })
    }

    /// Hours from sunrise to sunset, 0 to 24.
    pub(crate) fn length_h(&self) -> f64 {
        let below = -self.sin_latitude * self.sin_declination / (self.cos_latitude * self.cos_declination).max(1e-9);
        below.clamp(-1.0, 1.0).same_acos().to_degrees() * 2.0 / 15.0
    }

    /// Height of the noon sun above the horizon.
    pub(crate) fn noon_height(&self) -> Degree {
        let sine = self.sin_latitude * self.sin_declination + self.cos_latitude * self.cos_declination;
        Degree::new(sine.clamp(-1.0, 1.0).same_asin().to_degrees())
    }

    /// The sun in the middle of the hour from `hour` on.
    pub(crate) fn hour(&self, hour: usize) -> SunHour {
        let angle = ((hour as f64 + 0.5 - self.noon_h) * 15.0).to_radians();
        let cos_z =
            self.sin_latitude * self.sin_declination + self.cos_latitude * self.cos_declination * angle.same_cos();
        let zenith = Degree::new(cos_z.clamp(-1.0, 1.0).same_acos().to_degrees());
        SunHour { zenith, clear: sun::clear_sky(zenith), outside: self.outside }
    }

    /// Mean of the clear-sky global over the day.
    pub(crate) fn clear_mean(&self) -> WattPerSquareMetre {
        (0..24).map(|hour| self.hour(hour).clear).sum::<WattPerSquareMetre>() / 24.0
    }
}

impl SunHour {
    /// Direct and diffuse parts of a global irradiance.
    pub(crate) fn split(&self, global: WattPerSquareMetre) -> sun::Irradiance {
        sun::split(global, self.zenith, self.outside)
    }
}

/// Air pressure at a height in the standard atmosphere.
///
/// Source: ISO 2533: p = 101325 (1 - 2.25577e-5 h)^5.25588.
pub(crate) fn standard_pressure(elevation: Metre) -> Pascal {
    snowhum_physics::STANDARD_PRESSURE * (1.0 - 2.255_77e-5 * elevation.get()).max(0.0).same_powf(5.255_88)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn helsinki() -> Place {
        Place { latitude: Degree::new(60.0), longitude: Degree::new(25.0), elevation: Metre::ZERO }
    }

    /// Against the exact position of every hour of a winter day and a spring day.
    #[test]
    fn the_day_agrees_with_the_exact_position() {
        for begins_s in [1_766_268_000, 1_774_044_000] {
            let day = SunDay::at(helsinki(), begins_s).unwrap();
            for hour in 0..24 {
                let exact = sun::position(begins_s + hour * 3600 + 1800, Degree::new(60.0), Degree::new(25.0)).unwrap();
                let near = day.hour(hour as usize).zenith;
                assert!((exact.zenith.get() - near.get()).abs() < 0.25, "{hour}: {exact:?} {near:?}");
            }
        }
    }

    /// 60 N 25 E on 2025-12-21: transit 10:18:09 UTC, sun up from 07:22:02 UTC with refraction (pvlib 0.16.1).
    #[test]
    fn noon_and_day_length_are_those_of_the_almanac() {
        let day = SunDay::at(helsinki(), 1_766_275_200).unwrap();
        assert!((day.noon_h - 10.3025).abs() < 0.01, "{}", day.noon_h);
        // The almanac's sunrise has the sun's upper edge, lifted by refraction, on the horizon: zenith 90.833°.
        let edge = 90.833_f64.to_radians().cos() - day.sin_latitude * day.sin_declination;
        let length_h = (edge / (day.cos_latitude * day.cos_declination)).acos().to_degrees() * 2.0 / 15.0;
        assert!((length_h - 2.0 * (10.3025 - 7.3672)).abs() < 0.01, "{length_h}");
        assert!((5.4..5.6).contains(&day.length_h()), "{}", day.length_h());
    }
}
