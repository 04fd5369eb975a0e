//! Signs of life, hunger and trouble that can be had without opening a hive.

use super::Weighing;
use super::grammar::{bees_seen, dead_bees, hum, inside, seams, snow_at_box, upper_hole};
use super::vocabulary::{name_of, percent, short, word};
use super::weighed::{weighing, written_weighing};
use crate::OpeningState;
use crate::kinds::{Told, kinds};
use crate::wrong::Wrong;
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

kinds! {
    /// What is looked for, whatever is found.
    SignKind of Sign:
    DeadBees: "dead=22 on snow", "hook=12" => |told| dead_bees(told.what, told.how);
    Entrance: "entrance=clear", "entrance=drifted over" => |told| told.one_of(&OpeningState::WORDS, Sign::Entrance);
    UpperEntrance: "upper=blocked" => |told| told.one_of(&OpeningState::WORDS, Sign::UpperEntrance);
    UpperHole: "hole=new rime" => |told| upper_hole(told.how);
    Hum: "hum=heard by ear" => |told| hum(told.how);
    Poke: "poke=answered" => |told| told.one_of(&POKED, Sign::Poke);
    Flight: "flight=well" => |told| told.one_of(&FLIGHTS, Sign::Flight);
    Pollen: "pollen=yes" => |told| told.one_of(&SEEN, Sign::Pollen);
    Droppings: "droppings=on snow" => |told| told.one_of(&DROPPINGS, Sign::Droppings);
    MeltedSnow: "melt=yes" => |told| told.one_of(&SEEN, Sign::MeltedSnow);
    Stripes: "stripes=5" => |told| seams(told.how).map(|seams| Sign::Stripes { seams });
    Weight: "stores=8 kg ± 2 kg", "scale=46 kg", "lift=21 kg, 19 kg", "side=17 kg", "heft=light"
        => |told| weighing(told.what, told.how, told.bare).map(Sign::Weight);
    InsideTemperature: "inside=12 C under lid" => |told| inside(told.how, told.bare);
    InsideHumidity: "humidity=75 %" => |told| percent(told.how).map(|read| Sign::InsideHumidity { read });
    ThermalSpot: "warm spot=yes" => |told| told.one_of(&SEEN, Sign::ThermalSpot);
    WarmUnderLid: "lid=warm" => |told| told.one_of(&FELT, Sign::WarmUnderLid);
    SnowAtBox: "snow=45 cm" => |told| snow_at_box(told.how, told.bare);
    ClusterSeen: "bees=seen, 5 seams" => |told| bees_seen(told.how);
    Drones: "drones=yes" => |told| told.one_of(&SEEN, Sign::Drones);
    LarvaeThrownOut: "larvae=yes" => |told| told.one_of(&SEEN, Sign::LarvaeThrownOut);
    CrumpledWings: "wings=yes" => |told| told.one_of(&SEEN, Sign::CrumpledWings);
    Robbers: "robbers=yes" => |told| told.one_of(&SEEN, Sign::Robbers);
    Wasps: "wasps=yes" => |told| told.one_of(&SEEN, Sign::Wasps);
    Bird: "bird=yes" => |told| told.one_of(&SEEN, Sign::Bird);
    Mouse: "mouse=yes" => |told| told.one_of(&SEEN, Sign::Mouse);
    Damage: "damage=yes" => |told| told.one_of(&SEEN, Sign::Damage);
    Smell: "smell=yes" => |told| told.one_of(&SEEN, Sign::Smell);
    SeenDead: "colony=dead" => |told| told.one_of(&[("dead", ())], |()| Sign::SeenDead);
    DeadQueen: "queen=dead" => |told| told.one_of(&[("dead", ())], |()| Sign::DeadQueen);
}

impl Told<'_> {
    fn one_of<T: Clone>(&self, words: &[(&str, T)], sign: impl FnOnce(T) -> Sign) -> Result<Sign, Wrong> {
        word(self.how, words).map(sign)
    }
}

impl Sign {
    /// As a keeper writes it.
    pub(super) fn written(&self) -> String {
        let how = match self {
            Self::DeadBees { count, place: DeadPlace::Hook } => return format!("hook={}", count.written()),
            Self::DeadBees { count, place: DeadPlace::Guard } => format!("{} behind guard", count.written()),
            Self::DeadBees { count, place } => format!("{} on {}", count.written(), name_of(place, &PLACES)),
            Self::Entrance(state) | Self::UpperEntrance(state) => state.written().to_owned(),
            Self::UpperHole(state) => name_of(state, &HOLES).to_owned(),
            Self::Hum { heard, how } => format!("{} by {}", name_of(heard, &HEARD), name_of(how, &LISTENING)),
            Self::Poke(poked) => name_of(poked, &POKED).to_owned(),
            Self::Flight(flight) => name_of(flight, &FLIGHTS).to_owned(),
            Self::Droppings(place) => name_of(place, &DROPPINGS).to_owned(),
            Self::Stripes { seams } => short(*seams),
            Self::Weight(weighing) => return written_weighing(weighing),
            Self::InsideTemperature { read_k, place } => {
                format!("{} C {}", short(read_k.celsius()), name_of(place, &PROBES))
            }
            Self::InsideHumidity { read } => format!("{} %", short(100.0 * read.get())),
            Self::WarmUnderLid(warm) => name_of(warm, &FELT).to_owned(),
            Self::SnowAtBox { depth_m } => format!("{} cm", short(100.0 * depth_m.get())),
            Self::ClusterSeen { seams: Some(seams) } => format!("seen, {} seams", short(*seams)),
            Self::ClusterSeen { seams: None } => "seen".to_owned(),
            Self::DeadQueen | Self::SeenDead => "dead".to_owned(),
            Self::Pollen(seen)
            | Self::MeltedSnow(seen)
            | Self::ThermalSpot(seen)
            | Self::Drones(seen)
            | Self::LarvaeThrownOut(seen)
            | Self::CrumpledWings(seen)
            | Self::Robbers(seen)
            | Self::Wasps(seen)
            | Self::Bird(seen)
            | Self::Mouse(seen)
            | Self::Damage(seen)
            | Self::Smell(seen) => name_of(seen, &SEEN).to_owned(),
        };
        format!("{}={how}", self.kind().word())
    }

    /// Whether it can be seen of a hive that stands in a dark room: there nobody flies, no snow lies and nothing freezes, and
    /// whose the dead on the room's floor are nobody knows.
    #[must_use]
    pub fn is_seen_indoors(&self) -> bool {
        match self {
            Self::DeadBees { place, .. } => !matches!(place, DeadPlace::Snow | DeadPlace::Ground),
            Self::Droppings(place) => *place != DroppingsPlace::Snow,
            Self::Entrance(state) | Self::UpperEntrance(state) => {
                !matches!(state, OpeningState::DriftedOver | OpeningState::Iced)
            }
            Self::UpperHole(_) | Self::Flight(_) | Self::Pollen(_) | Self::MeltedSnow(_) | Self::SnowAtBox { .. } => {
                false
            }
            Self::Robbers(_) | Self::Wasps(_) | Self::Bird(_) => false,
            Self::Hum { .. } | Self::Poke(_) | Self::Stripes { .. } | Self::Weight(_) => true,
            Self::InsideTemperature { .. } | Self::InsideHumidity { .. } | Self::ThermalSpot(_) => true,
            Self::WarmUnderLid(_) | Self::ClusterSeen { .. } | Self::Drones(_) | Self::DeadQueen => true,
            Self::LarvaeThrownOut(_) | Self::CrumpledWings(_) | Self::Mouse(_) | Self::Damage(_) => true,
            Self::Smell(_) | Self::SeenDead => true,
        }
    }
}

pub(super) const SEEN: [(&str, Seen); 4] =
    [("yes", Seen::Yes), ("no", Seen::No), ("seen", Seen::Yes), ("none", Seen::No)];
pub(super) const PLACES: [(&str, DeadPlace); 5] = [
    ("snow", DeadPlace::Snow),
    ("ground", DeadPlace::Ground),
    ("board", DeadPlace::Board),
    ("tray", DeadPlace::Tray),
    ("guard", DeadPlace::Guard),
];
pub(super) const HOLES: [(&str, UpperHoleSign); 5] = [
    ("new rime", UpperHoleSign::NewRime),
    ("rime", UpperHoleSign::Rime),
    ("damp", UpperHoleSign::Damp),
    ("dry", UpperHoleSign::Dry),
    ("no rime", UpperHoleSign::Dry),
];
pub(super) const HEARD: [(&str, Seen); 2] = [("heard", Seen::Yes), ("silent", Seen::No)];
const FELT: [(&str, Seen); 2] = [("warm", Seen::Yes), ("cold", Seen::No)];
pub(super) const LISTENING: [(&str, Listening); 3] =
    [("ear", Listening::Ear), ("tube", Listening::Tube), ("knock", Listening::Knock)];
const POKED: [(&str, Poked); 5] = [
    ("answered", Poked::Answered),
    ("silent", Poked::Silent),
    ("not tried", Poked::NotTried),
    ("a bee answered", Poked::Answered),
    ("no answer", Poked::Silent),
];
const FLIGHTS: [(&str, Flight); 4] =
    [("well", Flight::Well), ("thin", Flight::Thin), ("traffic", Flight::Traffic), ("none", Flight::None)];
const DROPPINGS: [(&str, DroppingsPlace); 3] =
    [("on snow", DroppingsPlace::Snow), ("on hive", DroppingsPlace::Hive), ("none", DroppingsPlace::None)];
pub(super) const PROBES: [(&str, ProbePlace); 3] =
    [("under lid", ProbePlace::UnderLid), ("combs", ProbePlace::Combs), ("floor", ProbePlace::Floor)];

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

    fn written(self) -> String {
        match self.bounds() {
            (least, Some(most)) if least == most => least.to_string(),
            (least, Some(most)) => format!("{least}-{most}"),
            (least, None) => format!("over {}", least.saturating_sub(1)),
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
