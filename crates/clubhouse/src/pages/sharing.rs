//! What a member lets others see, yard by yard.

use axum::Form;
use axum::extract::{Path, State};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_club::{Choice, OwnYard, Sharing};
use snowhum_figures::club::{LEAST_MEMBERS, LEAST_YARDS};
use snowhum_say::{Message, Tongue, club_page as text};
use uuid::Uuid;

use crate::app::{Clubhouse, Pairs};
use crate::fault::Fault;
use crate::frame::{Place, page};
use crate::visit::Visit;

pub(crate) async fn show(State(house): State<Clubhouse>, visit: Visit) -> Response {
    let tongue = visit.tongue;
    match house.club.sharing(visit.member.id).await {
        Ok(sharing) => drawn(&visit, &sharing).into_response(),
        Err(fault) => Fault::from(fault).told(tongue),
    }
}

fn drawn(visit: &Visit, sharing: &Sharing) -> Markup {
    let say = |message: Message| visit.tongue.say(&message);
    let heading = say(text::sharing_heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::sharing_lede())) }
        p { (say(text::count_what(LEAST_MEMBERS, LEAST_YARDS))) }
        @if sharing.yards.is_empty() { p { (say(text::no_own())) } }
        @for yard in &sharing.yards { (one(yard, sharing, visit.tongue)) }
    };
    page(visit, Place::Sharing, &heading, &body)
}

fn one(yard: &OwnYard, sharing: &Sharing, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        section id={ "yard-" (yard.id) } {
            h2 { (yard.name) }
            form method="post" action={ "/sharing/" (yard.id) } {
                fieldset class="choices" {
                    legend { (say(text::readers())) }
                    @if sharing.mentors.is_empty() { p { (say(text::no_mentors())) } }
                    @for (mentor, name) in &sharing.mentors {
                        label { input type="checkbox" name="reader" value=(mentor) checked[yard.readers.contains(mentor)]; span { (name) } }
                    }
                }
                fieldset class="choices" {
                    legend { (say(text::losses_heading())) }
                    label { input type="checkbox" name="counted" value="yes" checked[yard.is_counted]; span { (say(text::count())) } }
                }
                button class="main" { (say(text::keep())) }
            }
        }
    }
}

/// Keeps what is chosen for one yard.
pub(crate) async fn keep(
    State(house): State<Clubhouse>,
    visit: Visit,
    Path(yard): Path<String>,
    Form(pairs): Pairs,
) -> Response {
    match kept(&house, &visit, &yard, &pairs).await {
        Ok(response) => response,
        Err(fault) => fault.told(visit.tongue),
    }
}

async fn kept(house: &Clubhouse, visit: &Visit, yard: &str, pairs: &[(String, String)]) -> Result<Response, Fault> {
    let id = |text: &str| text.parse::<Uuid>().map_err(|_| Fault::Missing);
    let readers = pairs.iter().filter(|(name, _)| name == "reader").map(|(_, value)| id(value));
    let choice = Choice {
        is_counted: pairs.iter().any(|(name, value)| name == "counted" && value == "yes"),
        readers: readers.collect::<Result<_, Fault>>()?,
    };
    let yard = id(yard)?;
    house.club.choose(visit.member.id, yard, &choice).await?;
    Ok(Redirect::to(&format!("/sharing#yard-{yard}")).into_response())
}
