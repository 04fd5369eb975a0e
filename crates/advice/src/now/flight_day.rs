//! The next day on which bees can fly: the one day that tells most.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_winter::{Environment, Housed};

use super::answer::FlightDay;

/// Days ahead that are looked at.
const AHEAD: usize = 10;
/// Of them, so many likely flying days are no winter: a single one tells nothing more (judgement).
const MOST: usize = 8;
/// Hours fit for flight that make a flying day.
const LEAST_HOURS: usize = 2;
/// Chance from which a day is named.
const LIKELY: f64 = 0.5;

/// The first day likely to be one; `tomorrow` is the day that begins at `hours_behind`.
pub(super) fn next(
    environment: &Environment,
    housed: &[Housed],
    hours_behind: usize,
    tomorrow: Date,
) -> Option<FlightDay> {
    let begins = |day: usize| hours_behind + 24 * day;
    let chances: Vec<f64> = (0..AHEAD).map_while(|day| chance(environment, housed, begins(day))).collect();
    let likely = |chance: &f64| *chance >= LIKELY;
    let day = chances.iter().position(likely)?;
    Some(FlightDay {
        on: tomorrow.saturating_add((day as i64).days()),
        chance: chances[day],
        days_ahead: day as u32 + 1,
        on_most_days: chances.iter().filter(|chance| likely(chance)).count() >= MOST,
    })
}

/// Share of the paths on which the day that begins at `hour` is a flying day; none is while every hive stands indoors.
fn chance(environment: &Environment, housed: &[Housed], hour: usize) -> Option<f64> {
    if hour + 24 > environment.hours() {
        return None;
    }
    if !housed.is_empty() && housed.iter().all(|hive| hive.is_indoors(environment, hour)) {
        return Some(0.0);
    }
    let flies = |path: usize| (hour..hour + 24).filter(|hour| environment.flies(*hour, path)).count() >= LEAST_HOURS;
    let paths = environment.paths();
    Some((0..paths).filter(|path| flies(*path)).count() as f64 / paths as f64)
}
