//! What real winters say of the parameters together.
//!
//! Unknown are the parameters' standard deviates, and for each study the deviates of its year and of yards told apart. A
//! year or a yard multiplies the background hazard, which moves its deviate; yards not told apart are averaged over.

use hammer_and_sample::{DifferentialEvolution, MinChainLen, Mixture, Model, Parallel, Stretch, sample};
use rand::SeedableRng;
use rand_pcg::Pcg64;
use snowhum_draws::Key;
use snowhum_winter::{JointDraw, Parameters};

use crate::emulator::Emulator;
use crate::study::{Kind, Row, Study, Year};

/// Nodes and weights of a normal law in five points (Gauss and Hermite).
const NODES: [(f64, f64); 5] = [
    (-2.856_970_013_872_806, 0.011_257_411_327_720_69),
    (-1.355_626_179_974_266, 0.222_075_922_005_612_6),
    (0.0, 0.533_333_333_333_333_3),
    (1.355_626_179_974_266, 0.222_075_922_005_612_6),
    (2.856_970_013_872_806, 0.011_257_411_327_720_69),
];
/// Walkers of the sampler.
const WALKERS: usize = 160;
/// The standard deviates at the tenth and ninetieth part.
const Z90: f64 = 1.281_551_565_544_6;

/// Studies with the emulators of their rows.
pub struct Evidence {
    /// The studies.
    pub studies: Vec<Study>,
    /// Emulators, by study and row.
    pub emulators: Vec<Vec<Emulator>>,
    columns: Columns,
    latents: Latents,
}

/// Where the background stands among the parameters, and what a unit of its logarithm is there.
#[derive(Debug, Clone, Copy)]
struct Columns {
    background: usize,
    by_year: usize,
    by_yard: usize,
    /// Deviates of the background for a unit of its logarithm.
    per_log: f64,
    /// Spread by year and by yard at the middle, and the logarithms of what a deviate makes of it.
    year: (f64, f64),
    yard: (f64, f64),
}

impl Columns {
    fn of(p: &Parameters) -> Self {
        let place = |name: &str| JointDraw::NAMES.iter().position(|known| *known == name).unwrap_or(0);
        let half = |low: Option<f64>, high: Option<f64>| (high.unwrap_or(1.0) / low.unwrap_or(1.0)).ln() / 2.0 / Z90;
        let spread = |parameter: &snowhum_winter::Parameter| (parameter.value, half(parameter.low, parameter.high));
        Self {
            background: place("background_loss"),
            by_year: place("background_by_year"),
            by_yard: place("background_by_yard"),
            per_log: 1.0 / half(p.background_loss.low, p.background_loss.high),
            year: spread(&p.background_by_year),
            yard: spread(&p.background_by_yard),
        }
    }

    fn spreads(self, point: &[f64]) -> (f64, f64) {
        let of = |(middle, log): (f64, f64), at: usize| middle * (log * point[at]).exp();
        (of(self.year, self.by_year), of(self.yard, self.by_yard))
    }
}

/// Where each study's year and districts stand behind the parameters.
#[derive(Debug, Clone)]
struct Latents {
    years: Vec<Option<usize>>,
    districts: Vec<usize>,
    count: usize,
}

impl Latents {
    fn of(studies: &[Study]) -> Self {
        let (mut count, mut years, mut districts) = (JointDraw::NAMES.len(), Vec::new(), Vec::new());
        for study in studies {
            years.push((study.year == Year::Own).then_some(count));
            count += usize::from(study.year == Year::Own);
            districts.push(count);
            count += study.rows.iter().filter_map(|row| row.district).max().map_or(0, |last| last + 1);
        }
        Self { years, districts, count }
    }
}

/// Where in the background a row is looked at.
#[derive(Debug, Clone, Copy)]
pub struct At {
    /// Logarithm of the year's and the yard's part of the background.
    pub shift: f64,
    /// Spread of what is averaged over.
    pub spread: f64,
}

impl Evidence {
    /// Puts studies and emulators together.
    #[must_use]
    pub fn new(studies: Vec<Study>, emulators: Vec<Vec<Emulator>>, parameters: &Parameters) -> Self {
        let latents = Latents::of(&studies);
        Self { studies, emulators, columns: Columns::of(parameters), latents }
    }

    /// Numbers in a state: parameters, years and districts.
    #[must_use]
    pub fn dimensions(&self) -> usize {
        self.latents.count
    }

    /// Points of a closer design: parameters of these states spread by a quarter, the background moved as years and yards
    /// move it and more.
    #[must_use]
    pub fn points_near(&self, states: &[Vec<f64>], seed: u64) -> Vec<Vec<f64>> {
        /// How much wider than the states.
        const WIDER: f64 = 1.25;
        /// How much wider than years and yards together.
        const MOVED: f64 = 1.5;
        let width = JointDraw::NAMES.len();
        let mean: Vec<f64> = (0..width)
            .map(|at| states.iter().map(|state| state[at]).sum::<f64>() / states.len().max(1) as f64)
            .collect();
        let key = Key::new(seed, 0x4e45_4152);
        let near = |(at, state): (usize, &Vec<f64>)| {
            let mut point: Vec<f64> = mean.iter().zip(state).map(|(mean, z)| mean + WIDER * (z - mean)).collect();
            let (by_year, by_yard) = self.columns.spreads(state);
            let moved = MOVED * by_year.hypot(by_yard) * key.normals([at as u32, 0, 0, 0])[0];
            point[self.columns.background] += self.columns.per_log * moved;
            point
        };
        states.iter().enumerate().map(near).collect()
    }

    /// A row's figure, not on its scale.
    #[must_use]
    pub fn figure(&self, study: usize, row: usize, point: &[f64], at: At) -> f64 {
        let emulator = &self.emulators[study][row];
        let scale = self.studies[study].rows[row].kind.scale();
        let parameters = &point[..JointDraw::NAMES.len()];
        if !hangs_on_background(self.studies[study].rows[row].kind) {
            return scale.back(emulator.at(parameters));
        }
        let mut moved = parameters.to_vec();
        let one = |z: f64, moved: &mut Vec<f64>| {
            moved[self.columns.background] =
                parameters[self.columns.background] + self.columns.per_log * (at.shift + at.spread * z);
            scale.back(emulator.at(moved))
        };
        NODES.iter().map(|(z, weight)| weight * one(*z, &mut moved)).sum()
    }

    /// Where a row of a study is looked at in a state.
    fn place(&self, study: usize, row: &Row, state: &[f64]) -> At {
        let (by_year, by_yard) = self.columns.spreads(state);
        match (self.latents.years[study], row.district) {
            (Some(year), Some(district)) => {
                let yard = state[self.latents.districts[study] + district];
                At { shift: by_year * state[year] + by_yard * yard, spread: 0.0 }
            }
            (Some(year), None) => At { shift: by_year * state[year], spread: by_yard },
            _ => At { shift: 0.0, spread: by_year.hypot(by_yard) },
        }
    }

    /// Where rows of a study would be looked at if it had not been read: its year and districts are drawn.
    #[must_use]
    pub fn unseen(&self, study: usize, row: &Row, state: &[f64], draw: [f64; 8]) -> At {
        let mut state = state.to_vec();
        if let Some(year) = self.latents.years[study] {
            state[year] = draw[0];
        }
        if let Some(district) = row.district {
            state[self.latents.districts[study] + district] = draw[1 + district % 7];
        }
        self.place(study, row, &state)
    }

    /// What a row's figure may be off by, as a variance on its scale: its own, the emulator's and the model's.
    #[must_use]
    pub fn variance(&self, study: usize, row: usize) -> f64 {
        let (told, emulator) = (&self.studies[study].rows[row], &self.emulators[study][row]);
        told.variance() + emulator.error.powi(2) + told.kind.scale().discrepancy().powi(2)
    }
}

/// Whether a kind of figure hangs on the background.
fn hangs_on_background(kind: Kind) -> bool {
    matches!(kind, Kind::Loss | Kind::Queen)
}

/// The evidence, without one study if that is left out.
struct Weighed<'a> {
    evidence: &'a Evidence,
    without: Option<usize>,
}

impl Model for Weighed<'_> {
    type Params = Vec<f64>;

    fn log_prob(&self, state: &Vec<f64>) -> f64 {
        let evidence = self.evidence;
        let mut sum = -0.5 * state.iter().map(|z| z * z).sum::<f64>();
        for (study, told) in evidence.studies.iter().enumerate().filter(|(at, _)| Some(*at) != self.without) {
            for (row, of) in told.rows.iter().enumerate().filter(|(_, row)| row.fitted) {
                let scale = of.kind.scale();
                let figure = scale.to(evidence.figure(study, row, state, evidence.place(study, of, state)));
                let off = figure - scale.to(of.observed());
                sum -= 0.5 * of.weight.unwrap_or(1.0) * off * off / evidence.variance(study, row);
            }
        }
        sum
    }
}

/// States drawn from the posterior, `count` of them, after `steps` of each walker; the first half is left out.
#[must_use]
pub fn draw(evidence: &Evidence, without: Option<usize>, steps: usize, count: usize, seed: u64) -> Vec<Vec<f64>> {
    let model = Weighed { evidence, without };
    let key = Key::new(seed, 0x5741_4c4b);
    let walkers = (0..WALKERS).map(|walker| {
        let blocks = evidence.dimensions().div_ceil(4) as u32;
        let start = (0..blocks).flat_map(|block| key.normals([walker as u32, block, 0, 0]));
        let start: Vec<f64> = start.take(evidence.dimensions()).map(|z| 0.5 * z).collect();
        (start, Pcg64::seed_from_u64(seed.wrapping_add(walker as u64)))
    });
    let gamma = 2.38 / (2.0 * evidence.dimensions() as f64).sqrt();
    let moves = Mixture::from(((Stretch::default(), 1), (DifferentialEvolution::new(gamma, 1e-3), 2)));
    let (chain, _) = sample(&model, &moves, walkers, MinChainLen(steps * WALKERS), Parallel);
    let kept = &chain[chain.len() / 2..];
    (0..count).map(|at| kept[at * (kept.len() - 1) / count.max(2).saturating_sub(1)].clone()).collect()
}
