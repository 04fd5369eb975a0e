//! `club`: the yards of a club on PostgreSQL, and their nights, computed on any number of machines.

mod invent;
mod model;

use std::fs::File;
use std::io::{BufReader, BufWriter};
use std::num::NonZero;
use std::path::{Path, PathBuf};

use clap::{Args, Subcommand, ValueEnum};
use jiff::civil::Date;
use serde_json::json;
use snowhum_club::{Club, Fault, Night, Pace, Role, Status, Worker};
use snowhum_clubhouse::Clubhouse;
use snowhum_say::{Message, club_page, club_terminal as own, records_terminal, shared_terminal as shared};
use snowhum_web::Reach;

use super::records::{say, shown};
use super::serve::ports::here;
use crate::args::{Common, parse_date};
use crate::text::voice::in_words;
use crate::{exit, new_file, progress, sources, text};
use model::Question;

/// Where the database's address stands: not among the arguments, which everybody on a machine may read.
const ADDRESS: &str = "DATABASE_URL";
/// The club where none is named.
const CLUB: &str = "club";

#[derive(Debug, Subcommand)]
pub(crate) enum ClubCommand {
    /// snowhum club import anna.json --member Anna
    Import(ImportArguments),
    /// snowhum club export club.jsonl
    Export(ExportArguments),
    /// snowhum club member Anna
    Member(MemberArguments),
    /// snowhum club share "Rowan Bank" --member Anna --with Mo
    Share(ShareArguments),
    /// snowhum club plan-night --day 2026-01-10
    PlanNight(NightArguments),
    /// snowhum club work --at-once 4
    Work(WorkArguments),
    /// snowhum club forget --before 2025-12-01
    Forget {
        #[arg(long, value_name = "DATE", value_parser = parse_date)]
        before: Date,
    },
    Invent {
        #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=1_000_000))]
        yards: u32,
        #[arg(long, value_name = "NAME", default_value = "Invented")]
        club: String,
    },
    Status(StatusArguments),
    /// snowhum club serve --name bees.example.org
    Serve(ServeArguments),
    Answers {
        folder: PathBuf,
    },
}

#[derive(Debug, Args)]
pub(crate) struct ImportArguments {
    file: PathBuf,
    #[arg(long, value_name = "NAME")]
    member: Option<String>,
    #[arg(long, value_name = "NAME", default_value = CLUB)]
    club: String,
    #[arg(long, value_enum, requires = "member")]
    role: Option<RoleArgument>,
}

#[derive(Debug, Args)]
pub(crate) struct MemberArguments {
    name: String,
    #[arg(long, value_name = "NAME", default_value = CLUB)]
    club: String,
    #[arg(long, value_enum)]
    role: Option<RoleArgument>,
}

#[derive(Debug, Args)]
pub(crate) struct ServeArguments {
    #[arg(long, value_name = "PORT")]
    port: Option<u16>,
    #[arg(long = "name", value_name = "NAME")]
    names: Vec<String>,
}

/// What a member is.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub(crate) enum RoleArgument {
    Keeper,
    Mentor,
}

impl From<RoleArgument> for Role {
    fn from(role: RoleArgument) -> Self {
        match role {
            RoleArgument::Keeper => Self::Keeper,
            RoleArgument::Mentor => Self::Mentor,
        }
    }
}

#[derive(Debug, Args)]
pub(crate) struct ExportArguments {
    to: PathBuf,
    #[arg(long, value_name = "NAME")]
    member: Option<String>,
    #[arg(long, value_name = "NAME", default_value = CLUB)]
    club: String,
}

#[derive(Debug, Args)]
pub(crate) struct ShareArguments {
    yard: String,
    #[arg(long, value_name = "NAME")]
    member: String,
    #[arg(long, value_name = "NAME", default_value = CLUB)]
    club: String,
    #[arg(long = "with", value_name = "NAME")]
    mentor: String,
    #[arg(long)]
    end: bool,
}

#[derive(Debug, Args)]
pub(crate) struct NightArguments {
    #[arg(long, value_name = "DATE", value_parser = parse_date)]
    day: Option<Date>,
    #[command(flatten)]
    question: Question,
}

#[derive(Debug, Args)]
pub(crate) struct WorkArguments {
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=1_024))]
    at_once: Option<u16>,
    #[arg(long)]
    until_done: bool,
}

#[derive(Debug, Args)]
pub(crate) struct StatusArguments {
    #[arg(long)]
    metrics: bool,
}

pub(super) fn run(command: &ClubCommand, common: &Common) -> anyhow::Result<()> {
    match command {
        ClubCommand::Import(arguments) => import(arguments, common),
        ClubCommand::Export(arguments) => export(arguments, common),
        ClubCommand::Member(arguments) => member(arguments, common),
        ClubCommand::Serve(arguments) => serve(arguments),
        ClubCommand::Share(arguments) => share(arguments, common),
        ClubCommand::PlanNight(arguments) => plan_night(arguments, common),
        ClubCommand::Work(arguments) => work(arguments),
        ClubCommand::Forget { before } => forget(*before, common),
        ClubCommand::Invent { yards, club } => invent::run(*yards, club, common),
        ClubCommand::Status(arguments) => status(arguments, common),
        ClubCommand::Answers { folder } => answers(folder, common),
    }
}

fn import(arguments: &ImportArguments, common: &Common) -> anyhow::Result<()> {
    let file = &arguments.file;
    let Some(name) = &arguments.member else {
        let from = File::open(file).map(BufReader::new).map_err(|error| sources::unreadable(file, &error))?;
        with(async |club| club.import(from).await.map_err(failure))?;
        return say(common, own::imported(), &json!({ "imported": CLUB }));
    };
    let export = String::from_utf8(sources::read(file)?);
    let export = export.map_err(|_| exit::refused(shared::not_text(shown(file))))?;
    let role = arguments.role.map(Role::from);
    let taken = with(async |club| {
        let handed = model::handed(file, export).await?;
        let member = club.member(&arguments.club, name, role).await.map_err(failure)?;
        club.take_in(member, &handed).await.map_err(failure)
    })?;
    let (changed, unchanged, left) = (taken.changed, taken.unchanged, taken.left);
    say(
        common,
        own::taken(changed, left, name, unchanged),
        &json!({ "changed": changed, "unchanged": unchanged, "left": left }),
    )
}

fn export(arguments: &ExportArguments, common: &Common) -> anyhow::Result<()> {
    let to = &arguments.to;
    with(async |club| match &arguments.member {
        None => club.export(BufWriter::new(new_file::create_private(to)?)).await.map_err(failure),
        Some(name) => {
            let member = club.known_member(&arguments.club, name).await.map_err(failure)?;
            let export = club.last_export(member).await.map_err(failure)?;
            let export = export.ok_or_else(|| exit::refused(own::nothing_yet(name)))?;
            let file = new_file::create_private(to)?;
            std::io::Write::write_all(&mut &file, export.as_bytes()).map_err(|error| new_file::failed(to, &error))
        }
    })?;
    say(common, records_terminal::written(vec![shown(to)]), &json!({ "written": [to] }))
}

fn share(arguments: &ShareArguments, common: &Common) -> anyhow::Result<()> {
    let ShareArguments { yard, member, club: name, mentor, end } = arguments;
    with(async |club| {
        let owner = club.known_member(name, member).await.map_err(failure)?;
        let reader = club.known_member(name, mentor).await.map_err(failure)?;
        let done = if *end { club.unshare(owner, yard, reader).await } else { club.share(owner, yard, reader).await };
        done.map_err(failure)
    })?;
    let said = if *end { own::reads_no_more(mentor, yard) } else { own::reads(mentor, yard) };
    say(common, said, &json!({ "yard": yard, "mentor": mentor, "reads": !end }))
}

fn member(arguments: &MemberArguments, common: &Common) -> anyhow::Result<()> {
    let MemberArguments { name, club: of, role } = arguments;
    let key = with(async |club| {
        let member = club.member(of, name, role.map(Role::from)).await.map_err(failure)?;
        club.give_key(member).await.map_err(failure)
    })?;
    say(common, own::key(&key, name), &json!({ "member": name, "key": key }))
}

fn serve(arguments: &ServeArguments) -> anyhow::Result<()> {
    let reach = match arguments.names.as_slice() {
        [] => Reach::this_machine(),
        names => Reach::network(names.iter().cloned()),
    };
    with(async |club| {
        let listener = here(arguments.port).await?;
        let address = listener.local_addr().map_err(exit::environment)?;
        progress::note(own::pages(format!("http://{address}/")));
        let pages = snowhum_clubhouse::router(Clubhouse { club: club.clone(), reach, read: model::read() });
        let stop = told_to_stop()?;
        tokio::select! {
            () = stop => Ok(()),
            ended = snowhum_web::serve(vec![listener], None, pages) => ended.map_err(exit::environment),
        }
    })
}

fn plan_night(arguments: &NightArguments, common: &Common) -> anyhow::Result<()> {
    let day = arguments.day.unwrap_or_else(|| jiff::tz::TimeZone::system().to_datetime(jiff::Timestamp::now()).date());
    let build = snowhum_club::build().map_err(failure)?;
    let night = Night { day, build, question: serde_json::to_string(&arguments.question)? };
    let planned = with(async |club| club.plan_night(&night).await.map_err(failure))?;
    let (asked, queued) = (planned.asked, planned.queued);
    let said = own::planned(asked, day.to_string(), planned.night, queued);
    say(common, said, &json!({ "night": planned.night, "day": day, "asked": asked, "queued": queued }))
}

fn work(arguments: &WorkArguments) -> anyhow::Result<()> {
    let cores = std::thread::available_parallelism().map_or(1, NonZero::get);
    let worker = Worker {
        build: snowhum_club::build().map_err(failure)?,
        at_once: arguments.at_once.map_or(cores, usize::from),
        pace: Pace::USUAL,
        reckon: model::reckon(),
        told: |fault| progress::note(own::again(fault.message())),
    };
    with(async |club| {
        let (other, build, until_done) = (club.clone(), worker.build.clone(), arguments.until_done);
        let stop = told_to_stop()?;
        let until = async move {
            if until_done {
                tokio::select! { () = stop => (), () = other.all_done(build) => () }
            } else {
                stop.await;
            }
        };
        club.work(&worker, until).await.map_err(failure)
    })
}

fn forget(before: Date, common: &Common) -> anyhow::Result<()> {
    let forgotten = with(async |club| club.forget(before).await.map_err(failure))?;
    let (nights, answers) = (forgotten.nights, forgotten.answers);
    say(common, own::forgotten(answers, before.to_string(), nights), &json!({ "nights": nights, "answers": answers }))
}

/// Comes back when the machine or the keeper asks the program to end.
fn told_to_stop() -> anyhow::Result<impl Future<Output = ()> + Send + 'static> {
    #[cfg(unix)]
    let mut asked =
        tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate()).map_err(exit::environment)?;
    Ok(async move {
        #[cfg(unix)]
        tokio::select! { _ = asked.recv() => (), _ = tokio::signal::ctrl_c() => () }
        #[cfg(not(unix))]
        let _ = tokio::signal::ctrl_c().await;
    })
}

fn status(arguments: &StatusArguments, common: &Common) -> anyhow::Result<()> {
    let status = with(async |club| club.status().await.map_err(failure))?;
    if arguments.metrics {
        return text::say(&snowhum_club::metrics(&status));
    }
    say(common, words(&status).into(), &serde_json::to_value(&status)?)
}

fn words(status: &Status) -> String {
    let Some(night) = status.nights.first() else { return in_words(&own::no_night()) };
    let mut page = in_words(&own::night(&night.day, night.message())) + "\n";
    if let Some(left) = status.ahead(night) {
        page += &text::entry(own::left(), left);
    }
    page += &text::entry(own::cost(), own::hours(night.core_ms as f64 / 3.6e6));
    let queue =
        [club_page::workers(status.queue.workers), club_page::waiting(status.queue.taken, status.queue.waiting)];
    page += &text::entry(own::workers(), Message::sentences(queue));
    for (yard, why) in &night.failures {
        page += &text::entry(own::failed(), shared::of(yard, why));
    }
    let last = status.nights.iter().find(|night| night.is_complete());
    page + &text::entry(own::read(), last.map_or_else(club_page::no_night, |night| own::last(&night.day)))
}

fn answers(folder: &Path, common: &Common) -> anyhow::Result<()> {
    let night = with(async |club| club.last_night(None).await.map_err(failure))?;
    let night = night.ok_or_else(|| exit::refused(own::none_complete()))?;
    std::fs::create_dir_all(folder).map_err(|error| new_file::failed(folder, &error))?;
    let (mut written, mut failed) = (0, Vec::new());
    for outlook in night.yards {
        match outlook.answer {
            Ok(answer) => {
                let file = folder.join(format!("{}.json", outlook.yard));
                std::fs::write(&file, answer + "\n").map_err(|error| new_file::failed(&file, &error))?;
                written += 1;
            }
            Err(why) => failed.push((outlook.name, why)),
        }
    }
    let list = failed.iter().map(|(yard, why)| own::answer_failed(why, yard));
    let said = [own::answers(night.day.to_string(), shown(folder), written)].into_iter().chain(list);
    let failed: Vec<String> = failed.iter().map(|(yard, why)| format!("{yard}: {why}")).collect();
    say(common, Message::lines(said), &json!({ "day": night.day, "written": written, "failed": failed }))
}

/// Does something with the club of the database that is named.
fn with<T>(work: impl AsyncFnOnce(&Club) -> anyhow::Result<T>) -> anyhow::Result<T> {
    let address = std::env::var(ADDRESS).map_err(|_| exit::refused(own::no_address(ADDRESS)))?;
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(exit::environment)?;
    runtime.block_on(async {
        let club = Club::open(&address).await.map_err(failure)?;
        let done = work(&club).await;
        club.close().await;
        done
    })
}

fn failure(fault: Fault) -> anyhow::Error {
    match fault {
        Fault::Unreachable { .. } | Fault::Damaged { .. } | Fault::File(_) | Fault::Refused { .. } => {
            exit::failed(fault.message())
        }
        _ => exit::refused(fault.message()),
    }
}
