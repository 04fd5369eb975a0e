//! `plan`: the winter ahead for each colony.

use clap::Args;
use jiff::Timestamp;
use jiff::civil::Date;
use snowhum_advice::now::NowAnswer;
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::{plan, sealed};
use snowhum_apiary::{Apiary, winter_year};
use snowhum_say::{Message, plan_terminal, shared_terminal as shared};
use snowhum_winter::Parameters;

use super::now::Asking;
use crate::args::{Common, RunArguments, YardArguments};
use crate::weather_source::{Present, Weather};
use crate::{exit, keep, progress, sources, text, weather_source};

/// Which yard or colony is planned for, and how much of it is told.
#[derive(Debug, Clone, Args)]
pub(crate) struct PlanArguments {
    #[command(flatten)]
    pub(crate) told: ToldArguments,
    #[command(flatten)]
    pub(crate) yard: YardArguments,
}

/// How much is told.
#[derive(Debug, Clone, Default, Args)]
pub(crate) struct ToldArguments {
    #[arg(value_name = "COLONY")]
    pub(crate) colony: Option<String>,
    #[arg(long)]
    pub(crate) all: bool,
}

pub(super) fn run(arguments: &PlanArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    if arguments.yard.run.as_of.is_none() {
        is_over(&apiary)?;
    }
    tell(&apiary, &arguments.yard.run, &arguments.told, common)
}

/// Says that a yard was counted for a winter that is over, and the one step.
fn is_over(apiary: &Apiary) -> anyhow::Result<()> {
    let today = weather_source::zone(&apiary.site)?.to_datetime(Timestamp::now()).date();
    let year = |day| winter_year(day, apiary.site.latitude);
    if !apiary.invented && year(today) > year(apiary.as_of) {
        progress::note(plan_terminal::of_then(apiary.as_of.to_string(), &apiary.name));
    }
    Ok(())
}

/// Computes a yard's plan and prints it.
pub(super) fn tell(
    apiary: &Apiary,
    arguments: &RunArguments,
    told: &ToldArguments,
    common: &Common,
) -> anyhow::Result<()> {
    let at = told.colony.as_deref().map(|name| sources::place_of(apiary, name)).transpose()?;
    if at.is_none() && !told.all && !common.json {
        // The first screen is of hives as they stand by now: the plan behind it need not be computed.
        sealed::refuse(apiary, &Parameters::shipped()?).map_err(exit::input)?;
        let last = keep::last_told(apiary, common.store.as_deref());
        let asking = Asking { run: arguments, last: &last };
        let as_of = arguments.as_of.unwrap_or(apiary.as_of);
        if let Some(now) = progress::during(shared::watching(), || present(apiary, as_of, &asking))? {
            text::say(&text::plan::words_of_present(&now))?;
            return exit::check(&now.first, arguments.check);
        }
    }
    let answer = answer(apiary, arguments, common)?;
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        let moved = moved_on(apiary, answer.as_of);
        text::say(&match at {
            Some(at) if !told.all => text::plan::one(&answer, at, moved.as_deref()),
            None if !told.all => text::plan::words(&answer),
            _ => text::plan::all(&answer, moved.as_deref()),
        })?;
    }
    exit::check(&answer.first, arguments.check)
}

pub(super) fn answer(apiary: &Apiary, arguments: &RunArguments, common: &Common) -> anyhow::Result<PlanAnswer> {
    let last = keep::last_told(apiary, common.store.as_deref());
    let asking = Asking { run: arguments, last: &last };
    progress::during(shared::computing_winter(), || answer_of(apiary, &asking))
}

/// The answer from what it is given alone, wherever it is computed.
pub(super) fn answer_of(apiary: &Apiary, asking: &Asking<'_>) -> anyhow::Result<PlanAnswer> {
    let parameters = Parameters::shipped()?;
    sealed::refuse(apiary, &parameters).map_err(exit::input)?;
    let (weather, as_of) = Weather::resolve(apiary, asking.run)?;
    let moved = moved_on(apiary, as_of);
    let there = weather.moved(apiary);
    let mut answer = plan(&weather.question(&there, &parameters, asking.run));
    answer.weather.notes.splice(0..0, moved.map(Message::own));
    // What is told first is of the hives as they stand by now, notes and all, so that plan and present say one thing.
    if let Some(now) = present(apiary, as_of, asking)? {
        answer.take_first(&now);
    }
    Ok(answer)
}

/// How the hives stand on the plan's day; none where the day is before the count or the plan at its end.
fn present(apiary: &Apiary, as_of: Date, asking: &Asking<'_>) -> anyhow::Result<Option<NowAnswer>> {
    let run = &RunArguments { as_of: Some(as_of), ..asking.run.clone() };
    let Ok(present) = Present::resolve(apiary, run) else { return Ok(None) };
    if as_of >= present.weather.spring {
        return Ok(None);
    }
    let now = super::now::answer_of(apiary, present, &Asking { run, ..*asking })?;
    Ok((now.as_of == as_of && now.first.colonies.len() == apiary.colonies.len()).then_some(now))
}

/// What must be known of a plan for a later day than the bees were counted on.
fn moved_on(apiary: &Apiary, as_of: Date) -> Option<String> {
    let counted = apiary.as_of;
    (as_of > counted).then(|| {
        format!(
            "Counted on {counted}; this plan reckons as if bees and food were counted on {as_of}. `snowhum now` carries \
             the count forward."
        )
    })
}
