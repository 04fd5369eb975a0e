//! What particles show from outside.

use snowhum_apiary::{Hive, Sign};
use snowhum_units::Same;
use snowhum_winter::{Member, Members};

use crate::flock::Flock;
use crate::remains::Remains;
use crate::scene::Scene;
use crate::signs::{self, Hours, KINDS};
use crate::view::{Conditions, Life, View};
use crate::weights::log_sum;

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

    /// What a look says of every particle.
    pub(crate) fn heard(&self, look: &Look<'_>, flock: &Flock, dead: &[(Remains, f64)]) -> Heard {
        let living = (0..flock.kept.len()).map(|m| {
            let share = flock.queenright_share(m);
            [(share, Life::Queenright), (1.0 - share, Life::Queenless)].map(|(share, life)| {
                let log = share.same_ln();
                look.in_each_hour(&self.alive(flock, m, life)).map(|chance| log + chance)
            })
        });
        Heard {
            living: living.collect(),
            dead: dead.iter().map(|(remains, _)| look.in_each_hour(&self.dead(remains))).collect(),
        }
    }
}

impl Look<'_> {
    fn in_each_hour(&self, view: &View) -> [f64; KINDS] {
        signs::visit_log_probabilities(self.seen, view, self.day, self.scene.parameters)
    }
}

/// What a look says of every particle: logarithms of its chance in each kind of hour.
#[derive(Debug)]
pub(crate) struct Heard {
    /// With a queen, and without, each with the chance of that.
    living: Vec<[[f64; KINDS]; 2]>,
    dead: Vec<[f64; KINDS]>,
}

impl Heard {
    /// Logarithms of the look's chance for the living, their queens summed out, and for the dead.
    pub(crate) fn chances(&self, hours: &Hours) -> (Vec<f64>, Vec<f64>) {
        let living = (0..self.living.len()).map(|m| {
            let (right, less) = self.of_queens(hours, m);
            log_sum(&[right, less])
        });
        (living.collect(), self.dead.iter().map(|chances| hours.over(chances)).collect())
    }

    /// Logarithms of the chance that living particle `m` has a queen and shows what was seen, and that it has none and
    /// does.
    pub(crate) fn of_queens(&self, hours: &Hours, m: usize) -> (f64, f64) {
        let [right, less] = &self.living[m];
        (hours.over(right), hours.over(less))
    }

    /// What the look tells of the hour: the logarithm of its chance in each kind, over particles of these masses.
    pub(crate) fn of_the_hour<'a>(&self, alive: &[f64], dead: impl Iterator<Item = &'a f64>) -> [f64; KINDS] {
        let (mut chances, mut all) = ([0.0; KINDS], 0.0);
        let mut add = |mass: f64, logs: &[f64; KINDS]| {
            chances.iter_mut().zip(logs).for_each(|(chance, log)| *chance += mass * log.same_exp());
        };
        for (mass, [right, less]) in alive.iter().zip(&self.living) {
            add(*mass, right);
            add(*mass, less);
            all += mass;
        }
        for (mass, logs) in dead.zip(&self.dead) {
            add(*mass, logs);
            all += mass;
        }
        chances.map(|chance| (chance / all).same_ln())
    }
}

/// Thermal resistance of a hive's lid, m² K/W.
fn lid_resistance(hive: &Hive) -> f64 {
    hive.lid.iter().map(|layer| layer.resistance().get()).sum()
}
