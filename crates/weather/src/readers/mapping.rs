//! Which column of a station's file means what, in which unit.

use jiff::tz::TimeZone;
use snowhum_say::{Message, Tongue, weather_fault as say};

/// What a column can mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Date and time, or the time of day beside a date column.
    Time,
    /// Date alone.
    Date,
    /// Air temperature.
    Temperature,
    /// Dew point.
    DewPoint,
    /// Relative humidity.
    Humidity,
    /// Wind speed.
    Wind,
    /// Global sun on the level.
    Sun,
    /// Sky covered.
    Cloud,
    /// Rain and melted snow since the row before.
    Rain,
    /// Snow lying.
    Snow,
    /// Air pressure at the site.
    Pressure,
    /// Year, where it stands apart.
    Year,
    /// Month of it, 1 to 12.
    Month,
    /// Day of that, 1 to 31.
    Day,
    /// Hour of the day, 0 to 24, in place of the time.
    Hour,
    /// Minute of the hour.
    Minute,
    /// Latitude of the station, north positive.
    Latitude,
    /// Longitude of the station, east positive.
    Longitude,
    /// Height of the station above the sea.
    Elevation,
}

/// A role that has no unit.
const NONE: &[&str] = &[""];

/// Every role in the order of [`Role`], with its word and its units.
pub(super) const ROLES: [(&str, Role, &[&str]); 19] = [
    ("time", Role::Time, &["iso", "dmy", "mdy", "ymd"]),
    ("date", Role::Date, &["iso", "dmy", "mdy", "ymd"]),
    ("temperature", Role::Temperature, &["C", "F", "K"]),
    ("dew_point", Role::DewPoint, &["C", "F", "K"]),
    ("humidity", Role::Humidity, &["%", "1"]),
    ("wind", Role::Wind, &["m/s", "km/h", "mph", "kn"]),
    ("sun", Role::Sun, &["W/m2"]),
    ("cloud", Role::Cloud, &["%", "1", "tenths", "oktas"]),
    ("rain", Role::Rain, &["mm", "in"]),
    ("snow", Role::Snow, &["cm", "m", "mm", "in"]),
    ("pressure", Role::Pressure, &["hPa", "kPa", "Pa", "inHg"]),
    ("year", Role::Year, NONE),
    ("month", Role::Month, NONE),
    ("day", Role::Day, NONE),
    ("hour", Role::Hour, NONE),
    ("minute", Role::Minute, NONE),
    ("latitude", Role::Latitude, NONE),
    ("longitude", Role::Longitude, NONE),
    ("elevation", Role::Elevation, &["m", "ft"]),
];

impl Role {
    /// How it is called in a mapping.
    pub(super) fn word(self) -> &'static str {
        ROLES[self as usize].0
    }
}

/// One column: what it means, its heading, its unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Mapped {
    pub(super) role: Role,
    pub(super) heading: String,
    pub(super) unit: &'static str,
}

/// How numbers are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum DecimalMark {
    /// 1.5
    #[default]
    Point,
    /// 1,5
    Comma,
}

/// How a station's file is to be read.
#[derive(Debug, Clone, PartialEq)]
pub struct Mapping {
    pub(super) columns: Vec<Mapped>,
    /// The clock of the file.
    pub zone: TimeZone,
    /// What stands between fields; guessed from the heading line if `None`.
    pub delimiter: Option<char>,
    /// How numbers are written.
    pub decimal_mark: DecimalMark,
}

/// Why a mapping cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum MappingFault {
    /// Not `role=heading:unit`.
    Form(String),
    /// The role is not known.
    Role(String),
    /// The unit is not one of the role's.
    Unit {
        /// As written.
        unit: String,
        /// Quantity.
        role: &'static str,
        /// What is understood.
        units: String,
    },
    /// A unit is needed.
    NoUnit {
        /// Quantity.
        role: &'static str,
        /// Column heading.
        heading: String,
        /// What is understood.
        units: String,
        /// One of them.
        example: &'static str,
    },
    /// The same quantity twice.
    Twice(&'static str),
    /// No temperature, or a part of a date or of a place without the rest.
    Lacks(&'static str),
    /// No time.
    LacksTime,
    /// Two columns for the same part of time.
    SameTwice(&'static str, &'static str),
}

impl MappingFault {
    /// With what would be right.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Form(text) => say::columns_form(text),
            Self::Role(text) => say::columns_role(ROLES.map(|(name, ..)| name).join(", "), text),
            Self::Unit { unit, role, units } => say::columns_unit(*role, unit, units),
            Self::NoUnit { role, heading, units, example } => say::columns_no_unit(*example, heading, *role, units),
            Self::Twice(role) => say::columns_twice(*role),
            Self::Lacks(role) => say::columns_lacks(*role),
            Self::LacksTime => say::columns_lacks_time(),
            Self::SameTwice(one, other) => say::columns_same_twice(*one, *other),
        }
    }
}

impl Mapping {
    /// Reads `temperature=Temp Out:F,humidity=Hum:%,wind=Wind:mph,time=Date Time` for a file on the clock of `zone`.
    ///
    /// The time is one column, or `date` and `time`; the date may be `year`, `month` and `day`, the time `hour` and
    /// `minute`. `latitude`, `longitude` and `elevation` are the station's.
    ///
    /// # Errors
    /// [`MappingFault`], with what would be right.
    ///
    /// ```
    /// use snowhum_weather::readers::Mapping;
    /// let zone = jiff::tz::TimeZone::UTC;
    /// assert!(Mapping::read("temperature=Temp Out:F,time=Date Time", zone.clone()).is_ok());
    /// let fault = Mapping::read("temperature=Temp Out,time=Date Time", zone).unwrap_err();
    /// assert!(fault.to_string().contains("temperature=Temp Out:C"));
    /// ```
    pub fn read(text: &str, zone: TimeZone) -> Result<Self, MappingFault> {
        let mut columns: Vec<Mapped> = Vec::new();
        for part in text.split(',').map(str::trim).filter(|part| !part.is_empty()) {
            let (name, mapped) = column(part)?;
            if columns.iter().any(|known| known.role == mapped.role) {
                return Err(MappingFault::Twice(name));
            }
            columns.push(mapped);
        }
        check(|role| columns.iter().any(|column| column.role == role))?;
        Ok(Self { columns, zone, delimiter: None, decimal_mark: DecimalMark::Point })
    }
}

/// Whether what is mapped makes a time, a temperature and, if any of it, a place.
fn check(has: impl Fn(Role) -> bool) -> Result<(), MappingFault> {
    use Role::{Date, Day, Elevation, Hour, Latitude, Longitude, Minute, Month, Temperature, Time, Year};
    for (one, other) in [(Date, Year), (Time, Hour)] {
        if has(one) && has(other) {
            return Err(MappingFault::SameTwice(one.word(), other.word()));
        }
    }
    if !has(Time) && !(has(Hour) && (has(Date) || has(Year))) {
        return Err(MappingFault::LacksTime);
    }
    let wholes: [&[Role]; 2] = [&[Year, Month, Day], &[Latitude, Longitude, Elevation]];
    let begun = wholes.into_iter().filter(|parts| parts.iter().any(|part| has(*part))).flatten();
    let needed = begun.copied().chain([Temperature]).chain(has(Minute).then_some(Hour));
    needed.into_iter().find(|role| !has(*role)).map_or(Ok(()), |lacking| Err(MappingFault::Lacks(lacking.word())))
}

fn column(part: &str) -> Result<(&'static str, Mapped), MappingFault> {
    let (name, rest) = part.split_once('=').ok_or_else(|| MappingFault::Form(part.to_owned()))?;
    let known = ROLES.into_iter().find(|(known, ..)| known.eq_ignore_ascii_case(name.trim()));
    let (name, role, units) = known.ok_or_else(|| MappingFault::Role(name.trim().to_owned()))?;
    let (heading, unit) = match rest.rsplit_once(':') {
        Some((heading, unit)) if units != NONE => (heading.trim(), unit.trim()),
        _ => (rest.trim(), ""),
    };
    if heading.is_empty() {
        return Err(MappingFault::Form(part.to_owned()));
    }
    let timely = matches!(role, Role::Time | Role::Date);
    let unit = match units.iter().find(|known| known.eq_ignore_ascii_case(unit)) {
        Some(unit) => unit,
        None if unit.is_empty() && timely => "iso",
        None if unit.is_empty() => {
            let (heading, units, example) = (heading.to_owned(), units.join(", "), units[0]);
            return Err(MappingFault::NoUnit { role: name, heading, units, example });
        }
        None => return Err(MappingFault::Unit { unit: unit.to_owned(), role: name, units: units.join(", ") }),
    };
    Ok((name, Mapped { role, heading: one_spaced(heading), unit }))
}

/// A heading with one blank between words, so that a mapping may be broken over lines.
pub(super) fn one_spaced(heading: &str) -> String {
    heading.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_mistake_says_what_would_be_right() {
        let fault = |text: &str| Mapping::read(text, TimeZone::UTC).unwrap_err().to_string();
        assert!(fault("temperature").contains("role=heading:unit"));
        assert!(fault("warmth=T:C").contains("temperature"));
        assert!(fault("temperature=T:X,time=t").contains("C, F, K"));
        assert!(fault("temperature=T:C,temperature=U:C,time=t").contains("twice"));
        assert!(fault("temperature=T:C").contains("time=heading"));
        assert!(fault("temperature=:C,time=t").contains("role=heading:unit"));
        assert!(fault("temperature=T:C,hour=H").contains("year=, month=, day="));
        assert!(fault("temperature=T:C,hour=H,year=Y,day=D").contains("month=heading"));
        assert!(fault("temperature=T:C,hour=H,date=D,year=Y,month=M,day=D").contains("date and year say the same"));
        assert!(fault("temperature=T:C,time=t,minute=m").contains("hour=heading"));
        assert!(fault("temperature=T:C,time=t,latitude=lat,longitude=lon").contains("elevation=heading"));
    }

    #[test]
    fn roles_stand_in_the_order_of_their_names() {
        assert!(ROLES.iter().enumerate().all(|(at, (_, role, _))| *role as usize == at));
    }
}
