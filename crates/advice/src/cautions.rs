//! What can hurt keeper, bees or neighbours: written once in `data/cautions.toml`, shown where it belongs.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::{Deserialize, Serialize};
use snowhum_say::{Tongue, cautions as say};

/// A caution.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Caution {
    /// What it is about.
    pub title: String,
    /// What it says, in whole sentences.
    pub says: String,
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

/// The shipped cautions; a test reads each.
static SHIPPED: LazyLock<BTreeMap<String, Caution>> =
    LazyLock::new(|| toml::from_str(include_str!("../../../data/cautions.toml")).unwrap_or_default());

/// What is told of a caution that could not be read: the rule behind all of them.
static NONE: LazyLock<Caution> = LazyLock::new(|| Caution {
    title: Tongue::BRITISH.say(&say::title()),
    says: Tongue::BRITISH.say(&say::says()),
    source: "judgement".to_owned(),
    status: "judgement".to_owned(),
});

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

    /// The caution.
    #[must_use]
    pub fn caution(self) -> &'static Caution {
        SHIPPED.get(self.name()).unwrap_or(&NONE)
    }

    /// What it says.
    ///
    /// ```
    /// use snowhum_advice::cautions::Hazard;
    /// assert!(Hazard::HotSugar.says().contains("115 °C"));
    /// ```
    #[must_use]
    pub fn says(self) -> &'static str {
        &self.caution().says
    }

    /// What each of several says.
    pub(crate) fn each(hazards: &[Self]) -> Vec<String> {
        hazards.iter().map(|hazard| hazard.says().to_owned()).collect()
    }

    /// What it says, to stand after a colon: begun small and without its last stop.
    #[must_use]
    pub(crate) fn clause(self) -> String {
        let mut letters = self.says().trim_end_matches('.').chars();
        letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
    }
}

#[cfg(test)]
mod tests {
    use super::{Hazard, SHIPPED};

    #[test]
    fn each_caution_is_written_once_with_where_it_comes_from_and_without_a_quantity() {
        assert_eq!(SHIPPED.len(), Hazard::ALL.len());
        for hazard in Hazard::ALL {
            let caution = SHIPPED.get(hazard.name()).unwrap_or_else(|| panic!("{hazard:?} is not written"));
            assert!(caution.says.ends_with('.') && !caution.source.is_empty(), "{hazard:?}");
            assert!(["published", "common practice", "from memory", "judgement"].contains(&caution.status.as_str()));
            let is_dose = |unit: &str| caution.says.contains(unit);
            assert!(!["ml", "mL", " g ", "grams", "strips per"].into_iter().any(is_dose), "{hazard:?}");
        }
    }
}
