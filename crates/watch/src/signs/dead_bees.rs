//! Dead bees that were not there at the last look.

use super::look::Look;
use crate::{FreshSnow, Law};
use snowhum_apiary::DeadPlace;

/// A negative binomial count. On snow and ground lie those carried or flown out; on board, tray, behind the guard and at the hook a
/// share of those on the floor: the litter of the days that went by, whatever the bees do today. Fresh snow hides what came before it: a smaller mean
/// with a smaller size, which puts more of the chance on none at all. Snow of the weather walked has hidden what lies outside
/// already; only snow that the keeper alone saw hides it here.
pub(super) fn law(place: DeadPlace, look: &Look<'_>) -> Law {
    let (view, p) = (&look.view, look.p);
    let outside = view.litter_outside * view.own.seen;
    let found = match place {
        DeadPlace::Snow => outside,
        DeadPlace::Ground => outside * p.found_on_ground.value,
        DeadPlace::Board => view.litter_floor * p.floor_to_board.value,
        DeadPlace::Tray => view.litter_floor * p.floor_to_tray.value,
        DeadPlace::Guard | DeadPlace::Hook => view.litter_floor * p.floor_to_guard.value,
    };
    let is_hidden = match place {
        DeadPlace::Snow | DeadPlace::Ground => look.day.fresh_snow == FreshSnow::Noted,
        DeadPlace::Board => look.day.fresh_snow != FreshSnow::None,
        DeadPlace::Tray | DeadPlace::Guard | DeadPlace::Hook => false,
    };
    let left = if is_hidden { p.snowed_over.value } else { 1.0 };
    let size = match place {
        DeadPlace::Guard | DeadPlace::Hook => p.dead_size_raked.value,
        DeadPlace::Snow | DeadPlace::Ground | DeadPlace::Board | DeadPlace::Tray => p.dead_size.value,
    };
    Law::Count { mean: found * left + p.dead_stray_mean.value, size: size * left, stray: p.dead_stray.value }
}
