//! Heat: eight nodes stepped together by backward Euler, with the cluster's demand solved exactly.
//!
//! Six nodes hang on one air zone each (lid, upper walls and combs on the warm zone; lower walls, floor and combs on
//! the cold), so each is eliminated by hand; what remains is two air nodes without capacity and the cluster's heat, the
//! larger of three falling straight lines under a ceiling. A falling convex line meets the rising loss line once, at
//! the largest of the single meetings, so the demand is found without iteration.

use crate::block::{Bees, Boundary, FLOOR, Heat, LID, LOW_WALL, SURFACES, Surface, Traits, WALL};
use crate::lanes::{LANES, Lanes, clamp, exp, gate, max, min};
use crate::laws::Laws;
use crate::shell::Shell;
use crate::step::air::AIR_HEAT;

/// What a node on a zone adds to the zone's balance: `diagonal * zone - constant`.
#[derive(Clone, Copy)]
struct Hanging {
    diagonal: f64,
    constant: f64,
}

/// A node of capacity `a` (W/K over the step) at `old`, joined by `inner` to its zone and by `outer` to `sees`.
#[inline(always)]
fn hang(a: f64, old: f64, inner: f64, outer: f64, sees: f64, gain: f64) -> Hanging {
    let share = inner / (a + inner + outer);
    Hanging { diagonal: inner * (1.0 - share), constant: share * (a * old + outer * sees + gain) }
}

/// The node's new temperature once its zone's is known.
#[inline(always)]
fn settle(a: f64, old: f64, inner: f64, outer: f64, sees: f64, gain: f64, zone: f64) -> f64 {
    (a * old + inner * zone + outer * sees + gain) / (a + inner + outer)
}

/// One hour of heat.
#[inline(always)]
pub(crate) fn solve(
    shell: &Shell,
    laws: &Laws,
    traits: &Traits,
    boundary: &Boundary,
    bees: &Bees,
    surfaces: &mut [Surface; SURFACES],
    heat: &mut Heat,
) {
    let mut diagonal = [0.0; LANES];
    let mut constant = [0.0; LANES];
    let mut low_diagonal = [0.0; LANES];
    let mut low_constant = [0.0; LANES];
    let outside = [&boundary.lid, &boundary.wall, &boundary.low_wall, &boundary.floor];
    let sees = [&boundary.lid_sees, &boundary.wall_sees, &boundary.wall_sees, &boundary.air];
    hang_surface(shell, LID, outside[LID], sees[LID], surfaces, &mut diagonal, &mut constant);
    hang_surface(shell, WALL, outside[WALL], sees[WALL], surfaces, &mut diagonal, &mut constant);
    hang_surface(shell, LOW_WALL, outside[LOW_WALL], sees[LOW_WALL], surfaces, &mut low_diagonal, &mut low_constant);
    hang_surface(shell, FLOOR, outside[FLOOR], sees[FLOOR], surfaces, &mut low_diagonal, &mut low_constant);
    for i in 0..LANES {
        let comb = hang(heat.comb_capacity[i], heat.comb[i], shell.comb, 0.0, 0.0, 0.0);
        let low = hang(heat.low_comb_capacity[i], heat.low_comb[i], shell.low_comb, 0.0, 0.0, 0.0);
        diagonal[i] += comb.diagonal;
        constant[i] += comb.constant;
        low_diagonal[i] += low.diagonal;
        low_constant[i] += low.constant;
    }
    meet(shell, laws, traits, boundary, bees, [&diagonal, &constant, &low_diagonal, &low_constant], heat);
    for i in 0..LANES {
        heat.comb[i] = settle(heat.comb_capacity[i], heat.comb[i], shell.comb, 0.0, 0.0, 0.0, heat.warm[i]);
        heat.low_comb[i] =
            settle(heat.low_comb_capacity[i], heat.low_comb[i], shell.low_comb, 0.0, 0.0, 0.0, heat.cold[i]);
    }
    heat.shell_loss = [0.0; LANES];
    for (at, zone) in [(LID, &heat.warm), (WALL, &heat.warm), (LOW_WALL, &heat.cold), (FLOOR, &heat.cold)] {
        let surface = &mut surfaces[at];
        for i in 0..LANES {
            let gain = surface.latent[i] - surface.fusion[i];
            let (a, inner) = (shell.capacity[at], shell.inner[at]);
            let new = settle(a, surface.temperature[i], inner, outside[at][i], sees[at][i], gain, zone[i]);
            surface.temperature[i] = new;
            surface.outward[i] = outside[at][i] * (new - sees[at][i]);
            heat.shell_loss[i] += surface.outward[i];
        }
    }
}

#[inline(always)]
fn hang_surface(
    shell: &Shell,
    at: usize,
    outside: &Lanes,
    sees: &Lanes,
    surfaces: &[Surface; SURFACES],
    diagonal: &mut Lanes,
    constant: &mut Lanes,
) {
    let surface = &surfaces[at];
    for i in 0..LANES {
        let gain = surface.latent[i] - surface.fusion[i];
        let node =
            hang(shell.capacity[at], surface.temperature[i], shell.inner[at], outside[i], sees[i], gain);
        diagonal[i] += node.diagonal;
        constant[i] += node.constant;
    }
}

/// Where the cluster's demand meets the hive's loss; sets the air zones, the core and the mantle.
#[inline(always)]
fn meet(
    shell: &Shell,
    laws: &Laws,
    traits: &Traits,
    boundary: &Boundary,
    bees: &Bees,
    zones: [&Lanes; 4],
    heat: &mut Heat,
) {
    let [diagonal, constant, low_diagonal, low_constant] = zones;
    let sensible = 1.0 - laws.latent_share;
    for i in 0..LANES {
        let carried = heat.through[i] * AIR_HEAT;
        let joined = shell.footprint * traits.exchange[i];
        let fresh = carried + heat.exchange_low[i] * AIR_HEAT;
        // Cold zone: low_total * cold = low_fixed + joined * warm.
        let low_total = low_diagonal[i] + joined + fresh;
        let low_fixed = low_constant[i] + fresh * boundary.air[i];
        let share = (carried + joined) / low_total;
        // Warm zone: total * warm - fixed = sensible heat of bees and heater.
        let total = diagonal[i] + carried + joined - share * joined;
        let fixed = constant[i] + share * low_fixed + heat.heater[i];

        let core_air = bees.core_air[i] * sensible;
        let mantle_air = bees.mantle_air[i] * sensible;
        let core_wanted = laws.core_broodless + bees.nest[i] * (laws.core_brood - laws.core_broodless);
        let rest_at = clamp(heat.warm[i], 10.0, 20.0);
        let rest = sensible * bees.mass[i] * laws.rest_power * exp(laws.rest_per_kelvin * (rest_at - 20.0));
        let ceiling = sensible * min(traits.power_ceiling[i] * bees.mass[i], heat.fuel[i]);
        let for_core = (core_air * core_wanted + fixed) / (total + core_air);
        let for_mantle = (mantle_air * laws.mantle_floor + fixed) / (total + mantle_air);
        let for_rest = (rest + fixed) / total;
        let at_most = (ceiling + fixed) / total;
        let warm = min(max(max(for_core, for_mantle), for_rest), at_most);
        let cold = (low_fixed + joined * warm) / low_total;

        let metabolic = max(total * warm - fixed, 0.0) / sensible;
        let occupied = gate(bees.mass[i] > 0.0);
        let mantle_air = bees.mantle_air[i] + 1e-12;
        heat.warm[i] = warm;
        heat.cold[i] = cold;
        heat.metabolic[i] = metabolic;
        heat.mantle[i] = warm + occupied * metabolic / mantle_air;
        heat.core[i] = heat.mantle[i] + occupied * metabolic / (bees.core_mantle[i] + 1e-12);
        heat.air_loss[i] = carried * (warm - boundary.air[i])
            + heat.exchange_low[i] * AIR_HEAT * (cold - boundary.air[i]);
    }
}
