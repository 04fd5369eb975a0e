//! A member's export, handed in over the network: whole or not at all, and answered once it is kept.

use axum::Json;
use axum::extract::rejection::StringRejection;
use axum::extract::{FromRequestParts, State};
use axum::http::request::Parts;
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde_json::json;
use snowhum_club::Fault;
use snowhum_say::{Tongue, club_page as text};
use uuid::Uuid;

use crate::app::Clubhouse;
use crate::spoken::tongue;

/// Who hands in: the member whose key comes along. No cookie does, so that no page can hand in for them.
pub(crate) struct Holder(Uuid);

impl FromRequestParts<Clubhouse> for Holder {
    type Rejection = Response;

    async fn from_request_parts(parts: &mut Parts, house: &Clubhouse) -> Result<Self, Response> {
        let tongue = tongue(&parts.headers);
        let holder = match bearer(&parts.headers) {
            Some(key) => house.club.holder(key).await.map_err(|fault| refused(&fault, tongue))?,
            None => None,
        };
        holder.map(Self).ok_or_else(|| wrong(StatusCode::UNAUTHORIZED, &tongue.say(&text::key_wrong())))
    }
}

/// Takes in an export. The same sent again changes nothing.
pub(crate) async fn take(
    State(house): State<Clubhouse>,
    Holder(member): Holder,
    headers: HeaderMap,
    export: Result<String, StringRejection>,
) -> Response {
    let export = match export {
        Ok(export) => export,
        Err(cut) => return wrong(cut.status(), &cut.body_text()),
    };
    let handed = match (house.read)(export).await {
        Ok(handed) => handed,
        Err(why) => return wrong(StatusCode::UNPROCESSABLE_ENTITY, &why),
    };
    match house.club.take_in(member, &handed).await {
        Ok(taken) => {
            // In the order of the alphabet, which is that of every build.
            let (changed, left, unchanged) = (taken.changed, taken.left, taken.unchanged);
            Json(json!({ "changed": changed, "left": left, "unchanged": unchanged })).into_response()
        }
        Err(fault) => refused(&fault, tongue(&headers)),
    }
}

/// The key in the head of a request (RFC 6750).
fn bearer(headers: &HeaderMap) -> Option<&str> {
    let (scheme, key) = headers.get(header::AUTHORIZATION)?.to_str().ok()?.split_once(' ')?;
    scheme.eq_ignore_ascii_case("bearer").then_some(key)
}

/// What the database says in its own words is for the machine's keeper.
fn refused(fault: &Fault, tongue: Tongue) -> Response {
    match fault {
        Fault::NotTheirs { .. } => wrong(StatusCode::CONFLICT, &tongue.say(&fault.message())),
        Fault::Unreachable { .. } => wrong(StatusCode::SERVICE_UNAVAILABLE, &tongue.say(&text::unreadable())),
        _ => wrong(StatusCode::INTERNAL_SERVER_ERROR, &tongue.say(&text::unreadable())),
    }
}

fn wrong(status: StatusCode, why: &str) -> Response {
    (status, Json(json!({ "wrong": why }))).into_response()
}
