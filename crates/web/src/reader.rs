//! In what a request is answered: the language chosen in the settings, else that of `serve --language`, else the first of the
//! browser's own that there is.

use axum::extract::Request;
use axum::http::{HeaderMap, HeaderValue, header};
use axum::middleware::Next;
use axum::response::Response;
use snowhum_say::{Language, Tongue};

tokio::task_local! {
    static READS: Tongue;
}

/// What is read by whoever the request under way comes from; none where there is no request.
pub(crate) fn reads() -> Option<Tongue> {
    READS.try_with(|tongue| *tongue).ok()
}

/// The same where something must be said anyway.
pub(crate) fn tongue() -> Tongue {
    reads().unwrap_or_default()
}

/// Answers in what the browser reads, where no yard is at hand.
pub(crate) async fn hear_browser(request: Request, next: Next) -> Response {
    let tongue = Tongue::BRITISH.in_language(wanted(request.headers()).unwrap_or_default());
    answered(tongue, request, next).await
}

/// Answers in a tongue.
pub(crate) async fn answered(tongue: Tongue, request: Request, next: Next) -> Response {
    let mut response = READS.scope(tongue, next.run(request)).await;
    response.headers_mut().append(header::VARY, HeaderValue::from_static("accept-language"));
    response
}

/// The language that a browser asks for.
pub(crate) fn wanted(headers: &HeaderMap) -> Option<Language> {
    Language::of_list(headers.get(header::ACCEPT_LANGUAGE)?.to_str().ok()?)
}
