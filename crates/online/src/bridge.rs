//! From a forecast to the hours that the house's weather is made of.

use crate::{Forecast, ForecastHour};
use jiff::tz::Offset;
use jiff::{SignedDuration, Timestamp};
use snowhum_say::{Message, Tongue, forecast as say};
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond};
use snowhum_weather::{Raw, RawHour, Reading};

impl Forecast {
    /// The forecast hour by hour, as [`snowhum_weather::complete`] takes it.
    ///
    /// An instant stands for the hour it begins, as with a station's hours. Between steps of more than an hour
    /// temperature, humidity, wind and cloud run in straight lines and precipitation is spread evenly; the notes say
    /// which hours those are, whose the data are, and how old. The last step gives the hour it begins.
    ///
    /// ```
    /// # use snowhum_online::{Forecast, ForecastHour, Service, Standing};
    /// # use snowhum_units::{Kelvin, Metre};
    /// # use jiff::{SignedDuration, Timestamp};
    /// # let time: Timestamp = "2027-01-06T06:00:00Z".parse().unwrap();
    /// # let lasts = SignedDuration::from_hours(6);
    /// # let step = |time, celsius| ForecastHour { time, lasts, temperature: Kelvin::from_celsius(celsius),
    /// #     humidity: None, wind: None, cloud: None, precipitation: Some(Metre::new(0.006)) };
    /// # let forecast = Forecast { hours: vec![step(time, -12.0), step(time + lasts, -6.0)], service: Service::MetNorway,
    /// #     attribution: Service::MetNorway.attribution(), issued: None, fetched: time, standing: Standing::Fresh,
    /// #     notes: vec![] };
    /// // Two steps, six hours apart: -12 °C and 6 mm of water, then -6 °C.
    /// let reading = forecast.to_reading();
    /// let third = &reading.raw.hours[2];
    /// assert!((third.temperature.unwrap().celsius() + 10.0).abs() < 1e-9);
    /// assert!((third.precipitation.unwrap().get() - 0.001).abs() < 1e-9);
    /// let between = snowhum_say::Tongue::BRITISH.say(&reading.notes[2]);
    /// assert!(between.contains("5 hours of the forecast from 2027-01-06T07:00:00Z"));
    /// ```
    #[must_use]
    pub fn to_reading(&self) -> Reading {
        let mut hours = Vec::new();
        for (at, step) in self.hours.iter().enumerate() {
            let next = self.hours.get(at + 1).unwrap_or(step);
            let count = if at + 1 == self.hours.len() { 1 } else { step.lasts.as_hours() };
            hours.extend((0..count).map(|hour| between(step, next, hour)));
        }
        let start = self.hours.first().map_or(self.fetched, |first| first.time);
        let mut notes = vec![Message::own(format!("{}.", self.attribution)), say::was(self.standing.message())];
        notes.extend(self.between_steps());
        notes.extend(self.notes.iter().cloned());
        let file = Tongue::BRITISH.say(&say::of(self.service.message()));
        let raw = Raw { start, hours };
        Reading { file, raw, place: None, offset: Some(Offset::UTC), typical_year: false, notes }
    }

    /// The hours that lie between steps, and so are interpolated.
    pub fn interpolated(&self) -> impl Iterator<Item = Timestamp> + '_ {
        let steps = self.hours.iter().take(self.hours.len().saturating_sub(1));
        steps.flat_map(|step| {
            let hours = (1..step.lasts.as_hours()).map(SignedDuration::from_hours);
            hours.filter_map(|hour| step.time.checked_add(hour).ok())
        })
    }

    fn between_steps(&self) -> Option<Message> {
        let mut hours = self.interpolated();
        let first = hours.next()?;
        let (count, last) = hours.fold((1, first), |(count, _), hour| (count + 1, hour));
        Some(say::between(first.to_string(), count, last.to_string()))
    }
}

/// The hour that begins `hour` hours after a step.
fn between(step: &ForecastHour, next: &ForecastHour, hour: i64) -> RawHour {
    let lasts_h = step.lasts.as_hours().max(1) as f64;
    let part = hour as f64 / lasts_h;
    let line = |from: f64, to: f64| from + (to - from) * part;
    let share = |from: Option<Fraction>, to: Option<Fraction>| match hour {
        0 => from,
        _ => from.zip(to).map(|(from, to)| Fraction::new(line(from.get(), to.get()))),
    };
    let wind = match hour {
        0 => step.wind,
        _ => step.wind.zip(next.wind).map(|(from, to)| MetrePerSecond::new(line(from.get(), to.get()))),
    };
    RawHour {
        temperature: Some(Kelvin::new(line(step.temperature.get(), next.temperature.get()))),
        humidity: share(step.humidity, next.humidity),
        cloud: share(step.cloud, next.cloud),
        wind,
        precipitation: step.precipitation.map(|sum| Metre::new(sum.get() / lasts_h)),
        ..RawHour::default()
    }
}
