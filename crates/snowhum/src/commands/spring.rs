//! `spring`: which hive to lift first, when it is safe to open, what to look for and to feed.

use snowhum_advice::jobs::Triggers;
use snowhum_advice::spring::{Hunger, SpringQuestion, Springtime, spring};
use snowhum_apiary::Apiary;
use snowhum_say::{Message, shared_terminal as shared};

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
    let hungry = answer.lift_first.iter().filter(|one| one.hunger == Hunger::Now);
    let hungry: Vec<Message> = hungry.map(|one| Message::from(&one.name)).collect();
    if arguments.run.check && !hungry.is_empty() {
        return Err(exit::needs_keeper(shared::hungry(hungry)));
    }
    Ok(())
}

fn answer(apiary: &Apiary, run: &RunArguments, common: &Common) -> anyhow::Result<Springtime> {
    let triggers = Triggers::shipped()?;
    let as_of = asked_day(apiary, run)?;
    let present = progress::during(shared::reading_weather(), || Present::resolve(apiary, run))?;
    let windows = progress::during(shared::reckoning_year(), || windows(apiary, run, as_of))?;
    let winter = present.weather.winter.clone();
    let moved = present.weather.moved(apiary);
    let now = super::now::told(apiary, present, run, common)?;
    let jobs = windows.told_by(&now);
    Ok(spring(&SpringQuestion { apiary: &moved, now: &now, jobs: &jobs, winter: &winter, triggers: &triggers }))
}
