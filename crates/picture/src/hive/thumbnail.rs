//! A hive as a small sign: boxes, wrap, lid, snow, and the cluster inside.

use super::frame::Frame;
use super::measured::{Ball, Measured, thickness};
use super::said;
use super::section::{HiveSection, SectionColony};
use crate::figures::about;
use crate::geometry::{Path, Rect};
use crate::plate::{Plate, Table};
use crate::scene::{Ink, Pen, Scene};
use crate::tint::Tint;
use snowhum_say::hive_picture as text;

/// The view.
const WIDTH: f64 = 96.0;
const HEIGHT: f64 = 120.0;
/// Units a metre, unless the hive is too tall for it.
const SCALE: f64 = 128.0;

pub(crate) fn thumbnail(hive: &HiveSection) -> Plate {
    let measured = Measured::of(hive);
    let frame = Frame::stand_in(&measured, Rect::new(0.0, 2.0, WIDTH, HEIGHT - 4.0), SCALE);
    let mut scene = Scene::new(WIDTH, HEIGHT);
    shell(&mut scene, &measured, &frame);
    let description = match (&hive.colony, measured.ball) {
        (SectionColony::Alive(cluster), Some(ball)) => {
            bees(&mut scene, Tint::Bees, Pen::THIN, ball, &measured, &frame);
            text::alive_small(about(cluster.bees))
        }
        (SectionColony::Dead(_), ball) => {
            let at = ball.unwrap_or(Ball { x: 0.0, height: measured.boxes_top / 2.0, radius: 0.08, core: 0.0 });
            bees(&mut scene, Tint::DeadBees, Pen::THIN.dashed(3.0, 2.0), at, &measured, &frame);
            text::dead_small()
        }
        _ => text::empty_small(),
    };
    Plate { title: said::name(hive), description: hive.say(&description), scene, table: Table::default() }
}

fn shell(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    let outer = hive.outer / 2.0;
    let wrapped = outer + thickness(&hive.wrap);
    let reach = frame.reach(hive);
    let box_of = |half: f64, low: f64, high: f64| Path::rect(frame.rect(-half, half, low, high));
    if hive.snow_bank > 0.0 {
        scene.shape(box_of(reach, hive.ground, hive.snow_line()), Some(Tint::Snow), Pen::NONE);
    }
    let legs = Path::line(frame.at(-outer * 0.8, hive.ground), frame.at(-outer * 0.8, hive.floor_bottom));
    let legs = legs.and(Path::line(frame.at(outer * 0.8, hive.ground), frame.at(outer * 0.8, hive.floor_bottom)));
    let ground = Path::line(frame.at(-reach, hive.ground), frame.at(reach, hive.ground));
    scene.shape(legs.and(ground), None, Pen::FIRM);
    if wrapped > outer {
        scene.part("wrap", box_of(wrapped, hive.rise, hive.lid_bottom), None, Pen::THIN);
    }
    let floor = box_of(outer, hive.floor_bottom, hive.rise);
    let boxes =
        hive.boxes.iter().fold(floor, |all, one| all.and(box_of(one.inner / 2.0 + one.wall, one.bottom, one.top)));
    scene.part("boxes", boxes, Some(Tint::Room), Pen::FIRM);
    let roof_half = if hive.roof.is_some() { hive.half_width } else { outer };
    scene.shape(box_of(roof_half, hive.lid_bottom, hive.roof_top), Some(Tint::Solid), Pen::NONE);
    if hive.snow_roof > 0.0 {
        let snow = box_of(roof_half * 0.97, hive.roof_top, hive.roof_top + hive.snow_roof);
        scene.shape(snow, Some(Tint::Snow), Pen::new(Ink::Full, 0.8));
    }
}

fn bees(scene: &mut Scene, tint: Tint, pen: Pen, ball: Ball, hive: &Measured, frame: &Frame) {
    let circle = Path::circle(frame.at(ball.x, ball.height), frame.len(ball.radius));
    let room = ball.height.min(hive.lid_bottom - ball.height).min(hive.inner / 2.0 - ball.x.abs());
    if ball.radius <= room {
        return scene.shape(circle, Some(tint), pen);
    }
    scene.clipped(frame.rect(-hive.inner / 2.0, hive.inner / 2.0, 0.0, hive.lid_bottom), circle, Some(tint), pen);
}
