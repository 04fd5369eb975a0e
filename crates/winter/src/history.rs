//! What a run leaves behind: a day's figures for each member, and how each stood at the end.

use half::f16;
use snowhum_units::Kilogram;

use crate::block::Block;
use crate::daily::{BlockDay, Daily, HiveDaily, HiveSums, all_food, reachable};
use crate::ends::Ends;
use crate::lanes::LANES;
use crate::step::colony::total;

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
    /// By figure, day and member, in multiples of the figure's unit.
    daily: Vec<f16>,
    /// By day and block.
    hive: Vec<HiveSums>,
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
    /// First day on which bees ate of the body of food on the hive.
    pub body_reached: Option<u32>,
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
        Self {
            members,
            days: kept,
            daily: vec![f16::ZERO; Daily::ALL.len() * kept * members],
            hive: vec![HiveSums::default(); kept * members.div_ceil(LANES)],
            ends: Vec::new(),
        }
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

    /// A day's figure of all members, in order; none if that day was not kept.
    pub fn day(&self, what: Daily, day: usize) -> impl ExactSizeIterator<Item = f32> + '_ {
        let first = (what as usize * self.days + day) * self.members;
        let values = if day < self.days { self.daily.get(first..first + self.members) } else { None };
        values.unwrap_or(&[]).iter().map(move |value| value.to_f32() * what.unit())
    }

    /// A day's figure of one member; `None` if that day was not kept or there is no such member.
    #[must_use]
    pub fn of_member(&self, what: Daily, day: usize, member: usize) -> Option<f32> {
        if day >= self.days || member >= self.members {
            return None;
        }
        let value = self.daily.get((what as usize * self.days + day) * self.members + member)?;
        Some(value.to_f32() * what.unit())
    }

    /// The mean of a figure of the hive over some days and all members, each day of each member weighed by its chance of
    /// being alive; `None` where none of these days was kept or no member lives.
    #[must_use]
    pub fn hive(&self, what: HiveDaily, days: impl IntoIterator<Item = usize>) -> Option<f64> {
        let blocks = self.members.div_ceil(LANES);
        let of_day = |day: usize| self.hive.get(day * blocks..(day + 1) * blocks).unwrap_or(&[]);
        let weighed = days.into_iter().flat_map(of_day).map(|block| block.weighed(what));
        let (sum, weight) = weighed.fold((0.0, 0.0), |(sum, all), (value, weight)| (sum + value, all + weight));
        (weight > 0.0).then(|| sum / weight)
    }

    /// Writes a block's day into its members' places.
    pub(crate) fn put(&mut self, index: usize, day: usize, of: &BlockDay) {
        let first_member = index * LANES;
        let lanes = LANES.min(self.members.saturating_sub(first_member));
        for (what, values) in of.members.iter().enumerate() {
            let first = (what * self.days + day) * self.members + first_member;
            if let Some(places) = self.daily.get_mut(first..first + lanes) {
                places.copy_from_slice(&values[..lanes]);
            }
        }
        if let Some(place) = self.hive.get_mut(day * self.members.div_ceil(LANES) + index) {
            *place = of.hive;
        }
    }
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
        body_reached: (stores.body_day[i] > 0.0).then(|| stores.body_day[i] as u32 - 1),
    }
}
