//! On paper: what is printed and carried out, each sheet a page of its own, complete in black and white.

mod cards;
mod season;
mod yard;

use axum::extract::State;
use axum::http::HeaderMap;
use axum::http::header::HOST;
use maud::{Markup, html};
use snowhum_say::{Message, Text, paper_page as text};

use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::View;
use crate::words::marked;

pub(crate) use cards::sheet as cards_sheet;
pub(crate) use season::sheet as season_sheet;
pub(crate) use yard::sheet as yard_sheet;

/// A sheet: address, name, what it is for.
const SHEETS: [(&str, Text, Text); 5] = [
    ("/paper/yard", text::yard, text::yard_what),
    ("/round/sheet", text::round, text::round_what),
    ("/paper/cards", text::cards, text::cards_what),
    ("/treatments", text::treatments, text::treatments_what),
    ("/paper/season", text::season, text::season_what),
];

pub(crate) async fn list(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede())) }
        dl class="sheets" { @for (address, name, what) in SHEETS { dt { a href=(address) { (say(name())) } } dd { (say(what())) } } }
        p class="small" { (marked(tongue, &text::terminal())) }
    };
    Ok(page(&view, Place::Paper, &heading, &body))
}

pub(crate) async fn yard(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Paper, &view.tongue().say(&text::yard()), &yard_sheet(&view)))
}

pub(crate) async fn cards(State(app): State<App>, headers: HeaderMap) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(
        &view,
        Place::Paper,
        &view.tongue().say(&text::cards()),
        &cards_sheet(&view, address(&app, &headers).as_deref()),
    ))
}

pub(crate) async fn season(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Paper, &view.tongue().say(&text::season()), &season_sheet(&view)))
}

/// Where the page was asked at.
fn address(app: &App, headers: &HeaderMap) -> Option<String> {
    let host = headers.get(HOST)?.to_str().ok()?;
    Some(format!("{}://{host}", app.gate().reach.scheme()))
}
