//! `now`: where each colony stands, from weather and notes.

mod alert;

use snowhum_advice::now::{Ground, NowAnswer, Thresholds, Word};
use snowhum_apiary::Apiary;
use snowhum_units::System;

use crate::args::{Common, NowArguments, RunArguments};
use crate::weather_source::Present;
use crate::{exit, progress, sources, text};

pub(super) fn run(arguments: &NowArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    let answer = answer(&apiary, arguments, common)?;
    if arguments.alert {
        return alert::tell(&answer, common);
    }
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::now::words(&answer, common.units.into()))?;
    }
    let urgent: Vec<&str> =
        answer.colonies.iter().filter(|colony| colony.word == Word::Act).map(|colony| colony.name.as_str()).collect();
    if arguments.yard.run.check && !urgent.is_empty() {
        return Err(anyhow::Error::new(exit::Failure::NeedsKeeper(format!("needs you now: {}", urgent.join(", ")))));
    }
    Ok(())
}

fn answer(apiary: &Apiary, arguments: &NowArguments, common: &Common) -> anyhow::Result<NowAnswer> {
    let run = &arguments.yard.run;
    let present = progress::during("reading the weather", || Present::resolve(apiary, run)?.foretold(&arguments.live))?;
    told(apiary, present, run, common.units.into())
}

/// Where each colony stands under a weather that is resolved.
pub(super) fn told(apiary: &Apiary, present: Present, run: &RunArguments, system: System) -> anyhow::Result<NowAnswer> {
    let parameters = snowhum_winter::Parameters::shipped()?;
    let signs = snowhum_watch::Parameters::shipped()?;
    let thresholds = Thresholds::shipped()?;
    let apiary = present.weather.moved(apiary);
    let question = present.question(&apiary, &parameters, (&signs, &thresholds), run, system);
    Ok(progress::during("watching the colonies", || {
        let ground = Ground::of(question);
        let watchings = ground.watch();
        ground.now(&watchings)
    }))
}
