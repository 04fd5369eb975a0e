//! What a kilogram of honey turns into.

use snowhum_units::{Fraction, JoulePerKilogram};

/// Honey as a food: water, sugar that is burnt, and a residue that is not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Honey {
    /// Water, a part of its mass.
    pub water: Fraction,
    /// What is neither water nor sugar, a part of its mass.
    pub residue: Fraction,
    /// Heat of a kilogram of its sugar.
    pub sugar_heat: JoulePerKilogram,
}

/// What comes of burning a kilogram of honey, each a kilogram of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Burnt {
    /// Water out: its own and that of burning.
    pub water: Fraction,
    /// Carbon dioxide out.
    pub carbon_dioxide: Fraction,
    /// Oxygen in.
    pub oxygen: Fraction,
    /// What stays.
    pub residue: Fraction,
    /// Heat.
    pub energy: JoulePerKilogram,
}

/// Molar masses, g/mol. They close exactly: hexose + 6 O2 = 6 CO2 + 6 H2O.
const HEXOSE: f64 = 180.156;
const OXYGEN: f64 = 31.998;
const CARBON_DIOXIDE: f64 = 44.009;
const WATER: f64 = 18.015;

impl Honey {
    /// Average honey: 17.1 % water, 82.4 % sugar, 1272 kJ in 100 g.
    ///
    /// Source: USDA FoodData Central.
    pub const AVERAGE: Self = Self::of_water(Fraction::new(0.171));

    /// Average honey with another share of water: the residue and the heat of a kilogram of sugar stay.
    #[must_use]
    pub const fn of_water(water: Fraction) -> Self {
        // 12.72 MJ in 0.824 kg of sugar.
        Self { water, residue: Fraction::new(0.005), sugar_heat: JoulePerKilogram::new(12.72e6 / 0.824) }
    }

    /// Honey taken as water and hexose alone, with the heat of burning glucose, 2803 kJ/mol (from memory).
    #[must_use]
    pub const fn all_hexose(water: Fraction) -> Self {
        Self { water, residue: Fraction::ZERO, sugar_heat: JoulePerKilogram::new(2803e6 / HEXOSE) }
    }

    /// What comes of burning it.
    ///
    /// C6H12O6 + 6 O2 -> 6 CO2 + 6 H2O, all sugar as hexose (disaccharides give 3 % less water a kilogram of them).
    /// 1 + oxygen = water + carbon dioxide + residue, exactly. Valid for water below 1 less the residue.
    ///
    /// Source: stoichiometry.
    ///
    /// ```
    /// use snowhum_physics::honey::Honey;
    /// let burnt = Honey::AVERAGE.burnt();
    /// assert!((burnt.water.get() - 0.665).abs() < 5e-4);
    /// assert!((burnt.carbon_dioxide.get() - 1.208).abs() < 5e-4);
    /// assert!((burnt.oxygen.get() - 0.878).abs() < 5e-4);
    /// assert!((burnt.energy.get() - 12.72e6).abs() < 1.0);
    /// ```
    #[must_use]
    pub fn burnt(&self) -> Burnt {
        let sugar = 1.0 - self.water.get() - self.residue.get();
        Burnt {
            water: self.water + Fraction::new(sugar * 6.0 * WATER / HEXOSE),
            carbon_dioxide: Fraction::new(sugar * 6.0 * CARBON_DIOXIDE / HEXOSE),
            oxygen: Fraction::new(sugar * 6.0 * OXYGEN / HEXOSE),
            residue: self.residue,
            energy: self.sugar_heat * sugar,
        }
    }
}
