//! The weather of a winter under way: what is known of it, then what may come.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_advice::PlanQuestion;
use snowhum_advice::now::{NowQuestion, Thresholds};
use snowhum_advice::yard;
use snowhum_apiary::Apiary;
use snowhum_say::weather_terminal as say;
use snowhum_units::Kelvin;
use snowhum_watch::Sizes;
use snowhum_weather::{Ensemble, Hourly, bend_through, follow};
use snowhum_winter::Parameters;

use super::span::{AFTER_WINTER, AHEAD, high_summer_before, zone};
use super::{Completed, Weather, files};
use crate::args::{LiveArguments, RunArguments};
use crate::exit;

/// Everything that is needed to say where colonies stand.
pub(crate) struct Present {
    /// The weather from the day the colonies were counted, and the plan's seasons.
    pub(crate) weather: Weather,
    /// Hours of it that are known.
    known_hours: usize,
    /// The day asked about.
    as_of: Date,
}

impl Present {
    /// Reads or draws the weather of a yard's winter, and joins to it what is known.
    pub(crate) fn resolve(apiary: &Apiary, arguments: &RunArguments) -> anyhow::Result<Self> {
        let as_of = asked_day(apiary, arguments)?;
        if as_of < apiary.as_of {
            return Err(exit::refused(say::before_count(apiary.as_of.to_string(), as_of.to_string())));
        }
        let from_count = RunArguments { as_of: Some(apiary.as_of), ..arguments.clone() };
        let (mut weather, _) = Weather::resolve_to(apiary, &from_count, Some(as_of.saturating_add(AHEAD.days())))?;
        let last = weather.spring.saturating_add(AFTER_WINTER.days());
        if as_of > last {
            let [counted, on, spring] = [apiary.as_of, as_of, weather.spring].map(|day| day.to_string());
            return Err(exit::refused(say::winter_over(counted, on, spring, &apiary.name)));
        }
        let covered = apiary.as_of.saturating_add((weather.winter.hours() as i64 / 24 - 2).days());
        if as_of > covered {
            let ends = covered.saturating_add(2.days()).to_string();
            return Err(exit::refused(say::after_files(ends, as_of.to_string())));
        }
        weather.autumn_from = high_summer_before(apiary.as_of, &weather.site);
        let mut present = Self { weather, known_hours: 0, as_of };
        present.join_known(apiary, arguments)?;
        Ok(present)
    }

    /// Lays a forecast over the hours to come, if the keeper asks for one and the day asked about is today.
    pub(crate) fn foretold(mut self, live: &LiveArguments) -> anyhow::Result<Self> {
        let today = zone(&self.weather.site)?.to_datetime(jiff::Timestamp::now()).date();
        if live.live.is_some() && self.as_of == today {
            super::live::lay_over(&mut self.weather.winter, live, &self.weather.site);
        } else if live.live.is_some() {
            crate::progress::note(say::today_alone());
        }
        Ok(self)
    }

    /// Puts measured hours in front where a file holds them, else bends the drawn paths through what was noted.
    fn join_known(&mut self, apiary: &Apiary, arguments: &RunArguments) -> anyhow::Result<()> {
        let winter = &self.weather.winter;
        let until = winter.start + jiff::SignedDuration::from_hours(24 * self.days_behind(apiary));
        let measured = if arguments.weather.is_empty() {
            None
        } else {
            let read = files::read_all(&arguments.weather, arguments.columns.as_deref(), &apiary.site)?;
            read.iter().find_map(|file| past(file, winter, until))
        };
        let winter = &mut self.weather.winter;
        match measured {
            Some(past) => self.known_hours = follow(winter, &past),
            None => bend_through(winter, yard::place(&apiary.site), apiary.as_of, &noted(apiary, until)),
        }
        Ok(())
    }

    fn days_behind(&self, apiary: &Apiary) -> i64 {
        self.as_of.duration_since(apiary.as_of).as_hours() / 24 + 1
    }

    /// The question; `apiary` is the weather's own.
    pub(crate) fn question<'a>(
        &'a self,
        apiary: &'a Apiary,
        parameters: &'a Parameters,
        (signs, thresholds): (&'a snowhum_watch::Parameters, &'a Thresholds),
        arguments: &RunArguments,
    ) -> NowQuestion<'a> {
        let plan = self.weather.question(apiary, parameters, arguments);
        NowQuestion {
            plan: PlanQuestion { as_of: self.as_of.saturating_add(1.days()), ..plan },
            as_of: self.as_of,
            known_hours: self.known_hours,
            signs,
            thresholds,
            sizes: Sizes::USUAL,
            last: &[],
        }
    }
}

/// The day asked about: an invented yard has a day of its own; a keeper's is asked about today.
pub(crate) fn asked_day(apiary: &Apiary, arguments: &RunArguments) -> anyhow::Result<Date> {
    match arguments.as_of {
        Some(day) => Ok(day),
        None if apiary.invented => Ok(apiary.as_of),
        None => Ok(zone(&apiary.site)?.to_datetime(jiff::Timestamp::now()).date()),
    }
}

/// The hours of a file from the start of the winter up to `until`, if it holds the start.
fn past(file: &Completed, winter: &Ensemble, until: jiff::Timestamp) -> Option<Hourly> {
    let hourly = &file.hourly;
    let hours = |from: jiff::Timestamp, to: jiff::Timestamp| (to.as_second() - from.as_second()) / 3_600;
    let first = usize::try_from(hours(hourly.start, winter.start)).ok()?;
    let asked = usize::try_from(hours(winter.start, until)).ok()?;
    let last = hourly.len().min(first + asked);
    (first < last && hourly.start <= winter.start).then(|| Hourly {
        start: winter.start,
        temperature: hourly.temperature[first..last].to_vec(),
        humidity: hourly.humidity[first..last].to_vec(),
        wind: hourly.wind[first..last].to_vec(),
        cloud: hourly.cloud[first..last].to_vec(),
        global: hourly.global[first..last].to_vec(),
        direct: hourly.direct[first..last].to_vec(),
        diffuse: hourly.diffuse[first..last].to_vec(),
        precipitation: hourly.precipitation[first..last].to_vec(),
        snow_depth: hourly.snow_depth[first..last].to_vec(),
        pressure: hourly.pressure[first..last].to_vec(),
    })
}

/// Temperatures noted at the hives outdoors, one for each visit.
fn noted(apiary: &Apiary, until: jiff::Timestamp) -> Vec<(jiff::Timestamp, Kelvin)> {
    let mut read: Vec<(jiff::Timestamp, Kelvin)> = apiary.outdoor_air().filter(|(at, _)| *at < until).collect();
    read.sort_by_key(|(at, _)| *at);
    read.dedup_by_key(|(at, _)| *at);
    read
}
