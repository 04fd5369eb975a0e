//! A link for a mentor: made, listed, taken back; and what opens with it.

use axum::Form;
use axum::extract::{Path, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_say::{Message, links_page as text};
use uuid::Uuid;

use super::share::{self, DAYS, Share};
use super::{cookie, session};
use crate::app::App;
use crate::bare::bare;
use crate::fault::Fault;
use crate::pages::notes::Pairs;
use crate::reader;
use crate::view::{Asked, View};
use crate::words::marked;

/// On the settings page: the links that hold, and a form for another.
pub(crate) async fn section(app: &App, view: &View, headers: &HeaderMap) -> Result<Markup, Fault> {
    let mut links = Vec::new();
    for share in share::all(&app.store(), Timestamp::now()).await? {
        let token = share::token(&app.store(), share.id).await?;
        links.push((share, address(app, headers, &token)));
    }
    let say = |message: Message| view.tongue().say(&message);
    Ok(html! {
        section id="links" {
            h2 { (say(text::heading())) }
            p { (say(text::lede(app.gate().reach.is_network()))) }
            @if !links.is_empty() { ol class="notes" { @for (share, address) in &links { (one(share, address, view)) } } }
            form method="post" action="/settings/links" {
                label for="link-name" { (say(text::for_whom())) }
                input id="link-name" name="name" maxlength="60" required autocomplete="off";
                label for="link-days" { (say(text::holds())) }
                select id="link-days" name="days" {
                    @for days in DAYS { option value=(days) selected[days == DAYS[1]] { (say(text::days(days))) } }
                }
                button class="main" { (say(text::make())) }
            }
        }
    })
}

fn one(share: &Share, address: &str, view: &View) -> Markup {
    let until = share.until.to_zoned_datetime(view.now.time_zone().clone()).date();
    html! {
        li {
            label for={ "link-" (share.id) } { (marked(view.tongue(), &text::one(&share.name, until, until.year().to_string()))) }
            input id={ "link-" (share.id) } readonly value=(address);
            form method="post" action={ "/settings/links/" (share.id) "/take-back" } { button { (view.tongue().say(&text::take_back())) } }
        }
    }
}

/// The whole address of a link, under the name this request asked by.
fn address(app: &App, headers: &HeaderMap, token: &str) -> String {
    let host = headers.get(header::HOST).and_then(|host| host.to_str().ok()).unwrap_or("localhost");
    format!("{}://{host}/shared/{token}", app.gate().reach.scheme())
}

pub(crate) async fn make(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let form = Asked(pairs);
    let days = form.get("days").and_then(|days| days.parse().ok()).unwrap_or_default();
    share::make(&app.store(), form.get("name").unwrap_or_default(), days, Timestamp::now()).await?;
    Ok(Redirect::to("/settings#links"))
}

pub(crate) async fn take_back(State(app): State<App>, Path(id): Path<Uuid>) -> Result<Redirect, Fault> {
    share::revoke(&app.store(), id).await?;
    Ok(Redirect::to("/settings#links"))
}

/// Opens a link. The next page is one's own click away: a browser that comes from a mail would not yet send the cookie.
pub(crate) async fn open(
    State(app): State<App>,
    headers: HeaderMap,
    Path(token): Path<String>,
) -> Result<Response, Fault> {
    let (store, now) = (&app.store(), Timestamp::now());
    let mut response = match share::of_token(store, &token, now).await? {
        None => (StatusCode::NOT_FOUND, bare(&say(text::a_link()), &shut())).into_response(),
        Some(_) if is_keeper(&app, &headers, now).await? => bare(&say(text::a_link()), &needless()).into_response(),
        Some(share) => {
            let mut response = bare(&say(text::welcome()), &welcome(&share)).into_response();
            let seconds = share.until.as_second() - now.as_second();
            let given = cookie::give_reader(&token, seconds, &app.gate().reach).ok_or(Fault::Cut)?;
            response.headers_mut().append(header::SET_COOKIE, given);
            response
        }
    };
    let headers = response.headers_mut();
    headers.insert(header::REFERRER_POLICY, HeaderValue::from_static("no-referrer"));
    headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("no-store"));
    Ok(response)
}

async fn is_keeper(app: &App, headers: &HeaderMap, now: Timestamp) -> Result<bool, Fault> {
    match cookie::keeper(headers).filter(|_| app.gate().reach.is_network()) {
        Some(token) => Ok(session::is_good(&app.store(), token, now).await?),
        None => Ok(false),
    }
}

fn say(message: Message) -> String {
    reader::tongue().say(&message)
}

fn welcome(share: &Share) -> Markup {
    html! {
        h1 { (say(text::welcome())) }
        p class="lede" { (marked(reader::tongue(), &text::welcome_lede(&share.name))) }
        p { a class="go" href="/" { (say(text::look())) } }
        p class="small" { (say(text::cookie())) }
    }
}

fn needless() -> Markup {
    html! {
        h1 { (say(text::needless())) }
        p class="lede" { (say(text::needless_lede())) }
        p { a href="/" { (say(text::look())) } }
    }
}

fn shut() -> Markup {
    html! {
        h1 { (say(text::shut())) }
        p class="lede" { (say(text::shut_lede())) }
    }
}
