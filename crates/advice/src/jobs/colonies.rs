//! What the colonies themselves say: when they are without brood, when brood begins, when food runs out.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_winter::Status;

use super::answer::{JobWindow, Kind, Trigger};
use super::triggers::Triggers;
use super::window::window;
use crate::broodless::BroodDays;
use crate::dates::Dates;
use crate::now::NowAnswer;
use crate::plan::{PlanQuestion, run_once};
use crate::words::{day, run_out};

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
        let base = run_once(plan);
        let names = base.housed.iter().map(|housed| housed.colony.name.clone()).collect();
        Self { first: plan.as_of, days: BroodDays::of(&base, triggers), names }
    }
}

/// When food runs out in the yard's hungriest hive, where one of them does before spring.
pub(super) fn hungry(now: &NowAnswer) -> Option<JobWindow> {
    let alive = now.colonies.iter().filter(|colony| !colony.is_gone());
    let mut short: Vec<_> = alive.filter(|colony| colony.runs_out.p10.is_some()).collect();
    short.sort_by_key(|colony| colony.runs_out.p10);
    let first = short.first()?;
    let said: Vec<String> =
        short.iter().map(|one| format!("{} {}", one.name, run_out(&one.runs_out, now.looks_to))).collect();
    let trigger = Trigger {
        words: "Food within reach is gone in the model of your hives.".to_owned(),
        value: 0.0,
        figure: None,
        source: "the winter model, your counts and your notes".to_owned(),
        status: Status::Judgement,
    };
    let before = first.runs_out.p10.map(|day| day.saturating_sub(14.days()));
    let by = before.map_or_else(String::new, |by| format!(" Lift it, and feed if it is light, by {}.", day(by)));
    let mut window = window(HUNGER, "Food may run out", Kind::About, (&Dates::of(Vec::new()), now.as_of), trigger);
    window.earliest = first.runs_out.p10;
    window.usual = first.runs_out.p50;
    window.latest = first.runs_out.p90;
    window.share = None;
    Some(
        window.why(format!("{}.{by}", said.join("; "))).of_colonies(short.iter().map(|one| one.name.clone()).collect()),
    )
}
