//! Whether combs can be lifted in the days ahead: neither moved about a hive nor given to another in the cold.

use snowhum_units::Kelvin;

use crate::plan::Base;

/// Air below which combs are never lifted: keepers of several countries, as the jobs have it (`comb_air`).
const FROM: Kelvin = Kelvin::from_celsius(10.0);

/// Whether an hour of the `days` ahead is warm enough, in at least half of the weather that may come.
pub(crate) fn can_be_lifted(base: &Base<'_>, days: usize) -> bool {
    let (environment, behind) = base.ahead.weather();
    let hours = 24 * behind..24 * (behind + days).min(environment.days());
    let paths = environment.paths();
    let mild = |path: &usize| hours.clone().any(|hour| environment.air(hour, *path) >= FROM);
    2 * (0..paths).filter(mild).count() >= paths
}
