//! The hum of a cluster.

use super::look::{Look, logistic, there};
use crate::Law;
use snowhum_apiary::Listening;
use snowhum_units::Same;

/// Heard by the way of listening, the strength of the colony, what the lid swallows, and how this hive and this ear go
/// together (wall, wrap and hearing are learned there). A dead hive hums for a neighbour or the wind.
pub(super) fn law(how: Listening, look: &Look<'_>) -> Law {
    let p = look.p;
    let best = match how {
        Listening::Ear => p.hum_ear.value,
        Listening::Tube => p.hum_tube.value,
        Listening::Knock => p.hum_knock.value,
    };
    let let_out = 1.0 / (1.0 + look.view.lid_resistance / p.hum_muffled.value);
    let plain = best * look.strength(p.hum_bees.value) * let_out * look.showing();
    there(p.hum_stray.value, shifted(plain, look.view.own.ear))
}

/// A chance moved by `shift` on its log-odds; none stays none.
fn shifted(chance: f64, shift: f64) -> f64 {
    if chance <= 0.0 {
        return 0.0;
    }
    logistic((chance / (1.0 - chance)).same_ln() + shift)
}
