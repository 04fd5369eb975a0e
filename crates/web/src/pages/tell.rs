//! The winter told: a hive's or the yard's, as a film to look at here and to take away as one file.

use axum::extract::{Path, State};
use axum::http::{Uri, header};
use axum::response::{IntoResponse, Response};
use maud::{PreEscaped, html};
use snowhum_advice::film::FilmAnswer;
use snowhum_say::{Message, tell_page as text};
use std::sync::Arc;

use crate::app::App;
use crate::fault::Fault;
use crate::film::{drawn, title, told_winter};
use crate::frame;
use crate::lasting::Last;
use crate::page::{Place, page};
use crate::view::{Asked, View};

/// The yard's winter.
pub(crate) async fn yard(State(app): State<App>, asked: Asked) -> Result<Response, Fault> {
    show(&app, View::of(&app).await?, None, &asked).await
}

/// One hive's.
pub(crate) async fn hive(
    State(app): State<App>,
    Path(id): Path<String>,
    uri: Uri,
    asked: Asked,
) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let (at, _) = view.addressed(&id, &uri)?;
    show(&app, view, Some(at), &asked).await
}

async fn show(app: &App, mut view: View, at: Option<usize>, asked: &Asked) -> Result<Response, Fault> {
    let last = last(app, &view).await;
    view.await_for(&last);
    let of = |answer: &Arc<FilmAnswer>| match at {
        Some(at) => FilmAnswer::clone(answer).of_hive(at),
        None => Some(FilmAnswer::clone(answer)),
    };
    let told = match &last.answer {
        Some(Ok(answer)) => of(answer),
        _ => None,
    };
    if asked.get("file").is_some() {
        return told.map(|told| file(&view, &told)).ok_or(Fault::NotYet);
    }
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let body = html! {
        h1 { (say(told.as_ref().map_or_else(text::heading, title))) }
        (frame::age(&view, &last))
        @if let Some(Err(words)) = &last.answer { p class="caution" { (tongue.say(words)) } }
        @if let Some(told) = &told {
            p class="ways no-print" { a class="go" href="?file=1" download="winter.html" { (say(text::take())) } }
            (PreEscaped(drawn(told, &view.apiary, tongue).inline()))
            script type="module" src="/film.js" {}
        }
    };
    Ok(page(&view, Place::Tell, &say(text::heading()), &body).into_response())
}

/// It tells the plan and the estimate, and follows when these are of now.
async fn last(app: &App, view: &View) -> Last<FilmAnswer> {
    let plan = app.plan().await;
    let is_of_now = !plan.is_behind && !view.is_behind;
    let from = plan.told().cloned().zip(view.standing.clone()).filter(|_| is_of_now);
    app.film(from).await
}

/// A file whose name tells nothing of the place.
fn file(view: &View, told: &FilmAnswer) -> Response {
    let name = if told.hives.len() == 1 { "winter-of-a-hive.html" } else { "winter-of-a-yard.html" };
    let kind = [
        (header::CONTENT_TYPE, "text/html; charset=utf-8".to_owned()),
        (header::CONTENT_DISPOSITION, format!("attachment; filename=\"{name}\"")),
    ];
    (kind, told_winter(told, &view.apiary, view.tongue())).into_response()
}
