//! What lies ahead of a yard, run as often as it takes on the same weather and the same random numbers.

use std::ops::Range;
use std::sync::{Mutex, MutexGuard, PoisonError};

use rayon::prelude::*;
use snowhum_apiary::NotedOpenings;
use snowhum_watch::{Outlook, Scene};
use snowhum_winter::{
    Action, Environment, Event, Housed, Parameters, Record, Schedule, Settings, Trajectory, WarmWall, Yard, run,
};

/// Where a run starts from.
pub(crate) enum Ahead<'a> {
    /// From what the keeper found on the plan's first day, under this weather.
    FromStart(Box<Environment>, &'a Parameters),
    /// From what the watch believes at the end of a day.
    Watched(Watched<'a>),
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
    /// Ends of runs that were made: what is weighed by itself is asked for again with the rest of a programme.
    pub(crate) made: Mutex<Vec<Made>>,
}

/// A run that was made, and its end.
pub(crate) struct Made {
    place: usize,
    members: usize,
    done: Vec<(usize, Action)>,
    end: Trajectory,
}

impl Ahead<'_> {
    /// Days ahead.
    pub(crate) fn days(&self) -> usize {
        match self {
            Self::FromStart(environment, _) => environment.days(),
            Self::Watched(watched) => watched.scene.yard.environment.days().saturating_sub(watched.behind),
        }
    }

    /// The weather ahead, and the days of it that lie behind.
    pub(crate) fn weather(&self) -> (&Environment, usize) {
        match self {
            Self::FromStart(environment, _) => (environment, 0),
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

    /// Runs the colonies at `places` of those housed; events count days from the start of what lies ahead.
    pub(crate) fn run(
        &self,
        housed: &[Housed],
        places: &[usize],
        events: &[Event],
        settings: Settings,
    ) -> Vec<Trajectory> {
        match self {
            Self::FromStart(environment, parameters) => {
                let (part, schedule) = part_of(housed, places, events);
                run(&Yard { environment, parameters, colonies: &part }, &schedule, settings)
            }
            Self::Watched(watched) => places.par_iter().map(|&place| watched.run(place, events, settings)).collect(),
        }
    }
}

/// The colonies at `places` by themselves, and what is done to them.
fn part_of(housed: &[Housed], places: &[usize], events: &[Event]) -> (Vec<Housed>, Schedule) {
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
    (places.iter().map(alone).collect(), Schedule::new(events.iter().filter_map(among).collect()))
}

impl Watched<'_> {
    fn run(&self, place: usize, events: &[Event], settings: Settings) -> Trajectory {
        let mut own: Vec<(usize, Action)> = events.iter().filter_map(|event| self.own(place, event)).collect();
        own.sort_by_key(|(day, _)| *day);
        let run = |own: &[(usize, Action)]| {
            let (outlook, beside) = (&self.outlooks[place], self.beside[place].as_ref());
            outlook.run_of(settings.members, &self.scene, beside, own, settings.record)
        };
        if settings.record != Record::End {
            return run(&own);
        }
        let is_it = |made: &&Made| made.place == place && made.members == settings.members && made.done == own;
        if let Some(made) = self.made().iter().find(is_it) {
            return made.end.clone();
        }
        let end = run(&own);
        self.made().push(Made { place, members: settings.members, done: own, end: end.clone() });
        end
    }

    fn made(&self) -> MutexGuard<'_, Vec<Made>> {
        self.made.lock().unwrap_or_else(PoisonError::into_inner)
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
