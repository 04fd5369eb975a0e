//! Printing in the keeper's units.

use crate::{
    CubicMetre, CubicMetrePerSecond, Kelvin, KelvinDifference, Kilogram, Metre, MetrePerSecond, SquareMetre,
    WattPerKelvin,
};
use serde::{Deserialize, Serialize};

/// The units a keeper reads.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum System {
    /// Kilograms, litres, millimetres, degrees Celsius.
    #[default]
    Metric,
    /// Pounds, US gallons, inches, degrees Fahrenheit.
    Us,
}

macro_rules! show {
    ($($name:ident: $metric:literal $metric_scale:expr, $us:literal $us_scale:expr;)*) => {$(
        impl $name {
            /// The value with its unit in the keeper's system, to `decimals` places.
            #[must_use]
            pub fn show(self, system: System, decimals: usize) -> String {
                let (unit, scale) = match system {
                    System::Metric => ($metric, $metric_scale),
                    System::Us => ($us, $us_scale),
                };
                format!("{:.decimals$} {unit}", unsigned_zero(self.get() * scale, decimals))
            }
        }
    )*};
}

show! {
    Kilogram: "kg" 1.0, "lb" 1.0 / 0.453_592_37;
    Metre: "mm" 1e3, "in" 1.0 / 0.025_4;
    SquareMetre: "cm²" 1e4, "sq in" 1.0 / 0.000_645_16;
    CubicMetre: "L" 1e3, "gal" 1.0 / 0.003_785_411_784;
    CubicMetrePerSecond: "L/s" 1e3, "cu ft/min" 2_118.88;
    // Btu of the International Table: NIST Special Publication 811.
    WattPerKelvin: "W/K" 1.0, "Btu/(h·°F)" 1.895_634;
    MetrePerSecond: "m/s" 1.0, "mph" 1.0 / 0.447_04;
}

impl Metre {
    /// A distance over land, in kilometres or miles.
    #[must_use]
    pub fn show_distance(self, system: System) -> String {
        let (unit, value) = match system {
            System::Metric => ("km", self.get() / 1e3),
            System::Us => ("mi", self.get() / 1_609.344),
        };
        format!("{value:.*} {unit}", usize::from(value < 10.0))
    }

    /// A height of the ground, in whole metres or feet.
    #[must_use]
    pub fn show_height(self, system: System) -> String {
        match system {
            System::Metric => format!("{:.0} m", self.get()),
            System::Us => format!("{:.0} ft", self.get() / 0.304_8),
        }
    }
}

impl KelvinDifference {
    /// Degrees of the keeper's system between two temperatures, to `decimals` places.
    #[must_use]
    pub fn show(self, system: System, decimals: usize) -> String {
        let (value, unit) = match system {
            System::Metric => (self.get(), "°C"),
            System::Us => (self.get() * 1.8, "°F"),
        };
        format!("{:.decimals$} {unit}", unsigned_zero(value, decimals))
    }
}

impl Kelvin {
    /// The temperature in degrees of the keeper's system, to `decimals` places.
    #[must_use]
    pub fn show(self, system: System, decimals: usize) -> String {
        let (value, unit) = match system {
            System::Metric => (self.celsius(), "°C"),
            System::Us => (self.fahrenheit(), "°F"),
        };
        format!("{:.decimals$} {unit}", unsigned_zero(value, decimals))
    }
}

/// Keeps "-0.0" from being printed.
fn unsigned_zero(value: f64, decimals: usize) -> f64 {
    let half_step = 0.5 * 10f64.powi(-(decimals as i32));
    if value.abs() < half_step { 0.0 } else { value }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_systems_print_the_same_amount() {
        let stores = Kilogram::new(11.793_401_62);
        assert_eq!(stores.show(System::Metric, 1), "11.8 kg");
        assert_eq!(stores.show(System::Us, 0), "26 lb");
        assert_eq!(KelvinDifference::new(-2.5).show(System::Us, 1), "-4.5 °F");
        assert_eq!(Metre::new(2_414.016).show_distance(System::Us), "1.5 mi");
        assert_eq!(Metre::new(61_400.0).show_distance(System::Metric), "61 km");
        assert_eq!(Metre::new(152.4).show_height(System::Us), "500 ft");
        assert_eq!(Kelvin::from_celsius(-0.04).show(System::Metric, 1), "0.0 °C");
    }
}
