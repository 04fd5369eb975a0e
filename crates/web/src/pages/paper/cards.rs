//! Hive cards, each with a code that opens the hive's page.

use maud::{Markup, PreEscaped, html};
use snowhum_apiary::Colony;
use snowhum_picture::qr;

use crate::gate::Reach;
use crate::view::View;

/// The cards; without an address they carry no code.
pub(crate) fn sheet(view: &View, address: Option<&str>) -> Markup {
    let is_here_alone = address.is_some_and(|address| Reach::this_machine().is_own(host(address)));
    html! {
        h1 class="no-print" { "Hive cards" }
        p class="no-print" { "Cut apart, laminate, and pin inside the roof or to the stand." }
        @if is_here_alone {
            p class="caution no-print" { "You opened this page on the machine that serves it, so these codes lead nowhere from a telephone. Serve the pages to the yard and print the cards from the address the telephone uses." }
        }
        div class="cards" { @for (at, colony) in view.apiary.colonies.iter().enumerate() { (card(view, at, colony, address)) } }
    }
}

fn card(view: &View, at: usize, colony: &Colony, address: Option<&str>) -> Markup {
    let hive = view.apiary.hive_of(colony);
    let page = address.map(|address| format!("{address}/hive/{}", colony.id.0));
    let code = page.as_ref().and_then(|page| qr(page, &format!("The page of {}", colony.name)));
    html! {
        section class="card" {
            div {
                h2 { (at + 1) ". " (colony.name) }
                p { (view.apiary.name) @if view.apiary.invented { " (invented)" } }
                @if let Some(hive) = hive { p { (hive.standard) ", boxes: " (hive.boxes.len()) } }
                @if let Some(number) = &view.apiary.registration { p { "Registration " (number) } }
                p { "Queen: " (colony.queen.year.map_or_else(|| "______".to_owned(), |year| year.to_string())) "  Marked: ______" }
            }
            @match (&page, &code) {
                (Some(page), Some(code)) => div { (PreEscaped(code)) p class="small" translate="no" { (page) } },
                _ => {},
            }
        }
    }
}

/// The host of an address.
fn host(address: &str) -> &str {
    address.split_once("://").map_or(address, |(_, host)| host)
}
