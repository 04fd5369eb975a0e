//! Seams counted: stripes of wax crumbs on the tray, bees under the lid.

use super::look::{Look, reading, there};
use crate::Law;

/// Fresh stripes stand for the seams that eat; a dead hive makes none.
pub(super) fn stripes(look: &Look<'_>) -> Law {
    count_of(look, look.p.stripes_stray.value)
}

/// Seams of living bees counted under the lid: none in a dead hive, but for a mistake.
pub(super) fn counted(look: &Look<'_>) -> Law {
    count_of(look, look.p.cluster_stray.value)
}

/// Living bees seen under the lid by a keeper who lifted it.
pub(super) fn cluster_seen(look: &Look<'_>) -> Law {
    let p = look.p;
    let own = if look.is_alive() { p.cluster_seen.value } else { 0.0 };
    there(p.cluster_stray.value, own)
}

fn count_of(look: &Look<'_>, stray: f64) -> Law {
    let p = look.p;
    let seams = if look.is_alive() { look.view.seams } else { 0.0 };
    let sd = p.seams_least_sd.value + p.seams_spread.value * seams;
    reading(seams, sd, stray, p.seams_wide_sd.value)
}
