//! ISD-lite (NOAA): one row an hour in UTC, twelve whole numbers apart by blanks, tenths, -9999 for missing.

use super::columns::Dropped;
use super::text::{shown, text};
use crate::fault::Faults;
use crate::raw::lay_out;
use crate::{RawHour, Reading, WeatherFaults};
use jiff::civil::Date;
use jiff::tz::Offset;
use snowhum_say::weather_fault as say;
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond};

const MISSING: i32 = -9999;
const TRACE: i32 = -1;

/// Reads one or several years of ISD-lite, put one after another.
///
/// The observation of an hour stands for the hour it begins. Sea-level pressure is left out; precipitation is that of
/// the hour before the observation.
///
/// # Errors
/// [`WeatherFaults`] with line, field and remedy.
///
/// Source: NOAA, Integrated Surface Data Lite format (columns, scale, missing); trace precipitation -1 from memory.
///
/// ```
/// let text = "2018 01 01 00  -228 -9999 -9999 -9999    15     4 -9999 -9999";
/// let reading = snowhum_weather::readers::isd_lite(text.as_bytes(), "702910-2018").unwrap();
/// let hour = reading.raw.hours[0];
/// assert!((hour.temperature.unwrap().celsius() + 22.8).abs() < 1e-9);
/// assert_eq!(hour.cloud.unwrap().get(), 0.5);
/// assert!(hour.dew_point.is_none());
/// ```
pub fn isd_lite(bytes: &[u8], file: &str) -> Result<Reading, WeatherFaults> {
    let text = text(bytes);
    let mut faults = Faults::default();
    let mut dropped = Dropped::default();
    let mut rows = Vec::new();
    for (index, line) in text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty()) {
        if faults.full() {
            break;
        }
        if let Some(fields) = fields(index + 1, line, &mut faults) {
            add(index + 1, &fields, &mut rows, &mut faults, &mut dropped);
        }
    }
    faults.or(file, ())?;
    let raw = lay_out(file, &rows)?;
    let notes = dropped.notes().collect();
    Ok(Reading { file: file.to_owned(), raw, place: None, offset: Some(Offset::UTC), typical_year: false, notes })
}

fn fields(line: usize, content: &str, faults: &mut Faults) -> Option<[i32; 12]> {
    let mut fields = [MISSING; 12];
    let mut found = 0;
    for word in content.split_whitespace().take(13) {
        let Ok(number) = word.parse::<i32>() else {
            faults.at(line, say::numbered(found + 1), say::isd_number(shown(word)));
            return None;
        };
        if let Some(field) = fields.get_mut(found) {
            *field = number;
        }
        found += 1;
    }
    if found == 12 {
        return Some(fields);
    }
    faults.at(line, say::row(), say::isd_fields(found));
    None
}

fn add(line: usize, f: &[i32; 12], rows: &mut Vec<(i64, RawHour)>, faults: &mut Faults, dropped: &mut Dropped) {
    let date = i16::try_from(f[0]).ok().zip(i8::try_from(f[1]).ok()).zip(i8::try_from(f[2]).ok());
    let Some(date) = date.and_then(|((y, m), d)| Date::new(y, m, d).ok()).filter(|_| (0..24).contains(&f[3])) else {
        faults.at(line, say::hours(), say::isd_hour(format!("{} {} {} {}", f[0], f[1], f[2], f[3])));
        return;
    };
    let days = i64::from((date - Date::constant(1970, 1, 1)).get_days());
    let tenths = |value: i32| (value != MISSING).then(|| f64::from(value) / 10.0);
    let mut keep = |name, value: Option<f64>, plausible| value.and_then(|value| dropped.keep(name, value, plausible));
    let rain_mm = if f[10] == TRACE { Some(0.0) } else { tenths(f[10]) };
    let values = RawHour {
        temperature: keep("temperature", tenths(f[4]), (-90.0, 60.0)).map(Kelvin::from_celsius),
        dew_point: keep("dew point", tenths(f[5]), (-100.0, 50.0)).map(Kelvin::from_celsius),
        wind: keep("wind speed", tenths(f[8]), (0.0, 75.0)).map(MetrePerSecond::new),
        cloud: eighths(f[9]).map(Fraction::new),
        precipitation: keep("precipitation", rain_mm, (0.0, 200.0)).map(|mm| Metre::new(mm / 1000.0)),
        ..RawHour::default()
    };
    rows.push((days * 24 + i64::from(f[3]), values));
}

/// Sky code as cover: 0 to 8 eighths, 9 obscured, 10 partly obscured; from 11 on the codes are of thin and broken
/// layers and give the middle of their range.
fn eighths(code: i32) -> Option<f64> {
    match code {
        0..=8 => Some(f64::from(code) / 8.0),
        9 => Some(1.0),
        10 | 13..=15 => Some(0.5),
        11 | 12 => Some(0.3),
        16..=18 => Some(0.75),
        19 => Some(1.0),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn missing_rows_are_missing_hours_and_trace_is_no_depth() {
        let text = "2018 12 31 23  -100  -120 10257     0     0     8    -1 -9999\n\
                    2019 01 01 02  -110  -120 10257     0 -9999 -9999 -9999 -9999\n";
        let hours = isd_lite(text.as_bytes(), "x").unwrap().raw.hours;
        assert_eq!(hours.len(), 4);
        assert_eq!(hours[0].precipitation, Some(Metre::ZERO));
        assert_eq!(hours[1], RawHour::default());
        assert!(hours[3].wind.is_none());
    }

    #[test]
    fn faults_name_line_field_and_remedy() {
        let text = "2018 13 31 23 1 1 1 1 1 1 1 1\n2018 12 31 x 1 1 1 1 1 1 1 1\n2018 12 31\n";
        let message = isd_lite(text.as_bytes(), "x").unwrap_err().to_string();
        for part in ["line 1, year", "line 2, field 4: \"x\"", "line 3, row: has 3 fields", "12"] {
            assert!(message.contains(part), "{part}: {message}");
        }
    }
}
