//! How warm an inner face stays, and how warm it must be against mould.

use crate::saturation_13788;
use snowhum_units::{Fraction, Kelvin, Pascal, SquareMetreKelvinPerWatt};

/// Temperature factor of an inner face: 0 as cold as outdoors, 1 as warm as the inside air.
///
/// f_Rsi = (θ_si - θ_e) / (θ_i - θ_e) = 1 - R_si / R_tot, where R_tot is taken with its usual inner film
///
/// Valid for one-dimensional heat flow. Source: ISO 13788:2012; R_si 0.25 is its film for mould on opaque parts.
///
/// ```
/// use snowhum_physics::temperature_factor::temperature_factor;
/// use snowhum_units::SquareMetreKelvinPerWatt as R;
/// assert!((temperature_factor(R::new(0.25), R::new(1.24426738)).get() - 0.79907855).abs() < 1e-8);
/// ```
#[must_use]
pub fn temperature_factor(inner_film: SquareMetreKelvinPerWatt, total: SquareMetreKelvinPerWatt) -> Fraction {
    Fraction::new(1.0 - inner_film / total)
}

/// The least temperature factor that keeps the relative humidity at the face at or below a limit; `None` without vapour
/// or without a temperature difference.
///
/// p_sat(θ_si,min) = p_i / φ_si; f_Rsi,min = (θ_si,min - θ_e) / (θ_i - θ_e)
///
/// Source: ISO 13788:2012 with its own saturation formula; its limit against mould is 0.8.
///
/// ```
/// use snowhum_physics::temperature_factor::least_temperature_factor;
/// use snowhum_units::{Fraction, Kelvin, Pascal};
/// let (inside, outside) = (Kelvin::from_celsius(20.0), Kelvin::from_celsius(5.0));
/// let vapour = Pascal::new(0.55 * 2337.0);
/// let least = least_temperature_factor(inside, vapour, outside, Fraction::new(0.8)).unwrap();
/// assert!((least.get() - 0.60574531).abs() < 1e-8);
/// ```
#[must_use]
pub fn least_temperature_factor(inside: Kelvin, vapour: Pascal, outside: Kelvin, limit: Fraction) -> Option<Fraction> {
    let face = saturation_13788::dew_point(vapour / limit.get())?;
    let whole_k = (inside - outside).get();
    (whole_k != 0.0).then(|| Fraction::new((face - outside).get() / whole_k))
}
