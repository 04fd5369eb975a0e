//! What the colonies themselves say: when they are without brood, when brood begins, when food runs out.

use jiff::civil::Date;
use snowhum_say::{Message, jobs as say};
use snowhum_winter::Status;

use super::answer::{HiveDue, JobWindow, Kind, Trigger};
use super::triggers::Triggers;
use super::window::window;
use crate::ahead::run::{PlanQuestion, Run};
use crate::broodless::BroodDays;
use crate::dates::Dates;
use crate::now::answer::{ColonyNow, NowAnswer};
use crate::verdict::answer::ColonyFirst;

/// The window of hunger.
pub(super) const HUNGER: &str = "food-runs-out";

/// Brood through the winter, over the colonies that were counted.
pub(super) struct Broods {
    /// First day of the run.
    pub(super) first: Date,
    /// Its days without brood, and with it again.
    pub(super) days: BroodDays,
    /// The colonies.
    pub(super) names: Vec<String>,
}

impl Broods {
    /// Runs the colonies once, as they were counted.
    pub(super) fn of(plan: &PlanQuestion<'_>, triggers: &Triggers) -> Self {
        let run = Run::of(plan);
        let names = run.housed.iter().map(|housed| housed.colony.name.clone()).collect();
        Self { first: plan.as_of, days: BroodDays::of(&run, triggers), names }
    }
}

/// When food runs out in the yard's hungriest hive, where one of them does before spring.
pub(super) fn hungry(now: &NowAnswer) -> Option<JobWindow> {
    let alive = now.colonies.iter().filter(|colony| !colony.is_gone());
    let mut short: Vec<_> = alive.filter(|colony| colony.runs_out.p10.is_some()).collect();
    short.sort_by_key(|colony| colony.runs_out.p10);
    let first = short.first()?;
    let hives = short.iter().map(|one| say::food_runs_out_hive(&one.name, one.food_lasts(now.looks_to))).collect();
    let trigger = Trigger {
        words: say::food_runs_out_waits(),
        value: 0.0,
        figure: None,
        source: say::source_hunger(),
        status: Status::Judgement,
    };
    let mut window = window(HUNGER, say::food_runs_out(), Kind::About, (&Dates::of(Vec::new()), now.as_of), trigger);
    window.earliest = first.runs_out.p10;
    window.usual = first.runs_out.p50;
    window.latest = first.runs_out.p90;
    window.share = None;
    Some(window.why(say::food_runs_out_why(hives)).of_colonies(short.iter().map(|one| one.name.clone()).collect()))
}

/// The one verdict on each colony, with the day it stands on.
pub(super) fn due(now: &NowAnswer) -> Vec<HiveDue> {
    let flight = now.flight_day.map_or(now.as_of, |flight| flight.on);
    // A hive indoors waits for no flight.
    let first = |name: &str| now.first.colonies.iter().find(|one| one.name == name);
    let indoors = |name: &str| first(name).is_some_and(ColonyFirst::is_indoors);
    let next = |name: &str| if indoors(name) { now.as_of } else { flight };
    let of_colony = |colony: &ColonyNow| HiveDue {
        name: colony.name.clone(),
        on: colony.verdict.first.as_ref().map(|_| colony.verdict.by.unwrap_or_else(|| next(&colony.name))),
        verdict: colony.verdict.clone(),
        says: Message::from(&colony.about),
        then: first(&colony.name).into_iter().flat_map(ColonyFirst::then).cloned().collect(),
    };
    let mut due: Vec<HiveDue> = now.colonies.iter().map(of_colony).collect();
    due.sort_by_key(|hive| hive.verdict.place());
    due
}
