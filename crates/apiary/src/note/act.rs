//! Things a keeper does, as far as they change the winter.

use super::TreatmentNote;
use super::acts::act;
use super::examined::{Examined, SpringCount};
use crate::kinds::kinds;
use crate::{ColonyId, FoodBody, QueenState, SetupChange};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use snowhum_units::{Bare, CubicMetre, Kilogram, Measured, ParseError, System, number};
use std::fmt;
use std::str::FromStr;

/// One thing done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Act {
    /// Food given.
    Fed {
        /// What.
        feed: Feed,
        /// How much of it, as weighed out.
        mass_kg: Kilogram,
    },
    /// A body of food put on, in place of one that may still be on.
    FoodPutOn(FoodBody),
    /// The body of food taken off, with what is left of it.
    FoodTakenOff,
    /// The body of food found eaten up.
    FoodEatenUp,
    /// Frames of sealed stores hung in from another colony.
    FramesFrom {
        /// The giver.
        giver: ColonyId,
        /// What they hold.
        stores_kg: Kilogram,
    },
    /// Stores at the far side hung against the cluster.
    BroughtNear,
    /// The set-up was changed.
    Changed(#[serde(serialize_with = "as_text", deserialize_with = "from_text")] SetupChange),
    /// Treated against mites.
    Treated(TreatmentNote),
    /// Put to another colony; this hive is empty now.
    UnitedInto(ColonyId),
    /// A new queen was given and taken.
    Requeened,
    /// How the queen was found to stand.
    QueenFound(QueenState),
    /// Snow was swept off the roof.
    Swept,
    /// Moved to another stand.
    Moved,
    /// Carried into a room to winter there.
    CarriedIn(String),
    /// Carried out of it again.
    CarriedOut,
    /// The upper hole was brushed free of rime, so that only new rime counts from now on.
    Brushed,
    /// The dead hive was examined.
    Examined(#[serde(serialize_with = "as_text", deserialize_with = "from_text")] Examined),
    /// Counted in spring.
    Counted(SpringCount),
    /// Mites counted on a sample of washed bees.
    MitesCounted {
        /// Mites found.
        found: u32,
        /// Bees in the sample.
        bees: u32,
    },
}

kinds! {
    /// What is done, whatever it is done with.
    ActKind of Act:
    QueenFound: "queen=laying workers" => act;
    Fed: "fed=5 kg fondant" => act;
    FoodPutOn: "board=3 kg candy with pollen, rim 50 mm, hole 40 mm" => act;
    FoodTakenOff: "board=off" => act;
    FoodEatenUp: "board=eaten up" => act;
    FramesFrom: "frames=3.6 kg from Alder" => act;
    Changed: "changed=lid=50 mm foam" => act;
    Treated: "treated=oxalic | product: as on its label | withdrawal: nil" => act;
    UnitedInto: "united=Birch" => act;
    Brushed: "did=brushed" => act;
    Swept: "did=swept" => act;
    BroughtNear: "did=brought near" => act;
    Requeened: "did=requeened" => act;
    Moved: "did=moved" => act;
    CarriedIn: "carried=into Cellar" => act;
    CarriedOut: "carried=out" => act;
    Examined: "examined=small-cluster yes, no-food no, likeliest mites 71" => act;
    Counted: "counted=weak" => act;
    MitesCounted: "mites=14 of 300" => act;
}

/// Food by kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Feed {
    /// Syrup of three parts sugar to two of water by weight.
    Syrup3To2,
    /// Syrup of two parts sugar to one of water by weight.
    Syrup2To1,
    /// Syrup of one part sugar to one of water by weight: spring.
    Syrup1To1,
    /// Fondant.
    Fondant,
    /// Candy board or slab.
    Candy,
    /// Dry sugar.
    Sugar,
}

/// Kilograms of stores from a kilogram of sugar in syrup: 1.1, range 1.0-1.2.
///
/// Sources: 1.2 (Bienen-Zeitung wiki, Winterfutter), 1.0 as a rule (Imker-Weser-Ems leaflet); 1.25 at 80 % solids by
/// mass balance, less what bees use up.
pub const STORES_PER_SUGAR: f64 = 1.1;
/// Kilograms of honey that a kilogram of sugar eaten as it lies feeds as much as: honey is 82.4 % sugars (reference
/// tables), fondant and candy some 90 % sugar (from memory).
const SUGAR_OF_HONEY: f64 = 0.824;
const SUGAR_OF_FONDANT: f64 = 0.90;
/// Kilograms of honey that a kilogram of fondant or candy feeds as much as.
pub const STORES_PER_FONDANT: f64 = SUGAR_OF_FONDANT / SUGAR_OF_HONEY;

/// Mass of a litre of syrup of one, three halves and two parts sugar to one of water by weight, kg: sucrose solutions at
/// 20 °C (from memory of handbook tables).
pub const SYRUP_KG_PER_LITRE: [f64; 3] = [1.230, 1.287, 1.327];

impl Feed {
    /// Mass of what a keeper writes: a mass, or of syrup its volume.
    ///
    /// ```
    /// use snowhum_apiary::Feed;
    /// use snowhum_units::{Bare, System};
    /// let mass = |feed: Feed, text| feed.mass_of(text, Bare::In(System::Metric));
    /// assert!((mass(Feed::Syrup3To2, "10 L").unwrap().get() - 12.87).abs() < 1e-9);
    /// assert!((mass(Feed::Fondant, "2,5").unwrap().get() - 2.5).abs() < 1e-9);
    /// assert!(mass(Feed::Fondant, "2 L").is_err());
    /// assert!(mass(Feed::Syrup3To2, "10").is_err(), "kilograms or litres");
    /// ```
    ///
    /// # Errors
    /// When it is no mass; of syrup, when it is no volume either.
    pub fn mass_of(self, text: &str, bare: Bare) -> Result<Kilogram, ParseError> {
        let [one, three_halves, two] = SYRUP_KG_PER_LITRE;
        let kg_per_litre = match self {
            Self::Syrup1To1 => one,
            Self::Syrup3To2 => three_halves,
            Self::Syrup2To1 => two,
            Self::Fondant | Self::Candy | Self::Sugar => return Kilogram::read(text, bare),
        };
        if number(text).is_ok() {
            // Syrup is weighed by some and measured by others.
            let system = if let Bare::In(system) = bare { system } else { System::Metric };
            let (metric, us) = (Kilogram::usual(system), CubicMetre::usual(system));
            return Err(ParseError::NoUnit { text: text.to_owned(), metric, us });
        }
        text.parse().or_else(|_| Ok(Kilogram::new(text.parse::<CubicMetre>()?.get() * 1e3 * kg_per_litre)))
    }

    /// Whether bees must take it down and cap it.
    #[must_use]
    pub fn is_syrup(self) -> bool {
        self.sugar_share().is_some()
    }

    /// The stores that `mass` of it is worth.
    ///
    /// ```
    /// use snowhum_apiary::Feed;
    /// use snowhum_units::Kilogram;
    /// let worth = Feed::Syrup3To2.worth(Kilogram::new(10.0));
    /// assert!((worth.get() - 6.6).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn worth(self, mass: Kilogram) -> Kilogram {
        match (self, self.sugar_share()) {
            (_, Some(share)) => mass * (share * STORES_PER_SUGAR),
            (Self::Sugar, None) => mass * (1.0 / SUGAR_OF_HONEY),
            (_, None) => mass * STORES_PER_FONDANT,
        }
    }

    /// Share of a syrup's mass that is sugar.
    fn sugar_share(self) -> Option<f64> {
        match self {
            Self::Syrup3To2 => Some(0.6),
            Self::Syrup2To1 => Some(2.0 / 3.0),
            Self::Syrup1To1 => Some(0.5),
            Self::Fondant | Self::Candy | Self::Sugar => None,
        }
    }
}

fn as_text<T: fmt::Display, S: Serializer>(what: &T, to: S) -> Result<S::Ok, S::Error> {
    to.collect_str(what)
}

fn from_text<'de, T: FromStr<Err: fmt::Display>, D: Deserializer<'de>>(from: D) -> Result<T, D::Error> {
    let text = String::deserialize(from)?;
    text.parse().map_err(serde::de::Error::custom)
}
