//! Air through and within the hive: stack, wind, and bees that fan.

use crate::block::{Bees, Boundary, Heat};
use crate::lanes::{LANES, clamp, gate, inverses4, max};
use crate::shell::{SLOT_HEIGHT, Shell};
use snowhum_figures::winter_hour::FANNING;

const GRAVITY: f64 = 9.80665;
/// Dry air, J/(kg K).
pub(crate) const AIR_HEAT: f64 = 1006.0;
/// Gas constant of dry air, J/(kg K).
const GAS: f64 = 287.05;
/// Air round the cluster above which bees fan (Stabentheiner and others; the figure from memory).
const FANNING_FROM: f64 = 20.0;

/// Flows of the hour, from the temperatures at its beginning.
///
/// Two openings in series under stack and wind pressure, `m = C_d A_eff sqrt(2 rho (dp_stack + dp_wind))`: wind and
/// stack flows add in squares (ASHRAE Fundamentals, ch. 16). The cold zone also trades air with outdoors through the
/// low openings alone (entrance, mesh, its half of the cracks), `(C_d / 3) A sqrt(g h dT / T)` and a small share of the wind.
#[inline(always)]
pub(crate) fn flow(shell: &Shell, boundary: &Boundary, bees: &Bees, heat: &mut Heat) {
    let (low, high) = (&shell.ways.low, &shell.ways.high);
    for i in 0..LANES {
        let kelvin = |t_c: f64| t_c + 273.15;
        let free_low = low.area * heat.entrance_free[i] * boundary.entrance_snow_free[i] + low.always;
        let free_high = high.area * heat.hole_free[i] + high.always;
        let (a, b) = (low.discharge * free_low, high.discharge * free_high);
        let both = a * a + b * b + 1e-16;
        let [per_kelvin, per_cold, per_warm, per_both] =
            inverses4([kelvin(boundary.air[i]), kelvin(heat.cold[i]), kelvin(heat.warm[i]), both]);
        let density = shell.pressure * (1.0 / GAS) * per_kelvin;
        // A column of air at T_i is lighter than outdoor air by rho_o (T_i - T_o) / T_i.
        let column = |t_c: f64, per_t: f64| (t_c - boundary.air[i]) * per_t;
        let lift = shell.ways.stack_cold * column(heat.cold[i], per_cold)
            + shell.ways.stack_warm * column(heat.warm[i], per_warm);
        let stack_pa = density * GRAVITY * max(lift, -lift);
        let speed_pa = 0.5 * density * boundary.wind[i] * boundary.wind[i];
        let pressure_pa = stack_pa + shell.ways.wind_pressure * speed_pa;
        let fanning = 1.0 + gate(bees.mass[i] > 0.0) * FANNING * clamp(heat.warm[i] - FANNING_FROM, 0.0, 20.0);
        // m = A_eff sqrt(2 rho dp) with A_eff = a b / sqrt(a^2 + b^2), under one root.
        heat.through[i] = fanning * a * b * (2.0 * density * pressure_pa * per_both).sqrt();

        let excess = max(heat.cold[i] - boundary.air[i], 0.0);
        let buoyant = low.discharge * (1.0 / 3.0) * (GRAVITY * SLOT_HEIGHT * excess * per_kelvin).sqrt();
        let pumped = shell.ways.wind_pumping * boundary.wind[i];
        heat.exchange_low[i] = density * free_low * (buoyant + pumped);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Parameters;
    use crate::shell::Cluster;
    use snowhum_testkit::{Dress, langstroth};
    use snowhum_units::{Kilogram, Pascal};

    /// Flow in kg/s of a hive with two openings of 2 cm², half a metre apart, at -10 °C outdoors without wind.
    fn draught(cold: f64, warm: f64) -> f64 {
        let p = Parameters::shipped().unwrap();
        let mut shell = Shell::of(
            &langstroth(Dress::BARE),
            Cluster { frames: 8.0, mass: Kilogram::new(2.0) },
            &p,
            Pascal::new(101_325.0),
        );
        for opening in [&mut shell.ways.low, &mut shell.ways.high] {
            (opening.area, opening.always, opening.discharge) = (2e-4, 0.0, 0.61);
        }
        (shell.ways.stack_cold, shell.ways.stack_warm) = (0.25, 0.25);
        let mut heat = Heat { cold: [cold; LANES], warm: [warm; LANES], ..Heat::default() };
        (heat.entrance_free, heat.hole_free) = ([1.0; LANES], [1.0; LANES]);
        let boundary = Boundary { air: [-10.0; LANES], entrance_snow_free: [1.0; LANES], ..Boundary::default() };
        flow(&shell, &boundary, &Bees::default(), &mut heat);
        heat.through[0]
    }

    /// Stack case A by the exact density form (10 °C in, -10 °C out): 9.4528e-5 kg/s. The step takes outdoor density in
    /// both openings, which is 2 % more.
    #[test]
    fn stack_flow_is_the_closed_forms() {
        assert!((draught(10.0, 10.0) / 9.452_8e-5 - 1.0).abs() < 0.025, "{}", draught(10.0, 10.0));
    }

    #[test]
    fn each_zones_warmth_adds_to_the_draught() {
        assert!(draught(0.0, 0.0) < draught(0.0, 10.0) && draught(0.0, 10.0) < draught(10.0, 10.0));
        assert!((draught(0.0, 10.0) - draught(10.0, 0.0)).abs() < 1e-12);
    }
}
