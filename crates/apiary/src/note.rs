//! What a keeper writes down at a visit: signs seen from outside, and things done.

mod act;
mod acts;
mod examined;
mod grammar;
mod sign;
mod treatment;
mod visit_text;
mod vocabulary;
mod weighed;
mod weighing;

pub use act::{Act, ActKind, Feed, STORES_PER_FONDANT, STORES_PER_SUGAR, SYRUP_KG_PER_LITRE};
pub(crate) use acts::mites_counted;
pub use examined::{Examined, Found, FoundSign, Likeliest, SpringCount};
pub use grammar::{sign_examples, split_entries};
pub use sign::{
    DeadCount, DeadPlace, DroppingsPlace, Flight, Listening, Poked, ProbePlace, Seen, Sign, SignKind, UpperHoleSign,
};
pub use treatment::{TreatmentDetail, TreatmentNote};
pub(crate) use vocabulary::percent;
pub use weighing::{Heft, Weighing};

use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{ColonyId, NoteId, VisitId};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use snowhum_say::note_fault as say;
use snowhum_units::{Kelvin, MetrePerSecond};

/// One colony at one visit. Notes are never overwritten: an edit is a new version under the same id.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Note {
    /// Stable id, made where the note is made.
    pub id: NoteId,
    /// The walk past the hives it belongs to; signs of one visit share a quiet day.
    pub visit: VisitId,
    /// Whom it is about.
    pub colony: ColonyId,
    /// When.
    pub at: Timestamp,
    /// The weather as the keeper saw it.
    pub conditions: Conditions,
    /// What was seen and done, in the order written.
    pub entries: Vec<Entry>,
}

/// The weather at a visit as the keeper saw it; what is not given is taken from the weather the answers stand on.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Conditions {
    /// Outdoor air.
    pub air_k: Option<Kelvin>,
    /// Snow on the ground.
    pub snow: Option<SnowCover>,
    /// Wind.
    pub wind_m_per_s: Option<MetrePerSecond>,
}

/// Snow on the ground before the hives.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SnowCover {
    /// Bare ground.
    None,
    /// Old snow: what lies on it may have lain there before.
    Old,
    /// Fresh snow since the last look.
    New,
}

impl Conditions {
    /// Refuses weather that no keeper stood in.
    ///
    /// # Errors
    /// When it cannot be, with what can.
    pub fn check(&self) -> Result<(), Wrong> {
        const COLDEST: Kelvin = Kelvin::from_celsius(-70.0);
        const WARMEST: Kelvin = Kelvin::from_celsius(50.0);
        const STRONGEST: MetrePerSecond = MetrePerSecond::new(70.0);
        if self.air_k.is_some_and(|air| !(COLDEST..=WARMEST).contains(&air)) {
            return Err(Wrong::new(say::air(), say::air_right(COLDEST, WARMEST)));
        }
        if self.wind_m_per_s.is_some_and(|wind| !(MetrePerSecond::ZERO..=STRONGEST).contains(&wind)) {
            return Err(Wrong::new(say::wind(), say::wind_right(STRONGEST)));
        }
        Ok(())
    }
}

impl SnowCover {
    pub(crate) const WORDS: [(&'static str, Self); 3] = [("none", Self::None), ("old", Self::Old), ("new", Self::New)];

    /// As a keeper writes it.
    #[must_use]
    pub fn read(written: &str) -> Option<Self> {
        Self::WORDS.iter().find(|(word, _)| same_name(word, written)).map(|(_, snow)| *snow)
    }
}

/// One thing seen or done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Entry {
    /// A sign.
    Sign(Sign),
    /// Something the keeper did.
    Act(Act),
    /// Words that no sum reads.
    Words(String),
}

impl Note {
    /// The signs, in the order written.
    pub fn signs(&self) -> impl Iterator<Item = &Sign> {
        self.entries.iter().filter_map(|entry| match entry {
            Entry::Sign(sign) => Some(sign),
            Entry::Act(_) | Entry::Words(_) => None,
        })
    }

    /// The things done, in the order written.
    pub fn acts(&self) -> impl Iterator<Item = &Act> {
        self.entries.iter().filter_map(|entry| match entry {
            Entry::Act(act) => Some(act),
            Entry::Sign(_) | Entry::Words(_) => None,
        })
    }
}
