//! Why the checks cannot be computed.

use snowhum_weather::{GeneratorFault, OutsideGrid, WeatherFaults};
use snowhum_winter::ParameterError;

/// What stands in the way.
#[derive(Debug, thiserror::Error)]
pub enum Fault {
    /// The winter model's parameters cannot be read.
    #[error(transparent)]
    Parameters(#[from] ParameterError),
    /// A place of the checks lies outside the built-in climate.
    #[error(transparent)]
    Climate(#[from] OutsideGrid),
    /// No weather can be made for a place.
    #[error(transparent)]
    Generator(#[from] GeneratorFault),
    /// The record of a real winter does not read.
    #[error(transparent)]
    Record(#[from] WeatherFaults),
    /// The record of a real winter does not unpack.
    #[error("the packed record of a real winter is damaged; restore it from the repository")]
    Packed,
    /// Real winters cannot be run.
    #[error(transparent)]
    Real(#[from] snowhum_calibration::CalibrationError),
    /// The scores of the calibration do not read.
    #[error("data/real_winter_scores.toml does not read; run `cargo xtask calibrate`: {0}")]
    Scores(#[from] toml::de::Error),
    /// No winters were made for the place whose record is at hand.
    #[error("no winters are made for Northway; name it among the places")]
    Place,
}
