//! A dead hive: when it died, of what, and what it still shows.

use crate::litter::{Litter, LitterDay, LitterLaw};
use crate::view::Own;
use snowhum_units::Same;
use snowhum_winter::Cause;

/// One dead particle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Remains {
    /// Hour of the run at which it ended.
    pub hour: usize,
    /// Of what.
    pub cause: Cause,
    /// Bees at the end.
    pub bees: f64,
    /// Share of winter bees that mites had spoilt.
    pub spoilt: f64,
    /// Food left, kg.
    pub stores_kg: f64,
    /// What the keeper and the hive have of their own.
    pub own: Own,
    /// The dead bees.
    pub litter: Litter,
    /// Hours of rime that may still hang at the hole.
    pub old_rime_hours: f64,
    /// The weather it stands in.
    pub path: usize,
}

/// How a dead hive fares.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct DeadLaw {
    /// Share of the food that robbers carry off in an hour fit for flight.
    pub robbed_an_hour: f64,
    /// Days before they find it.
    pub found_after_days: f64,
}

impl Remains {
    /// Days since the end.
    #[must_use]
    pub(crate) fn days(&self, hour: usize) -> f64 {
        hour.saturating_sub(self.hour) as f64 / 24.0
    }

    /// A day passes.
    pub(crate) fn day(&mut self, law: &DeadLaw, litter: &LitterLaw, hour: usize, day: &LitterDay) {
        self.litter.day(litter, &LitterDay { died: 0.0, carried: false, ..*day });
        if self.days(hour) > law.found_after_days {
            self.stores_kg *= (-law.robbed_an_hour * day.flight_hours).same_exp();
        }
    }
}
