//! Pressure of the wind on the sides of a hive.

use snowhum_units::Same;
use snowhum_units::{Degree, KilogramPerCubicMetre, MetrePerSecond, Pascal};

/// Pressure of wind that is stopped.
///
/// q = ½ ρ v²
///
/// Source: Bernoulli.
///
/// ```
/// use snowhum_physics::wind_pressure::dynamic;
/// use snowhum_units::{KilogramPerCubicMetre, MetrePerSecond};
/// let q = dynamic(KilogramPerCubicMetre::new(1.341369), MetrePerSecond::new(5.0));
/// assert!((q.get() - 16.7671).abs() < 1e-4);
/// ```
#[must_use]
pub fn dynamic(density: KilogramPerCubicMetre, wind: MetrePerSecond) -> Pascal {
    Pascal::new(0.5 * density.get() * wind.get().powi(2))
}

/// Pressure coefficient of a side whose outward direction makes this angle with where the wind comes from.
///
/// C_p = -0.125 + 0.45 cos α + 0.275 cos 2α: +0.6 to windward, -0.4 at the sides, -0.3 to leeward
///
/// Holds for a free-standing box. Windward and leeward from memory for low buildings; the sides and the curve are
/// judgement.
///
/// ```
/// use snowhum_physics::wind_pressure::coefficient;
/// use snowhum_units::Degree;
/// assert!((coefficient(Degree::new(0.0)) - 0.6).abs() < 1e-12);
/// assert!((coefficient(Degree::new(180.0)) + 0.3).abs() < 1e-12);
/// ```
#[must_use]
pub fn coefficient(angle: Degree) -> f64 {
    let alpha = angle.radians();
    -0.125 + 0.45 * alpha.same_cos() + 0.275 * (2.0 * alpha).same_cos()
}

/// Pressure on a side over that of still air: p = C_p ½ ρ v². See [`dynamic`] and [`coefficient`].
///
/// `facing` is where the side looks, `wind_from` where the wind comes from, both clockwise from north.
///
/// ```
/// use snowhum_physics::wind_pressure::on_side;
/// use snowhum_units::{Degree, KilogramPerCubicMetre, MetrePerSecond};
/// let (south, north) = (Degree::new(180.0), Degree::new(0.0));
/// let p = on_side(KilogramPerCubicMetre::new(1.3), MetrePerSecond::new(2.0), south, north);
/// assert!((p.get() + 0.78).abs() < 1e-9);
/// ```
#[must_use]
pub fn on_side(density: KilogramPerCubicMetre, wind: MetrePerSecond, facing: Degree, wind_from: Degree) -> Pascal {
    dynamic(density, wind) * coefficient(facing - wind_from)
}
