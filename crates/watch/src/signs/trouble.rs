//! Signs of trouble; most say little about life, and some but how often they are seen at the living and at the dead (`signs.rs`).

use super::hour::Hour;
use super::look::{Look, besides, logistic, rising, there};
use crate::Law;

/// Crawlers with crumpled wings, by the share that mites spoilt.
pub(super) fn crumpled_wings(look: &Look<'_>) -> Law {
    let p = look.p;
    there(p.wings_stray.value, p.wings_seen.value * look.view.spoilt * look.showing())
}

/// Robbers fighting or carrying: they come to the dead, and to the weak.
pub(super) fn robbers(look: &Look<'_>, hour: Hour) -> Law {
    let p = look.p;
    let share = if look.is_alive() { p.robbers_at_living.value } else { p.robbers_at_dead.value };
    Law::There(besides(p.robbers_stray.value, share * look.robbing(hour)))
}

/// Wasps going in and out while they still fly.
pub(super) fn wasps(look: &Look<'_>) -> Law {
    let p = look.p;
    let share = if look.is_alive() { p.wasps_at_living.value } else { p.wasps_at_dead.value };
    Law::There(besides(p.robbers_stray.value, share * look.flying_at_all()))
}

/// A smell of decay, which grows with warm days since the end.
pub(super) fn smell(look: &Look<'_>) -> Law {
    let p = look.p;
    let rotting = logistic((look.day.week_c - p.smell_at.value) / p.smell_width.value);
    let grown = look.dead_days().map_or(0.0, |days| rising(days * rotting, p.smell_days.value));
    Law::There(besides(p.smell_stray.value, p.smell_seen.value * grown))
}
