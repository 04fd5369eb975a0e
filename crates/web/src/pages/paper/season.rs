//! The season summary: each hive's winter on a few lines.

use maud::{Markup, html};
use snowhum_advice::season::{ColonySeason, season};
use snowhum_say::{Message, Tongue, in_hundred, paper_page as text};
use snowhum_units::Kilogram;

use crate::pages::apiary::chip;
use crate::view::View;
use crate::words::{bees, marked, ranged, time};

pub(crate) fn sheet(view: &View) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let Some(standing) = &view.standing else {
        return html! { h1 { (say(text::season())) } p { (say(text::no_estimate())) } };
    };
    let answer = season(&view.apiary, &standing.present.now);
    html! {
        h1 { (say(text::season_heading(&view.apiary.name))) }
        p { (say(text::season_days(answer.from, answer.until))) }
        @for colony in &answer.colonies { (told(view, colony)) }
    }
}

fn told(view: &View, colony: &ColonySeason) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let (bees, food, known) = (bees(colony.bees.p50), ranged(&colony.stores_kg), &colony.stores_known_by);
    let stood = text::stood(bees, food, colony.frames_of_bees, known, &colony.mites, &colony.queen);
    html! {
        section class="paper season" {
            h2 { (colony.name) " " (chip(view, &colony.verdict)) }
            p { (tongue.sentence(&colony.about)) }
            dl {
                dt { (say(text::autumn())) } dd { (say(stood)) }
                dt { (say(text::visits())) } dd { (colony.visits) "." }
                dt { (say(text::fed())) }
                dd {
                    @if colony.fed.is_empty() { (say(text::nothing())) }
                    @for given in &colony.fed { (say(text::given(Kilogram::new(given.mass_kg), &given.what))) " " }
                }
                dt { (say(text::treated())) }
                dd {
                    @if colony.treatments.is_empty() { (say(text::nothing())) }
                    @for given in &colony.treatments { (marked(tongue, &text::treatment(&given.class, given.on))) " " }
                }
            }
            @if !colony.months.is_empty() { (months(colony, tongue)) }
        }
    }
}

fn months(colony: &ColonySeason, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        table {
            caption { (say(text::months())) }
            thead { tr { @for head in [text::after(), text::alive(), text::food()] { th scope="col" { (say(head)) } } } }
            tbody {
                @for said in &colony.months {
                    tr {
                        th scope="row" { (time(said.on, tongue)) }
                        td { (say(in_hundred(said.alive))) }
                        td { (said.stores_kg.map_or_else(|| "–".to_owned(), |food| say(text::mass(Kilogram::new(food))))) }
                    }
                }
            }
        }
    }
}
