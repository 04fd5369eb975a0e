//! Settings: units, words, money; and the day looked at.

use axum::Form;
use axum::extract::State;
use axum::http::HeaderMap;
use axum::response::Redirect;
use maud::{Markup, html};
use snowhum_apiary::{Reckoned, read_day};
use snowhum_say::{Language, Message, settings_page as text};
use snowhum_units::System;

use super::notes::Pairs;
use crate::app::App;
use crate::fault::Fault;
use crate::gate::{links, sign_in};
use crate::page::{Place, page};
use crate::said::Said;
use crate::settings::{COLONY, CURRENCY, LANGUAGE, UNITS, currency, worth};
use crate::view::{Asked, View};
use crate::words::marked;

/// Languages, each by its own name.
const LANGUAGES: [(Language, &str); Language::ALL.len()] = [
    (Language::British, "English (Britain)"),
    (Language::NorthAmerican, "English (North America)"),
    (Language::German, "Deutsch"),
    (Language::French, "Français"),
];

pub(crate) async fn show(State(app): State<App>, headers: HeaderMap, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let is_us = view.settings.system == System::Us;
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let units = [("metric", say(text::metric()), !is_us), ("us", say(text::us()), is_us)];
    let languages =
        LANGUAGES.map(|(language, name)| (language.tag(), name.to_owned(), view.settings.language == language));
    let body = html! {
        h1 { (heading) }
        @if asked.get("kept").is_some() { p class="kept" role="status" { (say(text::kept())) } }
        form method="post" action="/settings" {
            (choices(&say(text::units()), "units", &units))
            (choices(&say(text::language()), "language", &languages))
            p class="small" { (say(text::unread())) }
            label for="currency" { (say(text::currency())) }
            input id="currency" name="currency" maxlength="8" required value=(view.apiary.money.currency);
            label for="colony" { (say(text::colony())) }
            input id="colony" name="colony" inputmode="decimal" maxlength="10" required value=(view.apiary.money.colony);
            button class="main" { (say(text::keep())) }
        }
        (links::section(&app, &view, &headers).await?)
        (sign_in::section(&app, tongue).await?)
        section {
            h2 { (say(text::records())) }
            p {
                @match app.store().path() {
                    Some(path) => (marked(tongue, &text::records_at(path.display().to_string()))),
                    None => (say(text::records_nowhere())),
                }
            }
            p { a class="way" href="/import" { (say(text::import())) } }
        }
    };
    Ok(page(&view, Place::Elsewhere, &heading, &body))
}

fn choices(asks: &str, name: &str, answers: &[(&str, String, bool)]) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (asks) }
            @for (value, words, is_chosen) in answers {
                label { input type="radio" name=(name) value=(value) checked[*is_chosen]; span { (words) } }
            }
        }
    }
}

pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let form = Asked(pairs);
    let units = ["metric", "us"].into_iter().find(|known| form.get("units") == Some(known));
    let units = units.ok_or_else(|| Fault::Wrong(text::wrong_units()))?;
    let language = Language::ALL.into_iter().find(|known| form.get("language") == Some(known.tag()));
    let language = language.ok_or_else(|| Fault::Wrong(text::wrong_language()))?;
    let money = form.get("currency").and_then(currency).ok_or_else(|| Fault::Wrong(text::wrong_currency()))?;
    let colony = form.get("colony").and_then(worth).ok_or_else(|| Fault::Wrong(text::wrong_colony()))?;
    let store = app.store();
    store.set(UNITS, units).await?;
    store.set(LANGUAGE, language.tag()).await?;
    store.set(CURRENCY, &money).await?;
    store.set(COLONY, &colony.to_string()).await?;
    app.touch();
    Ok(Redirect::to("/settings?kept=1"))
}

/// Looks at an invented yard on another day.
pub(crate) async fn day(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let apiary = app.apiary().await?;
    if !apiary.invented {
        return Err(Fault::Wrong(text::wrong_yard()));
    }
    let form = Asked(pairs);
    let day = form.get("day").and_then(|day| read_day(day, Reckoned::Nearest(app.day(&apiary))).ok());
    let day = day.ok_or_else(|| Fault::Wrong(text::wrong_day()))?;
    if day < apiary.as_of {
        return Err(Fault::Wrong(text::wrong_before()));
    }
    app.show_day(Some(day));
    Ok(Redirect::to(&Said::AnotherDay.on("/")))
}
