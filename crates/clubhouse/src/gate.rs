//! Who is signed in, and the way in and out.

use axum::Form;
use axum::extract::{FromRequestParts, State};
use axum::http::request::Parts;
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_club::Member;
use snowhum_say::{Message, Tongue, club_page as text};
use snowhum_web::Reach;
use snowhum_web::house::{given, marked, named};

use crate::fault::Fault;
use crate::frame::bare;
use crate::routes::Clubhouse;
use crate::spoken::tongue;

/// The prefix has browsers keep it to this very server, encrypted, under no other path (RFC 6265bis).
const COOKIE: &str = "__Host-snowhum-club";
/// On the machine itself nothing is encrypted, and a browser would refuse the prefix.
const COOKIE_HERE: &str = "snowhum-club";
/// As long as the longest session, s.
const LONGEST: i64 = 180 * 86_400;

/// Pairs of a form as sent.
pub(crate) type Pairs = Form<Vec<(String, String)>>;

/// The first value under a name.
pub(crate) fn value<'p>(pairs: &'p [(String, String)], name: &str) -> Option<&'p str> {
    pairs.iter().find(|(key, _)| key == name).map(|(_, value)| value.as_str())
}

/// A member who looks, and what they read in. Who is not signed in is led to where one does.
pub(crate) struct Visit {
    pub(crate) member: Member,
    pub(crate) tongue: Tongue,
}

impl FromRequestParts<Clubhouse> for Visit {
    type Rejection = Response;

    async fn from_request_parts(parts: &mut Parts, house: &Clubhouse) -> Result<Self, Response> {
        let tongue = tongue(&parts.headers);
        let member = match named(&parts.headers, name(&house.reach)) {
            Some(token) => house.club.signed_in(token).await.map_err(|fault| Fault::from(fault).told(tongue))?,
            None => None,
        };
        match member {
            Some(member) => Ok(Self { member, tongue }),
            None if parts.method.is_safe() => Err(Redirect::to("/sign-in").into_response()),
            None => Err(Fault::SignIn.told(tongue)),
        }
    }
}

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

fn name(reach: &Reach) -> &'static str {
    if reach.is_network() { COOKIE } else { COOKIE_HERE }
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
