//! What can hurt keeper, bees or neighbours: said once, shown where it belongs. Who says so stands in `data/cautions.toml`.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, cautions as say};

/// What a caution stands on.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Founded {
    /// Who says so.
    pub source: String,
    /// `published`, `common practice`, `from memory` or `judgement`.
    pub status: String,
}

/// What can hurt.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hazard {
    /// Lifting.
    Lifting,
    /// One side of a hive lifted to feel or read its weight.
    OneSide,
    /// A whole hive moved.
    Carrying,
    /// A cellar full of bees.
    ClosedRoom,
    /// Acids.
    Acids,
    /// Medicines.
    Label,
    /// Antibiotics.
    Antibiotics,
    /// Hot sugar.
    HotSugar,
    /// Robbing.
    Robbing,
    /// The lid off.
    LidOff,
    /// Combs in the cold.
    BeforeTight,
    /// Clearing an entrance.
    Entrance,
    /// Combs from hive to hive.
    HealthyCombs,
    /// Foulbrood.
    Foulbrood,
    /// Ice and lone work.
    Ice,
    /// Stings.
    Stings,
    /// Fire, electricity, gas.
    Fire,
    /// An electric fence.
    Fence,
    /// Food for people.
    FoodLaw,
}

static SHIPPED: LazyLock<BTreeMap<String, Founded>> =
    LazyLock::new(|| toml::from_str(include_str!("../../../data/cautions.toml")).unwrap_or_default());

impl Hazard {
    /// All of them, in the order they are listed.
    pub const ALL: [Self; 19] = [
        Self::Lifting,
        Self::OneSide,
        Self::Carrying,
        Self::ClosedRoom,
        Self::Acids,
        Self::Label,
        Self::Antibiotics,
        Self::HotSugar,
        Self::Robbing,
        Self::LidOff,
        Self::BeforeTight,
        Self::Entrance,
        Self::HealthyCombs,
        Self::Foulbrood,
        Self::Ice,
        Self::Stings,
        Self::Fire,
        Self::Fence,
        Self::FoodLaw,
    ];

    /// Its name in the table.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Lifting => "lifting",
            Self::OneSide => "one_side",
            Self::Carrying => "carrying",
            Self::ClosedRoom => "closed_room",
            Self::Acids => "acids",
            Self::Label => "label",
            Self::Antibiotics => "antibiotics",
            Self::HotSugar => "hot_sugar",
            Self::Robbing => "robbing",
            Self::LidOff => "lid_off",
            Self::BeforeTight => "before_tight",
            Self::Entrance => "entrance",
            Self::HealthyCombs => "healthy_combs",
            Self::Foulbrood => "foulbrood",
            Self::Ice => "ice",
            Self::Stings => "stings",
            Self::Fire => "fire",
            Self::Fence => "fence",
            Self::FoodLaw => "food_law",
        }
    }

    /// What the caution stands on; a test finds it for each.
    #[must_use]
    pub fn founded(self) -> Option<&'static Founded> {
        SHIPPED.get(self.name())
    }

    /// What it is about.
    #[must_use]
    pub fn title(self) -> Message {
        self.texts().0
    }

    /// What it says, in whole sentences.
    ///
    /// ```
    /// use snowhum_advice::cautions::Hazard;
    /// assert!(snowhum_say::Tongue::BRITISH.say(&Hazard::HotSugar.says()).contains("115 °C"));
    /// ```
    #[must_use]
    pub fn says(self) -> Message {
        say::sentence(self.clause())
    }

    /// What it says, to stand after a colon.
    pub(crate) fn clause(self) -> Message {
        self.texts().1
    }

    /// What each of several says.
    pub(crate) fn each(hazards: &[Self]) -> Vec<Message> {
        hazards.iter().map(|hazard| hazard.says()).collect()
    }

    fn texts(self) -> (Message, Message) {
        match self {
            Self::Lifting => (say::lifting_title(), say::lifting()),
            Self::OneSide => (say::one_side_title(), say::one_side()),
            Self::Carrying => (say::carrying_title(), say::carrying()),
            Self::ClosedRoom => (say::closed_room_title(), say::closed_room()),
            Self::Acids => (say::acids_title(), say::acids()),
            Self::Label => (say::label_title(), say::label()),
            Self::Antibiotics => (say::antibiotics_title(), say::antibiotics()),
            Self::HotSugar => (say::hot_sugar_title(), say::hot_sugar()),
            Self::Robbing => (say::robbing_title(), say::robbing()),
            Self::LidOff => (say::lid_off_title(), say::lid_off()),
            Self::BeforeTight => (say::before_tight_title(), say::before_tight()),
            Self::Entrance => (say::entrance_title(), say::entrance()),
            Self::HealthyCombs => (say::healthy_combs_title(), say::healthy_combs()),
            Self::Foulbrood => (say::foulbrood_title(), say::foulbrood()),
            Self::Ice => (say::ice_title(), say::ice()),
            Self::Stings => (say::stings_title(), say::stings()),
            Self::Fire => (say::fire_title(), say::fire()),
            Self::Fence => (say::fence_title(), say::fence()),
            Self::FoodLaw => (say::food_law_title(), say::food_law()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Hazard, SHIPPED};
    use snowhum_say::Tongue;

    #[test]
    fn each_caution_is_written_once_with_where_it_comes_from_and_without_a_quantity() {
        assert_eq!(SHIPPED.len(), Hazard::ALL.len());
        for hazard in Hazard::ALL {
            let founded = hazard.founded().unwrap_or_else(|| panic!("{hazard:?} is not founded"));
            let says = Tongue::BRITISH.say(&hazard.says());
            assert!(says.ends_with('.') && !founded.source.is_empty(), "{hazard:?}");
            assert!(["published", "common practice", "from memory", "judgement"].contains(&founded.status.as_str()));
            let is_dose = |unit: &str| says.contains(unit);
            assert!(!["ml", "mL", " g ", "grams", "strips per"].into_iter().any(is_dose), "{hazard:?}");
        }
    }
}
