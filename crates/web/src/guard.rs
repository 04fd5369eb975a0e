//! What stands before every request: whose page it comes from, and what a browser may do with the answer.

use axum::extract::Request;
use axum::http::header::{self, HeaderMap, HeaderName, HeaderValue};
use axum::http::{Method, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

use crate::fault::Fault;

/// Names under which this machine serves itself. A page of another name that was made to point here is refused.
const OWN_NAMES: [&str; 3] = ["127.0.0.1", "localhost", "[::1]"];

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

/// Refuses what another site sends, and sets the headers of every answer.
pub(crate) async fn guard(request: Request, next: Next) -> Response {
    let is_read = matches!(*request.method(), Method::GET | Method::HEAD);
    let headers = request.headers();
    let mut response = if !is_own_host(headers) || !(is_read || is_own_page(headers)) {
        Fault::Foreign.into_response()
    } else {
        next.run(request).await
    };
    if response.status() == StatusCode::METHOD_NOT_ALLOWED && response.headers().get(header::CONTENT_TYPE).is_none() {
        *response.body_mut() = "This address is not asked in that way.\n".into();
    }
    for (name, value) in HEADERS {
        response.headers_mut().insert(name, value);
    }
    response.headers_mut().entry(header::CACHE_CONTROL).or_insert(HeaderValue::from_static("no-cache"));
    response
}

fn is_own_host(headers: &HeaderMap) -> bool {
    let Some(host) = headers.get(header::HOST) else { return true };
    host.to_str().is_ok_and(|host| OWN_NAMES.contains(&without_port(host)))
}

/// A browser says where a writing request comes from; other programs say nothing.
fn is_own_page(headers: &HeaderMap) -> bool {
    let site = headers.get("sec-fetch-site").map(HeaderValue::as_bytes);
    if site.is_some_and(|site| site != b"same-origin" && site != b"none") {
        return false;
    }
    let Some(origin) = headers.get(header::ORIGIN) else { return true };
    let host = headers.get(header::HOST).and_then(|host| host.to_str().ok());
    let origin = origin.to_str().ok().and_then(|origin| origin.strip_prefix("http://"));
    origin.is_some() && origin == host
}

fn without_port(host: &str) -> &str {
    match host.rsplit_once(':') {
        Some((name, port)) if !port.is_empty() && port.bytes().all(|digit| digit.is_ascii_digit()) => name,
        _ => host,
    }
}
