//! Things a keeper does, as far as they change the winter.

use crate::{ColonyId, SetupChange, TreatmentClass};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use snowhum_units::Kilogram;

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
    /// Treated against mites: class only, the keeper's own record holds the rest.
    Treated(TreatmentClass),
    /// Put to another colony; this hive is empty now.
    UnitedInto(ColonyId),
    /// A new queen was given and taken.
    Requeened,
    /// Moved to another stand.
    Moved,
    /// The upper hole was brushed free of rime, so that only new rime counts from now on.
    Brushed,
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

fn as_text<S: Serializer>(change: &SetupChange, to: S) -> Result<S::Ok, S::Error> {
    to.collect_str(change)
}

fn from_text<'de, D: Deserializer<'de>>(from: D) -> Result<SetupChange, D::Error> {
    let text = String::deserialize(from)?;
    text.parse().map_err(serde::de::Error::custom)
}
