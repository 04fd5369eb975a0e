//! The yard: how are they all, and what first?

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::verdict::{ColonyFirst, ColonyVerdict, Urgency};
use snowhum_advice::words::{day, hives, in_hundred};
use snowhum_say::Tongue;

use super::done;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::view::{Asked, View};
use crate::words::{date, weekday};

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(drawn(&app, &view, &asked))
}

/// A function of its own in the machine's code too, so that what a page costs can be counted.
#[inline(never)]
fn drawn(app: &App, view: &View, asked: &Asked) -> Markup {
    let body = html! {
        h1 { "The yard on " (day(view.shown_day())) }
        @if view.apiary.invented { (first_visit(view)) }
        @match asked.get("begun").filter(|_| !view.apiary.invented) {
            Some("autumn") => p class="kept" role="status" { strong { "The new autumn is begun." } " Last winter is kept under " a href="/losses" { "losses and lessons" } "." },
            Some(_) => (begun(app)),
            None => {}
        }
        @match &view.standing {
            Some(standing) => {
                (first(&standing.present.now))
                @if let Some(says) = standing.present.now.looks_to.says() { p { (view.tongue().say(&says)) } }
                (by_need(view, &standing.present.now))
                (ahead(view, &standing.present.now))
                p class="ways no-print" { a href="/tell" { "The winter told" } a href="/hives" { "Add or change a hive" } }
            }
            None => (plain_list(view)),
        }
    };
    page(view, Place::Yard, "The yard", &body)
}

/// What this is and for whom, beside the example.
fn first_visit(view: &View) -> Markup {
    html! {
        p class="first-visit no-print" {
            "The lid is shut until spring. See what goes on beneath it."
            @if view.visitor.may_write() { " " a href="/begin" { "Begin your own yard" } "." }
            @if view.visitor.may_open("/normal") { " Dead bees on the snow? " a href="/normal" { "Is this normal?" } }
        }
    }
}

/// Said once, after a yard was begun.
fn begun(app: &App) -> Markup {
    html! {
        p class="kept" role="status" {
            strong { "Your yard is begun." }
            @match app.store().path() {
                Some(path) => { " It is kept in " code { (path.display()) } "; " code { "snowhum serve" } " opens it again." }
                None => " It is in memory alone and gone when the program ends; save the file to keep it.",
            }
            " Only words are known of bees and food, so every range is wide: count and weigh to narrow it."
        }
    }
}

/// Who needs the keeper, in one sentence.
fn first(now: &NowAnswer) -> Markup {
    let names = |of: &dyn Fn(&ColonyVerdict) -> bool| -> Vec<&str> {
        now.colonies.iter().filter(|colony| of(&colony.verdict)).map(|colony| colony.name.as_str()).collect()
    };
    let acting = names(&ColonyVerdict::is_urgent);
    let watched = names(&|verdict| matches!(verdict.word, Urgency::By | Urgency::LookInside));
    html! {
        p class="lede" {
            @if acting.is_empty() && watched.is_empty() {
                "Nothing calls for you. Leave the lids shut."
            } @else if acting.is_empty() {
                "Nothing needs doing this week. Next are " (listed(&watched)) "."
            } @else {
                strong { (listed(&acting)) } (if acting.len() == 1 { " needs" } else { " need" }) " you first."
                @if !watched.is_empty() { " After that " (listed(&watched)) "." }
            }
        }
    }
}

/// Hives up to which each that needs the keeper has a card of its own: five screens of a phone hold thirty.
const MANY: usize = 8;

/// The hives that need the keeper first, then those to watch, then the rest, a line each.
fn by_need(view: &View, now: &NowAnswer) -> Markup {
    let need = |verdict: &ColonyVerdict| match verdict.word {
        Urgency::Today | Urgency::ThisWeek => 0,
        Urgency::By | Urgency::LookInside => 1,
        Urgency::LeaveAlone | Urgency::Lost => 2,
    };
    let group =
        |wanted: usize| now.colonies.iter().enumerate().filter(move |(_, colony)| need(&colony.verdict) == wanted);
    let is_long = now.colonies.len() > MANY;
    html! {
        @for (wanted, title) in [(0, "First"), (1, "Then")] {
            @if group(wanted).next().is_some() {
                h2 { (title) ": " (group(wanted).count()) }
                ol class=(if is_long { "needs" } else { "hives" }) {
                    @for (at, colony) in group(wanted) {
                        @if is_long { (needing(view, at, colony)) } @else { (card(view, at, colony, now)) }
                    }
                }
            }
        }
        @if group(2).next().is_some() {
            h2 { "To be left alone, or gone: " (group(2).count()) }
            ul class="sounds" {
                @for (at, colony) in group(2) {
                    li {
                        a href={ "/hive/" (id_of(view, at)) } { (colony.name) } " " (chip(view, &colony.verdict))
                        @if !is_long || colony.is_gone() { " " (view.tongue().sentence(&colony.about)) }
                    }
                }
            }
        }
    }
}

fn needing(view: &View, at: usize, colony: &ColonyNow) -> Markup {
    html! {
        li {
            a href={ "/hive/" (id_of(view, at)) } { (colony.name) } " " (chip(view, &colony.verdict))
            p { (view.tongue().sentence(&colony.about)) }
        }
    }
}

fn id_of(view: &View, at: usize) -> String {
    view.apiary.colonies.get(at).map(|colony| colony.id.0.to_string()).unwrap_or_default()
}

/// Names that are told in a sentence; of more the first, and how many.
const TOLD: usize = 4;

fn listed(names: &[&str]) -> String {
    match names {
        [first @ .., _] if first.len() >= TOLD => {
            format!("{} and {} more", names[..TOLD].join(", "), names.len() - TOLD)
        }
        [] => "none".to_owned(),
        [one] => (*one).to_owned(),
        [rest @ .., last] => format!("{} and {last}", rest.join(", ")),
    }
}

/// A colony's verdict as a chip, dated where it is old; its shape says it without colour.
pub(crate) fn chip(view: &View, verdict: &ColonyVerdict) -> Markup {
    let class = match verdict.word {
        Urgency::LeaveAlone | Urgency::Lost => "word sound",
        Urgency::By | Urgency::LookInside => "word watch",
        Urgency::Today | Urgency::ThisWeek => "word act",
    };
    html! { span class=(class) { (view.tongue().say(&verdict.words())) @if let Some(dated) = frame::dated(view) { ", " (view.tongue().say(&dated)) } } }
}

fn card(view: &View, at: usize, colony: &ColonyNow, now: &NowAnswer) -> Markup {
    let (tongue, to) = (view.tongue(), now.looks_to);
    let id = id_of(view, at);
    html! {
        li class="hive" {
            a class="small-hive" href={ "/hive/" (id) } aria-hidden="true" tabindex="-1" {
                @if let Some(picture) = draw::thumbnail(view, at) { (picture) }
            }
            div {
                h3 { a href={ "/hive/" (id) } { (colony.name) } " " (chip(view, &colony.verdict)) }
                p class="about" { (tongue.sentence(&colony.about)) }
                (worth(now, at, tongue))
                @if let Some(own) = view.apiary.colonies.get(at) { (done::button(view, at, own)) }
                @for beside in &colony.beside { p { span class="label" { "Mind" } " " (tongue.sentence(beside)) } }
                @if !colony.is_gone() {
                    p { span class="label" { "Food" } " " (tongue.sentence(&colony.food_lasts(to))) }
                    @if let Some(next) = next(now, at, tongue) { p { span class="label" { "Next" } " " (next) } }
                }
            }
        }
    }
}

/// What doing all of it changes; nothing where nothing is to be done.
fn worth(now: &NowAnswer, at: usize, tongue: Tongue) -> Markup {
    html! {
        @if let Some(shares) = now.first.colonies.get(at).and_then(shares) {
            p { span class="label" { "Well in " (tongue.say(&now.looks_to.goal())) } " " (told(shares)) }
            (hundred(shares))
        }
    }
}

/// A bar of a hundred hives: solid those well as it stands, framed those well if all is done. Its words stand above it.
fn hundred((not, done): (f64, f64)) -> Markup {
    let width = |share: f64| format!("{:.0}", 100.0 * share);
    html! {
        svg class="hundred" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true" {
            rect class="all" width="100" height="4" {}
            rect class="done" width=(width(done)) height="4" {}
            rect class="now" width=(width(not)) height="4" {}
        }
    }
}

/// Of those well as it stands, and if all is done; none where nothing is to be done.
fn shares(first: &ColonyFirst) -> Option<(f64, f64)> {
    first.if_not.zip(first.if_done).filter(|_| !first.steps.is_empty())
}

/// How many of a hundred are well as it stands and if all is done; none where nothing is to be done.
pub(super) fn chances(first: &ColonyFirst) -> Option<Markup> {
    shares(first).map(told)
}

fn told((not, done): (f64, f64)) -> Markup {
    let (not, done) = (hives(not), hives(done));
    html! { (not) " of 100" @if not == done { "." } @else { " now, " strong { (done) } " if done." } }
}

/// What comes after the first thing; none where nothing does.
fn next(now: &NowAnswer, at: usize, tongue: Tongue) -> Option<String> {
    let step = now.first.colonies.get(at)?.steps.get(1)?;
    Some(tongue.sentence(&step.words()))
}

/// Where figures of a kind come from.
pub(crate) fn why(what: &str) -> Markup {
    html! { a class="why" href={ "/source?find=" (what) } { "says who?" } }
}

fn ahead(view: &View, now: &NowAnswer) -> Markup {
    let days = view.standing.as_ref().map(|standing| standing.present.days.as_slice()).unwrap_or_default();
    html! {
        section class="ahead" {
            dl {
                dt { "Flight day" }
                dd {
                    @match &now.flight_day {
                        Some(flight) if flight.on_most_days => "Bees fly on most days now; a hive that does not while others do is opened first.",
                        Some(flight) => {
                            (weekday(flight.on)) ", " (date(flight.on)) ": bees can fly in " (in_hundred(flight.chance))
                            " such winters."
                            @if view.visitor.may_write() { " " a href="/flight" { "Be ready for it" } "." }
                        }
                        None => "None likely within ten days.",
                    }
                }
                dt { "Go and look" }
                dd { (view.tongue().sentence(&now.next_round.says())) }
                dt { "The lid, tomorrow at one" }
                dd { (view.tongue().say(&now.lid.says)) }
            }
            @if !days.is_empty() { (folded("The coming days", &html! {
                (draw::figure(&draw::days(days, view.settings.system), "days"))
                p class="small" { "The middle of the weather paths the estimate walks, not a forecast unless a forecast was given. Wind is that of open country 10 m up." }
            })) }
        }
    }
}

/// Before there is an estimate: the hives, so that notes can be made.
fn plain_list(view: &View) -> Markup {
    html! {
        ol class="hives" {
            @for colony in &view.apiary.colonies {
                li class="hive plain" { h2 { a href={ "/hive/" (colony.id.0) } { (colony.name) } } }
            }
        }
    }
}
