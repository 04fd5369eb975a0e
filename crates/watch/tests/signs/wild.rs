//! Hives and days as none is.

use proptest::prelude::*;
use snowhum_watch::{Conditions, FreshSnow, Life, Own, View};

/// Numbers as no hive has them.
fn wild() -> impl Strategy<Value = f64> {
    let beyond = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, 1e308, -1e308];
    prop_oneof![prop::sample::select(beyond.to_vec()), -1e6..1e6_f64, -1.0..30.0_f64]
}

pub(crate) fn any_view() -> impl Strategy<Value = View> {
    let life = prop_oneof![Just(Life::Queenright), Just(Life::Queenless), wild().prop_map(|days| Life::Dead { days })];
    (life, prop::collection::vec(wild(), 21)).prop_map(|(life, n)| View {
        life,
        bees: n[0],
        brood: n[1],
        seams: n[2],
        spoilt: n[3],
        stores_kg: n[4],
        other_kg: n[5],
        warm_c: n[6],
        cold_c: n[7],
        humidity: n[8],
        rime_hours: n[9],
        old_rime_hours: n[10],
        damp: n[11],
        litter_outside: n[12],
        litter_floor: n[13],
        flight_hours: n[14],
        confined_days: n[15],
        lid_resistance: n[16],
        own: Own { tare_kg: n[17], side_share: n[18], seen: n[19], ear: n[20] },
    })
}

pub(crate) fn any_day() -> impl Strategy<Value = Conditions> {
    (prop::collection::vec(wild(), 5), any::<bool>()).prop_map(|(n, snowed)| Conditions {
        air_c: n[0],
        wind_m_per_s: n[1],
        snow_m: n[2],
        fresh_snow: if snowed { FreshSnow::Noted } else { FreshSnow::None },
        week_c: n[3],
        season_day: n[4],
    })
}
