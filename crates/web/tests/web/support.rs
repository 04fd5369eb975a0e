//! The demo yard served in memory, and questions to it.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::{HeaderMap, Request, StatusCode};
use jiff::ToSpan;
use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use snowhum_advice::film::{FilmAnswer, FilmQuestion, film};
use snowhum_advice::jobs::{JobsAnswer, JobsQuestion, SiteYear, Triggers, jobs, season_start};
use snowhum_advice::now::{NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::setup::{SetupAnswer, Try, compare};
use snowhum_advice::spring::{SpringQuestion, Springtime, spring};
use snowhum_advice::{PlanQuestion, plan, yard};
use snowhum_apiary::Apiary;
use snowhum_say::{Language, Message};
use snowhum_store::Store;
use snowhum_units::{Metre, System};
use snowhum_watch::{Sizes, Watching};
use snowhum_weather::{AirPaths, Climate, Ensemble, Far, Place, generate};
use snowhum_web::{App, Ask, Opened, Present, Reach, Reckon, router};
use std::path::PathBuf;
use std::sync::{Arc, Condvar, Mutex};
use tower::ServiceExt;

pub(crate) const FEBRUARY: Date = date(2026, 2, 7);
/// Pages that show what takes long to compute.
const LONG: [&str; 8] = ["/fit", "/feed", "/mites", "/jobs", "/spring", "/setup", "/losses", "/tell"];
/// Name of a yard whose weather file lies far from it.
pub(crate) const FAR: &str = "Under the hill";
const SPRING: Date = date(2026, 5, 15);

/// An answer as it comes.
pub(crate) struct Answer {
    pub(crate) status: StatusCode,
    pub(crate) headers: HeaderMap,
    pub(crate) body: String,
}

/// Few members under few paths: what a page shows is tried here, not what the model says.
struct Small;

impl Small {
    fn weather(apiary: &Apiary) -> Ensemble {
        let place = yard::place(&apiary.site);
        let zone = TimeZone::get(&apiary.site.zone).unwrap();
        let days = SPRING.duration_since(apiary.as_of).as_hours() as usize / 24;
        let mut winter = generate(place, &Climate::at(place).unwrap(), &zone, apiary.as_of, 24 * days, 4, 1).unwrap();
        if apiary.name == FAR {
            let higher = Place { elevation: place.elevation + Metre::new(500.0), ..place };
            winter.provenance.far.extend(Far::from_yard("hill.epw", higher, place));
        }
        winter
    }
}

/// A door before the model: while it is shut, every computation waits before it.
#[derive(Clone, Default)]
pub(crate) struct Door(Arc<(Mutex<bool>, Condvar)>);

impl Door {
    pub(crate) fn shut(&self) {
        *self.0.0.lock().unwrap() = true;
    }

    pub(crate) fn open(&self) {
        *self.0.0.lock().unwrap() = false;
        self.0.1.notify_all();
    }

    fn pass(&self) {
        drop(self.0.1.wait_while(self.0.0.lock().unwrap(), |is_shut| *is_shut).unwrap());
    }
}

/// The model behind a door.
struct Slow(Door);

impl Reckon for Slow {
    fn present(&self, ask: &Ask, before: Option<Vec<Watching>>) -> Result<(Present, Vec<Watching>), Message> {
        self.0.pass();
        Small.present(ask, before)
    }

    fn ahead(&self, ask: &Ask) -> Result<PlanAnswer, Message> {
        self.0.pass();
        Small.ahead(ask)
    }

    fn windows(&self, ask: &Ask) -> Result<JobsAnswer, Message> {
        self.0.pass();
        Small.windows(ask)
    }

    fn spring(&self, ask: &Ask, now: &NowAnswer, jobs: &JobsAnswer) -> Result<Springtime, Message> {
        self.0.pass();
        Small.spring(ask, now, jobs)
    }

    fn film(&self, ask: &Ask, plan: &PlanAnswer, now: &NowAnswer) -> Result<FilmAnswer, Message> {
        self.0.pass();
        Small.film(ask, plan, now)
    }

    fn setups(&self, ask: &Ask, at: usize, tries: &[Try]) -> Result<SetupAnswer, Message> {
        self.0.pass();
        Small.setups(ask, at, tries)
    }
}

/// Asks with the plan that begins on `from`.
fn with_plan<T>(ask: &Ask, from: Date, answer: impl FnOnce(PlanQuestion<'_>) -> T) -> T {
    let parameters = snowhum_winter::Parameters::shipped().unwrap();
    let winter = Small::weather(&ask.apiary);
    answer(PlanQuestion {
        apiary: &ask.apiary,
        winter: &winter,
        autumn: &AirPaths::from(&winter),
        autumn_from: ask.apiary.as_of,
        as_of: from,
        spring: SPRING,
        parameters: &parameters,
        members: 16,
        seed: 1,
    })
}

impl Reckon for Small {
    fn present(&self, ask: &Ask, before: Option<Vec<Watching>>) -> Result<(Present, Vec<Watching>), Message> {
        if ask.day >= SPRING {
            return Err("that day lies after this winter".into());
        }
        let (signs, thresholds) = (
            snowhum_watch::Parameters::shipped().unwrap(),
            Thresholds::shipped().map_err(|error| Message::from(error.to_string()))?,
        );
        Ok(with_plan(ask, ask.day.saturating_add(1.days()), |plan| {
            let sizes = Sizes { alive: 64, dead: 32 };
            let (signs, thresholds) = (&signs, &thresholds);
            Present::of(
                NowQuestion { plan, as_of: ask.day, known_hours: 0, signs, thresholds, sizes, last: &ask.last },
                before,
            )
        }))
    }

    fn ahead(&self, ask: &Ask) -> Result<PlanAnswer, Message> {
        Ok(with_plan(ask, ask.apiary.as_of, |question| plan(&question)))
    }

    fn windows(&self, ask: &Ask) -> Result<JobsAnswer, Message> {
        let triggers = Triggers::shipped().map_err(|error| Message::from(error.to_string()))?;
        let from = season_start(ask.day, ask.apiary.site.latitude);
        let place = yard::place(&ask.apiary.site);
        let zone = TimeZone::get(&ask.apiary.site.zone).unwrap();
        let year = generate(place, &Climate::at(place).unwrap(), &zone, from, 24 * 366, 4, 1).unwrap();
        Ok(with_plan(ask, ask.apiary.as_of, |plan| {
            let (apiary, as_of) = (&ask.apiary, ask.day);
            let colonies = Some(plan);
            jobs(&JobsQuestion {
                apiary,
                year: &SiteYear::of(&apiary.site, &year, from, &triggers),
                as_of,
                colonies,
                triggers: &triggers,
            })
        }))
    }

    fn spring(&self, ask: &Ask, now: &NowAnswer, jobs: &JobsAnswer) -> Result<Springtime, Message> {
        let triggers = Triggers::shipped().map_err(|error| Message::from(error.to_string()))?;
        let winter = Small::weather(&ask.apiary);
        Ok(spring(&SpringQuestion { apiary: &ask.apiary, now, jobs, winter: &winter, triggers: &triggers }))
    }

    fn film(&self, ask: &Ask, plan: &PlanAnswer, now: &NowAnswer) -> Result<FilmAnswer, Message> {
        let signs = snowhum_watch::Parameters::shipped().unwrap();
        let thresholds = Thresholds::shipped().map_err(|error| Message::from(error.to_string()))?;
        Ok(with_plan(ask, ask.apiary.as_of, |autumn| {
            with_plan(ask, now.as_of.saturating_add(1.days()), |ahead| {
                let sizes = Sizes { alive: 64, dead: 32 };
                let (signs, thresholds, last) = (&signs, &thresholds, ask.last.as_slice());
                let present =
                    NowQuestion { plan: ahead, as_of: now.as_of, known_hours: 0, signs, thresholds, sizes, last };
                film(&FilmQuestion { autumn, plan, present, now })
            })
        }))
    }

    fn setups(&self, ask: &Ask, at: usize, tries: &[Try]) -> Result<SetupAnswer, Message> {
        with_plan(ask, ask.apiary.as_of, |question| compare(&question, at, tries)).ok_or_else(|| "no hive".into())
    }
}

pub(crate) fn demo() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

/// Runs a test on a server of one's own.
pub(crate) fn run<F: Future<Output = ()>>(test: impl FnOnce(Served) -> F) {
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().unwrap();
    runtime.block_on(async { test(Served::open(None).await).await });
}

/// Runs a test that opens its own servers.
pub(crate) fn run_bare<F: Future<Output = ()>>(test: F) {
    tokio::runtime::Builder::new_multi_thread().enable_all().build().unwrap().block_on(test);
}

/// The demo yard, served.
#[derive(Clone)]
pub(crate) struct Served {
    pub(crate) router: Router,
    pub(crate) app: App,
    pub(crate) store: Store,
    pub(crate) yard: Apiary,
}

impl Served {
    /// Serves from a file, or from memory.
    pub(crate) async fn open(file: Option<PathBuf>) -> Self {
        Self::open_yard(file, demo()).await
    }

    pub(crate) async fn open_yard(file: Option<PathBuf>, yard: Apiary) -> Self {
        Self::reached(file, yard, Reach::this_machine()).await
    }

    /// Serves a yard to those that `reach` lets in.
    pub(crate) async fn reached(file: Option<PathBuf>, yard: Apiary, reach: Reach) -> Self {
        Self::on(file, yard, reach, FEBRUARY).await
    }

    /// The same, asked about on a day.
    pub(crate) async fn on(file: Option<PathBuf>, yard: Apiary, reach: Reach, day: Date) -> Self {
        let store = match file {
            Some(file) => Store::open(&file).await.unwrap(),
            None => Store::in_memory().await.unwrap(),
        };
        store.import_yard(&yard, jiff::Timestamp::now()).await.unwrap();
        Self::under(Box::new(Small), store, (yard, Some(day), None), reach, None)
    }

    /// The demo yard in a language that nobody chose on its pages.
    pub(crate) async fn in_language(language: Language) -> Self {
        let (store, yard) = (Store::in_memory().await.unwrap(), demo());
        store.import_yard(&yard, jiff::Timestamp::now()).await.unwrap();
        Self::under(Box::new(Small), store, (yard, Some(FEBRUARY), None), Reach::this_machine(), Some(language))
    }

    /// The demo yard under a model that computes only while a door is open.
    pub(crate) async fn behind(door: &Door) -> Self {
        let (store, yard) = (Store::in_memory().await.unwrap(), demo());
        store.import_yard(&yard, jiff::Timestamp::now()).await.unwrap();
        Self::under(Box::new(Slow(door.clone())), store, (yard, Some(FEBRUARY), None), Reach::this_machine(), None)
    }

    /// The yard of a file, its notes in memory.
    pub(crate) async fn of_file(file: PathBuf) -> Self {
        let text = std::fs::read_to_string(&file).unwrap();
        let (store, yard) = (Store::in_memory().await.unwrap(), snowhum_apiary::read(&text, "yard").unwrap().0);
        store.import_yard(&yard, jiff::Timestamp::now()).await.unwrap();
        Self::under(Box::new(Small), store, (yard, Some(FEBRUARY), Some(file)), Reach::this_machine(), None)
    }

    fn under(
        reckon: Box<dyn Reckon>,
        store: Store,
        (yard, day, file): (Apiary, Option<Date>, Option<PathBuf>),
        reach: Reach,
        language: Option<Language>,
    ) -> Self {
        let (home, system) = (None, System::Metric);
        let opened = Opened { store: store.clone(), yard: yard.id, reckon, day, home, file, system, language, reach };
        let app = App::new(opened);
        tokio::spawn(app.clone().work());
        Self { router: router(app.clone()), app, store, yard }
    }

    pub(crate) async fn ask(&self, request: Request<Body>) -> Answer {
        let response = self.router.clone().oneshot(request).await.unwrap();
        let (parts, body) = response.into_parts();
        let bytes = to_bytes(body, 10 << 20).await.unwrap();
        Answer { status: parts.status, headers: parts.headers, body: String::from_utf8(bytes.to_vec()).unwrap() }
    }

    /// A page at once; one that shows a long answer once that is there.
    pub(crate) async fn get(&self, path: &str) -> Answer {
        let is_long = LONG.iter().any(|long| path.starts_with(long));
        if is_long { self.whole(path).await } else { self.at_once(path).await }
    }

    pub(crate) async fn at_once(&self, path: &str) -> Answer {
        self.ask(Request::get(path).body(Body::empty()).unwrap()).await
    }

    /// A page once nothing that it shows is on its way any more.
    pub(crate) async fn whole(&self, path: &str) -> Answer {
        loop {
            let answer = self.at_once(path).await;
            if !answer.body.contains(" data-waits") {
                return answer;
            }
            tokio::time::sleep(std::time::Duration::from_millis(50)).await;
        }
    }

    /// Sends a form from the server's own page.
    pub(crate) async fn post(&self, path: &str, pairs: &[(&str, &str)]) -> Answer {
        let body = pairs.iter().map(|(name, value)| format!("{}={}", escaped(name), escaped(value)));
        let request = Request::post(path)
            .header("host", "127.0.0.1:8462")
            .header("origin", "http://127.0.0.1:8462")
            .header("content-type", "application/x-www-form-urlencoded")
            .body(Body::from(body.collect::<Vec<_>>().join("&")));
        self.ask(request.unwrap()).await
    }

    pub(crate) async fn put(&self, path: &str, body: &serde_json::Value) -> Answer {
        let request = Request::put(path).header("content-type", "application/json").body(Body::from(body.to_string()));
        self.ask(request.unwrap()).await
    }

    /// Waits until the estimate is there and nothing newer is stored.
    pub(crate) async fn settled(&self) -> serde_json::Value {
        loop {
            let answer = self.get("/api/now").await;
            if answer.status == StatusCode::OK {
                let now: serde_json::Value = serde_json::from_str(&answer.body).unwrap();
                if now["something_newer_is_stored"] == false {
                    return now;
                }
            }
            tokio::time::sleep(std::time::Duration::from_millis(20)).await;
        }
    }

    pub(crate) fn colony(&self, name: &str) -> String {
        self.yard.colonies.iter().find(|colony| colony.name == name).unwrap().id.0.to_string()
    }
}

pub(crate) fn escaped(text: &str) -> String {
    text.bytes().map(|byte| format!("%{byte:02X}")).collect()
}

/// A page as a strict reader of XML sees it, after what HTML alone allows is closed.
pub(crate) fn well_formed(page: &str) -> Result<(), String> {
    roxmltree::Document::parse(&strict(page)?).map(|_| ()).map_err(|error| error.to_string())
}

/// What a page says of itself: its text without code, form values, and what is marked as quoted.
pub(crate) fn said(page: &str) -> String {
    let strict = strict(page).unwrap();
    let document = roxmltree::Document::parse(&strict).unwrap();
    let is_own = |node: roxmltree::Node<'_, '_>| {
        let quoted = |up: roxmltree::Node<'_, '_>| {
            ["code", "style", "script"].contains(&up.tag_name().name()) || up.attribute("translate") == Some("no")
        };
        !node.ancestors().any(quoted)
    };
    let texts = document.descendants().filter(|node| node.is_text() && is_own(*node));
    let aloud = document.descendants().filter_map(|node| node.attribute("aria-label"));
    texts.filter_map(|node| node.text()).chain(aloud).collect::<Vec<_>>().join("\n")
}

/// A page as strict XML.
pub(crate) fn strict(page: &str) -> Result<String, String> {
    const VOID: [&str; 4] = ["meta", "link", "input", "br"];
    let body = page.strip_prefix("<!DOCTYPE html>").ok_or("no doctype")?;
    let mut strict = String::with_capacity(body.len());
    let mut rest = body;
    while let Some(start) = rest.find('<') {
        let end = rest[start..].find('>').ok_or("an open tag")? + start;
        strict.push_str(&rest[..start]);
        let tag = &rest[start + 1..end];
        let name = tag.split([' ', '/']).next().unwrap_or_default();
        let tag = if name.is_empty() { tag.to_owned() } else { closed_attributes(tag) };
        strict.push_str(&if VOID.contains(&name) { format!("<{tag}/>") } else { format!("<{tag}>") });
        rest = &rest[end + 1..];
    }
    strict.push_str(rest);
    Ok(strict)
}

/// Attributes without a value given one; what stands between quotes is left as it is.
fn closed_attributes(tag: &str) -> String {
    let parts: Vec<String> = tag.split('"').enumerate().map(|(at, part)| closed_outside(at, part)).collect();
    parts.join("\"")
}

/// Every second part lies between quotes.
fn closed_outside(at: usize, part: &str) -> String {
    let mut out = part.to_owned();
    if at % 2 == 1 {
        return out;
    }
    for bare in ["checked", "selected", "required", "hidden", "open", "readonly", "autofocus"] {
        if out.ends_with(&format!(" {bare}")) {
            out.push_str("=\"\"");
        }
        out = out.replace(&format!(" {bare} "), &format!(" {bare}=\"\" "));
    }
    out
}
