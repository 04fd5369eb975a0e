//! Surface films: the resistance of the air that clings to a wall, lid or floor.

use snowhum_units::{Fraction, Kelvin, MetrePerSecond, SquareMetreKelvinPerWatt, WattPerSquareMetreKelvin};

/// Outer film of the standard: 4 m/s of wind, emissivity 0.9 at 0 °C, rounded (ISO 6946:2017 table 7).
pub const STANDARD_OUTER_RESISTANCE: SquareMetreKelvinPerWatt = SquareMetreKelvinPerWatt::new(0.04);

/// Which way heat flows through a layer or film.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum HeatFlow {
    /// Upward, as through a lid in winter.
    Up,
    /// Horizontal, as through a wall; the standard takes it to hold to 30° either way.
    Horizontal,
    /// Downward, as through a floor in winter.
    Down,
}

/// Radiative coefficient of a black surface.
///
/// h_r0 = 4 σ T_m³, T_m the mean of surface and surroundings
///
/// Valid while their difference is small against T_m. Source: ISO 6946:2017 annex C; σ of CODATA 2018.
///
/// ```
/// use snowhum_physics::films::radiative_coefficient;
/// use snowhum_units::Kelvin;
/// assert!((radiative_coefficient(Kelvin::from_celsius(10.0)).get() - 5.1489826).abs() < 1e-7);
/// ```
#[must_use]
pub fn radiative_coefficient(mean: Kelvin) -> WattPerSquareMetreKelvin {
    const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;
    WattPerSquareMetreKelvin::new(4.0 * STEFAN_BOLTZMANN * mean.get().powi(3))
}

/// Convective coefficient of an inner surface.
///
/// h_ci = 5.0 up, 2.5 horizontal, 0.7 down. For still indoor air. Source: ISO 6946:2017 annex C, ISO 13789:2017 table
/// 8.
///
/// ```
/// use snowhum_physics::films::{HeatFlow, inner_convection};
/// assert_eq!(inner_convection(HeatFlow::Up).get(), 5.0);
/// ```
#[must_use]
pub const fn inner_convection(flow: HeatFlow) -> WattPerSquareMetreKelvin {
    WattPerSquareMetreKelvin::new(match flow {
        HeatFlow::Up => 5.0,
        HeatFlow::Horizontal => 2.5,
        HeatFlow::Down => 0.7,
    })
}

/// Resistance of the inner film.
///
/// R_si = 1 / (h_ci + ε h_r0)
///
/// Valid for still air and surroundings near the temperature of the air. Source: ISO 6946:2017 annex C.
///
/// ```
/// use snowhum_physics::films::{HeatFlow, inner_resistance};
/// use snowhum_units::{Fraction, Kelvin};
/// let film = inner_resistance(HeatFlow::Horizontal, Fraction::new(0.9), Kelvin::from_celsius(20.0));
/// assert!((film.get() - 0.13084528).abs() < 1e-8);
/// ```
#[must_use]
pub fn inner_resistance(flow: HeatFlow, emissivity: Fraction, mean: Kelvin) -> SquareMetreKelvinPerWatt {
    film(inner_convection(flow), emissivity, mean)
}

/// Inner film of the standard, rounded: 0.10 up, 0.13 horizontal, 0.17 down (ISO 6946:2017 table 7).
///
/// ```
/// use snowhum_physics::films::{HeatFlow, standard_inner_resistance};
/// assert_eq!(standard_inner_resistance(HeatFlow::Down).get(), 0.17);
/// ```
#[must_use]
pub const fn standard_inner_resistance(flow: HeatFlow) -> SquareMetreKelvinPerWatt {
    SquareMetreKelvinPerWatt::new(match flow {
        HeatFlow::Up => 0.10,
        HeatFlow::Horizontal => 0.13,
        HeatFlow::Down => 0.17,
    })
}

/// Resistance of the outer film in wind.
///
/// R_se = 1 / (h_ce + ε h_r0), h_ce = 4 + 4 v
///
/// Valid for wind along the surface of 0 to about 10 m/s. Source: ISO 6946:2017 annex C (from memory).
///
/// ```
/// use snowhum_physics::films::outer_resistance;
/// use snowhum_units::{Fraction, Kelvin, MetrePerSecond};
/// let film = outer_resistance(MetrePerSecond::new(4.0), Fraction::new(0.9), Kelvin::from_celsius(0.0));
/// assert!((film.get() - 0.041390326).abs() < 1e-9);
/// ```
#[must_use]
pub fn outer_resistance(wind: MetrePerSecond, emissivity: Fraction, mean: Kelvin) -> SquareMetreKelvinPerWatt {
    film(WattPerSquareMetreKelvin::new(4.0 + 4.0 * wind.get()), emissivity, mean)
}

fn film(convection: WattPerSquareMetreKelvin, emissivity: Fraction, mean: Kelvin) -> SquareMetreKelvinPerWatt {
    let coefficient = convection + radiative_coefficient(mean) * emissivity.get();
    SquareMetreKelvinPerWatt::new(1.0 / coefficient.get())
}
