//! Heat: eight nodes stepped together, with the cluster's demand solved exactly.
//!
//! Surfaces and combs move exponentially. Six nodes hang on one air zone each (lid, upper walls and combs on the warm zone; lower walls, floor and combs on
//! the cold), so each is eliminated by hand; what remains is two air nodes without capacity and the cluster's heat, the
//! larger of three falling straight lines under a ceiling. A falling convex line meets the rising loss line once, at
//! the largest of the single meetings, so the demand is found without iteration.

use crate::block::{Bees, Boundary, FLOOR, Heat, LID, LOW_WALL, SURFACES, Surface, Traits, WALL};
use crate::lanes::{LANES, Lanes, clamp, exp, gate, max, min};
use crate::laws::Laws;
use crate::shell::Shell;
use crate::step::air::AIR_HEAT;

/// Air round the cluster from which a day is mild to it, °C: rest no longer falls below (see the law of rest).
const MILD: f64 = 10.0;

/// How a surface answers its zone in an hour: its end and its mean are each `held + share * zone`.
#[derive(Clone, Copy)]
struct Hanging {
    share: f64,
    held: f64,
    mean_share: f64,
    mean_held: f64,
}

/// A surface of one over capacity `per_a` (K/W over the step) at `old`, joined by `inner` to its zone and by `outer` to
/// what it `sees`.
///
/// It moves towards its balance `T_eq` by `1 - e^-z`, `z` the step over its time constant, with `e^-z` as
/// `1 / (1 + z + z²/2)`: second order, positive and damped for every `z`. Its mean over the hour follows from the same
/// curve, so that what flows in, what flows out and what stays close exactly.
#[inline(always)]
fn hang(per_a: f64, old: f64, inner: f64, outer: f64, sees: f64, gain: f64) -> Hanging {
    let joined = inner + outer;
    let inverse = 1.0 / joined;
    let z = joined * per_a;
    let mean_old = (1.0 + 0.5 * z) / (1.0 + z + 0.5 * z * z);
    let new = z * mean_old;
    let by_zone = inner * inverse;
    let by_rest = (outer * sees + gain) * inverse;
    Hanging {
        share: new * by_zone,
        held: (1.0 - new) * old + new * by_rest,
        mean_share: (1.0 - mean_old) * by_zone,
        mean_held: mean_old * old + (1.0 - mean_old) * by_rest,
    }
}

/// What all nodes of a zone add to its balance: `diagonal * zone - constant`.
struct Zone {
    diagonal: Lanes,
    constant: Lanes,
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
    let mut warm = Zone { diagonal: [0.0; LANES], constant: [0.0; LANES] };
    let mut cold = Zone { diagonal: [0.0; LANES], constant: [0.0; LANES] };
    hang_comb(&heat.comb_share, &heat.comb_capacity, &mut heat.comb, &mut warm);
    hang_comb(&heat.low_comb_share, &heat.low_comb_capacity, &mut heat.low_comb, &mut cold);
    hang_surface(shell, LID, &boundary.lid, &boundary.lid_sees, surfaces, &mut warm);
    hang_surface(shell, WALL, &boundary.wall, &boundary.wall_sees, surfaces, &mut warm);
    hang_surface(shell, LOW_WALL, &boundary.low_wall, &boundary.wall_sees, surfaces, &mut cold);
    hang_surface(shell, FLOOR, &boundary.floor, &boundary.air, surfaces, &mut cold);
    meet(shell, laws, traits, boundary, bees, &warm, &cold, heat);
    for i in 0..LANES {
        heat.comb[i] += heat.comb_share[i] * heat.warm[i];
        heat.low_comb[i] += heat.low_comb_share[i] * heat.cold[i];
        heat.shell_loss[i] = 0.0;
    }
    settle_surface(&boundary.lid, &boundary.lid_sees, &heat.warm, &mut surfaces[LID], &mut heat.shell_loss);
    settle_surface(&boundary.wall, &boundary.wall_sees, &heat.warm, &mut surfaces[WALL], &mut heat.shell_loss);
    settle_surface(&boundary.low_wall, &boundary.wall_sees, &heat.cold, &mut surfaces[LOW_WALL], &mut heat.shell_loss);
    settle_surface(&boundary.floor, &boundary.air, &heat.cold, &mut surfaces[FLOOR], &mut heat.shell_loss);
}

/// Combs move towards their zone exponentially, exactly so while the zone holds still: they are slow enough for an
/// implicit step of an hour to lag, and their share only changes with the food in them, once a day.
/// `comb` holds the fixed part until its zone is known.
#[inline(always)]
fn hang_comb(share: &Lanes, capacity: &Lanes, comb: &mut Lanes, zone: &mut Zone) {
    for i in 0..LANES {
        let given = capacity[i] * share[i];
        zone.diagonal[i] += given;
        zone.constant[i] += given * comb[i];
        comb[i] *= 1.0 - share[i];
    }
}

#[inline(always)]
fn hang_surface(
    shell: &Shell,
    at: usize,
    outside: &Lanes,
    sees: &Lanes,
    surfaces: &mut [Surface; SURFACES],
    zone: &mut Zone,
) {
    let (surface, inner) = (&mut surfaces[at], shell.faces.inner[at]);
    let per_capacity = 1.0 / shell.faces.capacity[at];
    for i in 0..LANES {
        let gain = surface.latent[i] - surface.fusion[i];
        let node = hang(per_capacity, surface.temperature[i], inner, outside[i], sees[i], gain);
        surface.temperature[i] = node.held;
        surface.share[i] = node.share;
        surface.mean[i] = node.mean_held;
        surface.mean_share[i] = node.mean_share;
        zone.diagonal[i] += inner * (1.0 - node.mean_share);
        zone.constant[i] += inner * node.mean_held;
    }
}

/// A surface's new temperature and what goes out through it.
#[inline(always)]
fn settle_surface(outside: &Lanes, sees: &Lanes, zone: &Lanes, surface: &mut Surface, shell_loss: &mut Lanes) {
    for i in 0..LANES {
        surface.temperature[i] += surface.share[i] * zone[i];
        surface.mean[i] += surface.mean_share[i] * zone[i];
        shell_loss[i] += outside[i] * (surface.mean[i] - sees[i]);
    }
}

/// Where the cluster's demand meets the hive's loss; sets the air zones, the core and the mantle.
#[inline(always)]
#[expect(clippy::too_many_arguments, reason = "one call site; a struct would only rename the list")]
fn meet(
    shell: &Shell,
    laws: &Laws,
    traits: &Traits,
    boundary: &Boundary,
    bees: &Bees,
    warm_zone: &Zone,
    cold_zone: &Zone,
    heat: &mut Heat,
) {
    let sensible = 1.0 - laws.latent_share;
    let per_sensible = 1.0 / sensible;
    for i in 0..LANES {
        let carried = heat.through[i] * AIR_HEAT;
        let joined = shell.footprint * traits.exchange[i];
        let fresh = carried + heat.exchange_low[i] * AIR_HEAT;
        // Cold zone: cold = per_low_total * (low_fixed + joined * warm).
        let per_low_total = 1.0 / (cold_zone.diagonal[i] + joined + fresh);
        let low_fixed = cold_zone.constant[i] + fresh * boundary.air[i];
        let share = (carried + joined) * per_low_total;
        // Warm zone: total * warm - fixed = sensible heat of bees and heater.
        let total = warm_zone.diagonal[i] + carried + joined - share * joined;
        let fixed = warm_zone.constant[i] + share * low_fixed + heat.heater[i];

        let core_air = bees.core_air[i] * sensible;
        let mantle_air = bees.mantle_air[i] * sensible;
        let for_nest = sensible * traits.core_air[i] * bees.nest_scale[i];
        let rest_at = clamp(heat.warm[i], 10.0, 20.0);
        let rest = sensible * bees.mass[i] * laws.rest_power * exp(laws.rest_per_kelvin * (rest_at - 20.0));
        let ceiling = sensible * min(traits.power_ceiling[i] * bees.mass[i], heat.fuel[i]);
        let for_core = (core_air * laws.core_broodless + for_nest + fixed) / (total + core_air);
        let for_mantle = (mantle_air * laws.mantle_floor + fixed) / (total + mantle_air);
        let per_total = 1.0 / total;
        let for_rest = (rest + fixed) * per_total;
        let at_most = (ceiling + fixed) * per_total;
        let warm = min(max(max(for_core, for_mantle), for_rest), at_most);
        let cold = (low_fixed + joined * warm) * per_low_total;

        let metabolic = max(total * warm - fixed, 0.0) * per_sensible;
        let occupied = gate(bees.mass[i] > 0.0);
        let mantle_air = bees.mantle_air[i] + 1e-12;
        heat.warm[i] = warm;
        heat.cold[i] = cold;
        heat.metabolic[i] = metabolic;
        let mantle = warm + occupied * metabolic / mantle_air;
        let core = mantle + occupied * metabolic / (bees.core_mantle[i] + 1e-12);
        // On mild days bees spread over the combs before a core grows warmer than a nest: the same heat, a slacker cluster.
        let most = max(laws.core_brood, warm);
        let spread = if core > most && warm > MILD { (most - warm) / (core - warm) } else { 1.0 };
        heat.mantle[i] = warm + spread * (mantle - warm);
        heat.core[i] = warm + spread * (core - warm);
        heat.air_loss[i] =
            carried * (warm - boundary.air[i]) + heat.exchange_low[i] * AIR_HEAT * (cold - boundary.air[i]);
    }
}
