//! The model's parameters, read from `data/winter_parameters.toml`: value, range, unit, source and status of each.

use serde::de::Error;
use snowhum_figures::{FigureFault, figures, files, once};
use std::sync::OnceLock;

use crate::{JointDraw, JointDraws};

const JOINT: &str = include_str!("../../../data/winter_joint_draws.toml");

figures! {
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
    pub fn shipped() -> Result<Self, FigureFault> {
        static READ: OnceLock<Parameters> = OnceLock::new();
        once(&READ, || Ok(Self { joint: JointDraws::read(JOINT)?, ..Self::read(files::WINTER_PARAMETERS)? }))
    }
}

impl JointDraws {
    /// Reads a file of joint draws.
    ///
    /// # Errors
    /// When it is not TOML, or its columns are not [`JointDraw::NAMES`].
    pub fn read(text: &str) -> Result<Self, FigureFault> {
        let read: Self = toml::from_str(text)?;
        let columns = JointDraw::NAMES.len();
        let whole = |row: &Vec<f64>| row.len() == columns && row.iter().all(|z| z.is_finite());
        let ours = read.names.iter().map(String::as_str).eq(JointDraw::NAMES.iter().copied());
        if !ours || !read.rows.iter().all(whole) {
            return Err(toml::de::Error::custom(format!(
                "the joint draws must be of {columns} parameters in the model's order, each row with one deviate for each"
            ))
            .into());
        }
        Ok(read)
    }
}
