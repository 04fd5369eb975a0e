//! The empty hive in the keeper's words, part by part.

use snowhum_apiary::{EmptyHive, HiveBox, Layer};

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
        (format!("{} boxes, empty", boxes.len()), empty.boxes),
        (format!("{count} frames of drawn comb"), empty.frames),
        ("floor".to_owned(), empty.floor),
        ("what lies over the frames".to_owned(), empty.over),
        ("roof".to_owned(), empty.roof),
    ]
    .map(|(what, kg)| Part { what, kg: rounded(kg.get(), 1) })
    .to_vec()
}
