//! The JSON API. One table names every address, its handler and what is said about it; the router and the description
//! are both made from it.

mod description;
mod notes;
mod reads;

use axum::http::Method;
use axum::routing::{MethodRouter, get, put};

use crate::addresses::Addresses;
use crate::app::App;

/// One address asked in one way.
struct Route {
    method: Method,
    path: &'static str,
    says: &'static str,
    handler: fn() -> MethodRouter<App>,
    /// An example of the body sent, made from the type that is read.
    body: Option<fn() -> serde_json::Value>,
    answers: &'static [(u16, &'static str)],
}

const READ: [(u16, &str); 3] = [(200, "as described"), SIGN_IN, (503, "there is no estimate yet; the answer says why")];
const SIGN_IN: (u16, &str) = (401, "nobody is signed in, where the whole network is served");

fn table() -> [Route; 6] {
    let read = |path, says, handler| Route { method: Method::GET, path, says, handler, body: None, answers: &READ };
    [
        read("/api/now", "Where every colony stands, with the time the estimate was computed.", || get(reads::now)),
        read("/api/plan", "The winter ahead from the day the colonies were counted.", || get(reads::plan)),
        read("/api/jobs", "What is due at this site in the year, and when.", || get(reads::jobs)),
        read("/api/notes", "The yard's notes as they stand.", || get(notes::all)),
        read("/api/notes/{id}", "Every version of a note, oldest first.", || get(notes::versions)),
        Route {
            method: Method::PUT,
            path: "/api/notes/{id}",
            says: "Keeps a note under an id its maker chose. Sent again it is kept once.",
            handler: || put(notes::keep),
            body: Some(notes::example),
            answers: &[
                (200, "it was stored already, just so"),
                (201, "it is stored"),
                SIGN_IN,
                (409, "the id holds another note: both are kept as versions, the newer one stands"),
                (422, "it cannot be read; the answer says what would be right"),
            ],
        },
    ]
}

pub(crate) fn routes() -> Addresses {
    let router = Addresses::new().route("/api", get(description::show));
    table().into_iter().fold(router, |router, route| router.route(route.path, (route.handler)()))
}
