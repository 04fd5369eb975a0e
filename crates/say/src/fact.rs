//! What a message tells of.

use jiff::civil::Date;
use snowhum_units::{
    CubicMetre, CubicMetrePerSecond, Kelvin, KelvinDifference, Kilogram, Metre, MetrePerSecond, SquareMetre,
    SquareMetreKelvinPerWatt, WattPerKelvin,
};

use crate::Message;

/// A fact of a message.
#[derive(Debug, Clone, PartialEq)]
pub enum Fact {
    /// What is in words already, or the keeper's own.
    Said(Box<Message>),
    /// Several of the same kind.
    List(Vec<Message>),
    /// A number without a unit.
    Number(f64),
    /// Which case of a selection.
    Case(&'static str),
    /// A day.
    Day(Date),
    /// A mass.
    Mass(Kilogram),
    /// A length.
    Length(Metre),
    /// An area.
    Area(SquareMetre),
    /// A volume.
    Volume(CubicMetre),
    /// Air through an opening.
    Flow(CubicMetrePerSecond),
    /// A speed.
    Speed(MetrePerSecond),
    /// A temperature.
    Temperature(Kelvin),
    /// A difference of temperatures.
    Warmer(KelvinDifference),
    /// A layer's thermal resistance.
    Resistance(SquareMetreKelvinPerWatt),
    /// Heat that goes out for each degree.
    Loss(WattPerKelvin),
}

/// A number without a unit, of any width.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Number(pub f64);

macro_rules! numbers {
    ($($kind:ty)*) => {$(
        impl From<$kind> for Number {
            fn from(number: $kind) -> Self {
                Self(number as f64)
            }
        }
    )*};
}
numbers!(f64 f32 usize u64 u32 u16 u8 i64 i32 i16 i8);

macro_rules! facts {
    ($($kind:ty: $fact:ident;)*) => {$(
        impl From<$kind> for Fact {
            fn from(of: $kind) -> Self {
                Self::$fact(of)
            }
        }
    )*};
}
facts! {
    Vec<Message>: List;
    &'static str: Case;
    Date: Day;
    Kilogram: Mass;
    Metre: Length;
    SquareMetre: Area;
    CubicMetre: Volume;
    MetrePerSecond: Speed;
    Kelvin: Temperature;
    KelvinDifference: Warmer;
    SquareMetreKelvinPerWatt: Resistance;
    CubicMetrePerSecond: Flow;
    WattPerKelvin: Loss;
}

impl From<Message> for Fact {
    fn from(message: Message) -> Self {
        Self::Said(Box::new(message))
    }
}

impl From<Number> for Fact {
    fn from(number: Number) -> Self {
        Self::Number(number.0)
    }
}

impl From<bool> for Fact {
    fn from(is: bool) -> Self {
        Self::Case(if is { "yes" } else { "no" })
    }
}

impl Fact {
    /// What it holds that is said.
    pub(crate) fn messages(&self) -> &[Message] {
        match self {
            Self::Said(message) => std::slice::from_ref(message),
            Self::List(messages) => messages,
            _ => &[],
        }
    }
}
