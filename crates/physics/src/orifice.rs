//! Flow through an opening by a pressure difference.

use snowhum_units::{CubicMetrePerSecond, Fraction, KilogramPerCubicMetre, KilogramPerSecond, Pascal, SquareMetre};

/// Discharge coefficient of a sharp-edged hole (0.61 from memory; 0.65 to 0.70 are in use for stack flow).
pub const SHARP_EDGED: Fraction = Fraction::new(0.61);

/// Mass flow through an opening, with the sign of the pressure difference.
///
/// m = C_D A sqrt(2 ρ |Δp|) sign(Δp), ρ the density of the air that flows in (on the side of higher pressure)
///
/// Valid for turbulent flow through short openings; long narrow cracks pass less at small pressures.
///
/// Source: Bernoulli; ASHRAE Handbook Fundamentals, chapter Ventilation and Infiltration.
///
/// ```
/// use snowhum_physics::orifice::{SHARP_EDGED, mass_flow};
/// use snowhum_units::{KilogramPerCubicMetre, Pascal, SquareMetre};
/// let m = mass_flow(SquareMetre::new(1e-4), SHARP_EDGED, Pascal::new(-1.0), KilogramPerCubicMetre::new(1.3));
/// assert!((m.get() + 9.836e-5).abs() < 1e-8);
/// ```
#[must_use]
pub fn mass_flow(
    area: SquareMetre,
    discharge: Fraction,
    difference: Pascal,
    upstream: KilogramPerCubicMetre,
) -> KilogramPerSecond {
    let dp_pa = difference.get();
    let m = discharge.get() * area.get() * (2.0 * upstream.get() * dp_pa.abs()).sqrt();
    KilogramPerSecond::new(m.copysign(dp_pa))
}

/// Volume flow through an opening, of air as it is upstream: Q = m / ρ. See [`mass_flow`].
///
/// ```
/// use snowhum_physics::orifice::{SHARP_EDGED, volume_flow};
/// use snowhum_units::{KilogramPerCubicMetre, Pascal, SquareMetre};
/// let q = volume_flow(SquareMetre::new(1e-4), SHARP_EDGED, Pascal::new(4.0), KilogramPerCubicMetre::new(1.341369));
/// assert!((q.get() - 1.4897067e-4).abs() < 1e-10);
/// ```
#[must_use]
pub fn volume_flow(
    area: SquareMetre,
    discharge: Fraction,
    difference: Pascal,
    upstream: KilogramPerCubicMetre,
) -> CubicMetrePerSecond {
    CubicMetrePerSecond::new(mass_flow(area, discharge, difference, upstream) / KilogramPerSecond::new(upstream.get()))
}
