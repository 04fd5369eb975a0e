//! Ground and snow.

use super::frame::Frame;
use super::measured::Measured;
use crate::geometry::{Path, Point, Rect, Step};
use crate::scene::{Ink, Pen, Scene};
use crate::tint::Tint;

/// The ground, and snow lying beside and under the hive: drawn before the hive.
pub(crate) fn lying(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    let reach = frame.reach(hive);
    if hive.snow_bank > 0.0 {
        scene.part("bank", bank(hive, frame, reach), Some(Tint::Snow), Pen::new(Ink::Full, 0.9));
    }
    let ground = frame.rect(-reach, reach, hive.ground - frame.below(), hive.ground);
    scene.shape(Path::rect(ground), Some(Tint::Ground), Pen::NONE);
    scene.shape(Path::line(frame.at(-reach, hive.ground), frame.at(reach, hive.ground)), None, Pen::FIRM);
}

/// The snow on the roof, and how high it stands before the hive: drawn after the hive.
pub(crate) fn on_top(scene: &mut Scene, hive: &Measured, frame: &Frame) {
    if hive.snow_roof > 0.0 {
        scene.part("roof-snow", cap(hive, frame), Some(Tint::Snow), Pen::new(Ink::Full, 0.9));
    }
    let line = hive.snow_line();
    if hive.snow_bank > 0.0 && line > hive.floor_bottom {
        let ends = (frame.at(-hive.half_width, line), frame.at(hive.half_width, line));
        scene.shape(Path::line(ends.0, ends.1), None, Pen::new(Ink::Page, 3.2));
        scene.shape(Path::line(ends.0, ends.1), None, Pen::new(Ink::Cold, 1.4).dashed(6.0, 4.0));
    }
}

/// Snow to both sides, a little deeper against the walls where the wind left it, and a level sheet behind the stand.
fn bank(hive: &Measured, frame: &Frame, reach: f64) -> Path {
    let (top, edge) = (hive.snow_line(), hive.half_width);
    let away = hive.ground + 0.82 * hive.snow_bank;
    let steps = vec![
        Step::Move(frame.at(-reach, hive.ground)),
        Step::Line(frame.at(-reach, away)),
        Step::Curve(frame.at(-edge - 0.03, away), frame.at(-edge, top)),
        Step::Line(frame.at(edge, top)),
        Step::Curve(frame.at(edge + 0.03, away), frame.at(reach, away)),
        Step::Line(frame.at(reach, hive.ground)),
        Step::Close,
    ];
    Path { steps }
}

/// A rounded cap as wide as the roof.
fn cap(hive: &Measured, frame: &Frame) -> Path {
    let half = if hive.roof.is_some() { hive.half_width + 0.004 } else { hive.outer / 2.0 + 0.004 };
    let Rect { x, y, width, height } = frame.rect(-half, half, hive.roof_top, hive.roof_top + hive.snow_roof);
    let (right, bottom, bend) = (x + width, y + height, height.min(width / 7.0));
    let at = |x: f64, y: f64| Point::new(x, y);
    let steps = vec![
        Step::Move(at(x, bottom)),
        Step::Line(at(x, y + bend)),
        Step::Curve(at(x, y + 0.5), at(x + bend, y + 0.5)),
        Step::Curve(at(x + width / 2.0, y - 1.2), at(right - bend, y + 0.5)),
        Step::Curve(at(right, y + 0.5), at(right, y + bend)),
        Step::Line(at(right, bottom)),
        Step::Close,
    ];
    Path { steps }
}
