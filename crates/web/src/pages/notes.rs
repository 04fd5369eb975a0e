//! A note by itself: changed, withdrawn, taken back. Every version is kept.

use axum::Form;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::{ColonyId, Entry, Note, NoteId, VisitId};
use snowhum_say::{Message, Text, fault, note_page as text};
use snowhum_store::{LastOf, Version};
use snowhum_units::{Kilogram, Measured, System};
use uuid::Uuid;

use super::note_form::{self, wrong_line};
use super::round::{Figure, Question};
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::said::Said;
use crate::sent::{Sent, shortened, timely};
use crate::view::{Asked, View};
use crate::words::plain;

/// Pairs of a form as sent.
pub(crate) type Pairs = Form<Vec<(String, String)>>;

/// Keeps what was tapped and typed at a hive; what cannot be read stays in its form.
pub(crate) async fn add(State(app): State<App>, Path(id): Path<String>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let (_, colony) = view.meant(&id)?;
    match read(&view, colony.id, &form) {
        Ok(note) => {
            keep(&app, &note).await?;
            Ok(Redirect::to(&Said::Noted(note.id).on(&format!("/hive/{}", colony.id.0))).into_response())
        }
        Err(Fault::Wrong(wrong)) => Ok(unread(note_form::to_mend(&view, colony, &form, &view.tongue().say(&wrong)))),
        Err(fault) => Err(fault.again(format!("/hive/{}/note", colony.id.0), &form.0)),
    }
}

/// The note that a form says.
fn read(view: &View, colony: ColonyId, form: &Asked) -> Result<Note, Fault> {
    let visit = form.get("visit").and_then(|text| text.parse().ok()).unwrap_or_else(|| ids::new_id(Timestamp::now()));
    let sent = Sent {
        visit,
        colony: colony.0,
        at: time(view, form)?,
        air: None,
        snow: None,
        wind: None,
        seen: written(form, view.tongue().system()).map_err(Fault::Wrong)?,
        words: form.get("words").map(str::to_owned),
        sure: form.get("sure").is_some(),
    };
    sent.asked(ids::note_of(VisitId(visit), colony), view)
}

/// A form that was not taken.
fn unread(page: Markup) -> Response {
    (StatusCode::UNPROCESSABLE_ENTITY, page).into_response()
}

/// Feeds that can be tapped, as a note writes them and as they are said.
pub(super) const FEEDS: [(&str, Text); 5] = [
    ("3:2 syrup", text::syrup_3_2),
    ("2:1 syrup", text::syrup_2_1),
    ("1:1 syrup", text::syrup_1_1),
    ("fondant", text::fondant),
    ("candy", text::candy),
];

/// What was typed in the line, and then what was tapped.
fn written(form: &Asked, system: System) -> Result<Vec<String>, Message> {
    let typed = form.get("line").into_iter().flat_map(snowhum_apiary::split_entries);
    let tapped = Question::at_a_hive().iter().filter_map(|question| form.get(question.field)).collect::<Vec<_>>();
    let chosen = form.every("entry");
    let depth = form.get("depth").map(|depth| Figure::Depth.written("snow=", depth, system));
    let board = form.get("board").map(|body| format!("board={body}"));
    let mites = form.get("mites").map(|count| format!("mites={count}"));
    Ok(typed
        .chain(tapped)
        .chain(chosen)
        .map(str::to_owned)
        .chain(fed(form, system)?)
        .chain(board)
        .chain(mites)
        .chain(depth)
        .collect())
}

/// Food given: a bare number is in the keeper's units.
fn fed(form: &Asked, system: System) -> Result<Option<String>, Message> {
    match (form.get("fed"), form.get("feed")) {
        (Some(much), Some(feed)) if snowhum_units::number(much).is_ok() => {
            Ok(Some(format!("fed={much} {} {feed}", Kilogram::usual(system))))
        }
        (Some(much), Some(feed)) => Ok(Some(format!("fed={much} {feed}"))),
        (Some(much), None) => Err(text::feed_wanted(shortened(much))),
        (None, _) => Ok(None),
    }
}

/// Where a colony's notes stand on its page.
pub(crate) async fn list(State(app): State<App>, Path(id): Path<String>) -> Result<Redirect, Fault> {
    let id = View::of(&app).await?.meant(&id)?.1.id.0;
    Ok(Redirect::to(&format!("/hive/{id}#notes")))
}

/// Where a note is written.
pub(crate) async fn begin(State(app): State<App>, Path(id): Path<String>) -> Result<Redirect, Fault> {
    let id = View::of(&app).await?.meant(&id)?.1.id.0;
    Ok(Redirect::to(&format!("/hive/{id}#note")))
}

/// The time of a form's note: noon of the day it names, else now. No day after the one looked at.
pub(super) fn time(view: &View, form: &Asked) -> Result<Timestamp, Fault> {
    let Some(on) = form.get("on") else { return Ok(view.now.timestamp()) };
    let wrong = || Fault::Wrong(text::day_wanted(shortened(on)));
    let read = snowhum_apiary::read_day(on, snowhum_apiary::Reckoned::Back(view.now.date()));
    let day = read.map_err(|wrong| Fault::Wrong(fault::sentence(wrong.message())))?;
    let noon = day.at(12, 0, 0, 0).to_zoned_datetime(view.now.time_zone().clone()).map_err(|_| wrong())?;
    timely(noon.timestamp(), view).map_err(Fault::Wrong)?;
    Ok(noon.timestamp())
}

/// Puts a note in the store; the estimate follows.
pub(crate) async fn keep(app: &App, note: &Note) -> Result<snowhum_store::Put, Fault> {
    let put = app.store().put_note(note, Timestamp::now()).await?;
    if put != snowhum_store::Put::AlreadyThere {
        app.touch();
    }
    Ok(put)
}

/// A note with its versions.
pub(crate) async fn show(State(app): State<App>, Path(id): Path<Uuid>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let versions = app.store().versions(NoteId(id)).await?;
    let last = versions.last().ok_or(Fault::Missing("note"))?;
    let written = view.written(&last.note).into_iter().filter(|text| !text.starts_with("words="));
    let line = written.collect::<Vec<_>>().join("; ");
    Ok(sheet(&view, &versions, (&line, &free_words(&last.note)), None))
}

/// A note's form with what stands in it, and how the note stood before.
fn sheet(view: &View, versions: &[Version], (line, words): (&str, &str), wrong: Option<&str>) -> Markup {
    let Some(Version { note, .. }) = versions.last() else { return html! {} };
    let (id, name) = (note.id.0, view.name_of(note.colony));
    let say = |message: Message| view.tongue().say(&message);
    let body = html! {
        h1 { (say(text::at(&name))) }
        form method="post" action={ "/note/" (id) } {
            (wrong_line(wrong))
            label for="line" { (say(text::signs())) }
            input id="line" name="line" maxlength="2000" autocomplete="off" value=(line)
                aria-invalid=[wrong.map(|_| "true")] aria-describedby=[wrong.map(|_| "line.wrong")];
            label for="words" { (say(text::words())) }
            input id="words" name="words" maxlength="500" autocomplete="off" value=(words);
            button class="main" { (say(text::keep_change())) }
        }
        form method="post" action={ "/note/" (id) "/withdraw" } { button { (say(text::withdraw())) } }
        section {
            h2 { (say(text::stood())) }
            p class="small" { (say(text::never_lost())) }
            ol class="notes" { @for version in versions.iter().rev() { (stood(view, version)) } }
        }
        p class="ways" { a href={ "/hive/" (note.colony.0) } { (say(text::back(&name))) } }
    };
    page(view, Place::Elsewhere, &say(text::title()), &body)
}

fn stood(view: &View, version: &Version) -> Markup {
    let at = version.recorded.at.to_zoned_datetime(view.now.time_zone().clone());
    let tongue = view.tongue();
    let stood = text::version(at.strftime("%H:%M").to_string(), version.kind.word(), at.date());
    html! {
        li {
            span class="label" { (tongue.say(&stood)) }
            @for written in view.written(&version.note) { span class="sign" { (tongue.say(&plain(&written))) } }
        }
    }
}

fn free_words(note: &Note) -> String {
    let words = note.entries.iter().filter_map(|entry| match entry {
        Entry::Words(words) => Some(words.as_str()),
        Entry::Sign(_) | Entry::Act(_) => None,
    });
    words.collect::<Vec<_>>().join(" ")
}

/// Keeps a changed note as a new version; what cannot be read stays in its form.
pub(crate) async fn edit(State(app): State<App>, Path(id): Path<Uuid>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let versions = app.store().versions(NoteId(id)).await?;
    let old = &versions.last().ok_or(Fault::Missing("note"))?.note;
    let line = form.get("line").unwrap_or_default();
    let sent = Sent {
        visit: old.visit.0,
        colony: old.colony.0,
        at: old.at,
        air: None,
        snow: old.conditions.snow,
        wind: None,
        seen: snowhum_apiary::split_entries(line).map(str::to_owned).collect(),
        words: form.get("words").map(str::to_owned),
        sure: true,
    };
    match sent.changed(NoteId(id), &view) {
        Ok(read) => {
            keep(&app, &Note { conditions: old.conditions, ..read }).await?;
            Ok(Redirect::to(&Said::Changed(NoteId(id)).on(&format!("/hive/{}", old.colony.0))).into_response())
        }
        Err(wrong) => {
            let typed = (line, form.get("words").unwrap_or_default());
            Ok(unread(sheet(&view, &versions, typed, Some(&view.tongue().say(&wrong)))))
        }
    }
}

/// Takes a note out of the answers.
pub(crate) async fn withdraw(State(app): State<App>, Path(id): Path<Uuid>) -> Result<Redirect, Fault> {
    let versions = app.store().versions(NoteId(id)).await?;
    let colony = versions.last().ok_or(Fault::Missing("note"))?.note.colony;
    if app.store().withdraw_note(NoteId(id), Timestamp::now()).await? {
        app.touch();
    }
    Ok(Redirect::to(&Said::Withdrew(NoteId(id)).on(&format!("/hive/{}", colony.0))))
}

/// Takes back the last thing done at a colony.
pub(crate) async fn undo(State(app): State<App>, Path(id): Path<String>) -> Result<Redirect, Fault> {
    let id = View::of(&app).await?.meant(&id)?.1.id.0;
    app.store().undo_last(LastOf::Colony(ColonyId(id)), Timestamp::now()).await?;
    app.touch();
    Ok(Redirect::to(&Said::TookBack(id).on(&format!("/hive/{id}"))))
}
