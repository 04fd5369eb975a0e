//! What the empty hive weighs, from its parts.

use snowhum_apiary::{HiveBox, Layer};
use snowhum_units::{Kilogram, Metre, SquareMetre};

use super::{Figures, Part};
use crate::statistics::rounded;

/// Parts of a hive: boxes, what lies over them, floor, roof, frames of drawn comb.
pub(super) fn parts(boxes: &[HiveBox], lid: &[Layer], figures: &Figures) -> Vec<Part> {
    let Some(lowest) = boxes.first() else { return Vec::new() };
    let walls = boxes.iter().map(walls).sum::<Kilogram>();
    let plan = outside(lowest);
    let floor = Layer { thickness: Metre::new(figures.floor_thickness.value), ..lowest.wall.clone() };
    let frames = boxes.iter().map(|one| frames(one, figures)).sum::<Kilogram>();
    let sheets = lid.iter().map(|layer| sheet(layer, plan)).sum::<Kilogram>();
    let count: u32 = boxes.iter().map(|one| one.frames).sum();
    [
        (format!("{} boxes, empty", boxes.len()), walls),
        (format!("{count} frames of drawn comb"), frames),
        ("floor".to_owned(), sheet(&floor, plan)),
        ("what lies over the frames".to_owned(), sheets),
        ("roof".to_owned(), Kilogram::new(figures.roof.value)),
    ]
    .map(|(what, kg)| Part { what, kg: rounded(kg.get(), 1) })
    .to_vec()
}

/// A box with frames of drawn comb and nothing in them.
pub(super) fn empty_box(one: &HiveBox, figures: &Figures) -> Kilogram {
    walls(one) + frames(one, figures)
}

fn walls(one: &HiveBox) -> Kilogram {
    let ring = outside(one) - one.length * one.width;
    one.wall.material.density * (ring * one.depth)
}

fn outside(one: &HiveBox) -> SquareMetre {
    let walls = 2.0 * one.wall.thickness;
    (one.length + walls) * (one.width + walls)
}

fn sheet(layer: &Layer, plan: SquareMetre) -> Kilogram {
    layer.material.density * (plan * layer.thickness)
}

fn frames(one: &HiveBox, figures: &Figures) -> Kilogram {
    let comb_dm2 = one.comb_side.get() * 100.0;
    Kilogram::new(f64::from(one.frames) * (figures.frame_wood.value + figures.comb.value * comb_dm2))
}
