//! One yard: each colony's verdict, why, and all that is to be done.

use axum::extract::{Path, State};
use axum::response::{IntoResponse, Response};
use maud::{Markup, html};
use snowhum_advice::verdict::ColonyFirst;
use snowhum_say::{Tongue, club_page as text, hives};
use uuid::Uuid;

use super::help::{day, keeper};
use crate::app::Clubhouse;
use crate::fault::Fault;
use crate::frame::{Place, page};
use crate::told::{Told, chip};
use crate::visit::Visit;

pub(crate) async fn show(State(house): State<Clubhouse>, visit: Visit, Path(yard): Path<String>) -> Response {
    let tongue = visit.tongue;
    shown(&house, visit, &yard).await.map_or_else(|fault| fault.told(tongue), IntoResponse::into_response)
}

async fn shown(house: &Clubhouse, visit: Visit, yard: &str) -> Result<Markup, Fault> {
    let yard: Uuid = yard.parse().map_err(|_| Fault::Missing)?;
    let night = house.club.last_night_of(visit.member.id, yard).await?.ok_or(Fault::Missing)?;
    let day = day(&night.day)?;
    let told = Told::of(night.yards.into_iter().next().ok_or(Fault::Missing)?)?;
    let tongue = visit.tongue;
    let name = told.outlook.name.clone();
    let body = html! {
        h1 { (name) }
        p class="small" { (keeper(&told, tongue)) ". " (tongue.say(&text::read(day))) }
        @match &told.answer {
            Err(why) => p class="caution" { (tongue.say(&text::failed(why.as_str()))) },
            Ok(answer) => {
                @if answer.first.as_of != day { p class="caution" { (tongue.say(&text::other_day(answer.first.as_of))) } }
                ol class=(if answer.first.as_of == day { "hives" } else { "hives old" }) { @for colony in &answer.first.colonies { li class="hive plain" { (one(colony, tongue)) } } }
                @if !answer.first.later.is_empty() {
                    h2 { (tongue.say(&text::later())) }
                    ul class="sources" { @for later in &answer.first.later { li { (tongue.sentence(&later.words())) } } }
                }
            }
        }
    };
    Ok(page(&visit, Place::Yard, &name, &body))
}

fn one(colony: &ColonyFirst, tongue: Tongue) -> Markup {
    let says = colony.steps.is_empty().then(|| colony.says());
    html! {
        h3 { (colony.name) " " (chip(&colony.verdict, tongue)) }
        @for step in colony.steps.iter().map(|step| step.words()).chain(says) { p { (tongue.sentence(&step)) } }
        @if !colony.steps.is_empty() && !colony.why.is_empty() {
            p class="small" { (tongue.sentence(&colony.reasons())) }
        }
        @if let (Some(not), Some(done)) = (colony.if_not, colony.if_done) {
            p class="small" { (tongue.say(&text::well(hives(done), hives(not) == hives(done), hives(not)))) }
        }
    }
}
