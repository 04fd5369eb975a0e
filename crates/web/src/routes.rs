//! Every address.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::{DefaultBodyLimit, Request};
use axum::http::StatusCode;
use axum::middleware::{self, Next};
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use snowhum_say::{Message, fault_page as text};
use std::time::Duration;
use tower_http::compression::CompressionLayer;

use crate::addresses::Addresses;
use crate::app::App;
use crate::fault::Fault;
use crate::gate::{links, sign_in};
use crate::pages;
use crate::{api, assets, guard, reader, said};

/// Largest body that is read.
const LARGEST_BODY: usize = 128 * 1024;
/// Largest sheet of notes, with all of its form: some ten years of a keeper's diary.
pub(crate) const LARGEST_SHEET: usize = 4 << 20;
/// Where sheets are sent to.
const SHEETS: [&str; 2] = ["/import", "/api/notes/sheet"];
/// How long a body may take to come, all of it: the largest at 50 kbit/s, a sheet at 500.
const BODY_PATIENCE: Duration = Duration::from_secs(20);
const SHEET_PATIENCE: Duration = Duration::from_secs(70);

/// The server's answers to every address.
pub fn router(app: App) -> Router {
    let (routes, _) = addresses().into_parts();
    routes
        .fallback(missing)
        .layer(DefaultBodyLimit::max(LARGEST_BODY))
        .layer(middleware::from_fn(whole))
        .layer(middleware::from_fn(said::hear))
        .layer(middleware::from_fn_with_state(app.clone(), guard::guard))
        .layer(middleware::from_fn_with_state(app.clone(), guard::hear))
        .layer(CompressionLayer::new())
        .with_state(app)
}

/// Takes the whole body before anything is done with it, so that who sends a byte now and then is cut.
pub async fn whole(request: Request, next: Next) -> Response {
    let (head, body) = request.into_parts();
    let (patience, largest) = match SHEETS.contains(&head.uri.path()) {
        true => (SHEET_PATIENCE, LARGEST_SHEET),
        false => (BODY_PATIENCE, LARGEST_BODY),
    };
    match tokio::time::timeout(patience, to_bytes(body, largest)).await {
        Ok(Ok(bytes)) => next.run(Request::from_parts(head, Body::from(bytes))).await,
        Ok(Err(_)) => plainly(StatusCode::PAYLOAD_TOO_LARGE, &text::too_large()),
        Err(_) => plainly(StatusCode::REQUEST_TIMEOUT, &text::too_slow()),
    }
}

fn plainly(status: StatusCode, says: &Message) -> Response {
    (status, reader::tongue().say(says) + "\n").into_response()
}

/// Every address that is served, as the router writes it; for those that check them all.
#[must_use]
pub fn paths() -> Vec<&'static str> {
    addresses().into_parts().1
}

fn addresses() -> Addresses {
    Addresses::new()
        .route("/", get(pages::apiary::show))
        .route("/begin", get(pages::begin::show).post(pages::begin::keep))
        .route("/hive/{colony}", get(pages::hive::show))
        .route("/hive/{colony}/note", get(pages::notes::begin).post(pages::notes::add))
        .route("/hive/{colony}/notes", get(pages::notes::list))
        .route("/hive/{colony}/undo", post(pages::notes::undo))
        .route("/hive/{colony}/weigh", get(pages::weigh::show))
        .route("/hive/{colony}/tell", get(pages::tell::hive))
        .route("/hive/{colony}/change", get(pages::change::show))
        .route("/hives", get(pages::hives::show).post(pages::hives::add))
        .route("/tell", get(pages::tell::yard))
        .route("/fit", get(pages::fit::show))
        .route("/feed", get(pages::feed::show))
        .route("/mites", get(pages::mites::show))
        .route("/note/{note}", get(pages::notes::show).post(pages::notes::edit))
        .route("/note/{note}/withdraw", post(pages::notes::withdraw))
        .route("/round", get(pages::round::show).post(pages::round::keep))
        .route("/round/sheet", get(pages::sheet::show))
        .route(
            "/import",
            get(pages::import::show).post(pages::import::bring).layer(DefaultBodyLimit::max(LARGEST_SHEET)),
        )
        .route("/import/undo", post(pages::import::undo))
        .route("/flight", get(pages::flight::show).post(pages::flight::tap))
        .route("/jobs", get(pages::jobs::show))
        .route("/jobs.ics", get(pages::jobs::download))
        .route("/spring", get(pages::spring::show))
        .route("/setup", get(pages::setup::show))
        .route("/normal", get(pages::normal::show))
        .route("/dead", get(pages::dead::list))
        .route("/dead/{colony}", get(pages::dead::show).post(pages::dead::keep))
        .route("/season", get(pages::season::show).post(pages::season::keep))
        .route("/losses", get(pages::losses::show).post(pages::losses::keep))
        .route("/inside", get(pages::inside::show))
        .route("/treatments", get(pages::treatments::show).post(pages::treatments::keep))
        .route("/paper", get(pages::paper::list))
        .route("/paper/yard", get(pages::paper::yard))
        .route("/paper/cards", get(pages::paper::cards))
        .route("/paper/season", get(pages::paper::season))
        .route("/words", get(pages::words::show))
        .route("/source", get(pages::source::list))
        .route("/source/{file}/{name}", get(pages::source::show))
        .route("/settings", get(pages::settings::show).post(pages::settings::keep))
        .route("/day", post(pages::settings::day))
        .merge(api::routes())
        .route("/sign-in", get(sign_in::show).post(sign_in::enter))
        .route("/sign-out", post(sign_in::leave))
        .route("/settings/sign-out-everywhere", post(sign_in::end_all))
        .route("/settings/links", post(links::make))
        .route("/settings/links/{link}/take-back", post(links::take_back))
        .route("/shared/{token}", get(links::open))
        .merge(assets::routes())
}

async fn missing() -> Response {
    Fault::Missing("page").into_response()
}
