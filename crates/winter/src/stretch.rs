//! One block over some hours and days, on its own: the inner loop and what closes a day.

use jiff::ToSpan;
use snowhum_draws::Key;
use std::ops::Range;

use crate::block::{Block, Boundary, Tally, WALL};
use crate::daily::BlockDay;
use crate::engine::{Running, Yard};
use crate::environment::{Environment, Hour, Walk};
use crate::history::Record;
use crate::indoors::Rooms;
use crate::lanes::{LANES, exp};
use crate::laws::Laws;
use crate::shell::Shell;
use crate::step::colony::Season;
use crate::{start, step};

/// The outer face of a touching hive's wall, hour by hour and path by path, °C.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Faces {
    /// Hour of the run at which they begin.
    pub(crate) begins: usize,
    /// Hour-major, one for each path.
    pub(crate) values: Vec<f32>,
}

/// The outer face of a hive that touches another, for the whole span of an environment.
#[derive(Debug, Clone)]
pub struct WarmWall(pub(crate) Faces);

/// What one block leaves behind over some days.
#[derive(Default)]
pub(crate) struct Stretch {
    pub(crate) days: Vec<BlockDay>,
    pub(crate) wall: Vec<[f32; LANES]>,
}

/// Whether the outer face of the walls is kept for a hive beside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Lends {
    Yes,
    No,
}

impl Stretch {
    /// Takes block `index` of a colony, which stands apart from it meanwhile, over whole days.
    pub(crate) fn over(
        yard: &Yard<'_>,
        laws: &Laws,
        colony: &Running,
        (index, block): (usize, &mut Block),
        days: Range<usize>,
        (beside, lends, record): (Option<&Faces>, Lends, Record),
    ) -> Self {
        let mut stretch = Self::default();
        let members = colony.members.saturating_sub(index * LANES);
        for day in days {
            Hours {
                environment: yard.environment,
                rooms: &colony.rooms,
                shell: &colony.shell,
                laws,
                walk: &colony.walks[index],
                hours: 24 * day..24 * (day + 1),
                beside,
                wall: (lends == Lends::Yes).then_some(&mut stretch.wall),
                block,
            }
            .run();
            let closing = Closing {
                shell: &colony.shell,
                rooms: &colony.rooms,
                key: colony.key,
                dark_stores: colony.dark_stores,
            };
            close_day(yard, laws, closing, index, day, block);
            if record == Record::Days {
                stretch.days.push(BlockDay::of(&colony.shell, block, members));
            }
            block.tally = Tally::default();
        }
        stretch
    }
}

/// What closes a colony's day besides its members.
#[derive(Clone, Copy)]
pub(crate) struct Closing<'a> {
    pub(crate) shell: &'a Shell,
    pub(crate) rooms: &'a Rooms,
    pub(crate) key: Key,
    pub(crate) dark_stores: f64,
}

/// What happens once a day: bees age and die, brood is laid, hunger and fate are booked. The day's sums are left.
pub(crate) fn close_day(yard: &Yard<'_>, laws: &Laws, of: Closing<'_>, index: usize, day: usize, block: &mut Block) {
    scatter(laws, of.key, index, day, block);
    let season = of.rooms.seen(day, season(yard, day));
    laws.vectors.dispatch(Midnight { laws, season, of, day: day as f64, block });
}

/// The end of a day of one block, compiled as the hours are.
struct Midnight<'a> {
    laws: &'a Laws,
    season: Season,
    of: Closing<'a>,
    day: f64,
    block: &'a mut Block,
}

impl pulp::NullaryFnOnce for Midnight<'_> {
    type Output = ();

    #[inline(always)]
    fn call(self) {
        let block = self.block;
        for scatter in &mut block.bees.scatter {
            *scatter = exp(*scatter);
        }
        step::colony::age(self.laws, self.season, self.of.dark_stores, block);
        note_food(self.day, block);
        start::comb_capacity(self.of.shell, self.laws, block);
    }
}

/// The logarithm of the day's noise in deaths and laying, the same for all actions compared.
fn scatter(laws: &Laws, key: Key, index: usize, day: usize, block: &mut Block) {
    const DAILY: u32 = 6;
    let shift = 0.5 * laws.daily_scatter.powi(2);
    for lane in (0..LANES).step_by(4) {
        let group = ((index * LANES + lane) / 4) as u32;
        let z = key.normals([group, 0, day as u32, DAILY]);
        for (at, z) in z.into_iter().enumerate() {
            block.bees.scatter[lane + at] = laws.daily_scatter * z - shift;
        }
    }
}

#[inline(always)]
fn note_food(day: f64, block: &mut Block) {
    let (stores, tally) = (&mut block.stores, &block.tally);
    for i in 0..LANES {
        stores.used[i] += tally.eaten[i];
        let first = if stores.first_hungry_day[i] == f64::INFINITY { day } else { stores.first_hungry_day[i] };
        let reached = if stores.body_day[i] > 0.0 { stores.body_day[i] } else { day + 1.0 };
        stores.body_day[i] = if stores.body_taken[i] > 0.0 { reached } else { 0.0 };
        stores.first_hungry_day[i] = if stores.hungry_hours[i] > 0.0 { first } else { stores.first_hungry_day[i] };
    }
}

/// What the calendar says on a day of the run.
pub(crate) fn season(yard: &Yard<'_>, day: usize) -> Season {
    let date = yard.environment.first_day().saturating_add((day as i64).days());
    start::season(date, yard.environment, yard.parameters)
}

/// Hours of one block: the inner loop, compiled for the widest vectors the machine has.
pub(crate) struct Hours<'a> {
    pub(crate) environment: &'a Environment,
    /// Rooms that the hive stands in.
    pub(crate) rooms: &'a Rooms,
    pub(crate) shell: &'a Shell,
    pub(crate) laws: &'a Laws,
    pub(crate) walk: &'a Walk,
    pub(crate) hours: Range<usize>,
    /// Faces of the hive that warms this one.
    pub(crate) beside: Option<&'a Faces>,
    pub(crate) wall: Option<&'a mut Vec<[f32; LANES]>>,
    pub(crate) block: &'a mut Block,
}

impl Hours<'_> {
    pub(crate) fn run(self) {
        self.laws.vectors.dispatch(self);
    }
}

impl pulp::NullaryFnOnce for Hours<'_> {
    type Output = ();

    #[inline(always)]
    fn call(mut self) {
        let mut boundary = Boundary::default();
        let (mut outside, mut face) = (Hour::default(), [0.0; LANES]);
        let paths = self.environment.paths();
        for hour in self.hours {
            if !self.environment.hour(hour, self.walk, &mut outside) {
                return;
            }
            self.rooms.fill(hour, self.walk, self.environment.pressure(), &mut outside);
            let beside = self.beside.and_then(|faces| {
                let since = hour.checked_sub(faces.begins)?;
                let row = faces.values.get(since * paths..(since + 1) * paths)?;
                self.walk.gather(row, &mut face).then_some(&face)
            });
            step::boundary::fill(self.shell, &outside, beside, self.block, &mut boundary);
            step::hour(self.shell, self.laws, &boundary, self.block);
            if let Some(wall) = &mut self.wall {
                let mut face = [0.0; LANES];
                step::boundary::outer_face(self.shell, &boundary, &self.block.surfaces[WALL].mean, &mut face);
                wall.push(face);
            }
        }
    }
}
