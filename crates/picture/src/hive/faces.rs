//! Temperature points, and drops and rime on the inner faces.

use super::frame::Frame;
use super::measured::Measured;
use super::section::{HiveSection, InnerFace, Spot, WaterForm};
use crate::geometry::{Path, Point, Step};
use crate::scene::{Ink, Pen, Scene};
use crate::tint::Tint;

/// Room between two drops or two stars of rime, units of the view.
const STEP: f64 = 15.0;

pub(crate) fn water(scene: &mut Scene, section: &HiveSection, hive: &Measured, frame: &Frame) {
    for wet in section.wet.iter().filter(|wet| wet.rate.get() > 0.0).take(6) {
        let mut marks = Path::new();
        places(wet.face, hive, frame).into_iter().for_each(|at| {
            marks.push(match wet.form {
                WaterForm::Water => drop(at),
                WaterForm::Frost => star(at),
            });
        });
        scene.shape(marks, None, Pen::new(Ink::Cold, 1.2));
    }
}

pub(crate) fn points(scene: &mut Scene, section: &HiveSection, hive: &Measured, frame: &Frame) {
    for reading in section.temperatures.iter().take(10) {
        let dot = Path::circle(place(reading.spot, hive, frame), 3.2);
        scene.shape(dot, Some(Tint::Paper), Pen::FIRM);
    }
}

/// Where a temperature is told of.
pub(crate) fn place(spot: Spot, hive: &Measured, frame: &Frame) -> Point {
    let inner = hive.inner / 2.0;
    let (height, radius, x) = hive.ball.map_or((hive.boxes_top * 0.6, 0.0, 0.0), |b| (b.height, b.radius, b.x));
    let over = (height + radius + 0.02).min(hive.lid_bottom - 0.015);
    match spot {
        Spot::WarmZone => frame.at((x + radius * 0.55).clamp(0.1 * inner, 0.8 * inner), over),
        Spot::ColdZone => frame.at(-0.72 * inner, (0.3 * (height - radius)).clamp(0.02, 0.2)),
        Spot::Lid => frame.at(-0.3 * inner, hive.lid_bottom),
        Spot::Walls => frame.at(inner, height),
        Spot::Floor => frame.at(0.55 * inner, 0.0),
    }
}

fn places(face: InnerFace, hive: &Measured, frame: &Frame) -> Vec<Point> {
    let inner = hive.inner / 2.0;
    let along = |from: f64, to: f64| {
        let count = ((to - from).abs() / STEP).floor().clamp(1.0, 60.0) as u32;
        (0..count).map(move |at| from + (to - from) * (f64::from(at) + 0.5) / f64::from(count))
    };
    match face {
        InnerFace::Lid => {
            along(frame.x(-inner), frame.x(inner)).map(|x| Point::new(x, frame.y(hive.lid_bottom) + 2.0)).collect()
        }
        InnerFace::Floor => {
            along(frame.x(-inner * 0.95), frame.x(inner * 0.95)).map(|x| Point::new(x, frame.y(0.0) - 6.5)).collect()
        }
        InnerFace::Walls => along(frame.y(hive.boxes_top), frame.y(hive.rise))
            .flat_map(|y| [Point::new(frame.x(-inner) + 3.5, y), Point::new(frame.x(inner) - 3.5, y)])
            .collect(),
    }
}

/// A hanging drop.
fn drop(at: Point) -> Path {
    let steps = vec![
        Step::Move(at),
        Step::Curve(at.moved(3.0, 5.4), at.moved(0.0, 5.4)),
        Step::Curve(at.moved(-3.0, 5.4), at),
        Step::Close,
    ];
    Path { steps }
}

/// A star of rime.
fn star(at: Point) -> Path {
    let centre = at.moved(0.0, 2.2);
    [(2.6, 0.0), (1.3, 2.3), (1.3, -2.3)]
        .into_iter()
        .map(|(x, y)| Path::line(centre.moved(-x, -y), centre.moved(x, y)))
        .fold(Path::new(), Path::and)
}
