//! Which language a page is in: the one chosen in this browser, else the first of the browser's own that there is.

use axum::Form;
use axum::extract::State;
use axum::http::{HeaderMap, header};
use axum::response::{IntoResponse, Redirect, Response};
use snowhum_say::{Language, Tongue};
use snowhum_units::System;
use snowhum_web::house::{given, named};

use crate::app::{Clubhouse, Pairs, value};
use crate::fault::Fault;

const COOKIE: &str = "snowhum-club-language";
/// A year, s.
const KEPT: i64 = 365 * 86_400;
/// Each language by its own name.
pub(crate) const LANGUAGES: [(Language, &str); 4] = [
    (Language::British, "English"),
    (Language::NorthAmerican, "American English"),
    (Language::German, "Deutsch"),
    (Language::French, "français"),
];

/// What a visitor reads: in North America US units too.
pub(crate) fn tongue(headers: &HeaderMap) -> Tongue {
    let asked = headers.get(header::ACCEPT_LANGUAGE).and_then(|asked| asked.to_str().ok()).unwrap_or_default();
    let asked = asked.split(',').filter_map(|one| Language::of_tag(one.split(';').next()?));
    let language = named(headers, COOKIE).and_then(Language::of_tag).into_iter().chain(asked).next();
    let language = language.unwrap_or_default();
    let system = if language == Language::NorthAmerican { System::Us } else { System::Metric };
    Tongue::new(system).in_language(language)
}

/// Keeps the choice in the browser.
pub(crate) async fn choose(State(house): State<Clubhouse>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let language = Language::ALL.into_iter().find(|known| value(&pairs, "language") == Some(known.tag()));
    let language = language.unwrap_or_default();
    let cookie = given(COOKIE, language.tag(), KEPT, house.reach.is_network()).ok_or(Fault::Cut)?;
    Ok(([(header::SET_COOKIE, cookie)], Redirect::to("/")).into_response())
}
