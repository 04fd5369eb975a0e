//! What lies ahead of a yard, run as often as it takes on the same weather and the same random numbers.

use std::ops::Range;
use std::sync::{Mutex, MutexGuard, PoisonError};

use rayon::prelude::*;
use snowhum_apiary::NotedOpenings;
use snowhum_watch::{Outlook, Scene};
use snowhum_winter::{
    Action, Environment, Event, Housed, Parameters, Record, Schedule, Settings, Trajectory, WarmWall, Yard, run_beside,
    run_lending,
};

/// Where a run starts from.
pub(crate) enum Ahead<'a> {
    /// From what the keeper found on the plan's first day.
    FromStart(FromStart<'a>),
    /// From what the watch believes at the end of a day.
    Watched(Watched<'a>),
}

/// Times as many members as are run again that walk the first run from a start.
const MANY: usize = 4;

/// Colonies as a keeper found them.
pub(crate) struct FromStart<'a> {
    environment: Environment,
    parameters: &'a Parameters,
    /// Walls that warm a hive, by the lender's place, as they were in the first run.
    walls: Vec<Option<WarmWall>>,
    made: Made<Together, Vec<Trajectory>>,
}

/// Colonies as the watch believes them to be.
pub(crate) struct Watched<'a> {
    /// What the watch stands on.
    pub(crate) scene: Scene<'a>,
    /// Living members of each colony.
    pub(crate) outlooks: &'a [Outlook],
    /// The wall that warms each colony.
    pub(crate) beside: &'a [Option<WarmWall>],
    /// Days of the environment that lie behind.
    pub(crate) behind: usize,
    /// Entrance and upper hole of each colony as they were last noted.
    pub(crate) openings: Vec<NotedOpenings>,
    pub(crate) made: Made<Alone, Trajectory>,
}

/// Colonies run together, what was done to them, and how.
type Together = (Vec<Housed>, Vec<Event>, Settings);
/// A colony's place, its members and what was done to it.
type Alone = (usize, usize, Vec<(usize, Action)>);

/// Ends of runs that were made, by what was asked: what is weighed by itself is asked for again with the rest of a programme.
pub(crate) struct Made<Asked, Ends>(Mutex<Vec<(Asked, Ends)>>);

impl<Asked, Ends> Default for Made<Asked, Ends> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

impl<Asked: PartialEq, Ends: Clone> Made<Asked, Ends> {
    /// What the same asked before ended in; where that is not known, or days are kept, the run is made.
    fn or_run(&self, asked: Asked, record: Record, run: impl FnOnce(&Asked) -> Ends) -> Ends {
        if record != Record::End {
            return run(&asked);
        }
        if let Some((_, ends)) = self.known().iter().find(|(before, _)| *before == asked) {
            return ends.clone();
        }
        let ends = run(&asked);
        self.known().push((asked, ends.clone()));
        ends
    }

    fn known(&self) -> MutexGuard<'_, Vec<(Asked, Ends)>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Ahead<'_> {
    /// Days ahead.
    pub(crate) fn days(&self) -> usize {
        match self {
            Self::FromStart(start) => start.environment.days(),
            Self::Watched(watched) => watched.scene.yard.environment.days().saturating_sub(watched.behind),
        }
    }

    /// The weather ahead, and the days of it that lie behind.
    pub(crate) fn weather(&self) -> (&Environment, usize) {
        match self {
            Self::FromStart(start) => (&start.environment, 0),
            Self::Watched(watched) => (watched.scene.yard.environment, watched.behind),
        }
    }

    /// The weather ahead, and the first so many days of it, as far as it goes.
    pub(crate) fn first_days(&self, days: usize) -> (&Environment, Range<usize>) {
        let (environment, behind) = self.weather();
        (environment, behind..(behind + days).min(environment.days()))
    }

    /// Whether every colony runs by itself, beside a wall that is as warm whatever is done: nothing done to one then touches
    /// another.
    pub(crate) fn is_each_alone(&self) -> bool {
        matches!(self, Self::Watched(_))
    }

    /// Chance that a colony is alive where the run starts; its members all are.
    pub(crate) fn alive(&self, place: usize) -> f64 {
        match self {
            Self::FromStart(..) => 1.0,
            Self::Watched(watched) => watched.outlooks.get(place).map_or(0.0, |outlook| outlook.alive),
        }
    }

    /// Entrance and upper hole of a colony as they were last noted.
    pub(crate) fn openings(&self, place: usize) -> NotedOpenings {
        match self {
            Self::FromStart(..) => NotedOpenings::default(),
            Self::Watched(watched) => watched.openings.get(place).copied().unwrap_or_default(),
        }
    }

    /// Runs all colonies as they are. From a start so many more members walk it than any run again: what few of them lack, the
    /// many tell.
    pub(crate) fn first_run(&mut self, housed: &[Housed], settings: Settings) -> Vec<Trajectory> {
        match self {
            Self::FromStart(start) => {
                let yard = Yard { environment: &start.environment, parameters: start.parameters, colonies: housed };
                let many = Settings { members: MANY * settings.members, ..settings };
                let (trajectories, walls) = run_lending(&yard, many);
                start.walls = walls;
                trajectories
            }
            Self::Watched(_) => self.run(housed, &(0..housed.len()).collect::<Vec<_>>(), &[], settings),
        }
    }

    /// Runs the colonies at `places` of those housed; events count days from the start of what lies ahead.
    pub(crate) fn run(
        &self,
        housed: &[Housed],
        places: &[usize],
        events: &[Event],
        settings: Settings,
    ) -> Vec<Trajectory> {
        match self {
            Self::FromStart(start) => start.run(housed, places, events, settings),
            Self::Watched(watched) => places.par_iter().map(|&place| watched.run(place, events, settings)).collect(),
        }
    }
}

impl<'a> FromStart<'a> {
    pub(crate) fn new(environment: Environment, parameters: &'a Parameters) -> Self {
        Self { environment, parameters, walls: Vec::new(), made: Made::default() }
    }

    /// Runs what hangs together by itself, and what was run before not again.
    fn run(&self, housed: &[Housed], places: &[usize], events: &[Event], settings: Settings) -> Vec<Trajectory> {
        let groups = groups(housed, &self.with_lenders(housed, places, events), events);
        let runs = groups.into_par_iter().map(|group| (self.run_group(housed, &group, events, settings), group));
        let mut runs: Vec<(usize, Trajectory)> =
            runs.flat_map_iter(|(runs, group)| group.into_iter().zip(runs)).collect();
        runs.retain(|(place, _)| places.contains(place));
        runs.sort_by_key(|(place, _)| *place);
        runs.into_iter().map(|(_, run)| run).collect()
    }

    /// The places, and of the hives that warm them those to which something is done: the others' walls are known.
    fn with_lenders(&self, housed: &[Housed], places: &[usize], events: &[Event]) -> Vec<usize> {
        let mut all = places.to_vec();
        let mut at = 0;
        while let Some(&place) = all.get(at) {
            let lender = housed[place].neighbour.filter(|lender| !all.contains(lender));
            let changes = |lender: &usize| events.iter().any(|event| concerned(event).contains(&Some(*lender)));
            all.extend(lender.filter(changes));
            at += 1;
        }
        all.sort_unstable();
        all
    }

    fn run_group(&self, housed: &[Housed], group: &[usize], events: &[Event], settings: Settings) -> Vec<Trajectory> {
        let (part, events) = part_of(housed, group, events);
        let walls: Vec<Option<&WarmWall>> = group
            .iter()
            .map(|place| self.walls.get(housed[*place].neighbour.filter(|lender| !group.contains(lender))?)?.as_ref())
            .collect();
        self.made.or_run((part, events, settings), settings.record, |(part, events, settings)| {
            let yard = Yard { environment: &self.environment, parameters: self.parameters, colonies: part };
            run_beside(&yard, &walls, &Schedule::new(events.clone()), *settings)
        })
    }
}

/// The colonies that an event touches.
pub(crate) fn concerned(event: &Event) -> [Option<usize>; 2] {
    let other = match event.action {
        Action::MoveFrames { to, .. } | Action::Unite { into: to } => Some(to),
        _ => None,
    };
    [Some(event.colony), other]
}

/// Places apart from one another: no hive warms one of another group, and nothing that is done touches two of them.
fn groups(housed: &[Housed], places: &[usize], events: &[Event]) -> Vec<Vec<usize>> {
    let mut groups: Vec<Vec<usize>> = Vec::new();
    let tied = |a: usize, b: usize| {
        let done = |event: &Event| concerned(event).contains(&Some(a)) && concerned(event).contains(&Some(b));
        housed[a].neighbour == Some(b) || housed[b].neighbour == Some(a) || events.iter().any(done)
    };
    for &place in places {
        let (with, apart): (Vec<_>, Vec<_>) =
            groups.into_iter().partition(|group| group.iter().any(|other| tied(place, *other)));
        let mut together: Vec<usize> = with.into_iter().flatten().chain([place]).collect();
        together.sort_unstable();
        groups = apart;
        groups.push(together);
    }
    groups
}

/// The colonies at `places` by themselves, and what is done to them.
fn part_of(housed: &[Housed], places: &[usize], events: &[Event]) -> (Vec<Housed>, Vec<Event>) {
    let place_of = |colony: usize| places.iter().position(|place| *place == colony);
    let alone = |place: &usize| {
        let mut colony = housed[*place].clone();
        colony.neighbour = colony.neighbour.and_then(place_of);
        colony
    };
    let among = |event: &Event| {
        let action = match event.action {
            Action::MoveFrames { to, stores } => Action::MoveFrames { to: place_of(to)?, stores },
            Action::Unite { into } => Action::Unite { into: place_of(into)? },
            ref other => other.clone(),
        };
        Some(Event { day: event.day, colony: place_of(event.colony)?, action })
    };
    (places.iter().map(alone).collect(), events.iter().filter_map(among).collect())
}

impl Watched<'_> {
    fn run(&self, place: usize, events: &[Event], settings: Settings) -> Trajectory {
        let mut own: Vec<(usize, Action)> = events.iter().filter_map(|event| self.own(place, event)).collect();
        own.sort_by_key(|(day, _)| *day);
        self.made.or_run((place, settings.members, own), settings.record, |(_, members, own)| {
            let (outlook, beside) = (&self.outlooks[place], self.beside[place].as_ref());
            outlook.run_of(*members, &self.scene, beside, own, settings.record)
        })
    }

    /// What an event means for one colony alone: of frames moved, one side takes and the other hangs in.
    fn own(&self, place: usize, event: &Event) -> Option<(usize, Action)> {
        let action = match &event.action {
            Action::MoveFrames { stores, .. } if event.colony == place => Action::TakeFrames { stores: *stores },
            Action::MoveFrames { to, stores } if *to == place => Action::HangFrames { stores: *stores },
            Action::Unite { .. } | Action::MoveFrames { .. } => return None,
            alone => (event.colony == place).then(|| alone.clone())?,
        };
        Some((event.day + self.behind, action))
    }
}
