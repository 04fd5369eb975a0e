//! GHCN-Daily by station (NOAA): a row an element and day, spread over the hours of the day.

use super::columns::Dropped;
use super::text::{shown, text};
use crate::fault::Faults;
use crate::hourly_shape::spread_extremes;
use crate::raw::lay_out;
use crate::{Place, RawHour, Reading, WeatherFaults, fault};
use jiff::civil::Date;
use jiff::tz::Offset;
use snowhum_say::{weather, weather_fault as say};
use snowhum_units::{Kelvin, Metre};
use std::collections::BTreeMap;

/// What one day holds.
#[derive(Default, Clone, Copy)]
struct Day {
    warmest_c: Option<f64>,
    coldest_c: Option<f64>,
    rain_mm: Option<f64>,
    snow_mm: Option<f64>,
}

/// Reads one station's days (`ID,YYYYMMDD,ELEMENT,VALUE,M,Q,S,OBS-TIME`) and spreads them over hours.
///
/// Temperature runs between the day's extremes by the course of the sun; rain is spread evenly. Values with a quality
/// flag are left out. An observation before noon belongs to the day before, for the day's highest temperature and
/// rain. `zone` is the station's standard time.
///
/// # Errors
/// [`WeatherFaults`] with line, field and remedy.
///
/// Source: NOAA, GHCN-Daily by-station readme (columns, flags); units tenths of °C and mm, snow depth mm from memory.
pub fn ghcn_daily(bytes: &[u8], file: &str, place: Place, zone: Offset) -> Result<Reading, WeatherFaults> {
    let text = text(bytes);
    let mut faults = Faults::default();
    let mut dropped = Dropped::default();
    let mut days: BTreeMap<i32, Day> = BTreeMap::new();
    let mut station: Option<String> = None;
    for (index, line) in text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty()) {
        if faults.full() {
            break;
        }
        let fields: Vec<&str> = line.split(',').map(|field| field.trim().trim_matches('"')).collect();
        if index == 0
            && fields
                .first()
                .is_some_and(|first| first.eq_ignore_ascii_case("id") || first.eq_ignore_ascii_case("station"))
        {
            continue;
        }
        one_station(&mut station, index + 1, &fields, &mut faults);
        take(index + 1, &fields, &mut days, &mut faults, &mut dropped);
    }
    faults.or(file, ())?;
    if days.len() > 60 * 366 || days.keys().next_back().zip(days.keys().next()).is_some_and(|(l, f)| l - f > 60 * 366) {
        return Err(fault::whole(file, say::ghcn_long()));
    }
    let raw = lay_out(file, &hours(&days, place, zone))?;
    let notes = dropped.notes().chain([weather::daily()]).collect();
    Ok(Reading { file: file.to_owned(), raw, place: None, offset: Some(zone), typical_year: false, notes })
}

fn one_station(station: &mut Option<String>, line: usize, fields: &[&str], faults: &mut Faults) {
    let id = fields.first().copied().unwrap_or_default();
    let first = station.get_or_insert_with(|| id.to_owned());
    if first != id {
        faults.at(line, "ID", say::ghcn_station(shown(first), shown(id), say::one_station()));
    }
}

fn take(line: usize, fields: &[&str], days: &mut BTreeMap<i32, Day>, faults: &mut Faults, dropped: &mut Dropped) {
    let [_, date, element, value, rest @ ..] = fields else {
        faults.at(line, say::row(), say::ghcn_columns(fields.len()));
        return;
    };
    let Some(day) = day_number(date) else {
        faults.at(line, say::date(), say::ghcn_date(shown(date)));
        return;
    };
    let Ok(value) = value.parse::<f64>() else {
        faults.at(line, *element, say::ghcn_number(shown(value)));
        return;
    };
    let flagged = rest.get(1).is_some_and(|quality| !quality.is_empty());
    if flagged || value == -9999.0 {
        return;
    }
    let morning = rest.get(3).and_then(|time| time.parse::<u16>().ok()).is_some_and(|time| time <= 1200);
    let shifted = if morning { day - 1 } else { day };
    match *element {
        "TMAX" => days.entry(shifted).or_default().warmest_c = dropped.keep("TMAX", value / 10.0, (-90.0, 60.0)),
        "TMIN" => days.entry(day).or_default().coldest_c = dropped.keep("TMIN", value / 10.0, (-90.0, 60.0)),
        "PRCP" => days.entry(shifted).or_default().rain_mm = dropped.keep("PRCP", value / 10.0, (0.0, 1000.0)),
        "SNWD" => days.entry(day).or_default().snow_mm = dropped.keep("SNWD", value, (0.0, 10_000.0)),
        _ => {}
    }
}

/// Days since 1970 of `YYYYMMDD` or `YYYY-MM-DD`.
fn day_number(date: &str) -> Option<i32> {
    let digits: String = date.chars().filter(|c| *c != '-').collect();
    if digits.len() != 8 || !digits.bytes().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let date = Date::new(digits[..4].parse().ok()?, digits[4..6].parse().ok()?, digits[6..].parse().ok()?).ok()?;
    Some((date - Date::constant(1970, 1, 1)).get_days())
}

fn hours(days: &BTreeMap<i32, Day>, place: Place, zone: Offset) -> Vec<(i64, RawHour)> {
    let mut rows = Vec::with_capacity(days.len() * 24);
    for (number, day) in days {
        let begins_s = i64::from(*number) * 86_400 - i64::from(zone.seconds());
        let next_coldest_c = days.get(&(number + 1)).and_then(|next| next.coldest_c);
        let course = day.coldest_c.zip(day.warmest_c).map(|(coldest_c, warmest_c)| {
            spread_extremes(place, begins_s, coldest_c, warmest_c, next_coldest_c.unwrap_or(coldest_c))
        });
        for hour in 0..24 {
            let values = RawHour {
                temperature: course.map(|course| Kelvin::from_celsius(course[hour])),
                precipitation: day.rain_mm.map(|mm| Metre::new(mm / 24_000.0)),
                snow_depth: day.snow_mm.map(|mm| Metre::new(mm / 1000.0)),
                ..RawHour::default()
            };
            rows.push((begins_s.div_euclid(3600) + hour as i64, values));
        }
    }
    rows
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::Degree;

    fn read(text: &str) -> Result<Reading, WeatherFaults> {
        let place = Place { latitude: Degree::new(50.0), longitude: Degree::new(-97.0), elevation: Metre::new(235.0) };
        ghcn_daily(text.as_bytes(), "x.csv", place, Offset::constant(-6))
    }

    #[test]
    fn a_day_runs_between_its_extremes_and_flagged_values_are_left_out() {
        let text = "A,20240115,TMAX,-105,,,S,\nA,20240115,TMIN,-245,,,S,\nA,20240115,PRCP,24,,,S,\nA,20240116,TMAX,900,,X,S,\n";
        let reading = read(text).unwrap();
        let t: Vec<f64> = reading.raw.hours[..24].iter().map(|hour| hour.temperature.unwrap().celsius()).collect();
        let (low, high) = t.iter().fold((f64::MAX, f64::MIN), |(l, h), t| (l.min(*t), h.max(*t)));
        assert!((low + 24.5).abs() < 1.0 && (high + 10.5).abs() < 1.0, "{low} {high}");
        let rain: f64 = reading.raw.hours[..24].iter().map(|hour| hour.precipitation.unwrap().get()).sum();
        assert!((rain - 0.0024).abs() < 1e-12);
        assert_eq!(reading.raw.hours.len(), 24);
    }

    #[test]
    fn a_morning_observation_moves_the_high_to_the_day_before() {
        let text = "A,20240116,TMAX,-105,,,S,0700\nA,20240115,TMIN,-245,,,S,0700\n";
        assert!(read(text).unwrap().raw.hours[12].temperature.is_some());
    }

    #[test]
    fn faults_name_line_field_and_remedy() {
        let message = read("A,2024011,TMAX,1\nA,20240115,TMAX,warm\nB,20240115,TMAX,1\nA\n").unwrap_err().to_string();
        for part in ["line 1, date", "YYYYMMDD", "line 2, TMAX: \"warm\"", "line 3, ID", "line 4, row"] {
            assert!(message.contains(part), "{part}: {message}");
        }
    }
}
