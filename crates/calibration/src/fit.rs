//! The fit: looks at all studies, each closer than the last, and states drawn from what they leave.

use rayon::prelude::*;
use snowhum_winter::{JointDraw, Parameters};

use crate::CalibrationError;
use crate::design::latin_hypercube;
use crate::emulator::{Emulator, Found};
use crate::posterior::{self, Evidence};
use crate::simulate::Winter;
use crate::study::Study;

/// How much wider the design spreads the background than its prior: it must hold bad years and yards too.
const WIDER: f64 = 2.2;

/// How much is run and drawn.
#[derive(Debug, Clone, Copy)]
pub struct Effort {
    /// Points of a design, and colonies run at each.
    pub points: [usize; 2],
    /// Points held out, and colonies run at each.
    pub held_out: [usize; 2],
    /// Looks after the first.
    pub closer: u64,
    /// Steps of each walker for the last states, and for those that a closer look starts from.
    pub steps: [usize; 2],
    /// States drawn at the end.
    pub drawn: usize,
}

impl Effort {
    /// What the shipped draws are made with.
    pub const WHOLE: Self =
        Self { points: [3_000, 12], held_out: [120, 96], closer: 2, steps: [5_000, 2_000], drawn: 2_000 };
}

/// What a fit leaves.
pub struct Fitted {
    /// Studies with their emulators at the last look.
    pub evidence: Evidence,
    /// States drawn: parameters, years and yards.
    pub states: Vec<Vec<f64>>,
}

/// Fits the parameters to all studies together. The same seed gives the same states to the last bit, on any number of threads.
///
/// # Errors
/// Where a study has no weather, or too few points.
pub fn fit(studies: &[Study], priors: &Parameters, effort: Effort, seed: u64) -> Result<Fitted, CalibrationError> {
    let looked = |points: [Vec<Vec<f64>>; 2]| {
        emulators(studies, priors, &points, effort, seed)
            .map(|emulators| Evidence::new(studies.to_vec(), emulators, priors))
    };
    let ([points, _], [held_out, _], [steps, steps_between]) = (effort.points, effort.held_out, effort.steps);
    let mut evidence = looked([spread(points, seed), spread(held_out, seed + 4)])?;
    // Where a look leaves parameters, the next looks closer: emulators need only hold there.
    for look in 0..effort.closer {
        let near =
            |count, seed| evidence.points_near(&posterior::draw(&evidence, None, steps_between, count, seed), seed);
        evidence = looked([near(points, seed + 5 + 2 * look), near(held_out, seed + 6 + 2 * look)])?;
    }
    let states = posterior::draw(&evidence, None, steps, effort.drawn, seed);
    Ok(Fitted { evidence, states })
}

/// Points over the priors.
fn spread(count: usize, seed: u64) -> Vec<Vec<f64>> {
    let mut points = latin_hypercube(count, JointDraw::NAMES.len(), seed);
    let background = JointDraw::NAMES.iter().position(|name| *name == "background_loss");
    for point in &mut points {
        if let Some(at) = background {
            point[at] *= WIDER;
        }
    }
    points
}

fn emulators(
    studies: &[Study],
    priors: &Parameters,
    [points, held_out]: &[Vec<Vec<f64>>; 2],
    effort: Effort,
    seed: u64,
) -> Result<Vec<Vec<Emulator>>, CalibrationError> {
    let one = |study: &Study| -> Result<Vec<Emulator>, CalibrationError> {
        let winter = Winter::of(study, seed)?;
        let computed = winter.run(priors, points, effort.points[1], seed);
        let checked = winter.run(priors, held_out, effort.held_out[1], seed + 3);
        let fit = |at: usize| {
            let row = &study.rows[at];
            let found = Found { points, values: &computed.by_row[at] };
            let check = Found { points: held_out, values: &checked.by_row[at] };
            Emulator::fit(&row.what, row.kind.scale(), &found, &check)
        };
        (0..study.rows.len()).into_par_iter().map(fit).collect()
    };
    studies.iter().map(one).collect()
}
