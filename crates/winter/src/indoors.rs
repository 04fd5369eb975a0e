//! Hives that stand in a room for part of the winter: its air in place of the weather, and neither wind nor sun, rain, snow
//! nor flight.

use jiff::civil::Date;
use std::ops::Range;
use std::sync::Arc;

use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond, Pascal};

use crate::engine::Housed;
use crate::environment::{Environment, Hour, Outside, Walk, humidity_ratio};
use crate::lanes::LANES;
use crate::step::colony::Season;

/// The air of a room.
#[derive(Debug, Clone, PartialEq)]
pub struct RoomAir {
    /// The coldest and the warmest it may be where nothing was measured: each weather path has its own between them.
    pub between: (Kelvin, Kelvin),
    /// Humidity.
    pub humidity: Fraction,
    /// Where no light comes in, the air below which bees that see no day begin no brood by its length; none in a light room.
    pub dark_below: Option<Kelvin>,
    /// The day from whose start on it was measured, and °C hour by hour.
    pub measured: Option<(Date, Vec<Option<f32>>)>,
}

/// Days that a hive stands in a room.
#[derive(Debug, Clone, PartialEq)]
pub struct RoomStay {
    /// First day.
    pub from: Date,
    /// First day outdoors again; none where it stays to the end of the run.
    pub until: Option<Date>,
    /// The room's air.
    pub air: Arc<RoomAir>,
}

/// The stays of a hive by the hours of one run.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Rooms(Vec<(Range<usize>, i64, Arc<RoomAir>)>);

impl RoomAir {
    /// °C in an hour since `measured` began, on a weather path.
    fn celsius(&self, hour: i64, path: usize) -> f64 {
        self.celsius_at(hour, place_of(path))
    }

    /// The same at a place between the coldest and the warmest.
    fn celsius_at(&self, hour: i64, place: f64) -> f64 {
        let read = || self.measured.as_ref()?.1.get(usize::try_from(hour).ok()?).copied().flatten();
        let (low, high) = (self.between.0.celsius(), self.between.1.celsius());
        read().map_or_else(|| low + (high - low) * place, f64::from)
    }
}

/// A weather path's place between the coldest and the warmest: any number of neighbouring paths lie evenly.
fn place_of(path: usize) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_895;
    (GOLDEN * (path as f64 + 0.5)).fract()
}

/// Days from one date to another.
fn days(from: Date, to: Date) -> i64 {
    to.duration_since(from).as_hours() / 24
}

impl Rooms {
    /// Stays as they fall into the hours of an environment.
    pub(crate) fn of(stays: &[RoomStay], environment: &Environment) -> Self {
        let first = environment.first_day();
        let hour = |day: Date| 24 * usize::try_from(days(first, day)).unwrap_or(0);
        let stay = |stay: &RoomStay| {
            let hours = hour(stay.from)..stay.until.map_or(usize::MAX, hour);
            let measured = stay.air.measured.as_ref().map_or(0, |(from, _)| 24 * days(*from, first));
            (hours, measured, stay.air.clone())
        };
        Self(stays.iter().map(stay).filter(|(hours, ..)| !hours.is_empty()).collect())
    }

    /// The room that the hive stands in at an hour of the run, with the hours from the start of its record to the run's.
    #[inline(always)]
    fn at(&self, hour: usize) -> Option<(i64, &RoomAir)> {
        self.0.iter().find(|(hours, ..)| hours.contains(&hour)).map(|(_, measured, air)| (*measured, &**air))
    }

    /// Puts the room's air in place of the weather, if the hive stands in one.
    #[inline(always)]
    pub(crate) fn fill(&self, hour: usize, walk: &Walk, pressure: Pascal, to: &mut Hour) {
        let Some((measured, air)) = self.at(hour) else { return };
        *to = Hour::default();
        for lane in 0..LANES {
            let t_c = air.celsius(measured + hour as i64, walk.path(lane));
            to.air[lane] = t_c as f32;
            to.ratio[lane] = humidity_ratio(t_c, air.humidity.get(), pressure.get()) as f32;
        }
    }

    /// The day as the hive's bees see it: in a dark, cold room it has no light. Bees whose room is warm are taken to know the
    /// season all the same.
    pub(crate) fn seen(&self, day: usize, season: Season) -> Season {
        let noon = 24 * day + 12;
        let is_night = self.at(noon).is_some_and(|(measured, air)| {
            let celsius = air.celsius_at(measured + noon as i64, 0.5);
            air.dark_below.is_some_and(|limit| celsius < limit.celsius())
        });
        if is_night { Season { day_length: 0.0, ..season } } else { season }
    }

    fn outside(&self, hour: usize, path: usize) -> Option<Outside> {
        let (measured, air) = self.at(hour)?;
        let air = Kelvin::from_celsius(air.celsius(measured + hour as i64, path));
        Some(Outside { air, wind: MetrePerSecond::ZERO, snow: Metre::ZERO })
    }
}

impl Housed {
    /// Whether the hive stands indoors at an hour of an environment.
    #[must_use]
    pub fn is_indoors(&self, environment: &Environment, hour: usize) -> bool {
        Rooms::of(&self.stays, environment).at(hour).is_some()
    }

    /// What lies outside the hive in an hour on a path: the room where it stands in one, else the weather.
    #[must_use]
    pub fn outside(&self, environment: &Environment, hour: usize, path: usize) -> Option<Outside> {
        let weather = environment.outside(hour, path)?;
        Some(Rooms::of(&self.stays, environment).outside(hour, path % environment.paths()).unwrap_or(weather))
    }
}
