//! A year of the site's weather as a keeper meets it, day by day, on every path.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_apiary::Site;
use snowhum_units::{Degree, Range};
use snowhum_weather::{Ensemble, Provenance};
use snowhum_winter::{Environment, daylight};

use super::triggers::Triggers;
use crate::dates::Dates;
use crate::statistics::quantile;
use crate::yard;

/// Hours fit for flight that make a flying day, as for the flight day of the present.
const FLYING_HOURS: usize = 2;
/// Days after high summer before which no cold spell counts as autumn.
const SUMMER: usize = 31;

/// One day at the hives.
#[derive(Debug, Clone, Copy)]
pub(super) struct SiteDay {
    /// Warmest hour, °C.
    pub(super) high: f64,
    /// Coldest hour, °C.
    pub(super) low: f64,
    /// Mean, °C.
    pub(super) mean: f64,
    /// Mean from six in the evening to six in the morning, °C.
    pub(super) night: f64,
    /// Snow lying, m.
    pub(super) snow: f64,
    /// Whether bees can fly on it.
    pub(super) flies: bool,
    /// Whether bees can fly in an hour mild enough to clear a floor.
    pub(super) mild: bool,
    /// Whether an hour is fit for a first look at combs.
    pub(super) look: bool,
    /// Whether a lid may be off for a minute by day.
    pub(super) lid: bool,
}

/// A year of a site, day by day on every path of its weather: some hundredths of the memory that its hours take.
#[derive(Debug, Clone)]
pub struct SiteYear {
    first: Date,
    provenance: Provenance,
    latitude: Degree,
    paths: Vec<Vec<SiteDay>>,
    midwinter: usize,
}

impl SiteYear {
    /// Reads an ensemble that begins at the start of `first`.
    #[must_use]
    pub fn of(site: &Site, ensemble: &Ensemble, first: Date, triggers: &Triggers) -> Self {
        let environment = yard::environment(site, ensemble, first);
        let days = environment.days();
        let path = |path: usize| (0..days).map(|day| site_day(&environment, day, path, triggers)).collect();
        let midwinter = first.saturating_add(6.months()).duration_since(first).as_hours() / 24;
        Self {
            first,
            provenance: ensemble.provenance.clone(),
            latitude: site.latitude,
            paths: (0..ensemble.paths.len()).map(path).collect(),
            midwinter: midwinter as usize,
        }
    }

    /// How many paths its weather has.
    pub(super) fn paths(&self) -> usize {
        self.paths.len()
    }

    /// What its weather stands on.
    pub(super) fn provenance(&self) -> &Provenance {
        &self.provenance
    }

    /// First day.
    pub(super) fn first(&self) -> Date {
        self.first
    }

    /// Place of midwinter: six months after the first day.
    pub(super) fn midwinter(&self) -> usize {
        self.midwinter
    }

    /// First day from a day of the year on whose daylight is shorter, or is as long, as some hours; none where the first
    /// is so already.
    pub(super) fn light(&self, from: usize, is: impl Fn(f64) -> bool) -> Option<usize> {
        let daylight =
            |day: usize| daylight::hours(self.first.saturating_add((day as i64).days()).day_of_year(), self.latitude);
        (from..from + 183).find(|day| is(daylight(*day))).filter(|day| *day > from)
    }

    /// The same day on every path.
    pub(super) fn always(&self, day: Option<usize>) -> Dates {
        Dates::of(vec![day.map(|day| day as i64); self.paths.len()])
    }

    /// First day after midwinter that is as long as a day of spring; midwinter where all are.
    pub(super) fn spring(&self, hours: f64) -> usize {
        self.light(self.midwinter, |light| light >= hours).unwrap_or(self.midwinter)
    }

    /// When something falls due, by asking each path.
    pub(super) fn when(&self, due: impl Fn(&[SiteDay]) -> Option<i64>) -> Dates {
        Dates::of(self.paths.iter().map(|path| due(path)).collect())
    }

    /// Days of a kind in a stretch of the year, over the paths.
    pub(super) fn count(&self, days: std::ops::Range<usize>, is: fn(&SiteDay) -> bool) -> Range<f64> {
        let of_path =
            |path: &Vec<SiteDay>| path.get(days.clone()).map_or(0, |days| days.iter().filter(|day| is(day)).count());
        let counts: Vec<f64> = self.paths.iter().map(|path| of_path(path) as f64).collect();
        let at = |q: f64| quantile(&counts, q).round();
        Range { p10: at(0.1), p50: at(0.5), p90: at(0.9) }
    }
}

fn site_day(environment: &Environment, day: usize, path: usize, t: &Triggers) -> SiteDay {
    let mut one = SiteDay {
        high: f64::NEG_INFINITY,
        low: f64::INFINITY,
        mean: 0.0,
        night: 0.0,
        snow: 0.0,
        flies: false,
        mild: false,
        look: false,
        lid: false,
    };
    let mut flying = 0;
    for hour in 0..24 {
        let Some(outside) = environment.outside(24 * day + hour, path) else { continue };
        let (air, wind) = (outside.air.celsius(), outside.wind.get());
        let by_day = (8..18).contains(&hour);
        let flies = environment.flies(24 * day + hour, path);
        one.high = one.high.max(air);
        one.low = one.low.min(air);
        one.mean += air / 24.0;
        one.night += if (6..18).contains(&hour) { 0.0 } else { air / 12.0 };
        one.snow = outside.snow.get();
        one.mild |= flies && air >= t.mild_air.value;
        one.look |= flies && air >= t.look_air.value && wind <= t.look_wind.value;
        one.lid |= by_day && air >= t.lid_air.value && wind <= t.lid_wind.value;
        flying += usize::from(flies);
    }
    one.flies = flying >= FLYING_HOURS;
    one
}

/// First day, from the first of autumn on, that ends `window` days whose mean of a figure is below a limit.
pub(super) fn falls_below(path: &[SiteDay], window: usize, limit: f64, of: fn(&SiteDay) -> f64) -> Option<i64> {
    let is_below = |days: &[SiteDay]| days.iter().map(of).sum::<f64>() < limit * window as f64;
    let found = path.windows(window).skip(SUMMER).position(is_below)?;
    Some((found + SUMMER + window - 1) as i64)
}

/// First day from `from` on, after which no `window` days have a mean of a figure at or below a limit; none if the year
/// ends so.
pub(super) fn rises_for_good(
    path: &[SiteDay],
    from: usize,
    window: usize,
    limit: f64,
    of: fn(&SiteDay) -> f64,
) -> Option<i64> {
    let is_below = |days: &[SiteDay]| days.iter().map(of).sum::<f64>() <= limit * window as f64;
    let windows: Vec<bool> = path.get(from..)?.windows(window).map(is_below).collect();
    match windows.iter().rposition(|below| *below) {
        None => Some(from as i64),
        Some(last) if last + 1 == windows.len() => None,
        Some(last) => Some((from + last + window) as i64),
    }
}

/// First day that ends `window` days, from `from` on, whose mean of a figure is at or above a limit.
pub(super) fn rises_above(
    path: &[SiteDay],
    from: usize,
    window: usize,
    limit: f64,
    of: fn(&SiteDay) -> f64,
) -> Option<i64> {
    let is_above = |days: &[SiteDay]| days.iter().map(of).sum::<f64>() >= limit * window as f64;
    let found = path.get(from..)?.windows(window).position(is_above)?;
    Some((from + found + window - 1) as i64)
}

/// First day from `from` on that is so.
pub(super) fn first(path: &[SiteDay], from: usize, is: impl Fn(&SiteDay) -> bool) -> Option<i64> {
    path.get(from..)?.iter().position(is).map(|at| (from + at) as i64)
}

/// First day from the first of autumn on.
pub(super) fn first_of_autumn(path: &[SiteDay], is: impl Fn(&SiteDay) -> bool) -> Option<i64> {
    first(path, SUMMER, is)
}

/// First day, from the first of autumn on, on which `nights` of the fortnight up to it were of frost.
pub(super) fn frosts(path: &[SiteDay], nights: usize) -> Option<i64> {
    let found =
        path.windows(14).skip(SUMMER).position(|days| days.iter().filter(|day| day.low < 0.0).count() >= nights)?;
    Some((found + SUMMER + 13) as i64)
}

/// First day, from the first of autumn on, of a fortnight in which no hour is as warm as `high`.
pub(super) fn flying_over(path: &[SiteDay], high: f64) -> Option<i64> {
    let found = path.windows(14).skip(SUMMER).position(|days| days.iter().all(|day| day.high < high))?;
    Some((found + SUMMER) as i64)
}

/// First day from `from` on at which the warmth above 5 °C gathered since reaches `degree_days`, K d.
pub(super) fn warmth(path: &[SiteDay], from: usize, degree_days: f64) -> Option<i64> {
    let mut gathered = 0.0;
    let reached = |day: &SiteDay| {
        gathered += (day.mean - 5.0).max(0.0);
        gathered >= degree_days
    };
    path.get(from..)?.iter().position(reached).map(|at| (from + at) as i64)
}

/// First day from midwinter on by which the snow has sunk to a share of its deepest since, where that is deep enough.
pub(super) fn melts(path: &[SiteDay], midwinter: usize, lies: f64, left: f64) -> Option<i64> {
    let after = path.get(midwinter..)?;
    let (at, deepest) = after.iter().enumerate().max_by(|a, b| a.1.snow.total_cmp(&b.1.snow))?;
    if deepest.snow < lies {
        return None;
    }
    first(path, midwinter + at, |day| day.snow <= left * deepest.snow)
}
