//! What is in the boxes: frames, comb, food, bees.

use super::frame::Frame;
use super::measured::{Ball, Measured, MeasuredBox, share};
use super::section::{CombWay, HiveSection, SectionColony, Stores, StoresState};
use crate::geometry::{Path, Point, Rect};
use crate::scene::{Ink, Pen, Scene};
use crate::tint::Tint;
use snowhum_units::Fraction;

/// Thickness of a drawn comb. Source: common practice, 25 mm of worker comb.
const COMB_M: f64 = 0.025;
/// Bee space at the ends of a frame and width of its side bars. Source: common practice.
const SIDE_M: f64 = 0.016;
/// Most food regions drawn.
const MOST_STORES: usize = 96;
/// Room a heap takes for each dead bee. Judgement: a handful of a hundred bees is about 40 mL.
const DEAD_BEE_M3: f64 = 4e-7;
/// Depth of the floor the heap lies on. Source: common practice, boxes near half a metre long.
const HEAP_LENGTH_M: f64 = 0.45;

/// Comb faces or edges of one box, in the view, each with the middle of its place across.
pub(crate) fn combs(one: &MeasuredBox, way: CombWay, frame: &Frame) -> Vec<Rect> {
    if one.frames == 0 || one.comb_top <= one.comb_bottom {
        return Vec::new();
    }
    if way == CombWay::Warm {
        let half = (one.inner / 2.0 - SIDE_M).max(0.0);
        return vec![frame.rect(-half, half, one.comb_bottom, one.comb_top)];
    }
    let spacing = one.spacing.min(one.inner / f64::from(one.frames));
    let half = (COMB_M / 2.0).min(spacing * 0.4);
    let first = -spacing * (f64::from(one.frames) - 1.0) / 2.0;
    let edge = |at: u32| {
        let middle = first + spacing * f64::from(at);
        frame.rect(middle - half, middle + half, one.comb_bottom, one.comb_top)
    };
    (0..one.frames).map(edge).collect()
}

/// Frames with their comb, and food on it.
pub(crate) fn frames(scene: &mut Scene, section: &HiveSection, hive: &Measured, frame: &Frame) {
    let mut wood = Path::new();
    let mut comb = Path::new();
    for one in &hive.boxes {
        for face in combs(one, section.way, frame) {
            comb.push(Path::rect(face));
            wood.push(bars(one, face, frame));
        }
    }
    scene.part("comb", comb, Some(Tint::EmptyComb), Pen::new(Ink::Full, 0.5));
    for state in StoresState::ALL {
        let mut food = Path::new();
        let pieces = section.stores.iter().take(MOST_STORES).filter(|stores| stores.state == state);
        pieces
            .flat_map(|stores| pieces_of(stores, section, hive, frame))
            .for_each(|piece| food.push(Path::rect(piece)));
        scene.shape(food, Some(state.tint()), Pen::new(Ink::Full, 0.5));
    }
    scene.shape(wood, Some(Tint::Wood), Pen::new(Ink::Full, 0.5));
}

/// Top and bottom bar of the frame round a comb.
fn bars(one: &MeasuredBox, face: Rect, frame: &Frame) -> Path {
    let top = Rect::between(face.x, face.right(), frame.y(one.comb_top + 0.019), face.y);
    let space = frame.len((one.comb_bottom - one.bottom - 0.006).clamp(0.0, 0.009));
    let thinner = face.width.min(frame.len(COMB_M)) * 0.15;
    let low = Rect::between(face.x + thinner, face.right() - thinner, face.bottom(), face.bottom() + space);
    Path::rect(top).and(Path::rect(low))
}

/// The parts of combs a food region covers.
pub(crate) fn pieces_of(stores: &Stores, section: &HiveSection, hive: &Measured, frame: &Frame) -> Vec<Rect> {
    let Some(one) = hive.boxes.get(stores.in_box) else { return Vec::new() };
    let across = |edge: Fraction| (share(edge) - 0.5) * one.inner;
    let up = |edge: Fraction| one.comb_bottom + share(edge) * (one.comb_top - one.comb_bottom);
    let region = frame.rect(across(stores.left), across(stores.right), up(stores.bottom), up(stores.top));
    let covered = |face: Rect| {
        let middle = face.middle().x;
        let is_whole = section.way == CombWay::Cold && region.x <= middle && middle < region.right();
        let region = if is_whole { Rect { x: face.x, width: face.width, ..region } } else { region };
        let may_cut = is_whole || section.way == CombWay::Warm;
        face.shared(region).filter(|_| may_cut)
    };
    combs(one, section.way, frame).into_iter().filter_map(covered).collect()
}

/// The cluster, or where it was.
pub(crate) fn colony(scene: &mut Scene, section: &HiveSection, hive: &Measured, frame: &Frame) {
    heap(scene, section.dead_on_floor, hive, frame);
    let Some(ball) = hive.ball else { return };
    let inside = frame.rect(-hive.inner / 2.0, hive.inner / 2.0, 0.0, hive.lid_bottom);
    let (centre, radius) = (frame.at(ball.x, ball.height), frame.len(ball.radius));
    let whole = Path::circle(centre, radius);
    if matches!(section.colony, SectionColony::Dead(_)) {
        scene.clipped(inside, whole, Some(Tint::DeadBees), Pen::FIRM.dashed(5.0, 4.0));
        return;
    }
    scene.clipped(inside, whole, Some(Tint::Bees), Pen::FIRM);
    if ball.core > 0.0 {
        scene.clipped(inside, Path::circle(centre, frame.len(ball.core)), Some(Tint::Core), Pen::THIN);
    }
    if section.way == CombWay::Cold {
        scene.clipped(inside, midribs(hive, ball, section.way, frame), None, Pen::new(Ink::Full, 0.7));
    }
}

/// The combs' midribs seen through the cluster.
fn midribs(hive: &Measured, ball: Ball, way: CombWay, frame: &Frame) -> Path {
    let (centre, radius) = (frame.at(ball.x, ball.height), frame.len(ball.radius));
    let mut ribs = Path::new();
    for face in hive.boxes.iter().flat_map(|one| combs(one, way, frame)) {
        let x = face.middle().x;
        let half = (radius * radius - (x - centre.x).powi(2)).max(0.0).sqrt();
        let (high, low) = ((centre.y - half).max(face.y), (centre.y + half).min(face.bottom()));
        if low > high + 1.0 {
            ribs.push(Path::line(Point::new(x, high), Point::new(x, low)));
        }
    }
    ribs
}

/// Height of the heap of dead bees on the floor, metres.
pub(crate) fn heap_height(dead: u32, hive: &Measured) -> f64 {
    (f64::from(dead) * DEAD_BEE_M3 / (HEAP_LENGTH_M * hive.inner)).min(0.06)
}

fn heap(scene: &mut Scene, dead: u32, hive: &Measured, frame: &Frame) {
    if dead == 0 {
        return;
    }
    let (half, high) = (hive.inner * 0.42, heap_height(dead, hive).max(0.003) * 2.0);
    let (left, right) = (frame.at(-half, 0.0), frame.at(half, 0.0));
    let heap = Path::bow(left, frame.at(0.0, high), right);
    scene.shape(heap, Some(Tint::DeadBees), Pen::THIN);
}
