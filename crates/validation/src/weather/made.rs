//! Two hundred made winters at a place.

use std::ops::Range;

use jiff::civil::{Date, date};
use jiff::tz::{Offset, TimeZone};
use snowhum_units::{Degree, Kelvin, Metre};
use snowhum_weather::{Climate, Place, generate};

use super::inputs::{DayLaw, Inputs};
use crate::Fault;

/// Days of each month from 1 October.
pub(crate) const MONTHS: [(&str, Range<usize>); 8] = [
    ("October", 0..31),
    ("November", 31..61),
    ("December", 61..92),
    ("January", 92..123),
    ("February", 123..151),
    ("March", 151..182),
    ("April", 182..212),
    ("May", 212..243),
];

/// December to February.
pub(super) const MIDWINTER: Range<usize> = 61..151;

/// Winters made at each place.
pub(crate) const WINTERS: usize = 200;
pub(super) const DAYS: usize = 243;
const FROM: Date = date(2018, 10, 1);

/// A place by name.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Named {
    pub(crate) name: &'static str,
    pub(super) latitude: f64,
    pub(super) longitude: f64,
    pub(super) elevation_m: f64,
    /// Hours of the place's own time before Greenwich's.
    hours_east: i8,
    /// Its own, so that the places are independent of each other.
    seed: u64,
}

/// Whose real winter is at hand.
pub(super) const NORTHWAY: Named =
    Named { name: "Northway", latitude: 62.967, longitude: -141.933, elevation_m: 522.0, hours_east: -9, seed: 13 };

/// By the sea, on the plains, in the interior of Alaska.
pub(super) const PLACES: [Named; 3] = [
    Named { name: "Helsinki", latitude: 60.32, longitude: 24.97, elevation_m: 56.0, hours_east: 2, seed: 11 },
    Named { name: "Winnipeg", latitude: 49.9, longitude: -97.1, elevation_m: 235.0, hours_east: -6, seed: 12 },
    NORTHWAY,
];

/// Made winters, October to May.
pub(crate) struct MadeWinters {
    pub(crate) place: Named,
    pub(crate) climate: Climate,
    /// The inputs' law of each day.
    pub(super) laws: Vec<DayLaw>,
    /// Each winter's hours.
    pub(crate) hours: Vec<Vec<Kelvin>>,
    /// Each winter's daily means.
    pub(crate) days: Vec<Vec<Kelvin>>,
    /// Each winter's rain and melted snow.
    pub(super) precipitation: Vec<Metre>,
}

impl Named {
    pub(super) fn place(&self) -> Place {
        let Self { latitude, longitude, elevation_m, .. } = *self;
        Place { latitude: Degree::new(latitude), longitude: Degree::new(longitude), elevation: Metre::new(elevation_m) }
    }

    pub(super) fn zone(&self) -> TimeZone {
        TimeZone::fixed(Offset::constant(self.hours_east))
    }
}

impl MadeWinters {
    pub(super) fn of(place: Named) -> Result<Self, Fault> {
        let climate = Climate::at(place.place())?;
        let made = generate(place.place(), &climate, &place.zone(), FROM, 24 * DAYS, WINTERS, place.seed)?;
        let precipitation = made.paths.iter().map(|path| path.precipitation.iter().copied().sum()).collect();
        let hours: Vec<Vec<Kelvin>> = made.paths.into_iter().map(|path| path.temperature).collect();
        let days = hours.iter().map(|hours| daily_means(hours)).collect();
        let laws = Inputs::shipped().days(&climate, FROM, DAYS);
        Ok(Self { place, climate, laws, hours, days, precipitation })
    }
}

/// Mean of each whole day from the first hour on.
pub(super) fn daily_means(hours: &[Kelvin]) -> Vec<Kelvin> {
    let mean = |day: &[Kelvin]| day.iter().map(|t| t.get()).sum::<f64>() / 24.0;
    hours.chunks_exact(24).map(|day| Kelvin::new(mean(day))).collect()
}
