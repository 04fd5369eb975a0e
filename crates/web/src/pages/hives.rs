//! The hives of the yard: each to be changed, and one to be added.

use axum::Form;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_apiary::{AnotherHive, Combs, QuickFault, SizedWord, food_words, standards, strength_words};
use snowhum_say::{Message, Tongue, hives_page as text};

use super::dress;
use super::notes::Pairs;
use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::marked;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(sheet(&view, &asked, &[]))
}

/// Takes another hive in.
pub(crate) async fn add(State(app): State<App>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let another = typed(&form);
    match view.apiary.with_another(&another) {
        Ok(yard) => {
            let yard = snowhum_apiary::Apiary { money: app.apiary().await?.money, ..yard };
            app.add(&another, &yard).await?;
            let added = yard.colonies.last().map(|colony| colony.id.0.to_string()).unwrap_or_default();
            Ok(Redirect::to(&format!("/hives?added={added}")).into_response())
        }
        Err(faults) => Ok((StatusCode::UNPROCESSABLE_ENTITY, sheet(&view, &form, &faults)).into_response()),
    }
}

/// Another hive as it was typed.
pub(super) fn typed(form: &Asked) -> AnotherHive {
    let said = |name: &str| form.get(name).unwrap_or_default().to_owned();
    AnotherHive {
        name: said("name"),
        kind: said("kind"),
        strength: said("strength"),
        food: said("food"),
        dress: dress::typed(form, ""),
    }
}

fn sheet(view: &View, form: &Asked, faults: &[QuickFault]) -> Markup {
    let added = form.get("added").and_then(|id| view.meant(id).ok());
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let body = html! {
        h1 { (say(text::heading())) }
        @if let Some((_, colony)) = added { p class="kept" role="status" { (marked(tongue, &text::stands(&colony.name))) } }
        @if !faults.is_empty() {
            section class="caution" role="alert" {
                h2 { (say(text::mend())) }
                ul { @for fault in faults { li { a href={ "#" (fault.field) } { (tongue.sentence(&fault.says)) } } } }
            }
        }
        (add_form(view, form, faults))
        h2 { (say(text::in_yard())) }
        ul class="evidence" {
            @for (_, colony) in view.watched() {
                li { strong { a href={ "/hive/" (colony.id.0) } { (colony.name) } } " " a class="way" href={ "/hive/" (colony.id.0) "/change" } { (say(text::change())) } }
            }
        }
    };
    page(view, Place::Hives, &say(text::heading()), &body)
}

fn add_form(view: &View, form: &Asked, faults: &[QuickFault]) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        form method="post" action="/hives" {
            h2 { (say(text::add())) }
            p { (say(text::as_it_stood(view.apiary.as_of))) }
            (facts(form, faults, view.tongue()))
            button class="main" { (say(text::add_it())) }
        }
    }
}

/// What is asked of another hive, here and where an autumn begins.
pub(super) fn facts(form: &Asked, faults: &[QuickFault], tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let first = standards().first().map(|standard| standard.name.as_str());
    let kind = form.get("kind").or(first);
    html! {
        label for="name" { (say(text::name())) }
        input id="name" name="name" maxlength="60" autocomplete="off" value=(form.get("name").unwrap_or_default());
        (fault_of("name", faults, tongue))
        label for="kind" { (say(text::kind())) }
        select id="kind" name="kind" { @for standard in standards() { option selected[kind == Some(&standard.name)] { (standard.name) } } }
        (fault_of("kind", faults, tongue))
        (words("strength", text::bees(), strength_words(), form, tongue))
        (fault_of("strength", faults, tongue))
        (words("food", text::food(), food_words(), form, tongue))
        (fault_of("food", faults, tongue))
        (dress::parts(&dress::typed(form, ""), "", |key| says(key, faults, tongue), tongue))
    }
}

fn words(field: &str, asks: Message, words: &[SizedWord], form: &Asked, tongue: Tongue) -> Markup {
    let chosen = form.get(field).unwrap_or(dress::NOT_LOOKED_AT);
    html! {
        fieldset class="choices" id=(field) tabindex="-1" {
            legend { (tongue.say(&asks)) }
            @for row in words.iter().filter(|row| row.combs == Combs::OneBox) {
                label class=[dress::unsaid(&row.word)] { input type="radio" name=(field) value=(row.word) checked[row.word == chosen]; span { (tongue.say(&row.message())) } }
            }
        }
    }
}

fn fault_of(field: &str, faults: &[QuickFault], tongue: Tongue) -> Markup {
    html! { @if let Some(says) = says(field, faults, tongue) { p class="caution" { (says) } } }
}

fn says(field: &str, faults: &[QuickFault], tongue: Tongue) -> Option<String> {
    faults.iter().find(|fault| fault.field == field).map(|fault| tongue.sentence(&fault.says))
}
