//! The body of food on a hive: the board or slab over the frames, the feeder among them. What is eaten is gone from its
//! underside; its outline stays.

use super::frame::Frame;
use super::measured::{Measured, length, share};
use super::section::{FoodLies, HiveSection, SectionFood};
use crate::geometry::{Path, Point};
use crate::scene::{Ink, Pen, Scene};

/// Room between bees and board is never drawn as less.
const LEAST_M: f64 = 0.004;

/// As it was put on: left, right, low and high, in metres.
fn whole(food: &SectionFood, m: &Measured) -> (f64, f64, f64, f64) {
    let across = |edge| (share(edge) - 0.5) * m.inner;
    let (left, right) = (across(food.left), across(food.right).max(across(food.left)));
    let thick = length(food.thickness, LEAST_M, 0.3);
    match (food.lies, m.boxes.last()) {
        (FoodLies::AmongCombs, Some(top)) => (left, right, top.comb_bottom, top.comb_top),
        _ => (left, right, m.boxes_top, (m.boxes_top + thick).min(m.lid_bottom.max(m.boxes_top + LEAST_M))),
    }
}

/// What is left of it, parted by its hole.
pub(crate) fn draw(scene: &mut Scene, hive: &HiveSection, m: &Measured, frame: &Frame) {
    let Some(food) = &hive.food_body else { return };
    let (left, right, low, high) = whole(food, m);
    let left_of = high - low;
    let (bottom, top) = match food.lies {
        FoodLies::OnTopBars => (high - share(food.remaining) * left_of, high),
        FoodLies::AmongCombs => (low, low + share(food.remaining) * left_of),
    };
    let hole = food.hole.map_or(0.0, |hole| length(hole, 0.0, right - left)) / 2.0;
    let middle = (left + right) / 2.0;
    let halves = if hole > 0.0 { vec![(left, middle - hole), (middle + hole, right)] } else { vec![(left, right)] };
    let (mut outline, mut rest) = (Path::new(), Path::new());
    for (from, to) in halves {
        outline.push(Path::rect(frame.rect(from, to, low, high)));
        rest.push(Path::rect(frame.rect(from, to, bottom, top)));
    }
    if share(food.remaining) > 0.0 {
        scene.part("food-body", rest, Some(food.state.tint()), Pen::THIN);
    }
    scene.shape(outline, None, Pen::new(Ink::Full, 0.8).dashed(3.0, 2.0));
}

/// Where it is pointed at.
pub(crate) fn anchor(food: &SectionFood, m: &Measured, frame: &Frame) -> Point {
    let (left, right, low, high) = whole(food, m);
    frame.at(left + 0.85 * (right - left), low + 0.7 * (high - low))
}
