//! `now`: where each colony stands, from weather and notes.

mod alert;

use clap::Args;
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::verdict::LastVerdict;
use snowhum_apiary::Apiary;
use snowhum_say::shared_terminal as shared;

use super::plan::ToldArguments;
use crate::args::{Common, LiveArguments, RunArguments, YardArguments};
use crate::weather_source::Present;
use crate::{exit, keep, progress, sources, text};

/// Which yard stands where, and whether a forecast is asked for.
#[derive(Debug, Clone, Args)]
pub(crate) struct NowArguments {
    #[command(flatten)]
    pub(crate) told: ToldArguments,
    #[command(flatten)]
    pub(crate) yard: YardArguments,
    #[command(flatten)]
    pub(crate) live: LiveArguments,
    #[arg(long)]
    pub(crate) alert: bool,
}

/// What is asked beside the yard and its weather.
#[derive(Clone, Copy)]
pub(super) struct Asking<'a> {
    pub(super) run: &'a RunArguments,
    /// What was decided of each colony when it was last told.
    pub(super) last: &'a [LastVerdict],
}

pub(super) fn run(arguments: &NowArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    let told = &arguments.told;
    let at = told.colony.as_deref().map(|name| sources::place_of(&apiary, name)).transpose()?;
    let answer = answer(&apiary, arguments, common)?;
    if arguments.alert {
        return alert::tell(&answer, common);
    }
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&match at {
            Some(at) if !told.all => text::now::one(&answer, at),
            None if !told.all => text::now::words(&answer),
            _ => text::now::all(&answer),
        })?;
    }
    exit::check(&answer.first, arguments.yard.run.check)
}

fn answer(apiary: &Apiary, arguments: &NowArguments, common: &Common) -> anyhow::Result<NowAnswer> {
    let run = &arguments.yard.run;
    let present =
        progress::during(shared::reading_weather(), || Present::resolve(apiary, run)?.foretold(&arguments.live))?;
    told(apiary, present, run, common)
}

/// Where each colony stands under a weather that is resolved.
pub(super) fn told(
    apiary: &Apiary,
    present: Present,
    run: &RunArguments,
    common: &Common,
) -> anyhow::Result<NowAnswer> {
    let last = keep::last_told(apiary, common.store.as_deref());
    let asking = Asking { run, last: &last };
    progress::during(shared::watching(), || answer_of(apiary, present, &asking))
}

/// The same from what it is given alone, wherever it is computed.
pub(super) fn answer_of(apiary: &Apiary, present: Present, asking: &Asking<'_>) -> anyhow::Result<NowAnswer> {
    let parameters = snowhum_winter::Parameters::shipped()?;
    let signs = snowhum_watch::Parameters::shipped()?;
    let thresholds = Thresholds::shipped()?;
    let apiary = present.weather.moved(apiary);
    let question = present.question(&apiary, &parameters, (&signs, &thresholds), asking.run);
    let ground = Ground::of(NowQuestion { last: asking.last, ..question });
    let watchings = ground.watch();
    Ok(ground.now(&watchings))
}
