//! What particles show from outside.

use snowhum_apiary::{Hive, Sign};
use snowhum_units::Same;
use snowhum_winter::{Member, Members};

use crate::flock::Flock;
use crate::remains::Remains;
use crate::scene::Scene;
use crate::signs::{self, Hours, KINDS};
use crate::view::{Conditions, Life, View};

/// The hive round the particles, and the same hive without bees beside it.
#[derive(Debug, Clone)]
pub(crate) struct Showing {
    pub(crate) hive: Hive,
    pub(crate) empty: Members,
    pub(crate) hour: usize,
    lid_resistance: f64,
}

/// One look's signs on their day.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Look<'a> {
    pub(crate) scene: &'a Scene<'a>,
    pub(crate) day: &'a Conditions,
    pub(crate) seen: &'a [Sign],
    /// What other hives tell of the hour.
    pub(crate) hours: Hours,
}

impl Showing {
    pub(crate) fn new(hive: Hive, empty: Members) -> Self {
        let lid_resistance = lid_resistance(&hive);
        Self { hive, empty, hour: 0, lid_resistance }
    }

    /// The hive is another from now on.
    pub(crate) fn change(&mut self, hive: Hive) {
        self.lid_resistance = lid_resistance(&hive);
        self.hive = hive;
    }

    /// The empty hive on the weather path of a dead one.
    pub(crate) fn empty_on(&self, path: usize) -> Member {
        self.empty.member(path % self.empty.count())
    }

    /// What living particle `m` shows, with a queen or without.
    pub(crate) fn alive(&self, flock: &Flock, m: usize, life: Life) -> View {
        let member = flock.members.member(m);
        let kept = &flock.kept[m];
        let (brood, spared_kg) = match life {
            Life::Queenless => (0.0, kept.spared_kg),
            Life::Queenright | Life::Dead { .. } => (member.brood, 0.0),
        };
        View {
            life,
            bees: member.bees,
            brood,
            seams: member.frames_of_bees,
            spoilt: member.spoilt,
            stores_kg: member.stores_kg + spared_kg,
            other_kg: member.other_kg,
            warm_c: member.warm_c,
            cold_c: member.cold_c,
            humidity: member.humidity,
            rime_hours: flock.rime(m, &member),
            old_rime_hours: kept.old_rime_hours,
            damp: kept.damp,
            litter_outside: kept.litter.outside,
            litter_floor: kept.litter.floor,
            flight_hours: member.flight_hours,
            confined_days: kept.confined_days,
            lid_resistance: self.lid_resistance,
            own: kept.own,
        }
    }

    /// What a dead hive shows.
    pub(crate) fn dead(&self, remains: &Remains) -> View {
        let empty = self.empty_on(remains.path);
        View {
            life: Life::Dead { days: remains.days(self.hour) },
            bees: remains.bees,
            brood: 0.0,
            seams: 0.0,
            spoilt: remains.spoilt,
            stores_kg: remains.stores_kg,
            other_kg: empty.other_kg,
            warm_c: empty.warm_c,
            cold_c: empty.cold_c,
            humidity: empty.humidity,
            rime_hours: 0.0,
            old_rime_hours: remains.old_rime_hours,
            damp: 0.0,
            litter_outside: remains.litter.outside,
            litter_floor: remains.litter.floor,
            flight_hours: empty.flight_hours,
            confined_days: empty.confined_days,
            lid_resistance: self.lid_resistance,
            own: remains.own,
        }
    }

    /// Logarithms of a look's chance for the living, their queens summed out, and for the dead.
    pub(crate) fn chances(&self, look: &Look<'_>, flock: &Flock, dead: &[(Remains, f64)]) -> (Vec<f64>, Vec<f64>) {
        let living = (0..flock.kept.len()).map(|m| {
            let (right, less) = self.queen_chances(look, flock, m);
            log_sum(right, less)
        });
        (living.collect(), dead.iter().map(|(remains, _)| look.log_probability(&self.dead(remains))).collect())
    }

    /// Logarithms of the chance that living particle `m` has a queen and shows what was seen, and that it has none and
    /// does.
    pub(crate) fn queen_chances(&self, look: &Look<'_>, flock: &Flock, m: usize) -> (f64, f64) {
        let share = flock.queenright_share(m);
        let of = |share: f64, life: Life| share.same_ln() + look.log_probability(&self.alive(flock, m, life));
        (of(share, Life::Queenright), of(1.0 - share, Life::Queenless))
    }
}

impl Look<'_> {
    fn log_probability(&self, view: &View) -> f64 {
        self.hours.over(&self.in_each_hour(view))
    }

    pub(crate) fn in_each_hour(&self, view: &View) -> [f64; KINDS] {
        signs::visit_log_probabilities(self.seen, view, self.day, self.scene.parameters)
    }
}

/// Thermal resistance of a hive's lid, m² K/W.
fn lid_resistance(hive: &Hive) -> f64 {
    hive.lid.iter().map(|layer| layer.resistance().get()).sum()
}

fn log_sum(a: f64, b: f64) -> f64 {
    let greatest = a.max(b);
    if greatest.is_finite() {
        greatest + ((a - greatest).same_exp() + (b - greatest).same_exp()).same_ln()
    } else {
        greatest
    }
}
