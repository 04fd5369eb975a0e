//! Style sheets, scripts, the manifest and the sign, built into the program.

use axum::http::header;
use axum::response::IntoResponse;
use axum::routing::get;
use std::sync::LazyLock;

use crate::addresses::Addresses;

/// The style sheet of every page.
pub const STYLE: &str = include_str!("../assets/snowhum.css");
/// The sign of every page.
pub const ICON: &str = include_str!("../assets/icon.svg");

static PICTURES: LazyLock<String> = LazyLock::new(|| snowhum_picture::stylesheet() + snowhum_picture::FILM_STYLE);

pub(crate) fn routes() -> Addresses {
    Addresses::new()
        .route("/snowhum.css", get(|| async { text("text/css; charset=utf-8", STYLE) }))
        .route("/pictures.css", get(|| async { text("text/css; charset=utf-8", &PICTURES) }))
        .route(
            "/round.js",
            get(|| async { text("text/javascript; charset=utf-8", include_str!("../assets/round.js")) }),
        )
        .route("/film.js", get(|| async { text("text/javascript; charset=utf-8", snowhum_picture::FILM_SCRIPT) }))
        .route(
            "/renew.js",
            get(|| async { text("text/javascript; charset=utf-8", include_str!("../assets/renew.js")) }),
        )
        .route(
            "/dress.js",
            get(|| async { text("text/javascript; charset=utf-8", include_str!("../assets/dress.js")) }),
        )
        .route(
            "/verdict.js",
            get(|| async { text("text/javascript; charset=utf-8", include_str!("../assets/verdict.js")) }),
        )
        .route(
            "/offline.js",
            get(|| async { text("text/javascript; charset=utf-8", include_str!("../assets/offline.js")) }),
        )
        .route(
            "/manifest.webmanifest",
            get(|| async { text("application/manifest+json", include_str!("../assets/manifest.json")) }),
        )
        .route("/icon.svg", get(|| async { text("image/svg+xml", ICON) }))
}

fn text(kind: &'static str, body: &'static str) -> impl IntoResponse {
    ([(header::CONTENT_TYPE, kind)], body)
}
