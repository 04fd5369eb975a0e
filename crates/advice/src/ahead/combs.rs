//! Whether combs can be lifted in the days ahead: neither moved about a hive nor given to another in the cold.

use snowhum_apiary::food_in;
use snowhum_units::{Kelvin, Kilogram};

use super::run::Run;

/// Air below which combs are never lifted: keepers of several countries, as the jobs have it (`comb_air`).
const FROM: Kelvin = Kelvin::from_celsius(10.0);

/// Days ahead that are looked at, and how many of them must have a mild hour (judgement: one may be rain).
const AHEAD: usize = 7;
const MILD_DAYS: usize = 2;

/// Share of a hive's combs that holds stores once it is fed full (judgement: as of a frame worth moving).
const FULL: f64 = 0.9;

/// Stores that a hive's combs still take: it is never fed more, whatever is short.
pub(crate) fn room(run: &Run<'_>, at: usize) -> Kilogram {
    let housed = &run.housed[at];
    let combs = f64::from(housed.hive.comb_count());
    let all = food_in(FULL * combs, housed.hive.mean_comb_side()).p50;
    Kilogram::new((all - housed.colony.stores.total.p50).get().max(0.0))
}

/// Whether combs can be lifted on some day of the week ahead, in at least half of the weather that may come.
pub(crate) fn can_be_lifted(run: &Run<'_>) -> bool {
    let (environment, days) = run.ahead.first_days(AHEAD);
    let paths = environment.paths();
    let is_mild = |day: usize, path: usize| (24 * day..24 * (day + 1)).any(|hour| environment.air(hour, path) >= FROM);
    let fits = |path: &usize| days.clone().filter(|day| is_mild(*day, *path)).count() >= MILD_DAYS;
    2 * (0..paths).filter(fits).count() >= paths
}

#[cfg(test)]
mod tests {
    use super::FROM;

    #[test]
    fn combs_are_lifted_from_the_jobs_own_figure_on() {
        let triggers = crate::jobs::Triggers::shipped().unwrap();
        assert!((FROM.celsius() - triggers.comb_air.value).abs() < 1e-9);
    }
}
