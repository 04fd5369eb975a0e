//! Sums over the hours of a day.

use crate::block::{Block, Boundary, FLOOR, LID, LOW_WALL, WALL};
use crate::lanes::{LANES, gate, max};
use crate::laws::Laws;
use crate::saturation::saturation_ratio;
use crate::shell::Shell;
use snowhum_figures::winter_hour::RIM_WARMTH;

/// Adds the hour just stepped to the day.
#[inline(always)]
pub(crate) fn add(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    let (heat, water, tally) = (&block.heat, &block.water, &mut block.tally);
    let surfaces = &block.surfaces;
    for i in 0..LANES {
        tally.warm[i] += heat.warm[i];
        tally.cold[i] += heat.cold[i];
        tally.excess[i] += heat.warm[i] - boundary.air[i];
        tally.heat[i] += heat.metabolic[i] + heat.heater[i];
        tally.eaten[i] += block.stores.eaten[i];
        tally.through[i] += heat.through[i];
        tally.exchange_low[i] += heat.exchange_low[i];
        tally.lid[i] += max(surfaces[LID].flux[i], 0.0);
        tally.walls[i] += max(surfaces[WALL].flux[i], 0.0) + max(surfaces[LOW_WALL].flux[i], 0.0);
        tally.floor[i] += max(surfaces[FLOOR].flux[i], 0.0);
        tally.drip[i] += water.drip[i];
        let by_entrance = shell.ways.low.area * gate(heat.entrance_free[i] >= laws.way_out_from);
        let by_hole = shell.ways.high.area * gate(heat.hole_free[i] >= laws.way_out_from);
        let way_out = gate(by_entrance + by_hole > 0.0);
        tally.flight[i] += boundary.flight[i] * way_out;
        tally.locked_in[i] += boundary.flight[i] * (1.0 - way_out);
        let breath = block.gas.breath[i];
        tally.stifled[i] += 1.0 - breath;
        let ceiling = block.traits.power_ceiling[i] * block.bees.mass[i] * breath;
        let spent = gate(ceiling < heat.fuel[i]);
        tally.chilled[i] += spent * max(laws.mantle_motionless - heat.mantle[i], 0.0);
    }
    if shell.ways.has_hole > 0.0 {
        rim(shell, laws, boundary, block);
    }
}

/// Adds whether the rim of the upper hole was wet or frosty; breath does not freeze at a hole that is shut.
#[inline(always)]
fn rim(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    let Block { heat, water, tally, .. } = block;
    for i in 0..LANES {
        let rim = boundary.air[i] + RIM_WARMTH * (heat.warm[i] - boundary.air[i]);
        let breath = gate(heat.hole_free[i] >= laws.way_out_from);
        let wet = breath * gate(water.warm[i] > saturation_ratio(rim, shell.per_pascal));
        let frosty = gate(rim < 0.0);
        tally.frost[i] += wet * frosty;
        tally.damp[i] += wet * (1.0 - frosty);
    }
}
