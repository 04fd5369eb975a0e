//! The quantities, each a thin wrapper round an `f64` in its SI unit.

use serde::{Deserialize, Serialize};
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

macro_rules! quantity {
    ($($(#[$doc:meta])* $name:ident($symbol:literal);)*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(f64);

        impl $name {
            /// Symbol of the SI unit the number is held in.
            pub const SYMBOL: &'static str = $symbol;
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0);

            #[doc = concat!("A value in ", $symbol, ".")]
            #[must_use]
            pub const fn new(value: f64) -> Self {
                Self(value)
            }

            #[doc = concat!("The number in ", $symbol, ".")]
            #[must_use]
            pub const fn get(self) -> f64 {
                self.0
            }

            /// The smaller of two.
            #[must_use]
            pub fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            /// The larger of two.
            #[must_use]
            pub fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl SubAssign for $name {
            fn sub_assign(&mut self, other: Self) {
                self.0 -= other.0;
            }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }
        impl Mul<$name> for f64 {
            type Output = $name;
            fn mul(self, quantity: $name) -> $name {
                $name(self * quantity.0)
            }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }
        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                Self(items.map(|item| item.0).sum())
            }
        }
        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                std::fmt::Display::fmt(&self.0, f)?;
                write!(f, " {}", $symbol)
            }
        }
    )*};
}

quantity! {
    /// Mass.
    Kilogram("kg");
    /// Length.
    Metre("m");
    /// Area.
    SquareMetre("m²");
    /// Volume.
    CubicMetre("m³");
    /// Time span.
    Second("s");
    /// Energy.
    Joule("J");
    /// Power, heat flow.
    Watt("W");
    /// Heat flow a kelvin: conductance of a part or of a whole hive.
    WattPerKelvin("W/K");
    /// Heat capacity of a body.
    JoulePerKelvin("J/K");
    /// Heat flow density, irradiance.
    WattPerSquareMetre("W/m²");
    /// Heat transfer coefficient, U-value.
    WattPerSquareMetreKelvin("W/(m² K)");
    /// Thermal resistance of a layer.
    SquareMetreKelvinPerWatt("m² K/W");
    /// Thermal conductivity.
    WattPerMetreKelvin("W/(m K)");
    /// Linear thermal transmittance of an edge.
    LinearTransmittance("W/(m K)");
    /// Specific heat capacity.
    JoulePerKilogramKelvin("J/(kg K)");
    /// Specific energy, latent heat, enthalpy.
    JoulePerKilogram("J/kg");
    /// Density.
    KilogramPerCubicMetre("kg/m³");
    /// Mass flow.
    KilogramPerSecond("kg/s");
    /// Mass flow density.
    KilogramPerSquareMetreSecond("kg/(m² s)");
    /// Volume flow.
    CubicMetrePerSecond("m³/s");
    /// Diffusivity.
    SquareMetrePerSecond("m²/s");
    /// Speed.
    MetrePerSecond("m/s");
    /// Pressure.
    Pascal("Pa");
    /// Temperature difference.
    KelvinDifference("K");
    /// Kilogram of water vapour a kilogram of dry air.
    HumidityRatio("kg/kg");
    /// A part of one: relative humidity, cloud cover, albedo, solids.
    Fraction("of 1");
    /// Angle; latitude north and longitude east positive, azimuth clockwise from north.
    Degree("°");
}

macro_rules! product {
    ($($a:ident * $b:ident = $c:ident;)*) => {$(
        impl Mul<$b> for $a {
            type Output = $c;
            fn mul(self, other: $b) -> $c {
                $c(self.0 * other.0)
            }
        }
        impl Div<$b> for $c {
            type Output = $a;
            fn div(self, other: $b) -> $a {
                $a(self.0 / other.0)
            }
        }
    )*};
}

product! {
    SquareMetre * Metre = CubicMetre;
    Watt * Second = Joule;
    WattPerKelvin * KelvinDifference = Watt;
    WattPerSquareMetreKelvin * SquareMetre = WattPerKelvin;
    WattPerSquareMetre * SquareMetre = Watt;
    KilogramPerCubicMetre * CubicMetre = Kilogram;
    KilogramPerSecond * Second = Kilogram;
    CubicMetrePerSecond * KilogramPerCubicMetre = KilogramPerSecond;
    JoulePerKilogramKelvin * Kilogram = JoulePerKelvin;
    JoulePerKilogram * Kilogram = Joule;
    LinearTransmittance * Metre = WattPerKelvin;
}

impl Mul for Metre {
    type Output = SquareMetre;
    fn mul(self, other: Self) -> SquareMetre {
        SquareMetre(self.0 * other.0)
    }
}

impl Degree {
    /// The angle in radians.
    #[must_use]
    pub fn radians(self) -> f64 {
        self.0.to_radians()
    }
}

impl SquareMetreKelvinPerWatt {
    /// The U-value of a build-up with this total resistance.
    #[must_use]
    pub fn transmittance(self) -> WattPerSquareMetreKelvin {
        WattPerSquareMetreKelvin(1.0 / self.0)
    }
}
