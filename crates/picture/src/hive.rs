//! The hive, cut open and small.

mod air;
mod cutaway;
mod faces;
mod food_body;
mod frame;
mod inside;
mod labels;
mod measured;
mod said;
mod section;
mod shell;
mod snow;
mod thumbnail;

pub use cutaway::PlateWidth;
use cutaway::Pointed;
pub use measured::MOST_BOXES;
pub use section::*;

use crate::plate::Plate;
use snowhum_say::Tongue;
use snowhum_units::Metre;

impl HiveSection {
    /// A hive of these boxes and nothing else known: a solid floor 20 mm thick, no bees, no weather.
    #[must_use]
    pub fn new(name: impl Into<String>, boxes: Vec<SectionBox>) -> Self {
        let floor = SectionFloor { kind: FloorLook::Solid, thickness: Metre::new(0.02), rise: Metre::new(0.022) };
        Self {
            name: name.into(),
            boxes,
            way: CombWay::Cold,
            rim: Metre::ZERO,
            lid: Vec::new(),
            roof: None,
            floor,
            openings: Vec::new(),
            wrap: Vec::new(),
            snow: Snow::default(),
            stand: Metre::ZERO,
            colony: SectionColony::None,
            dead_on_floor: 0,
            stores: Vec::new(),
            food_body: None,
            temperatures: Vec::new(),
            wet: Vec::new(),
            outside: None,
            wind: None,
            tongue: Tongue::BRITISH,
        }
    }

    /// The hive as a plate of this width.
    ///
    /// ```
    /// # use snowhum_units::*;
    /// use snowhum_picture::*;
    /// let pine = Sheet { name: "pine".into(), thickness: Metre::new(0.019), look: Look::of("pine") };
    /// let deep = SectionBox {
    ///     inner_width: Metre::new(0.375),
    ///     height: Metre::new(0.244),
    ///     wall: pine,
    ///     frames: 10,
    ///     spacing: Metre::new(0.035),
    ///     comb_height: Metre::new(0.203),
    /// };
    /// let hive = HiveSection::new("Juniper", vec![deep.clone(), deep]);
    /// let plate = hive.cutaway(PlateWidth::Phone);
    /// assert!(plate.standalone(&IdPrefix::new("juniper")).starts_with("<svg"));
    /// assert_eq!(plate.table.rows[0][0], "Walls");
    /// ```
    #[must_use]
    pub fn cutaway(&self, width: PlateWidth) -> Plate {
        cutaway::cutaway(self, width, Pointed::All)
    }

    /// The hive as a plate of this width, at which the five parts alone are pointed that tell most.
    #[must_use]
    pub fn cutaway_at_first(&self, width: PlateWidth) -> Plate {
        cutaway::cutaway(self, width, Pointed::First)
    }

    /// The hive as a plate of this width, at which what it is dressed with is pointed at.
    #[must_use]
    pub fn cutaway_of_dress(&self, width: PlateWidth) -> Plate {
        cutaway::cutaway(self, width, Pointed::Dress)
    }

    /// The hive as it stands, small: under two thousand bytes. Hives up to about 0.9 m tall share one scale, so that
    /// they can be compared side by side.
    ///
    /// ```
    /// use snowhum_picture::{HiveSection, IdPrefix};
    /// let plate = HiveSection::new("Larch", Vec::new()).thumbnail();
    /// assert!(plate.inline(&IdPrefix::new("larch")).len() < 2_000);
    /// ```
    #[must_use]
    pub fn thumbnail(&self) -> Plate {
        thumbnail::thumbnail(self)
    }
}
