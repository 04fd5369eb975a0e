//! Whole winters, from the first of October to the middle of May.

use std::ops::Range;

use snowhum_apiary::Colony;
use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::{Fraction, Kilogram};
use snowhum_weather::Ensemble;
use snowhum_winter::{
    Cause, Daily, Environment, HiveDaily, Housed, LANES, MemberEnd, Parameters, Record, Schedule, Settings, Trajectory,
    Yard, YardShelter, run,
};

/// Days of a run.
pub(crate) const DAYS: usize = 222;
/// Days of the run, day 0 being 1 October.
pub(crate) const NOVEMBER_TO_JANUARY: Range<usize> = 31..123;
pub(crate) const FEBRUARY_TO_APRIL: Range<usize> = 123..212;
pub(crate) const DECEMBER_TO_JANUARY: Range<usize> = 61..123;
pub(crate) const MARCH_TO_APRIL: Range<usize> = 151..212;

/// A run of one colony, as means over its members.
pub(crate) struct Winter {
    trajectory: Trajectory,
}

impl Winter {
    /// Two deeps with a foam lid under changeable weather about a yearly mean.
    pub(crate) fn of(parameters: &Parameters, colony: Colony, mean_c: f64) -> Self {
        const MEMBERS: usize = 64;
        let settings = Settings { members: MEMBERS, seed: 11, record: Record::Days };
        Self { trajectory: go(parameters, colony, &changeable(mean_c, 24 * DAYS, 2 * LANES), settings) }
    }

    /// A healthy colony of so many bees with plenty of food.
    pub(crate) fn fed(parameters: &Parameters, bees: f64, mean_c: f64) -> Self {
        Self::of(parameters, colony(bees, 26.0), mean_c)
    }

    /// Mean over the members on a day.
    pub(crate) fn on(&self, what: Daily, day: usize) -> f64 {
        let values = self.trajectory.day(what, day);
        let members = values.len() as f64;
        values.map(f64::from).sum::<f64>() / members
    }

    /// Sum over days of the mean over the members.
    pub(crate) fn sum(&self, what: Daily, days: Range<usize>) -> f64 {
        days.map(|day| self.on(what, day)).sum()
    }

    /// Mean over days.
    pub(crate) fn mean(&self, what: Daily, days: Range<usize>) -> f64 {
        let count = days.len() as f64;
        self.sum(what, days) / count
    }

    /// Share of colonies lost.
    pub(crate) fn lost(&self) -> f64 {
        Cause::ALL.iter().map(|cause| self.ended(*cause)).sum()
    }

    /// Share of colonies lost by one cause.
    pub(crate) fn ended(&self, cause: Cause) -> f64 {
        let of =
            |end: &MemberEnd| end.ended.by_cause().iter().filter(|(by, _)| *by == cause).map(|(_, p)| p).sum::<f64>();
        self.trajectory.ends.iter().map(of).sum::<f64>() / self.trajectory.members() as f64
    }

    /// Food used by the end that one in ten members passes, kg.
    pub(crate) fn used_by_nine_in_ten(&self) -> f64 {
        let mut used: Vec<f64> = self.trajectory.ends.iter().map(|end| end.used.get()).collect();
        used.sort_by(f64::total_cmp);
        used.get(used.len() * 9 / 10).copied().unwrap_or(f64::NAN)
    }

    /// Least over days of the mean over the members.
    pub(crate) fn least(&self, what: Daily, days: Range<usize>) -> f64 {
        days.map(|day| self.on(what, day)).fold(f64::INFINITY, f64::min)
    }
}

/// What a colony's books say of some days of a run, as means over members.
#[derive(Debug, Default)]
pub(crate) struct Books {
    /// Food eaten, kg.
    pub(crate) eaten: f64,
    /// Food gone from the combs, kg.
    pub(crate) gone: f64,
    /// Heat given off, J.
    pub(crate) heat: f64,
}

impl Books {
    /// Over `days`, of members run one by one, each under weather of its own: heat is kept as a mean over the living, and
    /// of a single member that is its own. Food is read at the ends of runs, which are not rounded for keeping.
    pub(crate) fn of(parameters: &Parameters, colony: &Colony, mean_c: f64, days: &Range<usize>) -> Self {
        const MEMBERS: usize = 64;
        let weather = [days.start, days.end].map(|day| changeable(mean_c, 24 * day, MEMBERS));
        let mut books = Self::default();
        for member in 0..MEMBERS {
            let settings = Settings { members: 1, seed: member as u64, record: Record::Days };
            let [before, after] = weather.each_ref().map(|all| {
                let own = Ensemble {
                    start: all.start,
                    paths: vec![all.paths[member].clone()],
                    provenance: all.provenance.clone(),
                };
                go(parameters, colony.clone(), &own, settings)
            });
            let watts = days.clone().map(|day| after.hive(HiveDaily::Heat, [day]).unwrap_or(f64::NAN)).sum::<f64>();
            books.heat += watts * 86_400.0 / MEMBERS as f64;
            let share =
                |of: fn(&MemberEnd) -> Kilogram| (of(&after.ends[0]) - of(&before.ends[0])).get() / MEMBERS as f64;
            books.eaten += share(|end| end.used);
            books.gone -= share(|end| end.stores);
        }
        books
    }
}

/// Two deeps with a foam lid under some weather.
fn go(parameters: &Parameters, colony: Colony, weather: &Ensemble, settings: Settings) -> Trajectory {
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let environment = Environment::yard(weather, place(), shelter, jiff::civil::date(2025, 10, 1));
    let hive = langstroth(Dress { lid_foam_mm: 50.0, ..Dress::BARE });
    let colonies = [Housed { colony, hive, neighbour: None, stays: Vec::new() }];
    let yard = Yard { environment: &environment, parameters, colonies: &colonies };
    run(&yard, &Schedule::default(), settings).swap_remove(0)
}
