//! What was found in real yards: `data/real_winters.toml`.

use jiff::civil::Date;
use serde::Deserialize;
use snowhum_figures::calibration as figures;

use crate::CalibrationError;

const STUDIES: &str = include_str!("../../../data/real_winters.toml");

/// A study: yards of one place and winter, and what was found there.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Study {
    /// What it is called here.
    pub id: String,
    /// Where it was read, and what of it.
    pub source: String,
    /// Degrees north and east, and metres above the sea.
    pub place: [f64; 3],
    /// First day.
    pub from: toml::value::Datetime,
    /// Days to the look in spring.
    pub days: usize,
    /// The hives.
    pub hive: Dressed,
    /// The colonies, in shares that sum to one.
    pub yards: Vec<YardKind>,
    /// Whether it was one winter or stands for many.
    pub year: Year,
    /// How much warmer than usual there October to April were, K; usual months where nothing is told.
    #[serde(default)]
    pub warmer: [f64; 7],
    /// Whether nothing is reared and no summer bee is left, so that winter bees alone are counted.
    #[serde(default)]
    pub winter_bees_alone: bool,
    /// What was found.
    pub rows: Vec<Row>,
}

/// A hive of two or one deep of 19 mm pine, and what it wears.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Dressed {
    /// Boxes.
    pub boxes: usize,
    /// Foam over the inner cover, mm.
    pub lid_foam_mm: f64,
    /// Foam round the walls, mm.
    pub wall_foam_mm: f64,
    /// Upper hole, cm²; 0 for none.
    pub hole_cm2: f64,
}

/// Colonies alike; ranges are one in ten below, middle, one in ten above.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct YardKind {
    /// Share of the study's colonies.
    pub share: f64,
    /// Grown bees at the start.
    pub bees: [f64; 3],
    /// Food, kg.
    pub food_kg: [f64; 3],
    /// Mites on 100 bees while winter bees were brood.
    pub mites: [f64; 3],
}

/// Whether a study was made in one winter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub enum Year {
    /// One winter of its own.
    #[serde(rename = "its own")]
    Own,
    /// A mean over many winters or countries.
    #[serde(rename = "many")]
    Many,
}

/// What a row says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Share of colonies lost, queenless ones included.
    Loss,
    /// Share of colonies lost for want of a queen, alive or not.
    Queen,
    /// Share of grown bees left of the living between two days.
    BeesLeft,
    /// Food eaten, g a day.
    Food,
    /// Food eaten, mg a bee and day.
    FoodABee,
    /// Day of the year on which there are 200 cells of brood.
    BroodBegins,
    /// Share of colonies with 100 cells of brood or more.
    Brood,
    /// Days from 20 September until half of the bees are dead.
    HalfDead,
}

/// One figure of a study.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Row {
    /// What was looked at, in words.
    pub what: String,
    /// What kind of figure it is.
    pub kind: Kind,
    /// Days of the run from and to which it speaks.
    pub days: Option<[usize; 2]>,
    /// Colonies lost.
    pub lost: Option<u32>,
    /// Of how many.
    pub of: Option<u32>,
    /// A share found.
    pub share: Option<f64>,
    /// A figure found.
    pub figure: Option<f64>,
    /// Its standard deviation: of the logit of shares, of the logarithm of food, of days.
    pub sd: Option<f64>,
    /// How much it counts; rows that tell of the same colonies count less.
    pub weight: Option<f64>,
    /// Grown bees from and below which a colony is of this row.
    pub bees: Option<[f64; 2]>,
    /// Food likewise, kg.
    pub food_kg: Option<[f64; 2]>,
    /// The one kind of colonies it is of.
    pub yard: Option<usize>,
    /// The yard it is of, where rows are of yards apart.
    pub district: Option<usize>,
    /// Whether parameters are fitted to it.
    pub fitted: bool,
}

/// The scale on which a kind of figure is emulated and compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scale {
    /// Log-odds of a share.
    Logit,
    /// Logarithm.
    Log,
    /// As it is.
    Plain,
}

impl Scale {
    /// The figure on this scale.
    #[must_use]
    pub fn to(self, value: f64) -> f64 {
        match self {
            Self::Logit => {
                let p = value.clamp(1e-4, 1.0 - 1e-4);
                (p / (1.0 - p)).ln()
            }
            Self::Log => value.max(1e-6).ln(),
            Self::Plain => value,
        }
    }

    /// The figure back from this scale.
    #[must_use]
    pub fn back(self, scaled: f64) -> f64 {
        match self {
            Self::Logit => 1.0 / (1.0 + (-scaled).exp()),
            Self::Log => scaled.exp(),
            Self::Plain => scaled,
        }
    }
}

impl Scale {
    /// What the model may miss on this scale, as a standard deviation.
    #[must_use]
    pub fn discrepancy(self) -> f64 {
        if self == Self::Plain { figures::MISSED_DAYS } else { figures::MISSED }
    }

    /// What a figure gains for a unit of its scale.
    pub(crate) fn slope(self, value: f64) -> f64 {
        match self {
            Self::Logit => (value * (1.0 - value)).max(1e-6),
            Self::Log => value.max(1e-6),
            Self::Plain => 1.0,
        }
    }

    /// How the variance of a figure goes with it, but for a factor.
    pub(crate) fn variance(self, value: f64) -> f64 {
        match self {
            Self::Logit => (value * (1.0 - value)).max(1e-6),
            Self::Log => (value * value).max(1e-12),
            Self::Plain => 1.0,
        }
    }

    /// The spread of figures on their scale.
    pub(crate) fn unit(self, mean: f64, spread: f64) -> f64 {
        spread / self.slope(mean)
    }
}

impl Kind {
    /// How it is compared.
    #[must_use]
    pub fn scale(self) -> Scale {
        match self {
            Self::Loss | Self::Queen | Self::Brood | Self::BeesLeft => Scale::Logit,
            Self::Food | Self::FoodABee => Scale::Log,
            Self::BroodBegins | Self::HalfDead => Scale::Plain,
        }
    }
}

impl Row {
    /// What was found.
    #[must_use]
    pub fn observed(&self) -> f64 {
        match (self.lost, self.of) {
            (Some(lost), Some(of)) => f64::from(lost) / f64::from(of.max(1)),
            _ => self.share.or(self.figure).unwrap_or(f64::NAN),
        }
    }

    /// Variance of what was found on its scale, by its count or as stated.
    #[must_use]
    pub fn variance(&self) -> f64 {
        match (self.of, self.sd) {
            (Some(of), _) => {
                let p = (f64::from(self.lost.unwrap_or(0)) + 0.5) / (f64::from(of) + 1.0);
                1.0 / (f64::from(of) * p * (1.0 - p))
            }
            (None, Some(sd)) => sd * sd,
            (None, None) => f64::NAN,
        }
    }
}

impl Study {
    /// First day.
    #[must_use]
    pub fn first_day(&self) -> Date {
        let date = self.from.date.unwrap_or(toml::value::Date { year: 2010, month: 10, day: 1 });
        jiff::civil::date(date.year as i16, date.month as i8, date.day as i8)
    }
}

#[derive(Deserialize)]
struct File {
    study: Vec<Study>,
}

/// All studies.
///
/// # Errors
/// When the file is not of its form.
pub fn studies() -> Result<Vec<Study>, CalibrationError> {
    Ok(toml::from_str::<File>(STUDIES)?.study)
}
