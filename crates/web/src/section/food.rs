//! Where a colony sits and where its food lies, drawn from shares: over it, round it, beside it, at the far side.

use snowhum_advice::HiveAnswer;
use snowhum_apiary::{StoresPlace, food_in};
use snowhum_picture::{Stores, StoresState};
use snowhum_units::{Fraction, Kilogram, Metre};
use snowhum_winter::Housed;

use super::Within;

/// A cluster nobody has sized, m (drawing only).
const SOME_RADIUS_M: f64 = 0.09;

/// A cluster's place and the food round it.
pub(crate) struct Place {
    pub(crate) cluster_height: Metre,
    pub(crate) stores: Vec<Stores>,
}

/// A block of food in the hive's whole comb room: shares of its width, heights over the lowest comb in metres.
struct Block {
    state: StoresState,
    left: f64,
    right: f64,
    low: f64,
    high: f64,
    kilograms: f64,
}

struct Room {
    /// Kilograms that a slice of full width and one metre of height holds.
    kg_per_m: f64,
    width: f64,
    height: f64,
}

pub(crate) fn place(housed: &Housed, within: &Within, settled: Option<&HiveAnswer>) -> Place {
    let room = room(housed);
    let radius = settled.map_or(SOME_RADIUS_M, |answer| answer.radius_cm / 100.0);
    let shares = sits(housed, within);
    let total = within.stores_kg;
    let near = shares.touched + shares.above + shares.beside;
    let reach = within.reach_kg.map_or(total * near, |reach| reach.min(total));
    let part = |share: f64| reach * share / near.max(1e-9);
    let half = (radius / room.width).clamp(0.1, 0.42);
    let (left, right) = (0.5 - half, 0.5 + half);
    let kg_per_m = room.kg_per_m * (right - left);
    let above = (part(shares.above) / kg_per_m).min(room.height * 0.7);
    let touched = (part(shares.touched) / kg_per_m).min(room.height * 0.4);
    let top = room.height - above;
    let middle = middle(within, &room, radius, (above, touched));
    let beside = part(shares.beside) / 2.0;
    let far = total - reach;
    let side = |state, left: f64, right: f64, kilograms: f64| {
        let high = room.height;
        let low = high - (kilograms / (room.kg_per_m * (right - left)).max(1e-9)).min(high);
        Block { state, left, right, low, high, kilograms }
    };
    let over = |state, low, high, kilograms| Block { state, left, right, low, high, kilograms };
    let edge = (0.5 - half) * 0.45;
    let mut blocks = [
        Block { state: StoresState::InReach, left, right, low: top, high: room.height, kilograms: part(shares.above) },
        over(StoresState::Touched, top - touched, top, part(shares.touched)),
        side(StoresState::InReach, edge, left, beside),
        side(StoresState::InReach, right, 1.0 - edge, beside),
        side(StoresState::OutOfReach, 1.0 - edge, 1.0, far / 2.0),
        side(StoresState::OutOfReach, 0.0, edge, far / 2.0),
    ];
    if within.seen_dead {
        blocks.iter_mut().for_each(|block| block.state = StoresState::OutOfReach);
    }
    Place { cluster_height: Metre::new(middle + 0.022), stores: blocks.iter().flat_map(|b| split(housed, b)).collect() }
}

/// How high over the lowest comb the middle of a cluster is, under so much height of food over it and of food touched. Bees
/// do not pass a board on the top bars, and keep from one that they have not come up to.
fn middle(within: &Within, room: &Room, radius: f64, (above, touched): (f64, f64)) -> f64 {
    /// Least room between a cluster and a board that it has not reached, m (drawing only).
    const APART_M: f64 = 0.03;
    let lowest = radius.min(room.height / 2.0);
    let free = room.height - above - 0.35 * touched - 0.4 * radius;
    match within.food_body {
        None => free.clamp(lowest, room.height),
        Some(seen) if seen.is_under_it() => (room.height - radius).max(lowest),
        Some(_) => free.clamp(lowest, (room.height - radius - above.max(APART_M)).max(lowest)),
    }
}

/// Where food sits: a cluster that has come up to a board has eaten what lay over it.
fn sits(housed: &Housed, within: &Within) -> StoresPlace {
    let place = housed.colony.stores.place;
    match within.food_body.is_some_and(|seen| seen.is_under_it()) {
        true => StoresPlace { above: 0.0, beside: place.beside + place.above, ..place },
        false => place,
    }
}

fn room(housed: &Housed) -> Room {
    let boxes = &housed.hive.boxes;
    let height = boxes.iter().map(|one| one.depth.get()).sum::<f64>().max(0.05);
    let full: f64 = boxes.iter().map(|one| food_in(f64::from(one.frames), one.comb_side).p50.get()).sum();
    let width = boxes.first().map_or(0.4, |one| one.width.get()).max(0.05);
    Room { kg_per_m: full / height, width, height }
}

/// A block cut at the joints of the boxes.
fn split(housed: &Housed, block: &Block) -> Vec<Stores> {
    let mut bottom = 0.0;
    let mut parts = Vec::new();
    let tall = block.high - block.low;
    for (in_box, one) in housed.hive.boxes.iter().enumerate() {
        let depth = one.depth.get().max(1e-3);
        let (low, high) = (block.low.max(bottom), block.high.min(bottom + depth));
        if high - low > 0.004 && tall > 0.0 && block.kilograms >= 0.05 {
            let share = |height: f64| Fraction::new(((height - bottom) / depth).clamp(0.0, 1.0));
            parts.push(Stores {
                in_box,
                state: block.state,
                left: Fraction::new(block.left),
                right: Fraction::new(block.right),
                bottom: share(low),
                top: share(high),
                mass: Kilogram::new(block.kilograms * (high - low) / tall),
            });
        }
        bottom += depth;
    }
    parts
}
