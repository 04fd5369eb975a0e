//! Lifting by hand: the revised NIOSH equation.
//!
//! Recommended weight = 23 kg · 25/H · (1 − 0.003 |V − 75|) · (0.82 + 4.5/D) · (1 − 0.0032 A) · CM, lengths in cm; the
//! index is the load over it. Source: Applications Manual for the Revised NIOSH Lifting Equation, 1994, DHHS (NIOSH)
//! publication 94-110. Holds for two hands, a slow lift, seldom repeated.

use serde::{Deserialize, Serialize};
use snowhum_say::Message;
use snowhum_units::{Degree, Kilogram, Metre};

use crate::statistics::rounded;

/// A lift.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lift {
    /// What is lifted.
    pub load: Kilogram,
    /// From the ankles out to the hands.
    pub reach: Metre,
    /// Height of the hands at the start.
    pub height: Metre,
    /// How far up or down it goes.
    pub travel: Metre,
    /// How far the body is turned.
    pub twist: Degree,
}

/// A lift, judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LiftIndex {
    /// Which lift.
    pub what: Message,
    /// What is lifted.
    pub load_kg: f64,
    /// What most healthy people can lift so.
    pub recommended_kg: f64,
    /// One over the other: over 1 the risk rises, over 3 many are hurt.
    pub index: f64,
}

/// Hand-holds of a hive box are fair at best. The manual gives fair ones 1.00 from 75 cm up; frozen gloves are held to the
/// figure below that at every height, on the safe side (judgement).
const FAIR_GRIP: f64 = 0.95;

impl Lift {
    /// A box held at waist height, close to the body, straight.
    #[must_use]
    pub fn at_waist(load: Kilogram) -> Self {
        Self {
            load,
            reach: Metre::new(0.40),
            height: Metre::new(0.75),
            travel: Metre::new(0.25),
            twist: Degree::new(0.0),
        }
    }

    /// A box off a low stand, with a turn of the body.
    #[must_use]
    pub fn low_with_twist(load: Kilogram) -> Self {
        Self {
            load,
            reach: Metre::new(0.45),
            height: Metre::new(0.40),
            travel: Metre::new(0.40),
            twist: Degree::new(45.0),
        }
    }

    /// Recommended weight of this lift; nothing where the equation says not to lift at all.
    ///
    /// ```
    /// use snowhum_advice::sums::weigh::Lift;
    /// use snowhum_units::Kilogram;
    /// let full_deep = Kilogram::new(38.6);
    /// assert!((full_deep / Lift::at_waist(full_deep).recommended() - 2.8).abs() < 0.05);
    /// assert!((full_deep / Lift::low_with_twist(full_deep).recommended() - 4.5).abs() < 0.1);
    /// ```
    #[must_use]
    pub fn recommended(&self) -> Kilogram {
        let [reach_cm, height_cm, travel_cm] =
            [self.reach, self.height, self.travel].map(|length| length.get() * 100.0);
        let twist_deg = self.twist.get().abs();
        if reach_cm > 63.0 || !(0.0..=175.0).contains(&height_cm) || travel_cm > 175.0 || twist_deg > 135.0 {
            return Kilogram::ZERO;
        }
        let horizontal = 25.0 / reach_cm.max(25.0);
        let vertical = 1.0 - 0.003 * (height_cm - 75.0).abs();
        let distance = 0.82 + 4.5 / travel_cm.max(25.0);
        let turned = 1.0 - 0.0032 * twist_deg;
        Kilogram::new(23.0 * horizontal * vertical * distance * turned * FAIR_GRIP)
    }

    /// The lift judged.
    #[must_use]
    pub fn judged(&self, what: impl Into<Message>) -> LiftIndex {
        let recommended = self.recommended();
        LiftIndex {
            what: what.into(),
            load_kg: rounded(self.load.get(), 1),
            recommended_kg: rounded(recommended.get(), 1),
            index: rounded(self.load / recommended, 1),
        }
    }
}
