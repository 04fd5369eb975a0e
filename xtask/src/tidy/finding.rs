//! A breach of a rule, and where.

use std::fmt;

/// A breach of a rule.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Finding {
    pub(super) weight: Weight,
    pub(super) place: String,
    pub(super) words: String,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Weight {
    Fault,
    Warning,
}

impl Finding {
    pub(super) fn fault(place: impl Into<String>, words: impl Into<String>) -> Self {
        Self { weight: Weight::Fault, place: place.into(), words: words.into() }
    }

    pub(super) fn warning(place: impl Into<String>, words: impl Into<String>) -> Self {
        Self { weight: Weight::Warning, place: place.into(), words: words.into() }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let weight = match self.weight {
            Weight::Fault => "fault",
            Weight::Warning => "warning",
        };
        write!(f, "{weight}: {}: {}", self.place, self.words)
    }
}
