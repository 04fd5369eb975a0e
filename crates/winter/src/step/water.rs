//! Water: from the bees into two air zones, on and off four surfaces, out with the air.
//!
//! Each surface takes `k (w - w_s)` from its zone (Lewis factor one), but gives no more than it holds. The sum over
//! surfaces is a rising convex function of the two humidity ratios, so Newton's method from the last hour's values
//! settles in a few rounds; whatever rounding leaves stays in the air, so that no water is ever lost.

use crate::block::{Block, Boundary, FLOOR, LID, LOW_WALL, SURFACES, WALL, Water};
use crate::lanes::{LANES, Lanes, clamp, gate, max, min, saturation_ratio};
use crate::laws::{EVAPORATION, FUSION, HOUR, Laws};
use crate::shell::Shell;

/// Newton rounds: with six no hour of the audited winters is left unsettled.
const ROUNDS: usize = 6;
/// Exchange that takes fog out of saturated air, kg/s for a unit of humidity ratio: far above any surface's.
const FOG: f64 = 10.0;
/// Share of the still-air exchange between the zones that carries vapour: the rest is conduction along combs.
const MIXING_SHARE: f64 = 0.5;

/// One hour of water.
#[inline(always)]
pub(crate) fn balance(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    let mut at_surface = [[0.0; LANES]; SURFACES];
    let mut most_given = [[0.0; LANES]; SURFACES];
    for at in 0..SURFACES {
        let surface = &block.surfaces[at];
        for i in 0..LANES {
            at_surface[at][i] = saturation_ratio(surface.temperature[i], shell.per_pascal);
            most_given[at][i] = (surface.liquid[i] + surface.ice[i]) * (1.0 / HOUR);
        }
    }
    let mut fog_at = [[0.0; LANES]; 2];
    for i in 0..LANES {
        fog_at[0][i] = saturation_ratio(block.heat.warm[i], shell.per_pascal);
        fog_at[1][i] = saturation_ratio(block.heat.cold[i], shell.per_pascal);
        block.water.source[i] = block.heat.metabolic[i] * laws.water_per_joule;
    }
    settle(shell, boundary, block, &at_surface, &most_given, &fog_at);
    for at in 0..SURFACES {
        book(shell, at, block);
    }
    run_off(shell, block);
}

/// What both zones' balances hold besides the surfaces: on the diagonal, between the zones, and on the right.
struct Balance {
    warm_total: Lanes,
    cold_total: Lanes,
    upward: Lanes,
    mixed: Lanes,
    warm_fixed: Lanes,
    cold_fixed: Lanes,
}

/// Newton on the two humidity ratios, then the fluxes and the air's water.
#[inline(always)]
fn settle(
    shell: &Shell,
    boundary: &Boundary,
    block: &mut Block,
    at_surface: &[Lanes; SURFACES],
    most_given: &[Lanes; SURFACES],
    fog_at: &[Lanes; 2],
) {
    let balance = air_alone(shell, boundary, block);
    for _ in 0..ROUNDS {
        newton(shell, &balance, at_surface, most_given, fog_at, &mut block.water);
    }
    let k = &shell.faces.vapour;
    for i in 0..LANES {
        let (w, c) = (block.water.warm[i], block.water.cold[i]);
        let give = |at: usize, ratio: f64| max(k[at] * (ratio - at_surface[at][i]), -most_given[at][i]);
        block.surfaces[LID].flux[i] = give(LID, w);
        block.surfaces[WALL].flux[i] = give(WALL, w) + max(FOG * (w - fog_at[0][i]), 0.0);
        block.surfaces[LOW_WALL].flux[i] = give(LOW_WALL, c) + max(FOG * (c - fog_at[1][i]), 0.0);
        block.surfaces[FLOOR].flux[i] = give(FLOOR, c);
    }
    carry(shell, boundary, &balance, block);
}

#[inline(always)]
fn air_alone(shell: &Shell, boundary: &Boundary, block: &Block) -> Balance {
    let (heat, water, breathing) = (&block.heat, &block.water, shell.faces.lid_breathing);
    let mut balance = Balance {
        warm_total: [0.0; LANES],
        cold_total: [0.0; LANES],
        upward: [0.0; LANES],
        mixed: [0.0; LANES],
        warm_fixed: [0.0; LANES],
        cold_fixed: [0.0; LANES],
    };
    for i in 0..LANES {
        let (through, fresh) = (heat.through[i], heat.exchange_low[i]);
        let mixed = MIXING_SHARE * shell.footprint * block.traits.exchange[i] * (1.0 / super::air::AIR_HEAT);
        balance.mixed[i] = mixed;
        balance.upward[i] = through + mixed;
        balance.warm_total[i] = shell.warm_air * (1.0 / HOUR) + through + breathing + mixed;
        balance.cold_total[i] = shell.cold_air * (1.0 / HOUR) + through + fresh + mixed;
        balance.warm_fixed[i] = water.source[i] + water.warm_air[i] * (1.0 / HOUR) + breathing * boundary.ratio[i];
        balance.cold_fixed[i] = water.cold_air[i] * (1.0 / HOUR) + (through + fresh) * boundary.ratio[i];
    }
    balance
}

/// One round: the surfaces' lines as they are at the last ratios, then both balances solved.
#[inline(always)]
fn newton(
    shell: &Shell,
    balance: &Balance,
    at_surface: &[Lanes; SURFACES],
    most_given: &[Lanes; SURFACES],
    fog_at: &[Lanes; 2],
    water: &mut Water,
) {
    let k = &shell.faces.vapour;
    for i in 0..LANES {
        let (w, c) = (water.warm[i], water.cold[i]);
        let lid = line(k[LID], at_surface[LID][i], most_given[LID][i], w);
        let wall = line(k[WALL], at_surface[WALL][i], most_given[WALL][i], w);
        let fog = line(FOG, fog_at[0][i], 0.0, w);
        let low = line(k[LOW_WALL], at_surface[LOW_WALL][i], most_given[LOW_WALL][i], c);
        let floor = line(k[FLOOR], at_surface[FLOOR][i], most_given[FLOOR][i], c);
        let low_fog = line(FOG, fog_at[1][i], 0.0, c);
        let warm_total = balance.warm_total[i] + lid.0 + wall.0 + fog.0;
        let cold_total = balance.cold_total[i] + low.0 + floor.0 + low_fog.0;
        let warm_fixed = balance.warm_fixed[i] + lid.1 + wall.1 + fog.1;
        let cold_fixed = balance.cold_fixed[i] + low.1 + floor.1 + low_fog.1;
        let (upward, mixed) = (balance.upward[i], balance.mixed[i]);
        let inverse = 1.0 / (warm_total * cold_total - upward * mixed);
        water.warm[i] = (warm_fixed * cold_total + upward * cold_fixed) * inverse;
        water.cold[i] = (cold_fixed * warm_total + mixed * warm_fixed) * inverse;
    }
}

/// Moves the water of both zones by what flowed; whatever the rounds left unsettled stays in the air's own store.
#[inline(always)]
fn carry(shell: &Shell, boundary: &Boundary, balance: &Balance, block: &mut Block) {
    let [lid, wall, low_wall, floor] = &block.surfaces;
    let (heat, water) = (&block.heat, &mut block.water);
    for i in 0..LANES {
        let (w, c, outdoors) = (water.warm[i], water.cold[i], boundary.ratio[i]);
        let (through, fresh) = (heat.through[i], heat.exchange_low[i]);
        let up = through * c + balance.mixed[i] * (c - w);
        let breathed = shell.faces.lid_breathing * (w - outdoors);
        let warm_gain = water.source[i] + up - through * w - breathed - lid.flux[i] - wall.flux[i];
        let cold_gain = (through + fresh) * outdoors - fresh * c - up - low_wall.flux[i] - floor.flux[i];
        water.warm_air[i] += HOUR * warm_gain;
        water.cold_air[i] += HOUR * cold_gain;
        water.vented[i] = through * w + fresh * c - (through + fresh) * outdoors;
        water.breathed[i] = breathed;
    }
}

/// A surface's line in the balance, as (slope, constant): `k (w - w_s)` where that is more than it can give away at
/// most, else the most it can give.
#[inline(always)]
fn line(k: f64, saturated: f64, most_given: f64, ratio: f64) -> (f64, f64) {
    let free = k * (ratio - saturated) > -most_given;
    if free { (k, k * saturated) } else { (0.0, most_given) }
}

/// Puts an hour's flux into liquid or ice, lets it freeze or melt, and remembers the heat for the next hour.
///
/// Fusion holds a surface at 0 °C: the heat taken by melting is raised hour by hour in proportion to how far the
/// surface is above 0 °C (lowered below), within what there is to melt or freeze.
#[inline(always)]
fn book(shell: &Shell, at: usize, block: &mut Block) {
    let surface = &mut block.surfaces[at];
    let stiffness = shell.faces.stiffness[at];
    for i in 0..LANES {
        let t = surface.temperature[i];
        let frosty = gate(t < 0.0);
        let arriving = max(surface.flux[i], 0.0) * HOUR;
        let leaving = max(-surface.flux[i], 0.0) * HOUR;
        let dried = min(leaving, surface.liquid[i]);
        let sublimed = min(leaving - dried, surface.ice[i]);
        let liquid = surface.liquid[i] - dried + arriving * (1.0 - frosty);
        let ice = surface.ice[i] - sublimed + arriving * frosty;
        let heat = arriving * (EVAPORATION + frosty * FUSION) - dried * EVAPORATION - sublimed * (EVAPORATION + FUSION);
        let wanted = surface.fusion[i] + stiffness * t;
        let melted = clamp(wanted * (HOUR / FUSION), -liquid, ice);
        surface.fusion[i] = melted * (FUSION / HOUR);
        surface.latent[i] = heat * (1.0 / HOUR);
        surface.liquid[i] = liquid + melted;
        surface.ice[i] = ice - melted;
    }
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
