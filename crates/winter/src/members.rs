//! A colony's members on their way through the winter: stepped to any hour, looked at, acted on, and chosen from.
//!
//! [`run`](crate::run) makes a winter from end to end. Here whoever watches the colony keeps the reins: members are
//! stepped to the hour of a visit, weighed from outside, and those that fit are carried on.

use rayon::prelude::*;
use std::ops::Range;
use std::sync::Mutex;

use crate::block::{Block, CopyLane, Tally};
use crate::engine::{Running, Settings, Yard, mean_by_path, put};
use crate::environment::Walk;
use crate::events;
use crate::history::{MemberEnd, Record, Trajectory, member_end};
use crate::lanes::LANES;
use crate::laws::Laws;
use crate::schedule::{Action, Event};
use crate::step::colony;
use crate::stretch::{Closing, Hours, Lends, Stretch, WarmWall, close_day};

impl WarmWall {
    /// The wall of colony `place` through the whole environment, under what is done in the yard; `None` if there is no
    /// such colony. It is the mean over members that no sign has been weighed by: what is beside a hive is known no
    /// better than that, and so no colony's estimate hangs on another's.
    #[must_use]
    pub fn of(yard: &Yard<'_>, place: usize, actions: &[(usize, Action)], seed: u64) -> Option<Self> {
        let members = yard.environment.paths();
        let settings = Settings { members, seed, record: Record::End };
        let laws = Laws::of(yard.parameters);
        let mut running = Running::enter(yard, yard.colonies.get(place)?, settings);
        let days = yard.environment.days();
        let mut walls: Vec<Vec<[f32; LANES]>> = vec![Vec::new(); running.blocks.len()];
        let mut from = 0;
        let ends = actions.iter().map(|(day, action)| (*day, Some(action))).chain([(days, None)]);
        for (day, action) in ends.filter(|(day, _)| *day <= days) {
            let mut blocks = std::mem::take(&mut running.blocks);
            for (index, (block, wall)) in blocks.iter_mut().zip(&mut walls).enumerate() {
                let how = (None, Lends::Yes, Record::End);
                let over = from..day.max(from);
                wall.extend(Stretch::over(yard, &laws, &running, (index, block), over, how).wall);
            }
            running.blocks = blocks;
            from = day.max(from);
            if let Some(action) = action {
                let event = Event { day, colony: 0, action: action.clone() };
                events::apply(yard, &laws, std::slice::from_mut(&mut running), &event, day);
            }
        }
        let own = running.walks.iter().zip(walls.iter().map(Vec::as_slice));
        Some(Self(mean_by_path(own, yard.environment.paths(), &(0..days))))
    }
}

/// Blocks that one thread steps a day of at a time: fewer are not worth handing over.
const TOGETHER: usize = 4;

/// The members of one colony at one hour.
#[derive(Debug, Clone)]
pub struct Members {
    running: Running,
    laws: Laws,
    hour: usize,
}

impl Members {
    /// Members as they enter the run, drawn from what the keeper knows of colony `place` of the yard; `None` if the yard
    /// has no such colony.
    #[must_use]
    pub fn enter(yard: &Yard<'_>, place: usize, settings: Settings) -> Option<Self> {
        let running = Running::enter(yard, yard.colonies.get(place)?, settings);
        Some(Self { running, laws: Laws::of(yard.parameters), hour: 0 })
    }

    /// The same hive without bees: what a dead hive's air does. It holds one member for each of 32 paths.
    #[must_use]
    pub fn empty_hive(yard: &Yard<'_>, place: usize, seed: u64) -> Option<Self> {
        let settings = Settings { members: LANES, seed, record: Record::End };
        let mut empty = Self::enter(yard, place, settings)?;
        for block in &mut empty.running.blocks {
            events::empty(&empty.laws, block);
        }
        Some(empty)
    }

    /// How many.
    #[must_use]
    pub fn count(&self) -> usize {
        self.running.members
    }

    /// Hours since the start of the environment.
    #[must_use]
    pub fn hour(&self) -> usize {
        self.hour
    }

    /// Steps all members to the end of `hour - 1`, and closes the day that ends there, if one does. At most to the next
    /// midnight: every day is closed by itself, so that its sums can be read before the next begins. Returns whether a
    /// day was closed.
    pub fn step_to(&mut self, yard: &Yard<'_>, beside: Option<&WarmWall>, hour: usize) -> bool {
        let midnight = (self.hour / 24 + 1) * 24;
        let until = hour.min(midnight).min(24 * yard.environment.days());
        if until <= self.hour {
            return false;
        }
        let closes = until == midnight;
        let mut blocks = std::mem::take(&mut self.running.blocks);
        blocks.par_iter_mut().with_min_len(TOGETHER).enumerate().for_each(|(index, block)| {
            self.step_block(yard, beside, (index, block), until);
            if closes {
                self.close(yard, (index, block), until / 24 - 1);
            }
        });
        self.running.blocks = blocks;
        self.hour = until;
        closes
    }

    /// Steps a block, which stands apart from its colony meanwhile.
    fn step_block(
        &self,
        yard: &Yard<'_>,
        beside: Option<&WarmWall>,
        (index, block): (usize, &mut Block),
        until: usize,
    ) {
        if self.hour.is_multiple_of(24) {
            block.tally = Tally::default();
        }
        Hours {
            environment: yard.environment,
            rooms: &self.running.rooms,
            shell: &self.running.shell,
            laws: &self.laws,
            walk: &self.running.walks[index],
            hours: self.hour..until,
            beside: beside.map(|wall| &wall.0),
            wall: None,
            block,
        }
        .run();
    }

    fn close(&self, yard: &Yard<'_>, (index, block): (usize, &mut Block), day: usize) {
        let running = &self.running;
        let closing = Closing {
            shell: &running.shell,
            rooms: &running.rooms,
            key: running.key,
            dark_stores: running.dark_stores,
        };
        close_day(yard, &self.laws, closing, index, day, block);
    }

    /// Runs these members on to the last whole day, doing `actions` (a day of the environment and what is done in the
    /// night before it, in order) on the way. Day 0 of the trajectory, and of its hunger, is the first day that begins at
    /// or after this hour; members should stand at a midnight.
    #[must_use]
    pub fn run_on(
        mut self,
        yard: &Yard<'_>,
        beside: Option<&WarmWall>,
        actions: &[(usize, Action)],
        record: Record,
    ) -> Trajectory {
        let (first, days) = (self.hour.div_ceil(24), yard.environment.days());
        self.forget_hunger(first);
        let mut trajectory = Trajectory::new(self.running.members, days.saturating_sub(first), record);
        let mut from = first;
        let stops = actions.iter().map(|(day, action)| (*day, Some(action))).chain([(days, None)]);
        for (day, action) in stops.filter(|(day, _)| (first..=days).contains(day)) {
            self.stretch(yard, beside, from..day.max(from), (first, record), &mut trajectory);
            from = day.max(from);
            self.hour = 24 * from;
            if let Some(action) = action {
                self.act(yard, action.clone());
            }
        }
        let since = |end: MemberEnd| MemberEnd {
            first_hungry_day: end.first_hungry_day.map(|day| day.saturating_sub(first as u32)),
            body_reached: end.body_reached.map(|day| day.saturating_sub(first as u32)),
            ..end
        };
        trajectory.ends = (0..self.running.members).map(|m| since(member_end(self.parts(m).0, m % LANES))).collect();
        trajectory
    }

    /// Hunger that is over is not the hunger a forecast asks for.
    fn forget_hunger(&mut self, day: usize) {
        for block in &mut self.running.blocks {
            let stores = &mut block.stores;
            for (since, hours) in stores.first_hungry_day.iter_mut().zip(&stores.hungry_hours) {
                *since = if *hours > 0.0 { day as f64 } else { f64::INFINITY };
            }
        }
    }

    fn stretch(
        &mut self,
        yard: &Yard<'_>,
        beside: Option<&WarmWall>,
        days: Range<usize>,
        (first, record): (usize, Record),
        trajectory: &mut Trajectory,
    ) {
        let mut blocks = std::mem::take(&mut self.running.blocks);
        let (running, laws) = (&self.running, &self.laws);
        let how = (beside.map(|wall| &wall.0), Lends::No, record);
        let place = Mutex::new(trajectory);
        blocks.par_iter_mut().enumerate().for_each(|(index, block)| {
            let stretch = Stretch::over(yard, laws, running, (index, block), days.clone(), how);
            put(&stretch.days, index, days.start - first, &place);
        });
        self.running.blocks = blocks;
    }

    /// Does what a keeper did at this hour.
    pub fn act(&mut self, yard: &Yard<'_>, action: Action) {
        let day = self.hour / 24;
        let event = Event { day, colony: 0, action };
        events::apply(yard, &self.laws, std::slice::from_mut(&mut self.running), &event, day);
    }

    /// Takes in the bees, brood and food of another colony, member by member, as far as that was likely to be alive.
    pub fn receive_colony(&mut self, given: &Self, alive: f64) {
        for (block, given) in self.running.blocks.iter_mut().zip(given.running.blocks.iter().cycle()) {
            let mut given = given.clone();
            for chance in given.fate.queenright.iter_mut().chain(&mut given.fate.queenless) {
                *chance *= alive;
            }
            events::join(&self.laws, &given, block);
        }
        self.settle(0..self.running.members);
    }

    /// Carries on these members, one for each place, each with its weather.
    pub fn select(&mut self, ancestors: &[usize]) {
        let before = self.running.clone();
        self.running.members = ancestors.len();
        let blocks = ancestors.len().div_ceil(LANES);
        self.running.blocks.resize_with(blocks, Default::default);
        self.running.walks.resize(blocks, Walk::InOrder(0));
        for index in 0..blocks {
            let mut paths = [0; LANES];
            for (lane, path) in paths.iter_mut().enumerate() {
                // Lanes past the last member repeat members, so that they hold nothing odd.
                let ancestor = ancestors[(index * LANES + lane) % ancestors.len()];
                let (from_block, from) = (ancestor / LANES, ancestor % LANES);
                self.running.blocks[index].copy_lane(lane, &before.blocks[from_block], from);
                *path = before.walks[from_block].path(from) as u32;
            }
            self.running.walks[index] = Walk::Each(paths);
        }
    }

    /// Deals the weather afresh: member `m` walks path `m mod paths` from now on. Right where all paths have been the
    /// same so far, and wherever a forecast begins.
    pub fn deal_weather(&mut self, yard: &Yard<'_>) {
        for (index, walk) in self.running.walks.iter_mut().enumerate() {
            *walk = Walk::of_block(index, yard.environment.paths());
        }
    }

    /// The weather path that member `m` walks.
    #[must_use]
    pub fn path(&self, m: usize) -> usize {
        self.running.walks.get(m / LANES).map_or(0, |walk| walk.path(m % LANES))
    }

    pub(crate) fn parts(&self, m: usize) -> (&crate::block::Block, usize) {
        (&self.running.blocks[m / LANES], m % LANES)
    }

    pub(crate) fn parts_mut(&mut self, m: usize) -> (&mut crate::block::Block, usize) {
        (&mut self.running.blocks[m / LANES], m % LANES)
    }

    pub(crate) fn shell(&self) -> &crate::shell::Shell {
        &self.running.shell
    }

    /// Frames the colony filled when it was counted, and the bees on them.
    pub(crate) fn counted(&self) -> (f64, f64) {
        (self.running.cluster.frames, self.running.bees_counted)
    }

    pub(crate) fn laws(&self) -> &Laws {
        &self.laws
    }

    /// Brings up to date what follows from bees and stores, after either was changed from outside.
    pub(crate) fn settle(&mut self, members: Range<usize>) {
        let blocks = members.start / LANES..members.end.div_ceil(LANES);
        for block in &mut self.running.blocks[blocks] {
            colony::resize(&self.laws, &block.traits, &mut block.bees);
            crate::start::comb_capacity(&self.running.shell, &self.laws, block);
        }
    }
}
