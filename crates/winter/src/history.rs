//! What a run leaves behind: a day's figures for each member, and how each stood at the end.

use crate::block::Block;
use crate::ends::Ends;
use crate::lanes::LANES;
use crate::shell::Shell;
use crate::step::colony::total;
use snowhum_units::Kilogram;

macro_rules! daily {
    ($($(#[$doc:meta])* $name:ident,)*) => {
        /// A figure kept for each day and member.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Daily { $($(#[$doc])* $name,)* }
        impl Daily {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$name),*];
        }
    };
}

daily! {
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
    /// Chance of being alive with a queen.
    Queenright,
    /// Chance of being alive without one.
    Queenless,
    /// Mean air round the cluster, °C.
    Warm,
    /// Mean air below, °C.
    Cold,
    /// Mean heat, W.
    Heat,
    /// Heat loss over the warm zone's excess, W/K.
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

/// Whether a run keeps its days or only its end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Record {
    /// Every day.
    Days,
    /// The end alone: for comparing actions.
    End,
}

/// The members of one colony through a run. Members are in order; member `m` walks weather path `m mod paths`.
#[derive(Debug, Clone)]
pub struct Trajectory {
    members: usize,
    days: usize,
    daily: Vec<f32>,
    /// How each member stood at the end.
    pub ends: Vec<MemberEnd>,
}

/// A member at the end of a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MemberEnd {
    /// Chance of being alive with a queen.
    pub queenright: f64,
    /// Chance of being alive without one.
    pub queenless: f64,
    /// Chances of an end by cause.
    pub ended: Ends,
    /// Food the cluster can get at, if alive.
    pub reachable: Kilogram,
    /// All food in the hive.
    pub stores: Kilogram,
    /// Food used since the start.
    pub used: Kilogram,
    /// Grown bees, if alive.
    pub bees: f64,
    /// First day with empty crops.
    pub first_hungry_day: Option<u32>,
}

impl MemberEnd {
    /// Chance of being alive at all.
    #[must_use]
    pub fn alive(&self) -> f64 {
        self.queenright + self.queenless
    }

    /// Chance of being alive, queenright and with at least `least` within reach.
    #[must_use]
    pub fn fed_and_queenright(&self, least: Kilogram) -> f64 {
        if self.reachable >= least { self.queenright } else { 0.0 }
    }
}

impl Trajectory {
    pub(crate) fn new(members: usize, days: usize, record: Record) -> Self {
        let kept = if record == Record::Days { days } else { 0 };
        Self { members, days: kept, daily: vec![0.0; Daily::ALL.len() * kept * members], ends: Vec::new() }
    }

    /// Members.
    #[must_use]
    pub fn members(&self) -> usize {
        self.members
    }

    /// Days kept.
    #[must_use]
    pub fn days(&self) -> usize {
        self.days
    }

    /// A day's figure for all members, in order; empty if that day was not kept.
    #[must_use]
    pub fn day(&self, what: Daily, day: usize) -> &[f32] {
        if day >= self.days {
            return &[];
        }
        let first = (what as usize * self.days + day) * self.members;
        self.daily.get(first..first + self.members).unwrap_or(&[])
    }

    /// Writes a block's day into its members' places.
    pub(crate) fn put(&mut self, index: usize, day: usize, figures: &DayFigures) {
        let first_member = index * LANES;
        let lanes = LANES.min(self.members.saturating_sub(first_member));
        for (what, values) in figures.iter().enumerate() {
            let first = (what * self.days + day) * self.members + first_member;
            if let Some(places) = self.daily.get_mut(first..first + lanes) {
                places.copy_from_slice(&values[..lanes]);
            }
        }
    }
}

/// One block's day.
pub(crate) type DayFigures = [[f32; LANES]; Daily::ALL.len()];

/// The figures of a day just ended, before the tally is cleared.
pub(crate) fn figures(shell: &Shell, block: &Block) -> DayFigures {
    const GRAMS_A_DAY: f64 = 3_600.0 * 1_000.0;
    let mut figures = [[0.0; LANES]; Daily::ALL.len()];
    let (tally, stores, bees, fate) = (&block.tally, &block.stores, &block.bees, &block.fate);
    let litres = 1_000.0 * 287.05 * 273.15 / shell.pressure;
    for i in 0..LANES {
        let mut put = |what: Daily, value: f64| figures[what as usize][i] = value as f32;
        let excess = tally.excess[i] / 24.0;
        put(Daily::Stores, all_food(stores, i));
        put(Daily::Reachable, reachable(stores, i));
        put(Daily::Bees, total(bees, i));
        put(Daily::Brood, bees.open_brood[i] + bees.sealed_brood[i]);
        put(Daily::Died, bees.died[i]);
        put(Daily::Eaten, tally.eaten[i]);
        put(Daily::Queenright, fate.queenright[i]);
        put(Daily::Queenless, fate.queenless[i]);
        put(Daily::Warm, tally.warm[i] / 24.0);
        put(Daily::Cold, tally.cold[i] / 24.0);
        put(Daily::Heat, tally.heat[i] / 24.0);
        put(Daily::Loss, if excess > 0.2 { tally.heat[i] / 24.0 / excess } else { f64::NAN });
        put(Daily::Flow, (tally.through[i] + tally.exchange_low[i]) / 24.0 * litres);
        put(Daily::Lid, tally.lid[i] * GRAMS_A_DAY);
        put(Daily::Walls, tally.walls[i] * GRAMS_A_DAY);
        put(Daily::Floor, tally.floor[i] * GRAMS_A_DAY);
        put(Daily::Drip, tally.drip[i] * GRAMS_A_DAY);
        put(Daily::Frost, tally.frost[i] / 24.0);
        put(Daily::Damp, tally.damp[i] / 24.0);
    }
    figures
}

/// How the members of a block stand at the end.
pub(crate) fn member_end(block: &Block, i: usize) -> MemberEnd {
    let (stores, fate, bees) = (&block.stores, &block.fate, &block.bees);
    let hungry = stores.first_hungry_day[i];
    MemberEnd {
        queenright: fate.queenright[i],
        queenless: fate.queenless[i],
        ended: Ends::from_causes(std::array::from_fn(|cause| fate.ended[cause][i])),
        reachable: Kilogram::new(reachable(stores, i)),
        stores: Kilogram::new(all_food(stores, i)),
        used: Kilogram::new(stores.used[i]),
        bees: total(bees, i),
        first_hungry_day: hungry.is_finite().then_some(hungry as u32),
    }
}

fn reachable(stores: &crate::block::Stores, i: usize) -> f64 {
    stores.touched[i] + stores.above[i] + stores.beside[i] + stores.feed[i] + stores.crop[i]
}

fn all_food(stores: &crate::block::Stores, i: usize) -> f64 {
    reachable(stores, i) + stores.far[i] + stores.unusable[i]
}
