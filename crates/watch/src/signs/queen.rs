//! Signs of the queen's state.

use super::look::{Look, logistic, rising, there};
use crate::{Law, Life};

/// Drones flying or thrown out: odd when the season has none, and then a sign of a failed queen.
pub(super) fn drones(look: &Look<'_>) -> Law {
    let p = look.p;
    let day = look.day.season_day;
    let season = logistic((day - p.drones_from_day.value) / p.season_width.value)
        * logistic((p.drones_until_day.value - day) / p.season_width.value);
    let odd = match look.view.life {
        Life::Queenright => p.drones_queenright.value,
        Life::Queenless => p.drones_queenless.value,
        Life::Dead { .. } => 0.0,
    };
    let own = odd + season * (p.drones_in_season.value - odd) * look.strength(p.flight_bees.value);
    there(p.drones_stray.value, own.max(0.0) * look.showing())
}

/// A dead queen on the board.
pub(super) fn dead_queen(look: &Look<'_>) -> Law {
    let p = look.p;
    let own = match look.view.life {
        Life::Queenless => p.dead_queen_queenless.value,
        Life::Queenright => p.dead_queen_queenright.value,
        Life::Dead { .. } => 0.0,
    };
    there(p.dead_queen_stray.value, own)
}

/// Larvae or pupae thrown out: there is or was brood, and it fares ill.
pub(super) fn larvae(look: &Look<'_>) -> Law {
    let p = look.p;
    let own = p.larvae_thrown.value * rising(look.view.brood, p.pollen_brood.value) * look.showing();
    there(p.larvae_stray.value, own)
}
