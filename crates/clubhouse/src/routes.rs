//! Every address.

use axum::extract::{DefaultBodyLimit, Request, State};
use axum::http::header;
use axum::middleware::{self, Next};
use axum::response::{IntoResponse, Response};
use axum::routing::{MethodRouter, get, post};
use axum::{Router, http::HeaderMap};
use snowhum_web::house::{ICON, STYLE, dressed, is_foreign, whole};
use tower_http::compression::CompressionLayer;

use crate::app::Clubhouse;
use crate::fault::Fault;
use crate::pages::{help, losses, night, sharing, yard};
use crate::spoken::tongue;
use crate::{gate, hand_in, spoken};

/// Largest body that is read: a form of one yard with each mentor of a large club.
const LARGEST_BODY: usize = 64 * 1024;
/// Largest export that is read.
const LARGEST_EXPORT: usize = 64 << 20;

/// The answers to every address.
pub fn router(house: Clubhouse) -> Router {
    let routes = addresses().into_iter().fold(Router::new(), |router, (path, answers)| router.route(path, answers));
    routes
        .fallback(async |headers: HeaderMap| Fault::Missing.told(tongue(&headers)))
        .layer(DefaultBodyLimit::max(LARGEST_BODY))
        .layer(middleware::from_fn(whole))
        .layer(middleware::from_fn_with_state(house.clone(), guard))
        .layer(CompressionLayer::new())
        .with_state(house)
}

/// Every address that is served, as the router writes it; for those that check them all.
#[must_use]
pub fn paths() -> Vec<&'static str> {
    addresses().into_iter().map(|(path, _)| path).collect()
}

/// Each asks by its own arguments who is signed in, but for the way in, the look and the figures of the night.
fn addresses() -> [(&'static str, MethodRouter<Clubhouse>); 12] {
    [
        ("/", get(help::show)),
        ("/yard/{yard}", get(yard::show)),
        ("/sharing", get(sharing::show)),
        ("/sharing/{yard}", post(sharing::keep)),
        ("/losses", get(losses::show)),
        ("/night", get(night::show)),
        ("/hand-in", post(hand_in::take).layer(DefaultBodyLimit::max(LARGEST_EXPORT))),
        ("/metrics", get(night::metrics)),
        ("/sign-in", get(gate::show).post(gate::enter)),
        ("/sign-out", post(gate::leave)),
        ("/language", post(spoken::choose)),
        ("/{asset}", get(asset)),
    ]
}

/// Refuses what another site sends, and sets the headers of every answer.
async fn guard(State(house): State<Clubhouse>, request: Request, next: Next) -> Response {
    if is_foreign(&house.reach, &request) {
        return dressed(Fault::Foreign.told(tongue(request.headers()))).await;
    }
    dressed(next.run(request).await).await
}

async fn asset(headers: HeaderMap, axum::extract::Path(name): axum::extract::Path<String>) -> Response {
    let (kind, body) = match name.as_str() {
        "snowhum.css" => ("text/css; charset=utf-8", STYLE),
        "icon.svg" => ("image/svg+xml", ICON),
        _ => return Fault::Missing.told(tongue(&headers)),
    };
    ([(header::CONTENT_TYPE, kind)], body).into_response()
}
