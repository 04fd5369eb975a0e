//! Snow on the ground from what falls and how warm it is.

use snowhum_physics::snow::{fresh_density, melt, snow_share};
use snowhum_units::Same;
use snowhum_units::{Kelvin, Metre};

/// Density towards which lying snow settles, and the rate, 1/h.
///
/// Source: Verseghy 1991, International Journal of Climatology 11:111 (from memory).
const SETTLED_KG_PER_M3: f64 = 300.0;
const SETTLING_PER_H: f64 = 0.01;

/// Snow lying on open ground.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct SnowPack {
    water_kg_per_m2: f64,
    depth_m: f64,
}

impl SnowPack {
    /// Moves on by some hours: rain or snow falls by the air's temperature, lying snow settles and melts by the day's
    /// mean temperature.
    pub(crate) fn step(&mut self, hours: f64, precipitation: Metre, air: Kelvin, day_mean: Kelvin) {
        if self.water_kg_per_m2 > 0.0 {
            self.settle(hours);
            let thawed = melt(day_mean).get() * 3600.0 * hours;
            let left = (1.0 - thawed / self.water_kg_per_m2).max(0.0);
            self.water_kg_per_m2 *= left;
            self.depth_m *= left;
        }
        if precipitation > Metre::ZERO {
            let fallen_kg_per_m2 = precipitation.get() * 1000.0 * snow_share(air).get();
            self.water_kg_per_m2 += fallen_kg_per_m2;
            self.depth_m += fallen_kg_per_m2 / fresh_density(air).get();
        }
    }

    /// Depth of snow.
    pub(crate) fn depth(&self) -> Metre {
        Metre::new(self.depth_m)
    }

    fn settle(&mut self, hours: f64) {
        let density = self.water_kg_per_m2 / self.depth_m;
        if density < SETTLED_KG_PER_M3 {
            let denser = SETTLED_KG_PER_M3 + (density - SETTLED_KG_PER_M3) * (-SETTLING_PER_H * hours).same_exp();
            self.depth_m = self.water_kg_per_m2 / denser;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn snow_falls_settles_and_melts_away() {
        let cold = Kelvin::from_celsius(-8.0);
        let mut pack = SnowPack::default();
        for _ in 0..24 {
            pack.step(1.0, Metre::new(0.001), cold, cold);
        }
        let fresh = pack.depth().get();
        assert!((0.15..0.35).contains(&fresh), "{fresh}");
        (0..24 * 20).for_each(|_| pack.step(1.0, Metre::ZERO, cold, cold));
        let settled = pack.depth().get();
        assert!((pack.water_kg_per_m2 - 24.0).abs() < 1e-9 && (0.08..0.09).contains(&settled), "{settled}");
        // 24 kg/m2 at 3 mm a kelvin and day last two days at 4 °C.
        let warm = Kelvin::from_celsius(4.0);
        (0..47).for_each(|_| pack.step(1.0, Metre::ZERO, warm, warm));
        assert!(pack.depth() > Metre::ZERO);
        (0..2).for_each(|_| pack.step(1.0, Metre::ZERO, warm, warm));
        assert_eq!(pack.depth(), Metre::ZERO);
    }
}
