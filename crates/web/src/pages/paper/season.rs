//! The season summary: each hive's winter on a few lines.

use maud::{Markup, html};
use snowhum_advice::season::{ColonySeason, season};
use snowhum_advice::words::{day, in_hundred};
use snowhum_units::System;

use crate::pages::apiary::chip;
use crate::view::View;
use crate::words::{bees, date, mass, masses};

pub(crate) fn sheet(view: &View) -> Markup {
    let Some(standing) = &view.standing else {
        return html! { h1 { "Season summary" } p { "The estimate is on its way; print this page once it is there." } };
    };
    let answer = season(&view.apiary, &standing.present.now);
    html! {
        h1 { (view.apiary.name) ": the season" }
        p { "From " (day(answer.from)) " " (answer.from.year()) " to " (day(answer.until)) " " (answer.until.year()) "." }
        @for colony in &answer.colonies { (told(view, colony)) }
    }
}

fn told(view: &View, colony: &ColonySeason) -> Markup {
    let (system, tongue) = (view.settings.system, view.tongue());
    html! {
        section class="paper season" {
            h2 { (colony.name) " " (chip(view, &colony.verdict)) }
            p { (tongue.sentence(&colony.about)) }
            dl {
                dt { "In autumn" }
                dd {
                    "about " (bees(colony.bees.p50)) " bees on " (format!("{:.0}", colony.frames_of_bees)) " frames; food "
                    (masses(&colony.stores_kg, system)) ", " (tongue.say(&colony.stores_known_by)) "; mites " (tongue.say(&colony.mites))
                    "; queen " (tongue.say(&colony.queen)) "."
                }
                dt { "Visits noted" } dd { (colony.visits) "." }
                dt { "Fed" }
                dd {
                    @if colony.fed.is_empty() { "Nothing noted." }
                    @for given in &colony.fed { (mass(given.mass_kg, system)) " of " (tongue.say(&given.what)) ". " }
                }
                dt { "Treated" }
                dd {
                    @if colony.treatments.is_empty() { "Nothing noted." }
                    @for given in &colony.treatments { (date(given.on)) ": " (view.tongue().say(&given.class)) ". " }
                }
            }
            @if !colony.months.is_empty() { (months(colony, system)) }
        }
    }
}

fn months(colony: &ColonySeason, system: System) -> Markup {
    html! {
        table {
            caption { "What the estimate said after the last visit of each month" }
            thead { tr { th scope="col" { "After" } th scope="col" { "Of 100 such hives alive" } th scope="col" { "Food, if alive" } } }
            tbody {
                @for said in &colony.months {
                    tr {
                        th scope="row" { (date(said.on)) }
                        td { (in_hundred(said.alive)) }
                        td { (said.stores_kg.map_or_else(|| "–".to_owned(), |kg| mass(kg, system))) }
                    }
                }
            }
        }
    }
}
