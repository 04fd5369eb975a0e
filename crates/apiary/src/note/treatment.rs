//! A treatment as the keeper's own record has it, with what the law of many countries asks to be kept.

use super::vocabulary::{name_of, word};
use crate::TreatmentClass;
use crate::wrong::Wrong;
use serde::{Deserialize, Serialize};
use snowhum_say::{fault, note_fault as say};
use std::collections::BTreeMap;

/// Longest detail, letters.
const LONGEST: usize = 80;
/// What stands between details; no detail can hold one of the second.
const BETWEEN: char = '|';
const FORBIDDEN: [char; 3] = [BETWEEN, ';', '\u{2028}'];

/// A treatment given: its class, and whatever else the keeper wrote down. What is not there was not noted.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "Kept", into = "Kept")]
pub struct TreatmentNote {
    /// What kind of substance.
    pub class: TreatmentClass,
    /// The rest, in the keeper's own words.
    pub details: BTreeMap<TreatmentDetail, String>,
}

/// What a record of a veterinary medicine holds beside day and hive (Regulation (EU) 2019/6, article 108).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TreatmentDetail {
    /// The product's name.
    Product,
    /// The batch.
    Batch,
    /// How much was given, as the label asks.
    Quantity,
    /// Where it was bought.
    Supplier,
    /// The proof of purchase.
    Proof,
    /// The withdrawal period, even if it is nil.
    Withdrawal,
    /// How long it was left in.
    Duration,
}

impl TreatmentDetail {
    /// All of them, as keepers write them, in the order of the record.
    pub const WORDS: [(&'static str, Self); 7] = [
        ("product", Self::Product),
        ("batch", Self::Batch),
        ("quantity", Self::Quantity),
        ("supplier", Self::Supplier),
        ("proof", Self::Proof),
        ("withdrawal", Self::Withdrawal),
        ("duration", Self::Duration),
    ];
}

/// As it is kept: a class alone as the word it always was.
#[derive(Serialize, Deserialize)]
#[serde(untagged)]
enum Kept {
    Bare(TreatmentClass),
    Told { class: TreatmentClass, details: BTreeMap<TreatmentDetail, String> },
}

impl From<TreatmentClass> for TreatmentNote {
    fn from(class: TreatmentClass) -> Self {
        Self { class, details: BTreeMap::new() }
    }
}

impl From<Kept> for TreatmentNote {
    fn from(kept: Kept) -> Self {
        match kept {
            Kept::Bare(class) => class.into(),
            Kept::Told { class, details } => Self { class, details },
        }
    }
}

impl From<TreatmentNote> for Kept {
    fn from(note: TreatmentNote) -> Self {
        match note.details.is_empty() {
            true => Self::Bare(note.class),
            false => Self::Told { class: note.class, details: note.details },
        }
    }
}

impl TreatmentNote {
    /// Reads `oxalic`, or `oxalic | product: … | withdrawal: nil`.
    pub(super) fn read(how: &str) -> Result<Self, Wrong> {
        let mut parts = how.split(BETWEEN).map(str::trim);
        let mut note = Self::from(word(parts.next().unwrap_or_default(), &TreatmentClass::WORDS)?);
        for part in parts {
            let Some((what, told)) = part.split_once(':') else {
                return Err(Wrong::new(say::no_colon(part), say::treated_right()));
            };
            note.tell(word(what.trim(), &TreatmentDetail::WORDS)?, told)?;
        }
        Ok(note)
    }

    /// Adds a detail.
    ///
    /// # Errors
    /// When it says nothing, is too long, cannot be kept on a line, or is there already.
    pub fn tell(&mut self, detail: TreatmentDetail, told: &str) -> Result<(), Wrong> {
        let (told, name) = (told.trim(), name_of(&detail, &TreatmentDetail::WORDS));
        if told.is_empty() {
            return Err(Wrong::new(say::detail_empty(name), say::detail_empty_right()));
        }
        if told.chars().count() > LONGEST {
            return Err(Wrong::new(say::detail_long(name), fault::letters(LONGEST)));
        }
        if told.chars().any(|letter| letter.is_control() || FORBIDDEN.contains(&letter)) {
            return Err(Wrong::new(say::detail_marks(name), say::detail_marks_right()));
        }
        if self.details.insert(detail, told.to_owned()).is_some() {
            return Err(Wrong::new(say::detail_twice(name), fault::once()));
        }
        Ok(())
    }

    /// A detail, if it was noted.
    #[must_use]
    pub fn detail(&self, detail: TreatmentDetail) -> Option<&str> {
        self.details.get(&detail).map(String::as_str)
    }

    /// As it would be written.
    pub(super) fn written(&self) -> String {
        let class = name_of(&self.class, &TreatmentClass::WORDS).to_owned();
        self.details.iter().fold(class, |line, (detail, told)| {
            format!("{line} {BETWEEN} {}: {told}", name_of(detail, &TreatmentDetail::WORDS))
        })
    }
}
