//! What a browser or a program sends to the pages.

use axum::body::{Body, to_bytes};
use axum::http::{Method, Request, StatusCode};
use jiff::Timestamp;
use jiff::civil::{Date, date};
use snowhum_advice::film::FilmAnswer;
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::now::NowAnswer;
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::setup::{SetupAnswer, Try};
use snowhum_advice::spring::Springtime;
use snowhum_apiary::Apiary;
use snowhum_say::Message;
use snowhum_store::Store;
use snowhum_units::System;
use snowhum_watch::Watching;
use snowhum_web::{App, Ask, Opened, Present, Reach, Reckon, router};
use tower::ServiceExt;

use crate::records::{in_order, run};

/// The day the pages are asked about; up to it notes can be written.
const DAY: Date = date(2026, 2, 7);
/// Most of a page that is read.
const MOST: usize = 16 << 20;

/// A model that is not asked: what comes in is tried, not what is answered.
struct Silent;

/// What the silent model says.
const SAYS: &str = "the model is not asked here";

impl Reckon for Silent {
    fn present(&self, _: &Ask, _: Option<Vec<Watching>>) -> Result<(Present, Vec<Watching>), Message> {
        Err(SAYS.into())
    }
    fn ahead(&self, _: &Ask) -> Result<PlanAnswer, Message> {
        Err(SAYS.into())
    }
    fn windows(&self, _: &Ask) -> Result<JobsAnswer, Message> {
        Err(SAYS.into())
    }
    fn spring(&self, _: &Ask, _: &NowAnswer, _: &JobsAnswer) -> Result<Springtime, Message> {
        Err(SAYS.into())
    }
    fn film(&self, _: &Ask, _: &PlanAnswer, _: &NowAnswer) -> Result<FilmAnswer, Message> {
        Err(SAYS.into())
    }
    fn setups(&self, _: &Ask, _: usize, _: &[Try]) -> Result<SetupAnswer, Message> {
        Err(SAYS.into())
    }
}

/// A request: method, a space and the address in the first line, the body in all others. It is answered or refused, never
/// a fault of the server, and what it left in the records is in order.
pub fn forms(bytes: &[u8]) {
    let Some(request) = request(bytes) else { return };
    run(async {
        let Some((store, app)) = served().await else { return };
        let asked = format!("{} {}", request.method(), request.uri());
        let Ok(response) = router(app).oneshot(request).await;
        let status = response.status();
        let is_known = !status.is_server_error() || status == StatusCode::SERVICE_UNAVAILABLE;
        assert!(is_known, "{asked}: {status}");
        assert!(to_bytes(response.into_body(), MOST).await.is_ok(), "{asked}: the answer breaks off");
        in_order(&store, status.is_success() || status.is_redirection()).await;
    });
}

/// The request, sent as the server's own page sends it.
fn request(bytes: &[u8]) -> Option<Request<Body>> {
    let end = bytes.iter().position(|byte| *byte == b'\n').unwrap_or(bytes.len());
    let (method, address) = std::str::from_utf8(bytes.get(..end)?).ok()?.split_once(' ')?;
    let body = bytes.get(end + 1..).unwrap_or_default().to_vec();
    let kind = if body.starts_with(b"{") { "application/json" } else { "application/x-www-form-urlencoded" };
    let request = Request::builder().method(Method::from_bytes(method.as_bytes()).ok()?).uri(address);
    let request = request.header("host", "127.0.0.1:8462").header("origin", "http://127.0.0.1:8462");
    request.header("content-type", kind).body(Body::from(body)).ok()
}

/// The demo yard without most of its notes, served from memory.
async fn served() -> Option<(Store, App)> {
    let store = Store::in_memory().await.ok()?;
    let yard = small_yard()?;
    store.import_yard(&yard, Timestamp::UNIX_EPOCH).await.ok()?;
    let (reckon, reach) = (Box::new(Silent), Reach::this_machine());
    let (system, language, yard) = (System::Metric, None, yard.id);
    let opened =
        Opened { store: store.clone(), yard, reckon, day: Some(DAY), home: None, file: None, system, language, reach };
    Some((store, App::new(opened)))
}

/// Read once: most of what a try costs would be the reading.
pub(crate) fn small_yard() -> Option<Apiary> {
    static YARD: std::sync::OnceLock<Option<Apiary>> = std::sync::OnceLock::new();
    let read = || {
        let (mut yard, _) = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").ok()?;
        yard.notes.truncate(2);
        Some(yard)
    };
    YARD.get_or_init(read).clone()
}
