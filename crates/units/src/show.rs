//! Printing in the keeper's units.

use crate::{CubicMetre, Kelvin, Kilogram, Metre, MetrePerSecond};
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
    CubicMetre: "L" 1e3, "gal" 1.0 / 0.003_785_411_784;
    MetrePerSecond: "m/s" 1.0, "mph" 1.0 / 0.447_04;
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
        assert_eq!(Kelvin::from_celsius(-0.04).show(System::Metric, 1), "0.0 °C");
    }
}
