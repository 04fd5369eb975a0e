//! Weighings.

use super::look::{Look, reading};
use crate::Law;
use snowhum_apiary::Weighing;
use snowhum_units::Same;

/// A weighing weighs the dead as the living: it tells of stores.
pub(super) fn law(weighing: &Weighing, look: &Look<'_>) -> Law {
    let (view, p) = (&look.view, look.p);
    let gross = view.own.tare_kg + view.stores_kg + view.other_kg;
    let snow = p.roof_snow.value * look.day.snow_m.min(p.roof_snow_most.value);
    let around = |mean: f64, sd: f64| reading(mean, sd, p.weight_stray.value, p.weight_wide.value * sd);
    match weighing {
        Weighing::Stores { plus_minus_kg, .. } => {
            let stated = 0.5 * plus_minus_kg.get().abs();
            let stated = if stated.is_finite() { stated } else { 0.0 };
            around(view.stores_kg, stated.clamp(p.stores_least_sd.value, p.stores_most_sd.value))
        }
        Weighing::Scale { .. } => around(gross + snow, p.scale_sd.value.same_hypot(snow)),
        Weighing::TwoSidedLift { .. } => around((gross + snow) * p.lift_shows.value, p.lift_sd.value.same_hypot(snow)),
        Weighing::OneSide { .. } => {
            let share = view.own.side_share;
            around((gross + snow) * share, p.side_sd.value.same_hypot(snow * share))
        }
        Weighing::Heft(_) => heft(gross, look),
    }
}

/// Light, fair or heavy: the hand's estimate of the whole, wrong by a factor, held against the empty hive.
fn heft(gross: f64, look: &Look<'_>) -> Law {
    let (tare, p) = (look.view.own.tare_kg, look.p);
    let under = |limit: f64| normal_share((limit / gross.max(1.0)).same_ln() / p.heft_spread.value);
    let light = under(tare + p.heft_light.value);
    let not_heavy = under(tare + p.heft_heavy.value);
    Law::Choice([light, not_heavy - light, 1.0 - not_heavy, 0.0])
}

/// Share of a normal distribution below `z`.
fn normal_share(z: f64) -> f64 {
    0.5 * libm::erfc(-z / std::f64::consts::SQRT_2)
}
