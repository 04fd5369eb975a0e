//! One look at one hive: what the laws share.

use super::hour::Hour;
use crate::{Conditions, Law, Life, Own, Parameters, View};
use snowhum_figures::Figure;
use snowhum_units::Same;

/// How a colony is at a visit, the same for all its signs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Today {
    /// It sits tight and shows little.
    Quiet,
    /// It shows what a colony of its size shows.
    Lively,
}

/// A hive as seen on a day, all numbers within what can be.
#[derive(Debug, Clone, Copy)]
pub(super) struct Look<'a> {
    pub(super) view: View,
    pub(super) day: Conditions,
    pub(super) today: Today,
    pub(super) p: &'a Parameters,
}

impl<'a> Look<'a> {
    pub(super) fn new(view: &View, day: &Conditions, today: Today, p: &'a Parameters) -> Self {
        Self { view: tamed_view(view), day: tamed_day(day), today, p }
    }

    pub(super) fn is_alive(&self) -> bool {
        self.view.life.is_alive()
    }

    /// What is told with one chance of the living and with another of the dead.
    pub(super) fn told(&self, chances: fn(&Parameters) -> [&Figure; 2]) -> Law {
        let [living, dead] = chances(self.p);
        Law::There(if self.is_alive() { living.value } else { dead.value })
    }

    /// Days since the end, if it is dead.
    pub(super) fn dead_days(&self) -> Option<f64> {
        match self.view.life {
            Life::Dead { days } => Some(days),
            Life::Queenright | Life::Queenless => None,
        }
    }

    /// Share of its usual showing that a living colony shows today; none of a dead one.
    pub(super) fn showing(&self) -> f64 {
        match (self.is_alive(), self.today) {
            (false, _) => 0.0,
            (true, Today::Quiet) => self.p.quiet_showing.value,
            (true, Today::Lively) => 1.0,
        }
    }

    /// How far a colony of this size shows what a great one would, with `bees` as the scale.
    pub(super) fn strength(&self, bees: f64) -> f64 {
        if self.is_alive() { rising(self.view.bees, bees) } else { 0.0 }
    }

    /// Chance that bees fly in the hour of the look: by the air, the sun of the day so far, the wind, and what kind of hour
    /// it was.
    pub(super) fn flying(&self, hour: Hour) -> f64 {
        let Some(asks_k) = hour.asks_k(self.p) else { return 0.0 };
        let dull = 1.0 - rising(self.view.flight_hours, self.p.flight_sun_hours.value);
        let needed = self.p.flight_air.value
            + self.p.flight_dull.value * dull
            + self.p.flight_wind.value * self.day.wind_m_per_s
            + asks_k;
        logistic((self.day.air_c - needed) / self.p.flight_width.value)
    }

    /// The same for an hour of which nothing is known.
    pub(super) fn flying_at_all(&self) -> f64 {
        Hour::all().map(|hour| hour.chance(self.p) * self.flying(hour)).sum()
    }

    /// Chance that robbers fly: on flying days from late winter until autumn, to stores that are left.
    pub(super) fn robbing(&self, hour: Hour) -> f64 {
        let p = self.p;
        let from = logistic((self.day.season_day - p.robbing_from_day.value) / p.season_width.value);
        let until = logistic((p.robbing_until_day.value - self.day.season_day) / p.season_width.value);
        self.flying(hour) * from * until * rising(self.view.stores_kg, p.robbing_stores.value)
    }

    /// Share of rime that the outdoor air leaves hanging: none in a thaw.
    pub(super) fn frozen(&self, air_c: f64) -> f64 {
        logistic((self.p.thaw_at.value - air_c) / self.p.thaw_width.value)
    }
}

pub(super) fn quiet_chance(day: &Conditions, p: &Parameters) -> f64 {
    let cold = (-day.air_c).max(0.0) / 10.0 * p.quiet_cold.value;
    let wind = day.wind_m_per_s / 5.0 * p.quiet_wind.value;
    let log_odds = (p.quiet.value / (1.0 - p.quiet.value)).same_ln();
    logistic(log_odds + cold + wind).min(p.quiet_most.value)
}

pub(super) fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).same_exp())
}

/// `1 − e^(−x/scale)`.
pub(super) fn rising(x: f64, scale: f64) -> f64 {
    1.0 - (-x / scale).same_exp()
}

/// A sign that is there with the chance `stray` in any hive, and of a living hive's own doing with `own` besides.
pub(super) fn there(stray: f64, own: f64) -> Law {
    Law::There(besides(stray, own))
}

/// Chance of either of two things that know nothing of each other.
pub(super) fn besides(one: f64, other: f64) -> f64 {
    one + (1.0 - one) * other
}

/// The reading that is off by far more than its spread in a few cases of a hundred.
pub(super) fn reading(mean: f64, sd: f64, stray: f64, wide: f64) -> Law {
    Law::Reading { mean, sd, stray, wide }
}

pub(super) fn tamed_day(day: &Conditions) -> Conditions {
    Conditions {
        air_c: tamed(day.air_c, 0.0, -70.0, 50.0),
        wind_m_per_s: tamed(day.wind_m_per_s, 0.0, 0.0, 40.0),
        snow_m: tamed(day.snow_m, 0.0, 0.0, 5.0),
        fresh_snow: day.fresh_snow,
        week_c: tamed(day.week_c, 0.0, -70.0, 50.0),
        season_day: tamed(day.season_day, 1.0, 0.0, 366.0),
    }
}

fn tamed_view(view: &View) -> View {
    View {
        life: match view.life {
            Life::Dead { days } => Life::Dead { days: tamed(days, 0.0, 0.0, 1_000.0) },
            living => living,
        },
        bees: tamed(view.bees, 0.0, 0.0, 1e5),
        brood: tamed(view.brood, 0.0, 0.0, 1e5),
        seams: tamed(view.seams, 0.0, 0.0, 60.0),
        spoilt: tamed(view.spoilt, 0.0, 0.0, 1.0),
        stores_kg: tamed(view.stores_kg, 0.0, 0.0, 150.0),
        other_kg: tamed(view.other_kg, 0.0, 0.0, 50.0),
        warm_c: tamed(view.warm_c, 0.0, -60.0, 60.0),
        cold_c: tamed(view.cold_c, 0.0, -60.0, 60.0),
        humidity: tamed(view.humidity, 0.8, 0.0, 1.0),
        rime_hours: tamed(view.rime_hours, 0.0, 0.0, 1e4),
        old_rime_hours: tamed(view.old_rime_hours, 0.0, 0.0, 1e4),
        damp: tamed(view.damp, 0.0, 0.0, 1.0),
        litter_outside: tamed(view.litter_outside, 0.0, 0.0, 1e4),
        litter_floor: tamed(view.litter_floor, 0.0, 0.0, 5e4),
        flight_hours: tamed(view.flight_hours, 0.0, 0.0, 24.0),
        confined_days: tamed(view.confined_days, 0.0, 0.0, 366.0),
        lid_resistance: tamed(view.lid_resistance, 1.0, 0.0, 50.0),
        own: Own {
            tare_kg: tamed(view.own.tare_kg, 20.0, 0.0, 150.0),
            side_share: tamed(view.own.side_share, 0.5, 0.0, 1.0),
            seen: tamed(view.own.seen, 0.5, 0.0, 1.0),
            ear: tamed(view.own.ear, 0.0, -6.0, 6.0),
        },
    }
}

/// What is no number is taken as `usual`; the rest is held within what can be.
fn tamed(x: f64, usual: f64, least: f64, most: f64) -> f64 {
    if x.is_nan() { usual } else { x.clamp(least, most) }
}
