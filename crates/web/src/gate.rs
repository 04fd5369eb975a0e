//! The gate: who may look and who may write when the pages are reached from other machines.
//!
//! What is not listed here as open needs the keeper, so that a new page is shut until somebody says otherwise.

pub(crate) mod certificate;
mod code;
mod cookie;
pub(crate) mod links;
mod patience;
mod phrase;
mod session;
mod share;
pub(crate) mod sign_in;

use axum::Json;
use axum::extract::{MatchedPath, Request};
use axum::http::{HeaderMap, Method, StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::html;
use serde_json::json;
use std::net::IpAddr;
use std::sync::Mutex;
use tokio::sync::Semaphore;

use crate::app::App;
use crate::fault::Fault;
use crate::page::bare;
use patience::Patience;

pub use code::sign_in_code;
pub use phrase::{NotKept, PassPhrase};

/// Open to everybody who reaches the server.
const OPEN: [&str; 5] = ["/sign-in", "/shared/{token}", "/snowhum.css", "/icon.svg", "/manifest.webmanifest"];
/// What a reader may look at beside it.
const READER: [&str; 9] = [
    "/",
    "/hive/{colony}",
    "/plan",
    "/inside",
    "/source",
    "/source/{file}/{name}",
    "/pictures.css",
    "/renew.js",
    "/sign-out",
];
/// Pass phrases that wait to be tried; more are sent away.
const MOST_WAITING: usize = 8;

/// Under which names the pages are served, and whether one must sign in.
#[derive(Debug, Clone)]
pub struct Reach {
    names: Vec<String>,
    is_network: bool,
}

impl Reach {
    /// This machine alone, where nobody signs in.
    #[must_use]
    pub fn this_machine() -> Self {
        Self { names: ["127.0.0.1", "localhost", "[::1]"].map(str::to_owned).to_vec(), is_network: false }
    }

    /// The network around it, encrypted and behind a pass phrase, under these names and addresses (of IPv6 in brackets)
    /// beside those of the machine itself.
    #[must_use]
    pub fn network(names: impl IntoIterator<Item = String>) -> Self {
        let own = Self::this_machine().names;
        let names = own.into_iter().chain(names.into_iter().map(|name| name.to_ascii_lowercase())).collect();
        Self { names, is_network: true }
    }

    /// Whether one must sign in.
    pub(crate) fn is_network(&self) -> bool {
        self.is_network
    }

    /// Whether a request's own word for this server is one of its names. A page of another name that was made to
    /// point here is refused.
    pub(crate) fn is_own(&self, host: &str) -> bool {
        let name = without_port(host);
        self.names.iter().any(|own| own.eq_ignore_ascii_case(name))
    }

    pub(crate) fn scheme(&self) -> &'static str {
        if self.is_network { "https" } else { "http" }
    }
}

fn without_port(host: &str) -> &str {
    match host.rsplit_once(':') {
        Some((name, port)) if !port.is_empty() && port.bytes().all(|digit| digit.is_ascii_digit()) => name,
        _ => host,
    }
}

/// The gate of one server.
pub(crate) struct Gate {
    pub(crate) reach: Reach,
    patience: Mutex<Patience>,
    /// One pass phrase is tried at a time: each try takes 19 MiB and some hundredths of a second.
    turn: Semaphore,
    waiting: Semaphore,
}

impl Gate {
    pub(crate) fn new(reach: Reach) -> Self {
        let patience = Mutex::new(Patience::default());
        Self { reach, patience, turn: Semaphore::new(1), waiting: Semaphore::new(MOST_WAITING) }
    }
}

/// From which address a request comes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Peer(pub(crate) IpAddr);

/// Who looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Visitor {
    /// Somebody at the machine itself; nobody signs in there.
    Owner,
    /// Signed in with the pass phrase.
    Keeper,
    /// Let in by a link that only shows.
    Reader,
}

tokio::task_local! {
    static VISITOR: Visitor;
}

impl Visitor {
    /// Who asks for what is being answered now.
    pub(crate) fn now() -> Self {
        VISITOR.try_with(|visitor| *visitor).unwrap_or(Self::Owner)
    }

    pub(crate) fn may_write(self) -> bool {
        self != Self::Reader
    }

    /// Whether a link to a page leads anywhere.
    pub(crate) fn may_open(self, address: &str) -> bool {
        self.may_write() || READER.contains(&address)
    }

    fn may_ask(self, method: &Method, way: &str) -> bool {
        let is_read = matches!(*method, Method::GET | Method::HEAD);
        self.may_write() || (READER.contains(&way) && (is_read || way == "/sign-out"))
    }
}

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
    let body = html! {
        h1 { "Not kept yet" }
        p class="lede" { "You have to sign in again before this is kept." }
        p { a href="/sign-in" target="_blank" { "Sign in" } " in a window of its own, then go back here and send it again. What you wrote is still there." }
    };
    (StatusCode::UNAUTHORIZED, bare("Sign in", &body)).into_response()
}

fn is_for_programs(request: &Request) -> bool {
    let path = request.uri().path();
    let accepts = request.headers().get(header::ACCEPT).and_then(|accepts| accepts.to_str().ok());
    path == "/api" || path.starts_with("/api/") || !accepts.is_some_and(|accepts| accepts.contains("text/html"))
}

fn refused(status: StatusCode, fault: Fault) -> Response {
    (status, Json(json!({ "wrong": fault.to_string() }))).into_response()
}
