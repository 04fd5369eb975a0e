//! What a day without a look does to an estimate: deaths, births among the dead, litter and rime.

use snowhum_figures::watch_looks::THICKEST_RIME;
use snowhum_winter::Cause;

use super::{Estimate, Purpose};
use crate::litter::{Litter, LitterDay, LitterLaw};
use crate::remains::{DeadLaw, Remains};
use crate::scene::Scene;
use crate::strata::Loss;
use crate::weights::systematic;

/// Dead particles born a day at most; the day's lost mass is shared among them.
const BIRTHS_A_DAY: usize = 6;

impl Estimate {
    /// Books the day just closed.
    pub(super) fn close_day(&mut self, scene: &Scene<'_>) {
        let today = DayOut::of(scene, self.place, self.showing.hour);
        self.keep_day(&today);
        let lost = self.book_fate();
        for at in 0..self.strata.dead.len() {
            let mut remains = self.strata.dead[at].0;
            self.age_remains(&today, &mut remains);
            self.strata.dead[at].0 = remains;
        }
        self.bury_day(&lost);
    }

    /// Litter and rime of the living.
    pub(crate) fn keep_day(&mut self, today: &DayOut) {
        let flock = &mut self.strata.alive;
        for (m, kept) in flock.kept.iter_mut().enumerate() {
            let member = flock.members.member(m);
            kept.litter.day(
                &today.litter,
                &LitterDay {
                    died: member.died,
                    flight_hours: member.flight_hours,
                    carried: true,
                    ..today.on(flock.members.path(m))
                },
            );
            kept.rime_hours = (kept.rime_hours + member.rime_hours).min(THICKEST_RIME);
            kept.damp = member.damp_hours / 24.0;
            kept.confined_days = member.confined_days;
            kept.spare(&member, today.brood_cost);
        }
    }

    /// Takes the day's deaths from the living; returns the mass lost by member and cause.
    fn book_fate(&mut self) -> Vec<f64> {
        let mut lost = Vec::with_capacity(self.sizes.alive * Cause::ALL.len());
        for (m, mass) in self.strata.alive_mass.iter_mut().enumerate() {
            let flock = &mut self.strata.alive;
            let (alive, ended) = flock.members.settle_fate(m);
            flock.kept[m].queenless = flock.members.queens(m).1;
            lost.extend(ended.by_cause().map(|(_, chance)| *mass * chance));
            *mass *= alive;
        }
        lost
    }

    /// The day passes over a dead hive.
    pub(crate) fn age_remains(&self, today: &DayOut, remains: &mut Remains) {
        let flight_hours = self.showing.empty_on(remains.path).flight_hours;
        let day = LitterDay { flight_hours, ..today.on(remains.path) };
        remains.day(&today.dead_hive, &today.litter, self.showing.hour, &day);
    }

    /// Turns lost mass into dead particles, drawn in proportion to it.
    fn bury_day(&mut self, lost: &[f64]) {
        let sum: f64 = lost.iter().sum();
        if sum <= 0.0 {
            return;
        }
        let day = (self.showing.hour / 24) as u32;
        let [birth, thinning, ..] = self.key.uniforms([day, 0, 0, Purpose::Births as u32]);
        let share = sum / BIRTHS_A_DAY as f64;
        let born: Vec<Loss<Remains>> = systematic(lost, BIRTHS_A_DAY, birth)
            .into_iter()
            .map(|at| Loss {
                mass: share,
                remains: self.remains_of(at / Cause::ALL.len(), Cause::ALL[at % Cause::ALL.len()]),
            })
            .collect();
        self.strata.bury(born, BIRTHS_A_DAY, 0.5);
        if self.strata.dead.len() > 2 * self.sizes.dead {
            self.strata.thin(self.sizes.dead, thinning);
        }
    }

    /// What living particle `m` leaves if it ends now.
    pub(crate) fn remains_of(&self, m: usize, cause: Cause) -> Remains {
        let flock = &self.strata.alive;
        let member = flock.members.member(m);
        let kept = &flock.kept[m];
        Remains {
            hour: self.showing.hour,
            cause,
            bees: member.bees,
            spoilt: member.spoilt,
            stores_kg: member.stores_kg,
            own: kept.own,
            // The last bees lie where the cluster fell: on the floor and in the combs.
            litter: Litter { floor: kept.litter.floor + member.bees, ..kept.litter },
            old_rime_hours: kept.rime_hours + kept.old_rime_hours,
            path: flock.members.path(m),
        }
    }
}

/// A day on one weather path.
#[derive(Debug, Clone, Copy, Default)]
struct PathDay {
    fresh_snow_m: f64,
    snow_m: f64,
    air_c: f64,
}

/// A day as it was outside, and the laws of what lies about.
pub(crate) struct DayOut {
    litter: LitterLaw,
    dead_hive: DeadLaw,
    brood_cost: f64,
    /// Whether the hive stood indoors.
    indoors: bool,
    /// What lay and fell, path by path.
    paths: Vec<PathDay>,
}

impl DayOut {
    /// The day that ends at `hour`, at the hive of the colony at a place.
    pub(crate) fn of(scene: &Scene<'_>, place: usize, hour: usize) -> Self {
        let depth =
            |hour: usize, path: usize| scene.outside(place, hour, path).map_or(0.0, |outside| outside.snow.get());
        let air = |path: usize| {
            let hours = (hour.saturating_sub(24)..hour).step_by(3);
            let sum: f64 = hours.filter_map(|hour| scene.outside(place, hour, path)).map(|o| o.air.celsius()).sum();
            sum / 8.0
        };
        let of = |path: usize| {
            let snow_m = depth(hour.saturating_sub(1), path);
            let fresh_snow_m = (snow_m - depth(hour.saturating_sub(24), path)).max(0.0);
            PathDay { fresh_snow_m, snow_m, air_c: air(path) }
        };
        Self {
            litter: scene.parameters.litter(),
            dead_hive: scene.parameters.dead_hive(),
            brood_cost: scene.parameters.brood_cost.value,
            indoors: scene.is_indoors(place, hour),
            paths: (0..scene.yard.environment.paths()).map(of).collect(),
        }
    }

    /// The day on a weather path, before anybody died or flew.
    fn on(&self, path: usize) -> LitterDay {
        let PathDay { fresh_snow_m, snow_m, air_c } = self.paths.get(path).copied().unwrap_or_default();
        LitterDay { died: 0.0, flight_hours: 0.0, carried: false, indoors: self.indoors, fresh_snow_m, snow_m, air_c }
    }
}
