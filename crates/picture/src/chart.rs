//! Charts of a winter, 360 units wide so that a phone shows their words at full size.

mod axis;
mod days;
mod dead_bees;
mod fan;
mod hundred;
mod scales;
mod windows;

pub use axis::Tick;
pub use days::{Cold, DayOutlook, DayStrip, Flying, Windy};
pub use dead_bees::{DeadBeesCount, DeadBeesFound};
pub use fan::{FoodDay, FoodFan, Weighing};
pub use hundred::{Fate, Hundred, HundredPart};
pub use scales::{FigureScale, FigureScales};
pub use windows::{JobWindows, Window};

use crate::geometry::Point;
use crate::scene::{Scene, Type};
use crate::words::lines;

/// Width of every chart.
pub(crate) const WIDTH: f64 = 360.0;
/// Room left free at both sides.
pub(crate) const MARGIN: f64 = 12.0;
/// Size of a chart's words and height of its lines.
pub(crate) const SIZE: f64 = 14.0;
pub(crate) const LINE: f64 = 18.0;
/// Most rows, days or points a chart draws.
pub(crate) const MOST: usize = 400;

/// The title over a chart; says where it ends.
pub(crate) fn headline(scene: &mut Scene, title: &str) -> f64 {
    const HEADLINE: f64 = 17.0;
    let mut y = 8.0;
    for line in lines(title, HEADLINE, WIDTH - 2.0 * MARGIN).into_iter().take(3) {
        y += 20.0;
        scene.words(Point::new(MARGIN, y - 2.0), line, Type::heavy(HEADLINE));
    }
    y
}
