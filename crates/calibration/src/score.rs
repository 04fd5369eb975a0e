//! How well each study is foretold by the others.

use serde::{Deserialize, Serialize};
use snowhum_draws::Key;
use statrs::distribution::{Binomial, DiscreteCDF};

use crate::posterior::{At, Evidence};
use crate::study::{Kind, Row};

/// Scores of one study, foretold by draws that did not see it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Score {
    /// The study.
    pub study: String,
    /// Rows inside the range that holds half of what was foretold.
    pub within_half: usize,
    /// Rows inside the range that holds nine tenths.
    pub within_nine_tenths: usize,
    /// Rows.
    pub rows: usize,
    /// Mean over colonies of the square of what was missed, of rows of losses with counts; none without such rows.
    pub brier: Option<f64>,
    /// Mean over colonies of the logarithm of the chance given to what happened.
    pub log: Option<f64>,
}

/// A row as foretold.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Foretold {
    /// The study.
    pub study: String,
    /// The row.
    pub what: String,
    /// What was found.
    pub found: f64,
    /// What half and nine tenths of what was foretold lie between: 5, 25, 50, 75 and 95 in a hundred below.
    pub quantiles: [f64; 5],
}

/// What states foretell of a row, with the chance of its count and what the model may miss.
#[must_use]
pub fn foretell(evidence: &Evidence, (study, row): (usize, usize), states: &[Vec<f64>], seed: u64) -> Vec<f64> {
    let of = &evidence.studies[study].rows[row];
    let key = Key::new(seed, study as u64);
    let one = |(at, state): (usize, &Vec<f64>)| {
        let counter = |stream: u32| [at as u32, 0, stream, 0];
        let (z, more) = (key.normals(counter(0)), key.normals(counter(1)));
        let place: At = evidence.unseen(study, of, state, [z[0], z[1], z[2], z[3], more[0], more[1], more[2], more[3]]);
        let own = key.normals([at as u32, row as u32, 2, 0])[0];
        let figure = evidence.figure(study, row, state, place);
        let spread = (evidence.variance(study, row) - of.of.map_or(0.0, |_| of.variance())).sqrt();
        let scale = of.kind.scale();
        let moved = scale.back(scale.to(figure) + spread * own);
        counted(of, moved, key.uniforms([at as u32, row as u32, 3, 0])[0])
    };
    states.iter().enumerate().map(one).collect()
}

/// Figures of worlds with the chance of the row's count and what the model may miss, `taken` of each.
#[must_use]
pub fn scattered(row: &Row, worlds: &[f64], taken: usize, seed: u64) -> Vec<f64> {
    let key = Key::new(seed, 0x574f_524c_4453);
    let spread = row.of.map_or(row.variance(), |_| 0.0) + row.kind.scale().discrepancy().powi(2);
    let scale = row.kind.scale();
    let one = |(at, world): (usize, &f64)| {
        let draw = |take: usize| {
            let counter = |what: u32| [at as u32, take as u32, what, 0];
            let moved = scale.back(scale.to(*world) + spread.sqrt() * key.normals(counter(0))[0]);
            counted(row, moved, key.uniforms(counter(1))[0])
        };
        (0..taken).map(draw).collect::<Vec<_>>()
    };
    worlds.iter().enumerate().filter(|(_, world)| world.is_finite()).flat_map(one).collect()
}

/// A share as it comes out in the row's number of colonies.
fn counted(row: &Row, share: f64, uniform: f64) -> f64 {
    let Some(of) = row.of else { return share };
    match Binomial::new(share.clamp(0.0, 1.0), u64::from(of)) {
        Ok(law) => law.inverse_cdf(uniform.clamp(1e-9, 1.0 - 1e-9)) as f64 / f64::from(of),
        Err(_) => share,
    }
}

/// Rows of a study as foretold, and their score.
#[must_use]
pub fn score(evidence: &Evidence, study: usize, states: &[Vec<f64>], seed: u64) -> (Vec<Foretold>, Score) {
    let told = &evidence.studies[study];
    let mut rows = Vec::new();
    let (mut brier, mut log, mut colonies) = (0.0, 0.0, 0.0);
    for (row, of) in told.rows.iter().enumerate() {
        let mut values = foretell(evidence, (study, row), states, seed);
        let mean = values.iter().sum::<f64>() / values.len() as f64;
        if let (Kind::Loss, Some(count)) = (of.kind, of.of) {
            let (found, p, weight) = (of.observed(), mean.clamp(1e-3, 1.0 - 1e-3), f64::from(count));
            brier += weight * (found * (1.0 - p).powi(2) + (1.0 - found) * p * p);
            log += weight * (found * p.ln() + (1.0 - found) * (1.0 - p).ln());
            colonies += weight;
        }
        values.sort_by(f64::total_cmp);
        let quantiles = [0.05, 0.25, 0.5, 0.75, 0.95].map(|q: f64| values[(q * (values.len() - 1) as f64) as usize]);
        rows.push(Foretold { study: told.id.clone(), what: of.what.clone(), found: of.observed(), quantiles });
    }
    let inside = |low: usize, high: usize| {
        rows.iter().filter(|row| row.quantiles[low] <= row.found && row.found <= row.quantiles[high]).count()
    };
    let (within_half, within_nine_tenths) = (inside(1, 3), inside(0, 4));
    let mean = |sum: f64| (colonies > 0.0).then(|| sum / colonies);
    let score = Score {
        study: told.id.clone(),
        within_half,
        within_nine_tenths,
        rows: rows.len(),
        brier: mean(brier),
        log: mean(log),
    };
    (rows, score)
}

/// Brier and log score of a study's own bare average, which has seen it.
#[must_use]
pub fn own_average(rows: &[Row]) -> Option<(f64, f64)> {
    let counted = || rows.iter().filter(|row| row.kind == Kind::Loss && row.of.is_some());
    let (mut lost, mut all) = (0.0, 0.0);
    for row in counted() {
        lost += f64::from(row.lost.unwrap_or(0));
        all += f64::from(row.of.unwrap_or(0));
    }
    let p: f64 = lost / all;
    (all > 0.0).then(|| (p * (1.0 - p).powi(2) + (1.0 - p) * p * p, p * p.ln() + (1.0 - p) * (1.0 - p).ln()))
}
