//! EPW (EnergyPlus weather): eight header lines, then rows of 35 columns, one an hour of standard time.
//!
//! Row `h` covers the hour before `h:00`, whether its minute reads 0 or 60. Months may come from different years. The
//! snow columns are left out, since in real files they are often all 0 or stuck; snow follows from temperature and
//! precipitation.

use super::columns::{Column, Dropped};
use super::epw_header;
use super::text::{shown, text};
use crate::fault::Faults;
use crate::raw::lay_out;
use crate::{RawHour, Reading, WeatherFaults};
use jiff::civil::Date;
use jiff::tz::Offset;
use snowhum_say::{Message, weather, weather_fault as say};
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond, Pascal, WattPerSquareMetre};

pub use super::epw_header::EpwHeader;

/// A year without 29 February to lay typical years out in.
const TYPICAL_YEAR: i16 = 2001;
/// A year before a leap year, for typical years that hold 29 February.
const TYPICAL_BEFORE_LEAP: i16 = 2003;

const TEMPERATURE: Column = column("dry bulb", 99.9, (-90.0, 60.0));
const DEW_POINT: Column = column("dew point", 99.9, (-100.0, 50.0));
const HUMIDITY: Column = column("relative humidity", 999.0, (0.0, 110.0));
const PRESSURE: Column = column("pressure", 999_999.0, (30_000.0, 110_000.0));
const GLOBAL: Column = column("global radiation", 9999.0, (0.0, 1600.0));
const DIRECT: Column = column("direct radiation", 9999.0, (0.0, 1500.0));
const DIFFUSE: Column = column("diffuse radiation", 9999.0, (0.0, 1000.0));
const WIND: Column = column("wind speed", 999.0, (0.0, 75.0));
const COVER: Column = column("total sky cover", 99.0, (0.0, 10.0));
const RAIN: Column = column("liquid precipitation depth", 999.0, (0.0, 200.0));

const fn column(name: &'static str, missing_from: f64, plausible: (f64, f64)) -> Column {
    Column { name, missing_from, plausible }
}

/// Reads an EPW file, or a part of one.
///
/// # Errors
/// [`WeatherFaults`] with line, field and remedy.
///
/// Source: EnergyPlus Auxiliary Programs, weather file format: columns and codes for missing values.
///
/// ```
/// let text = "LOCATION,Somewhere,-,FIN,none,000000,61.7,27.3,2.0,105\n\
///             2025,1,1,1,60,-,-9.5,-10.5,92,100500,0,0,220,0,0,0,0,0,0,0,180,2.5,8,8,20,1000,9,0,0,0,0,88,0,0,0";
/// let reading = snowhum_weather::readers::epw(text.as_bytes(), "somewhere.epw").unwrap();
/// assert_eq!(reading.raw.start.to_string(), "2024-12-31T22:00:00Z");
/// assert_eq!(reading.raw.hours[0].temperature.unwrap().celsius(), -9.5);
/// ```
pub fn epw(bytes: &[u8], file: &str) -> Result<Reading, WeatherFaults> {
    let text = text(bytes);
    let (head, rows) = parts(&text);
    let header = epw_header::read(file, &head)?;
    let mut faults = Faults::default();
    let mut dropped = Dropped::default();
    let rows: Vec<Row> = rows
        .iter()
        .map_while(|(number, line)| (!faults.full()).then(|| row(*number, line, &mut faults, &mut dropped)))
        .flatten()
        .collect();
    let (rows, typical_year) = faults.or(file, on_one_clock(&rows, header.offset))?;
    let raw = lay_out(file, &rows)?;
    let mut notes: Vec<Message> = dropped.notes().collect();
    if typical_year {
        notes.push(weather::typical_year());
    }
    Ok(Reading {
        file: file.to_owned(),
        raw,
        place: Some(header.place),
        offset: Some(header.offset),
        typical_year,
        notes,
    })
}

/// The header of an EPW file alone.
///
/// # Errors
/// [`WeatherFaults`] when the LOCATION line is missing or wrong.
pub fn header(bytes: &[u8], file: &str) -> Result<EpwHeader, WeatherFaults> {
    epw_header::read(file, &parts(&text(bytes)).0)
}

type Lines<'a> = Vec<(usize, &'a str)>;

/// Header and data: a row of data begins with a number.
fn parts(text: &str) -> (Lines<'_>, Lines<'_>) {
    let lines = text.lines().enumerate().map(|(index, line)| (index + 1, line.trim()));
    lines.filter(|(_, line)| !line.is_empty()).partition(|(_, line)| !line.starts_with(|c: char| c.is_ascii_digit()))
}

struct Row {
    date: Date,
    hour: i64,
    values: RawHour,
}

fn row(line: usize, content: &str, faults: &mut Faults, dropped: &mut Dropped) -> Option<Row> {
    let fields: Vec<&str> = content.split(',').collect();
    if fields.len() < 22 {
        faults.at(line, say::row(), say::epw_columns(fields.len()));
        return None;
    }
    let whole = |index: usize| fields[index].trim().parse::<i16>().ok();
    let date = whole(0).zip(whole(1)).zip(whole(2)).and_then(|((y, m), d)| {
        Date::new(y, i8::try_from(m).ok()?, i8::try_from(d).ok()?).ok().or_else(|| leap_day(m, d))
    });
    let Some(date) = date else {
        faults.at(line, say::days(), say::epw_date(shown(&fields[..3].join(","))));
        return None;
    };
    let Some(hour) = whole(3).filter(|hour| (1..=24).contains(hour)) else {
        faults.at(line, say::hour(), say::epw_hour(shown(fields[3])));
        return None;
    };
    Some(Row { date, hour: i64::from(hour), values: values(line, &fields, faults, dropped) })
}

/// 29 February of a year that has none, as spliced files hold it.
fn leap_day(month: i16, day: i16) -> Option<Date> {
    if (month, day) == (2, 29) { Date::new(TYPICAL_BEFORE_LEAP + 1, 2, 29).ok() } else { None }
}

fn values(line: usize, fields: &[&str], faults: &mut Faults, dropped: &mut Dropped) -> RawHour {
    let mut read = |column: &Column, index: usize| column.read(line, fields.get(index).unwrap_or(&""), faults, dropped);
    RawHour {
        temperature: read(&TEMPERATURE, 6).map(Kelvin::from_celsius),
        dew_point: read(&DEW_POINT, 7).map(Kelvin::from_celsius),
        humidity: read(&HUMIDITY, 8).map(|percent| Fraction::new(percent.min(100.0) / 100.0)),
        pressure: read(&PRESSURE, 9).map(Pascal::new),
        global: read(&GLOBAL, 13).map(WattPerSquareMetre::new),
        direct: read(&DIRECT, 14).map(WattPerSquareMetre::new),
        diffuse: read(&DIFFUSE, 15).map(WattPerSquareMetre::new),
        wind: read(&WIND, 21).map(MetrePerSecond::new),
        cloud: read(&COVER, 22).map(|tenths| Fraction::new(tenths / 10.0)),
        precipitation: read(&RAIN, 33).map(|mm| Metre::new(mm / 1000.0)),
        snow_depth: None,
    }
}

/// Rows by whole hours since 1970 UTC, and whether the years had to be replaced by one typical winter or year.
fn on_one_clock(rows: &[Row], offset: Offset) -> (Vec<(i64, RawHour)>, bool) {
    let typical = rows.windows(2).any(|pair| {
        let days = (pair[1].date - pair[0].date).get_days();
        !(0..=31).contains(&days)
    });
    let leap = rows.iter().any(|row| (row.date.month(), row.date.day()) == (2, 29));
    let mut year = if leap { TYPICAL_BEFORE_LEAP } else { TYPICAL_YEAR };
    if leap && rows.first().is_some_and(|row| row.date.month() <= 2) {
        year += 1;
    }
    let mut month = 0;
    let mut laid = Vec::with_capacity(rows.len());
    for row in rows {
        if row.date.month() < month {
            year = year.saturating_add(1);
        }
        month = row.date.month();
        let date = if typical { Date::new(year, month, row.date.day()).unwrap_or(row.date) } else { row.date };
        let days = i64::from((date - Date::constant(1970, 1, 1)).get_days());
        let begins_s = (days * 24 + row.hour - 1) * 3600 - i64::from(offset.seconds());
        laid.push((begins_s.div_euclid(3600), row.values));
    }
    (laid, typical)
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str = "LOCATION,Somewhere,-,FIN,none,000000,61.7,27.3,2.0,105\n";

    fn line(date: &str, t: &str) -> String {
        format!(
            "{date},0,-,{t},99.9,999,999999,0,0,220,9999,9999,9999,0,0,0,0,180,999,99,99,20,1000,9,0,0,0,999,88,0,999,0\n"
        )
    }

    #[test]
    fn codes_for_missing_are_missing_and_never_zero() {
        let text = format!("{HEAD}{}{}", line("2025,1,1,1", "-9.5"), line("2025,1,1,2", "99.9"));
        let reading = epw(text.as_bytes(), "a.epw").unwrap();
        let expected = RawHour { temperature: Some(Kelvin::from_celsius(-9.5)), ..RawHour::default() };
        assert_eq!(reading.raw.hours, [expected, RawHour::default()]);
    }

    #[test]
    fn minute_0_and_minute_60_are_the_same_hour() {
        let zero = format!("{HEAD}{}", line("2025,1,1,5", "-9.5"));
        let sixty = zero.replace("2025,1,1,5,0,", "2025,1,1,5,60,");
        assert_ne!(zero, sixty);
        let start = |text: &str| epw(text.as_bytes(), "a.epw").unwrap().raw.start;
        assert_eq!(start(&zero), start(&sixty));
        assert_eq!(start(&zero).to_string(), "2025-01-01T02:00:00Z");
    }

    #[test]
    fn spliced_years_become_one_winter() {
        let text = format!("{HEAD}{}{}", line("1999,12,31,24", "-1"), line("1985,1,1,1", "-2"));
        let reading = epw(text.as_bytes(), "a.epw").unwrap();
        assert!(reading.typical_year);
        assert_eq!(reading.raw.hours.len(), 2);
    }

    #[test]
    fn faults_name_line_field_and_remedy() {
        let text = format!(
            "{HEAD}{}{}{}short,row\n2025,1",
            line("2025,1,1,25", "-9"),
            line("2025,13,1,1", "1"),
            line("2025,1,1,1", "warm")
        );
        let message = epw(text.as_bytes(), "a.epw").unwrap_err().to_string();
        for part in
            ["a.epw: line 2, hour", "1 to 24", "line 3, year, month, day", "line 4, dry bulb: \"warm\"", "35 columns"]
        {
            assert!(message.contains(part), "{part}: {message}");
        }
    }

    #[test]
    fn latin_1_and_odd_header_order_are_read() {
        let mut bytes = b"COMMENTS 2,\xe4\xf6\nLOCATION,\xc5bo,-,FIN,none,0,60.4,22.3,2.0,10\nCOMMENTS 1,x\n".to_vec();
        bytes.extend_from_slice(line("2025,1,1,1", "-9").as_bytes());
        assert_eq!(header(&bytes, "a.epw").unwrap().city, "Åbo");
        assert_eq!(epw(&bytes, "a.epw").unwrap().raw.hours.len(), 1);
    }
}
