//! Length of the day.

use snowhum_units::Degree;
use snowhum_units::Same;

/// Hours from sunrise to sunset on a day of the year (1 to 366) at a latitude, refraction and the sun's disc counted
/// (sun's middle 0.833° below the horizon).
///
/// Declination after Cooper 1969 (Solar Energy 12:333), within some 0.5° or a few minutes of daylight; polar day is 24
/// and polar night 0.
#[must_use]
pub fn hours(day_of_year: i16, latitude: Degree) -> f64 {
    let declination =
        23.45f64.to_radians() * (std::f64::consts::TAU * (284.0 + f64::from(day_of_year)) / 365.0).same_sin();
    let phi = latitude.radians();
    let horizon = (-0.833f64).to_radians().same_sin();
    let cosine = (horizon - phi.same_sin() * declination.same_sin()) / (phi.same_cos() * declination.same_cos());
    24.0 / std::f64::consts::PI * cosine.clamp(-1.0, 1.0).same_acos()
}

#[cfg(test)]
mod tests {
    use super::hours;
    use snowhum_units::Degree;

    /// 60 N 25 E, 21 December 2025: sunrise 07:22, transit 10:18 UTC (pvlib), so 5.87 h of daylight.
    #[test]
    fn midwinter_day_at_sixty_north_is_as_pvlib_has_it() {
        assert!((hours(355, Degree::new(60.0)) - 5.87).abs() < 0.1);
    }
}
