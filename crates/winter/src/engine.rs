//! The one engine: a yard, a schedule and an environment go in, trajectories come out.
//!
//! A run is cut at the days of the schedule's events. Within a cut every block of every colony goes its own way, on as
//! many threads as there are; between cuts events act, one after the other. A hive that warms another is stepped
//! before it and hands on the mean temperature of its wall's outer face on each weather path.

use rayon::prelude::*;
use snowhum_apiary::{Colony, Hive};
use snowhum_draws::Key;
use std::ops::Range;
use std::sync::{Mutex, PoisonError};

use crate::block::Block;
use crate::daily::BlockDay;
use crate::environment::{Environment, Walk};
use crate::history::{Record, Trajectory, member_end};
use crate::indoors::{RoomStay, Rooms};
use crate::joint::World;
use crate::lanes::LANES;
use crate::laws::Laws;
use crate::schedule::Schedule;
use crate::shell::{Cluster, Shell};
use crate::stretch::{Faces, Lends, Stretch, WarmWall};
use crate::{Parameters, Vectors, events, start};

/// A colony and the hive it lives in.
#[derive(Debug, Clone, PartialEq)]
pub struct Housed {
    /// The bees.
    pub colony: Colony,
    /// Their hive.
    pub hive: Hive,
    /// Place in the yard of the hive that touches this one.
    pub neighbour: Option<usize>,
    /// When it stands indoors, in order of time.
    pub stays: Vec<RoomStay>,
}

/// What a run is made of.
#[derive(Debug, Clone, Copy)]
pub struct Yard<'a> {
    /// The outside.
    pub environment: &'a Environment,
    /// The model's parameters.
    pub parameters: &'a Parameters,
    /// The colonies, in an order of their own; draws depend on their ids, not on their places.
    pub colonies: &'a [Housed],
}

/// How a run is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Settings {
    /// Members of the ensemble for each colony.
    pub members: usize,
    /// Seed of all draws.
    pub seed: u64,
    /// What is kept.
    pub record: Record,
}

/// One colony while a run lasts.
#[derive(Debug, Clone)]
pub(crate) struct Running {
    pub(crate) shell: Shell,
    pub(crate) rooms: Rooms,
    pub(crate) cluster: Cluster,
    /// Bees on those frames.
    pub(crate) bees_counted: f64,
    pub(crate) dark_stores: f64,
    pub(crate) key: Key,
    pub(crate) neighbour: Option<usize>,
    pub(crate) members: usize,
    pub(crate) blocks: Vec<Block>,
    /// The weather each block's lanes walk through.
    pub(crate) walks: Vec<Walk>,
}

/// Runs a yard from its environment's first hour to its last whole day.
///
/// The same yard, schedule and settings give the same answer on any number of threads.
#[must_use]
pub fn run(yard: &Yard<'_>, schedule: &Schedule, settings: Settings) -> Vec<Trajectory> {
    run_with(Vectors::Widest, yard, schedule, settings)
}

/// [`run`] with vectors of a given width: the same answer, in another time.
#[must_use]
pub fn run_with(vectors: Vectors, yard: &Yard<'_>, schedule: &Schedule, settings: Settings) -> Vec<Trajectory> {
    let mut course = Course::of(yard, settings);
    course.laws.vectors = vectors;
    course.run(schedule).0
}

/// [`run`] with nothing done, and the wall of each hive that warms another.
#[must_use]
pub fn run_lending(yard: &Yard<'_>, settings: Settings) -> (Vec<Trajectory>, Vec<Option<WarmWall>>) {
    let (trajectories, faces) = Course::of(yard, settings).run(&Schedule::default());
    (trajectories, faces.into_iter().map(|faces| Some(WarmWall(faces?))).collect())
}

/// [`run`] of a part of a yard: `walls` holds, for each of its colonies, the wall of a hive that is not run again.
#[must_use]
pub fn run_beside(
    yard: &Yard<'_>,
    walls: &[Option<&WarmWall>],
    schedule: &Schedule,
    settings: Settings,
) -> Vec<Trajectory> {
    Course { walls, ..Course::of(yard, settings) }.run(schedule).0
}

/// What stays the same over a run.
struct Course<'a> {
    yard: &'a Yard<'a>,
    laws: Laws,
    walls: &'a [Option<&'a WarmWall>],
    settings: Settings,
}

impl Running {
    /// A colony at the start of a run.
    pub(crate) fn enter(yard: &Yard<'_>, housed: &Housed, settings: Settings) -> Self {
        let colony = &housed.colony;
        let cluster = start::cluster(colony, yard.parameters);
        let shell = Shell::of(&housed.hive, cluster, yard.parameters, yard.environment.pressure());
        let key = Key::new(settings.seed, stream(colony));
        let indices = 0..settings.members.div_ceil(LANES);
        let world = World::new(settings.seed);
        let body = housed.hive.food_body;
        let block = |index| {
            let entered = start::block(colony, &shell, (yard.environment, yard.parameters), (key, world), index);
            events::with_body(entered, body)
        };
        Self {
            blocks: indices.clone().map(block).collect(),
            walks: indices.map(|index| Walk::of_block(index, yard.environment.paths())).collect(),
            shell,
            rooms: Rooms::of(&housed.stays, yard.environment),
            cluster,
            bees_counted: colony.bees.p50,
            dark_stores: start::darkness(colony.stores.kind),
            key,
            neighbour: housed.neighbour,
            members: settings.members,
        }
    }
}

/// The colony's own stream of random numbers, from its id.
fn stream(colony: &Colony) -> u64 {
    let (high, low) = colony.id.0.as_u64_pair();
    high ^ low
}

impl<'a> Course<'a> {
    fn of(yard: &'a Yard<'a>, settings: Settings) -> Self {
        Self { yard, laws: Laws::of(yard.parameters), walls: &[], settings }
    }

    /// The run, and the outer faces of the lenders since the last event.
    fn run(&self, schedule: &Schedule) -> (Vec<Trajectory>, Vec<Option<Faces>>) {
        let (yard, settings) = (self.yard, self.settings);
        let days = yard.environment.days();
        let nothing = |members| yard.colonies.iter().map(|_| Trajectory::new(members, days, settings.record)).collect();
        if days == 0 {
            return (nothing(0), vec![None; yard.colonies.len()]);
        }
        let mut trajectories: Vec<Trajectory> = nothing(settings.members);
        let enter = |housed| Running::enter(yard, housed, settings);
        let mut running: Vec<Running> = yard.colonies.iter().map(enter).collect();
        let mut from = 0;
        for event in schedule.events().iter().filter(|event| event.day < days) {
            self.advance(&mut running, &mut trajectories, from..event.day);
            from = event.day;
            events::apply(yard, &self.laws, &mut running, event, from);
        }
        let faces = self.advance(&mut running, &mut trajectories, from..days);
        for (trajectory, colony) in trajectories.iter_mut().zip(&running) {
            trajectory.ends = (0..settings.members).map(|m| member_end(&colony.blocks[m / LANES], m % LANES)).collect();
        }
        (trajectories, faces)
    }

    /// Steps all colonies over `days`, neighbours first; returns the outer faces of those that warm another.
    fn advance(
        &self,
        running: &mut [Running],
        trajectories: &mut [Trajectory],
        days: Range<usize>,
    ) -> Vec<Option<Faces>> {
        let mut faces: Vec<Option<Faces>> = vec![None; running.len()];
        if days.is_empty() {
            return faces;
        }
        let lends: Vec<bool> = (0..running.len()).map(|at| running.iter().any(|r| r.neighbour == Some(at))).collect();
        let places: Vec<Mutex<&mut Trajectory>> = trajectories.iter_mut().map(Mutex::new).collect();
        // Blocks are stepped where they lie, apart from what their colony only reads.
        let mut blocks: Vec<Vec<Block>> = running.iter_mut().map(|colony| std::mem::take(&mut colony.blocks)).collect();
        for turn in [Lends::Yes, Lends::No] {
            let mut jobs = jobs(&mut blocks, |at| lends[at] == (turn == Lends::Yes));
            let step = |(at, index, block): &mut (usize, usize, &mut Block)| {
                let colony = &running[*at];
                let known = self.walls.get(*at).and_then(|wall| wall.map(|wall| &wall.0));
                let beside = colony.neighbour.map_or(known, |lender| faces.get(lender)?.as_ref());
                let how = (beside, turn, self.settings.record);
                let stretch = Stretch::over(self.yard, &self.laws, colony, (*index, block), days.clone(), how);
                put(&stretch.days, *index, days.start, &places[*at]);
                stretch.wall
            };
            let walls: Vec<Vec<[f32; LANES]>> = jobs.par_iter_mut().map(step).collect();
            for at in (0..running.len()).filter(|at| turn == Lends::Yes && lends[*at]) {
                let own = jobs.iter().zip(&walls).filter(|((colony, ..), _)| *colony == at);
                let walls = own.map(|((_, index, _), wall)| (&running[at].walks[*index], &wall[..]));
                faces[at] = Some(mean_by_path(walls, self.yard.environment.paths(), &days));
            }
        }
        for (colony, blocks) in running.iter_mut().zip(blocks) {
            colony.blocks = blocks;
        }
        faces
    }
}

/// Puts the days of a block in their places as soon as it is through, so that they are never held twice.
pub(crate) fn put(of_block: &[BlockDay], index: usize, first_day: usize, place: &Mutex<&mut Trajectory>) {
    let mut trajectory = place.lock().unwrap_or_else(PoisonError::into_inner);
    for (offset, day) in of_block.iter().enumerate() {
        trajectory.put(index, first_day + offset, day);
    }
}

/// Blocks of the colonies whose turn it is, as (colony, index, block).
fn jobs(blocks: &mut [Vec<Block>], turn: impl Fn(usize) -> bool) -> Vec<(usize, usize, &mut Block)> {
    let due = blocks.iter_mut().enumerate().filter(|(at, _)| turn(*at));
    due.flat_map(|(at, own)| own.iter_mut().enumerate().map(move |(index, block)| (at, index, block))).collect()
}

/// The mean over members of a lender's wall, hour by hour and path by path.
pub(crate) fn mean_by_path<'a>(
    blocks: impl Iterator<Item = (&'a Walk, &'a [[f32; LANES]])>,
    paths: usize,
    days: &Range<usize>,
) -> Faces {
    let mut sums = vec![0.0f32; days.len() * 24 * paths];
    let mut counts = vec![0.0f32; paths];
    for (walk, hours) in blocks {
        let walked: [usize; LANES] = std::array::from_fn(|lane| walk.path(lane));
        for path in walked {
            counts[path] += 1.0;
        }
        for (hour, lanes) in hours.iter().enumerate() {
            for (path, value) in walked.iter().zip(lanes) {
                sums[hour * paths + path] += value;
            }
        }
    }
    for (at, sum) in sums.iter_mut().enumerate() {
        // Paths no member of the lender walks stay zero: a borrower has as many members, so it walks none of them.
        *sum /= counts[at % paths].max(1.0);
    }
    Faces { begins: 24 * days.start, values: sums }
}
