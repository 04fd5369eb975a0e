//! Vapour going to a wet or frosted surface, or coming from it.

use crate::moist_air::specific_heat::DRY_AIR;
use snowhum_units::{HumidityRatio, KilogramPerSquareMetreSecond, WattPerSquareMetreKelvin};

/// Mass flow density of vapour from air to a surface; positive settles, negative dries.
///
/// g = h_c / c_p (W_air - W_s), W_s the saturated ratio at the surface temperature (over ice in frost)
///
/// Valid for a small humidity ratio and Lewis factor 1 (0.9 for still air: within 10 %). A negative flow needs water
/// to be there.
///
/// Source: Lewis relation, as in ASHRAE Handbook Fundamentals, chapter Mass Transfer (from memory).
///
/// ```
/// use snowhum_physics::wet_surface::vapour_flow;
/// use snowhum_units::{HumidityRatio, WattPerSquareMetreKelvin};
/// let g = vapour_flow(WattPerSquareMetreKelvin::new(5.0), HumidityRatio::new(0.003), HumidityRatio::new(0.002));
/// assert!((g.get() - 5.0 / 1006.0 * 0.001).abs() < 1e-12);
/// ```
#[must_use]
pub fn vapour_flow(
    convection: WattPerSquareMetreKelvin,
    air: HumidityRatio,
    surface: HumidityRatio,
) -> KilogramPerSquareMetreSecond {
    KilogramPerSquareMetreSecond::new(convection.get() / DRY_AIR.get() * (air - surface).get())
}
