//! Before a hive is lifted or opened: its own boxes as loads, ice, stings.

use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::lifting::{Load, boxes};
use snowhum_say::{Message, hive_page as text};
use snowhum_units::{Kilogram, Metre};

use crate::view::View;
use crate::words::{cautions, marked};

pub(crate) fn before_lifting(view: &View, at: usize) -> Markup {
    let tongue = view.tongue();
    let says = |message: Message| tongue.say(&message);
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
                @let (hands, load) = (Metre::new(lift.hands_m), Kilogram::new(lift.load_kg));
                li { (says(text::lift(hands, load, place(lift.place, lifts.len()), lift.says(), &lift.size))) }
            }
        }
        p class="small" { (says(text::reckoned())) " " @if view.visitor.may_open("/words") { (marked(tongue, &text::which_rule())) } }
        details {
            summary { (says(text::hazards())) }
            (cautions(tongue, &[Hazard::Lifting, Hazard::Ice, Hazard::Stings]))
        }
    }
}

fn place(place: usize, of: usize) -> Message {
    match place {
        _ if of == 1 => text::only_box(),
        1 => text::lowest(),
        place if place == of => text::top(),
        place => text::from_below(place),
    }
}
