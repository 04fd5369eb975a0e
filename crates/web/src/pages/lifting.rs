//! Before a hive is lifted or opened: its own boxes as loads, ice, stings.

use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::lifting::{Load, boxes};
use snowhum_units::{Kilogram, Metre};

use crate::view::View;
use crate::words::capital;

pub(crate) fn before_lifting(view: &View, at: usize) -> Markup {
    let system = view.settings.system;
    let Some(housed) = view.standing.as_ref().and_then(|standing| standing.present.housed.get(at)) else {
        return html! {};
    };
    let now = view.colony_now(at);
    let told = now.and_then(|now| now.stores_kg.total.as_ref()).map(|total| Kilogram::new(total.p50));
    let stores = told.unwrap_or(housed.colony.stores.total.p50);
    let bees = now.and_then(|now| now.bees.as_ref()).map_or(housed.colony.bees.p50, |bees| bees.p50);
    let Ok(lifts) = Load::of(stores, bees).map(|load| boxes(&housed.hive, load)) else { return html! {} };
    html! {
        ul {
            @for lift in &lifts {
                li {
                    (capital(&lift.size)) ", " (place(lift.place, lifts.len())) ": "
                    (Kilogram::new(lift.load_kg).show(system, 0)) " from "
                    (Metre::new(lift.hands_m).show(system, 0)) ", " (view.tongue().say(&lift.says())) "."
                }
            }
        }
        p class="small" { "Reckoned with the food hanging from the top down and the bees in the lowest box; straight, close, two hands. " @if view.visitor.may_open("/words") { a href="/words#lifting" { "By which rule" } "." } }
        details {
            summary { "Take care: lifting, ice, stings" }
            @for hazard in [Hazard::Lifting, Hazard::Ice, Hazard::Stings] { p class="caution" { (hazard.says()) } }
        }
    }
}

fn place(place: usize, of: usize) -> String {
    match place {
        _ if of == 1 => "the only box".to_owned(),
        1 => "the lowest".to_owned(),
        place if place == of => "the top one".to_owned(),
        place => format!("number {place} from below"),
    }
}
