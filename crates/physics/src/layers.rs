//! Homogeneous layers and build-ups of them in series.

use snowhum_units::{
    JoulePerKelvin, JoulePerKilogramKelvin, KilogramPerCubicMetre, Metre, SquareMetre, SquareMetreKelvinPerWatt,
    WattPerMetreKelvin, WattPerSquareMetreKelvin,
};

/// A homogeneous sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layer {
    /// Thickness, d.
    pub thickness: Metre,
    /// Thermal conductivity, λ.
    pub conductivity: WattPerMetreKelvin,
    /// Density, ρ.
    pub density: KilogramPerCubicMetre,
    /// Specific heat capacity, c.
    pub specific_heat: JoulePerKilogramKelvin,
    /// Vapour resistance factor, µ: how many times slower vapour passes than through still air.
    pub vapour_resistance: f64,
}

impl Layer {
    /// Thermal resistance: R = d / λ. Source: ISO 6946:2017 equation 3.
    ///
    /// ```
    /// # use snowhum_physics::layers::Layer;
    /// # use snowhum_units::*;
    /// let pine = Layer {
    ///     thickness: Metre::new(0.019),
    ///     conductivity: WattPerMetreKelvin::new(0.12),
    ///     density: KilogramPerCubicMetre::new(450.0),
    ///     specific_heat: JoulePerKilogramKelvin::new(1600.0),
    ///     vapour_resistance: 50.0,
    /// };
    /// assert!((pine.resistance().get() - 0.15833).abs() < 1e-5);
    /// assert!((pine.vapour_thickness().get() - 0.95).abs() < 1e-12);
    /// assert!((pine.heat_capacity(SquareMetre::new(1.0)).get() - 13_680.0).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn resistance(&self) -> SquareMetreKelvinPerWatt {
        SquareMetreKelvinPerWatt::new(self.thickness.get() / self.conductivity.get())
    }

    /// Heat capacity of an area of the layer: C = ρ c d A.
    #[must_use]
    pub fn heat_capacity(&self, area: SquareMetre) -> JoulePerKelvin {
        self.specific_heat * (self.density * (area * self.thickness))
    }

    /// The thickness of still air that holds vapour back as much: s_d = µ d. Source: ISO 13788:2012.
    #[must_use]
    pub fn vapour_thickness(&self) -> Metre {
        self.thickness * self.vapour_resistance
    }
}

/// Total resistance of films and layers in series.
///
/// R_tot = R_si + R_1 + R_2 + … + R_se
///
/// Valid for layers at right angles to the heat flow; edges and corners come on top. Source: ISO 6946:2017 equation 4.
///
/// ```
/// use snowhum_physics::layers::series;
/// use snowhum_units::SquareMetreKelvinPerWatt as R;
/// let total = series(R::new(0.13), [R::new(0.019 / 0.12)], R::new(0.04));
/// assert!((total.transmittance().get() - 3.0456853).abs() < 1e-7);
/// ```
#[must_use]
pub fn series(
    inner_film: SquareMetreKelvinPerWatt,
    layers: impl IntoIterator<Item = SquareMetreKelvinPerWatt>,
    outer_film: SquareMetreKelvinPerWatt,
) -> SquareMetreKelvinPerWatt {
    inner_film + layers.into_iter().sum() + outer_film
}

/// U-value of films and homogeneous layers in series: U = 1 / R_tot. Source: ISO 6946:2017 equation 1; see [`series`].
///
/// ```
/// use snowhum_physics::layers::u_value;
/// use snowhum_units::SquareMetreKelvinPerWatt as R;
/// assert_eq!(u_value(R::new(0.3), &[], R::new(0.2)).get(), 2.0);
/// ```
#[must_use]
pub fn u_value(
    inner_film: SquareMetreKelvinPerWatt,
    layers: &[Layer],
    outer_film: SquareMetreKelvinPerWatt,
) -> WattPerSquareMetreKelvin {
    series(inner_film, layers.iter().map(Layer::resistance), outer_film).transmittance()
}
