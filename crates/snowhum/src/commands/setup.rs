//! `setup`: winter set-ups side by side.

use snowhum_advice::setup::{Try, compare};
use snowhum_apiary::{Apiary, SetupChange};
use snowhum_winter::Parameters;

use crate::args::{Common, SetupArguments};
use crate::weather_source::Weather;
use crate::{exit, progress, sources, text};

pub(super) fn run(arguments: &SetupArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    let at = sources::place_of(&apiary, &arguments.colony)?;
    let tries = arguments.tries.iter().map(|text| try_of(&apiary, at, text)).collect::<anyhow::Result<Vec<Try>>>()?;
    let parameters = Parameters::shipped()?;
    let (weather, _) = progress::during("reading the weather", || Weather::resolve(&apiary, &arguments.yard.run))?;
    let apiary = weather.moved(&apiary);
    let question = weather.question(&apiary, &parameters, &arguments.yard.run, common.units.into());
    let answer = progress::during("computing the set-ups", || compare(&question, at, &tries))
        .ok_or_else(|| exit::input(format!("colony {} has no hive", arguments.colony)))?;
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::setup::words(&answer, &apiary.money.currency))?;
    }
    Ok(())
}

/// The hive after every change of one `--try`.
fn try_of(apiary: &Apiary, at: usize, text: &str) -> anyhow::Result<Try> {
    if text.split(';').all(|part| part.trim().is_empty()) {
        return Err(exit::input("--try \"\": says no change; write one such as \"lid=50 mm foam\""));
    }
    let colony = &apiary.colonies[at];
    let mut hive = apiary.hive_of(colony).cloned().ok_or_else(|| exit::input("the colony has no hive"))?;
    let mut cost = 0.0;
    for part in text.split(';').map(str::trim).filter(|part| !part.is_empty()) {
        let change = part.parse::<SetupChange>().map_err(|error| exit::input(format!("--try \"{part}\": {error}")))?;
        hive = hive.with_change(&change).map_err(|error| exit::input(format!("--try \"{part}\": {error}")))?;
        cost += price(apiary, part);
    }
    Ok(Try { name: text.trim().to_owned(), hive, cost })
}

/// The yard's own price of a change, by the part it names.
fn price(apiary: &Apiary, change: &str) -> f64 {
    let money = &apiary.money;
    match change.split('=').next().map(str::trim) {
        _ if change.ends_with("off") || change.ends_with("none") => 0.0,
        Some("lid" | "quilt") => money.lid,
        Some("wrap") => money.wrap,
        _ => 0.0,
    }
}
