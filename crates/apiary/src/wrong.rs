//! A piece of text that is wrong, before it has a place.

use snowhum_say::{Message, Tongue, fault, unread_quantity};
use snowhum_units::ParseError;

/// A piece of text that cannot be understood: what is wrong and what would be right, without a place yet.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub struct Wrong {
    /// What is wrong.
    pub problem: Message,
    /// What would be right.
    pub remedy: Message,
}

impl Wrong {
    /// What is wrong, and what would be right.
    #[must_use]
    pub const fn new(problem: Message, remedy: Message) -> Self {
        Self { problem, remedy }
    }

    /// Both in one.
    #[must_use]
    pub fn message(&self) -> Message {
        fault::both(&self.problem, &self.remedy)
    }
}

impl From<ParseError> for Wrong {
    fn from(error: ParseError) -> Self {
        let (problem, remedy) = unread_quantity(&error);
        Self::new(problem, remedy)
    }
}
