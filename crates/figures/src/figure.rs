//! A figure with where it comes from.

use serde::{Deserialize, Serialize};

/// How well a figure is founded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Status {
    /// Fitted to the outcomes of real winters, together with others.
    #[serde(rename = "calibrated")]
    Calibrated,
    /// Read in a named publication.
    #[serde(rename = "published")]
    Published,
    /// What the trade does, without a source.
    #[serde(rename = "common practice")]
    CommonPractice,
    /// Recalled, not read.
    #[serde(rename = "from memory")]
    FromMemory,
    /// Ours, for want of a source.
    #[serde(rename = "judgement")]
    Judgement,
}

impl Status {
    /// As it is written beside a figure.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Calibrated => "calibrated",
            Self::Published => "published",
            Self::CommonPractice => "common practice",
            Self::FromMemory => "from memory",
            Self::Judgement => "judgement",
        }
    }
}

/// One figure with where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Figure {
    /// The value.
    pub value: f64,
    /// One in ten below.
    #[serde(default)]
    pub low: Option<f64>,
    /// One in ten above.
    #[serde(default)]
    pub high: Option<f64>,
    /// Whether each member of an ensemble draws its own from the range.
    #[serde(default)]
    pub varies: bool,
    /// The range before real winters were read, where they set it: one in ten below, middle, one in ten above.
    #[serde(default)]
    pub prior: Option<[f64; 3]>,
    /// Unit and meaning.
    pub unit: String,
    /// Where it comes from.
    pub source: String,
    /// How well it is founded.
    pub status: Status,
}

/// Figures of one kind in a row, such as one a month.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FigureRow {
    /// The values.
    pub values: Vec<f64>,
    /// Unit and meaning.
    pub unit: String,
    /// Where they come from.
    pub source: String,
    /// How well they are founded.
    pub status: Status,
}
