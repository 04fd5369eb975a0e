//! What the units say of themselves.

use snowhum_units::{Against, ParseError, Usual};

use crate::{Message, quantity, words};

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

/// What is wrong with a text that is no quantity, what would be right, and an example of it where the text is no help.
#[must_use]
pub fn unread(wrong: &ParseError) -> (Message, Message, Option<&'static str>) {
    match wrong {
        ParseError::Empty { example } => (quantity::empty(), quantity::empty_right(), Some(*example)),
        ParseError::NotANumber { text, example } => {
            (quantity::no_number(text), quantity::no_number_right(), Some(*example))
        }
        ParseError::NoUnit { text, metric, us } => {
            (quantity::no_unit(text), quantity::no_unit_right(*metric, text, *us), None)
        }
        ParseError::TwoReadings { text, decimal, whole } => {
            (quantity::two_readings(text), quantity::two_readings_right(decimal, whole), None)
        }
        ParseError::UnknownUnit { unit, quantity: of, units, example } => {
            (quantity::unknown_unit(of, unit), quantity::unknown_unit_right(units), Some(*example))
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::{Tongue, against};
    use snowhum_units::Against;

    #[test]
    fn a_count_stands_to_what_is_usual_as_json_has_it() {
        for expected in [Against::Fewer, Against::Expected, Against::More] {
            assert_eq!(serde_json::to_value(expected).unwrap(), Tongue::BRITISH.say(&against(expected)));
        }
    }
}
