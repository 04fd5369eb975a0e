//! Flight day: the one day that tells most. Who flew?

use axum::Form;
use axum::extract::State;
use axum::response::Redirect;
use maud::{Markup, html};
use snowhum_apiary::{Colony, NoteId, VisitId};
use snowhum_say::{Message, Text, flight_page as text, in_hundred};
use uuid::Uuid;

use super::notes::{Pairs, keep};
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::said::Said;
use crate::sent::Sent;
use crate::view::{Asked, View};
use crate::words::marked;

/// What is tapped, and what is then written. Each kind is one note a day, so that a second tap mends the first.
const TAPS: [(&str, Text, &str); 5] = [
    ("flight", text::flew_well, "flight=well"),
    ("flight", text::thin, "flight=thin"),
    ("flight", text::did_not_fly, "flight=none"),
    ("droppings", text::soiled, "droppings=on hive"),
    ("pollen", text::pollen, "pollen=yes"),
];

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let say = |message: Message| view.tongue().say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        (warning(&view))
        p { (say(text::lede())) }
        (first_opened(&view))
        ol class="flights" { @for (at, colony) in view.watched().filter(|(_, colony)| !view.is_indoors(colony)) { (row(&view, at, colony)) } }
    };
    Ok(page(&view, Place::Flight, &heading, &body))
}

fn warning(view: &View) -> Markup {
    let now = view.standing.as_ref().map(|standing| &standing.present.now);
    html! {
        @if let Some(now) = now {
            @let day = match &now.flight_day {
                Some(flight) if flight.on_most_days => text::most_days(),
                Some(flight) => text::next(flight.days_ahead, in_hundred(flight.chance), flight.on),
                None => text::none(),
            };
            p class="lede" { (marked(view.tongue(), &day)) }
        }
    }
}

/// Whom to open first, once it is noted who flew.
fn first_opened(view: &View) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let now = &standing.present.now;
    html! {
        @if !now.open_first.is_empty() {
            section class="kept" {
                h2 { (view.tongue().say(&text::open_first())) }
                ol class="ranked" { @for colony in &now.open_first { li { strong { (colony.name) } ": " (view.tongue().say(&colony.why)) "." } } }
                p { (view.tongue().say(&now.lid.says)) }
            }
        }
    }
}

fn row(view: &View, at: usize, colony: &Colony) -> Markup {
    let today = view.now.date();
    let zone = view.now.time_zone();
    let notes = view.notes_of(colony.id);
    let own = notes.into_iter().filter(|note| note.at.to_zoned_datetime(zone.clone()).date() == today);
    let written: Vec<String> = own.flat_map(|note| view.written(note)).collect();
    html! {
        li id={ "hive" (at) } {
            h2 { @if let Some(picture) = draw::thumbnail(view, at) { span class="tiny" { (picture) } } (colony.name) }
            form method="post" action="/flight" class="taps" {
                input type="hidden" name="colony" value=(colony.id.0);
                input type="hidden" name="at" value=(at);
                @for (_, words, entry) in TAPS {
                    button name="seen" value=(entry) aria-pressed=(if written.iter().any(|text| text == entry) { "true" } else { "false" }) { (view.tongue().say(&words())) }
                }
            }
            @if !written.is_empty() { p class="small" { (view.tongue().say(&text::noted(today))) } }
        }
    }
}

/// Keeps one tap.
pub(crate) async fn tap(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let id: Uuid = form.get("colony").and_then(|text| text.parse().ok()).ok_or(Fault::Missing("colony"))?;
    let (at, colony) = view.colony(id)?;
    let tap = TAPS.iter().find(|(_, _, entry)| form.get("seen") == Some(entry));
    let (kind, _, entry) = tap.ok_or_else(|| Fault::Wrong(text::wrong()))?;
    let visit: VisitId = ids::flight_day(view.apiary.id.0, view.now.date());
    let note = NoteId(Uuid::new_v5(&ids::note_of(visit, colony.id).0, kind.as_bytes()));
    let sent = Sent {
        visit: visit.0,
        colony: id,
        at: view.now.timestamp(),
        air: None,
        snow: None,
        wind: None,
        seen: vec![(*entry).to_owned()],
        words: None,
        sure: true,
    };
    let mut kept = sent.note(note, &view).map_err(Fault::Wrong)?;
    if let Some(before) = app.store().versions(note).await?.last() {
        kept.at = before.note.at;
    }
    keep(&app, &kept).await?;
    Ok(Redirect::to(&Said::Noted(note).on(&format!("/flight#hive{at}"))))
}
