//! Answers in the shapes the services publish, with invented numbers.

use crate::yard::morning;
use jiff::{SignedDuration, Timestamp};
use serde_json::{Value, json};

fn hour(after: i64) -> Timestamp {
    morning() + SignedDuration::from_hours(after)
}

/// MET Norway: 48 hours, then six-hour steps to the end of the fifth day. The air warms by a tenth an hour from -15 °C.
pub(crate) fn met_norway() -> String {
    met_norway_from(-15.0).to_string()
}

/// The same from another temperature.
pub(crate) fn met_norway_from(celsius: f64) -> Value {
    let hours = (0..48).chain((48..=120).step_by(6));
    let steps: Vec<Value> = hours.map(|after| step(after, celsius)).collect();
    json!({
        "type": "Feature",
        "geometry": {"type": "Point", "coordinates": [27.68, 62.89, 97]},
        "properties": {
            "meta": {
                "updated_at": "2027-01-06T05:21:07Z",
                "units": {
                    "air_pressure_at_sea_level": "hPa", "air_temperature": "celsius", "cloud_area_fraction": "%",
                    "precipitation_amount": "mm", "relative_humidity": "%", "wind_from_direction": "degrees",
                    "wind_speed": "m/s"
                }
            },
            "timeseries": steps
        }
    })
}

fn step(after: i64, celsius: f64) -> Value {
    let mut data = json!({
        "instant": {"details": {
            "air_pressure_at_sea_level": 1017.3, "air_temperature": celsius + 0.1 * after as f64,
            "cloud_area_fraction": 62.5, "relative_humidity": 84.0, "wind_from_direction": 214.0, "wind_speed": 3.2
        }}
    });
    let period = |mm: f64| json!({"summary": {"symbol_code": "snow"}, "details": {"precipitation_amount": mm}});
    if after < 48 {
        data["next_1_hours"] = period(0.2);
    }
    if after < 120 {
        data["next_6_hours"] = period(1.2);
        data["next_12_hours"] = json!({"summary": {"symbol_code": "snow"}, "details": {}});
    }
    json!({"time": hour(after).to_string(), "data": data})
}

/// The National Weather Service: a point on a server.
pub(crate) fn point(server: &str) -> String {
    json!({
        "id": "https://api.weather.gov/points/46.88,-96.79",
        "type": "Feature",
        "properties": {
            "gridId": "FGF", "gridX": 99, "gridY": 55,
            "forecastGridData": format!("{server}/gridpoints/FGF/99,55"),
            "forecastHourly": format!("{server}/gridpoints/FGF/99,55/forecast/hourly")
        }
    })
    .to_string()
}

/// The National Weather Service: a square of 36 hours.
pub(crate) fn square() -> String {
    let from = |after: i64, length: &str| format!("{}+00:00/{length}", hour(after).strftime("%Y-%m-%dT%H:%M:%S"));
    let value = |after: i64, length: &str, value: f64| json!({"validTime": from(after, length), "value": value});
    json!({
        "type": "Feature",
        "properties": {
            "updateTime": "2027-01-06T04:10:00+00:00",
            "elevation": {"unitCode": "wmoUnit:m", "value": 274.3},
            "temperature": {"uom": "wmoUnit:degC", "values": [
                value(0, "PT3H", -22.0), value(3, "PT1H", -21.0), value(4, "P1DT8H", -18.0)]},
            "relativeHumidity": {"uom": "wmoUnit:percent", "values": [value(0, "P1DT12H", 71.0)]},
            "skyCover": {"uom": "wmoUnit:percent", "values": [
                value(0, "PT6H", 40.0), {"validTime": from(6, "PT6H"), "value": null}]},
            "windSpeed": {"uom": "wmoUnit:km_h-1", "values": [value(0, "P1DT12H", 18.0)]},
            "quantitativePrecipitation": {"uom": "wmoUnit:mm", "values": [value(0, "PT6H", 3.0), value(6, "PT6H", 0.0)]},
            "weather": {"values": []}
        }
    })
    .to_string()
}

/// Open-Meteo: 30 hours; rain and snow stand at the end of their hour.
pub(crate) fn open_meteo() -> String {
    let times: Vec<String> = (0..30).map(|after| hour(after).strftime("%Y-%m-%dT%H:%M").to_string()).collect();
    let fallen: Vec<f64> = (0..30).map(|after| if after == 1 { 0.7 } else { 0.0 }).collect();
    let mut cloud = vec![json!(100); 30];
    cloud[2] = Value::Null;
    json!({
        "latitude": 62.9, "longitude": 27.7, "generationtime_ms": 0.1, "utc_offset_seconds": 0, "timezone": "GMT",
        "timezone_abbreviation": "GMT", "elevation": 97.0,
        "hourly_units": {"time": "iso8601", "temperature_2m": "°C", "relative_humidity_2m": "%",
            "wind_speed_10m": "m/s", "cloud_cover": "%", "precipitation": "mm"},
        "hourly": {"time": times, "temperature_2m": vec![-4.5; 30], "relative_humidity_2m": vec![90; 30],
            "wind_speed_10m": vec![2.5; 30], "cloud_cover": cloud, "precipitation": fallen}
    })
    .to_string()
}
