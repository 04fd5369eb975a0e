//! The hive's shell: stand, floor, boxes, wrap, lid, roof.

use super::frame::Frame;
use super::measured::{Measured, MeasuredBox, thickness};
use super::section::{FloorLook, HiveSection, Look};
use crate::geometry::{Path, Point};
use crate::scene::{Pen, Scene};
use crate::tint::Tint;

/// Loose fill thicker than this lies in a wooden rim.
const HEAPED_M: f64 = 0.012;
/// Depth of a tray under the mesh.
const TRAY_DROP_M: f64 = 0.028;

pub(crate) fn stand(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    if hive.stand <= 0.0 {
        return;
    }
    let (leg, out) = (0.035, hive.outer / 2.0 - 0.02);
    let mut legs = Path::new();
    for side in [-1.0, 1.0] {
        let (near, far) = (side * (out - leg), side * out);
        legs.push(Path::rect(frame.rect(near, far, hive.ground, hive.floor_bottom)));
    }
    scene.shape(legs, Some(Tint::Wood), Pen::THIN);
    if hive.is_stand_broken() {
        break_marks(scene, hive, frame, out - leg / 2.0);
    }
}

/// Two short waves over each leg: the leg is longer than it is drawn.
fn break_marks(scene: &mut Scene, hive: &Measured, frame: &Frame, leg_x: f64) {
    let middle = (hive.ground + hive.floor_bottom) / 2.0;
    for x in [-leg_x, leg_x] {
        let (left, right) = (frame.x(x) - 13.0, frame.x(x) + 13.0);
        let y = frame.y(middle);
        let wave = |y: f64| {
            [0.0, 0.25, 0.5, 0.75, 1.0].map(|t: f64| {
                Point::new(left + t * (right - left), y + if (t * 4.0) as u32 % 2 == 1 { -3.0 } else { 3.0 })
            })
        };
        scene.shape(Path::band(&wave(y - 2.5), &wave(y + 2.5)), Some(Tint::Paper), Pen::NONE);
        scene.shape(Path::open(&wave(y - 2.5)).and(Path::open(&wave(y + 2.5))), None, Pen::THIN);
    }
}

pub(crate) fn floor(scene: &mut Scene, section: &HiveSection, hive: &Measured, frame: &Frame) {
    let (outer, side) = (hive.outer / 2.0, 0.019_f64.min(hive.outer / 8.0));
    let sides = |low: f64, high: f64| {
        Path::rect(frame.rect(-outer, -outer + side, low, high)).and(Path::rect(frame.rect(
            outer - side,
            outer,
            low,
            high,
        )))
    };
    if hive.rise > 0.0 {
        scene.shape(sides(0.0, hive.rise), Some(Tint::Wood), Pen::THIN);
    }
    if section.floor.kind == FloorLook::Solid {
        let board = frame.rect(-outer, outer, hive.floor_bottom, 0.0);
        scene.part("floor", Path::rect(board), Some(Tint::Wood), Pen::THIN);
        return;
    }
    scene.part("floor", sides(hive.floor_bottom, 0.0), Some(Tint::Wood), Pen::THIN);
    let mesh = Path::line(frame.at(-outer + side, 0.0), frame.at(outer - side, 0.0));
    scene.shape(mesh, None, Pen::new(Pen::FIRM.ink, 2.0).dashed(0.5, 4.0));
    if section.floor.kind == FloorLook::TrayedMesh {
        let low = (-TRAY_DROP_M).max(hive.floor_bottom);
        let tray = frame.rect(-outer + side, outer - side, low - 0.005, low);
        scene.shape(Path::rect(tray), Some(Tint::Plastic), Pen::THIN);
    }
}

pub(crate) fn boxes(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    let inner = hive.inner / 2.0;
    let low = hive.boxes.first().map_or(0.0, |first| first.bottom.min(0.0));
    let room = frame.rect(-inner, inner, low, hive.lid_bottom);
    scene.shape(Path::rect(room), Some(Tint::Room), Pen::NONE);
    for one in &hive.boxes {
        let outline = frame.rect(-outer_half(one), outer_half(one), one.bottom, one.top);
        let walls = both_walls(frame, one, one.bottom, one.top);
        scene.shape(walls, Some(one.look.tint()), Pen::THIN);
        scene.part("box", Path::rect(outline), None, Pen::THIN);
    }
    if let (Some(top), true) = (hive.boxes.last(), hive.lid_bottom > hive.boxes_top) {
        let rim = both_walls(frame, top, hive.boxes_top, hive.lid_bottom);
        scene.shape(rim, Some(top.look.tint()), Pen::THIN);
    }
}

fn outer_half(one: &MeasuredBox) -> f64 {
    one.inner / 2.0 + one.wall
}

fn both_walls(frame: &Frame, one: &MeasuredBox, low: f64, high: f64) -> Path {
    let (inner, outer) = (one.inner / 2.0, outer_half(one));
    Path::rect(frame.rect(-outer, -inner, low, high)).and(Path::rect(frame.rect(inner, outer, low, high)))
}

pub(crate) fn wrap(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    let low = hive.boxes.first().map_or(0.0, |first| first.bottom);
    let mut inside = hive.outer / 2.0;
    for sheet in &hive.wrap {
        let outside = inside + sheet.thickness;
        let layer = Path::rect(frame.rect(-outside, -inside, low, hive.lid_bottom));
        let layer = layer.and(Path::rect(frame.rect(inside, outside, low, hive.lid_bottom)));
        scene.part("wrap", layer, Some(sheet.look.tint()), Pen::THIN);
        inside = outside;
    }
}

pub(crate) fn lid(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    let outer = hive.outer / 2.0;
    let mut low = hive.lid_bottom;
    for sheet in &hive.lid {
        let high = low + sheet.thickness;
        let layer = Path::rect(frame.rect(-outer, outer, low, high));
        scene.part("lid", layer, Some(sheet.look.tint()), Pen::THIN);
        if sheet.look == Look::Straw && sheet.thickness > HEAPED_M {
            let side = 0.019_f64.min(outer / 4.0);
            let rim = Path::rect(frame.rect(-outer, -outer + side, low, high));
            let rim = rim.and(Path::rect(frame.rect(outer - side, outer, low, high)));
            scene.shape(rim, Some(Tint::Wood), Pen::THIN);
        }
        low = high;
    }
}

pub(crate) fn roof(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    let Some(roof) = hive.roof else { return };
    let inside = hive.outer / 2.0 + thickness(&hive.wrap) + 0.004;
    let outside = inside + 0.008;
    let (top, under, hem) = (hive.roof_top, hive.lid_top, hive.lid_top - roof.skirt);
    let outline = Path::closed(&[
        frame.at(-outside, hem),
        frame.at(-outside, top),
        frame.at(outside, top),
        frame.at(outside, hem),
        frame.at(inside, hem),
        frame.at(inside, under),
        frame.at(-inside, under),
        frame.at(-inside, hem),
    ]);
    scene.part("roof", outline, Some(roof.sheet.look.tint()), Pen::THIN);
}
