//! The frame of every page.

use maud::{DOCTYPE, Markup, PreEscaped, html};
use snowhum_advice::words::day;

use crate::frame;
use crate::gate::Visitor;
use crate::labels::labelled;
use crate::spoken::{own_words, spoken};
use crate::view::View;

/// The pages a keeper walks between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Place {
    Yard,
    Hive,
    Round,
    Flight,
    Jobs,
    Fit,
    Setup,
    Feed,
    Mites,
    Treatments,
    Spring,
    Dead,
    Losses,
    Normal,
    Inside,
    Tell,
    Hives,
    Paper,
    Words,
    Elsewhere,
}

/// A page with its address and its name.
type Way = (Place, &'static str, &'static str);

/// What a keeper opens every week, in sight on every page.
const OFTEN: &[Way] = &[(Place::Yard, "/", "Yard"), (Place::Round, "/round", "Round"), (Place::Jobs, "/jobs", "Jobs")];

/// What a keeper opens once a season, one tap away.
const SELDOM: &[Way] = &[
    (Place::Flight, "/flight", "Flight day"),
    (Place::Fit, "/fit", "Fit for winter?"),
    (Place::Setup, "/setup", "Winter set-up"),
    (Place::Feed, "/feed", "Feeding"),
    (Place::Mites, "/mites", "Mites"),
    (Place::Treatments, "/treatments", "Treatment record"),
    (Place::Spring, "/spring", "First look in spring"),
    (Place::Dead, "/dead", "Dead colony"),
    (Place::Losses, "/losses", "Losses and lessons"),
    (Place::Normal, "/normal", "Is this normal?"),
    (Place::Inside, "/inside", "Inside the cluster"),
    (Place::Tell, "/tell", "The winter told"),
    (Place::Hives, "/hives", "Hives"),
    (Place::Paper, "/paper", "On paper"),
    (Place::Words, "/words", "Words"),
];

/// How long a browser without scripts shows a page whose answer is on its way before it asks again, s.
const RENEWED_AFTER_S: u8 = 3;

impl Place {
    /// Whether a page of it asks again by itself; one on which a keeper writes at length does not.
    const fn renews(self) -> bool {
        !matches!(self, Self::Round | Self::Dead | Self::Hives | Self::Elsewhere)
    }
}

/// A whole page.
pub(crate) fn page(view: &View, place: Place, title: &str, body: &Markup) -> Markup {
    let renews = view.waits() && place.renews();
    let (heading, rest) = headed(body);
    let page = html! {
        (DOCTYPE)
        html lang=(view.settings.speech.language()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                @if renews { noscript { meta http-equiv="refresh" content=(RENEWED_AFTER_S); } }
                title { (title) " · " (view.apiary.name) }
                link rel="stylesheet" href="/snowhum.css";
                link rel="stylesheet" href="/pictures.css";
                link rel="manifest" href="/manifest.webmanifest";
                link rel="icon" href="/icon.svg" type="image/svg+xml";
                @if view.visitor.may_write() { script type="module" src="/round.js" {} }
                @if renews { script type="module" src="/renew.js" {} }
            }
            body {
                a class="skip" href="#main" { "To the page itself" }
                (head(view, place))
                main id="main" tabindex="-1" class=[view.is_behind.then_some("old")] data-waits=[renews.then_some("")] {
                    (frame::band(view, renews))
                    (heading)
                    (invented(view, place))
                    (new_autumn(view, place))
                    (rest)
                }
                (foot(view))
            }
        }
    };
    in_own_words(view, page)
}

/// A body in two: its heading, which every page shows first, and what stands under it.
fn headed(body: &Markup) -> (PreEscaped<&str>, PreEscaped<&str>) {
    const END: &str = "</h1>";
    let end = body.0.find(END).map_or(0, |at| at + END.len());
    let (heading, rest) = body.0.split_at(end);
    (PreEscaped(heading), PreEscaped(rest))
}

/// The page in the keeper's words, whatever the keeper wrote left as it is, and its tables fit for a narrow phone.
pub(crate) fn in_own_words(view: &View, page: Markup) -> Markup {
    let speech = view.settings.speech;
    PreEscaped(labelled(&spoken(&page.into_string(), speech, &own_words(&view.apiary, speech))))
}

/// What is a tap down, and open on paper; nothing where nothing is.
pub(crate) fn folded(title: &str, body: &Markup) -> Markup {
    html! { @if !body.0.is_empty() { details class="folded" { summary { (title) } (body) } } }
}

/// The yard's name and the ways.
fn head(view: &View, place: Place) -> Markup {
    html! {
        header {
            p class="mast" {
                a href="/" { (view.apiary.name) }
                span { "Snowhum, a winter reckoned" }
            }
            nav aria-label="Pages" {
                @for way in OFTEN { (link(view, way, place)) }
                details {
                    summary {
                        "Menu"
                        @for way in SELDOM.iter().filter(|way| way.0 == place) { strong { ": " (way.2) } }
                    }
                    @for way in SELDOM { (link(view, way, place)) }
                }
            }
        }
    }
}

fn link(view: &View, (way, address, name): &Way, place: Place) -> Markup {
    html! {
        @if view.visitor.may_open(address) { a href=(address) aria-current=[(*way == place).then_some("page")] { (name) } }
    }
}

/// From when the estimate is, what waits in the phone, and further ways.
fn foot(view: &View) -> Markup {
    html! {
        footer {
            (age(view))
            p id="waiting" role="status" hidden {}
            p class="small ways" {
                a href="/source" { "Sources" }
                @if view.visitor.may_write() {
                    a href="/settings" { "Settings" }
                    a href="/api" { "For programs" }
                }
            }
            @if view.visitor != Visitor::Owner { form method="post" action="/sign-out" { button { "Sign out" } } }
            p class="small" {
                "Chances stand for hives like these with these signs. The label, local law, the bee inspector and "
                "the vet come before any word here."
            }
        }
    }
}

/// From when the estimate is.
pub(crate) fn age(view: &View) -> Markup {
    html! {
        div class="age" {
            @if let Some(standing) = &view.standing {
                @let at = standing.at.to_zoned_datetime(view.now.time_zone().clone());
                @let of = standing.present.now.as_of;
                p class="small" {
                    "Estimate for " strong { (day(of)) " " (of.year()) } ", computed at "
                    time datetime=(standing.at.to_string()) { (at.strftime("%H:%M:%S").to_string()) } ", on "
                    (standing.present.now.weather.source) "."
                    @if view.is_behind { " " em { "Something newer is stored; the next estimate is being computed." } }
                }
                @for far in &standing.present.now.weather.far { p class="small caution" { (view.tongue().say(&far.says)) } }
            } @else if view.trouble.is_none() {
                p { em { "The first estimate is being computed. This page looks again by itself." } }
            }
            @if let (Some(_), Some(trouble)) = (&view.standing, &view.trouble) {
                p class="caution" { strong { "No newer estimate: " } (trouble) }
            }
        }
    }
}

/// The one step where the yard's counts are of a winter that is over.
fn new_autumn(view: &View, place: Place) -> Markup {
    let year = |day| snowhum_apiary::winter_year(day, view.apiary.site.latitude);
    let is_over = year(view.now.date()) > year(view.apiary.as_of) && !view.apiary.invented;
    html! {
        @if is_over && place != Place::Losses && view.visitor.may_write() {
            p class="caution" {
                "These colonies were counted on " (view.apiary.as_of.strftime("%-d %B %Y").to_string())
                ", for a winter that is over. " a href="/season" { "Begin the new autumn" } "."
            }
        }
    }
}

/// Said on every page of a yard that is made up, with the days it can be looked at. On the round no other day is offered:
/// what was tapped is of the one it was opened on.
fn invented(view: &View, place: Place) -> Markup {
    const DAYS: [(&str, &str); 3] = [("2025-10-05", "5 Oct"), ("2026-02-07", "7 Feb"), ("2026-04-10", "10 Apr")];
    html! {
        @if view.apiary.invented {
            div class="invented" {
                span { "An invented yard" span class="for-room" { ", to try things on" } }
                @if view.visitor.may_write() && place != Place::Round { form method="post" action="/day" {
                    span class="unseen" { "Look at it in winter 2025–26, on" }
                    @for (value, words) in DAYS {
                        @let is_shown = view.now.date().to_string() == value;
                        button name="day" value=(value) aria-pressed=[is_shown.then_some("true")] { (words) }
                    }
                } }
            }
        }
    }
}
