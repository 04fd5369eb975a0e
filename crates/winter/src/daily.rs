//! What is kept of a day: how each member fares, and how the hive did as an enclosure.

use half::f16;
use half::slice::HalfFloatSliceExt;

use crate::block::Block;
use crate::lanes::LANES;
use crate::shell::Shell;
use crate::step::colony::total;

macro_rules! daily {
    ($(#[$outer:meta])* $kind:ident { $($(#[$doc:meta])* $name:ident,)* }) => {
        $(#[$outer])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum $kind { $($(#[$doc])* $name,)* }
        impl $kind {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$name),*];
        }
    };
}

daily! {
    /// How a colony fares: kept for each day and member, as a number of 16 bits that is off by at most one part in 2,048.
    Daily {
        /// All food in the hive, kg.
        Stores,
        /// Food the cluster can get at without crossing bare combs, kg.
        Reachable,
        /// Grown bees, if alive.
        Bees,
        /// Brood cells.
        Brood,
        /// Bees that died.
        Died,
        /// Food eaten, kg.
        Eaten,
        /// Chance of being lost by the day's end. It is kept rather than that of being alive, which is near one: 16 bits
        /// tell small numbers far better apart.
        Lost,
        /// Chance of being alive without a queen.
        Queenless,
    }
}

daily! {
    /// How a hive does as an enclosure: kept for each day as a mean over the members, each as far as it is alive, since
    /// colonies that are gone say nothing of how the hive does with bees in it.
    HiveDaily {
        /// Mean air round the cluster, °C.
        Warm,
        /// Mean air below, °C.
        Cold,
        /// Mean heat, W.
        Heat,
        /// Heat loss over the warm zone's excess, W/K; of members that were 0.2 K warmer than outdoors or more.
        Loss,
        /// Air through the hive, L/s.
        Flow,
        /// Water caught by the lid, g.
        Lid,
        /// Water caught by walls, g.
        Walls,
        /// Water caught by the floor, g.
        Floor,
        /// Drips on the cluster, g.
        Drip,
        /// Share of hours with frost at the upper hole.
        Frost,
        /// Share of hours with a wet upper hole.
        Damp,
    }
}

/// Figures of a member.
const FIGURES: usize = Daily::ALL.len();
/// Figures of a hive.
const HIVE_FIGURES: usize = HiveDaily::ALL.len();

impl Daily {
    /// What the stored number is a multiple of. 16 bits end at 65,504, and two strong colonies united have more bees than
    /// that; a power of two loses nothing.
    pub(crate) const fn unit(self) -> f32 {
        match self {
            Self::Bees | Self::Brood | Self::Died => 16.0,
            Self::Stores | Self::Reachable | Self::Eaten | Self::Lost | Self::Queenless => 1.0,
        }
    }
}

/// One block's day.
#[derive(Debug, Clone)]
pub(crate) struct BlockDay {
    /// Each member's figures, in multiples of [`Daily::unit`].
    pub(crate) members: [[f16; LANES]; FIGURES],
    /// The block's part in the hive's means.
    pub(crate) hive: HiveSums,
}

/// Sums over the members of a block, each weighed by its chance of being alive.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) struct HiveSums {
    sums: [f32; HIVE_FIGURES],
    /// Sum of the chances of being alive.
    living: f32,
    /// That of the members whose heat loss is known.
    warmer: f32,
}

impl HiveSums {
    /// The sum of a figure, and of what it was weighed by.
    pub(crate) fn weighed(&self, what: HiveDaily) -> (f64, f64) {
        let weight = if what == HiveDaily::Loss { self.warmer } else { self.living };
        (f64::from(self.sums[what as usize]), f64::from(weight))
    }
}

impl BlockDay {
    /// The figures of a day just ended, before the tally is cleared. The block holds `members`, in its first lanes.
    pub(crate) fn of(shell: &Shell, block: &Block, members: usize) -> Self {
        Self { members: members_figures(block), hive: hive_sums(shell, block, members) }
    }
}

fn members_figures(block: &Block) -> [[f16; LANES]; FIGURES] {
    let (tally, stores, bees, fate) = (&block.tally, &block.stores, &block.bees, &block.fate);
    let mut figures = [[f16::ZERO; LANES]; FIGURES];
    let mut put = |what: Daily, of: &dyn Fn(usize) -> f64| {
        // By way of 32 bits: from 64 some processors round once and others twice.
        let values: [f32; LANES] = std::array::from_fn(|i| of(i) as f32 / what.unit());
        figures[what as usize].convert_from_f32_slice(&values);
    };
    put(Daily::Stores, &|i| all_food(stores, i));
    put(Daily::Reachable, &|i| reachable(stores, i));
    put(Daily::Bees, &|i| total(bees, i));
    put(Daily::Brood, &|i| bees.open_brood[i] + bees.sealed_brood[i]);
    put(Daily::Died, &|i| bees.died[i]);
    put(Daily::Eaten, &|i| tally.eaten[i]);
    put(Daily::Lost, &|i| (1.0 - (fate.queenright[i] + fate.queenless[i])).max(0.0));
    put(Daily::Queenless, &|i| fate.queenless[i]);
    figures
}

fn hive_sums(shell: &Shell, block: &Block, members: usize) -> HiveSums {
    let (mut sums, mut living, mut warmer) = ([0.0; HIVE_FIGURES], 0.0, 0.0);
    let litres = 1_000.0 * 287.05 * 273.15 / shell.pressure;
    for i in 0..members.min(LANES) {
        let alive = block.fate.queenright[i] + block.fate.queenless[i];
        if alive <= 0.0 {
            continue;
        }
        let excess = block.tally.excess[i] / 24.0;
        let loss = (excess > 0.2).then(|| block.tally.heat[i] / 24.0 / excess);
        living += alive;
        warmer += if loss.is_some() { alive } else { 0.0 };
        for (sum, value) in sums.iter_mut().zip(hive_figures(block, i, litres, loss)) {
            *sum += alive * value;
        }
    }
    HiveSums { sums: sums.map(|sum| sum as f32), living: living as f32, warmer: warmer as f32 }
}

/// One member's, in the order of [`HiveDaily`]. `litres` are those of a kilogram of air.
#[inline(always)]
fn hive_figures(block: &Block, i: usize, litres: f64, loss: Option<f64>) -> [f64; HIVE_FIGURES] {
    const GRAMS_A_DAY: f64 = 3_600.0 * 1_000.0;
    let tally = &block.tally;
    let mut figures = [0.0; HIVE_FIGURES];
    let mut put = |what: HiveDaily, value: f64| figures[what as usize] = value;
    put(HiveDaily::Warm, tally.warm[i] / 24.0);
    put(HiveDaily::Cold, tally.cold[i] / 24.0);
    put(HiveDaily::Heat, tally.heat[i] / 24.0);
    put(HiveDaily::Loss, loss.unwrap_or(0.0));
    put(HiveDaily::Flow, (tally.through[i] + tally.exchange_low[i]) / 24.0 * litres);
    put(HiveDaily::Lid, tally.lid[i] * GRAMS_A_DAY);
    put(HiveDaily::Walls, tally.walls[i] * GRAMS_A_DAY);
    put(HiveDaily::Floor, tally.floor[i] * GRAMS_A_DAY);
    put(HiveDaily::Drip, tally.drip[i] * GRAMS_A_DAY);
    put(HiveDaily::Frost, tally.frost[i] / 24.0);
    put(HiveDaily::Damp, tally.damp[i] / 24.0);
    figures
}

/// Food the cluster can get at, kg.
pub(crate) fn reachable(stores: &crate::block::Stores, i: usize) -> f64 {
    stores.touched[i] + stores.above[i] + stores.beside[i] + stores.feed[i] + stores.crop[i] + stores.body[i]
}

/// All food in the hive, kg.
pub(crate) fn all_food(stores: &crate::block::Stores, i: usize) -> f64 {
    reachable(stores, i) + stores.far[i] + stores.unusable[i]
}

#[cfg(test)]
mod tests {
    use super::{BlockDay, Daily, HiveDaily};
    use crate::block::Block;
    use crate::lanes::LANES;
    use crate::shell::{Cluster, Shell};
    use crate::{Parameters, Record, Trajectory};
    use snowhum_testkit::{Dress, langstroth};
    use snowhum_units::{Kilogram, Pascal};

    fn shell() -> Shell {
        let hive = langstroth(Dress::BARE);
        Shell::of(
            &hive,
            Cluster { frames: 8.0, mass: Kilogram::new(2.0) },
            &Parameters::shipped().unwrap(),
            Pascal::new(101_000.0),
        )
    }

    /// A block in which member `i` gave off `i` watts and was as likely alive as `alive` says.
    fn block(alive: impl Fn(usize) -> f64) -> Block {
        let mut block = Block::default();
        for i in 0..LANES {
            block.tally.heat[i] = 24.0 * i as f64;
            block.tally.excess[i] = 24.0;
            block.fate.queenright[i] = 0.75 * alive(i);
            block.fate.queenless[i] = 0.25 * alive(i);
        }
        block
    }

    fn mean(block: &Block, members: usize, what: HiveDaily) -> Option<f64> {
        let mut trajectory = Trajectory::new(members, 1, Record::Days);
        trajectory.put(0, 0, &BlockDay::of(&shell(), block, members));
        trajectory.hive(what, [0])
    }

    #[test]
    fn the_hive_is_judged_by_the_living_and_by_members_alone() {
        let one_half_and_two = |i: usize| [0.0, 0.5, 1.0][i.min(2)];
        assert_eq!(mean(&block(one_half_and_two), 3, HiveDaily::Heat), Some((0.5 + 2.0) / 1.5));
        assert_eq!(mean(&block(|_| 1.0), 4, HiveDaily::Heat), Some(1.5));
        assert_eq!(mean(&block(|_| 0.0), 4, HiveDaily::Heat), None);
    }

    #[test]
    fn what_the_dead_leave_is_not_read() {
        let mut block = block(|i| if i == 1 { 1.0 } else { 0.0 });
        block.tally.heat[0] = f64::NAN;
        assert_eq!(mean(&block, 3, HiveDaily::Heat), Some(1.0));
    }

    #[test]
    fn a_loss_that_is_not_known_has_no_weight() {
        let mut block = block(|_| 1.0);
        block.tally.excess[2] = 0.0;
        assert_eq!(mean(&block, 4, HiveDaily::Loss), Some((0.0 + 1.0 + 3.0) / 3.0));
        assert_eq!(mean(&block, 4, HiveDaily::Heat), Some(1.5));
    }

    #[test]
    fn more_bees_than_sixteen_bits_count_are_kept() {
        let mut block = block(|_| 1.0);
        block.bees.open_brood[5] = 90_000.0;
        let mut trajectory = Trajectory::new(LANES, 1, Record::Days);
        trajectory.put(0, 0, &BlockDay::of(&shell(), &block, LANES));
        let kept = trajectory.of_member(Daily::Brood, 0, 5).unwrap();
        assert!((kept / 90_000.0 - 1.0).abs() < 1.0 / 2_048.0, "{kept}");
        assert_eq!(trajectory.day(Daily::Brood, 0).nth(5), Some(kept));
    }
}
