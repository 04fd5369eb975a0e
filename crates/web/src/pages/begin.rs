//! A yard of one's own, begun with four facts a hive.

mod form;
mod typed;

use axum::Form;
use axum::extract::State;
use axum::http::StatusCode;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_apiary::{QuickFault, QuickStart};
use snowhum_say::{Message, begin_page as text};

use super::notes::Pairs;
use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::marked;
use typed::{TOWN, Typed};

/// An empty form.
pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(sheet(&view, &Typed::blank(&view), &[]))
}

/// Adds a hive to the form, saves it as a file, or keeps it as the yard that is served.
pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let mut typed = Typed::of(&form);
    match form.get("do") {
        Some("more") => typed.add_hive(view.tongue()),
        Some("fewer") => typed.drop_hive(),
        Some("look") => {}
        wanted => return finish(&app, &view, &typed, wanted == Some("file")).await,
    }
    Ok(sheet(&view, &typed, &[]).into_response())
}

async fn finish(app: &App, view: &View, typed: &Typed, as_file: bool) -> Result<Response, Fault> {
    let system = view.settings.system;
    let facts = typed.facts();
    let yard = match facts.read(system) {
        Ok(yard) if !as_file && yard.id == view.apiary.id => return Ok(faulty(view, typed, vec![same_name()])),
        Ok(yard) => yard,
        Err(faults) => return Ok(faulty(view, typed, typed.joined(faults))),
    };
    if as_file {
        return Ok(file(&facts, system));
    }
    app.begin(&yard).await?;
    Ok(Redirect::to("/?begun=1").into_response())
}

fn same_name() -> QuickFault {
    QuickFault { hive: None, field: "name", says: text::same_name() }
}

fn faulty(view: &View, typed: &Typed, faults: Vec<QuickFault>) -> Response {
    (StatusCode::UNPROCESSABLE_ENTITY, sheet(view, typed, &faults)).into_response()
}

fn file(facts: &QuickStart, system: snowhum_units::System) -> Response {
    let headers = [
        (CONTENT_TYPE, "application/toml; charset=utf-8"),
        (CONTENT_DISPOSITION, "attachment; filename=\"my-yard.toml\""),
    ];
    (headers, facts.text(system)).into_response()
}

fn sheet(view: &View, typed: &Typed, faults: &[QuickFault]) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede())) }
        @if !view.apiary.invented { p class="caution" { (marked(tongue, &text::kept_already(&view.apiary.name))) } }
        @if !faults.is_empty() {
            section class="caution" role="alert" {
                h2 { (say(text::to_mend(faults.len()))) }
                ul { @for fault in faults { li { a href={ "#" (form::id(fault)) } { (tongue.sentence(&form::whose(fault, typed))) } } } }
            }
        }
        (form::form(view, typed, faults))
    };
    page(view, Place::Elsewhere, &heading, &body)
}

/// Where the faults of a place that was not said are shown.
const PLACE: [&str; 4] = ["latitude", "longitude", "elevation", "zone"];

impl Typed {
    /// Faults with those of a place that was not said at all made one.
    fn joined(&self, faults: Vec<QuickFault>) -> Vec<QuickFault> {
        if self.says_place() {
            return faults;
        }
        let town = QuickFault { hive: None, field: TOWN, says: text::no_town() };
        let others = faults.into_iter().filter(|fault| fault.hive.is_some() || !PLACE.contains(&fault.field));
        std::iter::once(town).chain(others).collect()
    }
}
