//! Signing in and out.

use axum::Form;
use axum::extract::{Extension, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, Uri, header};
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_say::{Message, Tongue, sign_in_page as text};
use std::net::{IpAddr, Ipv4Addr};
use std::sync::PoisonError;
use std::time::{Duration, Instant};

use super::{Peer, code, cookie, phrase, session};
use crate::app::App;
use crate::bare::bare;
use crate::fault::Fault;
use crate::pages::notes::Pairs;
use crate::reader;
use crate::view::Asked;
use crate::words::marked;

/// Where to sign in and come back from to what was asked.
pub(super) fn address(asked: &Uri) -> String {
    let to = asked.path_and_query().map_or("/", |path| path.as_str());
    if to == "/" || own_path(to).is_none() {
        return "/sign-in".to_owned();
    }
    let escaped: String = to
        .bytes()
        .map(|byte| match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'/' | b'-' | b'.' | b'_' => char::from(byte).to_string(),
            other => format!("%{other:02X}"),
        })
        .collect();
    format!("/sign-in?to={escaped}")
}

/// A path of this server: what a browser could take for another server's is none.
fn own_path(to: &str) -> Option<&str> {
    let is_plain = to.bytes().all(|byte| byte.is_ascii_graphic() && byte != b'\\');
    (to.starts_with('/') && !to.starts_with("//") && is_plain).then_some(to)
}

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Response {
    if !app.gate().reach.is_network() {
        return Redirect::to("/").into_response();
    }
    shown(asked.get("to"), None).into_response()
}

fn shown(to: Option<&str>, wrong: Option<&Message>) -> Markup {
    let tongue = reader::tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede())) }
        @if let Some(wrong) = wrong { p class="caution" role="alert" { (tongue.say(wrong)) } }
        form method="post" action="/sign-in" {
            @if let Some(to) = to.and_then(own_path) { input type="hidden" name="to" value=(to); }
            label for="phrase" { (say(text::phrase())) }
            input id="phrase" name="phrase" type="password" required autofocus maxlength="1024" autocomplete="current-password";
            button class="main" { (heading) }
        }
        p class="small" { (marked(tongue, &text::forgotten())) }
    };
    bare(&heading, &body)
}

/// Tries a pass phrase.
pub(crate) async fn enter(
    State(app): State<App>,
    peer: Option<Extension<Peer>>,
    headers: HeaderMap,
    Form(pairs): Pairs,
) -> Result<Response, Fault> {
    if !app.gate().reach.is_network() {
        return Ok(Redirect::to("/").into_response());
    }
    let asked = Asked(pairs);
    let from = peer.map_or(IpAddr::V4(Ipv4Addr::UNSPECIFIED), |Extension(Peer(address))| address);
    // As typed: what stands between the words counts.
    let phrase = asked.0.iter().find(|(name, _)| name == "phrase").map_or("", |(_, value)| value.as_str());
    let to = asked.get("to").and_then(own_path);
    // On a task of its own: a try goes on and counts when the asker hangs up.
    let trying = tokio::spawn(tried(app.clone(), from, phrase.to_owned()));
    match trying.await.map_err(|_| Fault::Cut)?? {
        Tried::Right => {
            if let Some(old) = cookie::keeper(&headers) {
                session::end(&app.store(), old).await?;
            }
            let token = session::begin(&app.store(), Timestamp::now()).await?;
            let mut response = Redirect::to(to.unwrap_or("/")).into_response();
            let given = cookie::give_keeper(&token, session::LONGEST).ok_or(Fault::Cut)?;
            response.headers_mut().append(header::SET_COOKIE, given);
            Ok(response)
        }
        Tried::Wrong => Ok((StatusCode::UNAUTHORIZED, shown(to, Some(&text::wrong()))).into_response()),
        Tried::TooSoon(wait) => Ok(too_soon(to, wait)),
    }
}

fn too_soon(to: Option<&str>, wait: Duration) -> Response {
    let seconds = wait.as_secs() + 1;
    let wait = if seconds < 120 { text::seconds(seconds) } else { text::minutes(seconds.div_ceil(60)) };
    let page = shown(to, Some(&text::too_soon(wait)));
    (StatusCode::TOO_MANY_REQUESTS, [(header::RETRY_AFTER, seconds.to_string())], page).into_response()
}

enum Tried {
    Right,
    Wrong,
    TooSoon(Duration),
}

async fn tried(app: App, from: IpAddr, phrase: String) -> Result<Tried, Fault> {
    let gate = app.gate();
    // A code of the machine itself waits for nobody's wrong tries; it is too long to be guessed.
    if code::spend(&app.store(), &phrase, Timestamp::now()).await? {
        return Ok(Tried::Right);
    }
    let Ok(_waiting) = gate.waiting.try_acquire() else { return Ok(Tried::TooSoon(Duration::from_secs(1))) };
    let _turn = gate.turn.acquire().await.map_err(|_| Fault::Cut)?;
    let patience = || gate.patience.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(wait) = patience().wait(from, Instant::now()) {
        return Ok(Tried::TooSoon(wait));
    }
    let Some(kept) = phrase::kept(&app.store()).await? else { return Ok(Tried::Wrong) };
    let is_right = tokio::task::spawn_blocking(move || phrase::is_right(&phrase, &kept)).await;
    if is_right.map_err(|_| Fault::Cut)? {
        patience().right(from);
        return Ok(Tried::Right);
    }
    patience().wrong(from, Instant::now());
    Ok(Tried::Wrong)
}

/// Signs out: the session is gone, and a cookie sent again opens nothing.
pub(crate) async fn leave(State(app): State<App>, headers: HeaderMap) -> Result<Response, Fault> {
    if let Some(token) = cookie::keeper(&headers) {
        session::end(&app.store(), token).await?;
    }
    Ok(left(&app))
}

/// Ends every session, this one too.
pub(crate) async fn end_all(State(app): State<App>) -> Result<Response, Fault> {
    session::end_all(&app.store()).await?;
    Ok(left(&app))
}

fn left(app: &App) -> Response {
    let reach = &app.gate().reach;
    let mut response = Redirect::to(if reach.is_network() { "/sign-in" } else { "/" }).into_response();
    for taken in cookie::take_all(reach) {
        response.headers_mut().append(header::SET_COOKIE, taken);
    }
    response.headers_mut().insert("clear-site-data", HeaderValue::from_static("\"cache\""));
    response
}

/// On the settings page: who is signed in.
pub(crate) async fn section(app: &App, tongue: Tongue) -> Result<Markup, Fault> {
    if !app.gate().reach.is_network() {
        return Ok(html! {});
    }
    let count = session::count(&app.store(), Timestamp::now()).await?;
    Ok(html! {
        section {
            h2 { (tongue.say(&text::signed_in())) }
            p { (tongue.say(&text::browsers(count))) }
            form method="post" action="/settings/sign-out-everywhere" { button { (tongue.say(&text::sign_out())) } }
        }
    })
}

#[cfg(test)]
mod tests {
    use super::{address, own_path};

    #[test]
    fn one_comes_back_to_this_server_alone() {
        for elsewhere in ["//evil.example", "/\\evil.example", "https://evil.example/", "", "/a b", "/\n"] {
            assert_eq!(own_path(elsewhere), None, "{elsewhere:?}");
        }
        assert_eq!(address(&"/hive/1?a=b&c".parse().unwrap()), "/sign-in?to=/hive/1%3Fa%3Db%26c");
        assert_eq!(address(&"//evil.example/".parse().unwrap()), "/sign-in");
    }
}
