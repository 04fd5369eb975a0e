//! What jobs wait for, read from `data/jobs.toml`.

use snowhum_winter::{ParameterError, parameters};

const SHIPPED: &str = include_str!("../../../../data/jobs.toml");

parameters! {
    /// Triggers of the year's jobs, by name.
    Triggers:
    feeding_days brood_ends_air winter_bees_days winter_bees_light count_before_days cluster_air comb_air frost_nights guard_late_high
    wrap_mean flying_over_high cellar_mean hard_frost broodless_after_days brood_none weigh_before_days watch_before_flow_days
    snow_lies snow_left thaw_mean lid_air lid_wind spring_light mild_air look_air look_wind full_look_air unwrap_night spring_syrup_high
    pollen_before_days dandelion_warmth heft_every_days hungry_within_days weak_frames
}

impl Triggers {
    /// The triggers this version ships with.
    ///
    /// # Errors
    /// Never with the shipped file, which a test reads; the signature keeps a panic out of reach.
    pub fn shipped() -> Result<Self, ParameterError> {
        Self::read(SHIPPED)
    }
}

#[cfg(test)]
mod tests {
    use super::Triggers;

    #[test]
    fn the_shipped_file_reads_and_names_its_sources() {
        let triggers = Triggers::shipped().map_err(|error| error.to_string());
        assert!(triggers.is_ok_and(|all| all.iter().all(|(_, one)| !one.source.is_empty() && !one.unit.is_empty())));
    }
}
