//! The frame of every page.

use jiff::civil::{Date, date};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use snowhum_say::{Message, Text, Tongue, round_page, shared_page as text};

use crate::frame;
use crate::gate::Visitor;
use crate::labels::labelled;
use crate::reckon::Standing;
use crate::view::View;
use crate::words::marked;

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
type Way = (Place, &'static str, Text);

/// What a keeper opens every week, in sight on every page.
const OFTEN: &[Way] =
    &[(Place::Yard, "/", text::yard), (Place::Round, "/round", text::round), (Place::Jobs, "/jobs", text::jobs)];

/// What a keeper opens once a season, one tap away.
const SELDOM: &[Way] = &[
    (Place::Flight, "/flight", text::flight),
    (Place::Fit, "/fit", text::fit),
    (Place::Setup, "/setup", text::setup),
    (Place::Feed, "/feed", text::feed),
    (Place::Mites, "/mites", text::mites),
    (Place::Treatments, "/treatments", text::treatments),
    (Place::Spring, "/spring", text::spring),
    (Place::Dead, "/dead", text::dead),
    (Place::Losses, "/losses", text::losses),
    (Place::Normal, "/normal", text::normal),
    (Place::Inside, "/inside", text::inside),
    (Place::Tell, "/tell", text::tell),
    (Place::Hives, "/hives", text::hives),
    (Place::Paper, "/paper", text::paper),
    (Place::Words, "/words", text::words),
];

/// What the page at an address is called.
pub(crate) fn name_of(address: &str) -> Option<Text> {
    OFTEN.iter().chain(SELDOM).find(|way| way.1 == address).map(|way| way.2)
}

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
        html lang=(view.settings.language.tag()) {
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
                a class="skip" href="#main" { (view.tongue().say(&text::skip())) }
                (head(view, place))
                main id="main" tabindex="-1" class=[view.is_behind.then_some("old")] data-waits=[renews.then(|| view.tongue().say(&text::show_new()))] {
                    (frame::band(view, renews))
                    (heading)
                    (invented(view, place))
                    (new_autumn(view, place))
                    (rest)
                }
                (foot(view))
                @if view.visitor.may_write() { (of_script(view.tongue(), &waiting())) }
            }
        }
    };
    fit_for_a_phone(page)
}

/// What the script of the round says on every page, while something waits in the phone.
fn waiting() -> [(&'static str, Message); 5] {
    [
        ("waiting", round_page::waiting("{hives}", "{number}")),
        ("sign-in", round_page::sign_in()),
        ("refused", round_page::refused("{hive}", "{why}")),
        ("declined", round_page::declined()),
        ("put-back", round_page::put_back("{entries}")),
    ]
}

/// Texts that a script says, each by its name; what stands in braces it fills in.
pub(crate) fn of_script(tongue: Tongue, texts: &[(&str, Message)]) -> Markup {
    html! {
        template class="words" { @for (name, text) in texts { span data-name=(name) { (tongue.say(text)) } } }
    }
}

/// A body in two: its heading, which every page shows first, and what stands under it.
fn headed(body: &Markup) -> (PreEscaped<&str>, PreEscaped<&str>) {
    const END: &str = "</h1>";
    let end = body.0.find(END).map_or(0, |at| at + END.len());
    let (heading, rest) = body.0.split_at(end);
    (PreEscaped(heading), PreEscaped(rest))
}

/// The page with its tables fit for a narrow phone.
pub(crate) fn fit_for_a_phone(page: Markup) -> Markup {
    PreEscaped(labelled(&page.into_string()))
}

/// What is a tap down, and open on paper; nothing where nothing is.
pub(crate) fn folded(title: &str, body: &Markup) -> Markup {
    html! { @if !body.0.is_empty() { details class="folded" { summary { (title) } (body) } } }
}

/// The yard's name and the ways.
fn head(view: &View, place: Place) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        header {
            p class="mast" {
                a href="/" { (view.apiary.name) }
                span { (say(text::tagline())) }
            }
            nav aria-label=(say(text::pages())) {
                @for way in OFTEN { (link(view, way, place)) }
                details {
                    summary {
                        (say(text::menu()))
                        @for way in SELDOM.iter().filter(|way| way.0 == place) { strong { ": " (say(way.2())) } }
                    }
                    @for way in SELDOM { (link(view, way, place)) }
                }
            }
        }
    }
}

fn link(view: &View, (way, address, name): &Way, place: Place) -> Markup {
    html! {
        @if view.visitor.may_open(address) {
            a href=(address) aria-current=[(*way == place).then_some("page")] { (view.tongue().say(&name())) }
        }
    }
}

/// From when the estimate is, what waits in the phone, and further ways.
fn foot(view: &View) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        footer {
            (age(view))
            p id="waiting" role="status" hidden {}
            p class="small ways" {
                a href="/source" { (say(text::sources())) }
                @if view.visitor.may_write() {
                    a href="/settings" { (say(text::settings())) }
                    a href="/api" { (say(text::programs())) }
                }
            }
            @if view.visitor != Visitor::Owner {
                form method="post" action="/sign-out" { button { (say(text::sign_out())) } }
            }
            @if !view.settings.language.is_read() { p class="small" { (say(text::unread())) } }
            p class="small" { (say(text::chances())) }
        }
    }
}

/// From when the estimate is.
pub(crate) fn age(view: &View) -> Markup {
    let tongue = view.tongue();
    html! {
        div class="age" {
            @if let Some(standing) = &view.standing {
                p class="small" {
                    (marked(tongue, &estimate(view, standing)))
                    @if view.is_behind { " " em { (tongue.say(&text::newer())) } }
                }
                @for far in &standing.present.now.weather.far { p class="small caution" { (tongue.say(&far.says)) } }
            } @else if view.trouble.is_none() {
                p { em { (tongue.say(&text::first_estimate())) } }
            }
            @if let (Some(_), Some(trouble)) = (&view.standing, &view.trouble) {
                p class="caution" { (marked(tongue, &text::trouble(true, trouble))) }
            }
        }
    }
}

fn estimate(view: &View, standing: &Standing) -> Message {
    let clock = standing.at.to_zoned_datetime(view.now.time_zone().clone()).strftime("%H:%M:%S").to_string();
    let now = &standing.present.now;
    text::estimate(clock, standing.at.to_string(), now.as_of, &now.weather.source)
}

/// The one step where the yard's counts are of a winter that is over.
fn new_autumn(view: &View, place: Place) -> Markup {
    let year = |day| snowhum_apiary::winter_year(day, view.apiary.site.latitude);
    let is_over = year(view.now.date()) > year(view.apiary.as_of) && !view.apiary.invented;
    html! {
        @if is_over && place != Place::Losses && view.visitor.may_write() {
            p class="caution" { (marked(view.tongue(), &text::over(view.apiary.as_of))) }
        }
    }
}

/// Said on every page of a yard that is made up, with the days it can be looked at. On the round no other day is offered:
/// what was tapped is of the one it was opened on.
fn invented(view: &View, place: Place) -> Markup {
    const DAYS: [Date; 3] = [date(2025, 10, 5), date(2026, 2, 7), date(2026, 4, 10)];
    let tongue = view.tongue();
    html! {
        @if view.apiary.invented {
            div class="invented" {
                span { (marked(tongue, &text::invented())) }
                @if view.visitor.may_write() && place != Place::Round { form method="post" action="/day" {
                    span class="unseen" { (tongue.say(&text::look_at())) }
                    @for on in DAYS {
                        button name="day" value=(on) aria-pressed=[(view.now.date() == on).then_some("true")] {
                            (tongue.say(&text::short_day(on)))
                        }
                    }
                } }
            }
        }
    }
}
