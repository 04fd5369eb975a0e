//! What an action does to the colonies of a running yard.

use snowhum_units::Fraction;

use crate::block::Block;
use crate::engine::{Running, Yard};
use crate::lanes::LANES;
use crate::laws::Laws;
use crate::schedule::{Action, Event};
use crate::shell::Shell;
use crate::start;
use crate::step::colony;

/// Days over which winter bees emerge about their middle day (judgement), and from treatment to the first bees
/// reared free of mites.
const EMERGENCE_SPREAD: f64 = 25.0;
const FREE_AFTER: f64 = 12.0;

/// Does what `event` says, at the end of day `day - 1`.
pub(crate) fn apply(yard: &Yard<'_>, laws: &Laws, running: &mut [Running], event: &Event, day: usize) {
    if event.colony >= running.len() {
        return;
    }
    match &event.action {
        Action::Unite { into } => unite(laws, running, event.colony, *into),
        Action::Rebuild(hive) => {
            let colony = &mut running[event.colony];
            colony.shell = Shell::of(hive, colony.frames_of_bees, yard.parameters, yard.environment.pressure());
            colony.hive = (**hive).clone();
        }
        Action::Treat { left } => {
            let age = crate::engine::season(yard, day.min(yard.environment.days())).winter_bee_age;
            for_each_block(&mut running[event.colony], |block| treat(block, *left, age));
        }
        action => for_each_block(&mut running[event.colony], |block| handle_stores(block, action)),
    }
    let colony = &mut running[event.colony];
    let shell = colony.shell.clone();
    for_each_block(colony, |block| start::comb_capacity(&shell, laws, block));
}

fn for_each_block(colony: &mut Running, mut act: impl FnMut(&mut Block)) {
    for block in &mut colony.blocks {
        act(block);
    }
}

fn handle_stores(block: &mut Block, action: &Action) {
    let stores = &mut block.stores;
    for i in 0..LANES {
        match action {
            Action::Syrup { stores: kg } => {
                let touched = 0.3 * kg.get();
                stores.touched[i] += touched;
                stores.above[i] += kg.get() - touched;
            }
            Action::SolidFeed { stores: kg } => stores.feed[i] += kg.get(),
            Action::FrameIn { stores: kg } => stores.touched[i] += kg.get(),
            Action::FrameOut { stores: kg } => {
                let from_side = stores.beside[i].min(kg.get());
                stores.beside[i] -= from_side;
                let from_above = stores.above[i].min(kg.get() - from_side);
                stores.above[i] -= from_above;
            }
            Action::BringNear => {
                stores.touched[i] += stores.far[i] + stores.beside[i];
                stores.far[i] = 0.0;
                stores.beside[i] = 0.0;
            }
            Action::Openings { entrance, hole } => {
                block.heat.entrance_free[i] = entrance.get();
                block.heat.hole_free[i] = hole.get();
            }
            Action::Rebuild(_) | Action::Treat { .. } | Action::Unite { .. } => {}
        }
    }
}

/// Winter bees reared after the treatment are spared that part of the harm that it prevents.
fn treat(block: &mut Block, left: Fraction, winter_bee_age: f64) {
    let still_to_come = ((EMERGENCE_SPREAD - winter_bee_age - FREE_AFTER) / (2.0 * EMERGENCE_SPREAD)).clamp(0.0, 1.0);
    let spared = still_to_come * (1.0 - left.get());
    for i in 0..LANES {
        let saved = block.bees.damaged[i] * spared;
        block.bees.damaged[i] -= saved;
        block.bees.winter[i] += saved;
        block.traits.spoilt[i] *= left.get();
    }
}

/// Puts the bees and food of colony `from` to colony `into`, member by member, in proportion to its chance of being
/// alive; `from` is then an empty hive, and its own chance counts as neither alive nor lost.
fn unite(laws: &Laws, running: &mut [Running], from: usize, into: usize) {
    if from == into || into >= running.len() {
        return;
    }
    for index in 0..running[from].blocks.len() {
        let given = running[from].blocks[index].clone();
        let taken = &mut running[into].blocks[index];
        for i in 0..LANES {
            let alive = given.fate.queenright[i] + given.fate.queenless[i];
            for (to, of) in [
                (&mut taken.bees.winter, &given.bees.winter),
                (&mut taken.bees.damaged, &given.bees.damaged),
                (&mut taken.bees.summer, &given.bees.summer),
                (&mut taken.bees.spring, &given.bees.spring),
                (&mut taken.bees.unharmed, &given.bees.unharmed),
            ] {
                to[i] += alive * of[i];
            }
            taken.stores.touched[i] += given.stores.touched[i];
            taken.stores.above[i] += given.stores.above[i] + given.stores.beside[i];
        }
        colony::resize(laws, &mut taken.bees);
        empty(laws, &mut running[from].blocks[index]);
    }
}

fn empty(laws: &Laws, block: &mut Block) {
    block.bees = crate::block::Bees { scatter: block.bees.scatter, ..Default::default() };
    block.stores.touched = [0.0; LANES];
    block.stores.above = [0.0; LANES];
    block.stores.beside = [0.0; LANES];
    block.stores.crop = [0.0; LANES];
    block.fate.living = [0.0; LANES];
    colony::resize(laws, &mut block.bees);
}
