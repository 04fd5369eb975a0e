//! The model's parameters, read from `data/winter_parameters.toml`: value, range, unit, source and status of each.

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::OnceLock;

use crate::{JointDraw, JointDraws};

const SHIPPED: &str = include_str!("../../../data/winter_parameters.toml");
const JOINT: &str = include_str!("../../../data/winter_joint_draws.toml");

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
pub struct Parameter {
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

impl Parameter {
    /// Holds it at `value` in every member.
    pub fn fix(&mut self, value: f64) {
        self.value = value;
        self.varies = false;
    }

    /// The value at `z` standard deviates of its range; the value itself if it does not vary.
    #[must_use]
    pub fn at(&self, z: f64) -> f64 {
        match (self.varies, self.low, self.high) {
            (true, Some(p10), Some(p90)) => snowhum_units::Range { p10, p50: self.value, p90 }.at(z),
            _ => self.value,
        }
    }
}

/// Why a parameter file cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum ParameterError {
    /// Not the expected form.
    #[error("the parameter file cannot be read: {0}")]
    Form(#[from] toml::de::Error),
    /// A parameter is not there.
    #[error("parameter {0} is missing")]
    Missing(&'static str),
    /// A parameter that nothing uses.
    #[error("parameter {0} is not known; is it spelled right?")]
    Unknown(String),
    /// Low, value and high out of order.
    #[error("parameter {0}: low, value and high must rise in that order")]
    Order(&'static str),
    /// Joint draws of other parameters than the model's.
    #[error("the joint draws must be of {0} parameters in the model's order, each row with one deviate for each")]
    Joint(usize),
}

/// A parameter file as read, from which each parameter is taken by its name.
#[derive(Debug, Deserialize)]
pub struct ParameterFile {
    parameter: BTreeMap<String, Parameter>,
}

/// Makes a model's set of parameters, one field each, that is read from a file with exactly these entries.
#[macro_export]
macro_rules! parameters {
    ($(#[$about:meta])* $set:ident: $($name:ident)*) => { $crate::parameters! { $(#[$about])* $set with {}: $($name)* } };
    ($(#[$about:meta])* $set:ident with { $($beside:ident: $kind:ty)? }: $($name:ident)*) => {
        $(#[$about])*
        #[derive(Debug, Clone, PartialEq)]
        #[expect(missing_docs, reason = "each field is documented where it is defined, in the file it is read from")]
        pub struct $set {
            $(pub $name: $crate::Parameter,)*
            $(pub $beside: $kind,)?
        }

        impl $set {
            /// Names in the order of the model.
            pub const NAMES: &'static [&'static str] = &[$(stringify!($name)),*];

            /// Reads a parameter file.
            ///
            /// # Errors
            /// When the text is not TOML, a parameter is missing, unknown or its range out of order.
            pub fn read(text: &str) -> Result<Self, $crate::ParameterError> {
                let mut file = $crate::ParameterFile::read(text)?;
                let read = Self { $($name: file.take(stringify!($name))?,)* $($beside: <$kind>::default(),)? };
                file.finish()?;
                Ok(read)
            }

            /// A parameter by its name.
            pub fn get_mut(&mut self, name: &str) -> Option<&mut $crate::Parameter> {
                $(if name == stringify!($name) {
                    return Some(&mut self.$name);
                })*
                None
            }

            /// Every parameter with its name.
            pub fn iter(&self) -> impl Iterator<Item = (&'static str, &$crate::Parameter)> {
                [$((stringify!($name), &self.$name)),*].into_iter()
            }
        }
    };
}

parameters! {
    /// All parameters of the winter model, by name, and what real winters say of some of them together.
    Parameters with { joint: JointDraws }:
    bee_mass conductance_core_air conductance_core_mantle reference_cluster_mass tightest_at loosest_at volume_ratio
    tightest_density contracting_hours expanding_hours core_broodless core_brood mantle_floor mantle_motionless
    nest_cells nest_looseness rest_power rest_q10 power_ceiling chill_drop load_threshold load_wear honey_water hours_between_meals crop_reserve
    touched_per_kg climb_from cross_from carry_from move_rate feed_from stores_left_behind winter_bee_hazard
    winter_bee_ageing winter_bee_ageing_from resting_pace winter_bee_emergence summer_bee_hazard summer_bee_share
    spring_bee_hazard uncounted_mites wash_efficiency mites_half_damage mites_steepness damaged_bee_hazard mites_treated mite_growth
    viable_bees failing_rate queen_failure old_queen_factor late_queen_factor queen_missing queen_missing_unseen
    virgin_mates other_loss background_loss background_by_year background_by_yard background_by_size virus_loss laying_peak
    laying_half_bees laying_half_stores laying_warmth laying_warmth_width brood_light brood_light_scatter
    brood_light_width brood_light_lead brood_ends brood_ends_width brood_any_season brood_any_season_scatter laying_without_flight drone_layer_lays laying_workers_lay queenless_wear
    brood_food confinement_days confinement_wear daily_scatter fed_in_spring zone_share zone_exchange
    bare_comb_resistance comb_film honey_heat empty_comb_heat wind_pumping wall_film_water lid_film_water quilt_water
    floor_film_water roof_snow_catch roof_snow_density roof_snow_conductivity roof_snow_absorptance roof_drift_from
    roof_drift_share dioxide_eases dioxide_stops stifled_hours locked_in_hours way_out_from touch_over
}

impl Parameters {
    /// The parameters this version ships with.
    ///
    /// # Errors
    /// Never with the shipped file, which a test reads; the signature keeps a panic out of reach.
    pub fn shipped() -> Result<Self, ParameterError> {
        // Read once: a served page asks for them each time, and the joint draws are long.
        static READ: OnceLock<Parameters> = OnceLock::new();
        if let Some(read) = READ.get() {
            return Ok(read.clone());
        }
        let mut shipped = Self::read(SHIPPED)?;
        shipped.joint = JointDraws::read(JOINT)?;
        Ok(READ.get_or_init(|| shipped).clone())
    }
}

impl JointDraws {
    /// Reads a file of joint draws.
    ///
    /// # Errors
    /// When it is not TOML, or its columns are not [`JointDraw::NAMES`].
    pub fn read(text: &str) -> Result<Self, ParameterError> {
        let read: Self = toml::from_str(text)?;
        let columns = JointDraw::NAMES.len();
        let whole = |row: &Vec<f64>| row.len() == columns && row.iter().all(|z| z.is_finite());
        let ours = read.names.iter().map(String::as_str).eq(JointDraw::NAMES.iter().copied());
        (ours && read.rows.iter().all(whole)).then_some(read).ok_or(ParameterError::Joint(columns))
    }
}

impl ParameterFile {
    /// Reads the text of a file.
    ///
    /// # Errors
    /// When it is not TOML or not of the expected form.
    pub fn read(text: &str) -> Result<Self, ParameterError> {
        Ok(toml::from_str(text)?)
    }

    /// Takes a parameter out.
    ///
    /// # Errors
    /// When it is not there or its range out of order.
    pub fn take(&mut self, name: &'static str) -> Result<Parameter, ParameterError> {
        let parameter = self.parameter.remove(name).ok_or(ParameterError::Missing(name))?;
        let ordered = match (parameter.low, parameter.high) {
            (Some(low), Some(high)) => low <= parameter.value && parameter.value <= high,
            (None, None) => !parameter.varies,
            _ => false,
        };
        ordered.then_some(parameter).ok_or(ParameterError::Order(name))
    }

    /// Ends the reading.
    ///
    /// # Errors
    /// When a parameter is left that nothing took.
    pub fn finish(self) -> Result<(), ParameterError> {
        match self.parameter.into_keys().next() {
            Some(unknown) => Err(ParameterError::Unknown(unknown)),
            None => Ok(()),
        }
    }
}
