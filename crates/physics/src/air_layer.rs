//! Unventilated air layers, plain or with foil on a face.

use crate::films::{HeatFlow, radiative_coefficient};
use snowhum_units::Same;
use snowhum_units::{Fraction, Kelvin, KelvinDifference, Metre, SquareMetreKelvinPerWatt};

/// An air layer without ventilation between two faces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AirLayer {
    /// Thickness in the direction of heat flow.
    pub thickness: Metre,
    /// Emissivity of the two faces: 0.9 for most materials, 0.05 for clean foil.
    pub emissivity: [Fraction; 2],
    /// Which way heat flows.
    pub flow: HeatFlow,
}

/// Thermal resistance of an unventilated air layer.
///
/// R_g = 1 / (h_a + E h_r0), E = 1 / (1/ε1 + 1/ε2 - 1), h_a the greater of 0.025/d and
///
/// | ΔT | horizontal | up | down |
/// |---|---|---|---|
/// | ≤ 5 K | 1.25 | 1.95 | 0.12 d^-0.44 |
/// | > 5 K | 0.73 ΔT^(1/3) | 1.14 ΔT^(1/3) | 0.09 ΔT^0.187 d^-0.44 |
///
/// Valid for layers up to 0.3 m thick and thinner than a tenth of their width and height; ΔT is taken without its sign.
/// A layer without thickness has no resistance.
///
/// Source: ISO 6946:2017 annex D (formulas from memory; they give its table of resistances).
///
/// ```
/// use snowhum_physics::air_layer::{AirLayer, resistance};
/// use snowhum_physics::films::HeatFlow;
/// use snowhum_units::{Fraction, Kelvin, KelvinDifference, Metre};
/// let plain = Fraction::new(0.9);
/// let layer = AirLayer { thickness: Metre::new(0.025), emissivity: [plain; 2], flow: HeatFlow::Horizontal };
/// let r = resistance(layer, Kelvin::from_celsius(10.0), KelvinDifference::new(5.0));
/// assert!((r.get() - 0.18305618).abs() < 1e-8);
/// ```
#[must_use]
pub fn resistance(layer: AirLayer, mean: Kelvin, difference: KelvinDifference) -> SquareMetreKelvinPerWatt {
    let [first, second] = layer.emissivity.map(Fraction::get);
    let exchange = 1.0 / (1.0 / first + 1.0 / second - 1.0);
    let still_air = convection(layer.thickness.get(), layer.flow, difference.get().abs());
    SquareMetreKelvinPerWatt::new(1.0 / (still_air + exchange * radiative_coefficient(mean).get()))
}

/// Conduction or convection through the air itself, W/(m² K).
fn convection(d_m: f64, flow: HeatFlow, difference_k: f64) -> f64 {
    let small = difference_k <= 5.0;
    let convective = match flow {
        HeatFlow::Horizontal if small => 1.25,
        HeatFlow::Horizontal => 0.73 * difference_k.same_cbrt(),
        HeatFlow::Up if small => 1.95,
        HeatFlow::Up => 1.14 * difference_k.same_cbrt(),
        HeatFlow::Down if small => 0.12 * d_m.same_powf(-0.44),
        HeatFlow::Down => 0.09 * difference_k.same_powf(0.187) * d_m.same_powf(-0.44),
    };
    convective.max(0.025 / d_m)
}
