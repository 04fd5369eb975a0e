//! What an action does to the colonies of a running yard.

use snowhum_apiary::{FoodBody, FoodPlace};
use snowhum_figures::winter_start::{EMERGENCE_SPREAD, TAKEN_NEAR};

use crate::block::{Block, Stores};
use crate::engine::{Running, Yard};
use crate::lanes::{LANES, Lanes};
use crate::laws::Laws;
use crate::schedule::{Action, Event};
use crate::shell::Shell;
use crate::start;
use crate::step::colony;

/// Days from a treatment to the first bees reared free of mites.
pub const FREE_AFTER: f64 = 12.0;

/// Does what `event` says, at the end of day `day - 1`.
pub(crate) fn apply(yard: &Yard<'_>, laws: &Laws, running: &mut [Running], event: &Event, day: usize) {
    if event.colony >= running.len() {
        return;
    }
    match &event.action {
        Action::Unite { into } => unite(laws, running, event.colony, *into),
        Action::MoveFrames { to, stores } => move_frames(running, event.colony, *to, stores.get()),
        Action::Rebuild(hive) => {
            let colony = &mut running[event.colony];
            colony.shell = Shell::of(hive, colony.cluster, yard.parameters, yard.environment.pressure());
        }
        Action::Treat => {
            let left = yard.parameters.mites_treated.value;
            let age = crate::stretch::season(yard, day.min(yard.environment.days())).winter_bee_age;
            for_each_block(&mut running[event.colony], |block| treat(block, left, age));
        }
        Action::HadNoMites => for_each_block(&mut running[event.colony], had_no_mites),
        Action::TakeFrames { stores } => for_each_block(&mut running[event.colony], |block| {
            take_frames(&mut block.stores, stores.get());
        }),
        action => for_each_block(&mut running[event.colony], |block| handle_stores(block, action)),
    }
    // What lies before an opening moves no comb and no food.
    if matches!(event.action, Action::Openings { .. }) {
        return;
    }
    for colony in running {
        let shell = colony.shell.clone();
        for_each_block(colony, |block| start::comb_capacity(&shell, laws, block));
    }
}

/// Hands over what each member has beside and above its cluster, up to `wanted` kg.
fn move_frames(running: &mut [Running], from: usize, to: usize, wanted: f64) {
    if from == to || to >= running.len() {
        return;
    }
    for index in 0..running[from].blocks.len() {
        let moved = take_frames(&mut running[from].blocks[index].stores, wanted);
        for (touched, kg) in running[to].blocks[index].stores.touched.iter_mut().zip(moved) {
            *touched += kg;
        }
    }
}

/// Takes up to `wanted` kg from beside and above the cluster of each lane; returns what it took.
fn take_frames(giver: &mut Stores, wanted: f64) -> Lanes {
    let mut taken = [0.0; LANES];
    for i in 0..LANES {
        let from_side = giver.beside[i].min(wanted);
        let from_above = giver.above[i].min(wanted - from_side);
        giver.beside[i] -= from_side;
        giver.above[i] -= from_above;
        taken[i] = from_side + from_above;
    }
    taken
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
                let touched = TAKEN_NEAR * kg.get();
                stores.touched[i] += touched;
                stores.above[i] += kg.get() - touched;
            }
            Action::SolidFeed { stores: kg } => stores.feed[i] += kg.get(),
            Action::FoodPutOn { stores: kg, place } => put_on(stores, i, kg.get(), *place),
            Action::FoodTakenOff => stores.body[i] = 0.0,
            Action::FoodEatenUp => {
                stores.touched[i] += stores.body[i];
                stores.body_taken[i] += stores.body[i];
                stores.body[i] = 0.0;
            }
            Action::HangFrames { stores: kg } => stores.touched[i] += kg.get(),
            Action::BringNear => {
                let room = (block.traits.touched[i] * block.bees.mass[i] - stores.touched[i]).max(0.0);
                let touching = stores.far[i].min(room);
                stores.touched[i] += touching;
                stores.beside[i] += stores.far[i] - touching;
                stores.far[i] = 0.0;
            }
            Action::SweepRoof => block.heat.roof_snow[i] = 0.0,
            Action::Openings { entrance, hole } => {
                block.heat.entrance_free[i] = entrance.get();
                block.heat.hole_free[i] = hole.get();
            }
            Action::Rebuild(_)
            | Action::Treat
            | Action::HadNoMites
            | Action::Unite { .. }
            | Action::MoveFrames { .. }
            | Action::TakeFrames { .. } => {}
        }
    }
}

/// A block with the body of food that was on its hive when the colony was counted.
pub(crate) fn with_body(mut block: Block, body: Option<FoodBody>) -> Block {
    let lanes = if body.is_some() { 0..LANES } else { 0..0 };
    for (i, body) in lanes.zip(body.into_iter().cycle()) {
        put_on(&mut block.stores, i, body.worth().get(), body.place);
    }
    block
}

/// A body of food worth so much lies on the hive of a lane; nobody has touched it.
pub(crate) fn put_on(stores: &mut Stores, i: usize, kg: f64, place: FoodPlace) {
    stores.body[i] = kg;
    stores.body_over[i] = if place == FoodPlace::OverCluster { 1.0 } else { 0.0 };
    (stores.body_taken[i], stores.body_day[i]) = (0.0, 0.0);
}

/// Winter bees reared after the treatment are spared that part of the harm that it prevents.
fn treat(block: &mut Block, left: f64, winter_bee_age: f64) {
    let still_to_come = ((EMERGENCE_SPREAD - winter_bee_age - FREE_AFTER) / (2.0 * EMERGENCE_SPREAD)).clamp(0.0, 1.0);
    let spared = still_to_come * (1.0 - left);
    for i in 0..LANES {
        let saved = block.bees.damaged[i] * spared;
        block.bees.damaged[i] -= saved;
        block.bees.winter[i] += saved;
        block.traits.spoilt[i] *= left;
        block.traits.viruses[i] *= 1.0 - spared;
    }
}

/// As many bees as there would be had mites spoilt none, and no more spoilt.
fn had_no_mites(block: &mut Block) {
    for i in 0..LANES {
        block.bees.winter[i] = block.bees.unharmed[i];
        block.bees.damaged[i] = 0.0;
        block.traits.spoilt[i] = 0.0;
        block.traits.viruses[i] = 0.0;
    }
}

/// Puts the bees, brood and food of colony `from` to colony `into`, member by member, in proportion to its chance of
/// being alive. `from` is then an empty hive: no longer a colony, it keeps the chances it had and takes no more harm.
fn unite(laws: &Laws, running: &mut [Running], from: usize, into: usize) {
    if from == into || into >= running.len() {
        return;
    }
    for index in 0..running[from].blocks.len() {
        let given = running[from].blocks[index].clone();
        join(laws, &given, &mut running[into].blocks[index]);
        empty(laws, &mut running[from].blocks[index]);
    }
}

/// Adds the bees, brood and food of `given` to `taken`, lane by lane, in proportion to their chance of being alive.
pub(crate) fn join(laws: &Laws, given: &Block, taken: &mut Block) {
    for i in 0..LANES {
        let alive = given.fate.queenright[i] + given.fate.queenless[i];
        for (to, of) in [
            (&mut taken.bees.winter, &given.bees.winter),
            (&mut taken.bees.damaged, &given.bees.damaged),
            (&mut taken.bees.summer, &given.bees.summer),
            (&mut taken.bees.spring, &given.bees.spring),
            (&mut taken.bees.unharmed, &given.bees.unharmed),
            (&mut taken.bees.open_brood, &given.bees.open_brood),
            (&mut taken.bees.sealed_brood, &given.bees.sealed_brood),
            (&mut taken.stores.touched, &given.stores.touched),
            (&mut taken.stores.crop, &given.stores.crop),
            (&mut taken.stores.above, &given.stores.above),
            (&mut taken.stores.beside, &given.stores.beside),
            (&mut taken.stores.far, &given.stores.far),
            (&mut taken.stores.feed, &given.stores.feed),
            (&mut taken.stores.body, &given.stores.body),
        ] {
            to[i] += alive * of[i];
        }
    }
    colony::resize(laws, &taken.traits, &mut taken.bees);
}

pub(crate) fn empty(laws: &Laws, block: &mut Block) {
    block.bees = crate::block::Bees { scatter: block.bees.scatter, ..Default::default() };
    let first_hungry_day = block.stores.first_hungry_day;
    block.stores = Stores { used: block.stores.used, first_hungry_day, ..Default::default() };
    block.fate.living = [0.0; LANES];
    colony::resize(laws, &block.traits, &mut block.bees);
}
