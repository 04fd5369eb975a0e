//! Pollen carried in: a queen lays.

use super::hour::Hour;
use super::look::{Look, logistic, rising, there};
use crate::{Law, Life};

/// Carried on flying days while anything blooms, by a colony with brood; by one without a queen seldom; to a dead hive
/// only in appearance, or as the leavings of a swarm's scouts.
pub(super) fn law(look: &Look<'_>, hour: Hour) -> Law {
    let p = look.p;
    let day = look.day.season_day;
    let bloom = logistic((day - p.pollen_from_day.value) / p.season_width.value)
        * logistic((p.pollen_until_day.value - day) / p.season_width.value);
    let chance = look.flying(hour) * bloom;
    let wanted = match look.view.life {
        Life::Queenright => rising(look.view.brood, p.pollen_brood.value),
        Life::Queenless => p.pollen_queenless.value,
        Life::Dead { .. } => 0.0,
    };
    let own = p.pollen_seen.value * look.strength(p.flight_bees.value) * wanted * look.showing();
    there(p.pollen_stray.value * chance, chance * own)
}
