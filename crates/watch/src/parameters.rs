//! The watch's parameters, read from `data/watch_parameters.toml`: value, range, unit, source and status of each.

use crate::litter::LitterLaw;
use crate::remains::DeadLaw;
use snowhum_figures::{FigureFault, figures, files, once};
use std::sync::OnceLock;

figures! {
    /// All parameters of the watch, by name.
    Parameters:
    quiet quiet_cold quiet_wind quiet_most quiet_showing dead_size dead_size_raked dead_stray dead_stray_mean found_on_ground
    snowed_over floor_to_board floor_to_tray floor_to_guard rime_hours rime_seen rime_told rime_stray rime_stray_days
    rime_outlives rime_lasts thaw_at thaw_width damp_seen damp_stray hum_ear hum_tube hum_knock hum_bees hum_muffled
    hum_stray poke_answers poke_bees poke_cold poke_stray poke_visitors flight_air flight_width flight_hour flight_missed flight_dull flight_sun_hours flight_wind flight_bees cleansing_least
    cleansing_most cleansing_days flight_well flight_well_bees flight_stray_well flight_stray_thin robbers_at_dead
    robbers_at_living robbers_stray robbing_from_day robbing_until_day robbing_stores season_width wasps_at_living
    wasps_at_dead pollen_seen pollen_brood pollen_queenless pollen_stray pollen_from_day pollen_until_day
    droppings_on_snow droppings_on_hive droppings_last_days droppings_stray_snow droppings_no_snow droppings_stray_hive
    dysentery dysentery_after warmth_bees melt_seen melt_resistance melt_snow melt_stray spot_seen spot_resistance
    spot_contrast spot_stray hand_feels hand_contrast hand_stray probe_sd probe_combs_sd probe_seams cluster_c probe_stray probe_wide_sd humidity_sd
    humidity_wide_sd seams_least_sd seams_spread seams_wide_sd stripes_stray cluster_seen cluster_stray scale_sd
    roof_snow roof_snow_most lift_shows lift_sd side_sd stores_least_sd stores_most_sd weight_stray weight_wide
    heft_spread heft_light heft_heavy drones_from_day drones_until_day drones_in_season drones_queenright
    drones_queenless drones_stray dead_queen_queenright dead_queen_queenless dead_queen_stray larvae_thrown larvae_stray
    wings_seen wings_stray bird_at_living bird_at_dead mouse_at_living mouse_at_dead damage_at_living damage_at_dead
    smell_stray smell_seen smell_at smell_width smell_days seen_dead seen_dead_wrongly fall_out fall_out_none lost_afield carried_out
    dropped_near whole_flight_hours litter_gone_days litter_hidden bare_ground brood_cost robbed_an_hour robbers_find_after side_share seen_share ear_spread
}

impl Parameters {
    /// The parameters this version ships with.
    ///
    /// # Errors
    /// Never with the shipped file, which a test reads; the signature keeps a panic out of reach.
    pub fn shipped() -> Result<Self, FigureFault> {
        static READ: OnceLock<Parameters> = OnceLock::new();
        once(&READ, || Self::read(files::WATCH_PARAMETERS))
    }

    /// How dead bees move.
    pub(crate) fn litter(&self) -> LitterLaw {
        LitterLaw {
            fall_out: self.fall_out.value,
            fall_out_none_c: self.fall_out_none.value,
            lost_afield: self.lost_afield.value,
            carried_out: self.carried_out.value,
            dropped_near: self.dropped_near.value,
            whole_flight_hours: self.whole_flight_hours.value,
            gone_days: self.litter_gone_days.value,
            hidden_m: self.litter_hidden.value,
            bare_m: self.bare_ground.value,
        }
    }

    /// How a dead hive fares.
    pub(crate) fn dead_hive(&self) -> DeadLaw {
        DeadLaw { robbed_an_hour: self.robbed_an_hour.value, found_after_days: self.robbers_find_after.value }
    }
}
