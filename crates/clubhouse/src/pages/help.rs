//! Who needs help this week, across all yards that a member may see.

use axum::extract::State;
use axum::response::{IntoResponse, Response};
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_figures::club::WEEK;
use snowhum_say::{Message, Tongue, club_page as text};
use snowhum_web::house::marked;

use crate::app::Clubhouse;
use crate::fault::Fault;
use crate::frame::{Place, page};
use crate::told::{Need, Told, chip};
use crate::visit::Visit;

pub(crate) async fn show(State(house): State<Clubhouse>, visit: Visit) -> Response {
    let tongue = visit.tongue;
    shown(&house, visit).await.map_or_else(|fault| fault.told(tongue), IntoResponse::into_response)
}

async fn shown(house: &Clubhouse, visit: Visit) -> Result<Markup, Fault> {
    let night = house.club.last_night(Some(visit.member.id)).await?;
    let tongue = visit.tongue;
    let heading = tongue.say(&text::help_heading());
    let body = match night {
        None => html! { h1 { (heading) } p class="lede" { (tongue.say(&text::no_night())) } },
        Some(night) => {
            let day = day(&night.day)?;
            let yards = night.yards.into_iter().map(Told::of).collect::<Result<Vec<_>, Fault>>()?;
            html! {
                h1 { (heading) }
                (lede(&yards, day, tongue))
                (old(day, tongue))
                (by_need(yards, day, tongue))
            }
        }
    };
    Ok(page(&visit, Place::Help, &heading, &body))
}

/// The day of a night.
pub(crate) fn day(written: &str) -> Result<Date, Fault> {
    let damaged = |error| snowhum_club::Fault::Damaged { what: format!("the night of {written}: {error}") };
    Ok(written.parse().map_err(damaged)?)
}

fn lede(yards: &[Told], day: Date, tongue: Tongue) -> Markup {
    let number = |wanted: Need| yards.iter().filter(|yard| yard.need(day) == wanted).count();
    let (needing, unknown) = (number(Need::First), number(Need::Unknown));
    let says = match (yards.len(), needing) {
        (0, _) => text::no_yards(),
        (all, 0) if unknown == all => text::help_unknown(unknown),
        (all, 0) if unknown > 0 => {
            Message::sentences([text::help_none_known(all - unknown), text::help_unknown(unknown)])
        }
        (all, 0) => text::help_none(all),
        (all, needing) => {
            let unknown = (unknown > 0).then(|| text::help_unknown(unknown));
            Message::sentences([text::help_needed(all, needing)].into_iter().chain(unknown))
        }
    };
    html! { p class="lede" { (marked(tongue, &says)) } p class="small" { (tongue.say(&text::read(day))) } }
}

/// Said where the last complete night is more than a week past.
fn old(day: Date, tongue: Tongue) -> Markup {
    let today = jiff::tz::TimeZone::system().to_datetime(jiff::Timestamp::now()).date();
    let days = today.duration_since(day).as_hours() / 24;
    html! { @if days as f64 >= WEEK { p class="caution" { (tongue.say(&text::old(days as f64))) } } }
}

fn by_need(mut yards: Vec<Told>, day: Date, tongue: Tongue) -> Markup {
    yards.sort_by(|a, b| {
        let key = |told: &Told| {
            let need = told.need(day);
            (need, told.by(need).is_none(), told.by(need))
        };
        let name = |told: &Told| (told.outlook.name.clone(), told.outlook.keeper.clone(), told.outlook.yard);
        key(a).cmp(&key(b)).then_with(|| name(a).cmp(&name(b)))
    });
    let of = |wanted: Need| -> Vec<&Told> { yards.iter().filter(|told| told.need(day) == wanted).collect() };
    let groups = [
        (Need::First, text::first as fn(f64) -> Message),
        (Need::Then, text::then),
        (Need::Unknown, text::unknown),
        (Need::Alone, text::alone),
    ];
    html! {
        @for (wanted, title) in groups {
            @let group = of(wanted);
            @if !group.is_empty() {
                h2 { (tongue.say(&title(group.len() as f64))) }
                ul class=(if wanted == Need::Alone { "sounds" } else { "needs" }) {
                    @for told in group { li { (one(told, wanted, tongue)) } }
                }
            }
        }
    }
}

fn one(told: &Told, wanted: Need, tongue: Tongue) -> Markup {
    let outlook = &told.outlook;
    html! {
        a href={ "/yard/" (outlook.yard) } { (outlook.name) } " " span class="small" { (keeper(told, tongue)) }
        @match (&told.answer, wanted) {
            (Err(why), _) => p class="caution" { (tongue.say(&text::failed(why.as_str()))) },
            (Ok(answer), Need::Unknown) => p { (tongue.say(&text::other_day(answer.first.as_of))) },
            (Ok(_), Need::Alone) => {}
            (Ok(_), _) => @for colony in told.needing(wanted) {
                p { strong { (colony.name) } " " (chip(&colony.verdict, tongue)) }
                p { (tongue.sentence(&colony.says())) }
            },
        }
    }
}

/// Whose it is, and whether it is made up.
pub(crate) fn keeper(told: &Told, tongue: Tongue) -> String {
    let is_invented = told.answer.as_ref().is_ok_and(|answer| answer.invented);
    let keeper = &told.outlook.keeper;
    if is_invented { tongue.say(&text::invented(keeper)) } else { keeper.clone() }
}
