//! The answer to a dead hive.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, deadout as say};

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DeadoutAnswer {
    /// [`super::DEADOUT_SCHEMA`].
    pub schema: String,
    /// Signs of foulbrood: all else waits.
    pub stop: Option<Stop>,
    /// What to look at before anything else, while a sign of foulbrood is unseen.
    pub brood_first: Option<Message>,
    /// Causes, likeliest first; none under a stop.
    pub causes: Vec<CauseChance>,
    /// The sign that would best part the two likeliest causes.
    pub look_next: Option<LookNext>,
    /// What can be used again.
    pub reuse: Reuse,
    /// What to make of it.
    pub say: Vec<Message>,
    /// What can hurt, by what was told.
    #[serde(default)]
    pub cautions: Vec<Message>,
    /// What was told, as it was understood, with what the records answered.
    pub signs: Vec<ToldSign>,
    /// Of the signs, those that the records answered.
    #[serde(default)]
    pub from_records: Vec<FromRecords>,
    /// What else to do at the hive; nothing under a stop.
    #[serde(default)]
    pub after: Vec<After>,
    /// Where it comes from.
    pub sources: Vec<Message>,
}

impl DeadoutAnswer {
    /// Causes less likely than this are not listed.
    const LEAST: f64 = 0.02;

    /// The likeliest in a line, and whether one can be sure of the order.
    #[must_use]
    pub fn likeliest(&self) -> Message {
        match self.causes.as_slice() {
            [first, second, ..] if first.low > second.high => say::sure(&first.words),
            [first, second, ..] => say::unsure(&first.words, &second.words),
            [only] => say::only(&only.words),
            [] => Message::NONE,
        }
    }

    /// The causes worth listing, likeliest first.
    pub fn listed(&self) -> impl Iterator<Item = &CauseChance> {
        self.causes.iter().filter(|cause| cause.p >= Self::LEAST)
    }

    /// What to look at next and what a yes or a no points to.
    #[must_use]
    pub fn look(&self) -> Option<Message> {
        let next = self.look_next.as_ref()?;
        let words = |name: &str| {
            let cause = self.causes.iter().find(|one| one.cause == name);
            cause.map_or_else(|| Message::from(name), |one| one.words.clone())
        };
        let other = next.between.iter().find(|name| **name != next.yes_points_to).map_or("", String::as_str);
        Some(say::look(&next.ask, words(other), words(&next.yes_points_to)))
    }
}

/// Foulbrood may be in it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Stop {
    /// The signs seen.
    pub signs: Vec<String>,
    /// Why to stop.
    pub why: Message,
    /// What to do.
    pub r#do: Message,
}

/// A cause and how likely it is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CauseChance {
    /// Its short name.
    pub cause: String,
    /// In words.
    pub words: Message,
    /// Chance, never above 0.95.
    pub p: f64,
    /// One in twenty below, over what the tables could be.
    pub low: f64,
    /// One in twenty above.
    pub high: f64,
}

/// Where to look next.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LookNext {
    /// The sign.
    pub sign: String,
    /// What to ask of the hive.
    pub ask: Message,
    /// The two causes it parts.
    pub between: [String; 2],
    /// The one that a yes points to.
    pub yes_points_to: String,
}

/// What can be used again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reuse {
    /// Comb.
    pub comb: Message,
    /// Food for bees.
    pub stores: Message,
    /// Causes and signs the rule comes from.
    pub because: Vec<String>,
    /// Food for people.
    pub people: Message,
}

/// A sign as it was understood.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ToldSign {
    /// The sign.
    pub sign: String,
    /// What was seen.
    pub seen: Seen,
}

/// A sign that the records answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FromRecords {
    /// The sign.
    pub sign: String,
    /// The answer.
    pub seen: Seen,
    /// What it stands on.
    pub because: Message,
}

/// Something to do beside the examination.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct After {
    /// What it is about.
    pub what: Message,
    /// What to do.
    pub words: Message,
    /// Who says so.
    pub source: String,
    /// How well that stands.
    pub status: snowhum_winter::Status,
}

/// A sign and what was seen of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SeenSign {
    /// The sign's name.
    pub name: String,
    /// What was seen.
    pub seen: Seen,
}

/// What was seen of a sign.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Seen {
    /// Surely there.
    Yes,
    /// There, fairly sure.
    FairlyYes,
    /// Surely not.
    No,
    /// Not there, fairly sure.
    FairlyNo,
    /// Not looked at, or not to be told.
    Unseen,
}

impl Seen {
    /// Reads yes, no, unseen, and how sure; `None` for anything else.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        match text.trim().to_ascii_lowercase().as_str() {
            "yes" | "y" | "sure" | "surely" => Some(Self::Yes),
            "fairly-yes" | "fairly-sure" | "fairly sure" | "probably" | "f" => Some(Self::FairlyYes),
            "no" | "n" | "sure-no" => Some(Self::No),
            "fairly-no" | "probably-not" => Some(Self::FairlyNo),
            "unseen" | "unsure" | "?" | "" => Some(Self::Unseen),
            _ => None,
        }
    }

    pub(super) fn is_yes(self) -> bool {
        matches!(self, Self::Yes | Self::FairlyYes)
    }
}
