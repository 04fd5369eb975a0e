//! A sheet of notes from a program: read and told, and kept where it says so.

use axum::Json;
use axum::body::Bytes;
use axum::extract::{Query, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use jiff::Timestamp;
use serde::Deserialize;
use serde_json::json;
use snowhum_say::fault_page;

use super::notes::Refused;
use crate::app::App;
use crate::fault::Fault;
use crate::pages::import::{Upload, answer};
use crate::sheet_file::SheetRefused;
use crate::view::View;

/// What is said about a sheet in the address.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Said {
    columns: Option<String>,
    sheet: Option<String>,
    keep: Option<String>,
}

pub(crate) async fn bring(State(app): State<App>, Query(said): Query<Said>, sent: Bytes) -> Result<Response, Refused> {
    let view = View::of(&app).await?;
    let keep = said.keep.as_deref().map(|word| answer(word).ok_or_else(|| unknown(word))).transpose()?;
    let (bytes, file) = (sent.to_vec(), "the sheet".to_owned());
    let upload = Upload { bytes, file, columns: said.columns, sheet: said.sheet, keep };
    let incoming = match upload.read(&app, &view).await? {
        Ok(incoming) => incoming,
        Err(refused) => return Ok(not_read(&refused)),
    };
    let Some(asked) = keep else { return Ok(Json(json!({ "read": incoming })).into_response()) };
    let kept = upload.kept(&app, &incoming, asked).await?;
    Ok((StatusCode::CREATED, Json(json!({ "read": incoming, "stored": kept }))).into_response())
}

/// Takes back what came in last.
pub(crate) async fn undo(State(app): State<App>) -> Result<Response, Refused> {
    let back = app.store().undo_import(Timestamp::now()).await.map_err(Fault::from)?;
    let back = back.ok_or(Fault::Missing("import"))?;
    app.touch();
    Ok(Json(json!({ "withdrawn": back.withdrawn, "changed": back.changed })).into_response())
}

fn unknown(word: &str) -> Fault {
    Fault::Wrong(fault_page::keep(crate::sent::shortened(word)))
}

fn not_read(refused: &SheetRefused) -> Response {
    let faults = match refused {
        SheetRefused::Rows(faults) => json!(faults),
        _ => json!(null),
    };
    let body = json!({ "wrong": refused.to_string(), "faults": faults });
    (StatusCode::UNPROCESSABLE_ENTITY, Json(body)).into_response()
}
