//! The keeper's settings: units, words, money.

use snowhum_apiary::Apiary;
use snowhum_say::{Language, Tongue};
use snowhum_store::{Fault, Store};
use snowhum_units::System;
use std::collections::BTreeMap;

#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Settings {
    pub(crate) system: System,
    pub(crate) language: Language,
    /// In place of the yard file's.
    pub(crate) currency: Option<String>,
    pub(crate) colony_worth: Option<f64>,
}

pub(crate) const UNITS: &str = "web.units";
pub(crate) const LANGUAGE: &str = "web.language";
/// Where North American was kept before there were languages.
const WORDS: &str = "web.words";
const AMERICAN: &str = "north-american";
pub(crate) const CURRENCY: &str = "web.currency";
pub(crate) const COLONY: &str = "web.colony";
/// Largest worth of a colony that is believed.
const MOST_WORTH: f64 = 1e7;
/// Longest currency, in letters.
const LONGEST_CURRENCY: usize = 8;

/// What was chosen for the pages of some records: for commands, which follow it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Chosen {
    /// Units; none if nobody chose.
    pub system: Option<System>,
    /// The language; none if nobody chose.
    pub language: Option<Language>,
}

impl Chosen {
    /// As kept in a store.
    ///
    /// # Errors
    /// When the store cannot be read.
    pub async fn of(store: &Store) -> Result<Self, Fault> {
        Ok(Self::among(&store.settings().await?))
    }

    pub(crate) fn among(kept: &BTreeMap<String, String>) -> Self {
        let words = kept.get(WORDS).filter(|kept| *kept == AMERICAN).map(|_| Language::NorthAmerican);
        let language = kept.get(LANGUAGE).and_then(|tag| Language::of_tag(tag)).or(words);
        Self {
            system: match kept.get(UNITS).map(String::as_str) {
                Some("us") => Some(System::Us),
                Some("metric") => Some(System::Metric),
                _ => None,
            },
            language,
        }
    }
}

impl Settings {
    /// As kept; what the keeper never chose is as the program was started.
    pub(crate) fn of(kept: &BTreeMap<String, String>, usual: Tongue) -> Self {
        let chosen = Chosen::among(kept);
        Self {
            system: chosen.system.unwrap_or(usual.system()),
            language: chosen.language.unwrap_or(usual.language()),
            currency: kept.get(CURRENCY).and_then(|text| currency(text)),
            colony_worth: kept.get(COLONY).and_then(|text| worth(text)),
        }
    }

    /// What the keeper reads in.
    pub(crate) fn tongue(&self) -> Tongue {
        Tongue::new(self.system).in_language(self.language)
    }

    /// The yard with the keeper's money in place of the file's.
    pub(crate) fn priced(&self, mut apiary: Apiary) -> Apiary {
        if let Some(currency) = &self.currency {
            apiary.money.currency.clone_from(currency);
        }
        if let Some(worth) = self.colony_worth {
            apiary.money.colony = worth;
        }
        apiary
    }
}

/// A currency as the keeper writes it.
pub(crate) fn currency(text: &str) -> Option<String> {
    let text = text.trim();
    let fits = (1..=LONGEST_CURRENCY).contains(&text.chars().count()) && !text.chars().any(char::is_control);
    fits.then(|| text.to_owned())
}

/// What a colony is worth.
pub(crate) fn worth(text: &str) -> Option<f64> {
    snowhum_units::number(text).ok().filter(|worth| (0.0..=MOST_WORTH).contains(worth))
}
