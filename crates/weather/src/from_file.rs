//! Winters that a file makes possible.

use crate::complete::{snow_depths, usual_snow};
use crate::generator::{GeneratorFault, daily_moves, day_of_common_year, midnight};
use crate::statistics::{date_of, monthly_means};
use crate::{Climate, Ensemble, Hourly, Place, Provenance};
use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_figures::weather_limits::RESIDUAL_SHARE;
use snowhum_say::{Message, Tongue, weather as of, weather_fault as say};
use snowhum_units::{Kelvin, Metre};

/// Years of a file from which on its own winters suffice.
const MANY_YEARS: usize = 10;
const YEAR_H: usize = 8_760;

/// Why a file makes no winter for these dates.
#[derive(Debug, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum FileTooShort {
    /// No stretch of the file covers the dates.
    Dates {
        /// Hours in the file.
        held: usize,
        /// Hours asked for.
        asked: usize,
        /// Month of the first day.
        month: i8,
        /// Day of the first day.
        day: i8,
    },
    /// The variations around the file cannot be drawn.
    Generator(#[from] GeneratorFault),
}

impl FileTooShort {
    /// With what would be right.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Dates { held, asked, month, day } => say::too_short(*asked, format!("{month:02}-{day:02}"), *held),
            Self::Generator(fault) => fault.message(),
        }
    }
}

/// An ensemble of `paths` winters of `hours` from the midnight of `from`, out of whole hours of a file.
///
/// Every year of the file that covers the same dates is one winter, in turn; a file of one whole year is bent round at
/// its end. With fewer than ten such years each path is moved by the generator's slow term and half of its daily
/// residual with the cold tail, since a typical year misses the cold by up to 5 K; humidity, sun and wind stay, snow is
/// worked out anew.
///
/// # Errors
/// [`FileTooShort`].
pub fn ensemble_from_file(
    file: &Hourly,
    place: Place,
    zone: &TimeZone,
    from: Date,
    hours: usize,
    paths: usize,
    seed: u64,
) -> Result<Ensemble, FileTooShort> {
    let start = midnight(zone, from).ok_or(GeneratorFault::Date { from })?;
    let winters = winters(file, zone, from, hours);
    if winters.is_empty() || hours == 0 {
        return Err(FileTooShort::Dates { held: file.len(), asked: hours, month: from.month(), day: from.day() });
    }
    let at = Climate::at(place).ok();
    let few = winters.len() < MANY_YEARS;
    let mut moves = Vec::new();
    if few {
        let climate = at.clone().unwrap_or_else(|| climate_of(file, place, zone));
        moves = daily_moves(place, &climate, from, hours.div_ceil(24) + 1, paths, seed, RESIDUAL_SHARE)?;
    }
    let path = |index: usize| {
        let winter = cut(file, winters[index % winters.len()], start, hours);
        match moves.get(index) {
            Some(by_day) => moved(winter, by_day, at.as_ref(), from),
            None => winter,
        }
    };
    Ok(Ensemble { start, paths: (0..paths).map(path).collect(), provenance: provenance(winters.len(), few) })
}

/// First hours of the stretches of the file that cover the dates.
fn winters(file: &Hourly, zone: &TimeZone, from: Date, hours: usize) -> Vec<usize> {
    let (Some(first), Some(last)) = (date_of(file, zone, 0), date_of(file, zone, file.len().saturating_sub(1))) else {
        return Vec::new();
    };
    let begins = (first.year()..=last.year()).filter_map(|year| {
        let day = from.day().min(if from.month() == 2 { 28 } else { 31 });
        let date = Date::new(year, from.month(), day).ok()?;
        let seconds = midnight(zone, date)?.as_second() - file.start.as_second();
        usize::try_from(seconds.div_euclid(3600)).ok()
    });
    let begins: Vec<usize> = begins.filter(|begin| *begin < file.len()).collect();
    let whole: Vec<usize> = begins.iter().copied().filter(|begin| begin + hours <= file.len()).collect();
    // A single year is bent round.
    if whole.is_empty() && file.len() >= YEAR_H { begins.into_iter().take(1).collect() } else { whole }
}

/// The hours from `begin` on, bent round by whole years at the end of the file.
fn cut(file: &Hourly, begin: usize, start: Timestamp, hours: usize) -> Hourly {
    let at = |hour: usize| {
        let index = begin + hour;
        if index < file.len() { index } else { (index - file.len()) % YEAR_H + file.len() - YEAR_H }
    };
    fn taken<T: Copy>(column: &[T], hours: usize, at: impl Fn(usize) -> usize) -> Vec<T> {
        (0..hours).map(|hour| column[at(hour)]).collect()
    }
    Hourly {
        start,
        temperature: taken(&file.temperature, hours, at),
        humidity: taken(&file.humidity, hours, at),
        wind: taken(&file.wind, hours, at),
        cloud: taken(&file.cloud, hours, at),
        global: taken(&file.global, hours, at),
        direct: taken(&file.direct, hours, at),
        diffuse: taken(&file.diffuse, hours, at),
        precipitation: taken(&file.precipitation, hours, at),
        snow_depth: taken(&file.snow_depth, hours, at),
        pressure: taken(&file.pressure, hours, at),
    }
}

/// Monthly means of the file; months it lacks take the mean of all.
fn climate_of(file: &Hourly, place: Place, zone: &TimeZone) -> Climate {
    const RAIN: Metre = Metre::new(0.05);
    let mean = file.temperature.iter().map(|t| t.get()).sum::<f64>() / file.len() as f64;
    Climate::from_months(place, monthly_means(file, zone).map(|month| month.unwrap_or(Kelvin::new(mean))), [RAIN; 12])
}

fn moved(mut winter: Hourly, by_day: &[f64], climate: Option<&Climate>, from: Date) -> Hourly {
    for (hour, t) in winter.temperature.iter_mut().enumerate() {
        // Straight between middays, so that no midnight jumps.
        let middays = (hour as f64 + 0.5) / 24.0 - 0.5;
        let day = middays.max(0.0) as usize;
        let part = (middays - day as f64).max(0.0);
        let move_k = by_day[day] * (1.0 - part) + by_day[day + 1] * part;
        *t = Kelvin::new(t.get() + move_k);
    }
    winter.snow_depth =
        snow_depths(usual_snow(climate, day_of_common_year(from)), &winter.temperature, &winter.precipitation);
    winter
}

fn provenance(years: usize, few: bool) -> Provenance {
    let mut notes = Vec::new();
    if few {
        notes.push(of::few_winters(years));
    }
    Provenance { source: of::of_file(years), notes, far: Vec::new() }
}
