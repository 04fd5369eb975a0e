//! Keys to tints, laid out in rows.

use crate::geometry::{Path, Point, Rect};
use crate::scene::{Pen, Scene, Type};
use crate::tint::Tint;
use crate::words::width;

/// Size of a key's words.
const SIZE: f64 = 14.0;
/// Height of one row.
pub(crate) const ROW: f64 = 22.0;
const SWATCH: (f64, f64) = (22.0, 14.0);

/// Draws keys from `x` to `right`, row under row from `top`; says where the last row ends.
pub(crate) fn draw(scene: &mut Scene, tints: &[Tint], x: f64, right: f64, top: f64) -> f64 {
    let (mut at, mut y) = (x, top);
    for tint in tints {
        let room = SWATCH.0 + 6.0 + width(tint.word(), SIZE) + 14.0;
        if at > x && at + room > right + 14.0 {
            at = x;
            y += ROW;
        }
        let swatch = Rect::new(at, y + 3.0, SWATCH.0, SWATCH.1);
        scene.shape(Path::rect(swatch), Some(*tint), Pen::THIN);
        scene.words(Point::new(at + SWATCH.0 + 6.0, y + 15.0), tint.word(), Type::regular(SIZE));
        at += room;
    }
    if tints.is_empty() { y } else { y + ROW }
}
