//! What the empty hive weighs, from its parts and `data/empty_hive.toml`.

use crate::{HiveBox, Layer};
use snowhum_figures::empty_hive as figures;
use snowhum_units::{Kilogram, Metre, SquareMetre};

/// An empty hive by its parts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EmptyHive {
    /// Walls of all boxes.
    pub boxes: Kilogram,
    /// Frames with drawn comb and nothing in it.
    pub frames: Kilogram,
    /// Floor: a board, or a mesh in a frame, which is taken to weigh as much.
    pub floor: Kilogram,
    /// What lies over the frames.
    pub over: Kilogram,
    /// Roof.
    pub roof: Kilogram,
    /// Wrap round the walls.
    pub wrap: Kilogram,
}

impl EmptyHive {
    /// Boxes from the lowest up, what lies over them and round them; nothing of no boxes.
    #[must_use]
    pub fn of(boxes: &[HiveBox], lid: &[Layer], wrap: &[Layer]) -> Self {
        let nothing = Kilogram::new(0.0);
        let Some(lowest) = boxes.first() else {
            return Self {
                boxes: nothing,
                frames: nothing,
                floor: nothing,
                over: nothing,
                roof: nothing,
                wrap: nothing,
            };
        };
        let plan = outside(lowest);
        let floor = Layer { thickness: floor_thickness(), ..lowest.wall.clone() };
        let round: SquareMetre = boxes.iter().map(|one| 2.0 * (one.length + one.width) * one.depth).sum();
        Self {
            boxes: boxes.iter().map(walls).sum(),
            frames: boxes.iter().map(frames).sum(),
            floor: sheet(&floor, plan),
            over: lid.iter().map(|layer| sheet(layer, plan)).sum(),
            roof: Kilogram::new(figures::ROOF),
            wrap: wrap.iter().map(|layer| sheet(layer, round)).sum(),
        }
    }

    /// All of it.
    #[must_use]
    pub fn total(&self) -> Kilogram {
        self.boxes + self.frames + self.floor + self.over + self.roof + self.wrap
    }
}

/// A box with frames of drawn comb and nothing in them.
#[must_use]
pub fn empty_box(one: &HiveBox) -> Kilogram {
    walls(one) + frames(one)
}

/// Thickness of a floor's board.
#[must_use]
pub fn floor_thickness() -> Metre {
    Metre::new(figures::FLOOR_THICKNESS)
}

fn walls(one: &HiveBox) -> Kilogram {
    let ring = outside(one) - one.length * one.width;
    one.wall.material.density * (ring * one.depth)
}

fn outside(one: &HiveBox) -> SquareMetre {
    let walls = 2.0 * one.wall.thickness;
    (one.length + walls) * (one.width + walls)
}

fn sheet(layer: &Layer, area: SquareMetre) -> Kilogram {
    layer.material.density * (area * layer.thickness)
}

fn frames(one: &HiveBox) -> Kilogram {
    let comb_dm2 = one.comb_side.get() * 100.0;
    Kilogram::new(f64::from(one.frames) * (figures::FRAME_WOOD + figures::COMB * comb_dm2))
}
