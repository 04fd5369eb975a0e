//! A hive as it is built for this winter, from the floor up.

use crate::{FoodBody, HiveId, IndoorPlan};
use serde::{Deserialize, Serialize};
use snowhum_units::{
    Degree, Fraction, JoulePerKilogramKelvin, KilogramPerCubicMetre, Metre, SquareMetre, WattPerMetreKelvin,
};

/// One hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Hive {
    /// Stable id.
    pub id: HiveId,
    /// The keeper's name or number for the box.
    pub name: String,
    /// The standard it is built to, in the trade's words, such as `Langstroth, 10 frames`.
    pub standard: String,
    /// What it stands on.
    pub floor: Floor,
    /// Boxes from below.
    pub boxes: Vec<HiveBox>,
    /// How the combs lie to the entrance.
    pub frames: FrameWay,
    /// Everything over the top box, from the bees outwards: inner cover, quilt, foam, roof.
    pub lid: Vec<Layer>,
    /// Whether the lid takes up water and lets it pass (quilt, moisture board, straw).
    pub lid_breathes: bool,
    /// Layers round the walls, from the wood outwards: wrap, foam sheets.
    pub wrap: Vec<Layer>,
    /// Absorptance of the outermost wall surface for sun (felt paper near 0.9, white paint near 0.3).
    pub wall_absorptance: Fraction,
    /// Absorptance of the roof for sun.
    pub roof_absorptance: Fraction,
    /// Height of empty space between top bars and lid (bee space, feed rim).
    pub rim: Metre,
    /// Every way in for air.
    pub openings: Vec<Opening>,
    /// Where the entrance faces, clockwise from north.
    pub facing: Degree,
    /// Height of the floor over the ground.
    pub stand: Metre,
    /// A hive that touches this one.
    pub neighbour: Option<Neighbour>,
    /// Where it is to winter, if indoors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub indoors: Option<IndoorPlan>,
    /// Food on it as a body when its colony was counted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub food_body: Option<FoodBody>,
}

/// A hive touching another, which then loses no heat on that side to the open air.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Neighbour {
    /// The other hive.
    pub hive: HiveId,
    /// Share of this hive's wall area against it.
    pub share: Fraction,
}

/// The bottom of the hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Floor {
    /// Boards.
    Solid(Layer),
    /// Mesh, open below.
    OpenMesh,
    /// Mesh with a tray pushed in.
    TrayedMesh(Layer),
}

/// Combs to entrance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum FrameWay {
    /// Combs run from front to back.
    Cold,
    /// Combs run across, parallel to the entrance.
    Warm,
}

/// One box with its combs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveBox {
    /// The trade's name of the size, such as `deep`.
    pub size: String,
    /// Inside, along the top bars.
    pub length: Metre,
    /// Inside, across the top bars.
    pub width: Metre,
    /// Depth of the box.
    pub depth: Metre,
    /// The wall.
    pub wall: Layer,
    /// Combs in it.
    pub frames: u32,
    /// Comb area of one side of one frame.
    pub comb_side: SquareMetre,
}

/// A sheet of something.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Layer {
    /// What it is made of.
    pub material: Material,
    /// How thick.
    pub thickness: Metre,
}

/// A building material, from `data/materials.toml` or the keeper's own.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Material {
    /// Its name in the trade.
    pub name: String,
    /// Thermal conductivity.
    pub conductivity: WattPerMetreKelvin,
    /// Density.
    pub density: KilogramPerCubicMetre,
    /// Specific heat capacity.
    pub specific_heat: JoulePerKilogramKelvin,
    /// Vapour resistance factor: how many times slower vapour passes than through still air.
    pub vapour_resistance: f64,
}

/// A way for air through the shell.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Opening {
    /// What it is.
    pub kind: OpeningKind,
    /// Free area.
    pub area: SquareMetre,
    /// Height of its middle over the hive's floor.
    pub height: Metre,
    /// Discharge coefficient.
    pub discharge: Fraction,
    /// The side of the hive it is on.
    pub side: Side,
}

/// Kinds of openings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum OpeningKind {
    /// The flight entrance at the floor, with its reducer and guard taken off the area.
    Entrance,
    /// A hole or slot near the top.
    UpperHole,
    /// An open mesh floor.
    Mesh,
    /// Joints between boxes, lid and floor.
    Crack,
}

/// Sides of a hive, seen from the entrance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Side {
    /// The entrance side.
    Front,
    /// Opposite the entrance.
    Back,
    /// Left hand.
    Left,
    /// Right hand.
    Right,
    /// Below.
    Below,
    /// All round.
    Round,
}
