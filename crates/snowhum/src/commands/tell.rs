//! `tell`: the winter told, as a film in one file.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;
use jiff::civil::Date;
use snowhum_advice::film::FilmAnswer;
use snowhum_apiary::Apiary;
use snowhum_say::{shared_terminal as shared, tell_terminal};
use snowhum_web::{Ask, Reckon, told_winter};

use super::serve::Model;
use crate::args::{Common, YardArguments};
use crate::{exit, keep, new_file, progress, sources, text, weather_source};

#[derive(Debug, Args)]
pub(crate) struct TellArguments {
    #[arg(value_name = "COLONY")]
    colony: Option<String>,
    #[arg(long, value_name = "FILE", required_unless_present = "json")]
    out: Option<PathBuf>,
    #[command(flatten)]
    yard: YardArguments,
}

pub(super) fn run(arguments: &TellArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.yard.apiary.as_deref(), common)?;
    let at = arguments.colony.as_deref().map(|name| sources::place_of(&apiary, name)).transpose()?;
    let answer = told(&apiary, arguments, common)?;
    let answer = match at {
        Some(at) => answer
            .of_hive(at)
            .ok_or_else(|| exit::refused(shared::no_hive(arguments.colony.as_deref().unwrap_or_default())))?,
        None => answer,
    };
    if common.json {
        return text::say(&serde_json::to_string_pretty(&answer)?);
    }
    let Some(out) = &arguments.out else { return Ok(()) };
    let page = told_winter(&answer, &apiary, text::voice::tongue());
    new_file::create(out)?.write_all(page.as_bytes()).map_err(|error| new_file::failed(out, &error))?;
    text::say(&text::wrapped(tell_terminal::wrote(out.display().to_string()), 2))
}

fn told(apiary: &Apiary, arguments: &TellArguments, common: &Common) -> anyhow::Result<FilmAnswer> {
    let day = day(apiary, arguments)?;
    let last = keep::last_told(apiary, common.store.as_deref());
    let ask = Ask { apiary: apiary.clone(), day, last };
    let model = Model { arguments: arguments.yard.run.clone() };
    let plan = progress::during(shared::computing_winter(), || model.ahead(&ask)).map_err(exit::refused)?;
    let (present, _) = progress::during(shared::watching(), || model.present(&ask, None)).map_err(exit::refused)?;
    progress::during(shared::telling_winter(), || model.film(&ask, &plan, &present.now)).map_err(exit::refused)
}

/// The day asked about; of an invented yard the day of its last note, so that there is a winter to tell.
fn day(apiary: &Apiary, arguments: &TellArguments) -> anyhow::Result<Date> {
    let zone = weather_source::zone(&apiary.site)?;
    let last = apiary.notes.iter().map(|note| note.at).max().filter(|_| apiary.invented);
    let noted = last.map(|at| at.to_zoned_datetime(zone).date());
    let run = &arguments.yard.run;
    match run.as_of.or(noted) {
        Some(day) => Ok(day),
        None => weather_source::asked_day(apiary, run),
    }
}
