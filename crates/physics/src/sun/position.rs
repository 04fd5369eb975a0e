//! Where the sun stands.

use snowhum_units::Degree;
use solar_positioning::{Error, Location, PreparedPositions, SolarPositions, delta_t, time::JulianDate};
use std::collections::HashMap;
use std::sync::{LazyLock, PoisonError, RwLock};

/// Direction of the sun.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPosition {
    /// Angle from straight up; above 90° the sun is down.
    pub zenith: Degree,
    /// Clockwise from north.
    pub azimuth: Degree,
}

/// Why there is no sun position.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error(
    "no sun position for latitude {latitude}, longitude {longitude} at unix second {unix_s} ({reason}); \
     latitude must be -90 to 90, longitude -180 to 180 and the year 0 to 3000"
)]
pub struct SunError {
    /// Latitude asked for.
    pub latitude: Degree,
    /// Longitude asked for.
    pub longitude: Degree,
    /// Time asked for.
    pub unix_s: i64,
    /// What the algorithm says.
    pub reason: String,
}

/// Where the sun stands at a unix second (UTC) over a place at sea level, without refraction.
///
/// Refraction would lift a sun near the horizon by up to 0.5°, one above 10° by less than 0.1°.
///
/// Valid from year 0 to 3000, within 0.0003° while the rotation of the earth is known, and worse far from today.
///
/// # Errors
/// [`SunError`] for a place or a time outside the range.
///
/// Source: Reda and Andreas 2003, Solar Energy 76:577 (SPA), by the crate `solar-positioning`.
///
/// ```
/// use snowhum_physics::sun::position;
/// use snowhum_units::Degree;
/// // 2025-12-21 12:00 UTC.
/// let sun = position(1_766_318_400, Degree::new(60.0), Degree::new(25.0)).unwrap();
/// assert!((sun.zenith.get() - 86.00312).abs() < 1e-3);
/// assert!((sun.azimuth.get() - 203.28385).abs() < 1e-3);
/// ```
pub fn position(unix_s: i64, latitude: Degree, longitude: Degree) -> Result<SunPosition, SunError> {
    let place = Location { latitude: latitude.get(), longitude: longitude.get() };
    at(unix_s, place).map_err(|error| SunError { latitude, longitude, unix_s, reason: error.to_string() })
}

fn at(unix_s: i64, place: Location) -> Result<SunPosition, Error> {
    let sun = seen_from_everywhere(unix_s)?.at(place, 0.0, None)?;
    Ok(SunPosition { zenith: Degree::new(sun.zenith_angle()), azimuth: Degree::new(sun.azimuth()) })
}

/// Instants that are remembered: some winters by the hour, a few megabytes.
const REMEMBERED: usize = 30_000;

/// The part that no place changes. It costs far more than the rest, and the same hours are asked for again with every note.
fn seen_from_everywhere(unix_s: i64) -> Result<PreparedPositions, Error> {
    static KNOWN: LazyLock<RwLock<HashMap<i64, PreparedPositions>>> = LazyLock::new(RwLock::default);
    if let Some(known) = KNOWN.read().unwrap_or_else(PoisonError::into_inner).get(&unix_s) {
        return Ok(*known);
    }
    let found = prepared(unix_s as f64)?;
    let mut known = KNOWN.write().unwrap_or_else(PoisonError::into_inner);
    if known.len() >= REMEMBERED {
        known.clear();
    }
    known.insert(unix_s, found);
    Ok(found)
}

fn prepared(unix_s: f64) -> Result<PreparedPositions, Error> {
    const DAY_S: f64 = 86_400.0;
    const JULIAN_DAY_OF_1970: f64 = 2_440_587.5;
    const YEAR_S: f64 = 365.2425 * DAY_S;
    let lag_s = delta_t::estimate(1970.0 + unix_s / YEAR_S)?;
    let time = JulianDate::new(JULIAN_DAY_OF_1970 + unix_s / DAY_S, lag_s)?;
    SolarPositions::new().for_time_from_julian(time)
}
