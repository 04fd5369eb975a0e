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

/// Draws keys from `x` to `right`, row under row from `top`; says where the next would stand.
pub(crate) fn draw(scene: &mut Scene, keys: &[(Tint, String)], x: f64, right: f64, top: f64) -> Point {
    let mut at = Point::new(x, top);
    for (tint, words) in keys {
        let room = SWATCH.0 + 6.0 + width(words, SIZE) + 14.0;
        if at.x > x && at.x + room > right + 14.0 {
            at = Point::new(x, at.y + ROW);
        }
        let swatch = Rect::new(at.x, at.y + 3.0, SWATCH.0, SWATCH.1);
        scene.shape(Path::rect(swatch), Some(*tint), Pen::THIN);
        scene.words(at.moved(SWATCH.0 + 6.0, 15.0), words, Type::regular(SIZE));
        at.x += room;
    }
    at
}
