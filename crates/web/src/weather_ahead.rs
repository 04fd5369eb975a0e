//! The weather of the day asked about and of the days after it, as the middle of the paths the answer stands on.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_advice::now::NowQuestion;
use snowhum_advice::yard;
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond};
use snowhum_weather::{Ensemble, Hourly};
use snowhum_winter::{Environment, Housed, RoomStay};

/// Days ahead that are shown.
const SHOWN: usize = 7;
/// Hours fit for flight that make a flying day, as for the flight day of an answer.
const FLYING_HOURS: usize = 2;

/// Outdoors at noon.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Today {
    /// Air.
    pub air: Kelvin,
    /// Relative humidity.
    pub humidity: Fraction,
    /// Wind at the hives.
    pub wind: MetrePerSecond,
    /// Snow lying.
    pub snow: Metre,
}

/// A day to come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Day {
    /// The day.
    pub on: Date,
    /// Coldest hour.
    pub low: Kelvin,
    /// Warmest hour.
    pub high: Kelvin,
    /// Windiest hour, in the open at 10 m.
    pub wind: MetrePerSecond,
    /// Chance that bees can fly on it.
    pub flying: f64,
}

pub(crate) fn today(question: &NowQuestion<'_>) -> Today {
    let noon = first_hour_ahead(question).saturating_sub(12);
    let weather = question.plan.winter;
    let outside = environment(question);
    let at_hives = |of: &dyn Fn(snowhum_winter::Outside) -> f64| {
        middle((0..outside.paths()).filter_map(|path| outside.outside(noon, path)).map(of).collect())
    };
    let humidity = weather.paths.iter().filter_map(|path| path.humidity.get(noon)).map(|share| share.get()).collect();
    Today {
        air: Kelvin::new(at_hives(&|outside| outside.air.get())),
        humidity: Fraction::new(middle(humidity)),
        wind: MetrePerSecond::new(at_hives(&|outside| outside.wind.get())),
        snow: Metre::new(at_hives(&|outside| outside.snow.get())),
    }
}

/// What lies outside each hive at noon: its room where it stands indoors, else the yard.
pub(crate) fn at_hives(question: &NowQuestion<'_>, housed: &[Housed], today: Today) -> Vec<Today> {
    let noon = first_hour_ahead(question).saturating_sub(12);
    let outside = environment(question);
    let of_room = |hive: &Housed| {
        let holds =
            |stay: &&RoomStay| stay.from <= question.as_of && stay.until.is_none_or(|until| question.as_of < until);
        let stay = hive.stays.iter().find(holds)?;
        let air = (0..outside.paths()).filter_map(|path| hive.outside(&outside, noon, path)).map(|one| one.air.get());
        Some(Today {
            air: Kelvin::new(middle(air.collect())),
            humidity: stay.air.humidity,
            wind: MetrePerSecond::ZERO,
            snow: Metre::ZERO,
        })
    };
    housed.iter().map(|hive| of_room(hive).unwrap_or(today)).collect()
}

pub(crate) fn coming(question: &NowQuestion<'_>) -> Vec<Day> {
    let outside = environment(question);
    let from = first_hour_ahead(question);
    let day = |at: usize| day(question.plan.winter, &outside, from + 24 * at, question.plan.as_of, at);
    (0..SHOWN).map_while(day).collect()
}

fn day(weather: &Ensemble, outside: &Environment, from: usize, first: Date, at: usize) -> Option<Day> {
    let hours = from..from + 24;
    if hours.end > weather.hours().min(outside.hours()) {
        return None;
    }
    let of_paths = |of: &dyn Fn(&Hourly) -> f64| middle(weather.paths.iter().map(of).collect());
    let extreme = |values: &[Kelvin], pick: fn(f64, f64) -> f64| values.iter().map(|t| t.get()).reduce(pick);
    let low = of_paths(&|path| extreme(&path.temperature[hours.clone()], f64::min).unwrap_or(f64::NAN));
    let high = of_paths(&|path| extreme(&path.temperature[hours.clone()], f64::max).unwrap_or(f64::NAN));
    let wind = of_paths(&|path| path.wind[hours.clone()].iter().map(|v| v.get()).fold(0.0, f64::max));
    let flies = |path: &usize| hours.clone().filter(|hour| outside.flies(*hour, *path)).count() >= FLYING_HOURS;
    let flying = (0..outside.paths()).filter(flies).count() as f64 / outside.paths().max(1) as f64;
    Some(Day {
        on: first.saturating_add((at as i64).days()),
        low: Kelvin::new(low),
        high: Kelvin::new(high),
        wind: MetrePerSecond::new(wind),
        flying,
    })
}

fn environment(question: &NowQuestion<'_>) -> Environment {
    let apiary = question.plan.apiary;
    yard::environment(&apiary.site, question.plan.winter, apiary.as_of)
}

/// The hour of the run at which the day after the one asked about begins.
fn first_hour_ahead(question: &NowQuestion<'_>) -> usize {
    let days = question.plan.as_of.duration_since(question.plan.apiary.as_of).as_hours() / 24;
    24 * usize::try_from(days).unwrap_or(0)
}

fn middle(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
}
