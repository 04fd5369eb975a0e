//! What stands before every request: whose page it comes from, and what a browser may do with the answer.

use axum::extract::{Request, State};
use axum::http::header::{self, HeaderMap, HeaderName, HeaderValue};
use axum::http::{Method, StatusCode, Uri};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use snowhum_say::fault_page as text;

use crate::app::App;
use crate::fault::Fault;
use crate::gate::{self, Reach};
use crate::reader;

const HEADERS: [(HeaderName, HeaderValue); 7] = [
    (
        header::CONTENT_SECURITY_POLICY,
        HeaderValue::from_static(
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; \
             manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
        ),
    ),
    (header::X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff")),
    (header::REFERRER_POLICY, HeaderValue::from_static("same-origin")),
    (header::X_FRAME_OPTIONS, HeaderValue::from_static("DENY")),
    (HeaderName::from_static("cross-origin-opener-policy"), HeaderValue::from_static("same-origin")),
    (HeaderName::from_static("cross-origin-resource-policy"), HeaderValue::from_static("same-origin")),
    (
        HeaderName::from_static("permissions-policy"),
        HeaderValue::from_static("camera=(), geolocation=(), microphone=(), interest-cohort=()"),
    ),
];

/// Refuses what another site sends and who may not ask, and sets the headers of every answer.
pub(crate) async fn guard(State(app): State<App>, request: Request, next: Next) -> Response {
    if is_foreign(&app.gate().reach, &request) {
        return dressed(Fault::Foreign.into_response()).await;
    }
    let mut response = gate::admit(&app, request, next).await;
    if response.status() == StatusCode::METHOD_NOT_ALLOWED && response.headers().get(header::CONTENT_TYPE).is_none() {
        *response.body_mut() = (reader::tongue().say(&text::way()) + "\n").into();
    }
    dressed(response).await
}

/// Whether a request is for another server's name, or writes from a page of another.
pub fn is_foreign(reach: &Reach, request: &Request) -> bool {
    let is_read = matches!(*request.method(), Method::GET | Method::HEAD);
    let headers = request.headers();
    !is_own_host(headers, request.uri(), reach) || !(is_read || is_own_page(headers, reach))
}

/// Answers in what is read of these pages.
pub(crate) async fn hear(State(app): State<App>, request: Request, next: Next) -> Response {
    reader::answered(app.tongue(reader::wanted(request.headers())), request, next).await
}

/// An answer with the headers of every answer; one that set a stricter one keeps it.
pub async fn dressed(mut response: Response) -> Response {
    for (name, value) in HEADERS {
        response.headers_mut().entry(name).or_insert(value);
    }
    response.headers_mut().entry(header::CACHE_CONTROL).or_insert(HeaderValue::from_static("no-cache"));
    response
}

/// One name and no more, in the head and, where the address asked for is a whole one, in that too.
fn is_own_host(headers: &HeaderMap, asked: &Uri, reach: &Reach) -> bool {
    let mut hosts = headers.get_all(header::HOST).iter();
    let (host, another) = (hosts.next(), hosts.next());
    let is_own_name = match host {
        Some(host) => host.to_str().is_ok_and(|host| reach.is_own(host)),
        None => !reach.is_network(),
    };
    let is_own_address = asked.authority().is_none_or(|authority| reach.is_own(authority.as_str()));
    is_own_name && another.is_none() && is_own_address
}

/// A browser says where a writing request comes from; other programs say nothing.
fn is_own_page(headers: &HeaderMap, reach: &Reach) -> bool {
    let site = headers.get("sec-fetch-site").map(HeaderValue::as_bytes);
    if site.is_some_and(|site| site != b"same-origin" && site != b"none") {
        return false;
    }
    let Some(origin) = headers.get(header::ORIGIN) else { return true };
    let host = headers.get(header::HOST).and_then(|host| host.to_str().ok());
    let origin = origin.to_str().ok().and_then(|origin| origin.strip_prefix(reach.scheme())?.strip_prefix("://"));
    origin.is_some() && origin == host
}
