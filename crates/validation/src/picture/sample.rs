//! Marks and lines at places of the sheet, in drawings and in their keys.

use super::ink::{BLUE, Fill, Mark, RUST, Stroke};

/// What a row of a key shows.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Sample {
    Line(Stroke),
    Mark(Mark),
    /// An expected value with its band.
    Whiskered(Mark),
    Area(Fill),
}

/// A sample 34 pixels wide from `x`.
pub(super) fn in_key(x: f64, middle: f64, sample: Sample) -> String {
    let centre = x + 17.0;
    match sample {
        Sample::Line(stroke) => line(&format!("{x:.1},{middle:.1} {:.1},{middle:.1}", x + 34.0), stroke),
        Sample::Mark(one) => mark(centre, middle, one),
        Sample::Whiskered(one) => whisker(centre, [middle + 10.0, middle - 10.0]) + &mark(centre, middle, one),
        Sample::Area(fill) => format!(
            "<rect x=\"{:.1}\" y=\"{:.1}\" width=\"30\" height=\"14\" {}/>",
            x + 2.0,
            middle - 7.0,
            fill.attributes()
        ),
    }
}

pub(super) fn line(corners: &str, stroke: Stroke) -> String {
    format!(
        "<polyline points=\"{corners}\" fill=\"none\" stroke=\"{BLUE}\" stroke-linejoin=\"round\" {}/>",
        stroke.attributes()
    )
}

pub(super) fn whisker(x: f64, [low, high]: [f64; 2]) -> String {
    let foot = |y: f64| format!("M{:.1} {y:.1}H{:.1}", x - 5.0, x + 5.0);
    let (below, above) = (foot(low), foot(high));
    format!(
        "<path d=\"M{x:.1} {low:.1}V{high:.1}{below}{above}\" stroke=\"{RUST}\" stroke-width=\"1.5\" fill=\"none\"/>"
    )
}

pub(super) fn mark(x: f64, y: f64, mark: Mark) -> String {
    match mark {
        Mark::Disc => format!(
            "<circle cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"5.5\" fill=\"{BLUE}\" stroke=\"#fff\" stroke-width=\"1.5\"/>"
        ),
        Mark::Square => format!(
            "<rect x=\"{:.1}\" y=\"{:.1}\" width=\"10\" height=\"10\" fill=\"{RUST}\" stroke=\"#fff\" stroke-width=\"1.5\"/>",
            x - 5.0,
            y - 5.0
        ),
        // Open and wider than the square, so that both are seen where they meet.
        Mark::Diamond => format!(
            "<path d=\"M{:.1} {y:.1}l11 -11l11 11l-11 11z\" fill=\"none\" stroke=\"{RUST}\" stroke-width=\"2\"/>",
            x - 11.0
        ),
    }
}
