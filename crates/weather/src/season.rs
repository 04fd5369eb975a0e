//! When spring comes: the first day willows and alders give food, by warmth gathered since midwinter.

use crate::generator::daily_means;
use crate::statistics::whole_days;
use crate::{Climate, Ensemble, GeneratorFault, Hourly, Place};
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_figures::weather_limits as limits;
use snowhum_units::{Degree, Kelvin, Range};

/// Days from the first flow to a spring a colony can live on.
const SPRING_AFTER_DAYS: i64 = 14;
/// Paths behind the spring of a climate.
const PATHS: usize = 200;
/// Days from midwinter within which spring is sought.
const LONGEST_DAYS: usize = 240;

/// First day of the warmth count: 1 January in the north, 1 July in the south.
fn midwinter(year: i16, latitude: Degree) -> Option<Date> {
    Date::new(year, if latitude.get() < 0.0 { 7 } else { 1 }, 1).ok()
}

/// First day on which the degree-days above 5 °C since midwinter reach 50, by a path's daily means.
///
/// Midwinter is 1 January, in the south 1 July; the path must hold it or begin within a month of it, else `None`, as
/// when the warmth is not reached by its end.
#[must_use]
pub fn first_flow_day(path: &Hourly, latitude: Degree, zone: &TimeZone) -> Option<Date> {
    let days = whole_days(path, zone);
    let (first, last) = (days.first()?.0, days.last()?.0);
    let from = (first.year()..=last.year().saturating_add(1))
        .filter_map(|year| midwinter(year, latitude))
        .find(|midwinter| (*midwinter - first).get_days() >= -31)?;
    let means = days.into_iter().filter(|(date, _)| *date >= from).map(|(date, hours)| {
        let count = hours.len() as f64;
        (date, path.temperature[hours].iter().map(|t| t.celsius()).sum::<f64>() / count)
    });
    reached(means)
}

fn reached(days: impl Iterator<Item = (Date, f64)>) -> Option<Date> {
    let mut warmth = 0.0;
    for (date, mean_c) in days {
        warmth += (mean_c - limits::FIRST_FLOW_BASE).max(0.0);
        if warmth >= limits::FIRST_FLOW_AT {
            return Some(date);
        }
    }
    None
}

/// Spring of an ensemble: the median first flow day plus 14 days, and when one path in ten and nine in ten have it.
///
/// `None` when more than one path in ten does not reach it.
#[must_use]
pub fn spring_of(ensemble: &Ensemble, latitude: Degree, zone: &TimeZone) -> Option<Range<Date>> {
    let found: Vec<Date> = ensemble.paths.iter().filter_map(|path| first_flow_day(path, latitude, zone)).collect();
    range(found, ensemble.paths.len())
}

/// Spring of a climate in a year, from 200 drawn winters.
///
/// # Errors
/// As [`crate::generate`].
///
/// ```
/// use snowhum_units::{Degree, Metre};
/// use snowhum_weather::{Climate, Place, season::spring_of_climate};
/// let place = Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) };
/// let spring = spring_of_climate(place, &Climate::at(place).unwrap(), 2026, 1).unwrap().unwrap();
/// assert!(spring.p50.month() == 5, "{}", spring.p50);
/// ```
pub fn spring_of_climate(
    place: Place,
    climate: &Climate,
    year: i16,
    seed: u64,
) -> Result<Option<Range<Date>>, GeneratorFault> {
    let Some(from) = midwinter(year, place.latitude) else { return Ok(None) };
    let paths = daily_means(place, climate, from, LONGEST_DAYS, PATHS, seed)?;
    let dated = |means: &Vec<f64>| {
        let day = |at: usize| from.checked_add(jiff::Span::new().days(at as i64)).unwrap_or(from);
        reached(means.iter().enumerate().map(|(at, mean_c)| (day(at), *mean_c)))
    };
    Ok(range(paths.iter().filter_map(dated).collect(), PATHS))
}

/// Days of the year about the middle of each month.
const MIDDLES: [f64; 12] = [16.0, 45.5, 75.0, 105.5, 136.0, 166.5, 197.0, 228.0, 258.5, 289.0, 319.5, 350.0];

/// Day of the year on which a climate's mean air, drawn straight between the middles of its months, falls below `limit`
/// after the warmest month; days past the end of December count on. `None` where it never does, or is never above.
///
/// ```
/// use snowhum_units::{Degree, Kelvin, Metre};
/// use snowhum_weather::{Climate, Place, season::cools_below};
/// let winnipeg = Place { latitude: Degree::new(49.9), longitude: Degree::new(-97.1), elevation: Metre::new(235.0) };
/// let day = cools_below(&Climate::at(winnipeg).unwrap(), Kelvin::from_celsius(10.0)).unwrap();
/// assert!((260.0..280.0).contains(&day), "late September: {day}");
/// ```
#[must_use]
pub fn cools_below(climate: &Climate, limit: Kelvin) -> Option<f64> {
    let mean = |month: usize| climate.temperature[month % 12].get() - limit.get();
    let warmest = (0..12).max_by(|a, b| mean(*a).total_cmp(&mean(*b)))?;
    let middle = |month: usize| MIDDLES[month % 12] + 365.0 * (month / 12) as f64;
    let falls = |from: &usize| mean(*from) >= 0.0 && mean(from + 1) < 0.0;
    let from = (warmest..warmest + 11).find(falls)?;
    let share = mean(from) / (mean(from) - mean(from + 1));
    Some(middle(from) + share * (middle(from + 1) - middle(from)))
}

fn range(mut found: Vec<Date>, of: usize) -> Option<Range<Date>> {
    if found.is_empty() || found.len() * 10 < of * 9 {
        return None;
    }
    found.sort_unstable();
    let at = |share: f64| {
        let rank = ((of as f64 * share) as usize).min(found.len() - 1);
        found[rank].checked_add(jiff::Span::new().days(SPRING_AFTER_DAYS)).ok()
    };
    Range::new(at(0.1)?, at(0.5)?, at(0.9)?)
}
