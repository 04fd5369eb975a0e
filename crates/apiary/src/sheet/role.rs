//! What a column of a sheet may hold.

use crate::note::sign_examples;
use crate::shipped::same_name;

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Role {
    /// The day, with the hour or without.
    Date,
    /// The hour.
    Time,
    /// The colony.
    Hive,
    /// Outdoor air.
    Air,
    /// Wind.
    Wind,
    /// Snow on the ground.
    Snow,
    /// Free words, or whole notes.
    Words,
    /// What this word of a note begins: each cell is what stands behind its `=`.
    Noted(&'static str),
}

impl Role {
    pub(super) const WORDS: [(&'static str, Self); 7] = [
        ("date", Self::Date),
        ("time", Self::Time),
        ("hive", Self::Hive),
        ("air", Self::Air),
        ("wind", Self::Wind),
        ("snow", Self::Snow),
        ("words", Self::Words),
    ];

    /// The role of a word.
    pub(super) fn of(word: &str) -> Option<Self> {
        let word = if same_name(word, "weight") { "scale" } else { word };
        let own = Self::WORDS.iter().find(|(own, _)| same_name(own, word)).map(|(_, role)| *role);
        let noted = || sign_examples().iter().find(|(noted, _)| same_name(noted, word));
        own.or_else(|| noted().map(|(noted, _)| Self::Noted(noted)))
    }

    /// As a mapping names it.
    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Noted(word) => word,
            own => Self::WORDS.iter().find(|(_, role)| *role == own).map_or("", |(word, _)| word),
        }
    }

    /// Several columns may be of words; of all else one is meant.
    pub(super) fn may_repeat(self) -> bool {
        self == Self::Words
    }
}
