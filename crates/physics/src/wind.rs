//! Wind at the height of a hive, from the wind at 10 m.

use snowhum_figures::wind as figures;
use snowhum_units::Same;
use snowhum_units::{Fraction, Metre, MetrePerSecond};

/// Roughness length of open farmland.
pub const OPEN_COUNTRY: Metre = Metre::new(figures::OPEN_COUNTRY);

/// Part of the open-country wind that reaches hives on an open field, shore or ridge.
pub const SHELTER_OPEN: Fraction = Fraction::new(1.0);

/// Part of it behind a hedge, fence or building on the windy side.
pub const SHELTER_WINDBREAK: Fraction = Fraction::new(figures::SHELTER_WINDBREAK);

/// Part of it within trees or a walled yard.
pub const SHELTER_ENCLOSED: Fraction = Fraction::new(figures::SHELTER_ENCLOSED);

/// Wind speed at a height near the ground.
///
/// v(z) = s v_10 ln(z/z_0) / ln(10/z_0), s the shelter; no wind at or below z_0
///
/// Valid over even ground of roughness z_0 below 10 m in neutral air; close to obstacles the shelter factor is all
/// there is.
///
/// Source: logarithmic wind profile (from memory).
///
/// ```
/// use snowhum_physics::wind::{OPEN_COUNTRY, SHELTER_WINDBREAK, at_height};
/// use snowhum_units::{Metre, MetrePerSecond};
/// let at_hive = at_height(MetrePerSecond::new(5.0), Metre::new(0.5), OPEN_COUNTRY, SHELTER_WINDBREAK);
/// assert!((at_hive.get() - 1.2108).abs() < 1e-4);
/// ```
#[must_use]
pub fn at_height(at_10_m: MetrePerSecond, height: Metre, roughness: Metre, shelter: Fraction) -> MetrePerSecond {
    if height <= roughness {
        return MetrePerSecond::ZERO;
    }
    let profile = (height / roughness).same_ln() / (Metre::new(10.0) / roughness).same_ln();
    at_10_m * (profile * shelter.get())
}
