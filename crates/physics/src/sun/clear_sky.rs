//! Irradiance under a clear sky.

use snowhum_units::Same;
use snowhum_units::{Degree, WattPerSquareMetre};

/// Global irradiance on the level under a clear sky; nothing with the sun down.
///
/// GHI = 1098 cos z exp(-0.059 / cos z)
///
/// Valid for middle latitudes and average haze; with the sun 4 to 8° high it reads 30 to 60 % above the Ineichen
/// model at
/// turbidity 3. Reference values use the zenith angle with refraction.
///
/// Source: Haurwitz 1945, Journal of Meteorology 2:154 (coefficients from memory, checked against pvlib 0.16.1).
///
/// ```
/// use snowhum_physics::sun::clear_sky;
/// use snowhum_units::Degree;
/// assert!((clear_sky(Degree::new(75.20482)).get() - 222.54728).abs() < 1e-3);
/// assert_eq!(clear_sky(Degree::new(95.0)).get(), 0.0);
/// ```
#[must_use]
pub fn clear_sky(zenith: Degree) -> WattPerSquareMetre {
    let cos_z = zenith.radians().same_cos();
    if cos_z <= 0.0 {
        return WattPerSquareMetre::ZERO;
    }
    WattPerSquareMetre::new(1098.0 * cos_z * (-0.059 / cos_z).same_exp())
}
