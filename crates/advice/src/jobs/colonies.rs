//! What the colonies themselves say: when they are without brood, when brood begins, when food runs out.

use jiff::civil::Date;
use snowhum_say::{Message, Tongue};
use snowhum_winter::Status;

use super::answer::{HiveDue, JobWindow, Kind, Trigger};
use super::triggers::Triggers;
use super::window::window;
use crate::ahead::run::{PlanQuestion, Run};
use crate::broodless::BroodDays;
use crate::dates::Dates;
use crate::now::answer::{ColonyNow, NowAnswer};

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
    let said: Vec<String> = short
        .iter()
        .map(|one| format!("{} {}", one.name, Tongue::BRITISH.say(&one.food_lasts(now.looks_to))))
        .collect();
    let trigger = Trigger {
        words: "Food within reach is gone in the model of your hives.".to_owned(),
        value: 0.0,
        figure: None,
        source: "the winter model, your counts and your notes".to_owned(),
        status: Status::Judgement,
    };
    let mut window = window(HUNGER, "Food may run out", Kind::About, (&Dates::of(Vec::new()), now.as_of), trigger);
    window.earliest = first.runs_out.p10;
    window.usual = first.runs_out.p50;
    window.latest = first.runs_out.p90;
    window.share = None;
    Some(window.why(format!("{}.", said.join("; "))).of_colonies(short.iter().map(|one| one.name.clone()).collect()))
}

/// The one verdict on each colony, with the day it stands on.
pub(super) fn due(now: &NowAnswer) -> Vec<HiveDue> {
    let flight = now.flight_day.map_or(now.as_of, |flight| flight.on);
    // A hive indoors waits for no flight.
    let indoors = |name: &str| now.first.colonies.iter().any(|one| one.name == name && one.is_indoors());
    let next = |name: &str| if indoors(name) { now.as_of } else { flight };
    let of_colony = |colony: &ColonyNow| HiveDue {
        name: colony.name.clone(),
        on: colony.verdict.first.as_ref().map(|_| colony.verdict.by.unwrap_or_else(|| next(&colony.name))),
        verdict: colony.verdict.clone(),
        says: Message::from(&colony.about),
    };
    now.colonies.iter().map(of_colony).collect()
}
