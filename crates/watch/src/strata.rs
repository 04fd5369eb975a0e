//! Two populations, the living and the dead, weighed together and resampled apart.
//!
//! Living particles carry mass; what they lose in a day becomes dead particles drawn in proportion to it. Each stratum
//! is resampled only within itself, so neither can be wiped out by chance, however unlikely it has become.

use crate::weights::{effective, systematic};

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

    /// Adds the day's dead, at most `births` of them drawn in proportion to mass by the uniform `u`. The living must
    /// have lost the same mass already.
    pub fn bury(&mut self, losses: Vec<Loss<D>>, births: usize, u: f64) {
        let losses: Vec<Loss<D>> = losses.into_iter().filter(|loss| loss.mass > 0.0).collect();
        if losses.len() <= births {
            self.dead.extend(losses.into_iter().map(|loss| (loss.remains, loss.mass)));
            return;
        }
        let masses: Vec<f64> = losses.iter().map(|loss| loss.mass).collect();
        let share = masses.iter().sum::<f64>() / births.max(1) as f64;
        let drawn = systematic(&masses, births, u);
        self.dead.extend(drawn.into_iter().map(|place| (losses[place].remains.clone(), share)));
    }

    /// Thins the dead to `capacity`, if they are more.
    pub fn thin(&mut self, capacity: usize, u: f64) {
        if self.dead.len() <= capacity {
            return;
        }
        let masses: Vec<f64> = self.dead.iter().map(|(_, mass)| *mass).collect();
        let share = masses.iter().sum::<f64>() / capacity.max(1) as f64;
        let kept = systematic(&masses, capacity, u);
        self.dead = kept.into_iter().map(|place| (self.dead[place].0.clone(), share)).collect();
    }

    /// Weighs every particle by a reading, given as natural logarithms of its chance.
    pub fn weigh(&mut self, alive: &[f64], dead: &[f64]) -> Evidence {
        let greatest = alive.iter().chain(dead).copied().fold(f64::NEG_INFINITY, f64::max);
        let none = Evidence { log_evidence: f64::NEG_INFINITY, unexplained: true };
        if !greatest.is_finite() {
            return none;
        }
        let weighed = |mass: f64, log: f64| if mass > 0.0 { mass * (log - greatest).exp() } else { 0.0 };
        let alive_mass: Vec<f64> = self.alive_mass.iter().zip(alive).map(|(m, log)| weighed(*m, *log)).collect();
        let dead_mass: Vec<f64> = self.dead.iter().zip(dead).map(|((_, m), log)| weighed(*m, *log)).collect();
        let all: f64 = alive_mass.iter().sum::<f64>() + dead_mass.iter().sum::<f64>();
        let log_evidence = greatest + all.max(1e-300).ln();
        if log_evidence < UNEXPLAINED || all <= 0.0 {
            return none;
        }
        for (mass, weighed) in self.alive_mass.iter_mut().zip(&alive_mass) {
            *mass = weighed / all;
        }
        for ((_, mass), weighed) in self.dead.iter_mut().zip(&dead_mass) {
            *mass = weighed / all;
        }
        Evidence { log_evidence, unexplained: false }
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
        let ancestors = systematic(&self.alive_mass, count, u);
        self.alive.select(&ancestors);
        self.alive_mass = vec![sum / count as f64; count];
        true
    }
}
