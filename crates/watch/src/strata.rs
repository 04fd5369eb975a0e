//! Two populations, the living and the dead, weighed together and resampled apart.
//!
//! Living particles carry mass; what they lose in a day becomes dead particles drawn in proportion to it. Each stratum
//! is resampled only within itself, so neither can be wiped out by chance, however unlikely it has become.

use crate::weights::{effective, systematic};
use snowhum_units::Same;

/// The living: whatever a model holds for each of a fixed number of particles.
pub trait Population {
    /// Carries on these particles, one for each place.
    fn select(&mut self, ancestors: &[usize]);
}

impl<T: Clone> Population for Vec<T> {
    fn select(&mut self, ancestors: &[usize]) {
        *self = ancestors.iter().map(|&ancestor| self[ancestor].clone()).collect();
    }
}

/// Living and dead particles with their masses, which sum to one.
#[derive(Debug, Clone)]
pub struct Strata<A, D> {
    /// The living.
    pub alive: A,
    /// Their masses, in their order.
    pub alive_mass: Vec<f64>,
    /// The dead, each with its mass.
    pub dead: Vec<(D, f64)>,
}

/// A part of a living particle's mass that dies, and what it leaves.
#[derive(Debug, Clone)]
pub struct Loss<D> {
    /// Mass.
    pub mass: f64,
    /// What is left of it.
    pub remains: D,
}

/// What a reading did.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evidence {
    /// Natural logarithm of the reading's chance before it was made.
    pub log_evidence: f64,
    /// Whether nothing the model thought possible explains it; nothing was changed then.
    pub unexplained: bool,
}

/// Evidence below which a reading counts as explained by nothing, natural logarithm.
const UNEXPLAINED: f64 = -600.0;

impl<A: Population, D: Clone> Strata<A, D> {
    /// All alive, with equal masses.
    #[must_use]
    pub fn new(alive: A, count: usize) -> Self {
        Self { alive, alive_mass: vec![1.0 / count.max(1) as f64; count], dead: Vec::new() }
    }

    /// Chance of being alive.
    #[must_use]
    pub fn alive_share(&self) -> f64 {
        let alive: f64 = self.alive_mass.iter().sum();
        let dead: f64 = self.dead.iter().map(|(_, mass)| mass).sum();
        alive / (alive + dead).max(1e-300)
    }

    /// Adds the day's dead, at most `births` of them (and at least one) drawn in proportion to mass by the uniform `u`.
    /// The living must have lost the same mass already.
    pub fn bury(&mut self, losses: Vec<Loss<D>>, births: usize, u: f64) {
        let births = births.max(1);
        let losses: Vec<Loss<D>> = losses.into_iter().filter(|loss| loss.mass > 0.0).collect();
        if losses.len() <= births {
            self.dead.extend(losses.into_iter().map(|loss| (loss.remains, loss.mass)));
            return;
        }
        let masses: Vec<f64> = losses.iter().map(|loss| loss.mass).collect();
        let share = masses.iter().sum::<f64>() / births as f64;
        let drawn = systematic(&masses, births, u);
        self.dead.extend(drawn.into_iter().map(|place| (losses[place].remains.clone(), share)));
    }

    /// Thins the dead to `capacity` (at least one), if they are more.
    pub fn thin(&mut self, capacity: usize, u: f64) {
        let capacity = capacity.max(1);
        if self.dead.len() <= capacity {
            return;
        }
        let masses: Vec<f64> = self.dead.iter().map(|(_, mass)| *mass).collect();
        let share = masses.iter().sum::<f64>() / capacity as f64;
        let kept = systematic(&masses, capacity, u);
        self.dead = kept.into_iter().map(|place| (self.dead[place].0.clone(), share)).collect();
    }

    /// The chance of a reading before it is taken in, given as natural logarithms for every particle.
    #[must_use]
    pub fn evidence(&self, alive: &[f64], dead: &[f64]) -> Evidence {
        let none = Evidence { log_evidence: f64::NEG_INFINITY, unexplained: true };
        let Some(greatest) = self.greatest(alive, dead) else { return none };
        let all = self.held(alive, dead).map(|(mass, log)| mass * (log - greatest).same_exp()).sum::<f64>();
        let log_evidence = greatest + all.same_ln();
        if log_evidence.is_nan() {
            return none;
        }
        Evidence { log_evidence, unexplained: log_evidence < UNEXPLAINED }
    }

    /// Weighs every particle by a reading, given as natural logarithms of its chance. Nothing changes if nothing
    /// explains the reading.
    pub fn weigh(&mut self, alive: &[f64], dead: &[f64]) -> Evidence {
        let evidence = self.evidence(alive, dead);
        if evidence.unexplained {
            return evidence;
        }
        let weighed =
            |mass: f64, log: f64| if mass > 0.0 { mass * (log - evidence.log_evidence).same_exp() } else { 0.0 };
        for (mass, log) in self.alive_mass.iter_mut().zip(alive) {
            *mass = weighed(*mass, *log);
        }
        for ((_, mass), log) in self.dead.iter_mut().zip(dead) {
            *mass = weighed(*mass, *log);
        }
        evidence
    }

    /// Particles that hold mass, with what a reading says of each.
    fn held<'a>(&'a self, alive: &'a [f64], dead: &'a [f64]) -> impl Iterator<Item = (f64, f64)> + 'a {
        let alive = self.alive_mass.iter().copied().zip(alive.iter().copied());
        let dead = self.dead.iter().map(|(_, mass)| *mass).zip(dead.iter().copied());
        alive.chain(dead).filter(|(mass, _)| *mass > 0.0)
    }

    /// The greatest of a reading's logarithms. One of a particle without mass must not count: against it, all others
    /// could vanish.
    fn greatest(&self, alive: &[f64], dead: &[f64]) -> Option<f64> {
        let greatest = self.held(alive, dead).map(|(_, log)| log).fold(f64::NEG_INFINITY, f64::max);
        greatest.is_finite().then_some(greatest)
    }

    /// Effective number of the living.
    #[must_use]
    pub fn effective_alive(&self) -> f64 {
        effective(&self.alive_mass)
    }

    /// Resamples the living if fewer than half of them count; tells whether it did.
    pub fn renew(&mut self, u: f64) -> bool {
        let count = self.alive_mass.len();
        let sum: f64 = self.alive_mass.iter().sum();
        if sum <= 0.0 || self.effective_alive() >= 0.5 * count as f64 {
            return false;
        }
        self.resample(u);
        true
    }

    /// Resamples the living whatever they count, and says where each was; nothing changes where none has mass. A function
    /// of its own in the machine's code too, so that what it costs can be counted.
    #[inline(never)]
    pub(crate) fn resample(&mut self, u: f64) -> Vec<usize> {
        let count = self.alive_mass.len();
        let sum: f64 = self.alive_mass.iter().sum();
        if sum <= 0.0 {
            return (0..count).collect();
        }
        let ancestors = systematic(&self.alive_mass, count, u);
        self.alive.select(&ancestors);
        self.alive_mass = vec![sum / count as f64; count];
        ancestors
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strata() -> Strata<Vec<f64>, f64> {
        Strata { alive: vec![1.0, 2.0, 3.0], alive_mass: vec![0.0, 0.4, 0.2], dead: vec![(5.0, 0.4)] }
    }

    #[test]
    fn a_particle_without_mass_has_no_say_in_what_is_explained() {
        let mut strata = strata();
        let evidence = strata.weigh(&[900.0, 0.0, 0.0], &[0.0]);
        assert!(!evidence.unexplained && evidence.log_evidence.abs() < 1e-12, "{evidence:?}");
        assert!((strata.alive_share() - 0.6).abs() < 1e-12);
    }

    #[test]
    fn a_chance_that_is_not_a_number_changes_nothing() {
        let mut strata = strata();
        let evidence = strata.weigh(&[0.0, f64::NAN, 0.0], &[0.0]);
        assert!(evidence.unexplained);
        assert_eq!(strata.alive_mass, [0.0, 0.4, 0.2]);
    }

    #[test]
    fn burying_and_thinning_lose_no_mass() {
        for few in [0, 1, 2] {
            let mut strata = strata();
            strata.alive_mass = vec![0.0, 0.1, 0.1];
            let losses = [0.1, 0.2, 0.0, 0.1].map(|mass| Loss { mass, remains: mass }).to_vec();
            strata.bury(losses, few, 0.5);
            strata.thin(few, 0.5);
            let dead: f64 = strata.dead.iter().map(|(_, mass)| mass).sum();
            assert!((dead - 0.8).abs() < 1e-12, "{few}: {dead}");
            assert!((strata.alive_share() - 0.2).abs() < 1e-12);
        }
    }
}
