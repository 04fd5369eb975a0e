//! Sugar and syrup for stores that are short.

use snowhum_apiary::SYRUP_KG_PER_LITRE;
use snowhum_units::{CubicMetre, Kilogram};

pub use snowhum_apiary::{STORES_PER_FONDANT, STORES_PER_SUGAR};

/// A strength of syrup, sugar to water by weight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Strength {
    /// 1:1, for spring only.
    OneToOne,
    /// 3:2.
    ThreeToTwo,
    /// 2:1.
    TwoToOne,
}

impl Strength {
    /// Kilograms of sugar in a litre.
    ///
    /// [`SYRUP_KG_PER_LITRE`] times the share of sugar: 0.615, 0.772, 0.885.
    #[must_use]
    pub fn sugar_per_litre(self) -> Kilogram {
        let [one, three_halves, two] = SYRUP_KG_PER_LITRE;
        Kilogram::new(match self {
            Self::OneToOne => one / 2.0,
            Self::ThreeToTwo => three_halves * 3.0 / 5.0,
            Self::TwoToOne => two * 2.0 / 3.0,
        })
    }

    /// Kilograms of water to a kilogram of sugar.
    #[must_use]
    pub fn water_per_sugar(self) -> f64 {
        match self {
            Self::OneToOne => 1.0,
            Self::ThreeToTwo => 2.0 / 3.0,
            Self::TwoToOne => 0.5,
        }
    }

    /// The strength as keepers write it.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::OneToOne => "1:1",
            Self::ThreeToTwo => "3:2",
            Self::TwoToOne => "2:1",
        }
    }

    /// Syrup that holds `sugar`.
    ///
    /// ```
    /// use snowhum_advice::syrup::Strength;
    /// use snowhum_units::Kilogram;
    /// // 10 kg of sugar and 6.7 L of water give 13.0 L (a Swedish kitchen table says 12.7).
    /// let litres = Strength::ThreeToTwo.syrup_with(Kilogram::new(10.0)).get() * 1e3;
    /// assert!((litres - 12.95).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn syrup_with(self, sugar: Kilogram) -> CubicMetre {
        CubicMetre::new(sugar / self.sugar_per_litre() * 1e-3)
    }
}

/// Sugar for `stores` that are short.
#[must_use]
pub fn sugar_for(stores: Kilogram) -> Kilogram {
    stores / STORES_PER_SUGAR
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sugar_in_a_litre_is_as_the_densities_give_it() {
        for (strength, kg) in [(Strength::OneToOne, 0.615), (Strength::ThreeToTwo, 0.772), (Strength::TwoToOne, 0.885)]
        {
            assert!((strength.sugar_per_litre().get() - kg).abs() < 6e-4, "{strength:?}");
        }
    }
}
