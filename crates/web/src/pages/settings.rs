//! Settings: units, words, money; and the day looked at.

use axum::Form;
use axum::extract::State;
use axum::http::HeaderMap;
use axum::response::Redirect;
use maud::{Markup, html};
use snowhum_apiary::{Reckoned, read_day};
use snowhum_units::{Speech, System};

use super::notes::Pairs;
use crate::app::App;
use crate::fault::Fault;
use crate::gate::{links, sign_in};
use crate::page::{Place, page};
use crate::said::Said;
use crate::settings::{COLONY, CURRENCY, UNITS, WORDS, currency, worth};
use crate::view::{Asked, View};

pub(crate) async fn show(State(app): State<App>, headers: HeaderMap, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (is_us, is_american) = (view.settings.system == System::Us, view.settings.speech == Speech::NorthAmerican);
    let body = html! {
        h1 { "Settings" }
        @if asked.get("kept").is_some() { p class="kept" role="status" { "Kept." } }
        form method="post" action="/settings" {
            (pair("Units", "units", [("metric", "kilograms, °C", !is_us), ("us", "pounds, °F", is_us)]))
            (pair("Words", "words", [("british", "British", !is_american), ("north-american", "North American", is_american)]))
            label for="currency" { "Currency" }
            input id="currency" name="currency" maxlength="8" required value=(view.apiary.money.currency);
            label for="colony" { "What a colony alive, fed and queenright in spring is worth" }
            input id="colony" name="colony" inputmode="decimal" maxlength="10" required value=(view.apiary.money.colony);
            button class="main" { "Keep" }
        }
        (links::section(&app, &view, &headers).await?)
        (sign_in::section(&app).await?)
        section {
            h2 { "Where the records lie" }
            p {
                @match app.store().path() {
                    Some(path) => { "In " code { (path.display()) } ". Every version of every note is kept there." }
                    None => "In memory alone: they are gone when the program ends. Start it with --store to keep them.",
                }
            }
            p { a class="way" href="/import" { "Notes from a spreadsheet" } }
        }
    };
    Ok(page(&view, Place::Elsewhere, "Settings", &body))
}

fn pair(asks: &str, name: &str, answers: [(&str, &str, bool); 2]) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (asks) }
            @for (value, words, is_chosen) in answers {
                label { input type="radio" name=(name) value=(value) checked[is_chosen]; span { (words) } }
            }
        }
    }
}

pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let form = Asked(pairs);
    let one_of = |name: &str, known: [&'static str; 2]| known.into_iter().find(|known| form.get(name) == Some(known));
    let units = one_of("units", ["metric", "us"]).ok_or_else(|| wrong("Units are metric or us."))?;
    let words =
        one_of("words", ["british", "north-american"]).ok_or_else(|| wrong("Words are british or north-american."))?;
    let money =
        form.get("currency").and_then(currency).ok_or_else(|| wrong("Write the currency in at most 8 letters."))?;
    let colony = form
        .get("colony")
        .and_then(worth)
        .ok_or_else(|| wrong("Write the worth of a colony as a number, such as 180."))?;
    let store = app.store();
    store.set(UNITS, units).await?;
    store.set(WORDS, words).await?;
    store.set(CURRENCY, &money).await?;
    store.set(COLONY, &colony.to_string()).await?;
    app.touch();
    Ok(Redirect::to("/settings?kept=1"))
}

fn wrong(text: &str) -> Fault {
    Fault::Wrong(text.to_owned())
}

/// Looks at an invented yard on another day.
pub(crate) async fn day(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let apiary = app.apiary().await?;
    if !apiary.invented {
        return Err(wrong("Only an invented yard can be looked at on another day; start the program with --as-of."));
    }
    let form = Asked(pairs);
    let day = form.get("day").and_then(|text| read_day(text, Reckoned::Nearest(app.day(&apiary))).ok());
    let day = day.ok_or_else(|| wrong("Name a day such as 2026-02-07."))?;
    if day < apiary.as_of {
        return Err(wrong("That day lies before the colonies were counted."));
    }
    app.show_day(Some(day));
    Ok(Redirect::to(&Said::AnotherDay.on("/")))
}
