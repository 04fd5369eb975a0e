//! The US National Weather Service: a point leads to its grid square, whose layers are values with the time each holds.
//!
//! Source: the service's pages on its API (points, gridpoints).

use crate::body::{Body, Found, MOST_STEPS};
use crate::client::Page;
use crate::transport::within;
use crate::{Position, Why};
use jiff::{Span, Timestamp};
use serde::Deserialize;
use std::collections::BTreeMap;

/// Longest time that one value may hold, h.
const LONGEST_VALUE_H: i64 = 14 * 24;

/// The page that says which square a place is in.
pub(crate) fn point(address: &str, position: &Position) -> Page {
    let (latitude, longitude) = position.sent();
    Page { name: format!("nws-point_{latitude}_{longitude}"), url: format!("{address}/points/{latitude},{longitude}") }
}

/// The page of the square, by what the point's page says; it must be on the same server.
pub(crate) fn grid(point: &Page, position: &Position, square: &str) -> Result<Page, Why> {
    let (latitude, longitude) = position.sent();
    let url = within(&point.url, square).ok_or_else(|| Why::elsewhere(square))?;
    Ok(Page { name: format!("nws-grid_{latitude}_{longitude}"), url })
}

/// Reads the point's page: the address of its square.
pub(crate) fn read_point(text: &str) -> Result<String, Why> {
    let feature: Feature<Point> = serde_json::from_str(text).map_err(|error| Why::wrong(error.to_string()))?;
    Ok(feature.properties.forecast_grid_data)
}

/// Reads the square's page. Values that hold for several hours are laid out hour by hour; sums are spread evenly.
pub(crate) fn read_grid(text: &str) -> Result<Body, Why> {
    let feature: Feature<Square> = serde_json::from_str(text).map_err(|error| Why::wrong(error.to_string()))?;
    let square = feature.properties;
    let mut hours = BTreeMap::new();
    let temperature = square.temperature.laid_out("temperature", &["wmoUnit:degC"])?;
    for (hour, held) in &temperature {
        let time = Timestamp::from_second(hour * 3600).map_err(|_| Why::wrong("a time is out of range"))?;
        hours.insert(*hour, Found { temperature_celsius: Some(held.value), ..Found::at(time) });
    }
    let mut fill = |layer: Option<&Layer>, name, unit, set: fn(&mut Found, &Held)| -> Result<(), Why> {
        let Some(layer) = layer else { return Ok(()) };
        for (hour, held) in &layer.laid_out(name, &[unit])? {
            if let Some(found) = hours.get_mut(hour) {
                set(found, held);
            }
        }
        Ok(())
    };
    fill(square.relative_humidity.as_ref(), "relativeHumidity", "wmoUnit:percent", |found, held| {
        found.humidity_percent = Some(held.value);
    })?;
    fill(square.sky_cover.as_ref(), "skyCover", "wmoUnit:percent", |found, held| {
        found.cloud_percent = Some(held.value);
    })?;
    fill(square.wind_speed.as_ref(), "windSpeed", "wmoUnit:km_h-1", |found, held| {
        found.wind_metre_per_second = Some(held.value / 3.6);
    })?;
    fill(square.quantitative_precipitation.as_ref(), "quantitativePrecipitation", "wmoUnit:mm", |found, held| {
        found.one_hour_mm = Some(held.value / held.holds_h as f64);
    })?;
    Body::of(Some(square.update_time), &hours.into_values().collect::<Vec<_>>())
}

#[derive(Deserialize)]
struct Feature<T> {
    properties: T,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct Point {
    forecast_grid_data: String,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct Square {
    update_time: Timestamp,
    temperature: Layer,
    relative_humidity: Option<Layer>,
    sky_cover: Option<Layer>,
    wind_speed: Option<Layer>,
    quantitative_precipitation: Option<Layer>,
}

#[derive(Deserialize)]
struct Layer {
    uom: Option<String>,
    #[serde(default)]
    values: Vec<Value>,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct Value {
    valid_time: String,
    value: Option<f64>,
}

/// A value in one of the hours it holds for.
#[derive(Debug, Clone, Copy)]
struct Held {
    value: f64,
    holds_h: i64,
}

impl Layer {
    /// The values by hour since 1970.
    fn laid_out(&self, name: &str, units: &[&str]) -> Result<BTreeMap<i64, Held>, Why> {
        let unit = self.uom.as_deref().unwrap_or_default();
        if !self.values.is_empty() && !units.contains(&unit) {
            return Err(Why::wrong(format!("{name} is in \"{unit}\", where {} is right", units.join(" or "))));
        }
        if self.values.len() > MOST_STEPS {
            return Err(Why::wrong(format!("{name} has {} values", self.values.len())));
        }
        let mut hours = BTreeMap::new();
        for Value { valid_time, value } in &self.values {
            let (first, holds_h) =
                hours_of(valid_time).ok_or_else(|| Why::wrong(format!("{name} has a value for \"{}\"", valid_time)))?;
            let Some(value) = *value else { continue };
            hours.extend((first..first + holds_h).map(|hour| (hour, Held { value, holds_h })));
        }
        Ok(hours)
    }
}

/// First hour since 1970 and number of hours of a time such as `2027-01-06T06:00:00+00:00/PT3H`.
fn hours_of(valid_time: &str) -> Option<(i64, i64)> {
    let (start, length) = valid_time.split_once('/')?;
    let start: Timestamp = start.parse().ok()?;
    let length: Span = length.parse().ok()?;
    let hours = i64::from(length.get_days()) * 24 + i64::from(length.get_hours());
    let whole = length.get_minutes() == 0 && length.get_seconds() == 0 && start.as_second() % 3600 == 0;
    (whole && (1..=LONGEST_VALUE_H).contains(&hours)).then(|| (start.as_second() / 3600, hours))
}

#[cfg(test)]
mod tests {
    use super::hours_of;

    #[test]
    fn a_time_with_its_length_is_whole_hours() {
        let first = 1_799_215_200 / 3600;
        assert_eq!(hours_of("2027-01-06T06:00:00+00:00/PT1H"), Some((first, 1)));
        assert_eq!(hours_of("2027-01-06T06:00:00+00:00/P1DT6H"), Some((first, 30)));
        for bad in [
            "2027-01-06T06:00:00+00:00",
            "2027-01-06T06:00:00+00:00/PT0H",
            "2027-01-06T06:00:00+00:00/PT30M",
            "2027-01-06T06:30:00+00:00/PT1H",
            "2027-01-06T06:00:00+00:00/P15D",
            "2027-01-06T06:00:00+00:00/-PT1H",
            "today/PT1H",
        ] {
            assert_eq!(hours_of(bad), None, "{bad}");
        }
    }
}
