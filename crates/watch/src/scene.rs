//! What every colony's watch stands on.

use jiff::tz::TimeZone;
use jiff::{Timestamp, ToSpan};
use snowhum_apiary::{DeadPlace, Mites, SnowCover};
use snowhum_figures::watch_looks::SNOWED;
use snowhum_winter::{Outside, Yard};

use crate::parameters::Parameters;
use crate::{Conditions, FreshSnow};

/// The yard under its weather, and the laws of signs.
#[derive(Debug, Clone, Copy)]
pub struct Scene<'a> {
    /// The winter model's yard.
    pub yard: &'a Yard<'a>,
    /// The instant at which its environment begins.
    pub start: Timestamp,
    /// The clock by which its keeper notes.
    pub zone: &'a TimeZone,
    /// Hours from there in which all weather paths are the same, since the weather is known.
    pub known_hours: usize,
    /// What signs go by.
    pub parameters: &'a Parameters,
    /// Seed of all draws.
    pub seed: u64,
}

impl Scene<'_> {
    /// The hour of the run at whose end something noted at `at` is weighed; `None` outside the run.
    #[must_use]
    pub fn hour_of(&self, at: Timestamp) -> Option<usize> {
        let seconds = at.as_second() - self.start.as_second();
        let hour = usize::try_from(seconds.div_euclid(3_600)).ok()? + 1;
        // A clock put back since the run began runs an hour after its days: what is noted before midnight is of that day.
        let day =
            at.to_zoned_datetime(self.zone.clone()).date().duration_since(self.yard.environment.first_day()).as_hours()
                / 24;
        let begun = 24 * usize::try_from(day).ok()?;
        let hour = hour.clamp(begun + 1, begun + 24);
        (hour <= 24 * self.yard.environment.days()).then_some(hour)
    }

    /// Whether the count of mites that a colony entered with was made after the day of an hour.
    pub(crate) fn is_counted_after(&self, place: usize, hour: usize) -> bool {
        let first = self.yard.environment.first_day();
        let day = first.saturating_add(((hour.saturating_sub(1) / 24) as i64).days());
        let counted = self.yard.colonies.get(place).map(|housed| &housed.colony.mites);
        matches!(counted, Some(Mites::Counted { on, .. }) if *on > day)
    }

    /// The day of a visit to a colony as the keeper saw it; what was not noted is the mean of the weather paths at that hour.
    /// Of a hive indoors what counts is the room: the weather noted is that of the yard.
    #[must_use]
    pub fn conditions(&self, place: usize, hour: usize, noted: &snowhum_apiary::Conditions) -> Conditions {
        const WEEK: usize = 168;
        /// Depth that fresh snow is taken for where only "new" was noted, m.
        const FRESH_M: f64 = 0.05;
        let now = hour.saturating_sub(1);
        let indoors = snowhum_apiary::Conditions::default();
        let noted = if self.is_indoors(place, hour) { &indoors } else { noted };
        let air_now = self.mean(place, now, |outside| outside.air.celsius());
        let week = (now.saturating_sub(WEEK)..=now).step_by(6);
        let count = week.clone().count().max(1) as f64;
        let lying = self.mean(place, now, |outside| outside.snow.get());
        let yesterday = self.mean(place, now.saturating_sub(24), |outside| outside.snow.get());
        Conditions {
            air_c: noted.air_k.map_or(air_now, |air| air.celsius()),
            wind_m_per_s: noted
                .wind_m_per_s
                .map_or_else(|| self.mean(place, now, |outside| outside.wind.get()), |wind| wind.get()),
            snow_m: match noted.snow {
                Some(SnowCover::None) => 0.0,
                Some(_) => lying.max(FRESH_M),
                None => lying,
            },
            fresh_snow: match (noted.snow, lying - yesterday > SNOWED) {
                (None | Some(SnowCover::New), true) => FreshSnow::Walked,
                (Some(SnowCover::New), false) => FreshSnow::Noted,
                _ => FreshSnow::None,
            },
            week_c: week.map(|hour| self.mean(place, hour, |outside| outside.air.celsius())).sum::<f64>() / count,
            season_day: self.season_day(hour),
        }
    }

    /// Day of the year at an hour of the run, shifted by half a year south of the equator.
    #[must_use]
    pub fn season_day(&self, hour: usize) -> f64 {
        let environment = self.yard.environment;
        let southern = if environment.latitude().get() < 0.0 { 182.5 } else { 0.0 };
        let day = f64::from(environment.first_day().day_of_year()) + hour as f64 / 24.0 + southern;
        day.rem_euclid(365.25)
    }

    /// Whether a colony's hive stands indoors at the end of an hour of the run.
    #[must_use]
    pub fn is_indoors(&self, place: usize, hour: usize) -> bool {
        let housed = self.yard.colonies.get(place);
        housed.is_some_and(|housed| housed.is_indoors(self.yard.environment, hour.saturating_sub(1)))
    }

    /// Where the dead of a colony are counted on a day: on snow, on bare ground, or in a dark room on the hive's own floor.
    #[must_use]
    pub fn dead_lie(&self, place: usize, hour: usize, day: &Conditions) -> DeadPlace {
        match self.is_indoors(place, hour) {
            true => DeadPlace::Hook,
            false if day.snow_m < self.parameters.bare_ground.value => DeadPlace::Ground,
            false => DeadPlace::Snow,
        }
    }

    /// What lies outside a colony's hive in an hour on a path.
    pub(crate) fn outside(&self, place: usize, hour: usize, path: usize) -> Option<Outside> {
        self.yard.colonies.get(place)?.outside(self.yard.environment, hour, path)
    }

    fn mean(&self, place: usize, hour: usize, of: impl Fn(&Outside) -> f64) -> f64 {
        // Paths are one while the weather is known; a room has its own air on each.
        let is_known = hour < self.known_hours && !self.is_indoors(place, hour + 1);
        let paths = if is_known { 1 } else { self.yard.environment.paths() };
        let found = (0..paths).filter_map(|path| self.outside(place, hour, path));
        let (sum, count) = found.fold((0.0, 0.0), |(sum, count), outside| (sum + of(&outside), count + 1.0));
        if count > 0.0 { sum / count } else { 0.0 }
    }
}
