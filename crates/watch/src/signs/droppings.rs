//! Droppings since the last look.

use super::look::{Look, besides, rising};
use crate::Law;
use snowhum_figures::watch_looks::WHITE_SNOW;
use snowhum_units::Same;

/// Weights of dots on snow, streaks on the hive, and none. Left by a flight today or by one in the last days; streaks
/// on the hive also by bees that were shut in too long.
pub(super) fn law(look: &Look<'_>) -> Law {
    let (view, p) = (&look.view, look.p);
    let today = rising(view.flight_hours, p.flight_sun_hours.value) * look.showing();
    let lately = (-view.confined_days / p.droppings_last_days.value).same_exp();
    let flown = besides(today, lately) * look.strength(p.flight_bees.value);
    let long = rising((view.confined_days - p.dysentery_after.value).max(0.0), p.dysentery_after.value);
    let ill = p.dysentery.value * long * look.showing();

    let white = look.day.snow_m >= WHITE_SNOW;
    let (stray_snow, seen_snow) = if white {
        (p.droppings_stray_snow.value, p.droppings_on_snow.value)
    } else {
        (p.droppings_no_snow.value, 0.0)
    };
    let on_snow = besides(stray_snow, seen_snow * flown);
    let on_hive = besides(p.droppings_stray_hive.value, besides(p.droppings_on_hive.value * flown, ill));
    Law::Choice([on_snow, (1.0 - on_snow) * on_hive, (1.0 - on_snow) * (1.0 - on_hive), 0.0])
}
