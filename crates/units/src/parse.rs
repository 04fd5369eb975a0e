//! Reading what a keeper writes: a number and a unit.

use crate::{CubicMetre, Degree, Kelvin, Kilogram, Metre, MetrePerSecond, SquareMetre};
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
    /// The number stands alone.
    #[error("\"{text}\" has no unit; write one of {units}, such as \"{example}\"")]
    NoUnit {
        /// What was written.
        text: String,
        /// The units that are understood.
        units: String,
        /// A text that would be right.
        example: &'static str,
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

/// The units of one quantity: name, and the SI value of one of them (scale, offset).
struct Units {
    quantity: &'static str,
    example: &'static str,
    names: &'static [(&'static str, f64, f64)],
}

impl Units {
    fn parse(&self, text: &str) -> Result<f64, ParseError> {
        let text = text.trim();
        if text.is_empty() {
            return Err(ParseError::Empty { example: self.example });
        }
        let (number, unit) = split_number(text);
        let value = number.parse::<f64>().ok().filter(|value| value.is_finite());
        let Some(value) = value else {
            return Err(ParseError::NotANumber { text: text.to_owned(), example: self.example });
        };
        if unit.is_empty() {
            return Err(ParseError::NoUnit { text: text.to_owned(), units: self.list(), example: self.example });
        }
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

    fn list(&self) -> String {
        let names: Vec<&str> = self.names.iter().map(|(name, ..)| *name).collect();
        names.join(", ")
    }
}

/// Splits `"12.5kg"` into `"12.5"` and `"kg"`; a decimal comma is left to fail, since it is ambiguous.
fn split_number(text: &str) -> (&str, &str) {
    let end = text
        .char_indices()
        .find(|&(at, c)| !(c.is_ascii_digit() || c == '.' || ((c == '-' || c == '+') && at == 0)))
        .map_or(text.len(), |(at, _)| at);
    (&text[..end], text[end..].trim())
}

const KILOGRAM_PER_POUND: f64 = 0.453_592_37;
const METRE_PER_INCH: f64 = 0.025_4;
const CUBIC_METRE_PER_US_GALLON: f64 = 0.003_785_411_784;

macro_rules! from_str {
    ($($name:ident, $quantity:literal, $example:literal, [$($units:expr),* $(,)?];)*) => {$(
        impl FromStr for $name {
            type Err = ParseError;
            fn from_str(text: &str) -> Result<Self, ParseError> {
                const UNITS: Units = Units { quantity: $quantity, example: $example, names: &[$($units),*] };
                UNITS.parse(text).map(Self::new)
            }
        }
    )*};
}

from_str! {
    Kilogram, "mass", "12 kg", [
        ("kg", 1.0, 0.0), ("g", 1e-3, 0.0), ("lb", KILOGRAM_PER_POUND, 0.0), ("lbs", KILOGRAM_PER_POUND, 0.0),
        ("oz", KILOGRAM_PER_POUND / 16.0, 0.0),
    ];
    Metre, "length", "50 mm", [
        ("m", 1.0, 0.0), ("cm", 1e-2, 0.0), ("mm", 1e-3, 0.0), ("km", 1e3, 0.0), ("in", METRE_PER_INCH, 0.0),
        ("ft", 12.0 * METRE_PER_INCH, 0.0),
    ];
    SquareMetre, "area", "4 cm2", [
        ("m2", 1.0, 0.0), ("dm2", 1e-2, 0.0), ("cm2", 1e-4, 0.0), ("mm2", 1e-6, 0.0),
        ("in2", METRE_PER_INCH * METRE_PER_INCH, 0.0),
    ];
    CubicMetre, "volume", "4 L", [
        ("L", 1e-3, 0.0), ("ml", 1e-6, 0.0), ("m3", 1.0, 0.0), ("gal", CUBIC_METRE_PER_US_GALLON, 0.0),
        ("qt", CUBIC_METRE_PER_US_GALLON / 4.0, 0.0),
    ];
    Kelvin, "temperature", "-9 C", [
        ("C", 1.0, 273.15), ("°C", 1.0, 273.15), ("F", 1.0 / 1.8, 273.15 - 32.0 / 1.8),
        ("°F", 1.0 / 1.8, 273.15 - 32.0 / 1.8), ("K", 1.0, 0.0),
    ];
    MetrePerSecond, "speed", "3 m/s", [
        ("m/s", 1.0, 0.0), ("km/h", 1.0 / 3.6, 0.0), ("mph", 0.447_04, 0.0), ("kn", 1.852 / 3.6, 0.0),
    ];
    Degree, "angle", "180 deg", [("deg", 1.0, 0.0), ("°", 1.0, 0.0)];
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
    fn every_fault_says_what_would_be_right() {
        for text in ["", "kg", "12", "12 m", "nan kg", "inf kg", "1,5 kg", "--3 kg", "1e999 kg"] {
            let message = text.parse::<Kilogram>().unwrap_err().to_string();
            assert!(message.contains("12 kg"), "{text}: {message}");
        }
    }
}
