//! Signs of trouble; most say little about life.

use super::look::{Look, besides, logistic, rising, there};
use crate::Law;

/// Crawlers with crumpled wings, by the share that mites spoilt.
pub(super) fn crumpled_wings(look: &Look<'_>) -> Law {
    let p = look.p;
    there(p.wings_stray.value, p.wings_seen.value * look.view.spoilt * look.showing())
}

/// Robbers fighting or carrying: they come to the dead, and to the weak.
pub(super) fn robbers(look: &Look<'_>) -> Law {
    let p = look.p;
    let share = if look.is_alive() { p.robbers_at_living.value } else { p.robbers_at_dead.value };
    Law::There(besides(p.robbers_stray.value, share * look.robbing()))
}

/// Wasps going in and out while they still fly.
pub(super) fn wasps(look: &Look<'_>) -> Law {
    let p = look.p;
    let share = if look.is_alive() { p.wasps_at_living.value } else { p.wasps_at_dead.value };
    Law::There(besides(p.robbers_stray.value, share * look.flying_at_all()))
}

/// A bird at the entrance.
pub(super) fn bird(look: &Look<'_>) -> Law {
    told(look, look.p.bird_at_living.value, look.p.bird_at_dead.value)
}

/// A mouse or its leavings.
pub(super) fn mouse(look: &Look<'_>) -> Law {
    told(look, look.p.mouse_at_living.value, look.p.mouse_at_dead.value)
}

/// Storm, beast or vandal: they ask for no life, though what they broke may end it.
pub(super) fn damage(look: &Look<'_>) -> Law {
    told(look, look.p.damage_at_living.value, look.p.damage_at_dead.value)
}

/// A smell of decay, which grows with warm days since the end.
pub(super) fn smell(look: &Look<'_>) -> Law {
    let p = look.p;
    let rotting = logistic((look.day.week_c - p.smell_at.value) / p.smell_width.value);
    let grown = look.dead_days().map_or(0.0, |days| rising(days * rotting, p.smell_days.value));
    Law::There(besides(p.smell_stray.value, p.smell_seen.value * grown))
}

/// The colony was seen dead by a keeper who looked in.
pub(super) fn seen_dead(look: &Look<'_>) -> Law {
    told(look, look.p.seen_dead_wrongly.value, look.p.seen_dead.value)
}

fn told(look: &Look<'_>, living: f64, dead: f64) -> Law {
    Law::There(if look.is_alive() { living } else { dead })
}
