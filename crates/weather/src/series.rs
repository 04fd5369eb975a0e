//! Hourly series, and ensembles of them that share one clock.

use crate::Far;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use snowhum_physics::saturation::{over_ice_or_water, over_water};
use snowhum_say::Message;
use snowhum_units::{Degree, Fraction, Kelvin, Metre, MetrePerSecond, Pascal, WattPerSquareMetre};

/// A point on the earth.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Place {
    /// North positive.
    pub latitude: Degree,
    /// East positive.
    pub longitude: Degree,
    /// Above sea level.
    pub elevation: Metre,
}

/// Hours without gaps; entry `i` is the mean (rain, snow: the sum) over the hour from `start + i` hours.
///
/// All columns have the same length.
#[derive(Debug, Clone, PartialEq)]
pub struct Hourly {
    /// Beginning of the first hour.
    pub start: Timestamp,
    /// Air temperature at hive height.
    pub temperature: Vec<Kelvin>,
    /// Relative humidity, over water above 0 °C and over ice below.
    pub humidity: Vec<Fraction>,
    /// Wind in the open at 10 m.
    pub wind: Vec<MetrePerSecond>,
    /// Sky covered.
    pub cloud: Vec<Fraction>,
    /// Global sun on the level.
    pub global: Vec<WattPerSquareMetre>,
    /// Direct sun on a face turned to it.
    pub direct: Vec<WattPerSquareMetre>,
    /// Diffuse sun on the level.
    pub diffuse: Vec<WattPerSquareMetre>,
    /// Rain and melted snow in the hour, as a depth of water.
    pub precipitation: Vec<Metre>,
    /// Snow lying.
    pub snow_depth: Vec<Metre>,
    /// Air pressure at the site.
    pub pressure: Vec<Pascal>,
}

impl Hourly {
    /// Hours held.
    #[must_use]
    pub fn len(&self) -> usize {
        self.temperature.len()
    }

    /// Whether no hour is held.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.temperature.is_empty()
    }

    /// Relative humidity of an hour as stations give it: over water, in frost too.
    ///
    /// # Panics
    /// If the hour is not held.
    #[must_use]
    pub fn humidity_over_water(&self, hour: usize) -> Fraction {
        let air = self.temperature[hour];
        Fraction::new(self.humidity[hour].get() * over_ice_or_water(air).get() / over_water(air).get())
    }
}

/// Possible weathers over the same hours, equally likely.
#[derive(Debug, Clone, PartialEq)]
pub struct Ensemble {
    /// Beginning of the first hour of every path.
    pub start: Timestamp,
    /// The paths.
    pub paths: Vec<Hourly>,
    /// What they stand on.
    pub provenance: Provenance,
}

impl Ensemble {
    /// Hours in each path.
    #[must_use]
    pub fn hours(&self) -> usize {
        self.paths.first().map_or(0, Hourly::len)
    }
}

/// Air temperature alone of possible weathers over the same hours: an eighth of the memory of an [`Ensemble`] and less.
#[derive(Debug, Clone, PartialEq)]
pub struct AirPaths(pub Vec<Vec<Kelvin>>);

impl From<&Ensemble> for AirPaths {
    fn from(ensemble: &Ensemble) -> Self {
        Self(ensemble.paths.iter().map(|path| path.temperature.clone()).collect())
    }
}

/// Where a weather comes from, for the keeper to read beside every answer.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Provenance {
    /// One line.
    pub source: Message,
    /// What to know: filled gaps, coarse terrain, a typical year's missing cold, attribution.
    pub notes: Vec<Message>,
    /// Files it stands on whose place lies far from the yard.
    pub far: Vec<Far>,
}
