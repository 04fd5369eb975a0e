//! Open-Meteo: one array a quantity; rain and snow of an hour stand at its end.
//!
//! Source: Open-Meteo's documentation of its forecast API, and its terms.

use crate::body::{Body, Found};
use crate::client::Page;
use crate::{Position, Why};
use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::Offset;
use serde::Deserialize;
use std::collections::HashMap;

/// The quantities asked for, with the unit each must come in.
const UNITS: [(&str, &str); 5] = [
    ("temperature_2m", "°C"),
    ("relative_humidity_2m", "%"),
    ("wind_speed_10m", "m/s"),
    ("cloud_cover", "%"),
    ("precipitation", "mm"),
];
/// Days asked for; up to sixteen are offered, the last of which say little.
const DAYS: u32 = 10;

/// The page of a place.
pub(crate) fn page(address: &str, position: &Position) -> Page {
    let (latitude, longitude) = position.sent();
    let elevation = position.sent_elevation();
    let height = elevation.as_ref().map(|metres| format!("&elevation={metres}")).unwrap_or_default();
    let metres = elevation.map(|metres| format!("_{metres}m")).unwrap_or_default();
    let quantities = UNITS.map(|(name, _)| name).join(",");
    let place = format!("latitude={latitude}&longitude={longitude}{height}");
    Page {
        name: format!("open-meteo_{latitude}_{longitude}{metres}"),
        url: format!(
            "{address}/v1/forecast?{place}&hourly={quantities}&wind_speed_unit=ms&timezone=UTC&forecast_days={DAYS}"
        ),
    }
}

/// Reads a page.
pub(crate) fn read(text: &str) -> Result<Body, Why> {
    let page: Answer = serde_json::from_str(text).map_err(|error| Why::wrong(error.to_string()))?;
    if page.utc_offset_seconds != 0 {
        return Err(Why::wrong("its times are not UTC"));
    }
    for (name, right) in UNITS {
        let unit = page.hourly_units.get(name).map_or("no unit", String::as_str);
        if unit != right {
            return Err(Why::wrong(format!("{name} is in {unit}, where {right} is right")));
        }
    }
    Body::of(None, &page.hourly.found()?)
}

#[derive(Deserialize)]
struct Answer {
    utc_offset_seconds: i64,
    hourly_units: HashMap<String, String>,
    hourly: Hourly,
}

#[derive(Deserialize)]
struct Hourly {
    time: Vec<DateTime>,
    temperature_2m: Vec<Option<f64>>,
    relative_humidity_2m: Vec<Option<f64>>,
    wind_speed_10m: Vec<Option<f64>>,
    cloud_cover: Vec<Option<f64>>,
    precipitation: Vec<Option<f64>>,
}

impl Hourly {
    fn found(&self) -> Result<Vec<Found>, Why> {
        let columns = [
            &self.temperature_2m,
            &self.relative_humidity_2m,
            &self.wind_speed_10m,
            &self.cloud_cover,
            &self.precipitation,
        ];
        if columns.iter().any(|column| column.len() != self.time.len()) {
            return Err(Why::wrong("its columns are not of the same length"));
        }
        let instant = |time: &DateTime| -> Result<Timestamp, Why> {
            Offset::UTC.to_timestamp(*time).map_err(|_| Why::wrong("a time is out of range"))
        };
        let found = |(at, time): (usize, &DateTime)| -> Result<Found, Why> {
            Ok(Found {
                time: instant(time)?,
                temperature_celsius: self.temperature_2m[at],
                humidity_percent: self.relative_humidity_2m[at],
                wind_metre_per_second: self.wind_speed_10m[at],
                cloud_percent: self.cloud_cover[at],
                one_hour_mm: self.precipitation.get(at + 1).copied().flatten(),
                six_hours_mm: None,
            })
        };
        self.time.iter().enumerate().map(found).collect()
    }
}
