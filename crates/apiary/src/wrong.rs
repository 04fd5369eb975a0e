//! A piece of text that is wrong, before it has a place.

use snowhum_say::{Message, Tongue, fault, quantity, unread};
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
        let (problem, right, example) = unread(&error);
        Self::new(problem, example.map_or(right.clone(), |example| quantity::such_as(example, right)))
    }
}

#[cfg(test)]
mod tests {
    use super::Wrong;
    use snowhum_units::{Bare, Kilogram, Measured, Metre};

    #[test]
    fn the_units_and_the_british_texts_say_the_same() {
        let faults = [
            Kilogram::read("", Bare::Refused).map(drop),
            Kilogram::read("heavy", Bare::Refused).map(drop),
            Kilogram::read("12", Bare::Refused).map(drop),
            Kilogram::read("1,500 kg", Bare::Refused).map(drop),
            Metre::read("12 kg", Bare::Refused).map(drop),
        ];
        for fault in faults.map(Result::unwrap_err) {
            assert_eq!(Wrong::from(fault.clone()).to_string(), fault.to_string());
        }
    }
}
