//! Warmth that gets out: snow melted on the roof, a warm spot in a thermal picture, a hand under the lid.

use super::look::{Look, rising, there};
use crate::Law;
use snowhum_units::Same;

/// A hole in the snow on the roof: none without snow, and none over a thick lid.
pub(super) fn melted_snow(look: &Look<'_>) -> Law {
    let p = look.p;
    let snow = rising(look.day.snow_m, p.melt_snow.value);
    let let_out = (-look.view.lid_resistance / p.melt_resistance.value).same_exp();
    let own = p.melt_seen.value * look.strength(p.warmth_bees.value) * let_out;
    there(p.melt_stray.value * snow, snow * own)
}

/// A warm spot, clearer through a thin lid and in the cold.
pub(super) fn thermal_spot(look: &Look<'_>) -> Law {
    let p = look.p;
    let through = 1.0 / (1.0 + look.view.lid_resistance / p.spot_resistance.value);
    let contrast = rising((look.view.warm_c - look.day.air_c).max(0.0), p.spot_contrast.value);
    let own = p.spot_seen.value * through * contrast * look.strength(p.warmth_bees.value);
    there(p.spot_stray.value, own)
}

/// A bare hand on the inner cover, right after the lid is lifted off: the air under it against the air outdoors, in a living
/// hive and a dead one alike.
pub(super) fn under_lid(look: &Look<'_>) -> Law {
    let p = look.p;
    let warmer = (look.view.warm_c - look.day.air_c).max(0.0);
    there(p.hand_stray.value, p.hand_feels.value * rising(warmer, p.hand_contrast.value))
}
