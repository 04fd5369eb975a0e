//! Specific heat capacities of air and water (ASHRAE Handbook Fundamentals 2017, chapter 1).

use snowhum_units::JoulePerKilogramKelvin;

/// Dry air at constant pressure, -50 to 60 °C.
pub const DRY_AIR: JoulePerKilogramKelvin = JoulePerKilogramKelvin::new(1006.0);

/// Water vapour at constant pressure.
pub const VAPOUR: JoulePerKilogramKelvin = JoulePerKilogramKelvin::new(1860.0);

/// Liquid water.
pub const WATER: JoulePerKilogramKelvin = JoulePerKilogramKelvin::new(4186.0);

/// Ice near 0 °C.
pub const ICE: JoulePerKilogramKelvin = JoulePerKilogramKelvin::new(2100.0);
