//! Water: from the bees into two air zones, on and off four surfaces, out with the air.
//!
//! Each surface takes `k (w - w_s)` from its zone (Lewis factor one), but gives no more than it holds. The sum over
//! surfaces is a rising convex function of the two humidity ratios, so Newton's method from the last hour's values
//! settles in a few rounds; whatever rounding leaves stays in the air, so that no water is ever lost.

use crate::block::{Balance, Block, Boundary, FLOOR, LID, LOW_WALL, SURFACES, Surface, WALL, Water};
use crate::lanes::{LANES, Lanes, clamp, max, min};
use crate::laws::{EVAPORATION, FUSION, HOUR, Laws};
use crate::saturation::saturation_ratio;
use crate::shell::Shell;

/// Newton rounds: with six no hour of the audited winters is left unsettled.
const ROUNDS: usize = 6;
/// Members that go through the rounds together.
const GROUP: usize = 8;
/// Exchange that takes fog out of saturated air, kg/s for a unit of humidity ratio: far above any surface's.
const FOG: f64 = 10.0;
/// Share of the still-air exchange between the zones that carries vapour: the rest is conduction along combs.
const MIXING_SHARE: f64 = 0.5;

/// One hour of water.
#[inline(always)]
pub(crate) fn balance(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    let Block { heat, surfaces: [lid, wall, low_wall, floor], water, .. } = block;
    bend(shell, [LID, WALL], &heat.warm, [lid, wall], (&mut water.warm_fog, &mut water.warm));
    bend(shell, [LOW_WALL, FLOOR], &heat.cold, [low_wall, floor], (&mut water.cold_fog, &mut water.cold));
    air_alone(shell, laws, boundary, block);
    for group in 0..LANES / GROUP {
        for _ in 0..ROUNDS {
            if !newton(shell, &block.surfaces, &block.balance, group * GROUP, &mut block.water) {
                break;
            }
        }
    }
    let Block { surfaces: [lid, wall, low_wall, floor], water, .. } = block;
    // Fog falls on the walls.
    take(shell, [WALL, LID], &water.warm, &water.warm_fog, [wall, lid]);
    take(shell, [LOW_WALL, FLOOR], &water.cold, &water.cold_fog, [low_wall, floor]);
    carry(shell, boundary, block);
    run_off(shell, block);
}

/// Where the takers of a zone's water bend: a surface takes `k (w - bend)` from air wetter than its bend and nothing from
/// drier air, besides the most that it gives off in any case; fog takes all there is over saturation.
///
/// The ratio is moved along with saturation: a zone that was full of fog, or short of it, mostly still is, and so the
/// rounds begin on the lines on which they end.
#[inline(always)]
fn bend(
    shell: &Shell,
    at: [usize; 2],
    zone: &Lanes,
    surfaces: [&mut Surface; 2],
    (fog, ratio): (&mut Lanes, &mut Lanes),
) {
    let per_k = at.map(|at| 1.0 / shell.faces.vapour[at]);
    let [first, second] = surfaces;
    for i in 0..LANES {
        for (surface, per_k) in [(&mut *first, per_k[0]), (&mut *second, per_k[1])] {
            let given = (surface.liquid[i] + surface.ice[i]) * (1.0 / HOUR);
            surface.given[i] = given;
            surface.bend[i] = saturation_ratio(surface.temperature[i], shell.per_pascal) - given * per_k;
        }
        let saturated = saturation_ratio(zone[i], shell.per_pascal);
        ratio[i] += saturated - fog[i];
        fog[i] = saturated;
    }
}

/// What both zones' balances hold besides their takers of water.
#[inline(always)]
fn air_alone(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    let Block { traits, heat, surfaces: [lid, wall, low_wall, floor], water, balance, .. } = block;
    let breathing = shell.faces.lid_breathing;
    for i in 0..LANES {
        let (through, fresh) = (heat.through[i], heat.exchange_low[i]);
        let source = heat.metabolic[i] * laws.water_per_joule;
        let mixed = MIXING_SHARE * shell.footprint * traits.exchange[i] * (1.0 / super::air::AIR_HEAT);
        water.source[i] = source;
        balance.mixed[i] = mixed;
        balance.upward[i] = through + mixed;
        balance.warm_out[i] = (shell.warm_air * (1.0 / HOUR) + breathing) + (through + mixed);
        balance.cold_out[i] = (shell.cold_air * (1.0 / HOUR) + fresh) + (through + mixed);
        balance.warm_in[i] = (source + breathing * boundary.ratio[i])
            + (water.warm_air[i] * (1.0 / HOUR) + (lid.given[i] + wall.given[i]));
        balance.cold_in[i] = (through + fresh) * boundary.ratio[i]
            + (water.cold_air[i] * (1.0 / HOUR) + (low_wall.given[i] + floor.given[i]));
    }
}

/// One round: every taker's line as it is at the last ratios, then both balances solved. Returns whether a ratio moved:
/// takers on the same lines as before give the same ratios to the last bit, so then all later rounds would, too.
#[inline(always)]
fn newton(
    shell: &Shell,
    [lid, wall, low_wall, floor]: &[Surface; SURFACES],
    balance: &Balance,
    first: usize,
    water: &mut Water,
) -> bool {
    let k = &shell.faces.vapour;
    let mut moved = 0;
    for i in first..first + GROUP {
        let (w, c) = (water.warm[i], water.cold[i]);
        let lid = line(k[LID], lid.bend[i], w);
        let wall = line(k[WALL], wall.bend[i], w);
        let fog = line(FOG, water.warm_fog[i], w);
        let low = line(k[LOW_WALL], low_wall.bend[i], c);
        let floor = line(k[FLOOR], floor.bend[i], c);
        let low_fog = line(FOG, water.cold_fog[i], c);
        let warm_out = (balance.warm_out[i] + lid.0) + (wall.0 + fog.0);
        let cold_out = (balance.cold_out[i] + low.0) + (floor.0 + low_fog.0);
        let warm_in = (balance.warm_in[i] + lid.1) + (wall.1 + fog.1);
        let cold_in = (balance.cold_in[i] + low.1) + (floor.1 + low_fog.1);
        let (upward, mixed) = (balance.upward[i], balance.mixed[i]);
        let inverse = 1.0 / (warm_out * cold_out - upward * mixed);
        water.warm[i] = (warm_in * cold_out + upward * cold_in) * inverse;
        water.cold[i] = (cold_in * warm_out + mixed * warm_in) * inverse;
        moved |= (water.warm[i].to_bits() ^ w.to_bits()) | (water.cold[i].to_bits() ^ c.to_bits());
    }
    moved != 0
}

/// A taker's line at `ratio`, as (slope, constant).
#[inline(always)]
fn line(k: f64, bend: f64, ratio: f64) -> (f64, f64) {
    if ratio > bend { (k, k * bend) } else { (0.0, 0.0) }
}

/// Moves the water of both zones by what flowed; whatever the rounds left unsettled stays in the air's own store.
#[inline(always)]
fn carry(shell: &Shell, boundary: &Boundary, block: &mut Block) {
    let [lid, wall, low_wall, floor] = &block.surfaces;
    let (heat, water) = (&block.heat, &mut block.water);
    for i in 0..LANES {
        let (w, c, outdoors) = (water.warm[i], water.cold[i], boundary.ratio[i]);
        let (through, fresh) = (heat.through[i], heat.exchange_low[i]);
        let up = through * c + block.balance.mixed[i] * (c - w);
        let breathed = shell.faces.lid_breathing * (w - outdoors);
        let warm_gain = water.source[i] + up - through * w - breathed - lid.flux[i] - wall.flux[i];
        let cold_gain = (through + fresh) * outdoors - fresh * c - up - low_wall.flux[i] - floor.flux[i];
        water.warm_air[i] += HOUR * warm_gain;
        water.cold_air[i] += HOUR * cold_gain;
    }
}

/// What the surfaces of a zone take up (give off: negative) at the ratio found; fog falls on the first of them.
#[inline(always)]
fn take(shell: &Shell, at: [usize; 2], ratio: &Lanes, fog: &Lanes, surfaces: [&mut Surface; 2]) {
    let k = at.map(|at| shell.faces.vapour[at]);
    let stiffness = at.map(|at| shell.faces.stiffness[at]);
    let [first, second] = surfaces;
    for i in 0..LANES {
        let flux = |of: &Surface, k: f64| max(k * (ratio[i] - of.bend[i]), 0.0) - of.given[i];
        let fallen = max(FOG * (ratio[i] - fog[i]), 0.0);
        let (first_flux, second_flux) = (flux(first, k[0]) + fallen, flux(second, k[1]));
        book(first_flux, stiffness[0], first, i);
        book(second_flux, stiffness[1], second, i);
    }
}

/// Puts an hour's flux into liquid or ice, lets it freeze or melt, and remembers the heat for the next hour.
///
/// Fusion holds a surface at 0 °C: the heat taken by melting is raised hour by hour in proportion to how far the
/// surface is above 0 °C (lowered below), within what there is to melt or freeze.
#[inline(always)]
fn book(flux: f64, stiffness: f64, surface: &mut Surface, i: usize) {
    let t = surface.temperature[i];
    let arriving = max(flux, 0.0) * HOUR;
    let leaving = max(-flux, 0.0) * HOUR;
    let frozen = if t < 0.0 { arriving } else { 0.0 };
    let dried = min(leaving, surface.liquid[i]);
    let sublimed = min(leaving - dried, surface.ice[i]);
    let liquid = surface.liquid[i] + ((arriving - frozen) - dried);
    let ice = surface.ice[i] + (frozen - sublimed);
    let heat = ((arriving - dried) - sublimed) * (EVAPORATION / HOUR) + (frozen - sublimed) * (FUSION / HOUR);
    let wanted = surface.fusion[i] + stiffness * t;
    let melted = clamp(wanted * (HOUR / FUSION), -liquid, ice);
    surface.flux[i] = flux;
    surface.fusion[i] = melted * (FUSION / HOUR);
    surface.latent[i] = heat;
    surface.liquid[i] = liquid + melted;
    surface.ice[i] = ice - melted;
}

/// What a surface cannot hold runs on: lid drips through the cluster to the floor, walls run to the floor, the floor
/// runs out at the entrance.
#[inline(always)]
fn run_off(shell: &Shell, block: &mut Block) {
    let [lid, wall, low_wall, floor] = &mut block.surfaces;
    for i in 0..LANES {
        let drip = max(lid.liquid[i] - shell.faces.film[LID], 0.0);
        lid.liquid[i] -= drip;
        let run = max(wall.liquid[i] - shell.faces.film[WALL], 0.0);
        wall.liquid[i] -= run;
        let carried = low_wall.liquid[i] + run;
        let low_run = max(carried - shell.faces.film[LOW_WALL], 0.0);
        low_wall.liquid[i] = carried - low_run;
        let on_floor = floor.liquid[i] + low_run + drip;
        let out = max(on_floor - shell.faces.film[FLOOR], 0.0);
        floor.liquid[i] = on_floor - out;
        block.water.drip[i] = drip * (1.0 / HOUR);
        block.water.drained[i] = out * (1.0 / HOUR);
    }
}
