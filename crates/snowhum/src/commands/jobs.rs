//! `jobs`: what is due at this site, and when; as words, JSON or a calendar file.

use jiff::Timestamp;
use jiff::civil::Date;
use snowhum_advice::jobs::{JobsAnswer, JobsQuestion, SiteYear, Triggers, calendar, jobs, season_start};
use snowhum_apiary::Apiary;
use snowhum_say::{jobs_terminal, shared_terminal as shared};
use snowhum_winter::Parameters;
use std::path::{Path, PathBuf};

use crate::args::{Common, RunArguments, YardArguments};
use crate::weather_source::{Present, Weather, Year, asked_day};
use crate::{new_file, progress, sources, text};

/// Which yard, and where its calendar goes.
#[derive(Debug, clap::Args)]
pub(crate) struct JobsArguments {
    #[arg(long, value_name = "FILE")]
    pub(crate) ics: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) yard: YardArguments,
}

pub(super) fn run(arguments: &JobsArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    let run = &arguments.yard.run;
    let as_of = asked_day(&apiary, run)?;
    let mut answer = progress::during(shared::reckoning_year(), || windows(&apiary, run, as_of))?;
    // A day outside the winter that was counted has no present; the windows of the site stand all the same.
    if let Ok(present) = Present::resolve(&apiary, run) {
        answer = answer.told_by(&super::now::told(&apiary, present, run, common)?);
    }
    if let Some(file) = &arguments.ics {
        write(file, &calendar::calendar(&answer, &apiary, text::voice::tongue(), Timestamp::now()))?;
    }
    if common.json {
        return text::say(&serde_json::to_string_pretty(&answer)?);
    }
    text::say(&text::jobs::words(&answer))
}

/// The windows of the year that a day belongs to.
pub(crate) fn windows(apiary: &Apiary, arguments: &RunArguments, as_of: Date) -> anyhow::Result<JobsAnswer> {
    let (parameters, triggers) = (Parameters::shipped()?, Triggers::shipped()?);
    let Year { from, weather, site } = Year::resolve(apiary, arguments, as_of)?;
    let year = SiteYear::of(&site, &weather, from, &triggers);
    // The hours of the year go before those of the winter come: both at once would be most of what the program holds.
    drop(weather);
    let apiary = Apiary { site, ..apiary.clone() };
    let from_count = RunArguments { as_of: Some(apiary.as_of), ..arguments.clone() };
    let is_counted = season_start(apiary.as_of, apiary.site.latitude) == from && !apiary.colonies.is_empty();
    // A count too near spring, or after it, says nothing of this winter's brood.
    let counted = if is_counted { Weather::resolve(&apiary, &from_count).ok() } else { None };
    let colonies = counted.as_ref().map(|(weather, _)| weather.question(&apiary, &parameters, &from_count));
    Ok(jobs(&JobsQuestion { apiary: &apiary, year: &year, as_of, colonies, triggers: &triggers }))
}

fn write(file: &Path, content: &str) -> anyhow::Result<()> {
    std::fs::write(file, content).map_err(|error| new_file::failed(file, &error))?;
    progress::note(jobs_terminal::calendar(file.display().to_string()));
    Ok(())
}
