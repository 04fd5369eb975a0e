//! A message.

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;

use crate::{Fact, Tongue};

/// What is to be said, without a language: the name of a message and its facts, the keeper's own words, or several of both
/// one after another.
///
/// As JSON it is its British text in metric units, and what is read from JSON is said as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Message(pub(crate) Content);

/// The function of a text that tells of no fact, for tables of them.
pub type Text = fn() -> Message;

#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Content {
    Named {
        topic: usize,
        id: &'static str,
        facts: Vec<(&'static str, Fact)>,
    },
    Own(Cow<'static, str>),
    /// What stands between them is the second.
    Several(Vec<Message>, &'static str),
}

impl Message {
    /// Nothing.
    pub const NONE: Self = Self(Content::Several(Vec::new(), " "));

    pub(crate) const fn named(topic: usize, id: &'static str, facts: Vec<(&'static str, Fact)>) -> Self {
        Self(Content::Named { topic, id, facts })
    }

    /// What is said as it stands, in every language: a name, a keeper's note, a source.
    ///
    /// ```
    /// use snowhum_say::{Message, Tongue};
    /// use snowhum_units::System;
    /// assert_eq!(Tongue::new(System::Us).say(&Message::own("Alder")), "Alder");
    /// ```
    pub fn own(text: impl Into<Cow<'static, str>>) -> Self {
        Self(Content::Own(text.into()))
    }

    /// Sentences one after another, each as its message has it.
    pub fn sentences(parts: impl IntoIterator<Item = Self>) -> Self {
        Self(Content::Several(parts.into_iter().filter(|part| !part.is_none()).collect(), " "))
    }

    /// Messages each on a line of its own.
    pub fn lines(parts: impl IntoIterator<Item = Self>) -> Self {
        Self(Content::Several(parts.into_iter().collect(), "\n"))
    }

    /// Its name, for one of `messages/`.
    #[must_use]
    pub const fn id(&self) -> Option<&'static str> {
        match &self.0 {
            Content::Named { id, .. } => Some(*id),
            Content::Own(_) | Content::Several(..) => None,
        }
    }

    /// The cautions that it is or holds.
    #[must_use]
    pub fn cautions(&self) -> Vec<&Self> {
        match &self.0 {
            Content::Named { id, .. } if id.starts_with("cautions-") => vec![self],
            Content::Named { facts, .. } => {
                facts.iter().flat_map(|(_, fact)| fact.messages()).flat_map(Self::cautions).collect()
            }
            Content::Own(_) => Vec::new(),
            Content::Several(parts, _) => parts.iter().flat_map(Self::cautions).collect(),
        }
    }

    /// Whether it says nothing.
    #[must_use]
    pub fn is_none(&self) -> bool {
        match &self.0 {
            Content::Named { .. } => false,
            Content::Own(text) => text.is_empty(),
            Content::Several(parts, _) => parts.is_empty(),
        }
    }
}

impl Default for Message {
    fn default() -> Self {
        Self::NONE
    }
}

impl From<&str> for Message {
    fn from(own: &str) -> Self {
        Self::own(own.to_owned())
    }
}

impl From<String> for Message {
    fn from(own: String) -> Self {
        Self::own(own)
    }
}

impl From<&String> for Message {
    fn from(own: &String) -> Self {
        Self::own(own.clone())
    }
}

impl From<&Self> for Message {
    fn from(message: &Self) -> Self {
        message.clone()
    }
}

impl Serialize for Message {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&Tongue::BRITISH.say(self))
    }
}

impl<'de> Deserialize<'de> for Message {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Ok(Self::own(String::deserialize(deserializer)?))
    }
}
