//! The generator's parameters, read from `data/weather_generator.toml`.

use serde::Deserialize;
use std::collections::BTreeMap;

const SHIPPED: &str = include_str!("../../../../data/weather_generator.toml");

/// What is wrong with a parameter file.
#[derive(Debug, thiserror::Error)]
pub enum GeneratorParameterError {
    /// Not the expected form.
    #[error("the generator's parameter file cannot be read: {0}")]
    Form(#[from] toml::de::Error),
    /// A parameter is not there.
    #[error("the generator's parameter {0} is missing")]
    Missing(&'static str),
    /// A parameter that nothing uses.
    #[error("the generator's parameter {0} is not known; is it spelled right?")]
    Unknown(String),
    /// Low, value and high out of order.
    #[error("the generator's parameter {0}: low, value and high must rise in that order")]
    Order(&'static str),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    parameter: BTreeMap<String, Entry>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    value: f64,
    low: f64,
    high: f64,
    #[serde(rename = "unit")]
    _unit: String,
    #[serde(rename = "source")]
    _source: String,
    #[serde(rename = "status")]
    _status: Status,
}

#[derive(Deserialize)]
enum Status {
    #[serde(rename = "published")]
    Published,
    #[serde(rename = "common practice")]
    CommonPractice,
    #[serde(rename = "from memory")]
    FromMemory,
    #[serde(rename = "judgement")]
    Judgement,
}

macro_rules! parameters {
    ($($name:ident)*) => {
        /// The values by name; units, ranges and sources stand in the file.
        #[derive(Debug, Clone, PartialEq)]
        pub(crate) struct Parameters {
            $(pub(crate) $name: f64,)*
        }

        impl Parameters {
            fn read(text: &str) -> Result<Self, GeneratorParameterError> {
                let mut all = toml::from_str::<File>(text)?.parameter;
                let read = Self { $($name: take(&mut all, stringify!($name))?,)* };
                match all.into_keys().next() {
                    Some(unknown) => Err(GeneratorParameterError::Unknown(unknown)),
                    None => Ok(read),
                }
            }
        }
    };
}

parameters! {
    mean_lag range_lag sky_lag mean_with_sky mean_with_range range_with_sky sd_base sd_per_annual_range sd_summer cold_tail cold_tail_gone_at
    winter_sd winter_lag range_base range_per_annual_range range_by_sun range_spread advection_below diurnal_above
    dew_offset dew_by_sky dew_spread wind_mean wind_shape wind_lag wind_with_sky sky_base sky_by_wet_days sky_spread
    sky_hourly wet_day_depth wet_day_depth_by_warmth wet_with_sky
}

impl Parameters {
    /// The parameters this version ships with.
    pub(crate) fn shipped() -> Result<Self, GeneratorParameterError> {
        Self::read(SHIPPED)
    }
}

fn take(all: &mut BTreeMap<String, Entry>, name: &'static str) -> Result<f64, GeneratorParameterError> {
    let entry = all.remove(name).ok_or(GeneratorParameterError::Missing(name))?;
    if entry.low <= entry.value && entry.value <= entry.high {
        Ok(entry.value)
    } else {
        Err(GeneratorParameterError::Order(name))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shipped_file_is_whole_and_mistakes_are_named() {
        Parameters::shipped().unwrap();
        let misspelt = SHIPPED.replace("[parameter.mean_lag]", "[parameter.mean_lug]");
        assert!(matches!(Parameters::read(&misspelt), Err(GeneratorParameterError::Missing("mean_lag"))));
        let turned = SHIPPED.replacen("high = 0.8", "high = 0.1", 1);
        assert!(matches!(Parameters::read(&turned), Err(GeneratorParameterError::Order("mean_lag"))));
    }
}
