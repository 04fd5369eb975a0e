//! `spring`: which hive to lift first, when it is safe to open, what to look for and to feed.

use snowhum_advice::jobs::Triggers;
use snowhum_advice::spring::{Hunger, SpringQuestion, Springtime, spring};
use snowhum_apiary::Apiary;

use super::jobs::windows;
use crate::args::{Common, RunArguments, YardArguments};
use crate::weather_source::{Present, asked_day};
use crate::{exit, progress, sources, text};

pub(super) fn run(arguments: &YardArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.apiary.as_deref(), common)?;
    let answer = answer(&apiary, &arguments.run, common)?;
    if common.json {
        text::say(&serde_json::to_string_pretty(&answer)?)?;
    } else {
        text::say(&text::spring::words(&answer))?;
    }
    let hungry: Vec<&str> =
        answer.lift_first.iter().filter(|one| one.hunger == Hunger::Now).map(|one| one.name.as_str()).collect();
    if arguments.run.check && !hungry.is_empty() {
        return Err(anyhow::Error::new(exit::Failure::NeedsKeeper(format!("hungry: {}", hungry.join(", ")))));
    }
    Ok(())
}

fn answer(apiary: &Apiary, run: &RunArguments, common: &Common) -> anyhow::Result<Springtime> {
    let triggers = Triggers::shipped()?;
    let as_of = asked_day(apiary, run)?;
    let present = progress::during("reading the weather", || Present::resolve(apiary, run))?;
    let windows = progress::during("reckoning the year", || windows(apiary, run, as_of))?;
    let winter = present.weather.winter.clone();
    let moved = present.weather.moved(apiary);
    let now = super::now::told(apiary, present, run, common)?;
    let jobs = windows.told_by(&now);
    Ok(spring(&SpringQuestion { apiary: &moved, now: &now, jobs: &jobs, winter: &winter, triggers: &triggers }))
}
