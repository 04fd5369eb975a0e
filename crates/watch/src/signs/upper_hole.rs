//! Rime and damp at the upper hole: breath that froze.

use super::look::{Look, besides, rising};
use crate::Law;
use snowhum_units::Same;

/// Weights of new rime, rime of unknown age, a damp rim and a dry one, each if the ones before it are not there. Hours
/// of rime make it likelier up to what a keeper sees at best; new rime is not always told from old. Rime outlives the
/// bees, so a dead hive keeps what hung there, less as the days go by. A colony that sits quiet breathes little new rime.
pub(super) fn law(look: &Look<'_>) -> Law {
    let (view, p) = (&look.view, look.p);
    let days = look.dead_days();
    let kept = days.map_or(1.0, |days| p.rime_outlives.value * (-days / p.rime_lasts.value).same_exp());
    let breath = if look.is_alive() { look.showing() } else { 1.0 };
    let newest = breath * rising(view.rime_hours, p.rime_hours.value) * look.frozen(look.day.air_c) * kept;
    let oldest =
        rising(view.old_rime_hours, p.rime_hours.value) * look.frozen(look.day.air_c.max(look.day.week_c)) * kept;
    let stray = p.rime_stray.value * days.map_or(1.0, |days| (-days / p.rime_stray_days.value).same_exp());

    let rime = besides(stray, p.rime_seen.value * newest);
    let new_rime = rime * p.rime_told.value;
    let old_rime = rime - new_rime + (1.0 - rime) * p.rime_seen.value * oldest;
    let bare = 1.0 - new_rime - old_rime;
    let damp = besides(p.damp_stray.value, p.damp_seen.value * view.damp);
    Law::Choice([new_rime, old_rime, bare * damp, bare * (1.0 - damp)])
}
