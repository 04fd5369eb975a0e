//! Heat: eight nodes stepped together, with the cluster's demand solved exactly.
//!
//! Surfaces and combs move exponentially. Six nodes hang on one air zone each (lid, upper walls and combs on the warm zone; lower walls, floor and combs on
//! the cold), so each is eliminated by hand; what remains is two air nodes without capacity and the cluster's heat, the
//! larger of three falling straight lines under a ceiling. A falling convex line meets the rising loss line once, at
//! the largest of the single meetings, so the demand is found without iteration.

use crate::block::{Balance, Bees, Block, Boundary, FLOOR, Heat, LID, LOW_WALL, Surface, Traits, WALL};
use crate::lanes::{LANES, Lanes, clamp, exp_near_one, gate, inverses2, inverses4, max, min};
use crate::laws::Laws;
use crate::shell::Shell;
use crate::step::air::AIR_HEAT;

/// Air from which a day is mild to bees, °C: rest no longer falls below (see the law of rest).
const MILD: f64 = 10.0;
/// Outdoor air up to which rest rises, °C.
const RESTLESS: f64 = 20.0;

/// How a surface answers its zone in an hour: its end and its mean are each `held + share * zone`.
#[derive(Clone, Copy)]
struct Hanging {
    share: f64,
    held: f64,
    mean_share: f64,
    mean_held: f64,
}

/// A surface of one over capacity `per_a` (K/W over the step), joined by `inner` to its zone and by `outer` to what it
/// `sees`.
#[derive(Clone, Copy)]
struct Joined {
    per_a: f64,
    old: f64,
    inner: f64,
    outer: f64,
    sees: f64,
    gain: f64,
}

/// How the two surfaces of a zone answer it.
///
/// A surface moves towards its balance `T_eq` by `1 - e^-z`, `z` the step over its time constant, with `e^-z` as
/// `1 / (1 + z + z²/2)`: second order, positive and damped for every `z`. Its mean over the hour follows from the same
/// curve, so that what flows in, what flows out and what stays close exactly.
#[inline(always)]
fn hang(surfaces: [Joined; 2]) -> [Hanging; 2] {
    let joined = surfaces.map(|s| s.inner + s.outer);
    let z = [joined[0] * surfaces[0].per_a, joined[1] * surfaces[1].per_a];
    let decay = z.map(|z| (1.0 + z) + 0.5 * z * z);
    let [per_joined, decayed, other_per_joined, other_decayed] = inverses4([joined[0], decay[0], joined[1], decay[1]]);
    [answer(surfaces[0], z[0], per_joined, decayed), answer(surfaces[1], z[1], other_per_joined, other_decayed)]
}

#[inline(always)]
fn answer(of: Joined, z: f64, per_joined: f64, decayed: f64) -> Hanging {
    let mean_old = (1.0 + 0.5 * z) * decayed;
    let new = z * mean_old;
    let by_zone = of.inner * per_joined;
    let by_rest = (of.outer * of.sees + of.gain) * per_joined;
    Hanging {
        share: new * by_zone,
        held: (1.0 - new) * of.old + new * by_rest,
        mean_share: (1.0 - mean_old) * by_zone,
        mean_held: mean_old * of.old + (1.0 - mean_old) * by_rest,
    }
}

/// What the nodes of a zone add to its balance: `diagonal * zone - constant`.
struct Zone<'a> {
    diagonal: &'a mut Lanes,
    constant: &'a mut Lanes,
}

/// One hour of heat.
#[inline(always)]
pub(crate) fn solve(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    let Block { traits, heat, surfaces: [lid, wall, low_wall, floor], bees, balance, gas, .. } = block;
    let mut warm = Zone { diagonal: &mut balance.warm_diagonal, constant: &mut balance.warm_constant };
    let mut cold = Zone { diagonal: &mut balance.cold_diagonal, constant: &mut balance.cold_constant };
    hang_comb(&heat.comb_share, &heat.comb_capacity, &mut heat.comb, &mut warm);
    hang_comb(&heat.low_comb_share, &heat.low_comb_capacity, &mut heat.low_comb, &mut cold);
    let outside = [(&boundary.lid, &boundary.lid_sees), (&boundary.wall, &boundary.wall_sees)];
    hang_surfaces(shell, [LID, WALL], outside, [lid, wall], &mut warm);
    let outside = [(&boundary.low_wall, &boundary.wall_sees), (&boundary.floor, &boundary.air)];
    hang_surfaces(shell, [LOW_WALL, FLOOR], outside, [low_wall, floor], &mut cold);
    rest(laws, traits, bees, boundary, balance);
    join(shell, traits, boundary, heat, balance);
    meet(laws, traits, bees, &gas.breath, heat, balance);
    share_out(laws, bees, heat, balance);
    settle(&heat.warm, &heat.comb_share, &mut heat.comb, [lid, wall]);
    settle(&heat.cold, &heat.low_comb_share, &mut heat.low_comb, [low_wall, floor]);
}

/// Combs move towards their zone exponentially, exactly so while the zone holds still: they are slow enough for an
/// implicit step of an hour to lag, and their share only changes with the food in them, once a day.
/// `comb` holds the fixed part until its zone is known.
#[inline(always)]
fn hang_comb(share: &Lanes, capacity: &Lanes, comb: &mut Lanes, zone: &mut Zone<'_>) {
    for i in 0..LANES {
        let given = capacity[i] * share[i];
        zone.diagonal[i] = given;
        zone.constant[i] = given * comb[i];
        comb[i] *= 1.0 - share[i];
    }
}

/// The surfaces of a zone, each with its conductance to the outside and what it sees there. They hold the fixed part until
/// their zone is known.
#[inline(always)]
fn hang_surfaces(
    shell: &Shell,
    at: [usize; 2],
    outside: [(&Lanes, &Lanes); 2],
    surfaces: [&mut Surface; 2],
    zone: &mut Zone<'_>,
) {
    let inner = at.map(|at| shell.faces.inner[at]);
    let per_a = at.map(|at| 1.0 / shell.faces.capacity[at]);
    let [first, second] = surfaces;
    for i in 0..LANES {
        let joined = |of: &Surface, side: usize| Joined {
            per_a: per_a[side],
            old: of.temperature[i],
            inner: inner[side],
            outer: outside[side].0[i],
            sees: outside[side].1[i],
            gain: of.latent[i] - of.fusion[i],
        };
        let nodes = hang([joined(first, 0), joined(second, 1)]);
        for (surface, node) in [(&mut *first, nodes[0]), (&mut *second, nodes[1])] {
            surface.temperature[i] = node.held;
            surface.share[i] = node.share;
            surface.mean[i] = node.mean_held;
            surface.mean_share[i] = node.mean_share;
        }
        zone.diagonal[i] += inner[0] * (1.0 - nodes[0].mean_share) + inner[1] * (1.0 - nodes[1].mean_share);
        zone.constant[i] += inner[0] * nodes[0].mean_held + inner[1] * nodes[1].mean_held;
    }
}

/// Where the combs and surfaces of a zone end, and the surfaces' means over the hour.
#[inline(always)]
fn settle(zone: &Lanes, comb_share: &Lanes, comb: &mut Lanes, surfaces: [&mut Surface; 2]) {
    let [first, second] = surfaces;
    for i in 0..LANES {
        comb[i] += comb_share[i] * zone[i];
        for surface in [&mut *first, &mut *second] {
            surface.temperature[i] += surface.share[i] * zone[i];
            surface.mean[i] += surface.mean_share[i] * zone[i];
        }
    }
}

/// What bees at rest give off, W, without what leaves as vapour. It goes with the outdoor air: bees whose own hive is
/// warmer than they need spread out and let air through rather than live faster.
#[inline(always)]
fn rest(laws: &Laws, traits: &Traits, bees: &Bees, boundary: &Boundary, balance: &mut Balance) {
    let sensible = 1.0 - laws.latent_share;
    for i in 0..LANES {
        let rest_at = clamp(boundary.air[i], MILD, RESTLESS);
        let power = sensible * traits.rest[i] * bees.mass[i];
        balance.rest[i] = power * exp_near_one(laws.rest_per_kelvin * (rest_at - RESTLESS));
    }
}

/// Joins the cold zone to the warm one, so that `total * warm - fixed` is the sensible heat of bees and heater.
#[inline(always)]
fn join(shell: &Shell, traits: &Traits, boundary: &Boundary, heat: &Heat, balance: &mut Balance) {
    for i in 0..LANES {
        let carried = heat.through[i] * AIR_HEAT;
        let joined = shell.footprint * traits.exchange[i];
        let fresh = carried + heat.exchange_low[i] * AIR_HEAT;
        let per_low_total = 1.0 / (balance.cold_diagonal[i] + joined + fresh);
        let low_fixed = balance.cold_constant[i] + fresh * boundary.air[i];
        let share = (carried + joined) * per_low_total;
        balance.low_share[i] = joined * per_low_total;
        balance.low_fixed[i] = low_fixed * per_low_total;
        balance.total[i] = (balance.warm_diagonal[i] + carried + joined) - share * joined;
        balance.fixed[i] = (balance.warm_constant[i] + heat.heater[i]) + share * low_fixed;
    }
}

/// Where the cluster's demand meets the hive's loss.
#[inline(always)]
fn meet(laws: &Laws, traits: &Traits, bees: &Bees, breath: &Lanes, heat: &mut Heat, balance: &Balance) {
    let sensible = 1.0 - laws.latent_share;
    for i in 0..LANES {
        let (total, fixed) = (balance.total[i], balance.fixed[i]);
        let core_air = bees.core_air[i] * sensible;
        let mantle_air = core_air * laws.mantle_over_core;
        let for_nest = sensible * traits.core_air[i] * bees.nest_scale[i];
        let ceiling = sensible * min(traits.power_ceiling[i] * bees.mass[i] * breath[i], heat.fuel[i]);
        let (with_core, with_mantle) = (total + core_air, total + mantle_air);
        let (per_total, per_clusters) = inverses2(total, with_core * with_mantle);
        let for_core = (core_air * laws.core_broodless + for_nest + fixed) * with_mantle;
        let for_mantle = (mantle_air * laws.mantle_floor + fixed) * with_core;
        let wanted = max(max(for_core, for_mantle) * per_clusters, (balance.rest[i] + fixed) * per_total);
        heat.warm[i] = min(wanted, (ceiling + fixed) * per_total);
    }
}

/// The cold zone, the heat, the mantle and the core that go with the warm zone found.
#[inline(always)]
fn share_out(laws: &Laws, bees: &Bees, heat: &mut Heat, balance: &Balance) {
    let per_sensible = 1.0 / (1.0 - laws.latent_share);
    for i in 0..LANES {
        let warm = heat.warm[i];
        let metabolic = max(balance.total[i] * warm - balance.fixed[i], 0.0) * per_sensible;
        // On mild days bees spread over the combs before a core grows warmer than a nest: the same heat, a slacker cluster.
        let over = gate(bees.mass[i] > 0.0) * metabolic / (bees.core_air[i] + 1e-12);
        let slack = min(over, max(laws.core_brood - warm, 0.0));
        let over = if warm > MILD { slack } else { over };
        heat.cold[i] = balance.low_fixed[i] + balance.low_share[i] * warm;
        heat.metabolic[i] = metabolic;
        heat.mantle[i] = warm + laws.mantle_share * over;
        heat.core[i] = warm + over;
    }
}
