//! What all paths of an ensemble share: the days with their climate and the hours with their sun.

use super::fault::GeneratorFault;
use super::residuals::Residuals;
use super::season::{Rain, Season, Sky};
use crate::climatology::YearCurve;
use crate::hourly_shape::{Turns, Weights, weights};
use crate::sun_day::{SunDay, SunHour};
use crate::{Climate, Place};
use jiff::civil::Date;
use snowhum_figures::weather_generator as figures;

/// Days before the first on which nothing yet lies and the residuals have settled.
const SETTLING_DAYS: i32 = 15;

/// One day as the climate has it.
#[derive(Debug, Clone)]
pub(crate) struct Day {
    /// Days since 1970, the counter of the day's draws.
    pub(crate) number: u32,
    pub(crate) mean_c: f64,
    pub(crate) sd_k: f64,
    pub(crate) tail: f64,
    pub(crate) slow_sd_k: f64,
    /// Months since year 0 at the middle of the one before, and how far the day is from there to the next middle.
    pub(crate) slow: (u32, f64),
    pub(crate) residuals: Residuals,
    pub(crate) range_k: f64,
    pub(crate) sky: Sky,
    pub(crate) rain: Rain,
    /// 1: the wind's direction sets the hours of the extremes; 0: the sun does.
    pub(crate) advective: f64,
    pub(crate) shape: [Weights; 24],
    pub(crate) sun: SunDay,
}

/// Days from the spin-up to two after the last, and the sun of the hours between.
#[derive(Debug)]
pub(crate) struct Frame {
    pub(crate) days: Vec<Day>,
    /// Days before the first one asked for.
    pub(crate) spin_up: usize,
    pub(crate) hours: usize,
    pub(crate) sun: Vec<SunHour>,
}

impl Frame {
    /// The frame of `hours` from `begins_s`, the midnight of `from`; the spin-up reaches back to late summer.
    pub(crate) fn lay(
        place: Place,
        climate: &Climate,
        season: &Season,
        from: Date,
        begins_s: i64,
        hours: usize,
    ) -> Result<Self, GeneratorFault> {
        let spin_up = spin_up_days(climate, from);
        let days_asked = hours.div_ceil(24);
        let year = climate.daily_means();
        let suns = (-1..=(spin_up + days_asked + 2) as i64)
            .map(|day| SunDay::at(place, begins_s + (day - spin_up as i64) * 86_400))
            .collect::<Result<Vec<_>, _>>()?;
        let turns: Vec<Turns> = suns.iter().map(Turns::of).collect();
        let mut days = Vec::with_capacity(spin_up + days_asked + 2);
        for index in 0..spin_up + days_asked + 2 {
            let date = from
                .checked_add(jiff::Span::new().days(index as i64 - spin_up as i64))
                .map_err(|_| GeneratorFault::Date { from })?;
            let shape = weights(&[turns[index], turns[index + 1], turns[index + 2]]);
            days.push(Day::of(date, &year, season, suns[index + 1], shape));
        }
        let sun = (0..days_asked * 24).map(|hour| days[spin_up + hour / 24].sun.hour(hour % 24)).take(hours).collect();
        Ok(Self { days, spin_up, hours, sun })
    }
}

impl Day {
    fn of(date: Date, year: &YearCurve, season: &Season, sun: SunDay, shape: [Weights; 24]) -> Self {
        let month = date.month() as usize - 1;
        let mean_c = year.on(day_of_common_year(date));
        let winterness = season.winterness(mean_c);
        let noon = sun.noon_height().get();
        let middle = f64::from(date.year()) * 12.0
            + month as f64
            + (f64::from(date.day()) - 0.5) / f64::from(date.days_in_month())
            - 0.5;
        Self {
            number: (date - Date::constant(1970, 1, 1)).get_days() as u32,
            mean_c,
            sd_k: season.sd_k(winterness),
            tail: season.cold_tail(winterness),
            slow_sd_k: season.slow_sd_k(winterness),
            slow: (middle.floor() as u32, middle.fract()),
            residuals: Residuals::of(winterness),
            range_k: season.range_k(sun.clear_mean()),
            sky: season.sky(month, winterness),
            rain: season.rain(month),
            advective: ((figures::DIURNAL_ABOVE - noon) / (figures::DIURNAL_ABOVE - figures::ADVECTION_BELOW))
                .clamp(0.0, 1.0),
            shape,
            sun,
        }
    }
}

/// 0 on 1 January; 29 February counts as 1 March.
pub(crate) fn day_of_common_year(date: Date) -> usize {
    let day = date.day_of_year() as usize - 1;
    if date.in_leap_year() && day > 59 { day - 1 } else { day }
}

/// Days from the last warmest time of the year, when no snow lies below the ice line.
fn spin_up_days(climate: &Climate, from: Date) -> usize {
    let warmest = (0..12).max_by(|a, b| climate.temperature[*a].get().total_cmp(&climate.temperature[*b].get()));
    let month = warmest.unwrap_or(6) as i8 + 1;
    let last = [from.year(), from.year() - 1].into_iter().filter_map(|year| Date::new(year, month, 20).ok());
    let since = last.map(|date| (from - date).get_days()).find(|days| *days >= 0);
    since.unwrap_or(0).max(SETTLING_DAYS) as usize
}
