//! The gate: who may look and who may write when the pages are reached from other machines.
//!
//! What is not listed here as open needs the keeper, so that a new page is shut until somebody says otherwise.

pub(crate) mod certificate;
mod code;
pub(crate) mod cookie;
pub(crate) mod links;
mod patience;
mod phrase;
mod reach;
mod session;
mod share;
pub(crate) mod sign_in;
mod visitor;

use axum::Json;
use axum::extract::{MatchedPath, Request};
use axum::http::{HeaderMap, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::html;
use serde_json::json;
use snowhum_say::sign_in_page as text;

use crate::app::App;
use crate::bare::bare;
use crate::fault::Fault;
use crate::reader;
use crate::words::marked;
use visitor::VISITOR;

pub use code::sign_in_code;
pub use phrase::{NotKept, PassPhrase};
pub use reach::Reach;

pub(crate) use reach::{Gate, Peer};
pub(crate) use visitor::Visitor;

/// Open to everybody who reaches the server.
const OPEN: [&str; 5] = ["/sign-in", "/shared/{token}", "/snowhum.css", "/icon.svg", "/manifest.webmanifest"];
/// Lets a request through to those who may ask it.
pub(crate) async fn admit(app: &App, request: Request, next: Next) -> Response {
    let way = request.extensions().get::<MatchedPath>().map(|path| path.as_str().to_owned());
    let way = way.as_deref().unwrap_or_default();
    if OPEN.contains(&way) {
        return next.run(request).await;
    }
    match visitor(app, request.headers()).await {
        Err(fault) => fault.into_response(),
        Ok(None) => to_sign_in(&request),
        Ok(Some(visitor)) if visitor.may_ask(request.method(), way) => VISITOR.scope(visitor, next.run(request)).await,
        Ok(Some(_)) if is_for_programs(&request) => refused(StatusCode::FORBIDDEN, Fault::OnlyShown),
        Ok(Some(_)) => Fault::OnlyShown.into_response(),
    }
}

async fn visitor(app: &App, headers: &HeaderMap) -> Result<Option<Visitor>, Fault> {
    let (store, now) = (&app.store(), Timestamp::now());
    let reach = &app.gate().reach;
    if reach.is_network()
        && let Some(token) = cookie::keeper(headers)
        && session::is_good(store, token, now).await?
    {
        return Ok(Some(Visitor::Keeper));
    }
    if let Some(token) = cookie::reader(headers, reach)
        && share::of_token(store, token, now).await?.is_some()
    {
        return Ok(Some(Visitor::Reader));
    }
    Ok((!reach.is_network()).then_some(Visitor::Owner))
}

/// What somebody is told who has not signed in.
fn to_sign_in(request: &Request) -> Response {
    if is_for_programs(request) {
        return refused(StatusCode::UNAUTHORIZED, Fault::SignIn);
    }
    if matches!(*request.method(), Method::GET | Method::HEAD) {
        return Redirect::to(&sign_in::address(request.uri())).into_response();
    }
    let tongue = reader::tongue();
    let body = html! {
        h1 { (tongue.say(&text::not_kept())) }
        p class="lede" { (tongue.say(&text::again())) }
        p { (marked(tongue, &text::window())) }
    };
    (StatusCode::UNAUTHORIZED, bare(&tongue.say(&text::heading()), &body)).into_response()
}

fn is_for_programs(request: &Request) -> bool {
    let path = request.uri().path();
    let accepts = request.headers().get(header::ACCEPT).and_then(|accepts| accepts.to_str().ok());
    path == "/api" || path.starts_with("/api/") || !accepts.is_some_and(|accepts| accepts.contains("text/html"))
}

fn refused(status: StatusCode, fault: Fault) -> Response {
    (status, Json(json!({ "wrong": fault.told() }))).into_response()
}
