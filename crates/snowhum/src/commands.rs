//! The subcommands, one a file.

mod check;
#[cfg(feature = "club")]
pub(crate) mod club;
mod dead_bees;
pub(crate) mod deadout;
mod demo;
pub(crate) mod feed;
pub(crate) mod generate;
mod hive;
pub(crate) mod import;
pub(crate) mod jobs;
mod keeping;
pub(crate) mod losses;
pub(crate) mod mites;
mod new;
pub(crate) mod note;
pub(crate) mod now;
pub(crate) mod plan;
pub(crate) mod print;
pub(crate) mod records;
pub(crate) mod season;
pub(crate) mod serve;
mod setup;
mod spring;
mod sum;
pub(crate) mod tell;
#[cfg(test)]
mod tests;
pub(crate) mod treatments;
mod weather;
pub(crate) mod weigh;
mod words;

use snowhum_say::{Language, Tongue};
use snowhum_web::Chosen;

use crate::args::{Arguments, Command, Common};
use crate::{exit, keep, text};

/// Runs what was asked.
pub(crate) fn run(arguments: &Arguments) -> anyhow::Result<()> {
    if let Some(threads) = arguments.common.threads {
        let pool = rayon::ThreadPoolBuilder::new().num_threads(threads.clamp(1, 256));
        pool.build_global().map_err(exit::environment)?;
    }
    let (common, tongue) = chosen(&arguments.command, &arguments.common);
    let common = &common;
    text::voice::speak(tongue);
    match &arguments.command {
        Command::Demo(demo) => demo::run(demo, common),
        Command::New { file } => new::run(file),
        Command::Check { file } => check::run(file, common),
        Command::Plan(yard) => plan::run(yard, common),
        Command::Now(yard) => now::run(yard, common),
        Command::Note(note) => note::run(note, common),
        Command::Undo(colony) => note::undo(colony, common),
        Command::Import(arguments) => import::run(arguments, common),
        Command::Export { to } => records::export(to, common),
        Command::Backup { to } => records::backup(to, common),
        Command::Restore(arguments) => records::restore(arguments, common),
        Command::SignInCode => records::sign_in_code(common),
        Command::Doctor => records::doctor(common),
        Command::Hive(hive) => hive::run(hive, common),
        Command::Season(arguments) => season::run(arguments, common),
        Command::Setup(setup) => setup::run(setup, common),
        Command::DeadBees(question) => dead_bees::run(question, common),
        Command::Mites(question) => mites::run(question, common),
        Command::Feed(question) => feed::run(question, common),
        Command::Weigh(question) => weigh::run(question, common),
        Command::Losses(question) => losses::run(question, common),
        Command::Jobs(arguments) => jobs::run(arguments, common),
        Command::Spring(yard) => spring::run(yard, common),
        Command::Deadout(signs) => deadout::run(signs, common),
        Command::Treatments(arguments) => treatments::run(arguments, common),
        Command::Print(arguments) => print::run(arguments, common, tongue),
        Command::Tell(arguments) => tell::run(arguments, common),
        Command::Words { term } => words::run(term.as_deref(), common),
        Command::Serve(arguments) => serve::run(arguments, common),
        Command::Weather(weather) => weather::run(weather, common),
        #[cfg(feature = "club")]
        Command::Club(command) => club::run(command, common),
        Command::Generate(arguments) => generate::run(arguments),
    }
}

/// In which units the keeper writes and reads, and in which language: as asked for, else as chosen for the pages of the records. Commands
/// that copy and look after the records do not open them for it.
fn chosen(command: &Command, common: &Common) -> (Common, Tongue) {
    let looks_after = matches!(
        command,
        Command::Export { .. }
            | Command::Backup { .. }
            | Command::Restore { .. }
            | Command::Doctor
            | Command::Serve(_)
            | Command::Generate(_)
    );
    let is_asked = common.asked_units.is_some() && (common.language.is_some() || common.words.is_some() || common.json);
    let kept = if looks_after || is_asked { Chosen::default() } else { keep::chosen(common.store.as_deref()) };
    let units = common.asked_units.or(kept.system.map(Into::into)).unwrap_or_default();
    let asked = common.asked_language();
    let language = asked.unwrap_or(if common.json { Language::British } else { kept.language.unwrap_or_default() });
    (Common { units, ..common.clone() }, Tongue::new(units.into()).in_language(language))
}
