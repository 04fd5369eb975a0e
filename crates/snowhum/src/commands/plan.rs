//! `plan`: the winter ahead for each colony.

use jiff::civil::Date;
use snowhum_advice::answer::PlanAnswer;
use snowhum_advice::{plan, sealed};
use snowhum_apiary::Apiary;
use snowhum_winter::Parameters;

use crate::args::{Common, RunArguments, YardArguments};
use crate::weather_source::Weather;
use crate::{exit, progress, sources, text};

pub(super) fn run(arguments: &YardArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.apiary.as_deref(), common)?;
    tell(&apiary, &arguments.run, common)
}

/// Computes a yard's plan and prints it.
pub(super) fn tell(apiary: &Apiary, arguments: &RunArguments, common: &Common) -> anyhow::Result<()> {
    let answer = answer(apiary, arguments, common)?;
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::plan::words(&answer, common.units.into()))?;
    }
    let needs = answer.colonies.iter().zip(&answer.needs).filter(|(_, need)| need.is_urgent());
    let urgent: Vec<String> = needs.map(|(colony, need)| format!("{} ({})", colony.name, need.words())).collect();
    if arguments.check && !urgent.is_empty() {
        return Err(anyhow::Error::new(exit::Failure::NeedsKeeper(format!("needs you now: {}", urgent.join(", ")))));
    }
    Ok(())
}

fn answer(apiary: &Apiary, arguments: &RunArguments, common: &Common) -> anyhow::Result<PlanAnswer> {
    let parameters = Parameters::shipped()?;
    sealed::refuse(apiary, &parameters).map_err(exit::input)?;
    let (weather, as_of) = progress::during("reading the weather", || Weather::resolve(apiary, arguments))?;
    let moved = moved_on(apiary, as_of);
    let apiary = weather.moved(apiary);
    let question = weather.question(&apiary, &parameters, arguments, common.units.into());
    let mut answer = progress::during("computing the winter", || plan(&question));
    answer.weather.notes.splice(0..0, moved);
    Ok(answer)
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
