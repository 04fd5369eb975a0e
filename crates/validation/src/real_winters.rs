//! Class D: what was found in real yards, beside what the shipped model and its joint draws compute for yards like them.
//!
//! A world is a joint draw with a year and a yard; colonies of a study are run in many worlds, and the range over worlds, with
//! the chance of the count, is the computed range. Nothing of the study itself goes into its worlds but what was fitted.

use snowhum_calibration::score::{self, Score};
use snowhum_calibration::simulate::Winter;
use snowhum_calibration::study::{Kind, Row, Study, Year, studies};
use snowhum_calibration::write::{Scores, deviate};
use snowhum_draws::Key;
use snowhum_winter::{JointDraw, Parameter, Parameters};

use crate::fault::Fault;

const SCORES: &str = include_str!("../../../data/real_winter_scores.toml");

/// Worlds a study is run in, and colonies of each.
const WORLDS: usize = 128;
const COLONIES: usize = 40;
/// What is drawn of each world for the chance of counts and what the model may miss.
const TAKEN: usize = 8;
const SEED: u64 = 41;

/// A row of a study as found and as computed.
#[derive(Debug, Clone, PartialEq)]
pub struct RealRow {
    /// The study.
    pub study: String,
    /// What was looked at.
    pub row: Row,
    /// One in twenty below, middle, one in twenty above.
    pub computed: [f64; 3],
}

impl RealRow {
    /// Whether what was found lies in the computed range.
    #[must_use]
    pub fn is_inside(&self) -> bool {
        let [low, _, high] = self.computed;
        (low..=high).contains(&self.row.observed())
    }
}

/// Every study with its rows, and the scores that the calibration left.
pub struct RealWinters {
    /// The studies.
    pub studies: Vec<Study>,
    /// Their rows, in order.
    pub rows: Vec<RealRow>,
    /// Scores.
    pub scores: Scores,
}

impl RealWinters {
    /// Runs the shipped model on every study.
    ///
    /// # Errors
    /// When shipped data cannot be read.
    pub fn compute(parameters: &Parameters) -> Result<Self, Fault> {
        let studies = studies()?;
        let mut rows = Vec::new();
        for study in &studies {
            rows.extend(of_study(study, parameters)?);
        }
        let scores = toml::from_str(SCORES)?;
        Ok(Self { studies, rows, scores })
    }

    /// The middle of a row by its words.
    #[must_use]
    pub fn middle(&self, study: &str, what: &str) -> Option<f64> {
        let row = self.rows.iter().find(|row| row.study == study && row.row.what == what)?;
        Some(row.computed[1])
    }

    /// The score of a study foretold by the others, and by the prior.
    #[must_use]
    pub fn scores_of(&self, study: &str) -> Option<(&Score, &Score)> {
        let of = |scores: &'_ [Score]| scores.iter().position(|score| score.study == study);
        Some((&self.scores.by_others[of(&self.scores.by_others)?], &self.scores.by_prior[of(&self.scores.by_prior)?]))
    }
}

fn of_study(study: &Study, parameters: &Parameters) -> Result<Vec<RealRow>, Fault> {
    let worlds = worlds(study, parameters);
    let computed = Winter::of(study, SEED)?.run(parameters, &worlds, COLONIES, SEED);
    let row = |(at, row): (usize, &Row)| {
        let mut values = score::scattered(row, &computed.by_row[at], TAKEN, SEED + at as u64);
        values.sort_by(f64::total_cmp);
        let computed = [0.05, 0.5, 0.95].map(|share: f64| values[(share * (values.len() - 1) as f64).round() as usize]);
        RealRow { study: study.id.clone(), row: row.clone(), computed }
    };
    Ok(study.rows.iter().enumerate().map(row).collect())
}

/// Joint draws with the background that a year and a yard make of each.
fn worlds(study: &Study, parameters: &Parameters) -> Vec<Vec<f64>> {
    let place = |name: &str| JointDraw::NAMES.iter().position(|known| *known == name).unwrap_or(0);
    let (background, by_year, by_yard) =
        (place("background_loss"), place("background_by_year"), place("background_by_yard"));
    let key = Key::new(SEED, 1);
    let rows = &parameters.joint.rows;
    let world = |at: usize| {
        let mut row = rows[at * rows.len() / WORLDS].clone();
        let z = key.normals([at as u32, 0, 0, 0]);
        // What is a mean over years or yards has the mean hazard of a lognormal law instead of one of its own.
        let part = |spread: f64, own: bool, z: f64| if own { spread * z } else { 0.5 * spread * spread };
        let year = part(parameters.background_by_year.at(row[by_year]), study.year == Year::Own, z[0]);
        let told_apart = study.rows.iter().any(|row| row.district.is_some());
        let yard = part(parameters.background_by_yard.at(row[by_yard]), told_apart, z[1]);
        let moved = year + yard;
        let chance = parameters.background_loss.at(row[background]) * moved.exp();
        row[background] = deviate(range(&parameters.background_loss), chance);
        row
    };
    (0..WORLDS).map(world).collect()
}

fn range(parameter: &Parameter) -> [f64; 3] {
    [parameter.low.unwrap_or(parameter.value), parameter.value, parameter.high.unwrap_or(parameter.value)]
}

/// Pairs of rows of which the first must be worse: bees, food, mites found, dose.
pub const ORDERINGS: [(&str, &str, &str); 5] = [
    ("Ontario 2007", "up to 7 frames of bees", "8 frames of bees and more"),
    ("Ontario 2007", "under 23.6 kg of food", "over 23.6 kg of food"),
    ("Ontario 2007", "mites found in the sample", "no mites found"),
    ("Selection lines 2020", "mites grew 9.6 times", "mites grew 1.7 times"),
    ("Gotland", "47 mites on 100 bees", "22 mites on 100 bees, survivors' stock"),
];

/// Hives weighed through the winter, and the months of which one over the other tells how food goes with brood and cold.
const WEIGHED: [&str; 2] = ["Würzburg 2017", "Schwartau 2017"];
const NOVEMBER: [&str; 2] = ["food in November, g a day", "food on 10 to 30 November, g a day"];
const DECEMBER: [&str; 2] = ["food in December"; 2];
const JANUARY: [&str; 2] = ["food in January"; 2];
const FEBRUARY: [&str; 2] = ["food in February"; 2];
const RATIOS: [(&str, [&str; 2], [&str; 2]); 2] =
    [("December over November", DECEMBER, NOVEMBER), ("February over January", FEBRUARY, JANUARY)];

/// One month's food over another's.
#[derive(Debug, Clone, PartialEq)]
pub struct Ratio {
    /// Whose, and of which months.
    pub what: String,
    /// Found and computed.
    pub values: [f64; 2],
}

impl Ratio {
    /// Whether the computed is within a fifth of the found.
    #[must_use]
    pub fn is_within_a_fifth(&self) -> bool {
        let [found, computed] = self.values;
        (computed / found - 1.0).abs() <= 0.2
    }
}

impl RealWinters {
    /// Food of one month over that of another, found and as the middles computed: of the weighed hives together, and of each.
    #[must_use]
    pub fn ratios(&self) -> Vec<Ratio> {
        let one = |(name, over, under): (&str, [&str; 2], [&str; 2])| {
            let grams = |months: [&str; 2], at: usize| self.food(WEIGHED[at], months[at]);
            let ratio = |hives: &[usize]| {
                let sum =
                    |months: [&str; 2], column: usize| hives.iter().map(|at| grams(months, *at)[column]).sum::<f64>();
                [0, 1].map(|column| sum(over, column) / sum(under, column))
            };
            [("both hives", &[0, 1][..]), (WEIGHED[0], &[0][..]), (WEIGHED[1], &[1][..])]
                .map(|(whose, hives)| Ratio { what: format!("{name}, {whose}"), values: ratio(hives) })
        };
        RATIOS.into_iter().flat_map(one).collect()
    }

    /// Grams a day, found and computed.
    fn food(&self, study: &str, what: &str) -> [f64; 2] {
        let row = self.rows.iter().find(|row| row.study == study && row.row.what == what);
        row.map_or([f64::NAN; 2], |row| [row.row.observed(), row.computed[1]])
    }
}

/// How a kind of figure is written.
pub(crate) fn shown(kind: Kind, value: f64) -> String {
    match kind {
        Kind::Loss | Kind::Queen | Kind::BeesLeft | Kind::Brood => format!("{:.0} in 100", 100.0 * value),
        Kind::Food => format!("{value:.0} g"),
        Kind::FoodABee => format!("{value:.1} mg"),
        Kind::BroodBegins | Kind::HalfDead => format!("day {value:.0}"),
    }
}
