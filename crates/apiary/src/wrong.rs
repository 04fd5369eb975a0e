//! A piece of text that is wrong, before it has a place.

/// A piece of text that cannot be understood: what is wrong and what would be right, without a place yet.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{problem}; {remedy}")]
pub struct Wrong {
    /// What is wrong.
    pub problem: String,
    /// What would be right.
    pub remedy: String,
}

impl Wrong {
    pub(crate) fn new(problem: impl Into<String>, remedy: impl Into<String>) -> Self {
        Self { problem: problem.into(), remedy: remedy.into() }
    }
}

impl From<snowhum_units::ParseError> for Wrong {
    /// Unit errors say both parts in one sentence.
    fn from(error: snowhum_units::ParseError) -> Self {
        let message = error.to_string();
        match message.split_once("; ") {
            Some((problem, remedy)) => Self::new(problem, remedy),
            None => Self::new(message, "write a number and a unit"),
        }
    }
}
