//! Saturation vapour pressure as ISO 13788 writes it: only for cases of that standard.
//!
//! Everything else uses [`crate::saturation`], from which this law differs by 0.5 % at -20 °C and 1.9 % at -40 °C.

use snowhum_units::Same;
use snowhum_units::{Kelvin, Pascal};

const P0_PA: f64 = 610.5;

/// Saturation vapour pressure.
///
/// θ ≥ 0: p_sat = 610.5 exp(17.269 θ / (237.3 + θ)); θ < 0: p_sat = 610.5 exp(21.875 θ / (265.5 + θ)), θ in °C
///
/// Valid for building conditions, about -30 to 50 °C.
///
/// Source: ISO 13788:2012 annex E.
///
/// ```
/// use snowhum_physics::saturation_13788::saturation;
/// use snowhum_units::Kelvin;
/// assert!((saturation(Kelvin::from_celsius(20.0)).get() - 2336.9511).abs() < 1e-4);
/// ```
#[must_use]
pub fn saturation(t: Kelvin) -> Pascal {
    let theta_c = t.celsius();
    let exponent =
        if theta_c < 0.0 { 21.875 * theta_c / (265.5 + theta_c) } else { 17.269 * theta_c / (237.3 + theta_c) };
    Pascal::new(P0_PA * exponent.same_exp())
}

/// The temperature at which a vapour pressure saturates, the inverse of [`saturation`]; `None` without vapour.
///
/// p ≥ 610.5: θ = 237.3 ln(p/610.5) / (17.269 - ln(p/610.5)); else θ = 265.5 ln(p/610.5) / (21.875 - ln(p/610.5))
///
/// Source: ISO 13788:2012 annex E.
///
/// ```
/// use snowhum_physics::saturation_13788::{dew_point, saturation};
/// use snowhum_units::Kelvin;
/// let t = Kelvin::from_celsius(-7.0);
/// assert!((dew_point(saturation(t)).unwrap() - t).get().abs() < 1e-9);
/// ```
#[must_use]
pub fn dew_point(vapour: Pascal) -> Option<Kelvin> {
    if vapour.get() <= 0.0 || !vapour.get().is_finite() {
        return None;
    }
    let ln_ratio = (vapour.get() / P0_PA).same_ln();
    let theta_c =
        if ln_ratio < 0.0 { 265.5 * ln_ratio / (21.875 - ln_ratio) } else { 237.3 * ln_ratio / (17.269 - ln_ratio) };
    Some(Kelvin::from_celsius(theta_c))
}
