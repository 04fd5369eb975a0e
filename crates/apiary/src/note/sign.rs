//! Signs of life, hunger and trouble that can be had without opening a hive.

use super::Weighing;
use crate::OpeningState;
use serde::{Deserialize, Serialize};
use snowhum_units::{Fraction, Kelvin, Metre};

/// A sign, looked for and found or not found.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sign {
    /// Dead bees that were not there at the last look.
    DeadBees {
        /// How many.
        count: DeadCount,
        /// Where.
        place: DeadPlace,
    },
    /// The flight entrance as found.
    Entrance(OpeningState),
    /// The upper hole's way out and for air, as found.
    UpperEntrance(OpeningState),
    /// Rime or damp at the upper hole.
    UpperHole(UpperHoleSign),
    /// Listened at the hive.
    Hum {
        /// Whether it hummed.
        heard: Seen,
        /// How it was listened to.
        how: Listening,
    },
    /// A straw or a grass stalk put in at the hole or the entrance, for a live bee to answer.
    Poke(Poked),
    /// Bees in the air before this hive.
    Flight(Flight),
    /// Pollen carried in.
    Pollen(Seen),
    /// Droppings since the last look.
    Droppings(DroppingsPlace),
    /// A hole melted in the snow on the roof.
    MeltedSnow(Seen),
    /// Fresh stripes of wax crumbs on the tray.
    Stripes {
        /// Seams they stand for.
        seams: f64,
    },
    /// A weighing.
    Weight(Weighing),
    /// A probe inside.
    InsideTemperature {
        /// What it read.
        read_k: Kelvin,
        /// Where it sits.
        place: ProbePlace,
    },
    /// Relative humidity inside, under the lid.
    InsideHumidity {
        /// What it read.
        read: Fraction,
    },
    /// A warm spot in a thermal picture.
    ThermalSpot(Seen),
    /// Warmth to a bare hand laid under the lid, on the inner cover.
    WarmUnderLid(Seen),
    /// Snow against the box: it buries the openings that it reaches.
    SnowAtBox {
        /// Its depth over the ground.
        depth_m: Metre,
    },
    /// Living bees seen under the lid.
    ClusterSeen {
        /// Seams they fill, if counted.
        seams: Option<f64>,
    },
    /// Drones flying or thrown out at an odd season.
    Drones(Seen),
    /// A dead queen on the board.
    DeadQueen,
    /// Larvae or pupae thrown out.
    LarvaeThrownOut(Seen),
    /// Crawlers with crumpled wings.
    CrumpledWings(Seen),
    /// Robbers fighting or carrying.
    Robbers(Seen),
    /// Wasps going in and out.
    Wasps(Seen),
    /// A bird picking at the entrance.
    Bird(Seen),
    /// A mouse, or its leavings.
    Mouse(Seen),
    /// Storm, beast or vandal.
    Damage(Seen),
    /// A smell of decay.
    Smell(Seen),
    /// The colony was seen dead.
    SeenDead,
}

impl Sign {
    /// Whether it can be seen of a hive that stands in a dark room: there nobody flies, no snow lies and nothing freezes, and
    /// whose the dead on the room's floor are nobody knows.
    #[must_use]
    pub fn is_seen_indoors(&self) -> bool {
        match self {
            Self::DeadBees { place: DeadPlace::Snow | DeadPlace::Ground, .. }
            | Self::Droppings(DroppingsPlace::Snow) => false,
            Self::Entrance(state) | Self::UpperEntrance(state) => {
                !matches!(state, OpeningState::DriftedOver | OpeningState::Iced)
            }
            Self::UpperHole(_) | Self::Flight(_) | Self::Pollen(_) | Self::MeltedSnow(_) => false,
            Self::SnowAtBox { .. } => false,
            Self::Robbers(_) | Self::Wasps(_) | Self::Bird(_) => false,
            _ => true,
        }
    }
}

/// Whether a thing looked for was there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Seen {
    /// It was.
    Yes,
    /// It was not.
    No,
}

/// Dead bees, counted or called by a band.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DeadCount {
    /// Counted.
    Counted(u32),
    /// At least the first and at most the second; no upper end for "over 100".
    Band(u32, Option<u32>),
}

impl DeadCount {
    /// The bands a round offers.
    pub const BANDS: [Self; 5] = [
        Self::Counted(0),
        Self::Band(1, Some(5)),
        Self::Band(6, Some(20)),
        Self::Band(21, Some(100)),
        Self::Band(101, None),
    ];

    /// Least and greatest number it may mean.
    #[must_use]
    pub fn bounds(self) -> (u32, Option<u32>) {
        match self {
            Self::Counted(n) => (n, Some(n)),
            Self::Band(least, most) => (least, most),
        }
    }
}

/// Where dead bees lay.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DeadPlace {
    /// On snow before the hive.
    Snow,
    /// On bare ground before the hive.
    Ground,
    /// On the landing board.
    Board,
    /// On the tray under the mesh.
    Tray,
    /// Behind the guard, raked out of the entrance.
    Guard,
    /// On the floor, pulled out of the entrance with a hook.
    Hook,
}

/// The upper hole.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum UpperHoleSign {
    /// Rime that has formed since the hole was last brushed.
    NewRime,
    /// Rime of unknown age: it outlives the bees.
    Rime,
    /// A wet rim.
    Damp,
    /// Neither.
    Dry,
}

/// How a hive was listened to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Listening {
    /// An ear at the wall.
    Ear,
    /// A tube or stethoscope.
    Tube,
    /// A knock, and the answer.
    Knock,
}

/// What came of a poke.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Poked {
    /// A live bee showed itself.
    Answered,
    /// None did.
    Silent,
    /// Nobody poked: this says nothing.
    NotTried,
}

/// Bees in the air.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Flight {
    /// A cleansing flight, many bees.
    Well,
    /// A cleansing flight, few bees.
    Thin,
    /// Bees coming and going without a cleansing flight: robbers do that too.
    Traffic,
    /// No bee.
    None,
}

/// Droppings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DroppingsPlace {
    /// Yellow dots on the snow.
    Snow,
    /// Streaks on the hive itself.
    Hive,
    /// None.
    None,
}

/// Where a probe sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ProbePlace {
    /// Under the lid.
    UnderLid,
    /// Among the combs of the cluster's box.
    Combs,
    /// On the floor.
    Floor,
}
