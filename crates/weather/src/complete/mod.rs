//! A file's hours made whole: short gaps filled, missing quantities derived, all of it said.

mod derive;
mod gaps;
mod precipitation;
mod snow;

pub(crate) use snow::{snow_depths, usual_snow};

use crate::sun_day::{SunDay, SunHour, standard_pressure};
use crate::{Climate, Hourly, Place, Raw, RawHour, WeatherFaults, fault};
use jiff::tz::TimeZone;
use snowhum_figures::weather_limits as limits;
use snowhum_say::{Message, weather as say, weather_fault as wrong};
use snowhum_units::{Kelvin, Metre};

/// Longest gap that is filled by interpolation, h.
pub(crate) const SHORT_GAP_H: usize = limits::SHORT_GAP as usize;

/// Makes the hours of a file whole.
///
/// Gaps of up to six hours are filled by straight lines. A longer gap in temperature is a fault that names its date;
/// other quantities are then derived by the generator's laws. Humidity ends up over ice in frost. Direct and diffuse
/// sun follow from the global, the global from cloud, cloud from the global or from the day's range; snow from
/// temperature and precipitation. The notes say what was done.
///
/// # Errors
/// [`WeatherFaults`] for a gap in temperature, a place without sun, or a record shorter than a day.
pub fn complete(raw: &Raw, file: &str, place: Place, zone: &TimeZone) -> Result<(Hourly, Vec<Message>), WeatherFaults> {
    let hours = &raw.hours;
    if hours.len() < 24 {
        return Err(fault::whole(file, wrong::short(hours.len())));
    }
    let mut notes = Vec::new();
    let air = temperature(raw, file, zone, &mut notes)?;
    let course = Course::of(raw, file, place, air)?;
    let humidity = derive::humidity(hours, &course, &mut notes);
    let wind = derive::wind(hours, &mut notes);
    let (cloud, light) = derive::sky(hours, &course, &mut notes);
    let precipitation = precipitation::hourly(hours, &course, &mut notes);
    let snow_depth = snow::depth(hours, &course, &precipitation, &mut notes);
    let pressure = derive::pressure(hours, standard_pressure(place.elevation), &mut notes);
    let whole = Hourly {
        start: raw.start,
        temperature: course.air,
        humidity,
        wind,
        global: light.iter().map(|light| light.global).collect(),
        direct: light.iter().map(|light| light.direct_normal).collect(),
        diffuse: light.iter().map(|light| light.diffuse).collect(),
        cloud,
        precipitation,
        snow_depth,
        pressure,
    };
    Ok((whole, notes))
}

fn temperature(raw: &Raw, file: &str, zone: &TimeZone, notes: &mut Vec<Message>) -> Result<Vec<Kelvin>, WeatherFaults> {
    let column: Vec<Option<f64>> = raw.hours.iter().map(|hour| hour.temperature.map(Kelvin::get)).collect();
    let (filled, count) = gaps::bridged(&column, SHORT_GAP_H);
    if let Some(gap) = gaps::first_gap(&filled) {
        let at = raw.start.checked_add(jiff::SignedDuration::from_hours(gap.start as i64)).unwrap_or(raw.start);
        let when = zone.to_datetime(at).strftime("%Y-%m-%d %H:%M");
        return Err(fault::whole(file, wrong::gap(when.to_string(), gap.len())));
    }
    if count > 0 {
        notes.push(say::filled(count, SHORT_GAP_H, say::quantity("temperature")));
    }
    Ok(filled.into_iter().flatten().map(Kelvin::new).collect())
}

/// What the derivations share: whole temperatures, and day by day the place's climate and sun.
struct Course {
    air: Vec<Kelvin>,
    days: Vec<CourseDay>,
    sun: Vec<SunHour>,
    /// The climate of the place, if the embedded grid has it.
    climate: Climate,
    known: bool,
    /// Day of the common year at the start.
    first_day: usize,
}

/// One day of 24 hours from the record's start.
struct CourseDay {
    month: usize,
    mean: Kelvin,
    coldest: Kelvin,
    warmest: Kelvin,
    sun: SunDay,
}

impl Course {
    fn of(raw: &Raw, file: &str, place: Place, air: Vec<Kelvin>) -> Result<Self, WeatherFaults> {
        let start_s = raw.start.as_second();
        let mut days = Vec::with_capacity(air.len().div_ceil(24));
        for (index, hours) in air.chunks(24).enumerate() {
            let begins_s = start_s + index as i64 * 86_400;
            let sun =
                SunDay::at(place, begins_s).map_err(|error| fault::whole(file, wrong::no_sun(error.to_string())))?;
            days.push(CourseDay {
                month: date(begins_s).month() as usize - 1,
                mean: Kelvin::new(hours.iter().map(|t| t.get()).sum::<f64>() / hours.len() as f64),
                coldest: hours.iter().copied().fold(hours[0], Kelvin::min),
                warmest: hours.iter().copied().fold(hours[0], Kelvin::max),
                sun,
            });
        }
        let sun = (0..air.len()).map(|hour| days[hour / 24].sun.hour(hour % 24)).collect();
        let at = Climate::at(place);
        let known = at.is_ok();
        let climate = at.unwrap_or_else(|_| climate_of(place, &days));
        let first_day = crate::generator::day_of_common_year(date(start_s));
        Ok(Self { air, days, sun, climate, known, first_day })
    }
}

/// UTC date of a second.
fn date(seconds: i64) -> jiff::civil::Date {
    let instant = jiff::Timestamp::from_second(seconds).unwrap_or(jiff::Timestamp::UNIX_EPOCH);
    TimeZone::UTC.to_datetime(instant).date()
}

/// Monthly means of the file itself; months it lacks take the mean of all.
fn climate_of(place: Place, days: &[CourseDay]) -> Climate {
    const RAIN: Metre = Metre::new(limits::USUAL_RAIN);
    let mean = |of: &dyn Fn(&&CourseDay) -> bool| {
        let (sum, count) = days.iter().filter(of).fold((0.0, 0.0), |(sum, n), day| (sum + day.mean.get(), n + 1.0));
        (count > 0.0).then_some(sum / count)
    };
    let all = mean(&|_| true).unwrap_or(273.15);
    let months = std::array::from_fn(|month| Kelvin::new(mean(&|day| day.month == month).unwrap_or(all)));
    Climate::from_months(place, months, [RAIN; 12])
}

/// One quantity of every hour.
fn column(hours: &[RawHour], of: impl Fn(&RawHour) -> Option<f64>) -> Vec<Option<f64>> {
    hours.iter().map(of).collect()
}
