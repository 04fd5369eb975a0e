//! The weather that answers stand on, month by month.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::Serialize;
use snowhum_advice::answer::FarAnswer;
use snowhum_say::{Message, weather_terminal as say};
use snowhum_units::{Kelvin, MetrePerSecond, System};
use snowhum_weather::{Ensemble, Hourly};

use crate::text::voice::{in_words, tongue};
use crate::text::wrapped;

/// A weather as it is shown.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct Shown {
    apiary: String,
    as_of: Date,
    spring: Date,
    source: Message,
    notes: Vec<Message>,
    far: Vec<FarAnswer>,
    paths: usize,
    months: Vec<MonthRow>,
}

/// One month over all paths.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct MonthRow {
    month: String,
    mean_c: f64,
    /// One hour in a hundred is colder.
    cold_1_percent_c: f64,
    wind_m_s: f64,
    /// Days with an hour fit for flight, a path.
    flying_days: f64,
    /// Mean depth of snow.
    snow_cm: f64,
}

impl Shown {
    pub(crate) fn of(apiary: &str, as_of: Date, spring: Date, winter: &Ensemble, zone: &TimeZone) -> Self {
        Self {
            apiary: apiary.to_owned(),
            as_of,
            spring,
            source: winter.provenance.source.clone(),
            notes: winter.provenance.notes.clone(),
            far: winter.provenance.far.iter().map(FarAnswer::new).collect(),
            paths: winter.paths.len(),
            months: months(&winter.paths, zone),
        }
    }
}

/// Months of some paths on one clock.
pub(crate) fn months(paths: &[Hourly], zone: &TimeZone) -> Vec<MonthRow> {
    let Some(first) = paths.first() else { return Vec::new() };
    let mut rows: Vec<(String, Vec<usize>)> = Vec::new();
    for hour in 0..first.len() {
        let at = zone.to_datetime(first.start + jiff::SignedDuration::from_hours(hour as i64));
        let name = format!("{:04}-{:02}", at.year(), at.month());
        match rows.last_mut() {
            Some((last, hours)) if *last == name => hours.push(hour),
            _ => rows.push((name, vec![hour])),
        }
    }
    rows.into_iter().map(|(month, hours)| row(month, &hours, paths, zone)).collect()
}

fn row(month: String, hours: &[usize], paths: &[Hourly], zone: &TimeZone) -> MonthRow {
    let mean = |of: &dyn Fn(&Hourly, usize) -> f64| {
        let sum: f64 = paths.iter().flat_map(|path| hours.iter().map(move |&hour| of(path, hour))).sum();
        sum / (paths.len() * hours.len()) as f64
    };
    let temperatures: Vec<Kelvin> = paths.iter().flat_map(|p| hours.iter().map(|&hour| p.temperature[hour])).collect();
    let cold = snowhum_weather::statistics::quantile(&temperatures, 0.01).map_or(f64::NAN, Kelvin::celsius);
    let flying: usize = paths
        .iter()
        .map(|path| snowhum_weather::statistics::flying_days(path, zone))
        .map(|days| days.iter().filter(|day| format!("{:04}-{:02}", day.year(), day.month()) == month).count())
        .sum();
    let rounded = |value: f64| (value * 10.0).round() / 10.0;
    MonthRow {
        mean_c: rounded(mean(&|path, hour| path.temperature[hour].celsius())),
        cold_1_percent_c: rounded(cold),
        wind_m_s: rounded(mean(&|path, hour| path.wind[hour].get())),
        flying_days: rounded(flying as f64 / paths.len() as f64),
        snow_cm: rounded(mean(&|path, hour| path.snow_depth[hour].get()) * 100.0),
        month,
    }
}

pub(crate) fn words(shown: &Shown) -> String {
    let (from, to) = (shown.as_of.to_string(), shown.spring.to_string());
    let title = say::title(from, shown.paths, &shown.source, to, &shown.apiary);
    wrapped(title, 2) + "\n" + &notes(&shown.far, &shown.notes) + "\n" + &table(&shown.months)
}

/// What must be known of a weather, a dash before each.
pub(crate) fn notes(far: &[FarAnswer], notes: &[Message]) -> String {
    let notes = far.iter().map(|far| &far.says).chain(notes);
    notes.map(|note| wrapped(format!("- {}", in_words(note)), 2) + "\n").collect()
}

pub(crate) fn table(months: &[MonthRow]) -> String {
    let line = |month: &str, cells: [Message; 5]| {
        let [mean, cold, wind, flying, snow] = cells.map(|cell| in_words(&cell));
        format!("  {month:<9} {mean:>10} {cold:>14} {wind:>10} {flying:>12} {snow:>9}\n")
    };
    let heads = [say::mean(), say::cold(), say::wind(), say::flying(), say::snow()];
    let mut page = line(&in_words(&say::month()), heads);
    let us = tongue().system() == System::Us;
    for row in months {
        let [mean, cold] = [row.mean_c, row.cold_1_percent_c].map(|air| say::degrees(Kelvin::from_celsius(air)));
        let wind = say::speed(MetrePerSecond::new(row.wind_m_s));
        let snow = say::depth(if us { row.snow_cm / 2.54 } else { row.snow_cm }, us);
        page += &line(&row.month, [mean, cold, wind, say::days(row.flying_days), snow]);
    }
    page
}
