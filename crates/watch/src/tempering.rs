//! Sharp readings taken in steps: a likelihood raised to growing powers, the living resampled and moved on between.
//!
//! A reading far more exact than what is known leaves all mass on a few of the living. Taken a power at a time, each
//! step keeps half of them, and the caller spreads the copies again before the next. Practice of Del Moral, Doucet and
//! Jasra, "Sequential Monte Carlo samplers", J. R. Statist. Soc. B 68 (2006), and Chopin and Papaspiliopoulos, An
//! Introduction to Sequential Monte Carlo (2020) (both from memory). The dead are weighed along but never resampled:
//! they do not move, so copies of them would teach nothing.

use crate::strata::{Evidence, Population, Strata};
use crate::weights::effective;
use snowhum_figures::watch_looks::WIDENED;
use snowhum_units::Same;

/// How a reading was taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Taken {
    /// At once.
    AtOnce,
    /// In so many steps.
    InSteps(usize),
    /// Nothing thought possible explains it, so it was believed a tenth as much (less, if even that could not be taken
    /// in), in so many steps. To be told.
    Widened(usize),
    /// Nothing at all explains it, and nothing was changed. To be told.
    Refused,
}

/// What a reading, sharp or not, did.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighed {
    /// The chance of the reading itself, even where a widened one was taken, and whether anything explains it.
    pub evidence: Evidence,
    /// How it was taken in.
    pub taken: Taken,
}

/// A step on the way to the whole likelihood, for the caller to move the living by.
#[derive(Debug)]
pub struct Bridge<'a> {
    /// Number of the step, from 0.
    pub step: usize,
    /// Power of the likelihood that the living stand for now: a move must leave prior × likelihood^power unchanged.
    pub power: f64,
    /// Where each of the living was before resampling.
    pub ancestors: &'a [usize],
}

/// Share of the living that must count after a reading taken at once.
const TOO_FEW: f64 = 0.1;
/// Share of them that is to count after a step.
const KEPT: f64 = 0.5;
/// Most steps.
const MOST_STEPS: usize = 6;
/// Halvings in the search for a power.
const HALVINGS: usize = 50;

/// Weighs by a reading, in two to six steps if it is so sharp that fewer than a tenth of the living would count after.
///
/// `log_likelihoods` gives the logarithms of the reading's chance for the living and for the dead; it is asked again
/// after every move. `rejuvenate` moves the living after each resampling, the last one included. `uniform` gives the
/// uniform draw for a step's resampling.
pub fn weigh_sharply<A: Population, D: Clone>(
    strata: &mut Strata<A, D>,
    mut log_likelihoods: impl FnMut(&A, &[(D, f64)]) -> (Vec<f64>, Vec<f64>),
    mut rejuvenate: impl FnMut(&mut A, &Bridge<'_>),
    mut uniform: impl FnMut(usize) -> f64,
) -> Weighed {
    let (alive, dead) = log_likelihoods(&strata.alive, &strata.dead);
    let evidence = strata.evidence(&alive, &dead);
    if !evidence.unexplained && enough(&strata.alive_mass, &alive, 1.0) {
        return Weighed { evidence: strata.weigh(&alive, &dead), taken: Taken::AtOnce };
    }
    let whole = if evidence.unexplained { WIDENED } else { 1.0 };
    let (mut power, mut log_evidence) = (0.0, 0.0);
    let mut logs = (alive, dead);
    for step in 0..MOST_STEPS {
        let rest = whole - power;
        let part = if step + 1 == MOST_STEPS { rest } else { next_part(&strata.alive_mass, &logs.0, rest) };
        let scaled = |logs: &[f64]| logs.iter().map(|log| part * log).collect::<Vec<f64>>();
        let said = strata.weigh(&scaled(&logs.0), &scaled(&logs.1));
        if said.unexplained {
            let taken = if step == 0 { Taken::Refused } else { Taken::Widened(step) };
            return Weighed { evidence: Evidence { unexplained: true, ..evidence }, taken };
        }
        log_evidence += said.log_evidence;
        power = if part < rest { power + part } else { whole };
        let ancestors = strata.resample(uniform(step));
        rejuvenate(&mut strata.alive, &Bridge { step, power, ancestors: &ancestors });
        if power >= whole {
            let taken = if evidence.unexplained { Taken::Widened(step + 1) } else { Taken::InSteps(step + 1) };
            let log_evidence = if evidence.unexplained { evidence.log_evidence } else { log_evidence };
            return Weighed { evidence: Evidence { log_evidence, ..evidence }, taken };
        }
        logs = log_likelihoods(&strata.alive, &strata.dead);
    }
    Weighed { evidence, taken: Taken::Refused }
}

/// Whether enough of the living count once this power of the likelihood is taken in, or none has mass at all.
fn enough(mass: &[f64], logs: &[f64], power: f64) -> bool {
    let count = counting(mass, logs, power);
    count <= 0.0 || count >= TOO_FEW * mass.len() as f64
}

/// Effective number of the living after a power of the likelihood.
fn counting(mass: &[f64], logs: &[f64], power: f64) -> f64 {
    let held = || mass.iter().zip(logs).filter(|(mass, _)| **mass > 0.0);
    let greatest = held().map(|(_, log)| *log).fold(f64::NEG_INFINITY, f64::max);
    if !greatest.is_finite() {
        return 0.0;
    }
    let weighed: Vec<f64> = held().map(|(mass, log)| mass * (power * (log - greatest)).same_exp()).collect();
    effective(&weighed)
}

/// The power that leaves half of the living counting, at most the rest.
fn next_part(mass: &[f64], logs: &[f64], rest: f64) -> f64 {
    let aim = KEPT * mass.len() as f64;
    let count = counting(mass, logs, rest);
    if count <= 0.0 || count >= aim {
        return rest;
    }
    let (mut low, mut high) = (0.0, rest);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if counting(mass, logs, middle) >= aim {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}
