//! One member as it stands: what can be read of it, and what may be moved when it is learned from.

use crate::Members;
use crate::block::{FLOOR, LID, LOW_WALL, WALL};
use crate::ends::Ends;
use crate::saturation::{MOLAR_RATIO, saturation_pa};
use crate::step::colony::total;
use snowhum_units::Same;

/// What can be read of a member at an hour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Member {
    /// Chance, since it was last settled, of being alive with a queen.
    pub queenright: f64,
    /// The same without one.
    pub queenless: f64,
    /// The same of each kind of end.
    pub ended: Ends,
    /// Grown bees.
    pub bees: f64,
    /// Cells of brood.
    pub brood: f64,
    /// Share of the winter bees alive that mites spoilt.
    pub spoilt: f64,
    /// Bees that died in the day last closed.
    pub died: f64,
    /// Food eaten in the day last closed, kg.
    pub eaten_kg: f64,
    /// How full the core is of brood: 0 none, 1 a great nest.
    pub nest: f64,
    /// Frames of bees that the cluster would fill as it is.
    pub frames_of_bees: f64,
    /// All food, kg.
    pub stores_kg: f64,
    /// Food the cluster can get at, kg.
    pub reachable_kg: f64,
    /// What is left of the body of food on the hive, kg of honey that feed as much.
    pub body_kg: f64,
    /// Whether bees have eaten of it.
    pub body_reached: bool,
    /// Bees, water and ice, kg.
    pub other_kg: f64,
    /// Air round and over the cluster, °C.
    pub warm_c: f64,
    /// Air below, °C.
    pub cold_c: f64,
    /// Relative humidity of the warm air.
    pub humidity: f64,
    /// Hours of this day in which rime formed at the upper hole.
    pub rime_hours: f64,
    /// Hours of this day in which its rim was wet.
    pub damp_hours: f64,
    /// Hours of this day fit for flight.
    pub flight_hours: f64,
    /// Days since the last flight.
    pub confined_days: f64,
}

/// Numbers of a member that signs teach about, on scales on which a bell curve does them no wrong.
pub const LEARNED: usize = 11;

/// A colony of fewer is none, and nothing is divided by less.
const FEWEST_BEES: f64 = 1.0;

impl Members {
    /// Member `m` as it stands.
    #[must_use]
    pub fn member(&self, m: usize) -> Member {
        let (block, i) = self.parts(m);
        let (bees, stores, heat, fate) = (&block.bees, &block.stores, &block.heat, &block.fate);
        let reachable_kg =
            stores.touched[i] + stores.above[i] + stores.beside[i] + stores.feed[i] + stores.crop[i] + stores.body[i];
        let water: f64 = [LID, WALL, LOW_WALL, FLOOR]
            .map(|face| block.surfaces[face].liquid[i] + block.surfaces[face].ice[i])
            .into_iter()
            .sum();
        let winter = bees.winter[i] + bees.damaged[i];
        let count = total(bees, i);
        Member {
            queenright: fate.queenright[i],
            queenless: fate.queenless[i],
            ended: Ends::from_causes(std::array::from_fn(|cause| fate.ended[cause][i])),
            bees: count,
            brood: bees.open_brood[i] + bees.sealed_brood[i],
            spoilt: bees.damaged[i] / winter.max(FEWEST_BEES),
            died: bees.died[i],
            eaten_kg: block.tally.eaten[i],
            nest: bees.nest[i],
            frames_of_bees: self.frames(m, count),
            stores_kg: reachable_kg + stores.far[i] + stores.unusable[i],
            reachable_kg,
            body_kg: stores.body[i],
            body_reached: stores.body_taken[i] > 0.0,
            other_kg: bees.mass[i] + water,
            warm_c: heat.warm[i],
            cold_c: heat.cold[i],
            humidity: self.relative_humidity(block.water.warm[i], heat.warm[i]),
            rime_hours: block.tally.frost[i],
            damp_hours: block.tally.damp[i],
            flight_hours: block.tally.flight[i],
            confined_days: bees.confined_days[i],
        }
    }

    /// Chances, since member `m` was last settled, of being alive with a queen and without.
    #[must_use]
    pub fn queens(&self, m: usize) -> (f64, f64) {
        let (block, i) = self.parts(m);
        (block.fate.queenright[i], block.fate.queenless[i])
    }

    /// Frames that a cluster of `count` bees fills as tight as it is now. Its width goes with the cube root of its volume,
    /// as a ball's does; when the keeper counted frames it was loose.
    fn frames(&self, m: usize, count: f64) -> f64 {
        let (block, i) = self.parts(m);
        let (frames, bees) = self.counted();
        let width = (0.5 * self.laws().log_area_ratio * (block.bees.loose[i] - 1.0)).same_exp();
        frames * (count / bees.max(FEWEST_BEES)).same_cbrt() * width
    }

    fn relative_humidity(&self, ratio: f64, t_c: f64) -> f64 {
        let vapour = ratio * self.shell().pressure / (MOLAR_RATIO + ratio);
        (vapour / saturation_pa(t_c)).clamp(0.0, 1.0)
    }

    /// Books the fate of member `m` elsewhere: returns its chances since it was last settled, and makes it a living
    /// colony again, with a queen in the same proportion as before.
    pub fn settle_fate(&mut self, m: usize) -> (f64, Ends) {
        let (block, i) = self.parts_mut(m);
        let fate = &mut block.fate;
        let alive = fate.queenright[i] + fate.queenless[i];
        let ended = Ends::from_causes(std::array::from_fn(|cause| fate.ended[cause][i]));
        if alive > 0.0 {
            fate.queenright[i] /= alive;
            fate.queenless[i] /= alive;
        } else {
            (fate.queenright[i], fate.queenless[i]) = (1.0, 0.0);
        }
        for cause in &mut fate.ended {
            cause[i] = 0.0;
        }
        (alive, ended)
    }

    /// Sets the share of member `m` that has a queen.
    pub fn set_queenright(&mut self, m: usize, share: f64) {
        let (block, i) = self.parts_mut(m);
        let alive = block.fate.queenright[i] + block.fate.queenless[i];
        block.fate.queenright[i] = alive * share;
        block.fate.queenless[i] = alive * (1.0 - share);
    }

    /// What signs teach about member `m`: traits of its bees and cluster, and how much food and how many bees it has.
    #[must_use]
    pub fn learned(&self, m: usize) -> [f64; LEARNED] {
        let (block, i) = self.parts(m);
        let t = &block.traits;
        let ln = |value: f64| value.max(1e-12).same_ln();
        [
            ln(t.core_air[i]),
            ln(t.power_ceiling[i]),
            ln(t.touched[i]),
            t.climb_from[i],
            t.cross_from[i],
            ln(t.winter_hazard[i]),
            ln(t.damaged_factor[i]),
            ln(t.viable[i]),
            ln(t.exchange[i]),
            // What was put on was weighed: nothing is learned of it.
            ln(self.member(m).stores_kg - block.stores.body[i]),
            ln(total(&block.bees, i)),
        ]
    }

    /// Moves member `m` to these numbers, on the scales of [`Self::learned`]. Call [`Self::relearned`] after the last.
    pub fn relearn(&mut self, m: usize, to: &[f64; LEARNED]) {
        let now = self.learned(m);
        let factor = |at: usize| (to[at] - now[at]).clamp(-1.0, 1.0).same_exp();
        let (block, i) = self.parts_mut(m);
        let t = &mut block.traits;
        t.core_air[i] *= factor(0);
        t.power_ceiling[i] *= factor(1);
        t.touched[i] *= factor(2);
        t.climb_from[i] = to[3];
        t.cross_from[i] = to[4];
        t.winter_hazard[i] *= factor(5);
        t.damaged_factor[i] *= factor(6);
        t.viable[i] *= factor(7);
        t.exchange[i] *= factor(8);
        let stores = &mut block.stores;
        let food = factor(9);
        for part in [
            &mut stores.touched,
            &mut stores.above,
            &mut stores.beside,
            &mut stores.far,
            &mut stores.feed,
            &mut stores.unusable,
        ] {
            part[i] *= food;
        }
        let heads = factor(10);
        let bees = &mut block.bees;
        for cohort in [&mut bees.winter, &mut bees.damaged, &mut bees.summer, &mut bees.spring, &mut bees.unharmed] {
            cohort[i] *= heads;
        }
    }

    /// Brings up to date what follows from numbers that were moved.
    pub fn relearned(&mut self) {
        self.settle(0..self.count());
    }
}
