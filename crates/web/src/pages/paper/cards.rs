//! Hive cards, each with a code that opens the hive's page.

use maud::{Markup, PreEscaped, html};
use snowhum_apiary::Colony;
use snowhum_picture::qr;
use snowhum_say::{Message, paper_page as text};

use crate::gate::Reach;
use crate::view::View;

/// The cards; without an address they carry no code.
pub(crate) fn sheet(view: &View, address: Option<&str>) -> Markup {
    let is_here_alone = address.is_some_and(|address| Reach::this_machine().is_own(host(address)));
    let say = |message: Message| view.tongue().say(&message);
    html! {
        h1 class="no-print" { (say(text::cards())) }
        p class="no-print" { (say(text::cut())) }
        @if is_here_alone {
            p class="caution no-print" { (say(text::here_alone())) }
        }
        div class="cards" { @for (at, colony) in view.apiary.colonies.iter().enumerate() { (card(view, at, colony, address)) } }
    }
}

fn card(view: &View, at: usize, colony: &Colony, address: Option<&str>) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let hive = view.apiary.hive_of(colony);
    let yard = &view.apiary.name;
    let queen = colony.queen.year.map_or_else(|| "______".to_owned(), |year| year.to_string());
    let page = address.map(|address| format!("{address}/hive/{}", colony.id.0));
    let code = page.as_ref().and_then(|page| qr(page, &say(text::code(&colony.name))));
    html! {
        section class="card" {
            div {
                h2 { (at + 1) ". " (colony.name) }
                p { @if view.apiary.invented { (say(text::card_invented(yard))) } @else { (yard) } }
                @if let Some(hive) = hive { p { (say(text::boxes(hive.boxes.len(), &hive.standard))) } }
                @if let Some(number) = &view.apiary.registration { p { (say(text::registration(number))) } }
                p { (say(text::queen(queen))) }
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
