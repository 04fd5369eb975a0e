//! Snow on the roof and against the walls: how it falls, insulates and goes.

mod conductivity;
mod fresh_density;
mod melt;
mod rain_or_snow;

pub use conductivity::{conductivity, conductivity_quadratic};
pub use fresh_density::fresh_density;
pub use melt::melt;
pub use rain_or_snow::snow_share;
