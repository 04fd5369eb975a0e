//! The one page that is not encrypted: it hands out the certificate that lets a phone trust the others.

use axum::Router;
use axum::http::header::{self, HeaderValue};
use axum::middleware;
use axum::response::{IntoResponse, Redirect};
use axum::routing::get;
use maud::{Markup, html};
use snowhum_say::{Message, Text, certificate_page as text};
use std::sync::Arc;

use crate::bare::bare;
use crate::words::marked;
use crate::{guard, reader};

/// What is handed out.
pub struct Certificate {
    /// The authority's certificate.
    pub pem: String,
    /// Its SHA-256, in the lines that the terminal shows.
    pub fingerprint: Vec<String>,
    /// The name a device lists it under.
    pub name: String,
    /// Where the pages are, encrypted.
    pub addresses: Vec<String>,
}

const FILE: &str = "/snowhum-authority.crt";

/// Answers with the page and the certificate, and leads everything else to the page.
pub fn certificate_router(certificate: Certificate) -> Router {
    let certificate = Arc::new(certificate);
    let shown = Arc::clone(&certificate);
    let style = ([(header::CONTENT_TYPE, "text/css; charset=utf-8")], include_str!("../../assets/snowhum.css"));
    Router::new()
        .route("/", get(move || async move { bare(&reader::tongue().say(&text::heading()), &body(&shown)) }))
        .route(FILE, get(move || async move { file(&certificate) }))
        .route("/snowhum.css", get(move || async move { style }))
        .fallback(|| async { Redirect::to("/") })
        .method_not_allowed_fallback(|| async { Redirect::to("/") })
        .layer(middleware::map_response(guard::dressed))
        .layer(middleware::from_fn(reader::hear_browser))
}

fn file(certificate: &Certificate) -> impl IntoResponse + use<> {
    let kind = HeaderValue::from_static("application/x-x509-ca-cert");
    let name = HeaderValue::from_static("attachment; filename=\"snowhum-authority.crt\"");
    ([(header::CONTENT_TYPE, kind), (header::CONTENT_DISPOSITION, name)], certificate.pem.clone())
}

/// How each kind of device is told to trust it; menus as they were named in 2025, from memory.
const STEPS: [(Text, &[Text]); 5] = [
    (text::android, &[text::android_tap, text::android_settings, text::android_warns]),
    (text::apple, &[text::apple_open, text::apple_install, text::apple_trust]),
    (text::windows, &[text::windows_open, text::windows_place]),
    (text::macos, &[text::macos_open, text::macos_trust]),
    (text::linux, &[text::linux_firefox, text::linux_chromium]),
];

fn body(certificate: &Certificate) -> Markup {
    let tongue = reader::tongue();
    let say = |message: Message| tongue.say(&message);
    html! {
        h1 { (say(text::heading())) }
        p class="lede" { (say(text::lede())) }
        ol class="ranked" {
            li {
                p { a class="go" href=(FILE) download="snowhum-authority.crt" { (say(text::take())) } }
                p class="small" { (say(text::vouches())) }
            }
            li { p { (marked(tongue, &text::install(&certificate.name))) } }
            li {
                p { (say(text::compare())) }
                p { code class="print" { @for line in &certificate.fingerprint { (line) br; } } }
            }
            li {
                p { (say(text::open())) }
                ul { @for address in &certificate.addresses { li class="ways" { a href=(address) { (address) } } } }
            }
        }
        section {
            h2 { (say(text::steps())) }
            @for (device, steps) in STEPS {
                details {
                    summary { (say(device())) }
                    ol class="ranked" { @for step in steps { li { p { (say(step())) } } } }
                }
            }
        }
        p class="small" { (say(text::later())) }
    }
}
