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

impl From<&ParseError> for Message {
    fn from(wrong: &ParseError) -> Self {
        match wrong {
            ParseError::Empty { example } => quantity::empty(*example),
            ParseError::NotANumber { text, example } => quantity::no_number(*example, text),
            ParseError::NoUnit { text, metric, us } => quantity::no_unit(*metric, text, *us),
            ParseError::TwoReadings { text, decimal, whole } => quantity::two_readings(decimal, text, whole),
            ParseError::UnknownUnit { unit, quantity, units, example } => {
                quantity::unknown_unit(*example, quantity, unit, units)
            }
        }
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
