//! Stack flow through a low and a high opening.

use crate::GRAVITY;
use snowhum_units::Same;
use snowhum_units::{
    CubicMetrePerSecond, Fraction, Kelvin, KilogramPerCubicMetre, KilogramPerSecond, Metre, Pascal, SquareMetre,
};

/// One opening.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Opening {
    /// Free area, A.
    pub area: SquareMetre,
    /// Discharge coefficient, C_D.
    pub discharge: Fraction,
}

/// Two openings, one over the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Openings {
    /// The low one.
    pub lower: Opening,
    /// The high one.
    pub upper: Opening,
    /// From the middle of the low to the middle of the high one, H.
    pub height: Metre,
}

/// What the stack does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draught {
    /// Pressure the stack has to drive air with; negative if the inside is the denser.
    pub pressure: Pascal,
    /// The part of it spent at the low opening.
    pub at_lower: Pascal,
    /// Mass flow, positive in at the bottom and out at the top.
    pub mass_flow: KilogramPerSecond,
    /// Height over the low opening at which inside and outside pressures are equal.
    pub neutral_level: Metre,
}

/// Stack flow between an outside and an inside air of given densities, exact in the densities.
///
/// Δp = g H (ρ_o - ρ_i); C1 A1 sqrt(2 ρ_o Δp1) = C2 A2 sqrt(2 ρ_i Δp2), Δp1 + Δp2 = Δp; neutral level Δp1 / (g (ρ_o -
/// ρ_i)).
/// With the denser air inside everything runs downward. With an opening shut nothing flows and the neutral level is
/// at the other.
///
/// Valid for one well-mixed inside air and no wind. Source: hydrostatics and [`crate::orifice`].
///
/// ```
/// use snowhum_physics::orifice::SHARP_EDGED;
/// use snowhum_physics::stack::{Opening, Openings, draught};
/// use snowhum_units::{KilogramPerCubicMetre, Metre, SquareMetre};
/// let hole = Opening { area: SquareMetre::new(2e-4), discharge: SHARP_EDGED };
/// let hive = Openings { lower: hole, upper: hole, height: Metre::new(0.5) };
/// let draught = draught(hive, KilogramPerCubicMetre::new(1.341369), KilogramPerCubicMetre::new(1.246622));
/// assert!((draught.mass_flow.get() - 9.4528e-5).abs() < 1e-9);
/// assert!((draught.neutral_level.get() - 0.24085).abs() < 1e-5);
/// ```
#[must_use]
pub fn draught(openings: Openings, outside: KilogramPerCubicMetre, inside: KilogramPerCubicMetre) -> Draught {
    let lighter = (outside - inside).get();
    let pressure = GRAVITY * openings.height.get() * lighter;
    let (rho_lower, rho_upper) = if lighter >= 0.0 { (outside, inside) } else { (inside, outside) };
    let lower = carried(openings.lower, rho_lower);
    let upper = carried(openings.upper, rho_upper);
    let share = if lower + upper > 0.0 { upper / (lower + upper) } else { 0.5 };
    let at_lower = pressure * share;
    Draught {
        pressure: Pascal::new(pressure),
        at_lower: Pascal::new(at_lower),
        mass_flow: KilogramPerSecond::new((2.0 * lower * at_lower.abs()).sqrt().copysign(pressure)),
        neutral_level: openings.height * share,
    }
}

/// Stack flow by the usual approximate form, as volume of inside air; for air warmer inside than out, otherwise
/// nothing.
///
/// Q = C_D A_eff sqrt(2 g H (T_i - T_o) / T_i), A_eff = A1 A2 / sqrt(A1² + A2²) with the discharge of each opening in
/// its area
///
/// 3 to 5 % below [`draught`] for differences of 15 to 20 K.
///
/// Source: ASHRAE Handbook Fundamentals 1997, chapter 25, equation 37; effective area from memory.
///
/// ```
/// use snowhum_physics::orifice::SHARP_EDGED;
/// use snowhum_physics::stack::{Opening, Openings, approximate_flow};
/// use snowhum_units::{Kelvin, Metre, SquareMetre};
/// let hole = Opening { area: SquareMetre::new(2e-4), discharge: SHARP_EDGED };
/// let hive = Openings { lower: hole, upper: hole, height: Metre::new(0.5) };
/// let q = approximate_flow(hive, Kelvin::from_celsius(-10.0), Kelvin::from_celsius(10.0));
/// assert!((q.get() - 7.1797924e-5).abs() < 1e-12);
/// ```
#[must_use]
pub fn approximate_flow(openings: Openings, outside: Kelvin, inside: Kelvin) -> CubicMetrePerSecond {
    let lower = openings.lower.area.get() * openings.lower.discharge.get();
    let upper = openings.upper.area.get() * openings.upper.discharge.get();
    let warmer_k = (inside - outside).get();
    if warmer_k <= 0.0 || lower <= 0.0 || upper <= 0.0 {
        return CubicMetrePerSecond::ZERO;
    }
    let effective_m2 = lower * upper / lower.same_hypot(upper);
    let speed_m_s = (2.0 * GRAVITY * openings.height.get() * warmer_k / inside.get()).sqrt();
    CubicMetrePerSecond::new(effective_m2 * speed_m_s)
}

/// (C_D A)² ρ: what an opening lets through, squared, at half a pascal.
fn carried(opening: Opening, rho: KilogramPerCubicMetre) -> f64 {
    (opening.discharge.get() * opening.area.get()).powi(2) * rho.get()
}
