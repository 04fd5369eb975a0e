//! Exchange through one opening, warm air out over cold air in.

use crate::GRAVITY;
use snowhum_units::{CubicMetrePerSecond, Fraction, Kelvin, KelvinDifference, Metre, SquareMetre};

/// Exchange of air through one upright opening by a temperature difference.
///
/// Q = (C_D / 3) A sqrt(g h |T_i - T_o| / T_m), h the height of the opening, T_m the mean temperature
///
/// Valid without wind and without another opening. Source: hydrostatics with the neutral level in the middle.
///
/// ```
/// use snowhum_physics::two_way::exchange;
/// use snowhum_units::{Fraction, Kelvin, Metre, SquareMetre};
/// let slot = SquareMetre::new(0.3 * 0.02);
/// let (inside, outside) = (Kelvin::from_celsius(10.0), Kelvin::from_celsius(-10.0));
/// let q = exchange(slot, Metre::new(0.02), Fraction::new(0.6), inside, outside);
/// assert!((q.get() - 1.43804e-4).abs() < 1e-9);
/// ```
#[must_use]
pub fn exchange(
    area: SquareMetre,
    height: Metre,
    discharge: Fraction,
    inside: Kelvin,
    outside: Kelvin,
) -> CubicMetrePerSecond {
    let mean_k = 0.5 * (inside.get() + outside.get());
    let difference_k = (inside - outside).get().abs();
    let speed_m_s = (GRAVITY * height.get() * difference_k / mean_k).sqrt();
    CubicMetrePerSecond::new(discharge.get() / 3.0 * area.get() * speed_m_s)
}

/// Discharge coefficient of an opening with flow both ways.
///
/// C_D = 0.40 + 0.0045 |T_i - T_o|
///
/// Stated for doors and windows; a slot in a hive is far smaller. Source: ASHRAE Handbook Fundamentals 1997, chapter
/// 25, equation 38.
///
/// ```
/// use snowhum_physics::two_way::discharge;
/// use snowhum_units::KelvinDifference;
/// assert!((discharge(KelvinDifference::new(20.0)).get() - 0.49).abs() < 1e-12);
/// ```
#[must_use]
pub fn discharge(difference: KelvinDifference) -> Fraction {
    Fraction::new(0.40 + 0.0045 * difference.get().abs())
}
