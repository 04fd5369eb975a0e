//! MET Norway, Locationforecast 2.0 `compact`: GeoJSON, an instant a step and sums over the hours after it.
//!
//! Source: MET Norway, General forecast JSON format, and its terms of service.

use crate::body::{Body, Found};
use crate::client::Page;
use crate::{Position, Why};
use jiff::Timestamp;
use serde::Deserialize;
use std::collections::HashMap;

/// The quantities read, with the unit each must be in.
const UNITS: [(&str, &str); 5] = [
    ("air_temperature", "celsius"),
    ("relative_humidity", "%"),
    ("wind_speed", "m/s"),
    ("cloud_area_fraction", "%"),
    ("precipitation_amount", "mm"),
];

/// The page of a place.
pub(crate) fn page(address: &str, position: &Position) -> Page {
    let (latitude, longitude) = position.sent();
    let elevation = position.sent_elevation();
    let altitude = elevation.as_ref().map(|metres| format!("&altitude={metres}")).unwrap_or_default();
    let metres = elevation.map(|metres| format!("_{metres}m")).unwrap_or_default();
    let path = "weatherapi/locationforecast/2.0/compact";
    Page {
        name: format!("met-norway_{latitude}_{longitude}{metres}"),
        url: format!("{address}/{path}?lat={latitude}&lon={longitude}{altitude}"),
    }
}

/// Reads a page.
pub(crate) fn read(text: &str) -> Result<Body, Why> {
    let feature: Feature = serde_json::from_str(text).map_err(|error| Why::wrong(error.to_string()))?;
    let Properties { meta, timeseries } = feature.properties;
    for (name, right) in UNITS {
        if let Some(unit) = meta.units.get(name).filter(|unit| *unit != right) {
            return Err(Why::wrong(format!("{name} is in {unit}, where {right} is right")));
        }
    }
    let found: Vec<Found> = timeseries.iter().map(Step::found).collect();
    Body::of(Some(meta.updated_at), &found)
}

#[derive(Deserialize)]
struct Feature {
    properties: Properties,
}

#[derive(Deserialize)]
struct Properties {
    meta: Meta,
    timeseries: Vec<Step>,
}

#[derive(Deserialize)]
struct Meta {
    updated_at: Timestamp,
    units: HashMap<String, String>,
}

#[derive(Deserialize)]
struct Step {
    time: Timestamp,
    data: Data,
}

#[derive(Deserialize)]
struct Data {
    instant: Instant,
    next_1_hours: Option<Period>,
    next_6_hours: Option<Period>,
}

#[derive(Deserialize)]
struct Instant {
    details: InstantDetails,
}

#[derive(Deserialize)]
struct InstantDetails {
    air_temperature: Option<f64>,
    relative_humidity: Option<f64>,
    wind_speed: Option<f64>,
    cloud_area_fraction: Option<f64>,
}

#[derive(Deserialize)]
struct Period {
    details: Option<PeriodDetails>,
}

#[derive(Deserialize)]
struct PeriodDetails {
    precipitation_amount: Option<f64>,
}

impl Step {
    fn found(&self) -> Found {
        let fallen = |period: &Option<Period>| {
            period.as_ref().and_then(|period| period.details.as_ref()).and_then(|details| details.precipitation_amount)
        };
        let instant = &self.data.instant.details;
        Found {
            time: self.time,
            temperature_celsius: instant.air_temperature,
            humidity_percent: instant.relative_humidity,
            wind_metre_per_second: instant.wind_speed,
            cloud_percent: instant.cloud_area_fraction,
            one_hour_mm: fallen(&self.data.next_1_hours),
            six_hours_mm: fallen(&self.data.next_6_hours),
        }
    }
}
