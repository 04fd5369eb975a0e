//! On paper: what is printed and carried out, each sheet a page of its own, complete in black and white.

mod cards;
mod season;
mod yard;

use axum::extract::State;
use axum::http::HeaderMap;
use axum::http::header::HOST;
use maud::{Markup, html};

use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::View;

pub(crate) use cards::sheet as cards_sheet;
pub(crate) use season::sheet as season_sheet;
pub(crate) use yard::sheet as yard_sheet;

/// A sheet: address, name, what it is for.
const SHEETS: [(&str, &str, &str); 5] = [
    ("/paper/yard", "Yard sheet", "Every hive in walking order: one word, one date, one next thing."),
    ("/round/sheet", "Round sheet", "Signs to ring with a pencil and gloves on, typed in at home."),
    ("/paper/cards", "Hive cards", "One for each hive, with a code that opens its page."),
    ("/treatments", "Treatment record", "What was given, as an inspector asks for it."),
    ("/paper/season", "Season summary", "Each hive from autumn on: what stood, what was done, what the estimate said."),
];

pub(crate) async fn list(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let body = html! {
        h1 { "On paper" }
        p class="lede" { "Open a sheet and print it; every one is complete in black and white." }
        dl class="sheets" { @for (address, name, what) in SHEETS { dt { a href=(address) { (name) } } dd { (what) } } }
        p class="small" { "In a terminal " code { "snowhum print --out FOLDER" } " writes all of them as files." }
    };
    Ok(page(&view, Place::Paper, "On paper", &body))
}

pub(crate) async fn yard(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Paper, "Yard sheet", &yard_sheet(&view)))
}

pub(crate) async fn cards(State(app): State<App>, headers: HeaderMap) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Paper, "Hive cards", &cards_sheet(&view, address(&app, &headers).as_deref())))
}

pub(crate) async fn season(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Paper, "Season summary", &season_sheet(&view)))
}

/// Where the page was asked at.
fn address(app: &App, headers: &HeaderMap) -> Option<String> {
    let host = headers.get(HOST)?.to_str().ok()?;
    Some(format!("{}://{host}", app.gate().reach.scheme()))
}
