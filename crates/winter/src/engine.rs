//! The one engine: a yard, a schedule and an environment go in, trajectories come out.
//!
//! A run is cut at the days of the schedule's events. Within a cut every block of every colony goes its own way, on as
//! many threads as there are; between cuts events act, one after the other. A hive that warms another is stepped
//! before it and hands on the mean temperature of its wall's outer face on each weather path.

use jiff::ToSpan;
use rayon::prelude::*;
use snowhum_apiary::{Colony, Hive};
use snowhum_draws::Key;

use crate::block::{Block, Boundary, Tally, WALL};
use crate::environment::Environment;
use crate::history::{DayFigures, Record, Trajectory, figures, member_end};
use crate::lanes::LANES;
use crate::laws::Laws;
use crate::schedule::Schedule;
use crate::shell::Shell;
use crate::step::colony::Season;
use crate::{Parameters, daylight, events, start, step};

/// A colony and the hive it lives in.
#[derive(Debug, Clone, PartialEq)]
pub struct Housed {
    /// The bees.
    pub colony: Colony,
    /// Their hive.
    pub hive: Hive,
    /// Place in the yard of the hive that touches this one.
    pub neighbour: Option<usize>,
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
pub(crate) struct Running {
    pub(crate) shell: Shell,
    pub(crate) frames_of_bees: f64,
    pub(crate) dark_stores: f64,
    pub(crate) key: Key,
    pub(crate) neighbour: Option<usize>,
    pub(crate) blocks: Vec<Block>,
}

/// Runs a yard from its environment's first hour to its last whole day.
///
/// The same yard, schedule and settings give the same answer on any number of threads.
#[must_use]
pub fn run(yard: &Yard<'_>, schedule: &Schedule, settings: Settings) -> Vec<Trajectory> {
    let laws = Laws::of(yard.parameters);
    let days = yard.environment.days();
    if days == 0 {
        return yard.colonies.iter().map(|_| Trajectory::new(0, 0, settings.record)).collect();
    }
    let mut running = enter(yard, settings);
    let mut trajectories: Vec<Trajectory> =
        running.iter().map(|_| Trajectory::new(settings.members, days, settings.record)).collect();
    let mut from = 0;
    for event in schedule.events().iter().filter(|event| event.day < days) {
        advance(yard, &laws, &mut running, &mut trajectories, from..event.day, settings.record);
        from = event.day;
        events::apply(yard, &laws, &mut running, event, from);
    }
    advance(yard, &laws, &mut running, &mut trajectories, from..days, settings.record);
    for (trajectory, colony) in trajectories.iter_mut().zip(&running) {
        trajectory.ends = (0..settings.members).map(|m| member_end(&colony.blocks[m / LANES], m % LANES)).collect();
    }
    trajectories
}

fn enter(yard: &Yard<'_>, settings: Settings) -> Vec<Running> {
    let enter_one = |housed: &Housed| {
        let colony = &housed.colony;
        let shell = Shell::of(&housed.hive, colony.frames_of_bees, yard.parameters, yard.environment.pressure());
        let key = Key::new(settings.seed, stream(colony));
        let blocks = (0..settings.members.div_ceil(LANES))
            .map(|index| start::block(colony, &shell, yard.environment, yard.parameters, key, index))
            .collect();
        Running {
            shell,
            frames_of_bees: colony.frames_of_bees,
            dark_stores: start::darkness(colony.stores.kind),
            key,
            neighbour: housed.neighbour,
            blocks,
        }
    };
    yard.colonies.iter().map(enter_one).collect()
}

/// The colony's own stream of random numbers, from its id.
fn stream(colony: &Colony) -> u64 {
    let (high, low) = colony.id.0.as_u64_pair();
    high ^ low
}

/// Steps all colonies over `days`, neighbours first.
fn advance(
    yard: &Yard<'_>,
    laws: &Laws,
    running: &mut [Running],
    trajectories: &mut [Trajectory],
    days: std::ops::Range<usize>,
    record: Record,
) {
    if days.is_empty() {
        return;
    }
    let lends: Vec<bool> = (0..running.len()).map(|at| running.iter().any(|r| r.neighbour == Some(at))).collect();
    let mut walls: Vec<Option<Vec<f32>>> = vec![None; running.len()];
    for lenders in [true, false] {
        let jobs = jobs(running, |at| lends[at] == lenders);
        let done: Vec<Stretch> = jobs
            .par_iter()
            .map(|&(at, index)| {
                let colony = &running[at];
                let beside = colony.neighbour.and_then(|lender| walls.get(lender)?.as_deref());
                Stretch::over(yard, laws, colony, index, days.clone(), beside, lenders, record)
            })
            .collect();
        if lenders {
            for at in (0..running.len()).filter(|at| lends[*at]) {
                let own = jobs.iter().zip(&done).filter(|((colony, _), _)| *colony == at);
                walls[at] = Some(mean_by_path(own.map(|((_, index), s)| (*index, &s.wall[..])), yard, &days));
            }
        }
        for ((at, index), stretch) in jobs.into_iter().zip(done) {
            for (offset, figures) in stretch.figures.iter().enumerate() {
                trajectories[at].put(index, days.start + offset, figures);
            }
            running[at].blocks[index] = stretch.block;
        }
    }
}

/// Blocks of the colonies whose turn it is, as (colony, block).
fn jobs(running: &[Running], turn: impl Fn(usize) -> bool) -> Vec<(usize, usize)> {
    let of = |at: usize| (0..running[at].blocks.len()).map(move |index| (at, index));
    (0..running.len()).filter(|&at| turn(at)).flat_map(of).collect()
}

/// The mean over members of a lender's wall, hour by hour and path by path.
fn mean_by_path<'a>(
    blocks: impl Iterator<Item = (usize, &'a [[f32; LANES]])>,
    yard: &Yard<'_>,
    days: &std::ops::Range<usize>,
) -> Vec<f32> {
    let paths = yard.environment.paths();
    let mut sums = vec![0.0f32; days.len() * 24 * paths];
    let mut counts = vec![0.0f32; paths / LANES];
    for (index, hours) in blocks {
        let group = index % (paths / LANES);
        counts[group] += 1.0;
        for (hour, lanes) in hours.iter().enumerate() {
            let first = hour * paths + group * LANES;
            for (sum, value) in sums[first..first + LANES].iter_mut().zip(lanes) {
                *sum += value;
            }
        }
    }
    for (at, sum) in sums.iter_mut().enumerate() {
        let group = (at % paths) / LANES;
        // Groups no member of the lender walks stay zero: a borrower has as many members, so it walks none of them.
        *sum /= counts[group].max(1.0);
    }
    sums
}

/// One block over some days, on its own.
struct Stretch {
    block: Block,
    figures: Vec<DayFigures>,
    wall: Vec<[f32; LANES]>,
}

impl Stretch {
    #[expect(clippy::too_many_arguments, reason = "one call site; a struct would only rename the list")]
    fn over(
        yard: &Yard<'_>,
        laws: &Laws,
        colony: &Running,
        index: usize,
        days: std::ops::Range<usize>,
        beside: Option<&[f32]>,
        lends: bool,
        record: Record,
    ) -> Self {
        let mut stretch = Self { block: colony.blocks[index].clone(), figures: Vec::new(), wall: Vec::new() };
        for day in days.clone() {
            Day {
                environment: yard.environment,
                shell: &colony.shell,
                laws,
                index,
                first_hour: 24 * day,
                beside: beside.map(|walls| (walls, 24 * days.start)),
                wall: lends.then_some(&mut stretch.wall),
                block: &mut stretch.block,
            }
            .run();
            let block = &mut stretch.block;
            scatter(laws, colony.key, index, day, block);
            let season = season(yard, day);
            step::colony::age(laws, season, colony.dark_stores, block);
            note_hunger(day, block);
            start::comb_capacity(&colony.shell, laws, block);
            if record == Record::Days {
                stretch.figures.push(figures(&colony.shell, block));
            }
            block.tally = Tally::default();
        }
        stretch
    }
}

/// The day's noise in deaths and laying, the same for all actions compared.
fn scatter(laws: &Laws, key: Key, index: usize, day: usize, block: &mut Block) {
    const DAILY: u32 = 6;
    for lane in (0..LANES).step_by(4) {
        let group = ((index * LANES + lane) / 4) as u32;
        let z = key.normals([group, 0, day as u32, DAILY]);
        for (at, z) in z.into_iter().enumerate() {
            block.bees.scatter[lane + at] = (laws.daily_scatter * z - 0.5 * laws.daily_scatter.powi(2)).exp();
        }
    }
}

fn note_hunger(day: usize, block: &mut Block) {
    for i in 0..LANES {
        block.stores.used[i] += block.tally.eaten[i];
        if block.stores.hungry_hours[i] > 0.0 && block.stores.first_hungry_day[i].is_infinite() {
            block.stores.first_hungry_day[i] = day as f64;
        }
    }
}

/// What the calendar says on a day of the run.
pub(crate) fn season(yard: &Yard<'_>, day: usize) -> Season {
    let latitude = yard.environment.latitude();
    let date = yard.environment.first_day().saturating_add((day as i64).days());
    let today = daylight::hours(date.day_of_year(), latitude);
    let tomorrow = daylight::hours(date.day_of_year() + 1, latitude);
    Season {
        winter_bee_age: start::winter_bee_age(date, yard.parameters, latitude.get()),
        day_length: today,
        rising: tomorrow > today,
    }
}

/// One day of hours for one block: the inner loop, compiled for the widest vectors the machine has.
struct Day<'a> {
    environment: &'a Environment,
    shell: &'a Shell,
    laws: &'a Laws,
    index: usize,
    first_hour: usize,
    /// Walls of the lender, and the hour its series begins at.
    beside: Option<(&'a [f32], usize)>,
    wall: Option<&'a mut Vec<[f32; LANES]>>,
    block: &'a mut Block,
}

impl Day<'_> {
    fn run(self) {
        pulp::Arch::new().dispatch(self);
    }
}

impl pulp::NullaryFnOnce for Day<'_> {
    type Output = ();

    #[inline(always)]
    fn call(mut self) {
        let mut boundary = Boundary::default();
        let paths = self.environment.paths();
        for hour in self.first_hour..self.first_hour + 24 {
            let Some(outside) = self.environment.hour(hour, self.index) else { return };
            let beside = self.beside.and_then(|(walls, begins)| {
                let first = (hour - begins) * paths + (self.index * LANES) % paths;
                <&[f32; LANES]>::try_from(walls.get(first..first + LANES)?).ok()
            });
            step::boundary::fill(self.shell, &outside, beside, &mut boundary);
            step::hour(self.shell, self.laws, &boundary, self.block);
            if let Some(wall) = &mut self.wall {
                let mut face = [0.0; LANES];
                step::boundary::outer_face(self.shell, &boundary, &self.block.surfaces[WALL].mean, &mut face);
                wall.push(face);
            }
        }
    }
}
