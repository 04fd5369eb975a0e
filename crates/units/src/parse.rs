//! Reading what a keeper writes: a number and a unit.

use crate::{CubicMetre, Degree, Kelvin, Kilogram, Metre, MetrePerSecond, SquareMetre, System};
use std::str::FromStr;

/// Why a text is not the quantity it should be.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum ParseError {
    /// The text is empty.
    #[error("nothing is written here; write a number and a unit, such as \"{example}\"")]
    Empty {
        /// A text that would be right.
        example: &'static str,
    },
    /// No number at the start, or one that is not finite.
    #[error("\"{text}\" does not start with a number; write one with its unit, such as \"{example}\"")]
    NotANumber {
        /// What was written.
        text: String,
        /// A text that would be right.
        example: &'static str,
    },
    /// The number stands alone, and may be meant in either system.
    #[error("\"{text}\" has no unit; write \"{text} {metric}\" or \"{text} {us}\"")]
    NoUnit {
        /// What was written.
        text: String,
        /// The unit a metric keeper would mean.
        metric: &'static str,
        /// The unit a keeper with US units would mean.
        us: &'static str,
    },
    /// The comma parts thousands as well as it begins decimals.
    #[error("\"{text}\" can be read two ways; write \"{decimal}\" or \"{whole}\"")]
    TwoReadings {
        /// What was written.
        text: String,
        /// With the comma as a decimal point.
        decimal: String,
        /// With the comma between thousands.
        whole: String,
    },
    /// The unit is not one of this quantity's.
    #[error("\"{unit}\" is no unit of {quantity}; write one of {units}, such as \"{example}\"")]
    UnknownUnit {
        /// The unit that was written.
        unit: String,
        /// What should be measured.
        quantity: &'static str,
        /// The units that are understood.
        units: String,
        /// A text that would be right.
        example: &'static str,
    },
}

/// What a number without a unit is taken for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bare {
    /// Nothing: it is refused with both readings, since who wrote it is not known.
    Refused,
    /// The usual unit of this system, which the keeper reads and writes.
    In(System),
}

/// What a keeper writes as a number with a unit.
pub trait Measured: Sized {
    /// The units a bare number is taken in: metric, US.
    const USUAL: [&'static str; 2];

    /// Reads a number with its unit, or a bare one as `bare` says.
    ///
    /// ```
    /// use snowhum_units::{Bare, Kilogram, Measured, System};
    /// assert_eq!(Kilogram::read("10", Bare::In(System::Us)), "10 lb".parse());
    /// assert_eq!(Kilogram::read("10,5 kg", Bare::In(System::Us)), "10.5 kg".parse());
    /// assert!(Kilogram::read("10", Bare::Refused).unwrap_err().to_string().contains("\"10 kg\" or \"10 lb\""));
    /// ```
    ///
    /// # Errors
    /// When it is no such quantity, with what would be right.
    fn read(text: &str, bare: Bare) -> Result<Self, ParseError>;

    /// The unit of a bare number in this system.
    #[must_use]
    fn usual(system: System) -> &'static str {
        let [metric, us] = Self::USUAL;
        if system == System::Us { us } else { metric }
    }
}

/// Reads a plain number: a decimal point or comma, a hyphen or a minus sign before it.
///
/// # Errors
/// When it is none, is not finite, or a comma in it can be read two ways.
pub fn number(text: &str) -> Result<f64, ParseError> {
    let text = text.trim();
    decimal(text, "", "12.5")
}

/// The units of one quantity: name, and the SI value of one of them (scale, offset).
struct Units {
    quantity: &'static str,
    example: &'static str,
    usual: [&'static str; 2],
    names: &'static [(&'static str, f64, f64)],
}

impl Units {
    fn parse(&self, text: &str, bare: Bare) -> Result<f64, ParseError> {
        let text = text.trim();
        if text.is_empty() {
            return Err(ParseError::Empty { example: self.example });
        }
        let (number, unit) = split_number(text);
        let value = decimal(number, unit, self.example)
            .map_err(|wrong| if let ParseError::NotANumber { .. } = wrong { self.no_number(text) } else { wrong })?;
        let unit = if unit.is_empty() { self.bare(text, bare)? } else { unit };
        match self.names.iter().find(|(name, ..)| name.eq_ignore_ascii_case(unit)) {
            Some((_, scale, offset)) => Ok(value * scale + offset),
            None => Err(ParseError::UnknownUnit {
                unit: unit.to_owned(),
                quantity: self.quantity,
                units: self.list(),
                example: self.example,
            }),
        }
    }

    fn bare(&self, text: &str, bare: Bare) -> Result<&'static str, ParseError> {
        let [metric, us] = self.usual;
        match bare {
            Bare::In(System::Metric) => Ok(metric),
            Bare::In(System::Us) => Ok(us),
            Bare::Refused => Err(ParseError::NoUnit { text: text.to_owned(), metric, us }),
        }
    }

    fn no_number(&self, text: &str) -> ParseError {
        ParseError::NotANumber { text: text.to_owned(), example: self.example }
    }

    fn list(&self) -> String {
        let names: Vec<&str> = self.names.iter().map(|(name, ..)| *name).collect();
        names.join(", ")
    }
}

/// Splits `"12.5kg"` into `"12.5"` and `"kg"`.
fn split_number(text: &str) -> (&str, &str) {
    let end = text
        .char_indices()
        .find(|&(at, c)| !(c.is_ascii_digit() || matches!(c, '.' | ',') || (matches!(c, '-' | '+' | '−') && at == 0)))
        .map_or(text.len(), |(at, _)| at);
    (&text[..end], text[end..].trim())
}

/// A number whose comma is a decimal one, unless it may as well part thousands.
fn decimal(number: &str, unit: &str, example: &'static str) -> Result<f64, ParseError> {
    let plain = number.replace('−', "-");
    if let Some((before, after)) = plain.split_once(',') {
        let whole = before.trim_start_matches(['-', '+']);
        let is_digits = |part: &str| !part.is_empty() && part.bytes().all(|letter| letter.is_ascii_digit());
        if is_digits(whole) && is_digits(after) && after.len() == 3 && whole.len() <= 3 && whole != "0" {
            let shown = |number: String| format!("{number} {unit}").trim_end().to_owned();
            return Err(ParseError::TwoReadings {
                text: shown(number.to_owned()),
                decimal: shown(plain.replace(',', ".")),
                whole: shown(plain.replace(',', "")),
            });
        }
    }
    let value = plain.replacen(',', ".", 1).parse::<f64>().ok().filter(|value| value.is_finite());
    value.ok_or_else(|| ParseError::NotANumber { text: number.to_owned(), example })
}

const KILOGRAM_PER_POUND: f64 = 0.453_592_37;
const METRE_PER_INCH: f64 = 0.025_4;
const CUBIC_METRE_PER_US_GALLON: f64 = 0.003_785_411_784;

macro_rules! from_str {
    ($($name:ident, $quantity:literal, $example:literal, $usual:expr, [$($units:expr),* $(,)?];)*) => {$(
        impl Measured for $name {
            const USUAL: [&'static str; 2] = $usual;

            fn read(text: &str, bare: Bare) -> Result<Self, ParseError> {
                const UNITS: Units =
                    Units { quantity: $quantity, example: $example, usual: $usual, names: &[$($units),*] };
                UNITS.parse(text, bare).map(Self::new)
            }
        }

        impl FromStr for $name {
            type Err = ParseError;
            fn from_str(text: &str) -> Result<Self, ParseError> {
                Self::read(text, Bare::Refused)
            }
        }
    )*};
}

from_str! {
    Kilogram, "mass", "12 kg", ["kg", "lb"], [
        ("kg", 1.0, 0.0), ("g", 1e-3, 0.0), ("lb", KILOGRAM_PER_POUND, 0.0), ("lbs", KILOGRAM_PER_POUND, 0.0),
        ("oz", KILOGRAM_PER_POUND / 16.0, 0.0),
    ];
    Metre, "length", "50 mm", ["cm", "in"], [
        ("m", 1.0, 0.0), ("cm", 1e-2, 0.0), ("mm", 1e-3, 0.0), ("km", 1e3, 0.0), ("in", METRE_PER_INCH, 0.0),
        ("ft", 12.0 * METRE_PER_INCH, 0.0),
    ];
    SquareMetre, "area", "4 cm2", ["cm2", "in2"], [
        ("m2", 1.0, 0.0), ("dm2", 1e-2, 0.0), ("cm2", 1e-4, 0.0), ("mm2", 1e-6, 0.0),
        ("in2", METRE_PER_INCH * METRE_PER_INCH, 0.0),
    ];
    CubicMetre, "volume", "4 L", ["L", "gal"], [
        ("L", 1e-3, 0.0), ("ml", 1e-6, 0.0), ("m3", 1.0, 0.0), ("gal", CUBIC_METRE_PER_US_GALLON, 0.0),
        ("qt", CUBIC_METRE_PER_US_GALLON / 4.0, 0.0),
    ];
    Kelvin, "temperature", "-9 C", ["C", "F"], [
        ("C", 1.0, 273.15), ("°C", 1.0, 273.15), ("F", 1.0 / 1.8, 273.15 - 32.0 / 1.8),
        ("°F", 1.0 / 1.8, 273.15 - 32.0 / 1.8), ("K", 1.0, 0.0),
    ];
    MetrePerSecond, "speed", "3 m/s", ["m/s", "mph"], [
        ("m/s", 1.0, 0.0), ("km/h", 1.0 / 3.6, 0.0), ("mph", 0.447_04, 0.0), ("kn", 1.852 / 3.6, 0.0),
    ];
    Degree, "angle", "180 deg", ["deg", "deg"], [("deg", 1.0, 0.0), ("°", 1.0, 0.0)];
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn metric_and_us_units_mean_the_same_thing() {
        let close = |a: f64, b: f64| assert!((a - b).abs() < 1e-9 * b.abs().max(1.0), "{a} {b}");
        close("26 lb".parse::<Kilogram>().unwrap().get(), 11.793_401_62);
        close("2in".parse::<Metre>().unwrap().get(), 0.050_8);
        close("50 mm".parse::<Metre>().unwrap().get(), 0.05);
        close("-40 F".parse::<Kelvin>().unwrap().celsius(), -40.0);
        close("1 gal".parse::<CubicMetre>().unwrap().get(), 0.003_785_411_784);
    }

    #[test]
    fn a_comma_is_a_decimal_one_unless_it_may_part_thousands() {
        assert_eq!("1,5 kg".parse(), Ok(Kilogram::new(1.5)));
        assert_eq!(number("−3,25"), Ok(-3.25));
        assert_eq!(number("0,125"), Ok(0.125));
        assert_eq!(number("1,2345"), Ok(1.2345));
        let two = "1,500 kg".parse::<Kilogram>().unwrap_err().to_string();
        assert!(two.contains("\"1.500 kg\"") && two.contains("\"1500 kg\""), "{two}");
        for text in ["1,2,3", "1,234.5", ",", "1 2", ""] {
            assert!(number(text).is_err(), "{text}");
        }
    }

    #[test]
    fn a_bare_number_is_in_the_units_of_the_keeper_or_refused_with_both_readings() {
        for system in [System::Metric, System::Us] {
            let read = |unit: &str| format!("14 {unit}");
            assert_eq!(Kilogram::read("14", Bare::In(system)), read(Kilogram::usual(system)).parse());
            assert_eq!(Kelvin::read("14", Bare::In(system)), read(Kelvin::usual(system)).parse());
            assert_eq!(Metre::read("14 mm", Bare::In(system)), "14 mm".parse());
        }
        let refused = "14".parse::<Kelvin>().unwrap_err().to_string();
        assert!(refused.contains("\"14 C\" or \"14 F\""), "{refused}");
    }

    #[test]
    fn every_fault_says_what_would_be_right() {
        for text in ["", "kg", "12", "12 m", "nan kg", "inf kg", "1,5,2 kg", "--3 kg", "1e999 kg"] {
            let message = text.parse::<Kilogram>().unwrap_err().to_string();
            assert!(message.contains("12 kg"), "{text}: {message}");
        }
    }
}
