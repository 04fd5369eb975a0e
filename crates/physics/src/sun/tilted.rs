//! Light on a face of any slope.

use super::{Irradiance, SunPosition};
use snowhum_units::Same;
use snowhum_units::{Degree, Fraction, WattPerSquareMetre};

/// A face in the open.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Face {
    /// Slope: 0° a flat roof, 90° a wall.
    pub tilt: Degree,
    /// Where it looks, clockwise from north.
    pub azimuth: Degree,
    /// Reflectance of the ground before it: 0.2 grass, 0.6 to 0.8 snow (common practice).
    pub albedo: Fraction,
}

/// Irradiance on a face by where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnFace {
    /// From the sun.
    pub direct: WattPerSquareMetre,
    /// From the sky.
    pub sky: WattPerSquareMetre,
    /// From the ground.
    pub ground: WattPerSquareMetre,
}

impl OnFace {
    /// All of it.
    #[must_use]
    pub fn total(&self) -> WattPerSquareMetre {
        self.direct + self.sky + self.ground
    }
}

/// Irradiance on a face under an evenly bright sky.
///
/// direct DNI max(0, cos θ), cos θ = cos z cos β + sin z sin β cos(A - A_face);
/// sky DHI (1 + cos β)/2; ground GHI albedo (1 - cos β)/2
///
/// Valid for hourly values; under a clear sky an even sky reads low toward the sun. Shade is the caller's.
///
/// Source: Liu and Jordan 1963, Solar Energy 7:53.
///
/// ```
/// use snowhum_physics::sun::{Face, Irradiance, SunPosition, on_face};
/// use snowhum_units::{Degree, Fraction, WattPerSquareMetre as W};
/// let roof = Face { tilt: Degree::new(0.0), azimuth: Degree::new(180.0), albedo: Fraction::new(0.6) };
/// let sun = SunPosition { zenith: Degree::new(60.0), azimuth: Degree::new(150.0) };
/// let light = Irradiance { global: W::new(150.0), direct_normal: W::new(100.0), diffuse: W::new(100.0) };
/// assert!((on_face(light, sun, roof).total().get() - 150.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn on_face(light: Irradiance, sun: SunPosition, face: Face) -> OnFace {
    let (sin_z, cos_z) = sun.zenith.radians().same_sin_cos();
    let (sin_tilt, cos_tilt) = face.tilt.radians().same_sin_cos();
    let turned = (sun.azimuth - face.azimuth).radians();
    let cos_incidence = cos_z * cos_tilt + sin_z * sin_tilt * turned.same_cos();
    OnFace {
        direct: light.direct_normal * cos_incidence.max(0.0),
        sky: light.diffuse * (0.5 * (1.0 + cos_tilt)),
        ground: light.global * (face.albedo.get() * 0.5 * (1.0 - cos_tilt)),
    }
}
