//! A home station's CSV, by the keeper's own mapping of its columns.

use super::columns::Dropped;
use super::mapping::{DecimalMark, Mapped, Mapping, Role, one_spaced};
use super::station_when::Fields;
use super::text::{shown, text};
use crate::climatology::Climate;
use crate::fault::Faults;
use crate::generator::day_of_common_year;
use crate::raw::lay_out;
use crate::{Place, RawHour, Reading, WeatherFaults, fault};
use jiff::Timestamp;
use snowhum_say::weather_fault as say;
use snowhum_units::{Degree, Fraction, Kelvin, Metre, MetrePerSecond, Pascal, WattPerSquareMetre};
use std::collections::BTreeMap;

/// Sum and count of one quantity in one hour.
type Tally = (f64, u32);

/// Quantities by role, in SI.
type Hour = [Tally; QUANTITIES];

/// Roles up to the last quantity.
const QUANTITIES: usize = Role::Pressure as usize + 1;

/// Whether a role is a quantity of weather, not of time or place.
fn is_quantity(role: Role) -> bool {
    (Role::Temperature as usize..QUANTITIES).contains(&(role as usize))
}

/// Reads a station's CSV. Rows closer than an hour are averaged over each hour (rain is added up).
///
/// With a place, the mean temperature is held against the built-in climate, so that Fahrenheit taken for Celsius (or
/// the other way round) does not pass.
///
/// # Errors
/// [`WeatherFaults`] with line, column heading and remedy.
///
/// ```
/// use snowhum_weather::readers::{Mapping, station_csv};
/// let mapping = Mapping::read("temperature=Temp Out:F,humidity=Hum:%,time=Time", jiff::tz::TimeZone::UTC).unwrap();
/// let text = "Time,Temp Out,Hum\n2025-01-31 12:00,14,80\n2025-01-31 12:30,16,82\n";
/// let reading = station_csv(text.as_bytes(), "station.csv", &mapping, None).unwrap();
/// assert!((reading.raw.hours[0].temperature.unwrap().fahrenheit() - 15.0).abs() < 1e-9);
/// ```
pub fn station_csv(
    bytes: &[u8],
    file: &str,
    mapping: &Mapping,
    place: Option<Place>,
) -> Result<Reading, WeatherFaults> {
    let text = text(bytes);
    let mut lines =
        text.lines().enumerate().map(|(index, line)| (index + 1, line)).filter(|(_, line)| !line.trim().is_empty());
    let Some((heading_line, heading)) = lines.next() else {
        return Err(fault::whole(file, say::station_empty()));
    };
    let delimiter = mapping.delimiter.unwrap_or_else(|| guessed(heading));
    let columns = columns(file, heading_line, &fields(heading, delimiter), mapping)?;
    let mut station = Station::new(&columns, mapping);
    for (line, content) in lines {
        if station.faults.full() {
            break;
        }
        station.row(line, &fields(content, delimiter));
    }
    let Station { hours, place: own, faults, dropped, .. } = station;
    faults.or(file, ())?;
    let rows: Vec<(i64, RawHour)> = hours.iter().map(|(hour, tallies)| (*hour, mean(tallies))).collect();
    let raw = lay_out(file, &rows)?;
    if let Some(place) = own.or(place) {
        check_unit(file, &columns, &rows, place)?;
    }
    let notes = dropped.notes().collect();
    Ok(Reading { file: file.to_owned(), raw, place: own, offset: None, typical_year: false, notes })
}

/// The likeliest delimiter of a heading line.
pub(super) fn guessed(heading: &str) -> char {
    let count = |mark: char| heading.matches(mark).count();
    [';', '\t', ','].into_iter().filter(|mark| count(*mark) > 0).max_by_key(|mark| count(*mark)).unwrap_or(' ')
}

/// Fields of a line; a quoted field may hold the delimiter; blanks in a row are one.
pub(super) fn fields(line: &str, delimiter: char) -> Vec<String> {
    if delimiter == ' ' {
        return line.split_whitespace().map(str::to_owned).collect();
    }
    let mut fields = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            _ if c == delimiter && !quoted => fields.push(String::new()),
            _ => {
                if let Some(field) = fields.last_mut() {
                    field.push(c);
                }
            }
        }
    }
    fields
}

type Columns<'a> = Vec<(usize, &'a Mapped)>;

fn columns<'a>(
    file: &str,
    line: usize,
    headings: &[String],
    mapping: &'a Mapping,
) -> Result<Columns<'a>, WeatherFaults> {
    let spaced: Vec<String> = headings.iter().map(|heading| one_spaced(heading)).collect();
    let place = |mapped: &'a Mapped| {
        let exact = spaced.iter().position(|heading| *heading == mapped.heading);
        let same = |heading: &String| heading.eq_ignore_ascii_case(&mapped.heading);
        let at = exact.or_else(|| spaced.iter().position(same));
        at.map(|at| (at, mapped)).ok_or_else(|| {
            let there = headings.iter().take(20).map(|heading| shown(heading).into()).collect();
            fault::line(file, line, say::station_column(shown(&mapped.heading), there))
        })
    };
    mapping.columns.iter().map(place).collect()
}

/// What is gathered of a station, row by row.
struct Station<'a> {
    columns: &'a Columns<'a>,
    mapping: &'a Mapping,
    hours: BTreeMap<i64, Hour>,
    /// Where, by the first row that says so.
    place: Option<Place>,
    faults: Faults,
    dropped: Dropped,
}

impl<'a> Station<'a> {
    fn new(columns: &'a Columns<'a>, mapping: &'a Mapping) -> Self {
        let (faults, dropped) = (Faults::default(), Dropped::default());
        Self { columns, mapping, hours: BTreeMap::new(), place: None, faults, dropped }
    }

    fn row(&mut self, line: usize, row: &[String]) {
        let fields = Fields { row, columns: self.columns };
        let instant = match fields.seconds(&self.mapping.zone) {
            Ok(instant) => instant,
            Err((heading, says)) => return self.faults.at(line, heading, says),
        };
        self.stands(line, &fields);
        let hour = self.hours.entry(instant.div_euclid(3600)).or_insert([(0.0, 0); QUANTITIES]);
        for (at, mapped) in self.columns.iter().filter(|(_, mapped)| is_quantity(mapped.role)) {
            let field = row.get(*at).map_or("", |field| field.trim());
            if let Some(value) = number(line, field, mapped, self.mapping.decimal_mark, &mut self.faults)
                && let Some(value) = self.dropped.keep(name(mapped.role), in_si(mapped, value), plausible(mapped.role))
            {
                let tally = &mut hour[mapped.role as usize];
                *tally = (tally.0 + value, tally.1 + 1);
            }
        }
    }

    /// Takes the place of the first row that has one; another place in a later row is a fault.
    fn stands(&mut self, line: usize, fields: &Fields<'_>) {
        const SAME_DEGREES: f64 = 0.1;
        let Some((mapped, _)) = fields.of(Role::Latitude) else { return };
        let [latitude, longitude, elevation] = [Role::Latitude, Role::Longitude, Role::Elevation]
            .map(|role| coordinate(line, fields.of(role)?, self.mapping.decimal_mark, &mut self.faults));
        let (Some(latitude), Some(longitude), Some(elevation)) = (latitude, longitude, elevation) else { return };
        let found = Place {
            latitude: Degree::new(latitude),
            longitude: Degree::new(longitude),
            elevation: Metre::new(elevation),
        };
        let place = *self.place.get_or_insert(found);
        let off = |a: Degree, b: Degree| (a.get() - b.get()).abs() > SAME_DEGREES;
        if off(place.latitude, found.latitude) || off(place.longitude, found.longitude) {
            let (first, right) = (place.latitude.get(), say::one_station());
            let says = say::station_place(first, place.longitude.get(), latitude, longitude, right);
            self.faults.at(line, &mapped.heading, says);
        }
    }
}

/// A number of a place within what the earth has, in degrees or metres.
fn coordinate(line: usize, (mapped, field): (&Mapped, &str), mark: DecimalMark, faults: &mut Faults) -> Option<f64> {
    let value = in_si(mapped, number(line, field, mapped, mark, faults)?);
    let (low, high) = plausible(mapped.role);
    if !(low..=high).contains(&value) {
        faults.at(line, &mapped.heading, say::station_coordinate(high, low, shown(field), mapped.role.word()));
        return None;
    }
    Some(value)
}

fn number(line: usize, field: &str, mapped: &Mapped, mark: DecimalMark, faults: &mut Faults) -> Option<f64> {
    const MISSING: [&str; 9] = ["", "-", "--", "---", "na", "n/a", "nan", "null", "m"];
    if MISSING.contains(&field.to_ascii_lowercase().as_str()) {
        return None;
    }
    let written = if mark == DecimalMark::Comma { field.replace(',', ".") } else { field.to_owned() };
    let value = written.parse::<f64>().ok().filter(|value| value.is_finite());
    if value.is_none() {
        faults.at(line, &mapped.heading, say::station_number(mark == DecimalMark::Comma, shown(field)));
    }
    value
}

fn in_si(mapped: &Mapped, value: f64) -> f64 {
    match (mapped.role, mapped.unit) {
        (Role::Temperature | Role::DewPoint, "C") => Kelvin::from_celsius(value).get(),
        (Role::Temperature | Role::DewPoint, "F") => Kelvin::from_fahrenheit(value).get(),
        (_, "%") => value / 100.0,
        (_, "tenths") => value / 10.0,
        (_, "oktas") => value / 8.0,
        (_, "km/h") => value / 3.6,
        (_, "mph") => value * 0.447_04,
        (_, "kn") => value * 1.852 / 3.6,
        (_, "mm") => value / 1000.0,
        (_, "cm") => value / 100.0,
        (_, "in") => value * 0.0254,
        (_, "hPa") => value * 100.0,
        (_, "kPa") => value * 1000.0,
        (_, "inHg") => value * 3_386.389,
        (_, "ft") => value * 0.304_8,
        _ => value,
    }
}

/// Lowest and highest value weather can have, in SI.
fn plausible(role: Role) -> (f64, f64) {
    match role {
        Role::Temperature => (183.15, 333.15),
        Role::DewPoint => (173.15, 323.15),
        Role::Humidity => (0.0, 1.1),
        Role::Wind => (0.0, 75.0),
        Role::Sun => (0.0, 1600.0),
        Role::Cloud => (0.0, 1.0),
        Role::Rain => (0.0, 0.2),
        Role::Snow => (0.0, 10.0),
        Role::Pressure => (30_000.0, 110_000.0),
        Role::Latitude => (-90.0, 90.0),
        Role::Longitude => (-180.0, 180.0),
        Role::Elevation => (-500.0, 9000.0),
        _ => (f64::MIN, f64::MAX),
    }
}

fn name(role: Role) -> &'static str {
    if role == Role::DewPoint { "dew point" } else { role.word() }
}

fn mean(tallies: &Hour) -> RawHour {
    let mean = |role: Role| {
        let (sum, count) = tallies[role as usize];
        (count > 0).then(|| sum / f64::from(count))
    };
    let (rain, rows) = tallies[Role::Rain as usize];
    RawHour {
        temperature: mean(Role::Temperature).map(Kelvin::new),
        dew_point: mean(Role::DewPoint).map(Kelvin::new),
        humidity: mean(Role::Humidity).map(|humidity| Fraction::new(humidity.min(1.0))),
        wind: mean(Role::Wind).map(MetrePerSecond::new),
        cloud: mean(Role::Cloud).map(Fraction::new),
        global: mean(Role::Sun).map(WattPerSquareMetre::new),
        precipitation: (rows > 0).then(|| Metre::new(rain)),
        snow_depth: mean(Role::Snow).map(Metre::new),
        pressure: mean(Role::Pressure).map(Pascal::new),
        ..RawHour::default()
    }
}

/// Refuses a temperature that fits the climate only in the other unit.
fn check_unit(file: &str, columns: &Columns<'_>, rows: &[(i64, RawHour)], place: Place) -> Result<(), WeatherFaults> {
    const FAR_K: f64 = 12.0;
    let Some((_, mapped)) = columns.iter().find(|(_, mapped)| mapped.role == Role::Temperature) else { return Ok(()) };
    let Ok(year) = Climate::at(place).map(|climate| climate.daily_means()) else { return Ok(()) };
    let usual = |hour: i64| {
        let date = jiff::tz::TimeZone::UTC.to_datetime(Timestamp::from_second(hour * 3600).ok()?).date();
        Some(year.on(day_of_common_year(date)))
    };
    let pairs = rows.iter().filter_map(|(hour, values)| Some((values.temperature?.celsius(), usual(*hour)?)));
    let (mut sum_c, mut usual_c, mut count) = (0.0, 0.0, 0.0);
    for (t_c, expected_c) in pairs {
        (sum_c, usual_c, count) = (sum_c + t_c, usual_c + expected_c, count + 1.0);
    }
    if count == 0.0 {
        return Ok(());
    }
    let (mean_c, usual_c) = (sum_c / count, usual_c / count);
    let (other_c, other) = match mapped.unit {
        "C" => ((mean_c - 32.0) / 1.8, "F"),
        "F" => (mean_c * 1.8 + 32.0, "C"),
        _ => return Ok(()),
    };
    let (off, other_off) = ((mean_c - usual_c).abs(), (other_c - usual_c).abs());
    if off <= FAR_K || other_off >= off / 2.0 {
        return Ok(());
    }
    let [mean, usual] = [mean_c, usual_c].map(Kelvin::from_celsius);
    Err(fault::whole(file, say::station_unit(&mapped.heading, mean, other, mapped.unit, usual)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::tz::TimeZone;

    fn mapping(text: &str) -> Mapping {
        Mapping::read(text, TimeZone::UTC).unwrap()
    }

    #[test]
    fn decimal_commas_semicolons_and_quotes_are_read() {
        let mut mapping = mapping("temperature=T:C,rain=R:mm,time=When");
        mapping.decimal_mark = DecimalMark::Comma;
        let text = "\"When\";T;R\n\"31.1.2025 12:00\";-9,5;0,2\n31.1.2025 12:30;-8,5;0,4\n31.1.2025 14:00;--;\n";
        let hours = station_csv(text.as_bytes(), "s.csv", &mapping, None).unwrap().raw.hours;
        assert_eq!(hours.len(), 3);
        assert!((hours[0].temperature.unwrap().celsius() + 9.0).abs() < 1e-9);
        assert!((hours[0].precipitation.unwrap().get() - 0.0006).abs() < 1e-12);
        assert!(hours[2].temperature.is_none());
    }

    #[test]
    fn fahrenheit_taken_for_celsius_is_refused_with_a_remedy() {
        let place = Place { latitude: Degree::new(49.9), longitude: Degree::new(-97.1), elevation: Metre::new(235.0) };
        let text = "t,x\n2025-07-01 12:00,75\n2025-07-01 13:00,58\n2025-07-01 14:00,59\n";
        let fault = station_csv(text.as_bytes(), "s.csv", &mapping("temperature=x:C,time=t"), Some(place)).unwrap_err();
        assert!(fault.to_string().contains("temperature=x:F"), "{fault}");
        station_csv(text.as_bytes(), "s.csv", &mapping("temperature=x:F,time=t"), Some(place)).unwrap();
    }

    #[test]
    fn year_month_day_hour_and_minute_apart_are_the_same_instants_as_one_column() {
        let apart = mapping("year=Year,month=Mo,day=Day,hour=HH,minute=MM,temperature=T:C");
        let text = "Year,Mo,Day,HH,MM,T\n2025,1,31,09,30,-9\n25,12,31,24,0,-8\n";
        let read = station_csv(text.as_bytes(), "s.csv", &apart, None).unwrap().raw;
        let text = "When,T\n2025-01-31 09:30,-9\n2026-01-01 00:00,-8\n";
        assert_eq!(
            read,
            station_csv(text.as_bytes(), "s.csv", &mapping("time=When,temperature=T:C"), None).unwrap().raw
        );
        let mixed = [
            ("date=D:dmy,hour=H,temperature=T:C", "D,H,T\n31/1/2025,9,-9\n31/12/2025,24,-8\n"),
            ("year=Y,month=M,day=D,time=t,temperature=T:C", "Y,M,D,t,T\n2025,1,31,9:30 AM,-9\n2026,1,1,0:00,-8\n"),
        ];
        for (columns, text) in mixed {
            assert_eq!(station_csv(text.as_bytes(), "s.csv", &mapping(columns), None).unwrap().raw, read, "{columns}");
        }
    }

    #[test]
    fn a_wrong_part_of_a_time_is_named_by_line_heading_and_bounds() {
        let columns = mapping("year=Year,month=Mo,day=Day,hour=HH,temperature=T:C");
        let text = "Year,Mo,Day,HH,T\n2025,13,1,0,1\n2025,2,30,0,1\n2025,1,1,25,1\nx,1,1,1,1\n";
        let message = station_csv(text.as_bytes(), "s.csv", &columns, None).unwrap_err().to_string();
        for part in [
            "s.csv: line 2, Mo: \"13\" is no month; write a whole number from 1 to 12",
            "line 3, Day: \"30\" is no day of month 2 of 2025",
            "line 4, HH: \"25\" is no hour",
            "line 5, Year: \"x\" is no year",
        ] {
            assert!(message.contains(part), "{part}: {message}");
        }
    }

    #[test]
    fn the_place_is_the_files_own_and_one_file_has_one() {
        let columns = mapping("time=t,temperature=x:C,latitude=lat,longitude=lon,elevation=Alt:ft");
        let read = |rows: &str| station_csv(format!("t,x,lat,lon,Alt\n{rows}").as_bytes(), "s.csv", &columns, None);
        let first = "2025-01-01 00:00,-9,,,\n2025-01-01 01:00,-9,62.5,27.25,1000\n";
        let place = read(first).unwrap().place.unwrap();
        assert_eq!((place.latitude, place.longitude), (Degree::new(62.5), Degree::new(27.25)));
        assert!((place.elevation.get() - 304.8).abs() < 1e-9);
        let message = read(&format!("{first}2025-01-01 02:00,-9,63.5,27.25,1000\n")).unwrap_err().to_string();
        assert!(message.contains("line 4, lat") && message.contains("one station"), "{message}");
        let message = read("2025-01-01 02:00,-9,95,27,1\n").unwrap_err().to_string();
        assert!(message.contains("line 2, lat: \"95\" is no latitude; write a number from -90 to 90"), "{message}");
        assert_eq!(
            station_csv(b"t,x\n2025-01-01,1\n", "s.csv", &mapping("time=t,temperature=x:C"), Some(place))
                .unwrap()
                .place,
            None
        );
    }

    #[test]
    fn faults_name_line_heading_and_remedy() {
        let text = "t,x\n2025-07-01 12:00,warm\n1/2/2025,3\n";
        let message =
            station_csv(text.as_bytes(), "s.csv", &mapping("temperature=x:C,time=t"), None).unwrap_err().to_string();
        for part in ["s.csv: line 2, x: \"warm\"", "line 3, t", ":mdy or :dmy"] {
            assert!(message.contains(part), "{part}: {message}");
        }
        station_csv(b"t,T  Out\n2025-01-01,3\n", "s.csv", &mapping("temperature=T\n    Out:C,time=t"), None).unwrap();
        let message = station_csv(b"t,y\n", "s.csv", &mapping("temperature=x:C,time=t"), None).unwrap_err().to_string();
        assert!(message.contains("no column \"x\"") && message.contains("\"y\""), "{message}");
    }
}
