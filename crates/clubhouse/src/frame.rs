//! The frame of every page.

use maud::{DOCTYPE, Markup, PreEscaped, html};
use snowhum_say::{Message, Text, Tongue, club_page as text, shared_page};
use snowhum_web::house::labelled;

use crate::spoken::LANGUAGES;
use crate::visit::Visit;

/// The pages a member walks between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Place {
    Help,
    Yard,
    Sharing,
    Losses,
    Night,
}

type Way = (Place, &'static str, Text);

/// In sight on every page.
const OFTEN: Way = (Place::Help, "/", text::week);
/// One tap away.
const SELDOM: [Way; 3] = [
    (Place::Sharing, "/sharing", text::sharing),
    (Place::Losses, "/losses", text::losses),
    (Place::Night, "/night", text::night),
];

/// A whole page of who is signed in.
pub(crate) fn page(visit: &Visit, place: Place, title: &str, body: &Markup) -> Markup {
    let tongue = visit.tongue;
    let say = |message: Message| tongue.say(&message);
    let inner = html! {
        a class="skip" href="#main" { (say(shared_page::skip())) }
        header {
            p class="mast" { a href="/" { (visit.member.club) } span { (say(shared_page::tagline())) } }
            nav aria-label=(say(shared_page::pages())) {
                (link(OFTEN, place, tongue))
                details {
                    summary {
                        (say(shared_page::menu()))
                        @for way in SELDOM.iter().filter(|way| way.0 == place) { strong { ": " (say(way.2())) } }
                    }
                    @for way in SELDOM { (link(way, place, tongue)) }
                }
            }
        }
        main id="main" tabindex="-1" { (body) }
        footer {
            p class="small" { (say(text::who(&visit.member.name))) }
            form method="post" action="/sign-out" { button { (say(shared_page::sign_out())) } }
            (languages(tongue))
            @if !tongue.language().is_read() { p class="small" { (say(shared_page::unread())) } }
            p class="small" { (say(shared_page::chances())) }
        }
    };
    whole(&format!("{title} · {}", visit.member.club), &inner, tongue)
}

fn link((way, address, name): Way, place: Place, tongue: Tongue) -> Markup {
    html! { a href=(address) aria-current=[(way == place).then_some("page")] { (tongue.say(&name())) } }
}

/// A page that says nothing of the club.
pub(crate) fn bare(title: &str, body: &Markup, tongue: Tongue) -> Markup {
    let inner = html! { main { (body) } footer { (languages(tongue)) } };
    whole(&format!("{title} · Snowhum"), &inner, tongue)
}

fn whole(title: &str, inner: &Markup, tongue: Tongue) -> Markup {
    let page = html! {
        (DOCTYPE)
        html lang=(tongue.language().tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) }
                link rel="stylesheet" href="/snowhum.css";
                link rel="icon" href="/icon.svg" type="image/svg+xml";
            }
            body { (inner) }
        }
    };
    PreEscaped(labelled(&page.into_string()))
}

fn languages(tongue: Tongue) -> Markup {
    html! {
        form class="taps no-print" method="post" action="/language" aria-label=(tongue.say(&text::language())) {
            @for (language, name) in LANGUAGES {
                button name="language" value=(language.tag()) lang=(language.tag())
                    aria-pressed=[(language == tongue.language()).then_some("true")] { (name) }
            }
        }
    }
}
