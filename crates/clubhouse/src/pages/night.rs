//! How the nights go: progress, workers, what failed; for Prometheus too.

use axum::extract::State;
use axum::http::{HeaderMap, header};
use axum::response::{IntoResponse, Response};
use maud::{Markup, html};
use snowhum_club::Progress;
use snowhum_say::{Message, Tongue, club_page as text};
use snowhum_web::house::marked;

use super::help::day;
use crate::app::Clubhouse;
use crate::fault::Fault;
use crate::frame::{Place, page};
use crate::spoken::tongue;
use crate::visit::Visit;

/// Counts alone, of all yards together: open to whoever reaches the server.
pub(crate) async fn metrics(State(house): State<Clubhouse>, headers: HeaderMap) -> Response {
    match house.club.status().await {
        Ok(status) => {
            let kind = [(header::CONTENT_TYPE, "text/plain; version=0.0.4; charset=utf-8")];
            (kind, snowhum_club::metrics(&status)).into_response()
        }
        Err(fault) => Fault::from(fault).told(tongue(&headers)),
    }
}

pub(crate) async fn show(State(house): State<Clubhouse>, visit: Visit) -> Response {
    let tongue = visit.tongue;
    shown(&house, visit).await.map_or_else(|fault| fault.told(tongue), IntoResponse::into_response)
}

async fn shown(house: &Clubhouse, visit: Visit) -> Result<Markup, Fault> {
    let status = house.club.status().await?;
    let say = |message: Message| visit.tongue.say(&message);
    let mut nights = Vec::new();
    for (at, night) in status.nights.iter().enumerate() {
        let own = house.club.failures(night.night, Some(visit.member.id)).await?;
        // An earlier one is not computed any more.
        let ahead = (at == 0).then(|| status.ahead(night)).flatten();
        nights.push(one(night, &own, ahead, visit.tongue)?);
    }
    let read = match status.nights.iter().find(|night| night.is_complete()) {
        Some(night) => text::read(day(&night.day)?),
        None => text::no_night(),
    };
    let heading = say(text::night_heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(read)) }
        p { (say(text::workers(status.queue.workers as f64))) " " (say(text::waiting(status.queue.taken as f64, status.queue.waiting as f64))) }
        @for night in nights { (night) }
    };
    Ok(page(&visit, Place::Night, &heading, &body))
}

fn one(night: &Progress, own: &[(String, String)], ahead: Option<Message>, tongue: Tongue) -> Result<Markup, Fault> {
    let say = |message: Message| tongue.say(&message);
    let unseen = night.failed - own.len() as i64;
    Ok(html! {
        section {
            h2 { (say(text::night_of(day(&night.day)?))) }
            (bar(night))
            p { (say(night.message())) }
            @if let Some(ahead) = ahead { p class="small" { (say(ahead)) } }
            @for (yard, why) in own { p class="caution" { (marked(tongue, &text::failure(why.as_str(), yard.as_str()))) } }
            @if unseen > 0 { p class="small" { (say(text::others_failed(unseen as f64))) } }
        }
    })
}

/// Answered, and framed behind it what failed; its words stand under it.
fn bar(night: &Progress) -> Markup {
    let share = |yards: i64| format!("{:.2}", 100.0 * yards as f64 / night.asked.max(1) as f64);
    html! {
        svg class="hundred" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true" {
            rect class="all" width="100" height="4" {}
            rect class="done" width=(share(night.done + night.failed)) height="4" {}
            rect class="now" width=(share(night.done)) height="4" {}
        }
    }
}
