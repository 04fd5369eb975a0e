//! Openings, and air through them.

use super::frame::Frame;
use super::measured::{Measured, length, share, thickness};
use super::section::{Face, HiveSection, SectionOpening};
use crate::geometry::{Path, Point, Rect};
use crate::scene::{Ink, Pen, Scene};
use crate::tint::Tint;

/// Most openings drawn.
pub(crate) const MOST_OPENINGS: usize = 8;
/// Flow drawn with the widest arrow, m³/s. Judgement: a strong draught through a hive.
const WIDEST_FLOW_M3S: f64 = 4e-4;
/// Flows below this have no arrow, m³/s.
const STILL_M3S: f64 = 1e-7;

pub(crate) fn openings(scene: &mut Scene, section: &HiveSection, hive: &Measured, frame: &Frame) {
    for opening in section.openings.iter().take(MOST_OPENINGS) {
        hole(scene, opening, hive, frame);
    }
    for opening in section.openings.iter().take(MOST_OPENINGS) {
        flow(scene, opening, hive, frame);
    }
}

/// Where an opening is.
pub(crate) fn place(opening: &SectionOpening, hive: &Measured, frame: &Frame) -> Point {
    let outside = hive.outer / 2.0 + thickness(&hive.wrap);
    let height = length(opening.height, 0.0, hive.roof_top);
    match opening.face {
        Face::Front | Face::Back => frame.at(0.0, height),
        Face::Left => frame.at(-outside, height),
        Face::Right => frame.at(outside, height),
        Face::Below => frame.at(-hive.inner * 0.2, 0.0),
        Face::Round => frame.at(-outside, hive.boxes_top),
    }
}

fn hole(scene: &mut Scene, opening: &SectionOpening, hive: &Measured, frame: &Frame) {
    let at = place(opening, hive, frame);
    let open = share(opening.open);
    let high = frame.len(length(opening.depth, 0.0, 0.3)).max(3.0);
    match opening.face {
        Face::Front | Face::Back => {
            let wide = frame.len(length(opening.width, 0.0, hive.inner)).max(3.0);
            let whole = Rect::new(at.x - wide / 2.0, at.y - high / 2.0, wide, high);
            let free = Rect::new(at.x - wide * open / 2.0, whole.y, wide * open, high);
            // The near wall is taken off: what was closed of its opening is an outline only.
            scene.shape(Path::rect(whole), None, Pen::new(Ink::Page, 2.4));
            scene.shape(Path::rect(whole), None, Pen::THIN.dashed(2.5, 2.0));
            scene.part("opening", Path::rect(free), Some(Tint::Hole), Pen::THIN);
            if is_closed(opening) {
                bar(scene, whole);
            }
        }
        Face::Left | Face::Right => {
            let inward = if opening.face == Face::Left { 1.0 } else { -1.0 };
            let depth = frame.len((hive.outer - hive.inner) / 2.0 + thickness(&hive.wrap)) * inward;
            let free = high * open;
            let gap = Rect::between(at.x, at.x + depth, at.y - free / 2.0, at.y + free / 2.0);
            scene.part("opening", Path::rect(gap), Some(Tint::Room), Pen::THIN);
            if is_closed(opening) {
                bar(scene, Rect::between(at.x, at.x + depth, at.y - high / 2.0, at.y + high / 2.0));
            }
        }
        Face::Below | Face::Round => {}
    }
}

/// Share of an opening from which it is drawn as open, if narrower (drawing only).
const AJAR: f64 = 0.25;

/// Whether the keeper found it all but closed.
fn is_closed(opening: &SectionOpening) -> bool {
    opening.shut.is_some() && share(opening.open) < AJAR
}

/// A cross from corner to corner: shut.
fn bar(scene: &mut Scene, hole: Rect) {
    let (left, right) = (hole.x, hole.x + hole.width);
    let (top, bottom) = (hole.y, hole.y + hole.height);
    let cross = Path::line(Point::new(left, top), Point::new(right, bottom));
    let cross = cross.and(Path::line(Point::new(left, bottom), Point::new(right, top)));
    scene.part("shut", cross, None, Pen::new(Ink::Full, 1.4));
}

/// An arrow into or out of an opening, the wider the more air.
fn flow(scene: &mut Scene, opening: &SectionOpening, hive: &Measured, frame: &Frame) {
    let flow = opening.flow.get();
    if !flow.is_finite() || flow.abs() < STILL_M3S {
        return;
    }
    let at = place(opening, hive, frame);
    let width = 1.2 + 2.0 * (flow.abs() / WIDEST_FLOW_M3S).min(1.0).sqrt();
    let is_high = opening.height.get() > hive.boxes_top * 0.5;
    let (mouth, bend, far) = match opening.face {
        Face::Front | Face::Back if is_high => (at.moved(2.0, -1.0), at.moved(16.0, -2.0), at.moved(22.0, -19.0)),
        Face::Front | Face::Back => (at.moved(6.0, 2.0), at.moved(8.0, 20.0), at.moved(26.0, 26.0)),
        Face::Left => (at.moved(2.0, 0.0), at.moved(-12.0, 0.0), at.moved(-24.0, if is_high { -14.0 } else { 6.0 })),
        Face::Right => (at.moved(-2.0, 0.0), at.moved(12.0, 0.0), at.moved(24.0, if is_high { -14.0 } else { 6.0 })),
        Face::Below => (at.moved(14.0, -8.0), at.moved(14.0, 8.0), at.moved(10.0, 22.0)),
        Face::Round => (at.moved(2.0, 0.0), at.moved(-10.0, 0.0), at.moved(-22.0, 8.0)),
    };
    if flow > 0.0 {
        scene.arrow(far, bend, mouth, width);
    } else {
        scene.arrow(mouth, bend, far, width);
    }
}
