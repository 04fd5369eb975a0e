//! What can go wrong.

use snowhum_weather::GeneratorFault;
use snowhum_winter::ParameterError;

/// Why real winters could not be read, run or weighed.
#[derive(Debug, thiserror::Error)]
pub enum CalibrationError {
    /// The file of studies is not of its form.
    #[error("data/real_winters.toml cannot be read: {0}")]
    Studies(#[from] toml::de::Error),
    /// A place outside the built-in climate, or a date that no weather is made for.
    #[error("no weather can be made for {study}: {fault}")]
    Weather {
        /// Whose winter.
        study: String,
        /// Why.
        fault: GeneratorFault,
    },
    /// A place without a built-in climate.
    #[error("{0} lies outside the built-in climate")]
    Climate(String),
    /// The model's parameters.
    #[error(transparent)]
    Parameters(#[from] ParameterError),
    /// The emulator of a row cannot be solved.
    #[error("the emulator of \"{0}\" cannot be solved: its design has too few points")]
    Emulator(String),
    /// The file of parameters cannot be edited.
    #[error("data/winter_parameters.toml cannot be edited: {0}")]
    Edit(#[from] toml_edit::TomlError),
}
