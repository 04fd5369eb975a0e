//! The estimate of one colony: stepped by the winter model, weighed by what is seen.

mod day;
mod look;
mod showing;

pub(crate) use day::DayOut;
pub(crate) use showing::Heard;

use showing::Showing;
use snowhum_apiary::{Hive, NotedOpenings};
use snowhum_draws::Key;
use snowhum_winter::{Members, Record, Settings, WarmWall};

use crate::flock::{Flock, Kept, Living};
use crate::litter::Litter;
use crate::own::Priors;
use crate::remains::Remains;
use crate::scene::Scene;
use crate::strata::Strata;
use crate::view::{Life, View};

/// How many particles.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sizes {
    /// Living.
    pub alive: usize,
    /// Dead.
    pub dead: usize,
}

impl Sizes {
    /// What an everyday estimate takes.
    pub const USUAL: Self = Self { alive: 1_000, dead: 300 };
}

/// What a draw is for: the last word of its counter.
#[derive(Debug, Clone, Copy)]
enum Purpose {
    Births = 20,
    Renewal = 21,
    Jitter = 22,
    Own = 23,
}

/// What a step closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Step {
    /// A day.
    Day,
    /// Nothing yet.
    Hours,
}

/// One colony as the watch sees it at an hour.
#[derive(Debug, Clone)]
pub struct Estimate {
    place: usize,
    key: Key,
    sizes: Sizes,
    pub(crate) showing: Showing,
    pub(crate) strata: Strata<Flock, Remains>,
    renewals: u32,
    /// Entrance and upper hole as they were last noted.
    openings: NotedOpenings,
    /// Natural logarithm of the chance of all that was seen.
    pub log_evidence: f64,
}

impl Estimate {
    /// The estimate at the start of the run, before anything was seen; `None` if the yard has no such colony.
    #[must_use]
    pub fn begin(scene: &Scene<'_>, place: usize, sizes: Sizes) -> Option<Self> {
        let housed = scene.yard.colonies.get(place)?;
        let settings = Settings { members: sizes.alive, seed: scene.seed, record: Record::End };
        let members = Members::enter(scene.yard, place, settings)?;
        let (high, low) = housed.colony.id.0.as_u64_pair();
        let key = Key::new(scene.seed ^ 0x5741_5443, high ^ low);
        let priors = Priors::of(&housed.hive, scene.parameters);
        let kept = |m: usize| Kept {
            own: priors.draw(key.normals([m as u32, 0, 0, Purpose::Own as u32])),
            litter: Litter::default(),
            rime_hours: 0.0,
            old_rime_hours: 0.0,
            damp: 0.0,
            confined_days: 0.0,
            spared_kg: 0.0,
            queenless: 0.0,
        };
        let flock = Flock { members, kept: (0..sizes.alive).map(kept).collect() };
        Some(Self {
            place,
            key,
            sizes,
            showing: Showing::new(housed.hive.clone(), Members::empty_hive(scene.yard, place, scene.seed)?),
            strata: Strata::new(flock, sizes.alive),
            renewals: 0,
            openings: NotedOpenings::default(),
            log_evidence: 0.0,
        })
    }

    /// Place of the colony in the yard.
    #[must_use]
    pub fn place(&self) -> usize {
        self.place
    }

    /// The hive as it stands at this hour.
    #[must_use]
    pub fn hive(&self) -> &Hive {
        &self.showing.hive
    }

    /// Entrance and upper hole as they were last noted.
    #[must_use]
    pub fn openings(&self) -> &NotedOpenings {
        &self.openings
    }

    /// Takes in the bees, brood and food of another colony.
    pub(crate) fn take_in(&mut self, given: &Members, alive: f64) {
        self.strata.alive.members.receive_colony(given, alive);
    }

    /// Deals the weather afresh to the living, where what was known of it ends.
    pub fn deal_weather(&mut self, scene: &Scene<'_>) {
        self.strata.alive.members.deal_weather(scene.yard);
    }

    /// Hours since the start of the run.
    #[must_use]
    pub fn hour(&self) -> usize {
        self.showing.hour
    }

    /// Time passes to the end of `hour - 1`; nobody looks.
    pub fn advance(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, hour: usize) {
        while let Some(step) = self.step(scene, beside, hour) {
            if step == Step::Day {
                self.close_day(scene);
            }
        }
    }

    /// Steps towards `hour`, to the next midnight at most; `None` once there or at the end of the weather.
    pub(crate) fn step(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, hour: usize) -> Option<Step> {
        let before = self.showing.hour;
        let members = &mut self.strata.alive.members;
        let closed = members.step_to(scene.yard, beside, hour);
        self.showing.empty.step_to(scene.yard, beside, hour);
        self.showing.hour = members.hour();
        (self.showing.hour > before).then_some(if closed { Step::Day } else { Step::Hours })
    }

    /// The living particles, one after the other.
    pub fn living(&self) -> impl Iterator<Item = Living> + '_ {
        self.strata.alive_mass.iter().enumerate().map(|(m, mass)| self.strata.alive.living(m, *mass))
    }

    /// The dead particles: hour of the end, and mass.
    pub fn dead(&self) -> impl Iterator<Item = (usize, f64)> + '_ {
        self.strata.dead.iter().map(|(remains, mass)| (remains.hour, *mass))
    }

    /// What every particle shows at this hour, and its chance: what an expectation is made of.
    pub fn views(&self) -> impl Iterator<Item = (View, f64)> + '_ {
        let flock = &self.strata.alive;
        let alive = self.strata.alive_mass.iter().enumerate().flat_map(move |(m, mass)| {
            let share = flock.queenright_share(m);
            [(Life::Queenright, share), (Life::Queenless, 1.0 - share)]
                .map(|(life, share)| (self.showing.alive(flock, m, life), mass * share))
        });
        alive.chain(self.strata.dead.iter().map(|(remains, mass)| (self.showing.dead(remains), *mass)))
    }
}
