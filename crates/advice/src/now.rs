//! Where each colony stands now, from weather and notes, and what to do next.

mod alert;
pub(crate) mod answer;
mod beside;
mod colony;
pub(crate) mod course;
mod evidence;
mod expect;
mod flight_day;
mod food_body;
mod lid;
mod look_first;
mod look_today;
pub(crate) mod next_round;
mod open_first;
pub(crate) mod thresholds;

pub use alert::{Alert, alert};
pub use answer::{
    ColonyNow, DeadBeesCounted, Evidence, Expectation, Fates, FlightDay, LidVerdict, LookFirst, NOW_SCHEMA, NowAnswer,
    OpenFirst, StoresNow,
};
pub use food_body::FoodBodyNow;
pub use lid::may_lift;
pub use look_today::LookToday;
pub use next_round::{HiveLook, Looked, NextRound};
pub use thresholds::Thresholds;

use jiff::ToSpan;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use rayon::prelude::*;
use snowhum_apiary::{Act, Apiary, ColonyId, Sign};
use snowhum_say::Message;
use snowhum_watch::{Estimate, Noted, Outlook, Scene, Sizes, Visit, Watching, visits};
use snowhum_winter::{Action, Environment, Housed, WarmWall, Yard};

use crate::ahead::base::Base;
use crate::ahead::run::{PlanQuestion, Run};
use crate::ahead::shortage::LEFT_IN_SPRING;
use crate::ahead::start::{Ahead, Made, Watched};
use crate::answer::WeatherAnswer;
use crate::looks_to::LooksTo;
use crate::plan::colony_plan;
use crate::site::dates::SiteDates;
use crate::verdict;
use crate::verdict::answer::{ColonyFirst, FirstAnswer};
use crate::verdict::facts::Facts;
use crate::verdict::still::LastVerdict;
use crate::{fit, yard};
use colony::Seen;
use next_round::Worth;

/// Hours from midnight to the end of the one o'clock hour.
const AFTERNOON: usize = 14;

/// What is asked.
#[derive(Debug, Clone, Copy)]
pub struct NowQuestion<'a> {
    /// The plan from tomorrow on: its `as_of` is the day after the day asked about, its `winter` the weather from the
    /// day the colonies were counted.
    pub plan: PlanQuestion<'a>,
    /// The day asked about; notes of it count.
    pub as_of: Date,
    /// Hours of the weather that are known, so that all paths are the same.
    pub known_hours: usize,
    /// What signs go by.
    pub signs: &'a snowhum_watch::Parameters,
    /// What words and lids go by.
    pub thresholds: &'a Thresholds,
    /// Particles.
    pub sizes: Sizes,
    /// What was decided of each colony last, as far as that is kept: near a line it holds.
    pub last: &'a [LastVerdict],
}

/// A yard made ready for watching: its weather as the model takes it, its colonies, and who warms whom.
pub struct Ground<'a> {
    question: NowQuestion<'a>,
    environment: Environment,
    zone: TimeZone,
    housed: Vec<Housed>,
    visits: Vec<Vec<Visit>>,
    /// The wall that warms each colony.
    walls: Vec<Option<WarmWall>>,
}

impl<'a> Ground<'a> {
    /// Lays it out.
    #[must_use]
    pub fn of(question: NowQuestion<'a>) -> Self {
        let apiary = question.plan.apiary;
        let environment = yard::environment(&apiary.site, question.plan.winter, apiary.as_of);
        let housed = yard::housed_to(apiary, question.as_of);
        let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
        let mut ground = Self { question, environment, zone, housed, visits: Vec::new(), walls: Vec::new() };
        let until = ground.until();
        let of_colony = |id: ColonyId| {
            let mut own = visits(&ground.scene(&ground.yard()), &apiary.notes, id);
            own.retain(|visit| visit.hour <= until);
            own
        };
        ground.visits = ground.housed.iter().map(|housed| of_colony(housed.colony.id)).collect();
        ground.walls = ground.walls(&ground.yard());
        ground
    }

    fn yard(&self) -> Yard<'_> {
        Yard { environment: &self.environment, parameters: self.question.plan.parameters, colonies: &self.housed }
    }

    fn scene<'y>(&'y self, yard: &'y Yard<'y>) -> Scene<'y> {
        Scene {
            yard,
            start: self.question.plan.winter.start,
            zone: &self.zone,
            known_hours: self.question.known_hours,
            parameters: self.question.signs,
            seed: self.question.plan.seed,
        }
    }

    /// How far the weather goes.
    fn looks_to(&self) -> LooksTo {
        let plan = &self.question.plan;
        let last = plan.apiary.as_of.saturating_add((self.environment.days() as i64).days());
        LooksTo::of(plan.spring, last)
    }

    /// Hours of the run up to the end of the day asked about.
    fn until(&self) -> usize {
        let days = self.question.plan.as_of.duration_since(self.question.plan.apiary.as_of).as_hours() / 24;
        24 * usize::try_from(days).unwrap_or(0).min(self.environment.days())
    }

    /// The wall that warms each colony.
    fn walls(&self, yard: &Yard<'_>) -> Vec<Option<WarmWall>> {
        let wall = |housed: &Housed| {
            let lender = housed.neighbour?;
            WarmWall::of(yard, lender, &self.done(lender), self.question.plan.seed)
        };
        self.housed.par_iter().map(wall).collect()
    }

    /// What was fed and changed at a colony, by day: what its wall depends on.
    fn done(&self, place: usize) -> Vec<(usize, Action)> {
        let mut hive = self.housed[place].hive.clone();
        let mut done = Vec::new();
        for visit in &self.visits[place] {
            for act in &visit.acts {
                if let Act::Changed(change) = act
                    && let Ok(changed) = hive.with_change(change)
                {
                    hive = changed;
                    done.push((visit.hour / 24, Action::Rebuild(Box::new(hive.clone()))));
                }
            }
        }
        done
    }

    /// Watches every colony through its notes.
    #[must_use]
    pub fn watch(&self) -> Vec<Watching> {
        self.watch_on(None)
    }

    /// Brings earlier watchings of the same yard up to its notes: a note at the end is quick, an earlier one or an edit
    /// is a replay.
    #[must_use]
    pub fn watch_on(&self, before: Option<Vec<Watching>>) -> Vec<Watching> {
        let yard = self.yard();
        let scene = self.scene(&yard);
        Noted { scene: &scene, walls: &self.walls, visits: &self.visits, sizes: self.question.sizes }.watch(before)
    }

    /// What each of these signs would say of every colony on the day asked about, at one in the afternoon or at its last
    /// visit, whichever is later; a usual count of dead bees among them.
    #[must_use]
    pub fn looks_today(&self, watchings: &[Watching], asked: &[Sign]) -> Vec<LookToday> {
        let yard = self.yard();
        let (scene, until) = (self.scene(&yard), self.until());
        let afternoon = (until + AFTERNOON).saturating_sub(24);
        let of = |(watching, wall): (&Watching, &Option<WarmWall>)| {
            let hour = afternoon.max(watching.at_last_visit.hour()).min(until);
            LookToday::of(&scene, &watching.at(&scene, wall.as_ref(), hour), asked)
        };
        watchings.par_iter().zip(&self.walls).map(of).collect()
    }

    /// Where every colony stands, and what to do.
    #[must_use]
    pub fn now(&self, watchings: &[Watching]) -> NowAnswer {
        let yard = self.yard();
        let scene = self.scene(&yard);
        let walls = &self.walls;
        let until = self.until();
        let estimates: Vec<Estimate> =
            watchings.par_iter().zip(walls).map(|(watching, wall)| watching.at(&scene, wall.as_ref(), until)).collect();
        let outlooks: Vec<Outlook> =
            estimates.iter().map(|estimate| estimate.outlook(&scene, self.question.plan.members)).collect();
        let openings = estimates.iter().map(|estimate| *estimate.openings()).collect();
        let ahead = Ahead::Watched(Watched {
            scene,
            outlooks: &outlooks,
            beside: walls,
            behind: until / 24,
            openings,
            made: Made::default(),
        });
        let base = Base::found(Run::over(&self.question.plan, ahead, self.housed_now(&estimates)));
        let expectations = expect::all(&scene, &estimates, walls, (until, self.question.thresholds));
        let colony = |at: usize| {
            let watched = colony::Watched {
                estimate: &estimates[at],
                watching: &watchings[at],
                visits: &self.visits[at],
                expect_next: &expectations[at].0,
                end: scene.start + jiff::SignedDuration::from_hours(until as i64),
                looks_to: self.looks_to(),
            };
            colony::now(&base, at, &watched)
        };
        let seen: Vec<Seen> = (0..base.housed.len()).into_par_iter().map(colony).collect();
        let first = self.first(&base, &seen);
        let colonies = seen.into_iter().enumerate();
        let told = |at: usize| first.colonies.get(at).map_or_else(Message::default, ColonyFirst::says);
        let of_colony = |(at, seen): (usize, Seen)| ColonyNow {
            verdict: first.verdict(at),
            about: told(at),
            nothing_helps: seen.now.nothing_helps && first.only_looks(at),
            ..seen.now
        };
        let colonies = colonies.map(of_colony).collect();
        let now = self.answer(&scene, colonies, first);
        NowAnswer { next_round: self.next_round(&now, &expectations), ..now }
    }

    /// When to go and look: hives that are gone tell nothing.
    fn next_round(&self, now: &NowAnswer, expectations: &[(Expectation, Vec<Worth>)]) -> NextRound {
        let living = now.colonies.iter().zip(expectations).filter(|(colony, _)| !colony.is_gone());
        let (names, worth): (Vec<_>, Vec<_>) =
            living.map(|(colony, (_, worth))| ((colony.name.clone(), colony.alive), worth.clone())).unzip();
        let of_worth = NextRound::of(&names, &worth, self.environment.first_day(), self.question.thresholds);
        NextRound { fortnight: self.fortnight(now), ..of_worth }
    }

    /// The day of the fortnightly walk.
    fn fortnight(&self, now: &NowAnswer) -> Option<Date> {
        let flies = now.flight_day.is_some_and(|flight| flight.on_most_days);
        let mut living = now.colonies.iter().filter(|colony| !colony.is_gone()).peekable();
        if flies || living.peek().is_none() {
            return None;
        }
        let last = living.filter_map(|colony| colony.evidence.first()).map(|visit| visit.on).max();
        let last = last.unwrap_or(self.question.plan.apiary.as_of);
        let due = last.saturating_add((self.question.thresholds.round_days.value as i64).days());
        Some(due.max(self.question.as_of.saturating_add(1.days())))
    }

    /// What is told first: whether a colony winters in its own hive is asked as long as bees still merge.
    fn first(&self, base: &Base<'_>, seen: &[Seen]) -> FirstAnswer {
        let today = self.question.as_of;
        let merges = SiteDates::of(base).is_some_and(|dates| today <= dates.unite_by.p90);
        let fit = merges.then(|| {
            let plans: Vec<_> =
                seen.iter().enumerate().map(|(at, seen)| colony_plan(base, at, &seen.weighed)).collect();
            fit::fit(base, &plans)
        });
        let fit = fit.flatten();
        // Nobody is put to a colony that is dead or gone by now.
        let is_gone = |name: &String| seen.iter().any(|seen| seen.now.name == *name && seen.now.is_gone());
        let of_fit = |at: usize| {
            let own = &fit.as_ref()?.colonies.get(at)?.verdict;
            (!own.with.as_ref().is_some_and(is_gone)).then_some(own)
        };
        let last = |at: usize| {
            let id = base.housed.get(at)?.colony.id;
            self.question.last.iter().find(|last| last.colony == id).map(|last| &last.verdict)
        };
        let facts: Vec<Facts<'_>> =
            seen.iter().enumerate().map(|(at, seen)| seen.facts(of_fit(at), last(at))).collect();
        verdict::first(base, today, self.looks_to(), &facts)
    }

    /// The colonies in their hives as these stand by now, their queens as they were last told.
    fn housed_now(&self, estimates: &[Estimate]) -> Vec<Housed> {
        let found = yard::housed_on(self.question.plan.apiary, self.question.as_of);
        let housed = found.into_iter().zip(estimates);
        housed.map(|(housed, estimate)| Housed { hive: estimate.hive().clone(), ..housed }).collect()
    }

    /// The answer for the yard round those for its colonies.
    fn answer(&self, scene: &Scene<'_>, colonies: Vec<ColonyNow>, first: FirstAnswer) -> NowAnswer {
        let until = self.until();
        let end = scene.start + jiff::SignedDuration::from_hours(until as i64);
        let plan = &self.question.plan;
        let apiary: &Apiary = plan.apiary;
        NowAnswer {
            schema: NOW_SCHEMA.to_owned(),
            apiary: apiary.name.clone(),
            invented: apiary.invented,
            as_of: self.question.as_of,
            spring: plan.spring,
            reserve_kg: LEFT_IN_SPRING.get(),
            looks_to: self.looks_to(),
            weather: WeatherAnswer::new(&plan.winter.provenance, self.question.sizes.alive, plan.winter.paths.len()),
            currency: apiary.money.currency.clone(),
            flight_day: flight_day::next(&self.environment, &self.housed, until, plan.as_of),
            lid: lid::tomorrow(&self.environment, &self.housed, (until, self.question.thresholds)),
            next_round: NextRound::NONE,
            open_first: open_first::of(apiary, (&colonies, &first), end),
            colonies,
            first,
        }
    }
}
