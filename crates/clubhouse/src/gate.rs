//! The way in and out.

use axum::Form;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_say::{Message, Tongue, club_page as text};
use snowhum_web::Reach;
use snowhum_web::house::{given, marked, named};

use crate::app::{Clubhouse, Pairs, value};
use crate::fault::Fault;
use crate::frame::bare;
use crate::spoken::tongue;
use crate::visit::name;

/// As long as the longest session, s.
const LONGEST: i64 = 180 * 86_400;

pub(crate) async fn show(headers: HeaderMap) -> Markup {
    way_in(tongue(&headers), None)
}

/// Tries a key.
pub(crate) async fn enter(
    State(house): State<Clubhouse>,
    headers: HeaderMap,
    Form(pairs): Pairs,
) -> Result<Response, Fault> {
    let tongue = tongue(&headers);
    match house.club.sign_in(value(&pairs, "key").unwrap_or_default()).await? {
        None => Ok((StatusCode::UNAUTHORIZED, way_in(tongue, Some(text::key_wrong()))).into_response()),
        Some(token) => {
            end(&house, &headers).await?;
            let cookie = cookie(&house.reach, &token, LONGEST)?;
            Ok(([(header::SET_COOKIE, cookie)], Redirect::to("/")).into_response())
        }
    }
}

/// Signs out: the session is gone, and a cookie sent again opens nothing.
pub(crate) async fn leave(State(house): State<Clubhouse>, headers: HeaderMap) -> Result<Response, Fault> {
    end(&house, &headers).await?;
    Ok(([(header::SET_COOKIE, cookie(&house.reach, "", 0)?)], Redirect::to("/sign-in")).into_response())
}

async fn end(house: &Clubhouse, headers: &HeaderMap) -> Result<(), Fault> {
    match named(headers, name(&house.reach)) {
        Some(token) => Ok(house.club.sign_out(token).await?),
        None => Ok(()),
    }
}

fn cookie(reach: &Reach, token: &str, seconds: i64) -> Result<header::HeaderValue, Fault> {
    given(name(reach), token, seconds, reach.is_network()).ok_or(Fault::Cut)
}

fn way_in(tongue: Tongue, wrong: Option<Message>) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::sign_in());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::sign_in_lede())) }
        @if let Some(wrong) = wrong { p class="caution" role="alert" { (say(wrong)) } }
        form method="post" action="/sign-in" {
            label for="key" { (say(text::key())) }
            input id="key" name="key" type="password" required autofocus maxlength="200" autocomplete="current-password";
            button class="main" { (heading) }
        }
        p class="small" { (marked(tongue, &text::key_lost())) }
    };
    bare(&heading, &body, tongue)
}
