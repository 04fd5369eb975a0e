//! Moist air: how much vapour it holds, what it weighs and carries, where it gives water up.
//!
//! Ideal-gas psychrometrics; the humidity ratio at saturation is 0.4 to 0.6 % below that of the real gas.

mod density;
mod dew_point;
mod diffusivity;
mod enthalpy;
mod humidity;
mod latent_heat;
pub mod specific_heat;
mod wet_bulb;

pub use density::{density, dry_density};
pub use dew_point::{dew_point_over_water, frost_or_dew_point};
pub use diffusivity::vapour_diffusivity;
pub use enthalpy::enthalpy;
pub use humidity::{
    humidity_ratio, humidity_ratio_at, relative_humidity, vapour_density, vapour_pressure, vapour_pressure_at,
};
pub use latent_heat::{FUSION, SUBLIMATION, evaporation};
pub use wet_bulb::wet_bulb;
