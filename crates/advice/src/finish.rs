//! By when syrup must be finished at a site: fed, taken down and capped.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Text, site as say};
use snowhum_units::{Kelvin, Range};
use snowhum_weather::AirPaths;

use crate::statistics::quantile;

/// Daily maximum below which bees hardly take syrup: 55 °F, Ontario beekeeping extension leaflet.
pub(crate) const TAKEN_FROM: Kelvin = Kelvin::from_celsius(13.0);
/// Days over which the daily maximum is averaged, so that one cold week does not end the season (judgement).
pub(crate) const WINDOW: usize = 14;
/// Days bees need to bring down, ripen and cap 60 % syrup: about three weeks, ended by the end of August in Finland
/// (Finnish beekeepers' leaflet, read as an extract).
pub(crate) const RIPENING: i64 = 21;
/// Days of `autumn` before which no cold spell counts as autumn: the first of August in the north.
const SUMMER: usize = 31;

/// The day by which syrup must be finished: three weeks before the fortnight's mean of the daily maximum first falls
/// below 13 °C. `autumn` begins at the start of `first_day`, 1 July in the north and 1 January in the south.
#[must_use]
pub fn finish_by(autumn: &AirPaths, first_day: Date) -> Range<Date> {
    last_days(autumn, first_day, TAKEN_FROM).map(|date| date.saturating_sub(RIPENING.days()))
}

/// The last day before the fortnight's mean of the daily maximum first falls below `limit`; the last of the weather where
/// it never does.
pub(crate) fn last_days(autumn: &AirPaths, first_day: Date, limit: Kelvin) -> Range<Date> {
    let last_days: Vec<f64> = autumn.0.iter().map(|path| last_day_above(path, limit) as f64).collect();
    let date = |q: f64| first_day.saturating_add((quantile(&last_days, q).round() as i64).days());
    Range { p10: date(0.1), p50: date(0.5), p90: date(0.9) }
}

/// The daily maximum of each whole day, K.
pub(crate) fn daily_maxima(path: &[Kelvin]) -> Vec<f64> {
    let highest = |day: &[Kelvin]| day.iter().fold(f64::NEG_INFINITY, |most, t| most.max(t.get()));
    path.chunks_exact(24).map(highest).collect()
}

/// Last day of a path before the fortnight up to it is too cold; its last day if none is.
fn last_day_above(path: &[Kelvin], limit: Kelvin) -> usize {
    let maxima = daily_maxima(path);
    let cold = |days: &[f64]| days.iter().sum::<f64>() / (WINDOW as f64) < limit.get();
    let first_cold = maxima.windows(WINDOW).skip(SUMMER).position(cold);
    first_cold.map_or(maxima.len(), |at| at + SUMMER + WINDOW - 1).saturating_sub(1)
}

/// How feeders differ: a day's share that a strong colony takes from each (common practice), litres.
pub const FEEDERS: [(Text, f64); 3] = [(say::top_feeder, 3.0), (say::frame_feeder, 1.0), (say::jar, 0.7)];

/// Last day to begin feeding `litres` with a feeder that gives `litres_a_day`, to be finished by `finish`.
#[must_use]
pub fn begin_by(finish: Date, litres: f64, litres_a_day: f64) -> Date {
    finish.saturating_sub(((litres / litres_a_day).ceil() as i64).days())
}
