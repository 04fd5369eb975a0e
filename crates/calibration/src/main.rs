//! Fits the parameters that real winters set together, and scores the fit.

#![expect(clippy::print_stdout, clippy::print_stderr, reason = "a chore talks to the one who runs it")]

use std::path::PathBuf;
use std::process::ExitCode;

use snowhum_calibration::design;
use snowhum_calibration::design::latin_hypercube;
use snowhum_calibration::fit::{Effort, Fitted, fit};
use snowhum_calibration::posterior::{self, Evidence};
use snowhum_calibration::score::{own_average, score};
use snowhum_calibration::study::studies;
use snowhum_calibration::write::{self, Missed, Posterior, Scores};
use snowhum_winter::{JointDraw, Parameters};

/// Seed of everything.
const SEED: u64 = 20_261_129;
/// Steps of each walker for a study left out.
const STEPS_WITHOUT: usize = 2_000;
/// Joint draws that are shipped, and that scores are made with.
const SHIPPED: usize = 256;
const SCORED: usize = Effort::WHOLE.drawn;

fn main() -> ExitCode {
    let Some(data) = std::env::args().nth(1).map(PathBuf::from) else {
        eprintln!("error: name the folder to write to: data");
        return ExitCode::from(2);
    };
    match run(&data) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("error: {error}");
            ExitCode::FAILURE
        }
    }
}

fn run(data: &std::path::Path) -> Result<(), Box<dyn std::error::Error>> {
    let priors = write::priors(&Parameters::shipped()?);
    let studies = studies()?;
    let Fitted { evidence, states: shipped } = fit(&studies, &priors, Effort::WHOLE, SEED)?;
    let scores = scores(&evidence, &shipped);
    print(&evidence, &scores);
    let rows: Vec<&Vec<f64>> = design::thinned(SHIPPED, SCORED).map(|at| &shipped[at]).collect();
    let columns: Vec<Posterior> =
        JointDraw::NAMES.iter().enumerate().map(|(at, name)| column(&priors, name, at, &rows)).collect();
    let ranges: Vec<[f64; 3]> = columns.iter().map(|column| column.range).collect();
    for (name, range) in JointDraw::NAMES.iter().zip(&ranges) {
        println!("{name:28} {range:?}");
    }
    let names: Vec<String> = evidence.studies.iter().map(|study| study.id.clone()).collect();
    let about = "Made by `cargo xtask calibrate` of version 0.1.0: a Latin hypercube of 3,000 points over the priors, an emulator for each row of data/real_winters.toml, states drawn by a sampler of many walkers";
    let parameter_file = data.join("winter_parameters.toml");
    let text = std::fs::read_to_string(&parameter_file)?;
    std::fs::write(&parameter_file, write::parameters(&text, &priors, &ranges)?)?;
    std::fs::write(data.join("winter_joint_draws.toml"), write::joint_draws(about, SEED, &names, &columns))?;
    std::fs::write(data.join("real_winter_scores.toml"), toml::to_string(&scores)?)?;
    Ok(())
}

fn scores(evidence: &Evidence, shipped: &[Vec<f64>]) -> Scores {
    let count = evidence.studies.len();
    let blind = latin_hypercube(SCORED, evidence.dimensions(), SEED + 1);
    let foretold = (0..count).flat_map(|study| score(evidence, study, shipped, SEED).0).collect();
    let by_others = (0..count).map(|study| {
        let states = posterior::draw(evidence, Some(study), STEPS_WITHOUT, SCORED, SEED + 2);
        score(evidence, study, &states, SEED).1
    });
    let emulators = evidence.studies.iter().zip(&evidence.emulators).flat_map(|(study, emulators)| {
        study.rows.iter().zip(emulators).map(|(row, emulator)| Missed {
            study: study.id.clone(),
            what: row.what.clone(),
            error: (1e4 * emulator.error).round() / 1e4,
        })
    });
    Scores {
        foretold,
        by_others: by_others.collect(),
        by_prior: (0..count).map(|study| score(evidence, study, &blind, SEED).1).collect(),
        emulators: emulators.collect(),
    }
}

fn print(evidence: &Evidence, scores: &Scores) {
    for (row, missed) in scores.foretold.iter().zip(&scores.emulators) {
        let [low, .., high] = row.quantiles;
        let mark = if low <= row.found && row.found <= high { "inside" } else { "OUTSIDE" };
        let (middle, error) = (row.quantiles[2], missed.error);
        println!(
            "{:32} {:48} found {:8.3} foretold {low:8.3} {middle:8.3} {high:8.3} {mark} (emulator {error:.3})",
            row.study, row.what, row.found
        );
    }
    for ((others, prior), study) in scores.by_others.iter().zip(&scores.by_prior).zip(&evidence.studies) {
        println!("{others:?}\n  prior {prior:?}\n  own average {:?}", own_average(&study.rows));
    }
}

fn column(priors: &Parameters, name: &str, at: usize, rows: &[&Vec<f64>]) -> Posterior {
    let deviates: Vec<f64> = rows.iter().map(|row| row[at]).collect();
    let known = priors.iter().find(|(known, _)| *known == name).map(|(_, parameter)| parameter.clone());
    known.map_or(Posterior { range: [0.0; 3], deviates: Vec::new() }, |prior| write::posterior(&prior, &deviates))
}
