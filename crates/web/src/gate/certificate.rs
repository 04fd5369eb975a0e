//! The one page that is not encrypted: it hands out the certificate that lets a phone trust the others.

use axum::Router;
use axum::http::header::{self, HeaderValue};
use axum::middleware;
use axum::response::{IntoResponse, Redirect};
use axum::routing::get;
use maud::{Markup, html};
use std::sync::Arc;

use crate::bare::bare;
use crate::guard;

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
        .route("/", get(move || async move { bare("Trust this server", &body(&shown)) }))
        .route(FILE, get(move || async move { file(&certificate) }))
        .route("/snowhum.css", get(move || async move { style }))
        .fallback(|| async { Redirect::to("/") })
        .method_not_allowed_fallback(|| async { Redirect::to("/") })
        .layer(middleware::map_response(guard::dressed))
}

fn file(certificate: &Certificate) -> impl IntoResponse + use<> {
    let kind = HeaderValue::from_static("application/x-x509-ca-cert");
    let name = HeaderValue::from_static("attachment; filename=\"snowhum-authority.crt\"");
    ([(header::CONTENT_TYPE, kind), (header::CONTENT_DISPOSITION, name)], certificate.pem.clone())
}

/// How each kind of device is told to trust it; menus as they were named in 2025, from memory.
const STEPS: [(&str, &[&str]); 5] = [
    (
        "Android",
        &[
            "Tap the certificate above; it is saved under Downloads.",
            "Settings, Security and privacy, More, Encryption and credentials, Install a certificate, CA certificate.",
            "Android warns that somebody could watch; this certificate vouches for this one machine alone. Install anyway, and choose the file.",
        ],
    ),
    (
        "iPhone and iPad",
        &[
            "Open this page in Safari, tap the certificate above, and allow the profile.",
            "Settings, Profile downloaded, Install.",
            "Settings, General, About, Certificate Trust Settings: switch it on.",
        ],
    ),
    (
        "Windows",
        &[
            "Open the downloaded file, then Install certificate, Current user.",
            "Place it in the store “Trusted Root Certification Authorities”, and confirm.",
        ],
    ),
    (
        "macOS",
        &[
            "Open the downloaded file; Keychain Access asks for the login keychain.",
            "Find it in the list, open it, and under Trust choose Always Trust.",
        ],
    ),
    (
        "Linux",
        &[
            "Firefox: Settings, Privacy and security, Certificates, View certificates, Authorities, Import; trust it for websites.",
            "Chromium: Settings, Privacy and security, Security, Manage certificates, Installed by you, Import.",
        ],
    ),
];

fn body(certificate: &Certificate) -> Markup {
    html! {
        h1 { "Trust this server" }
        p class="lede" { "Your yard's pages are encrypted. Tell this device once that it may trust them." }
        ol class="ranked" {
            li {
                p { a class="go" href=(FILE) download="snowhum-authority.crt" { "Take the certificate" } }
                p class="small" { "It vouches for this one machine in your own network, and for no site elsewhere." }
            }
            li {
                p { "Install it, by the steps for your device below. It is listed as " strong { (certificate.name) } "." }
            }
            li {
                p { "Open it in the device's own list and compare the SHA-256 fingerprint shown there with the terminal's. If they differ, remove it: somebody stands between. It should read:" }
                p { code class="print" { @for line in &certificate.fingerprint { (line) br; } } }
            }
            li {
                p { "Open the pages:" }
                ul { @for address in &certificate.addresses { li class="ways" { a href=(address) { (address) } } } }
            }
        }
        section {
            h2 { "The steps" }
            @for (device, steps) in STEPS {
                details {
                    summary { (device) }
                    ol class="ranked" { @for step in steps { li { p { (step) } } } }
                }
            }
        }
        p class="small" { "To take the trust back later, remove the certificate in the same place." }
    }
}
