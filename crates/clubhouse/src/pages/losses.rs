//! What members lost together, winter by winter and by region.

use axum::extract::State;
use axum::response::{IntoResponse, Response};
use maud::{Markup, html};
use snowhum_advice::sums::losses::ClubLosses;
use snowhum_club::Cell;
use snowhum_figures::club::{CELL_LATITUDE, CELL_LONGITUDE, LEAST_MEMBERS, LEAST_YARDS};
use snowhum_say::{Message, Tongue, club_page as text, losses_page};
use snowhum_web::house::marked;

use crate::app::Clubhouse;
use crate::fault::Fault;
use crate::frame::{Place, page};
use crate::sums::{self, Winter, winters};
use crate::visit::Visit;

pub(crate) async fn show(State(house): State<Clubhouse>, visit: Visit) -> Response {
    let tongue = visit.tongue;
    shown(&house, visit).await.map_or_else(|fault| fault.told(tongue), IntoResponse::into_response)
}

async fn shown(house: &Clubhouse, visit: Visit) -> Result<Markup, Fault> {
    let counted = house.club.counted_winters(visit.member.id).await?;
    let winters = winters(&counted).map_err(|_| Fault::Cut)?;
    let say = |message: Message| visit.tongue.say(&message);
    let heading = say(text::losses_heading());
    // The same is to be minded of every winter: it is said once, of the latest.
    let latest = winters.iter().find_map(|winter| winter.all.as_ref());
    let body = html! {
        h1 { (heading) }
        p { (marked(visit.tongue, &text::of_own())) }
        @if winters.is_empty() { p class="lede" { (say(text::none_counted())) } }
        @for winter in &winters { (one(winter, visit.tongue)) }
        @if let Some(latest) = latest {
            @if winters.iter().any(|winter| !winter.places.is_empty()) {
                p class="small" { (say(text::cells_what(CELL_LATITUDE, CELL_LONGITUDE, LEAST_MEMBERS, LEAST_YARDS))) }
            }
            @for said in latest.say.iter().chain([&latest.definition]) { p class="small" { (visit.tongue.sentence(said)) } }
        }
    };
    Ok(page(&visit, Place::Losses, &heading, &body))
}

fn one(winter: &Winter, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let name = format!("{}–{:02}", winter.year, (winter.year + 1).rem_euclid(100));
    html! {
        section {
            h2 { (say(text::winter(name.as_str()))) }
            @match winter.all.as_ref().and_then(|all| all.club.as_ref()) {
                None => p { (say(text::too_few(LEAST_MEMBERS, LEAST_YARDS))) },
                Some(club) => {
                    p { (marked(tongue, &pooled(club))) }
                    @if !winter.places.is_empty() { (places(&winter.places, tongue)) }
                }
            }
        }
    }
}

/// All colonies of all members together, and the mean of the members.
fn pooled(club: &ClubLosses) -> Message {
    let of = club.overall_interval;
    let [low, high, mean, rate] = [of.low, of.high, club.average_rate, club.overall_rate].map(|share| 100.0 * share);
    let lost = losses_page::club_lost(club.at_risk, high, club.lost, low, club.members, &club.method, rate);
    Message::sentences([lost, losses_page::club_mean(mean)])
}

fn places(places: &[sums::Place], tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(text::regions())) {
            table {
                thead { tr { @for head in [text::region(), text::yards(), text::lost(), text::rate()] { th scope="col" { (say(head)) } } } }
                tbody { @for place in places { tr {
                    th scope="row" { (say(place.cell.map_or_else(text::elsewhere, region))) }
                    td { (say(text::number(place.yards as f64))) }
                    td { (say(text::lost_of(place.losses.at_risk, place.losses.lost))) }
                    td { (say(rate(&place.losses))) }
                } } }
            }
        }
    }
}

fn rate(club: &ClubLosses) -> Message {
    let of = club.overall_interval;
    let [low, high, rate] = [of.low, of.high, club.overall_rate].map(|share| 100.0 * share);
    text::rate_of(high, low, rate)
}

/// A cell by its edges, the one nearer to the equator and to Greenwich first.
fn region(cell: Cell) -> Message {
    let edges = |index: i32, size: f64| {
        let (a, b) = ((f64::from(index) * size).abs(), ((f64::from(index) + 1.0) * size).abs());
        (a.min(b), a.max(b))
    };
    let ((from_north, to_north), (from_east, to_east)) =
        (edges(cell.north, CELL_LATITUDE), edges(cell.east, CELL_LONGITUDE));
    text::cell(from_east, from_north, cell.east >= 0, cell.north >= 0, to_east, to_north)
}
