//! The mapping that would read a station's file, by its headings.

use super::mapping::{Mapping, ROLES, Role};
use super::station_csv;
use super::station_csv::{fields, guessed};
use super::text::text;
use crate::Place;
use jiff::tz::TimeZone;

/// What a heading of a role begins with (any one), and the words that make it another quantity.
const HEADINGS: [(Role, &[&str], &[&str]); 18] = [
    (Role::Year, &["year", "yr", "yyyy"], &[]),
    (Role::Month, &["month", "mo", "mon"], &[]),
    (Role::Day, &["day", "dd"], &["of", "light", "length"]),
    (Role::Minute, &["minute", "min"], &["temp", "temperature"]),
    (Role::Date, &["date"], &[]),
    (Role::Time, &["time", "timestamp", "datetime", "when"], &["zone"]),
    (Role::Hour, &["hour", "hr", "hh"], &[]),
    (Role::DewPoint, &["dew", "dewpoint", "dewpt"], &[]),
    (Role::Temperature, &["temp", "temperature", "t", "ta", "tair"], OTHER_AIR),
    (Role::Humidity, &["hum", "humidity", "rh"], OTHER_AIR),
    (Role::Wind, &["wind", "windspeed"], &["dir", "direction", "gust", "chill", "run", "deg", "max", "hi"]),
    (Role::Sun, &["sun", "solar", "radiation", "irradiance", "ghi", "global"], &["energy", "uv", "max", "hi", "hours"]),
    (Role::Cloud, &["cloud", "clouds", "cloudcover"], &["base", "height"]),
    (Role::Rain, &["rain", "precip", "precipitation"], &["rate", "total", "daily", "day", "month", "year", "event"]),
    (Role::Snow, &["snow", "snowdepth"], &["fall", "new"]),
    (Role::Latitude, &["lat", "latitude"], &[]),
    (Role::Longitude, &["lon", "long", "lng", "longitude"], &[]),
    (Role::Elevation, &["elev", "elevation", "altitude", "alt"], &[]),
];

/// Words of air that is not the shade outdoors, or of its extremes.
const OTHER_AIR: &[&str] = &[
    "in", "inside", "indoor", "soil", "dew", "wet", "chill", "heat", "feels", "index", "max", "min", "high", "low",
    "hi", "lo",
];

/// Ways to write a unit, and how a mapping has it.
const UNITS: [(&str, &str); 29] = [
    ("c", "C"),
    ("degc", "C"),
    ("celsius", "C"),
    ("f", "F"),
    ("degf", "F"),
    ("fahrenheit", "F"),
    ("k", "K"),
    ("%", "%"),
    ("pct", "%"),
    ("percent", "%"),
    ("1", "1"),
    ("ms", "m/s"),
    ("mps", "m/s"),
    ("kmh", "km/h"),
    ("kph", "km/h"),
    ("mph", "mph"),
    ("kn", "kn"),
    ("kt", "kn"),
    ("knots", "kn"),
    ("wm2", "W/m2"),
    ("wm²", "W/m2"),
    ("mm", "mm"),
    ("in", "in"),
    ("inch", "in"),
    ("cm", "cm"),
    ("m", "m"),
    ("ft", "ft"),
    ("oktas", "oktas"),
    ("tenths", "tenths"),
];

/// A mapping under which a station's file is read without a fault, guessed from the headings in its first line; `None`
/// if these tell no time or no temperature, or no guess reads it.
///
/// Units that no heading names are those of the reading that fits the climate of `place`, else metric.
///
/// ```
/// use snowhum_units::{Degree, Metre};
/// use snowhum_weather::{Place, readers::guessed_columns};
/// let place = Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) };
/// let text = b"Year;Month;Day;Hour;Air temp (\xc2\xb0C);Wind km/h\n2025;1;31;9;-9.5;11\n";
/// let columns = guessed_columns(text, &jiff::tz::TimeZone::UTC, place).unwrap();
/// assert_eq!(columns, "year=Year, month=Month, day=Day, hour=Hour, temperature=Air temp (°C):C, wind=Wind km/h:km/h");
/// ```
#[must_use]
pub fn guessed_columns(bytes: &[u8], zone: &TimeZone, place: Place) -> Option<String> {
    let text = text(bytes);
    let first = text.lines().find(|line| !line.trim().is_empty())?;
    let headings = fields(first, guessed(first));
    let found = roles(&headings);
    let reads = |columns: &String| {
        let mapping = Mapping::read(columns, zone.clone()).ok();
        mapping.is_some_and(|mapping| station_csv(bytes, "", &mapping, Some(place)).is_ok())
    };
    let ways = ["iso", "mdy", "dmy"].into_iter().flat_map(|order| ["C", "F"].map(|degrees| (order, degrees)));
    ways.map(|(order, degrees)| written(&found, order, degrees)).find(reads)
}

/// The first heading of each role.
fn roles(headings: &[String]) -> Vec<(Role, &str)> {
    let mut found: Vec<(Role, &str)> = Vec::new();
    for heading in headings.iter().map(|heading| heading.trim()).filter(|heading| !heading.contains([',', '"'])) {
        if let Some(role) = role(heading)
            && !found.iter().any(|(known, _)| *known == role)
        {
            found.push((role, heading));
        }
    }
    let has = |role: Role| found.iter().any(|(known, _)| *known == role);
    let (year, clock, date) = (has(Role::Year) && has(Role::Month) && has(Role::Day), has(Role::Time), has(Role::Date));
    let place = has(Role::Latitude) && has(Role::Longitude) && has(Role::Elevation);
    let hour = has(Role::Hour) && !clock;
    let serves = |role: Role| match role {
        Role::Year | Role::Month | Role::Day => year && (hour || clock && !date),
        Role::Hour => hour && (year || date),
        Role::Minute => hour,
        Role::Date => !year || !hour,
        Role::Latitude | Role::Longitude | Role::Elevation => place,
        _ => true,
    };
    let is_whole_time = |role: Role| role == Role::Date && !clock && !hour;
    let kept = found.iter().filter(|(role, _)| serves(*role));
    kept.map(|(role, heading)| (if is_whole_time(*role) { Role::Time } else { *role }, *heading)).collect()
}

fn role(heading: &str) -> Option<Role> {
    let alone = [("MM", Role::Month), ("mm", Role::Minute)];
    let letters = [("y", Role::Year), ("m", Role::Month), ("d", Role::Day), ("h", Role::Hour)];
    let letter = letters.iter().find(|(letter, _)| heading.eq_ignore_ascii_case(letter));
    if let Some((_, role)) = alone.iter().find(|(alone, _)| *alone == heading).or(letter) {
        return Some(*role);
    }
    let words = words(heading);
    let has = |these: &[&str]| words.iter().any(|word| these.contains(&word.as_str()));
    if has(&["date"]) && has(&["time"]) {
        return Some(Role::Time);
    }
    // "Rain mm/hr" is no hour: parts of time begin their heading.
    let is_part = |role: Role| matches!(role, Role::Year | Role::Month | Role::Day | Role::Hour | Role::Minute);
    let begins = |these: &[&str]| words.first().is_some_and(|word| these.contains(&word.as_str()));
    let fits = |role: Role, these: &[&str]| if is_part(role) { begins(these) } else { has(these) };
    HEADINGS.iter().find(|(role, these, others)| fits(*role, these) && !has(others)).map(|(role, ..)| *role)
}

/// A heading's words in small letters: apart by signs, and where a capital follows a small letter.
fn words(heading: &str) -> Vec<String> {
    let mut words = vec![String::new()];
    let mut after_small = false;
    for c in heading.chars() {
        let is_sign = !c.is_alphanumeric() && c != '%';
        if (is_sign || c == '%' || after_small && c.is_uppercase()) && words.last().is_some_and(|word| !word.is_empty())
        {
            words.push(String::new());
        }
        after_small = c.is_lowercase();
        if let Some(word) = words.last_mut().filter(|_| !is_sign) {
            word.extend(c.to_lowercase());
        }
    }
    words.retain(|word| !word.is_empty());
    words
}

fn written(found: &[(Role, &str)], order: &'static str, degrees: &'static str) -> String {
    let one = |(role, heading): &(Role, &str)| {
        let (word, _, units) = ROLES[*role as usize];
        let assumed = match role {
            Role::Time | Role::Date => order,
            Role::Temperature | Role::DewPoint => degrees,
            _ => units[0],
        };
        let unit = unit(heading, units).unwrap_or(assumed);
        let is_said = !unit.is_empty() && (unit != "iso" || heading.contains(':'));
        format!("{word}={heading}{}", if is_said { format!(":{unit}") } else { String::new() })
    };
    found.iter().map(one).collect::<Vec<_>>().join(", ")
}

/// The unit that a heading ends with.
fn unit(heading: &str, units: &[&'static str]) -> Option<&'static str> {
    let words = words(heading);
    let ends = (1..=words.len().min(2)).rev().map(|count| words[words.len() - count..].concat());
    ends.filter_map(|end| UNITS.iter().find(|(way, _)| *way == end))
        .find_map(|(_, unit)| units.iter().find(|known| *known == unit))
        .copied()
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::{Degree, Metre};

    fn guess(text: &str) -> Option<String> {
        let place = Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) };
        guessed_columns(text.as_bytes(), &TimeZone::UTC, place)
    }

    #[test]
    fn headings_of_many_hands_are_told_and_what_is_not_outdoor_air_is_left_out() {
        for (text, columns) in [
            ("Date,Temp\n2025-01-31 12:00,-9\n", "time=Date, temperature=Temp:C"),
            ("Date & Time,Temp In,Temp Out\n31.1.2025 12:00,20,-9\n", "time=Date & Time, temperature=Temp Out:C"),
            (
                "date;time;dewPoint;tempC;RH\n2025-01-31;12:00;-10;-9;90\n",
                "date=date, time=time, dew_point=dewPoint:C, temperature=tempC:C, humidity=RH:%",
            ),
            (
                "date,hour,min,t,wind_m_s,wind_dir\n2025-01-31,24,30,-9,2,180\n",
                "date=date, hour=hour, minute=min, temperature=t:C, wind=wind_m_s:m/s",
            ),
            ("Time (h:m),temp\n2025-01-31 12:00,-9\n", "time=Time (h:m):iso, temperature=temp:C"),
            (
                "time\tlat\tlon\televation [ft]\ttemp\n2025-01-31 12:00\t61\t27\t300\t-9\n",
                "time=time, latitude=lat, longitude=lon, elevation=elevation [ft]:ft, temperature=temp:C",
            ),
            (
                "YYYY MM DD HH mm TEMP\n2025 1 31 12 30 -9\n",
                "year=YYYY, month=MM, day=DD, hour=HH, minute=mm, temperature=TEMP:C",
            ),
        ] {
            assert_eq!(guess(text).as_deref(), Some(columns), "{text}");
        }
    }

    #[test]
    fn the_rows_settle_order_and_degrees_where_the_headings_do_not() {
        let mdy = "Time,Temp\n1/31/2025 12:00,-9\n";
        assert_eq!(guess(mdy).as_deref(), Some("time=Time:mdy, temperature=Temp:C"));
        let dmy = "Time,Temp\n31/1/2025 12:00,-9\n";
        assert_eq!(guess(dmy).as_deref(), Some("time=Time:dmy, temperature=Temp:C"));
        let fahrenheit = "Time,Temp\n2025-07-01 12:00,68\n2025-07-01 13:00,59\n";
        assert_eq!(guess(fahrenheit).as_deref(), Some("time=Time, temperature=Temp:F"));
    }

    #[test]
    fn nothing_is_guessed_where_it_would_not_be_read() {
        for text in ["", "a,b\n1,2\n", "Time,Temp\nnoon,-9\n", "Time,Soil temp\n2025-01-31 12:00,3\n", "1,2,3\n"] {
            assert_eq!(guess(text), None, "{text}");
        }
    }
}
