//! Bees in the air before the hive.

use super::hour::Hour;
use super::look::{Look, rising};
use crate::Law;

/// Weights of a full cleansing flight, a thin one, traffic without one, and no bee.
///
/// A colony flies in warm enough air, the likelier to cleanse the longer it was shut in, and fully the more bees it
/// has. A dead hive shows a neighbour's stray flight at most, but robbers come and go there as if it lived.
pub(super) fn law(look: &Look<'_>, hour: Hour) -> Law {
    let p = look.p;
    let flying = look.flying(hour);
    let stray_well = p.flight_stray_well.value * flying;
    let stray_thin = p.flight_stray_thin.value * flying;
    let robbers = p.robbers_at_dead.value * look.robbing(hour);
    if !look.is_alive() {
        return Law::Choice([stray_well, stray_thin, robbers, 1.0 - stray_well - stray_thin - robbers]);
    }
    let out = flying * look.strength(p.flight_bees.value) * look.showing();
    let (least, most) = (p.cleansing_least.value, p.cleansing_most.value);
    let pressed = least + (most - least) * rising(look.view.confined_days, p.cleansing_days.value);
    let well = p.flight_well.value * look.strength(p.flight_well_bees.value);
    let cleansing = out * pressed;
    let shown_well = cleansing * well;
    let shown_thin = cleansing - shown_well;
    let traffic = out - cleansing;
    let unseen = 1.0 - out;
    Law::Choice([
        shown_well + unseen * stray_well,
        shown_thin + unseen * stray_thin,
        traffic,
        unseen * (1.0 - stray_well - stray_thin),
    ])
}
