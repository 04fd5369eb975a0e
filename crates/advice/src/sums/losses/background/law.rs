//! The law, and its turning round by Bayes.
//!
//! Of `n` colonies in winter `w` each is lost with the chance `1 - exp(-hazard * exp(yard + year_w))`; `yard` is normal
//! with the spread between yards, each `year_w` with that between years. The parameters are uncertain too: their joint
//! draws where there are any, else their ranges, independent of each other.
//!
//! Everything lies on one grid of the logarithm of the hazard, equally spaced: for smooth bells the plain sum over such a
//! grid is exact to many digits (Trefethen and Weideman 2014, SIAM Review 56:385), also where a large yard's likelihood is
//! so narrow that a rule of few nodes would step over it.

use serde::{Deserialize, Serialize};
use snowhum_units::Range;
use snowhum_units::Same;
use snowhum_winter::{JointDraw, Parameters};

/// The grid: logarithm of the hazard over a winter, from one in a million to certain death.
const LEAST: f64 = -14.0;
const STEP: f64 = 0.05;
const POINTS: usize = 441;
/// Spreads of a bell beyond which it is nothing.
const REACH: f64 = 8.0;
/// Standard deviates at which a range is looked at: 11 from -4 to 4.
const DEVIATES: i32 = 5;
const DEVIATE: f64 = 0.8;
/// Joint draws that are used, evenly taken of all.
const MOST_DRAWS: usize = 256;
/// The highest background the winter model lets a draw have.
const HIGHEST: f64 = 0.9;
/// Logarithm of what is nothing.
const NOTHING: f64 = -700.0;

/// One winter of a yard, as far as nobody names what killed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct OwnWinter {
    /// Colonies that lived or died of what nobody names; those that mites, hunger, a queen or a disaster took are not of
    /// them, nor those sold or united.
    pub at_risk: u32,
    /// Of them dead.
    pub lost: u32,
    /// Of the dead, those for which the record has no cause.
    pub cause_not_told: u32,
}

/// A yard's background.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Learnt {
    /// Chance that a colony is lost over a winter in a middling year.
    pub chance: Range<f64>,
    /// The yard's part of it.
    pub yard: YardEffect,
}

/// By how much the logarithm of a yard's hazard differs from a middling yard's.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct YardEffect {
    /// Mean.
    pub mean: f64,
    /// Standard deviation.
    pub sd: f64,
}

/// One way the parameters may be.
#[derive(Debug, Clone, Copy)]
struct Draw {
    weight: f64,
    /// Logarithm of the hazard in a middling year and yard.
    middle: f64,
    by_year: f64,
    by_yard: f64,
}

/// What is known of a yard after its winters; of a yard like any other after none.
#[must_use]
pub fn learnt(parameters: &Parameters, winters: &[OwnWinter]) -> Learnt {
    let winters: Vec<Vec<f64>> = winters.iter().map(likelihood).collect();
    let mut draws = draws(parameters);
    draws.sort_by(|a, b| a.by_year.total_cmp(&b.by_year));
    let alike: Vec<&[Draw]> = draws.chunk_by(|a, b| a.by_year.to_bits() == b.by_year.to_bits()).collect();
    let evidence: Vec<Vec<f64>> = alike.iter().map(|draws| evidence(&winters, draws[0].by_year)).collect();
    let highest = evidence.iter().flatten().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut mass = vec![0.0; POINTS];
    let [mut sum, mut first, mut second] = [0.0; 3];
    for (draws, evidence) in alike.into_iter().zip(&evidence) {
        for draw in draws {
            let (from, bell) = bell(draw.middle, draw.by_yard);
            for (at, share) in (from..).zip(bell) {
                let one = draw.weight * share * (evidence[at] - highest).same_exp();
                let yard = level(at) - draw.middle;
                mass[at] += one;
                sum += one;
                first += one * yard;
                second += one * yard * yard;
            }
        }
    }
    let mean = first / sum;
    let chance = |q: f64| lost_at(quantile(&mass, q * sum));
    Learnt {
        chance: Range { p10: chance(0.1), p50: chance(0.5), p90: chance(0.9) },
        yard: YardEffect { mean, sd: (second / sum - mean * mean).max(0.0).sqrt() },
    }
}

/// Joint draws where real winters gave some, else every range by itself.
fn draws(p: &Parameters) -> Vec<Draw> {
    let draw = |weight: f64, [loss, year, yard]: [f64; 3]| Draw {
        weight,
        middle: (-(-p.background_loss.at(loss).min(HIGHEST)).same_ln_1p()).same_ln(),
        by_year: p.background_by_year.at(year),
        by_yard: p.background_by_yard.at(yard),
    };
    let rows = &p.joint.rows;
    if !rows.is_empty() {
        let rows = rows.iter().step_by(rows.len().div_ceil(MOST_DRAWS)).map(|row| JointDraw::from_row(row));
        return rows
            .map(|row| draw(1.0, [row.background_loss, row.background_by_year, row.background_by_yard]))
            .collect();
    }
    let deviates: Vec<f64> = (-DEVIATES..=DEVIATES).map(|at| DEVIATE * f64::from(at)).collect();
    let mut draws = Vec::with_capacity(deviates.len().pow(3));
    for year in &deviates {
        for yard in &deviates {
            for loss in &deviates {
                let weight = (-0.5 * (year * year + yard * yard + loss * loss)).same_exp();
                draws.push(draw(weight, [*loss, *year, *yard]));
            }
        }
    }
    draws
}

/// Logarithm of the chance of all winters at each level of the yard, each winter's year averaged over.
fn evidence(winters: &[Vec<f64>], by_year: f64) -> Vec<f64> {
    let at = |at: usize| {
        let (from, bell) = bell(level(at), by_year);
        let one = |winter: &Vec<f64>| {
            let mean: f64 = winter[from..].iter().zip(&bell).map(|(likelihood, share)| likelihood * share).sum();
            mean.same_ln().max(NOTHING)
        };
        winters.iter().map(one).sum()
    };
    (0..POINTS).map(at).collect()
}

/// Chance of a winter's count at each hazard, the highest being one.
fn likelihood(winter: &OwnWinter) -> Vec<f64> {
    let (lost, lived) = (f64::from(winter.lost), f64::from(winter.at_risk.saturating_sub(winter.lost)));
    let log = |at: usize| {
        // Nobody lost says nothing of a chance of none, whose logarithm would be multiplied by zero.
        let dead = if lost > 0.0 { lost * lost_at(level(at)).same_ln() } else { 0.0 };
        dead - lived * level(at).same_exp()
    };
    let logs: Vec<f64> = (0..POINTS).map(log).collect();
    let highest = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    logs.into_iter().map(|log| (log - highest).same_exp()).collect()
}

/// Shares of a normal law on the grid, which sum to one, from the first point that has any.
fn bell(middle: f64, spread: f64) -> (usize, Vec<f64>) {
    // A spread well under the step is the nearest point of the grid.
    let spread = spread.max(0.2 * STEP);
    let place = |level: f64| ((level - LEAST) / STEP).round().clamp(0.0, (POINTS - 1) as f64) as usize;
    let (from, to) = (place(middle - REACH * spread), place(middle + REACH * spread));
    let share = |at: usize| (-0.5 * ((level(at) - middle) / spread).powi(2)).same_exp();
    let shares: Vec<f64> = (from..=to).map(share).collect();
    let sum: f64 = shares.iter().sum();
    (from, shares.into_iter().map(|share| share / sum).collect())
}

fn level(at: usize) -> f64 {
    LEAST + STEP * at as f64
}

/// Chance of being lost at a level of the hazard.
fn lost_at(level: f64) -> f64 {
    -(-level.same_exp()).same_exp_m1()
}

/// The level below which so much of the mass lies; each point's mass lies evenly over its step.
fn quantile(mass: &[f64], wanted: f64) -> f64 {
    let mut below = 0.0;
    for (at, one) in mass.iter().enumerate() {
        if below + one >= wanted && *one > 0.0 {
            return level(at) + STEP * ((wanted - below) / one - 0.5);
        }
        below += one;
    }
    level(mass.len().saturating_sub(1))
}
