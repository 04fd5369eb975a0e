//! The empty hive in the keeper's words, part by part.

use snowhum_apiary::{EmptyHive, HiveBox, Layer};
use snowhum_say::weigh as say;

use super::answer::Part;
use crate::statistics::rounded;

/// Parts of a hive: boxes, what lies over them, floor, roof, frames of drawn comb.
pub(super) fn parts(boxes: &[HiveBox], lid: &[Layer]) -> Vec<Part> {
    if boxes.is_empty() {
        return Vec::new();
    }
    let empty = EmptyHive::of(boxes, lid, &[]);
    let count: u32 = boxes.iter().map(|one| one.frames).sum();
    [
        (say::part_boxes(boxes.len()), empty.boxes),
        (say::part_frames(count), empty.frames),
        (say::part_floor(), empty.floor),
        (say::part_over(), empty.over),
        (say::part_roof(), empty.roof),
    ]
    .map(|(what, kg)| Part { what, kg: rounded(kg.get(), 1) })
    .to_vec()
}
