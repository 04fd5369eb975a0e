//! Weather as a file holds it: hour by hour, any quantity possibly missing.

use crate::{Place, WeatherFaults, fault};
use jiff::{Timestamp, tz::Offset};
use snowhum_say::{Message, weather_fault as say};
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond, Pascal, WattPerSquareMetre};

/// Longest record that is held: sixty years.
const LONGEST_HOURS: i64 = 60 * 8_784;

/// One hour of a file; what is missing is `None`, never 0.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RawHour {
    /// Air temperature.
    pub temperature: Option<Kelvin>,
    /// Dew point, over water as stations report it.
    pub dew_point: Option<Kelvin>,
    /// Relative humidity over water, as stations report it.
    pub humidity: Option<Fraction>,
    /// Wind at 10 m.
    pub wind: Option<MetrePerSecond>,
    /// Sky covered.
    pub cloud: Option<Fraction>,
    /// Global sun on the level.
    pub global: Option<WattPerSquareMetre>,
    /// Direct sun on a face turned to it.
    pub direct: Option<WattPerSquareMetre>,
    /// Diffuse sun on the level.
    pub diffuse: Option<WattPerSquareMetre>,
    /// Rain and melted snow in the hour.
    pub precipitation: Option<Metre>,
    /// Snow lying.
    pub snow_depth: Option<Metre>,
    /// Air pressure at the site.
    pub pressure: Option<Pascal>,
}

/// The hours of a file on one clock; entry `i` belongs to the hour from `start + i` hours.
#[derive(Debug, Clone, PartialEq)]
pub struct Raw {
    /// Beginning of the first hour.
    pub start: Timestamp,
    /// The hours; one the file lacks has every quantity missing.
    pub hours: Vec<RawHour>,
}

/// What was read from a file.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Name of the file as given.
    pub file: String,
    /// The hours.
    pub raw: Raw,
    /// Where, if the file says so.
    pub place: Option<Place>,
    /// The file's clock, if it keeps one of its own.
    pub offset: Option<Offset>,
    /// Whether the months are spliced from several years.
    pub typical_year: bool,
    /// What to know: values dropped, columns left out.
    pub notes: Vec<Message>,
}

/// Rows with their hour (whole hours since 1970 UTC) laid out on one clock.
///
/// Of rows that fall into the same hour the later fills what the earlier lacks.
pub(crate) fn lay_out(file: &str, rows: &[(i64, RawHour)]) -> Result<Raw, WeatherFaults> {
    let first = rows.iter().map(|(hour, _)| *hour).min();
    let last = rows.iter().map(|(hour, _)| *hour).max();
    let (Some(first), Some(last)) = (first, last) else {
        return Err(fault::whole(file, say::no_rows()));
    };
    if last - first >= LONGEST_HOURS {
        return Err(fault::whole(file, say::long((last - first) / 8_766)));
    }
    let start =
        Timestamp::from_second(first * 3600).map_err(|error| fault::whole(file, say::first_date(error.to_string())))?;
    let mut hours = vec![RawHour::default(); (last - first + 1) as usize];
    for (hour, row) in rows {
        merge(&mut hours[(hour - first) as usize], row);
    }
    Ok(Raw { start, hours })
}

fn merge(into: &mut RawHour, from: &RawHour) {
    into.temperature = into.temperature.or(from.temperature);
    into.dew_point = into.dew_point.or(from.dew_point);
    into.humidity = into.humidity.or(from.humidity);
    into.wind = into.wind.or(from.wind);
    into.cloud = into.cloud.or(from.cloud);
    into.global = into.global.or(from.global);
    into.direct = into.direct.or(from.direct);
    into.diffuse = into.diffuse.or(from.diffuse);
    into.precipitation = into.precipitation.or(from.precipitation);
    into.snow_depth = into.snow_depth.or(from.snow_depth);
    into.pressure = into.pressure.or(from.pressure);
}
