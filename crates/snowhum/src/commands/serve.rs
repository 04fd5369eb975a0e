//! `serve`: the pages, on this machine alone or in the keeper's own network.

mod addresses;
mod authority;
pub(crate) mod lan;
mod phrase;
pub(super) mod ports;
mod qr;
pub(crate) mod yard;

use anyhow::Context;
use jiff::civil::Date;
use snowhum_advice::film::{FilmAnswer, FilmQuestion, film};
use snowhum_advice::jobs::{JobsAnswer, Triggers};
use snowhum_advice::now::{NowAnswer, NowQuestion};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::setup::{SetupAnswer, Try, compare};
use snowhum_advice::spring::{SpringQuestion, Springtime, spring};
use snowhum_advice::{plan, sealed};
use snowhum_apiary::Apiary;
use snowhum_say::{Message, serve_terminal as say, shared_terminal as shared};
use snowhum_store::Store;
use snowhum_watch::Watching;
use snowhum_web::{App, Ask, Opened, Present, Reach, Reckon};

use crate::args::{Common, RunArguments, ServeArguments};
use crate::{exit, keep, progress, weather_source};

use lan::Lan;
use yard::{Found, Which};

pub(super) fn run(arguments: &ServeArguments, common: &Common) -> anyhow::Result<()> {
    run_with(arguments.yard.apiary.as_deref().map_or(Which::Kept, Which::File), arguments, common)
}

/// Serves the invented yard, whatever is kept.
pub(super) fn run_demo(arguments: &ServeArguments, common: &Common) -> anyhow::Result<()> {
    run_with(Which::Demo, arguments, common)
}

fn run_with(which: Which<'_>, arguments: &ServeArguments, common: &Common) -> anyhow::Result<()> {
    let runtime = runtime().map_err(exit::environment)?;
    runtime.block_on(serve(which, arguments, common))
}

/// Threads for the pages; estimates are computed on threads of their own.
const PAGE_THREADS: usize = 2;
/// Threads that may wait: a pass-phrase is checked by one.
const WAITING_THREADS: usize = 2;

/// Few threads, as each keeps a stock of memory of its own.
fn runtime() -> std::io::Result<tokio::runtime::Runtime> {
    let mut threads = tokio::runtime::Builder::new_multi_thread();
    threads.worker_threads(PAGE_THREADS).max_blocking_threads(WAITING_THREADS).enable_all().build()
}

async fn serve(which: Which<'_>, arguments: &ServeArguments, common: &Common) -> anyhow::Result<()> {
    let Found { store, yard, home, is_first_run } = yard::find(which, common.store.as_deref()).await?;
    let lan = if arguments.lan.lan { Some(Lan::prepare(&arguments.lan, &store).await?) } else { None };
    let apiary = store.yard(yard).await.map_err(keep::of_machine)?.context("the yard was just stored")?;
    let day = arguments.yard.run.as_of.or(apiary.invented.then_some(apiary.as_of));
    let reckon = Box::new(Model { arguments: arguments.yard.run.clone() });
    let file = if let Which::File(file) = which { Some(file.to_owned()) } else { None };
    let reach = lan.as_ref().map_or_else(Reach::this_machine, Lan::reach);
    progress::note(lies(&store));
    if is_first_run {
        progress::note(say::first_run());
    }
    let (system, language) = (common.units.into(), common.asked_language());
    let app = App::new(Opened { store, yard, reckon, day, home, file, system, language, reach });
    match lan {
        Some(lan) => lan.serve(app, arguments.port, &arguments.lan).await,
        None => here(app, arguments.port).await,
    }
}

/// Serves this machine alone.
async fn here(app: App, port: Option<u16>) -> anyhow::Result<()> {
    let listener = ports::here(port).await?;
    let address = listener.local_addr().map_err(exit::environment)?;
    tokio::spawn(app.clone().work());
    progress::note(say::here(format!("http://{address}/")));
    snowhum_web::serve(vec![listener], None, snowhum_web::router(app)).await.map_err(exit::environment)
}

/// Where the records lie, in words.
fn lies(store: &Store) -> Message {
    match store.path() {
        Some(path) => say::kept_in(path.display().to_string()),
        None => say::kept_nowhere(),
    }
}

/// The model under the weather that the arguments name.
pub(super) struct Model {
    pub(super) arguments: RunArguments,
}

impl Model {
    fn arguments(&self, as_of: Date) -> RunArguments {
        RunArguments { as_of: Some(as_of), ..self.arguments.clone() }
    }
}

impl Reckon for Model {
    fn present(&self, ask: &Ask, before: Option<Vec<Watching>>) -> Result<(Present, Vec<Watching>), Message> {
        let parameters = snowhum_winter::Parameters::shipped().map_err(words)?;
        let signs = snowhum_watch::Parameters::shipped().map_err(words)?;
        let thresholds = snowhum_advice::now::Thresholds::shipped().map_err(words)?;
        let arguments = self.arguments(ask.day);
        let present = weather_source::Present::resolve(&ask.apiary, &arguments).map_err(told)?;
        let apiary = present.weather.moved(&ask.apiary);
        let question = present.question(&apiary, &parameters, (&signs, &thresholds), &arguments);
        Ok(Present::of(NowQuestion { last: &ask.last, ..question }, before))
    }

    fn ahead(&self, ask: &Ask) -> Result<PlanAnswer, Message> {
        let parameters = snowhum_winter::Parameters::shipped().map_err(words)?;
        sealed::refuse(&ask.apiary, &parameters).map_err(words)?;
        let arguments = self.arguments(ask.apiary.as_of);
        let (weather, _) = weather_source::Weather::resolve(&ask.apiary, &arguments).map_err(told)?;
        let apiary = weather.moved(&ask.apiary);
        Ok(plan(&weather.question(&apiary, &parameters, &arguments)))
    }

    fn windows(&self, ask: &Ask) -> Result<JobsAnswer, Message> {
        super::jobs::windows(&ask.apiary, &self.arguments(ask.day), ask.day).map_err(told)
    }

    fn spring(&self, ask: &Ask, now: &NowAnswer, jobs: &JobsAnswer) -> Result<Springtime, Message> {
        let triggers = Triggers::shipped().map_err(words)?;
        let arguments = self.arguments(now.as_of);
        let present = weather_source::Present::resolve(&ask.apiary, &arguments).map_err(told)?;
        let apiary = present.weather.moved(&ask.apiary);
        let winter = &present.weather.winter;
        Ok(spring(&SpringQuestion { apiary: &apiary, now, jobs, winter, triggers: &triggers }))
    }

    fn film(&self, ask: &Ask, plan: &PlanAnswer, now: &NowAnswer) -> Result<FilmAnswer, Message> {
        let parameters = snowhum_winter::Parameters::shipped().map_err(words)?;
        let signs = snowhum_watch::Parameters::shipped().map_err(words)?;
        let thresholds = snowhum_advice::now::Thresholds::shipped().map_err(words)?;
        let (from_count, to_day) = (self.arguments(ask.apiary.as_of), self.arguments(now.as_of));
        let (weather, _) = weather_source::Weather::resolve(&ask.apiary, &from_count).map_err(told)?;
        let present = weather_source::Present::resolve(&ask.apiary, &to_day).map_err(told)?;
        let (counted, here) = (weather.moved(&ask.apiary), present.weather.moved(&ask.apiary));
        let autumn = weather.question(&counted, &parameters, &from_count);
        let present = present.question(&here, &parameters, (&signs, &thresholds), &to_day);
        Ok(film(&FilmQuestion { autumn, plan, present, now }))
    }

    fn setups(&self, ask: &Ask, at: usize, tries: &[Try]) -> Result<SetupAnswer, Message> {
        let parameters = snowhum_winter::Parameters::shipped().map_err(words)?;
        sealed::refuse(&ask.apiary, &parameters).map_err(words)?;
        let arguments = self.arguments(ask.apiary.as_of);
        let (weather, _) = weather_source::Weather::resolve(&ask.apiary, &arguments).map_err(told)?;
        let apiary: Apiary = weather.moved(&ask.apiary);
        let question = weather.question(&apiary, &parameters, &arguments);
        compare(&question, at, tries).ok_or_else(|| shared::no_hive(&apiary.colonies[at].name))
    }
}

/// A fault of the program's own tables, or a hive that cannot be reckoned.
fn words(error: impl std::fmt::Display) -> Message {
    error.to_string().into()
}

fn told(error: anyhow::Error) -> Message {
    exit::told(&error)
}
