//! Rain and snow of a file, and what an unheated gauge misses.

use super::derive::with_law;
use super::{Course, column};
use crate::RawHour;
use crate::climatology::days_in_month;
use snowhum_figures::weather_limits::BLIND_BELOW;
use snowhum_say::{Message, weather as say};
use snowhum_units::{Kelvin, Metre};
use std::ops::Range;

/// Shortest record, or part of a month, that is judged, h.
const JUDGED_H: usize = 20 * 24;

/// Where fewer than half the hours have a value, the climate's monthly sums spread evenly; else the mean of the others
/// in those that have none. Months of frost in which hardly anything fell, and records that are dry throughout, take
/// the climate's sums: gauges without heating, and files whose column was never filled, miss snow.
pub(super) fn hourly(hours: &[RawHour], course: &Course, notes: &mut Vec<Message>) -> Vec<Metre> {
    let found = column(hours, |hour| hour.precipitation.map(Metre::get));
    let known: Vec<f64> = found.iter().flatten().copied().collect();
    if known.len() * 2 < found.len() {
        notes.push(say::rain_lacking(say::rain_taken(course.known)));
        return (0..hours.len()).map(|hour| usual(course, hour)).collect();
    }
    let mean = known.iter().sum::<f64>() / known.len().max(1) as f64;
    let filled = with_law("precipitation", &found, |_| mean, say::mean_taken(), notes);
    let mut fallen: Vec<Metre> = filled.into_iter().map(Metre::new).collect();
    // A dry fortnight is weather, and a forecast of one is right; only a longer record can show a blind gauge.
    let dry_throughout = hours.len() >= JUDGED_H && blind(&fallen, course, 0..hours.len());
    let mut replaced = 0;
    for month in months(course, hours.len()) {
        let frost = mean_of(&course.air[month.clone()]) < Kelvin::from_celsius(0.0);
        if dry_throughout || (frost && month.len() >= JUDGED_H && blind(&fallen, course, month.clone())) {
            month.clone().for_each(|hour| fallen[hour] = usual(course, hour));
            replaced += month.len();
        }
    }
    if replaced > 0 {
        notes.push(say::rain_blind(replaced / 24, say::rain_taken(course.known)));
    }
    fallen
}

/// The climate's mean in an hour.
fn usual(course: &Course, hour: usize) -> Metre {
    let month = course.days[hour / 24].month;
    course.climate.precipitation[month] / (24.0 * days_in_month(month) as f64)
}

fn blind(fallen: &[Metre], course: &Course, hours: Range<usize>) -> bool {
    let expected: Metre = hours.clone().map(|hour| usual(course, hour)).sum();
    fallen[hours].iter().copied().sum::<Metre>() < expected * BLIND_BELOW
}

/// Runs of hours in the same month.
fn months(course: &Course, hours: usize) -> Vec<Range<usize>> {
    let mut runs: Vec<Range<usize>> = Vec::new();
    for hour in 0..hours {
        match runs.last_mut() {
            Some(run) if course.days[run.start / 24].month == course.days[hour / 24].month => run.end = hour + 1,
            _ => runs.push(hour..hour + 1),
        }
    }
    runs
}

fn mean_of(air: &[Kelvin]) -> Kelvin {
    Kelvin::new(air.iter().map(|t| t.get()).sum::<f64>() / air.len().max(1) as f64)
}
