//! Notes sent and read by programs, the phone's round among them.

use axum::Json;
use axum::extract::rejection::JsonRejection;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use jiff::Timestamp;
use serde_json::{Value, json};
use snowhum_apiary::{NoteId, SnowCover};
use snowhum_say::fault_page;
use snowhum_store::Put;
use uuid::Uuid;

use crate::app::App;
use crate::fault::Fault;
use crate::pages::notes::keep as keep_note;
use crate::reader;
use crate::sent::Sent;
use crate::view::View;

/// A fault as JSON.
pub(crate) struct Refused(Fault);

impl<F: Into<Fault>> From<F> for Refused {
    fn from(fault: F) -> Self {
        Self(fault.into())
    }
}

impl IntoResponse for Refused {
    fn into_response(self) -> Response {
        (self.0.status(), Json(json!({ "wrong": self.0.told() }))).into_response()
    }
}

/// Every note as it stands.
pub(crate) async fn all(State(app): State<App>) -> Result<Json<Value>, Refused> {
    let apiary = app.apiary().await.map_err(Fault::from)?;
    Ok(Json(json!({ "notes": apiary.notes })))
}

/// Every version of a note.
pub(crate) async fn versions(State(app): State<App>, Path(id): Path<Uuid>) -> Result<Json<Value>, Refused> {
    let versions = app.store().versions(NoteId(id)).await.map_err(Fault::from)?;
    if versions.is_empty() {
        return Err(Fault::Missing("note").into());
    }
    let version = |version: &snowhum_store::Version| json!({ "version": version.id, "kind": version.kind.word(), "recorded_at": version.recorded.at, "note": version.note });
    Ok(Json(json!({ "versions": versions.iter().map(version).collect::<Vec<_>>() })))
}

/// Keeps a note under the id its maker chose.
pub(crate) async fn keep(
    State(app): State<App>,
    Path(id): Path<Uuid>,
    sent: Result<Json<Sent>, JsonRejection>,
) -> Result<Response, Refused> {
    let Json(sent) = match sent {
        Ok(sent) => sent,
        Err(wrong) => {
            let told = reader::tongue().say(&fault_page::no_json(wrong.body_text()));
            return Ok((wrong.status(), Json(json!({ "wrong": told }))).into_response());
        }
    };
    let view = View::of(&app).await?;
    // Nobody stands before a phone that sends what was tapped hours ago: ids tell doubles, and nothing tapped is lost to a question.
    let note = sent.note(NoteId(id), &view).map_err(Fault::Wrong)?;
    let (status, outcome) = match keep_note(&app, &note).await? {
        Put::Stored => (StatusCode::CREATED, "stored"),
        Put::AlreadyThere => (StatusCode::OK, "stored already"),
        Put::Edited => (StatusCode::CONFLICT, "both kept"),
    };
    Ok((status, Json(json!({ "outcome": outcome, "note": id }))).into_response())
}

/// What is sent, with every field.
pub(crate) fn example() -> Value {
    json!(Sent {
        visit: Uuid::from_u128(0x019a_0000_0000_7000_8000_0000_0000_0001),
        colony: Uuid::from_u128(0x019a_0000_0000_7000_8000_0000_0000_0002),
        at: Timestamp::UNIX_EPOCH,
        air: Some("-5 C".to_owned()),
        snow: Some(SnowCover::New),
        wind: Some("2 m/s".to_owned()),
        seen: vec!["dead=22 on snow".to_owned(), "hum=heard by ear".to_owned()],
        words: Some("bright morning".to_owned()),
        sure: true,
    })
}
