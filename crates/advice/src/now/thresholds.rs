//! What words and lids go by, read from `data/now.toml`.

use snowhum_winter::{ParameterError, parameters};

const SHIPPED: &str = include_str!("../../../../data/now.toml");

parameters! {
    /// Thresholds of the present, by name.
    Thresholds:
    alive_sound queen_sound fed_sound worth_acting lid_look_air
    lid_minutes_air lid_minute_air lid_seconds_air lid_look_wind lid_minutes_wind lid_minute_wind lid_seconds_wind
    lid_look_time lid_minutes_time lid_minute_time lid_seconds_time
    verdict_today verdict_week verdict_hungry_at_once verdict_count_holds
    verdict_least_brood look_tells round_days
}

impl Thresholds {
    /// The thresholds this version ships with.
    ///
    /// # Errors
    /// Never with the shipped file, which a test reads; the signature keeps a panic out of reach.
    pub fn shipped() -> Result<Self, ParameterError> {
        Self::read(SHIPPED)
    }
}

#[cfg(test)]
mod tests {
    use super::Thresholds;

    #[test]
    fn the_shipped_file_reads() {
        assert!(Thresholds::shipped().is_ok_and(|all| all.iter().all(|(_, one)| !one.source.is_empty())));
    }
}
