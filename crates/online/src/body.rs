//! From a service's numbers to the steps of a forecast: what no weather can be is left out, and said.

use crate::ForecastHour;
use crate::Why;
use crate::forecast::end_of;
use jiff::{SignedDuration, Timestamp};
use snowhum_say::{Message, forecast as say};
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond};
use std::ops::RangeInclusive;

/// Most steps that are taken: three weeks of hours; services give nine to sixteen days.
pub(crate) const MOST_STEPS: usize = 21 * 24;
/// Longest time between steps, h; what comes after a longer one is left out.
const LONGEST_STEP_H: i64 = 6;

/// A page read.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Body {
    pub(crate) issued: Option<Timestamp>,
    pub(crate) hours: Vec<ForecastHour>,
    pub(crate) notes: Vec<Message>,
}

/// One step as the service has it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Found {
    pub(crate) time: Timestamp,
    pub(crate) temperature_celsius: Option<f64>,
    pub(crate) humidity_percent: Option<f64>,
    pub(crate) wind_metre_per_second: Option<f64>,
    pub(crate) cloud_percent: Option<f64>,
    /// Fallen in the hour after.
    pub(crate) one_hour_mm: Option<f64>,
    /// Fallen in the six hours after.
    pub(crate) six_hours_mm: Option<f64>,
}

impl Found {
    pub(crate) fn at(time: Timestamp) -> Self {
        Self {
            time,
            temperature_celsius: None,
            humidity_percent: None,
            wind_metre_per_second: None,
            cloud_percent: None,
            one_hour_mm: None,
            six_hours_mm: None,
        }
    }
}

impl Body {
    /// The steps that can be used: on the hour, with a temperature, in order, no more than six hours apart.
    pub(crate) fn of(issued: Option<Timestamp>, found: &[Found]) -> Result<Self, Why> {
        if found.len() > MOST_STEPS {
            return Err(Why::wrong(format!("it has {} steps, where at most {MOST_STEPS} are usual", found.len())));
        }
        if found.windows(2).any(|pair| pair[1].time <= pair[0].time) {
            return Err(Why::wrong("its steps are not in the order of time"));
        }
        let mut dropped = 0;
        let mut kept: Vec<(Found, f64)> = Vec::with_capacity(found.len());
        for step in found {
            let celsius = usable(step.temperature_celsius, -90.0..=60.0, &mut dropped);
            let on_the_hour = step.time.as_second() % 3600 == 0 && step.time.subsec_nanosecond() == 0;
            kept.extend(celsius.filter(|_| on_the_hour).map(|celsius| (*step, celsius)));
        }
        let mut notes = Vec::new();
        let short = found.len() - kept.len();
        if short > 0 {
            notes.push(say::short_steps(short));
        }
        let before_gap = kept.windows(2).position(|pair| hours_between(&pair[0].0, &pair[1].0) > LONGEST_STEP_H);
        if let Some(at) = before_gap {
            kept.truncate(at + 1);
            notes.push(say::gap(kept[at].0.time.to_string()));
        }
        if kept.len() < 2 {
            return Err(Why::wrong("it has fewer than two hours with a temperature"));
        }
        let hours = (0..kept.len()).map(|at| step(&kept, at, &mut dropped)).collect();
        if dropped > 0 {
            notes.push(say::dropped(dropped));
        }
        Ok(Self { issued, hours, notes })
    }

    /// Whether the forecast reaches beyond now.
    pub(crate) fn reaches(&self, now: Timestamp) -> Result<(), Why> {
        match end_of(&self.hours) {
            Some(end) if end > now => Ok(()),
            end => Err(Why::Over { end: end.unwrap_or(now) }),
        }
    }
}

fn step(kept: &[(Found, f64)], at: usize, dropped: &mut usize) -> ForecastHour {
    let (found, celsius) = &kept[at];
    let lasts_h = kept.get(at + 1).map_or(1, |(next, _)| hours_between(found, next));
    let one_hour = usable(found.one_hour_mm, 0.0..=300.0, dropped);
    let six_hours = usable(found.six_hours_mm, 0.0..=600.0, dropped).map(|mm| mm * lasts_h as f64 / 6.0);
    // The sum over one hour says nothing of the five after it.
    let fallen_mm = if lasts_h == 1 { one_hour.or(six_hours) } else { six_hours };
    let mut share = |percent| usable(percent, 0.0..=105.0, dropped).map(|p: f64| Fraction::new((p / 100.0).min(1.0)));
    ForecastHour {
        time: found.time,
        lasts: SignedDuration::from_hours(lasts_h),
        temperature: Kelvin::from_celsius(*celsius),
        humidity: share(found.humidity_percent),
        cloud: share(found.cloud_percent),
        wind: usable(found.wind_metre_per_second, 0.0..=120.0, dropped).map(MetrePerSecond::new),
        precipitation: fallen_mm.map(|mm| Metre::new(mm / 1000.0)),
    }
}

fn hours_between(from: &Found, to: &Found) -> i64 {
    to.time.duration_since(from.time).as_hours()
}

/// The value, if some weather can have it.
fn usable(value: Option<f64>, plausible: RangeInclusive<f64>, dropped: &mut usize) -> Option<f64> {
    let kept = value.filter(|value| plausible.contains(value));
    *dropped += usize::from(value.is_some() && kept.is_none());
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(hour: i64, celsius: f64) -> Found {
        let time = Timestamp::from_second(1_800_000_000 / 3600 * 3600 + hour * 3600).unwrap();
        Found { temperature_celsius: Some(celsius), ..Found::at(time) }
    }

    #[test]
    fn what_no_weather_can_be_is_left_out_and_said() {
        let odd = Found { humidity_percent: Some(140.0), wind_metre_per_second: Some(-1.0), ..found(1, -8.0) };
        let body = Body::of(None, &[found(0, -7.0), odd, found(2, -300.0), found(3, -9.0)]).unwrap();
        assert_eq!(body.hours.len(), 3);
        assert_eq!((body.hours[1].humidity, body.hours[1].wind), (None, None));
        assert_eq!(body.hours[1].lasts, SignedDuration::from_hours(2));
        assert_eq!(body.notes, [say::short_steps(1), say::dropped(3)]);
    }

    #[test]
    fn a_sum_over_six_hours_is_shared_out_and_one_over_an_hour_is_not_stretched() {
        let both = Found { one_hour_mm: Some(1.0), six_hours_mm: Some(3.0), ..found(0, 1.0) };
        let only_an_hour = Found { one_hour_mm: Some(1.0), ..found(1, 1.0) };
        let only_six = |hour| Found { six_hours_mm: Some(3.0), ..found(hour, 1.0) };
        let steps = [both, only_an_hour, only_six(4), only_six(10), only_six(12)];
        let hours = Body::of(None, &steps).unwrap().hours;
        let millimetres = hours.iter().map(|hour| hour.precipitation.map(|depth| (depth.get() * 1e6).round() / 1e3));
        let right = [Some(1.0), None, Some(3.0), Some(1.0), Some(0.5)];
        assert_eq!(millimetres.collect::<Vec<_>>(), right);
    }

    #[test]
    fn a_forecast_is_in_order_long_enough_and_cut_at_a_gap() {
        assert!(Body::of(None, &[]).is_err());
        assert!(Body::of(None, &[found(0, 1.0)]).is_err());
        assert!(Body::of(None, &[found(1, 1.0), found(1, 1.0), found(2, 1.0)]).is_err());
        let cut = Body::of(None, &[found(0, 1.0), found(6, 1.0), found(13, 1.0)]).unwrap();
        assert_eq!((cut.hours.len(), cut.notes.len()), (2, 1));
        let many: Vec<Found> = (0..=MOST_STEPS as i64).map(|hour| found(hour, 1.0)).collect();
        assert!(Body::of(None, &many).is_err() && Body::of(None, &many[1..]).is_ok());
    }
}
