//! What a run does to a figure that it may vary.

use crate::Figure;

impl Figure {
    /// Holds it at `value` in every member.
    pub fn fix(&mut self, value: f64) {
        self.value = value;
        self.varies = false;
    }

    /// The value at `z` standard deviates of its range; the value itself if it does not vary.
    #[must_use]
    pub fn at(&self, z: f64) -> f64 {
        match (self.varies, self.low, self.high) {
            (true, Some(p10), Some(p90)) => snowhum_units::Range { p10, p50: self.value, p90 }.at(z),
            _ => self.value,
        }
    }
}
