//! A forecast as the house holds it, and how far it can be trusted to be today's.

use crate::{Service, Why};
use jiff::{SignedDuration, Timestamp};
use snowhum_say::{Message, forecast as say};
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond};

/// What a service expects for a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Forecast {
    /// The steps in order of time, at least two, no more than six hours apart.
    pub hours: Vec<ForecastHour>,
    /// Whose it is.
    pub service: Service,
    /// The line that must stand beside the data wherever they are shown.
    pub attribution: &'static str,
    /// When the service made it, if it says so.
    pub issued: Option<Timestamp>,
    /// When the service last gave or confirmed it.
    pub fetched: Timestamp,
    /// Live, still current, or old.
    pub standing: Standing,
    /// What to know: a service about to end, values left out, a cache that cannot be read or written.
    pub notes: Vec<Message>,
}

/// One step of a forecast: an hour, and six hours apart from the third day on with some services.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ForecastHour {
    /// The instant that temperature, humidity, wind and cloud are for.
    pub time: Timestamp,
    /// Until the next step, one to six hours.
    pub lasts: SignedDuration,
    /// Air at 2 m.
    pub temperature: Kelvin,
    /// Relative humidity over water.
    pub humidity: Option<Fraction>,
    /// Wind at 10 m.
    pub wind: Option<MetrePerSecond>,
    /// Sky covered.
    pub cloud: Option<Fraction>,
    /// Rain and melted snow until the next step.
    pub precipitation: Option<Metre>,
}

/// How a forecast was come by.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Standing {
    /// The service gave it just now.
    Fresh,
    /// The service was asked just now and has nothing newer.
    NotModified,
    /// Kept, and the service asked not to be asked again yet; nothing was sent.
    StillCurrent {
        /// Since the service gave or confirmed it.
        age: SignedDuration,
    },
    /// Kept, and the service gave nothing now.
    Cache {
        /// Since the service gave or confirmed it.
        age: SignedDuration,
        /// Why it gave nothing.
        why: Why,
    },
}

impl Forecast {
    /// The end of its last step.
    #[must_use]
    pub fn end(&self) -> Timestamp {
        end_of(&self.hours).unwrap_or(self.fetched)
    }
}

/// The end of the last of some steps.
pub(crate) fn end_of(hours: &[ForecastHour]) -> Option<Timestamp> {
    let last = hours.last()?;
    last.time.checked_add(last.lasts).ok()
}

impl Standing {
    /// In words.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Fresh => say::fresh(),
            Self::NotModified => say::not_modified(),
            Self::StillCurrent { age } => say::current(spoken(*age)),
            Self::Cache { age, why } => say::kept(spoken(*age), why.message()),
        }
    }
}

/// A time span in minutes, hours or days.
fn spoken(age: SignedDuration) -> Message {
    match age.as_mins().max(0) {
        minutes @ 0..120 => say::age(minutes, "minutes"),
        minutes @ 120..2_880 => say::age(minutes / 60, "hours"),
        minutes => say::age(minutes / 1_440, "days"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_say::Tongue;

    #[test]
    fn a_standing_says_how_old_and_why() {
        let hours = SignedDuration::from_hours;
        let said = |standing: Standing| Tongue::BRITISH.say(&standing.message());
        assert_eq!(said(Standing::StillCurrent { age: hours(1) }), "fetched 60 min ago and still current");
        let old = Standing::Cache { age: hours(49), why: Why::TooOften };
        assert_eq!(said(old), "kept from 2 days ago, since the service is asked too often (429)");
        let clock_set_back = Standing::Cache { age: hours(-3), why: Why::Slow { seconds: 10 } };
        assert_eq!(said(clock_set_back), "kept from 0 min ago, since no answer within 10 s");
    }
}
