//! Air through and within the hive: stack, wind, and bees that fan.

use crate::block::{Bees, Boundary, Heat};
use crate::lanes::{LANES, clamp, gate, max};
use crate::shell::Shell;

const GRAVITY: f64 = 9.80665;
/// Dry air, J/(kg K).
pub(crate) const AIR_HEAT: f64 = 1006.0;
/// Gas constant of dry air, J/(kg K).
const GAS: f64 = 287.05;
/// Air round the cluster above which bees fan (Stabentheiner and others; the figure from memory).
const FANNING_FROM: f64 = 20.0;
/// Share of the flow that fanning adds for each kelvin above (judgement).
const FANNING: f64 = 0.5;

/// Flows of the hour, from the temperatures at its beginning.
///
/// Two openings in series under stack and wind pressure, `m = C_d A_eff sqrt(2 rho (dp_stack + dp_wind))`: wind and
/// stack flows add in squares (ASHRAE Fundamentals, ch. 16). The cold zone also trades air with outdoors through the
/// low openings alone (entrance, mesh, its half of the cracks), `(C_d / 3) A sqrt(g h dT / T)` and a small share of the wind.
#[inline(always)]
pub(crate) fn flow(shell: &Shell, boundary: &Boundary, bees: &Bees, heat: &mut Heat) {
    let (low, high) = (&shell.ways.low, &shell.ways.high);
    for i in 0..LANES {
        let outside_k = boundary.air[i] + 273.15;
        let per_kelvin = 1.0 / outside_k;
        let density = shell.pressure * (1.0 / GAS) * per_kelvin;
        let free_low = low.area * heat.entrance_free[i] * boundary.entrance_snow_free[i] + low.always;
        let free_high = high.area * heat.hole_free[i] + high.always;
        let (a, b) = (low.discharge * free_low, high.discharge * free_high);
        let both = a * a + b * b + 1e-16;
        let lift = shell.ways.stack_cold * (heat.cold[i] - boundary.air[i])
            + shell.ways.stack_warm * (heat.warm[i] - boundary.air[i]);
        let stack_pa = density * GRAVITY * max(lift, -lift) * per_kelvin;
        let speed_pa = 0.5 * density * boundary.wind[i] * boundary.wind[i];
        let pressure_pa = stack_pa + shell.ways.wind_pressure * speed_pa;
        let fanning = 1.0 + gate(bees.mass[i] > 0.0) * FANNING * clamp(heat.warm[i] - FANNING_FROM, 0.0, 20.0);
        // m = A_eff sqrt(2 rho dp) with A_eff = a b / sqrt(a^2 + b^2), under one root.
        heat.through[i] = fanning * a * b * (2.0 * density * pressure_pa / both).sqrt();

        let excess = max(heat.cold[i] - boundary.air[i], 0.0);
        let buoyant = low.discharge * (1.0 / 3.0) * (GRAVITY * low.opening_height * excess * per_kelvin).sqrt();
        let pumped = shell.ways.wind_pumping * boundary.wind[i];
        heat.exchange_low[i] = density * free_low * (buoyant + pumped);
    }
}
