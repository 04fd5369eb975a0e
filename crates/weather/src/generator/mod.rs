//! Weather drawn from a climate: an ensemble of hourly paths for any place.
//!
//! Monthly means become daily means; daily residuals of mean temperature, range and sky follow one autoregression with
//! a cold tail that is never clipped; a slow term makes winters differ; hours follow the sun, or the wind's direction
//! when the sun is low. Every draw is keyed by path, day or hour and purpose, so that a path does not depend on how
//! many others there are.

mod days;
mod fault;
mod frame;
mod gamma;
mod ground;
mod humidity;
mod purpose;
mod residuals;
pub(crate) mod season;
mod sky;
mod slow;
mod temperature;
mod wind;

pub use fault::GeneratorFault;
pub(crate) use frame::day_of_common_year;
pub(crate) use sky::light;

use crate::sun_day::standard_pressure;
use crate::{AirPaths, Climate, Ensemble, Hourly, Place, Provenance};
use days::DayWeather;
use frame::Frame;
use jiff::civil::Date;
use jiff::{Timestamp, tz::TimeZone};
use rayon::prelude::*;
use season::Season;
use snowhum_draws::Key;
use snowhum_say::weather as say;
use snowhum_units::{Kelvin, Pascal};

/// Stream of the weather's draws.
const STREAM: u64 = 0x0057_4541_5448_4552;

/// Longest ensemble: ten years.
const LONGEST_HOURS: usize = 10 * 8_784;

/// Draws `paths` weathers of `hours` at `place` from the midnight of `from` in `zone`.
///
/// Path `n` is the same for any number of paths and any thread; the days of two runs with the same seed draw the same
/// numbers wherever they overlap. Snow at the start comes from a spin-up that reaches back to summer.
///
/// # Errors
/// [`GeneratorFault`] for a date, a place or a length out of range.
///
/// Source: `data/weather_generator.toml` has every parameter with its own.
///
/// ```
/// use snowhum_units::{Degree, Metre};
/// use snowhum_weather::{Climate, Place, generate};
/// let place = Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) };
/// let climate = Climate::at(place).unwrap();
/// let zone = jiff::tz::TimeZone::get("Europe/Helsinki").unwrap();
/// let from = jiff::civil::date(2025, 10, 5);
/// let winter = generate(place, &climate, &zone, from, 5_000, 4, 1).unwrap();
/// assert_eq!((winter.paths.len(), winter.hours()), (4, 5_000));
/// ```
pub fn generate(
    place: Place,
    climate: &Climate,
    zone: &TimeZone,
    from: Date,
    hours: usize,
    paths: usize,
    seed: u64,
) -> Result<Ensemble, GeneratorFault> {
    let season = Season::of(climate);
    let (start, frame) = lay(place, climate, &season, zone, from, hours)?;
    let pressure = standard_pressure(place.elevation);
    let paths = each(&frame, (paths, seed), |days, (key, path)| {
        one_path(&frame, &season, days, (key, path), (start, pressure))
    });
    Ok(Ensemble { start, paths, provenance: provenance(climate) })
}

/// Air temperature alone of the weathers that [`generate`] draws, to the last bit, for a third of the work.
///
/// # Errors
/// As [`generate`].
pub fn generate_air(
    place: Place,
    climate: &Climate,
    zone: &TimeZone,
    from: Date,
    hours: usize,
    paths: usize,
    seed: u64,
) -> Result<AirPaths, GeneratorFault> {
    let season = Season::of(climate);
    let (_, frame) = lay(place, climate, &season, zone, from, hours)?;
    let air =
        |days: &[DayWeather], _| temperature::hourly(&frame, days).into_iter().map(Kelvin::from_celsius).collect();
    Ok(AirPaths(each(&frame, (paths, seed), air)))
}

/// What is made of the days of each path.
fn each<T: Send>(
    frame: &Frame,
    (paths, seed): (usize, u64),
    of: impl Fn(&[DayWeather], (Key, u32)) -> T + Sync,
) -> Vec<T> {
    let key = Key::new(seed, STREAM);
    (0..paths as u32).into_par_iter().map(|path| of(&days::days(frame, key, path), (key, path))).collect()
}

/// Daily mean temperatures in °C alone, path by path, which cost little beside whole weather.
///
/// # Errors
/// As [`generate`].
pub(crate) fn daily_means(
    place: Place,
    climate: &Climate,
    from: Date,
    days: usize,
    paths: usize,
    seed: u64,
) -> Result<Vec<Vec<f64>>, GeneratorFault> {
    by_day(place, climate, from, days, paths, seed, |_, drawn| drawn.mean_c)
}

/// Departures from the climate's daily mean in K, path by path: the whole slow term and a share of the residual.
///
/// # Errors
/// As [`generate`].
pub(crate) fn daily_moves(
    place: Place,
    climate: &Climate,
    from: Date,
    days: usize,
    paths: usize,
    seed: u64,
    residual_share: f64,
) -> Result<Vec<Vec<f64>>, GeneratorFault> {
    let departure = |day: &frame::Day, drawn: &days::DayWeather| {
        drawn.slow_k + residual_share * (drawn.mean_c - drawn.slow_k - day.mean_c)
    };
    by_day(place, climate, from, days, paths, seed, departure)
}

fn by_day(
    place: Place,
    climate: &Climate,
    from: Date,
    days: usize,
    paths: usize,
    seed: u64,
    of: impl Fn(&frame::Day, &days::DayWeather) -> f64,
) -> Result<Vec<Vec<f64>>, GeneratorFault> {
    let season = Season::of(climate);
    let (_, frame) = lay(place, climate, &season, &TimeZone::UTC, from, days * 24)?;
    let key = Key::new(seed, STREAM);
    let path = |path: usize| {
        let drawn = days::days(&frame, key, path as u32);
        let asked = frame.spin_up..frame.spin_up + days;
        frame.days[asked.clone()].iter().zip(&drawn[asked]).map(|(day, drawn)| of(day, drawn)).collect()
    };
    Ok((0..paths).map(path).collect())
}

fn lay(
    place: Place,
    climate: &Climate,
    season: &Season,
    zone: &TimeZone,
    from: Date,
    hours: usize,
) -> Result<(Timestamp, Frame), GeneratorFault> {
    if !(1..=LONGEST_HOURS).contains(&hours) {
        return Err(GeneratorFault::Hours(hours));
    }
    let start = midnight(zone, from).filter(|_| (1700..=2900).contains(&from.year()));
    let start = start.ok_or(GeneratorFault::Date { from })?;
    Ok((start, Frame::lay(place, climate, season, from, start.as_second(), hours)?))
}

/// Midnight of a date on a clock, on the whole hour of UTC.
pub(crate) fn midnight(zone: &TimeZone, date: Date) -> Option<Timestamp> {
    let exact = zone.to_ambiguous_timestamp(date.at(0, 0, 0, 0)).compatible().ok()?;
    Timestamp::from_second(exact.as_second().div_euclid(3600) * 3600).ok()
}

fn one_path(
    frame: &Frame,
    season: &Season,
    days: &[DayWeather],
    (key, path): (Key, u32),
    (start, pressure): (Timestamp, Pascal),
) -> Hourly {
    let air = temperature::hourly(frame, days);
    let cloud = sky::cover(frame, days, key, path);
    let light: Vec<_> = frame.sun.iter().zip(&cloud).map(|(sun, cover)| sky::light(sun, *cover)).collect();
    let (precipitation, snow_depth) = ground::hourly(frame, days, &air);
    Hourly {
        start,
        humidity: humidity::hourly(frame, days, season, &air),
        temperature: air.into_iter().map(Kelvin::from_celsius).collect(),
        wind: wind::hourly(frame, days, key, path),
        global: light.iter().map(|light| light.global).collect(),
        direct: light.iter().map(|light| light.direct_normal).collect(),
        diffuse: light.iter().map(|light| light.diffuse).collect(),
        cloud,
        precipitation,
        snow_depth,
        pressure: vec![pressure; frame.hours],
    }
}

fn provenance(climate: &Climate) -> Provenance {
    let mut notes = climate.provenance.notes.clone();
    notes.push(say::laws());
    Provenance { source: say::drawn(&climate.provenance.source), notes, far: Vec::new() }
}
