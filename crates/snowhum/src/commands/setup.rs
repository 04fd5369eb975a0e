//! `setup`: winter set-ups side by side.

use snowhum_advice::setup::{Try, WrongChange, compare};
use snowhum_advice::{sealed, yard};
use snowhum_apiary::Apiary;
use snowhum_say::{fault, setup_terminal, shared_terminal as shared};
use snowhum_winter::Parameters;

use crate::args::{Common, SetupArguments};
use crate::weather_source::Weather;
use crate::{exit, progress, sources, text};

pub(super) fn run(arguments: &SetupArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    let at = sources::place_of(&apiary, &arguments.colony)?;
    let parameters = Parameters::shipped()?;
    sealed::refuse(&apiary, &parameters).map_err(exit::input)?;
    let try_of = |text: &String| try_of(&apiary, at, text, &parameters);
    let tries = arguments.tries.iter().map(try_of).collect::<anyhow::Result<Vec<Try>>>()?;
    let (weather, _) = progress::during(shared::reading_weather(), || Weather::resolve(&apiary, &arguments.yard.run))?;
    weather.tell_far();
    let apiary = weather.moved(&apiary);
    let question = weather.question(&apiary, &parameters, &arguments.yard.run);
    let answer = progress::during(shared::computing_set_ups(), || compare(&question, at, &tries))
        .ok_or_else(|| exit::refused(shared::no_hive(&arguments.colony)))?;
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::setup::words(&answer, &apiary.money.currency))?;
    }
    Ok(())
}

/// The hive after every change of one `--try`.
fn try_of(apiary: &Apiary, at: usize, text: &str, parameters: &Parameters) -> anyhow::Result<Try> {
    let changes: Vec<&str> = text.split(';').map(str::trim).filter(|part| !part.is_empty()).collect();
    if changes.is_empty() {
        return Err(exit::refused(setup_terminal::no_change()));
    }
    let housed = yard::housed(apiary);
    let housed = housed.get(at).ok_or_else(|| exit::refused(shared::no_hive(&apiary.colonies[at].name)))?;
    let wrong =
        |wrong: WrongChange| exit::refused(fault::at(format!("--try \"{}\"", wrong.change), wrong.wrong.message()));
    Try::of(text.trim().to_owned(), housed, &changes, (&apiary.money, parameters)).map_err(wrong)
}
