//! Frames of sealed stores that heavy, healthy colonies of a yard can give to short ones, each frame once.

use snowhum_apiary::food_in;
use snowhum_units::Kilogram;

use super::combs;
use super::run::Run;
use super::shortage::{LEFT_IN_SPRING, WORTH_FEEDING};
use crate::site::health::Health;
use crate::statistics::quantile;

/// Share of a frame's comb that holds sealed stores in a frame worth moving (judgement).
const FRAME_FULL: f64 = 0.9;
/// Chance of being alive in spring below which a colony's frames stay with it: it may be sick of something unseen (judgement).
const LIKELY: f64 = 0.5;
/// Most frames asked of one giver.
const MOST_FRAMES: usize = 3;

/// What a colony is given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Gift {
    /// Place of the giver.
    pub(crate) giver: usize,
    /// Frames.
    pub(crate) frames: usize,
    /// What they hold.
    pub(crate) stores: Kilogram,
}

/// Days within which frames are moved.
pub(crate) const WITHIN: i64 = 14;

/// What each colony is given; nothing where combs cannot be lifted in the days ahead. The shortest comes first, and what it
/// is given nobody else is.
pub(crate) fn gifts(run: &Run<'_>, short: &[Kilogram]) -> Vec<Option<Gift>> {
    let mut gifts = vec![None; run.housed.len()];
    if !combs::can_be_lifted(run) {
        return gifts;
    }
    let Some(health) = Health::of(run) else { return gifts };
    let mut left: Vec<Kilogram> = (0..run.housed.len()).map(|place| to_spare(run, &health, place)).collect();
    let mut takers: Vec<usize> = (0..run.housed.len()).filter(|at| short[*at] >= WORTH_FEEDING).collect();
    takers.sort_by(|a, b| short[*b].get().total_cmp(&short[*a].get()));
    for taker in takers {
        let Some(gift) = gift(run, short[taker], &left, taker) else { continue };
        left[gift.giver] -= gift.stores;
        gifts[taker] = Some(gift);
    }
    gifts
}

/// From the colony with frames of the same size that has most left to spare.
fn gift(run: &Run<'_>, short: Kilogram, left: &[Kilogram], taker: usize) -> Option<Gift> {
    let frame = full_frame(run, taker).filter(|frame| *frame >= WORTH_FEEDING)?;
    let can = |giver: &usize| left[*giver] >= frame && frames_fit(run, *giver, taker);
    let giver = (0..left.len()).filter(can).max_by(|a, b| left[*a].get().total_cmp(&left[*b].get()))?;
    let wanted = ((short / frame).ceil() as usize).clamp(1, MOST_FRAMES);
    let frames = wanted.min((left[giver] / frame).floor() as usize);
    Some(Gift { giver, frames, stores: frame * frames as f64 })
}

/// Stores in a full frame of a hive's top box.
fn full_frame(run: &Run<'_>, place: usize) -> Option<Kilogram> {
    let own = run.housed[place].hive.boxes.last()?;
    Some(food_in(FRAME_FULL, own.comb_side).p50)
}

/// Whether a giver has frames of the size of the taker's top box; no hive gives to itself.
fn frames_fit(run: &Run<'_>, giver: usize, taker: usize) -> bool {
    let Some(own) = run.housed[taker].hive.boxes.last() else { return false };
    let boxes = &run.housed[giver].hive.boxes;
    giver != taker && boxes.iter().any(|b| (b.comb_side / own.comb_side - 1.0).abs() < 0.02 && b.depth == own.depth)
}

/// What a colony can spare: without it nine members in ten keep 3 kg within reach. Nothing where it is sick, or unlikely to
/// live.
fn to_spare(run: &Run<'_>, health: &Health, place: usize) -> Kilogram {
    let ends = &run.trajectories[place].ends;
    let alive = ends.iter().map(snowhum_winter::MemberEnd::alive).sum::<f64>();
    if alive <= LIKELY * ends.len() as f64 || !health.may_give_and_take(&run.housed[place].colony) {
        return Kilogram::new(0.0);
    }
    let left: Vec<f64> = ends.iter().map(|end| end.reachable.get()).collect();
    Kilogram::new((quantile(&left, 0.1) - LEFT_IN_SPRING.get()).max(0.0))
}
