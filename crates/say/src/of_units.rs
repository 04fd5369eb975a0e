//! What the units say of themselves.

use snowhum_units::{Against, ParseError, Usual};

use crate::{Message, fault, quantity, words};

/// What is usual: `4 to 210`, or one number where both ends are the same.
#[must_use]
pub fn usual(usual: Usual) -> Message {
    if usual.least == usual.most { usual.most.to_string().into() } else { words::to(usual.least, usual.most) }
}

/// How a count stands to what is usual.
#[must_use]
pub fn against(expected: Against) -> Message {
    match expected {
        Against::Fewer => words::fewer(),
        Against::Expected => words::as_expected(),
        Against::More => words::more(),
    }
}

/// What is wrong with a text that is no quantity, and what would be right without an example.
#[must_use]
pub fn unread(wrong: &ParseError) -> (Message, Message) {
    match wrong {
        ParseError::Empty { .. } => (quantity::empty(), quantity::empty_right()),
        ParseError::NotANumber { text, .. } => (quantity::no_number(text), quantity::no_number_right()),
        ParseError::NoUnit { text, metric, us } => {
            (quantity::no_unit(text), quantity::no_unit_right(*metric, text, *us))
        }
        ParseError::TwoReadings { text, decimal, whole } => {
            (quantity::two_readings(text), quantity::two_readings_right(decimal, whole))
        }
        ParseError::UnknownUnit { unit, quantity: of, units, .. } => {
            (quantity::unknown_unit(of, unit), quantity::unknown_unit_right(units))
        }
    }
}

/// What is wrong with a text that is no quantity, and what would be right.
#[must_use]
pub fn unread_quantity(wrong: &ParseError) -> (Message, Message) {
    let (problem, right) = unread(wrong);
    match wrong {
        ParseError::Empty { example }
        | ParseError::NotANumber { example, .. }
        | ParseError::UnknownUnit { example, .. } => (problem, quantity::such_as(*example, right)),
        ParseError::NoUnit { .. } | ParseError::TwoReadings { .. } => (problem, right),
    }
}

impl From<&ParseError> for Message {
    fn from(wrong: &ParseError) -> Self {
        let (problem, right) = unread_quantity(wrong);
        fault::both(problem, right)
    }
}

#[cfg(test)]
mod tests {
    use crate::{Message, Tongue, against};
    use snowhum_units::{Against, Bare, Kilogram, Measured, Metre};

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
            assert_eq!(Tongue::BRITISH.say(&Message::from(&fault)), fault.to_string());
        }
        for expected in [Against::Fewer, Against::Expected, Against::More] {
            assert_eq!(serde_json::to_value(expected).unwrap(), Tongue::BRITISH.say(&against(expected)));
        }
    }
}
