//! Direct and diffuse light, from the global.

use snowhum_units::Same;
use snowhum_units::{Degree, WattPerSquareMetre};

/// Irradiance with its parts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Irradiance {
    /// On the level, from the whole sky: GHI.
    pub global: WattPerSquareMetre,
    /// Across the sun's rays: DNI.
    pub direct_normal: WattPerSquareMetre,
    /// On the level, from the sky without the sun: DHI.
    pub diffuse: WattPerSquareMetre,
}

/// Splits the global irradiance on the level into direct and diffuse.
///
/// k_t = GHI / (I_0n cos z); k_d = 1 - 0.09 k_t up to 0.22;
/// 0.9511 - 0.1604 k_t + 4.388 k_t² - 16.638 k_t³ + 12.336 k_t⁴ up to 0.8; 0.165 above; DHI = k_d GHI
///
/// Valid for hourly values. With the sun lower than 3° (or down) all is diffuse, since the division by cos z has no
/// meaning there;
/// cos z in k_t is at least 0.065 and k_t at most 1 for the same reason.
///
/// Source: Erbs, Klein and Duffie 1982, Solar Energy 28:293 (coefficients from memory, checked against pvlib 0.16.1).
///
/// ```
/// use snowhum_physics::sun::split;
/// use snowhum_units::{Degree, WattPerSquareMetre};
/// let ghi = WattPerSquareMetre::new(133.52837);
/// let parts = split(ghi, Degree::new(75.26952), WattPerSquareMetre::new(1374.18958));
/// assert!((parts.diffuse.get() - 115.52568).abs() < 1e-3);
/// assert!((parts.direct_normal.get() - 70.80075).abs() < 1e-3);
/// ```
#[must_use]
pub fn split(global: WattPerSquareMetre, zenith: Degree, extraterrestrial_normal: WattPerSquareMetre) -> Irradiance {
    const LEAST_COS_Z: f64 = 0.065;
    const LOWEST_SUN_DEG: f64 = 87.0;
    let cos_z = zenith.radians().same_cos();
    if zenith.get() > LOWEST_SUN_DEG || global <= WattPerSquareMetre::ZERO {
        return Irradiance { global, direct_normal: WattPerSquareMetre::ZERO, diffuse: global };
    }
    let clearness = (global / (extraterrestrial_normal * cos_z.max(LEAST_COS_Z))).clamp(0.0, 1.0);
    let diffuse = global * diffuse_share(clearness);
    Irradiance { global, direct_normal: (global - diffuse) / cos_z, diffuse }
}

fn diffuse_share(kt: f64) -> f64 {
    if kt <= 0.22 {
        1.0 - 0.09 * kt
    } else if kt <= 0.8 {
        0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)))
    } else {
        0.165
    }
}
