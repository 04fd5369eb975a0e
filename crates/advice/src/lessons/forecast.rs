//! What was foretold in autumn against what happened.
//!
//! Log score: the mean of -ln of the chance that was given to what came about; smaller is better (Good 1952, J. R. Stat.
//! Soc. B 14:107). Brier score: the mean squared distance of chance and outcome (Brier 1950, Mon. Weather Rev. 78:1). The
//! base rate stands for one who knows nothing of the yard.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, lessons as say};
use snowhum_units::Same;

use super::lines::Parameters;
use crate::statistics::rounded;

/// A chance given in autumn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Forecast {
    /// The colony.
    pub colony: String,
    /// Chance of being alive in spring.
    pub alive: f64,
}

/// Forecasts scored.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ForecastScore {
    /// Each colony that could be scored.
    pub colonies: Vec<Scored>,
    /// Mean log score of the forecasts; smaller is better.
    pub log_score: f64,
    /// That of the base rate.
    pub base_log_score: f64,
    /// Where the log score would lie in 9 of 10 winters if every chance were right and colonies ended independently.
    pub log_score_if_right: [f64; 2],
    /// Mean Brier score of the forecasts.
    pub brier: f64,
    /// That of the base rate.
    pub base_brier: f64,
    /// Chance of being alive that the base rate gives each colony.
    pub base_alive: f64,
    /// Where the base rate comes from.
    pub base_source: String,
    /// Hives like these that it would take to tell such forecasts from the base rate; none if they say the same.
    pub hives_needed: Option<u32>,
    /// What to make of it.
    pub say: Vec<Message>,
}

/// A colony's forecast and outcome.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Scored {
    /// The colony.
    pub colony: String,
    /// Chance of being alive in spring, as foretold.
    pub foretold_alive: f64,
    /// Whether it was.
    pub alive: bool,
    /// Whether it was fed or its hive changed after that day: the forecast is for a hive left alone.
    pub helped: bool,
}

/// A forecast whose outcome is known.
#[derive(Debug, Clone)]
pub(super) struct Known {
    pub(super) forecast: Forecast,
    pub(super) alive: bool,
    pub(super) helped: bool,
}

/// Colonies up to which every possible winter is counted out.
const COUNTED_OUT: usize = 12;
/// Standard errors by which a difference is told.
const TOLD_APART: f64 = 1.645;

/// Scores forecasts of colonies whose outcome is known; none for none.
pub(super) fn score(known: &[Known], lines: &Parameters) -> Option<ForecastScore> {
    if known.is_empty() {
        return None;
    }
    let least = lines.least_chance.value;
    let chances: Vec<f64> = known.iter().map(|one| one.forecast.alive.clamp(least, 1.0 - least)).collect();
    let base = 1.0 - lines.base_rate.value;
    let mean = |of: &dyn Fn(f64, bool) -> f64, chance: &dyn Fn(usize) -> f64| {
        let sum: f64 = known.iter().enumerate().map(|(at, one)| of(chance(at), one.alive)).sum();
        sum / known.len() as f64
    };
    let (own, same) = (|at: usize| chances[at], |_: usize| base);
    let (log_score, base_log_score) = (mean(&surprise, &own), mean(&surprise, &same));
    let if_right = if_right(&chances);
    let hives_needed = hives_needed(&chances, base);
    let scored = |one: &Known| Scored {
        colony: one.forecast.colony.clone(),
        foretold_alive: rounded(one.forecast.alive, 3),
        alive: one.alive,
        helped: one.helped,
    };
    let mut score = ForecastScore {
        colonies: known.iter().map(scored).collect(),
        log_score: rounded(log_score, 3),
        base_log_score: rounded(base_log_score, 3),
        log_score_if_right: if_right.map(|one| rounded(one, 3)),
        brier: rounded(mean(&brier, &own), 3),
        base_brier: rounded(mean(&brier, &same), 3),
        base_alive: base,
        base_source: lines.base_rate.source.clone(),
        hives_needed,
        say: Vec::new(),
    };
    score.say = said(&score);
    Some(score)
}

fn surprise(alive: f64, lived: bool) -> f64 {
    -(if lived { alive } else { 1.0 - alive }).same_ln()
}

fn brier(alive: f64, lived: bool) -> f64 {
    (alive - f64::from(u8::from(lived))).powi(2)
}

/// One in twenty below and above of the mean log score under the forecasts' own chances.
fn if_right(chances: &[f64]) -> [f64; 2] {
    let n = chances.len() as f64;
    if chances.len() > COUNTED_OUT {
        let mean: f64 = chances.iter().map(|p| p * surprise(*p, true) + (1.0 - p) * surprise(*p, false)).sum();
        let variance: f64 = chances.iter().map(|p| p * (1.0 - p) * (p / (1.0 - p)).same_ln().powi(2)).sum();
        let half = TOLD_APART * variance.sqrt();
        return [(mean - half).max(0.0) / n, (mean + half) / n];
    }
    let winter = |which: u32| {
        let lived = |at: usize| which >> at & 1 == 1;
        let all = || chances.iter().enumerate();
        let chance: f64 = all().map(|(at, p)| if lived(at) { *p } else { 1.0 - p }).product();
        let score: f64 = all().map(|(at, p)| surprise(*p, lived(at))).sum();
        (score / n, chance)
    };
    let mut winters: Vec<(f64, f64)> = (0..1_u32 << chances.len()).map(winter).collect();
    winters.sort_by(|a, b| a.0.total_cmp(&b.0));
    let at = |share: f64| {
        let mut sum = 0.0;
        let reached = winters.iter().find(|(_, chance)| {
            sum += chance;
            sum >= share - 1e-12
        });
        reached.or(winters.last()).map_or(f64::NAN, |(score, _)| *score)
    };
    [at(0.05), at(0.95)]
}

/// Colonies at which the expected gain over the base rate, if the forecasts are right, passes its own spread.
fn hives_needed(chances: &[f64], base: f64) -> Option<u32> {
    let n = chances.len() as f64;
    let ratio = |p: f64, lived: bool| surprise(base, lived) - surprise(p, lived);
    let gain: f64 = chances.iter().map(|p| p * ratio(*p, true) + (1.0 - p) * ratio(*p, false)).sum::<f64>() / n;
    let variance: f64 =
        chances.iter().map(|p| p * (1.0 - p) * (ratio(*p, true) - ratio(*p, false)).powi(2)).sum::<f64>() / n;
    let needed = TOLD_APART.powi(2) * variance / gain.powi(2);
    (gain > 1e-6 && needed.is_finite() && needed < 1e6).then(|| needed.ceil().max(1.0) as u32)
}

fn said(score: &ForecastScore) -> Vec<Message> {
    let hives = score.colonies.len();
    let [low, high] = score.log_score_if_right;
    let mut said = vec![match score.base_log_score - score.log_score {
        d if d > 0.005 => say::forecast_better(),
        d if d < -0.005 => say::forecast_worse(),
        _ => say::forecast_alike(),
    }];
    if score.log_score > high + 1e-9 {
        said.push(say::forecast_failed(high));
    } else if score.log_score < low - 1e-9 {
        said.push(say::forecast_lucky());
    }
    let helped = score.colonies.iter().filter(|one| one.helped);
    let helped: Vec<Message> = helped.map(|one| Message::from(&one.colony)).collect();
    if !helped.is_empty() {
        said.push(say::forecast_helped(helped));
    }
    said.push(match score.hives_needed {
        Some(needed) if (hives as u32) < needed => say::forecast_too_few(say::forecast_hives(hives), needed),
        Some(_) => say::forecast_enough(),
        None => say::forecast_same(say::forecast_hives(hives)),
    });
    said
}
