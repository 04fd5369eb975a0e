//! What cloud takes away.

use snowhum_units::Same;
use snowhum_units::{Fraction, WattPerSquareMetre};

/// Global irradiance on the level under a cloud cover.
///
/// GHI = GHI_clear (1 - 0.75 C^3.4), C the covered part of the sky
///
/// Valid for hourly means; a cover outside 0 to 1 is taken at the nearer end.
///
/// Source: Kasten and Czeplak 1980, Solar Energy 24:177 (from memory).
///
/// ```
/// use snowhum_physics::sun::under_cloud;
/// use snowhum_units::{Fraction, WattPerSquareMetre};
/// let clear = WattPerSquareMetre::new(200.0);
/// assert_eq!(under_cloud(clear, Fraction::new(1.0)).get(), 50.0);
/// assert_eq!(under_cloud(clear, Fraction::ZERO), clear);
/// ```
#[must_use]
pub fn under_cloud(clear: WattPerSquareMetre, cover: Fraction) -> WattPerSquareMetre {
    clear * (1.0 - 0.75 * cover.get().clamp(0.0, 1.0).same_powf(3.4))
}
