//! Answers as they are computed.

use axum::Json;
use axum::extract::State;
use serde_json::{Value, json};
use snowhum_advice::plan::PlanAnswer;

use super::notes::Refused;
use crate::app::App;
use crate::fault::Fault;
use crate::pages::jobs::told;

/// Where every colony stands.
pub(crate) async fn now(State(app): State<App>) -> Result<Json<Value>, Refused> {
    let trouble = app.trouble();
    let standing = app.standing().ok_or_else(|| trouble.clone().map_or(Fault::NotYet, Fault::Trouble))?;
    let behind = standing.revision != app.revision();
    Ok(Json(
        json!({ "computed_at": standing.at, "something_newer_is_stored": behind, "why_not_newer": trouble, "now": standing.present.now }),
    ))
}

/// What each sign of the round would say, for a phone out of reach.
pub(crate) async fn round(State(app): State<App>) -> Result<Json<Value>, Refused> {
    let standing = app.standing().ok_or_else(|| app.trouble().map_or(Fault::NotYet, Fault::Trouble))?;
    Ok(Json(json!(standing.present.table)))
}

/// The winter ahead.
pub(crate) async fn plan(State(app): State<App>) -> Result<Json<Value>, Refused> {
    let mut plan = PlanAnswer::clone(&*app.whole_plan().await?);
    if let Some(standing) = app.standing() {
        plan.take_first(&standing.present.now);
    }
    Ok(Json(json!(plan)))
}

/// The windows of the year, and what is due at each hive.
pub(crate) async fn jobs(State(app): State<App>) -> Result<Json<Value>, Refused> {
    Ok(Json(json!(told(&app, &*app.whole_windows().await?))))
}
