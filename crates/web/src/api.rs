//! The JSON API. One table names every address, its handler and what is said about it; the router and the description
//! are both made from it.

mod description;
mod notes;
mod reads;
mod sheet;

use axum::extract::DefaultBodyLimit;
use axum::http::Method;
use axum::routing::{MethodRouter, delete, get, post, put};

use crate::addresses::Addresses;
use crate::app::App;
use crate::routes::LARGEST_SHEET;

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

fn table() -> Vec<Route> {
    let read = |path, says, handler| Route { method: Method::GET, path, says, handler, body: None, answers: &READ };
    [
        read("/api/now", "Where every colony stands, with the time the estimate was computed.", || get(reads::now)),
        read("/api/plan", "The winter ahead from the day the colonies were counted.", || get(reads::plan)),
        read("/api/jobs", "What is due at this site in the year, and when.", || get(reads::jobs)),
        read(
            "/api/round",
            "What each sign of the round would say of every hive: the table a phone multiplies.",
            || get(reads::round),
        ),
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
    .into_iter()
    .chain(sheets())
    .collect()
}

/// A sheet of notes, brought in and taken back.
fn sheets() -> [Route; 2] {
    [
        Route {
            method: Method::POST,
            path: "/api/notes/sheet",
            says: "Reads notes out of a workbook (.xlsx) or CSV, which is the body, and keeps them if the question says keep=yes, \
                   or of rows that are asked about keep=all or keep=unasked. columns= and sheet= as on the command line.",
            handler: || post(sheet::bring).layer(DefaultBodyLimit::max(LARGEST_SHEET)),
            body: None,
            answers: &[
                (200, "how it is read; nothing is kept"),
                (201, "it is kept"),
                SIGN_IN,
                (422, "it cannot be read, or is asked about; nothing is kept, and the answer says what would be right"),
            ],
        },
        Route {
            method: Method::DELETE,
            path: "/api/notes/sheet",
            says: "Takes back the notes that came in last from a sheet, all at once.",
            handler: || delete(sheet::undo),
            body: None,
            answers: &[(200, "they are withdrawn"), SIGN_IN, (404, "no sheet came in that could be taken back")],
        },
    ]
}

pub(crate) fn routes() -> Addresses {
    let router = Addresses::new().route("/api", get(description::show));
    table().into_iter().fold(router, |router, route| router.route(route.path, (route.handler)()))
}
