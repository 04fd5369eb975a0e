//! What a hive's picture is made of: plain data, by the keeper's words and in SI units.

use crate::tint::Tint;
use snowhum_say::Tongue;
use snowhum_units::{CubicMetrePerSecond, Fraction, Kelvin, Kilogram, KilogramPerSecond, Metre, MetrePerSecond};

/// A hive seen from the front with its near side taken off. Heights are over the upper side of the floor board.
///
/// Any number may be wrong: one that is not finite is left out or taken as nought, one too large is drawn at the largest
/// size a hive can have. At most [`crate::MOST_BOXES`] boxes are drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct HiveSection {
    /// The colony's or hive's name.
    pub name: String,
    /// Boxes from below; the first must be there for anything to be drawn in it.
    pub boxes: Vec<SectionBox>,
    /// How the combs lie to the entrance.
    pub way: CombWay,
    /// Room between the top bars and the lid, beyond the bee space: a feed rim.
    pub rim: Metre,
    /// Everything over the top bars from the bees outwards, roof left out: inner cover, quilt, foam.
    pub lid: Vec<Sheet>,
    /// The roof.
    pub roof: Option<Roof>,
    /// The floor.
    pub floor: SectionFloor,
    /// Ways in for air.
    pub openings: Vec<SectionOpening>,
    /// Round the boxes, from the wall outwards.
    pub wrap: Vec<Sheet>,
    /// Snow.
    pub snow: Snow,
    /// From the ground to the underside of the floor.
    pub stand: Metre,
    /// The bees.
    pub colony: SectionColony,
    /// Dead bees lying on the floor.
    pub dead_on_floor: u32,
    /// Food, where it lies.
    pub stores: Vec<Stores>,
    /// A board, a slab or a feeder.
    pub food_body: Option<SectionFood>,
    /// Temperatures.
    pub temperatures: Vec<Reading>,
    /// Faces that water or frost lies on.
    pub wet: Vec<WetFace>,
    /// Outdoor air.
    pub outside: Option<Kelvin>,
    /// Wind.
    pub wind: Option<MetrePerSecond>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// One box.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionBox {
    /// Across, inside.
    pub inner_width: Metre,
    /// Depth.
    pub height: Metre,
    /// Its wall.
    pub wall: Sheet,
    /// Frames in it.
    pub frames: u32,
    /// From the middle of one comb to the next.
    pub spacing: Metre,
    /// Height of the comb inside its frame.
    pub comb_height: Metre,
}

/// How the combs lie to the entrance.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CombWay {
    /// From front to back: the cut shows their edges.
    Cold,
    /// Across: the cut shows the face of one.
    Warm,
}

/// A sheet of something.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What it is, in the trade's words.
    pub name: String,
    /// How thick.
    pub thickness: Metre,
    /// How it is drawn.
    pub look: Look,
}

/// How a material is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    /// Boards and wood-based sheets.
    Wood,
    /// Foam sheets.
    Foam,
    /// Expanded polystyrene.
    Poly,
    /// Loose fill and mats of fibres.
    Straw,
    /// Felt, canvas, paper.
    Cloth,
    /// Metal and foil.
    Metal,
    /// Plastic.
    Plastic,
}

/// The roof over the lid.
#[derive(Debug, Clone, PartialEq)]
pub struct Roof {
    /// Its sheet.
    pub sheet: Sheet,
    /// How far its sides hang down.
    pub skirt: Metre,
}

/// The floor.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionFloor {
    /// What it is.
    pub kind: FloorLook,
    /// Thickness of the board or, for mesh, depth of its frame.
    pub thickness: Metre,
    /// From the floor up to the lowest box.
    pub rise: Metre,
}

/// Kinds of floor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FloorLook {
    /// Boards.
    Solid,
    /// Mesh, open below.
    Mesh,
    /// Mesh with a tray pushed in.
    TrayedMesh,
}

/// A way for air through the shell.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionOpening {
    /// What it is: entrance, upper hole, mesh, joints.
    pub name: String,
    /// The side it is on.
    pub face: Face,
    /// Height of its middle over the floor.
    pub height: Metre,
    /// Level size.
    pub width: Metre,
    /// Upright size.
    pub depth: Metre,
    /// Share of it that is open.
    pub open: Fraction,
    /// What the keeper noted that shuts it, such as "noted blocked on 3 January".
    pub shut: Option<String>,
    /// Air through it, in positive, out negative.
    pub flow: CubicMetrePerSecond,
}

/// Sides of a hive as seen from the entrance.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// The near side.
    Front,
    /// The far side.
    Back,
    /// To the left.
    Left,
    /// To the right.
    Right,
    /// Below.
    Below,
    /// All round, as joints are.
    Round,
}

/// Snow on and about the hive.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Snow {
    /// Depth on the roof.
    pub roof: Metre,
    /// Height over the ground against the walls.
    pub bank: Metre,
}

/// The bees of a hive.
#[derive(Debug, Clone, PartialEq)]
pub enum SectionColony {
    /// Nobody lives in it.
    None,
    /// A living colony.
    Alive(Cluster),
    /// A dead one.
    Dead(DeadColony),
}

/// The winter cluster.
#[derive(Debug, Clone, PartialEq)]
pub struct Cluster {
    /// Its middle, from the left inner wall at nought to the right at one.
    pub across: Fraction,
    /// Its middle over the floor.
    pub height: Metre,
    /// As a ball.
    pub radius: Metre,
    /// Of its warm core.
    pub core_radius: Metre,
    /// Of the core.
    pub core: Kelvin,
    /// Of the mantle.
    pub mantle: Kelvin,
    /// Bees.
    pub bees: u32,
}

/// A dead colony: where the cluster was.
#[derive(Debug, Clone, PartialEq)]
pub struct DeadColony {
    /// As for a living cluster.
    pub across: Fraction,
    /// Its middle over the floor.
    pub height: Metre,
    /// As a ball.
    pub radius: Metre,
    /// What was found or is likely, in a few words.
    pub words: String,
}

/// Food in a part of a box's combs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stores {
    /// Which box, from nought below.
    pub in_box: usize,
    /// How the cluster stands to it.
    pub state: StoresState,
    /// Its edges as shares of the box's inner width.
    pub left: Fraction,
    /// From the left inner wall.
    pub right: Fraction,
    /// Its edges as shares of the comb's height, from below.
    pub bottom: Fraction,
    /// From below.
    pub top: Fraction,
    /// How much.
    pub mass: Kilogram,
}

/// A body of food: a candy board, a slab, a feeder.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionFood {
    /// What it is, in the trade's words.
    pub name: String,
    /// How the cluster stands to it.
    pub state: StoresState,
    /// Where it lies.
    pub lies: FoodLies,
    /// Its edges as shares of the hive's inner width.
    pub left: Fraction,
    /// From the left inner wall.
    pub right: Fraction,
    /// How thick it was put on.
    pub thickness: Metre,
    /// A hole through its middle.
    pub hole: Option<Metre>,
    /// Share of it that is left.
    pub remaining: Fraction,
    /// What is left, in words.
    pub words: String,
}

/// Where a body of food lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FoodLies {
    /// On the top bars, in the rim.
    OnTopBars,
    /// In the place of a frame of the top box.
    AmongCombs,
}

/// How the cluster stands to food.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum StoresState {
    /// Bees sit on it.
    Touched,
    /// They can move to it.
    InReach,
    /// They cannot, while it is this cold.
    OutOfReach,
    /// Eaten out.
    Empty,
}

/// A temperature at a place of the hive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Where.
    pub spot: Spot,
    /// How warm.
    pub temperature: Kelvin,
}

/// Places temperatures are told of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Spot {
    /// Air round and over the cluster.
    WarmZone,
    /// Air below it.
    ColdZone,
    /// Underside of the lid.
    Lid,
    /// Inner side of the walls at the cluster.
    Walls,
    /// Upper side of the floor.
    Floor,
}

/// A face that catches water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WetFace {
    /// Which.
    pub face: InnerFace,
    /// As what.
    pub form: WaterForm,
    /// How much.
    pub rate: KilogramPerSecond,
}

/// Inner faces.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InnerFace {
    /// Underside of the lid.
    Lid,
    /// The walls.
    Walls,
    /// The floor.
    Floor,
}

/// What vapour becomes on a face.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WaterForm {
    /// Drops.
    Water,
    /// Rime.
    Frost,
}

impl Look {
    /// The look of a material by its name in the trade; wood if the name is strange.
    ///
    /// ```
    /// use snowhum_picture::Look;
    /// assert_eq!(Look::of("xps foam"), Look::Foam);
    /// assert_eq!(Look::of("wood shavings"), Look::Straw);
    /// assert_eq!(Look::of("pine"), Look::Wood);
    /// ```
    #[must_use]
    pub fn of(material: &str) -> Self {
        let name = material.to_lowercase();
        let any = |words: &[&str]| words.iter().any(|word| name.contains(word));
        if any(&["foil", "steel", "alumin", "metal", "tin", "zinc"]) {
            Self::Metal
        } else if any(&["polystyrene"]) {
            Self::Poly
        } else if any(&["foam", "xps", "eps", "polyiso"]) {
            Self::Foam
        } else if any(&["straw", "hay", "shaving", "wool", "chaff", "leaves", "moss"]) {
            Self::Straw
        } else if any(&["felt", "canvas", "paper", "cloth", "sacking", "burlap"]) {
            Self::Cloth
        } else if any(&["plastic", "film", "perspex", "polycarbonate"]) {
            Self::Plastic
        } else {
            Self::Wood
        }
    }

    pub(crate) const fn tint(self) -> Tint {
        match self {
            Self::Wood => Tint::Wood,
            Self::Foam => Tint::Foam,
            Self::Poly => Tint::Poly,
            Self::Straw => Tint::Straw,
            Self::Cloth => Tint::Cloth,
            Self::Metal => Tint::Metal,
            Self::Plastic => Tint::Plastic,
        }
    }
}

impl StoresState {
    /// Every state, nearest to the bees first.
    pub const ALL: [Self; 4] = [Self::Touched, Self::InReach, Self::OutOfReach, Self::Empty];

    pub(crate) const fn tint(self) -> Tint {
        match self {
            Self::Touched => Tint::Touched,
            Self::InReach => Tint::InReach,
            Self::OutOfReach => Tint::OutOfReach,
            Self::Empty => Tint::EmptyComb,
        }
    }
}

impl InnerFace {
    pub(crate) const fn spot(self) -> Spot {
        match self {
            Self::Lid => Spot::Lid,
            Self::Walls => Spot::Walls,
            Self::Floor => Spot::Floor,
        }
    }
}
