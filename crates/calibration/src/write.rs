//! What a calibration leaves in `data/`.

use serde::{Deserialize, Serialize};
use snowhum_winter::{JointDraw, Parameter, Parameters, Status};
use toml_edit::{DocumentMut, value};

use crate::CalibrationError;
use crate::score::{Foretold, Score};

/// What the page of real winters is made of: `data/real_winter_scores.toml`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Scores {
    /// Rows as foretold by the draws that saw all studies.
    pub foretold: Vec<Foretold>,
    /// Each study as foretold by the others.
    pub by_others: Vec<Score>,
    /// Each study as the prior has it, before any winter was read.
    pub by_prior: Vec<Score>,
    /// What the emulators miss, on points held out: by study and row.
    pub emulators: Vec<Missed>,
}

/// What an emulator misses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Missed {
    /// The study.
    pub study: String,
    /// The row.
    pub what: String,
    /// Root of the mean square, on the row's scale.
    pub error: f64,
}

/// The range of a parameter's draws, and the deviates of each draw on that range.
#[derive(Debug, Clone, PartialEq)]
pub struct Posterior {
    /// One in ten below, middle, one in ten above.
    pub range: [f64; 3],
    /// Deviates.
    pub deviates: Vec<f64>,
}

/// Puts a parameter's drawn values on a range of their own. A published one keeps its figure and its range.
#[must_use]
pub fn posterior(prior: &Parameter, prior_deviates: &[f64]) -> Posterior {
    if prior.status == Status::Published {
        let range = [prior.low.unwrap_or(prior.value), prior.value, prior.high.unwrap_or(prior.value)];
        return Posterior { range, deviates: prior_deviates.iter().map(|z| (1e4 * z).round() / 1e4).collect() };
    }
    let values: Vec<f64> = prior_deviates.iter().map(|z| prior.at(*z)).collect();
    let mut sorted = values.clone();
    sorted.sort_by(f64::total_cmp);
    let quantile = |q: f64| rounded(sorted[(q * (sorted.len() - 1) as f64).round() as usize]);
    let range = [quantile(0.1), quantile(0.5), quantile(0.9)];
    Posterior { range, deviates: values.iter().map(|value| deviate(range, *value)).collect() }
}

/// The deviate at which a positive parameter of this range has this value: [`Parameter::at`] read backwards.
#[must_use]
pub fn deviate([low, middle, high]: [f64; 3], value: f64) -> f64 {
    const Z90: f64 = 1.281_551_565_544_6;
    let z = if value < middle {
        -Z90 * (value / middle).ln() / (low / middle).ln()
    } else {
        Z90 * (value / middle).ln() / (high / middle).ln()
    };
    (1e4 * z).round() / 1e4
}

/// To four figures.
fn rounded(value: f64) -> f64 {
    format!("{value:.3e}").parse().unwrap_or(value)
}

/// The prior of a parameter: what it was before any calibration.
#[must_use]
pub fn prior(parameter: &Parameter) -> Parameter {
    match parameter.prior {
        Some([low, value, high]) => {
            Parameter { value, low: Some(low), high: Some(high), varies: true, ..parameter.clone() }
        }
        None => parameter.clone(),
    }
}

/// All parameters with their priors.
#[must_use]
pub fn priors(parameters: &Parameters) -> Parameters {
    let mut priors = parameters.clone();
    for name in JointDraw::NAMES {
        if let Some(parameter) = priors.get_mut(name) {
            *parameter = prior(parameter);
        }
    }
    priors.joint.rows.clear();
    priors
}

/// The parameter file with these ranges in place of the old, each with its prior beside it.
///
/// # Errors
/// When the text is not TOML.
pub fn parameters(text: &str, priors: &Parameters, ranges: &[[f64; 3]]) -> Result<String, CalibrationError> {
    let mut document: DocumentMut = text.parse()?;
    for (name, [low, middle, high]) in JointDraw::NAMES.iter().zip(ranges) {
        let Some(prior) = priors.iter().find(|(known, _)| known == name).map(|(_, parameter)| parameter) else {
            continue;
        };
        if prior.status == Status::Published {
            continue;
        }
        let entry = &mut document["parameter"][name];
        entry["value"] = value(*middle);
        entry["low"] = value(*low);
        entry["high"] = value(*high);
        let before = [prior.low.unwrap_or(prior.value), prior.value, prior.high.unwrap_or(prior.value)];
        entry["prior"] = value(before.into_iter().collect::<toml_edit::Array>());
        entry["status"] = value("calibrated");
    }
    Ok(document.to_string())
}

/// The text of a file of joint draws.
#[must_use]
pub fn joint_draws(about: &str, seed: u64, studies: &[String], columns: &[Posterior]) -> String {
    let quoted = |words: &[String]| words.iter().map(|word| format!("    \"{word}\",\n")).collect::<String>();
    let names: Vec<String> = JointDraw::NAMES.iter().map(|name| (*name).to_owned()).collect();
    let rows = columns.first().map_or(0, |column| column.deviates.len());
    let row = |at: usize| {
        let cells: Vec<String> = columns.iter().map(|column| format!("{:?}", column.deviates[at])).collect();
        format!("    [{}],\n", cells.join(", "))
    };
    format!(
        "about = \"{about}\"\nseed = {seed}\nstudies = [\n{}]\nnames = [\n{}]\nrows = [\n{}]\n",
        quoted(studies),
        quoted(&names),
        (0..rows).map(row).collect::<String>()
    )
}
