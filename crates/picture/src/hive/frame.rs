//! From metres in the hive to the units of the view.

use super::measured::Measured;
use crate::geometry::{Point, Rect};

/// Where the hive hangs in the view.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    /// Of the hive's middle.
    x_mid: f64,
    /// Of the floor's upper side.
    y_floor: f64,
    /// Units of the view a metre.
    pub(crate) scale: f64,
}

/// Room beyond the hive on both sides, for snow and arrows.
const BESIDE_M: f64 = 0.075;
/// Room below the ground.
const BELOW_M: f64 = 0.03;

/// Units of the view a metre at most: a lone floor is not drawn as large as a hive.
const LARGEST: f64 = 1_000.0;

impl Frame {
    /// The largest drawing of the hive that fits into `room`, standing in its middle and at its upper edge.
    pub(crate) fn fit(hive: &Measured, room: Rect) -> Self {
        let wide = 2.0 * (hive.half_width + BESIDE_M);
        let top = hive.roof_top + hive.snow_roof + 0.01;
        let high = top - hive.ground + BELOW_M;
        let scale = (room.width / wide).min(room.height / high).min(LARGEST);
        Self { x_mid: room.x + room.width / 2.0, y_floor: room.y + top * scale, scale }
    }

    /// The hive standing at the lower edge of `room`, no larger than `most` units a metre, so that hives beside each other
    /// are drawn alike.
    pub(crate) fn stand_in(hive: &Measured, room: Rect, most: f64) -> Self {
        let scale = Self::fit(hive, room).scale.min(most);
        let x_mid = room.x + room.width / 2.0;
        Self { x_mid, y_floor: room.y + room.height + hive.ground * scale, scale }
    }

    pub(crate) fn x(&self, right_of_middle_m: f64) -> f64 {
        self.x_mid + right_of_middle_m * self.scale
    }

    pub(crate) fn y(&self, over_floor_m: f64) -> f64 {
        self.y_floor - over_floor_m * self.scale
    }

    pub(crate) fn len(&self, length_m: f64) -> f64 {
        length_m * self.scale
    }

    pub(crate) fn at(&self, right_of_middle_m: f64, over_floor_m: f64) -> Point {
        Point::new(self.x(right_of_middle_m), self.y(over_floor_m))
    }

    /// A box by its left and right edges and its lower and upper height.
    pub(crate) fn rect(&self, left_m: f64, right_m: f64, low_m: f64, high_m: f64) -> Rect {
        Rect::between(self.x(left_m), self.x(right_m), self.y(high_m), self.y(low_m))
    }

    /// Left and right ends of the ground.
    pub(crate) fn reach(&self, hive: &Measured) -> f64 {
        hive.half_width + BESIDE_M
    }

    pub(crate) fn below(&self) -> f64 {
        BELOW_M
    }
}
