//! The yard: how are they all, and what first?

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::verdict::{ColonyFirst, ColonyVerdict, Urgency};
use snowhum_say::{Message, Tongue, hives, in_hundred, shared_page, yard_page as text};

use super::done;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::view::{Asked, View};
use crate::words::marked;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(drawn(&app, &view, &asked))
}

/// A function of its own in the machine's code too, so that what a page costs can be counted.
#[inline(never)]
fn drawn(app: &App, view: &View, asked: &Asked) -> Markup {
    let tongue = view.tongue();
    let body = html! {
        h1 { (tongue.say(&text::heading(view.shown_day()))) }
        @if view.apiary.invented { (first_visit(view)) }
        @match asked.get("begun").filter(|_| !view.apiary.invented) {
            Some("autumn") => p class="kept" role="status" { (marked(tongue, &text::autumn_begun())) },
            Some(_) => p class="kept" role="status" { (marked(tongue, &begun(app))) },
            None => {}
        }
        @match &view.standing {
            Some(standing) => {
                (first(&standing.present.now, tongue))
                @if let Some(says) = standing.present.now.looks_to.says() { p { (tongue.say(&says)) } }
                (by_need(view, &standing.present.now))
                (ahead(view, &standing.present.now))
                p class="ways no-print" { a href="/tell" { (tongue.say(&text::told())) } a href="/hives" { (tongue.say(&text::hives())) } }
            }
            None => (plain_list(view)),
        }
    };
    page(view, Place::Yard, &tongue.say(&text::title()), &body)
}

/// What this is and for whom, beside the example.
fn first_visit(view: &View) -> Markup {
    let says = [
        Some(text::lid_shut()),
        view.visitor.may_write().then(text::begin_own),
        view.visitor.may_open("/normal").then(text::dead_bees),
    ];
    html! { p class="first-visit no-print" { (marked(view.tongue(), &Message::sentences(says.into_iter().flatten()))) } }
}

/// Said once, after a yard was begun.
fn begun(app: &App) -> Message {
    let kept = match app.store().path() {
        Some(path) => text::begun_kept(path.display().to_string()),
        None => text::begun_memory(),
    };
    Message::sentences([text::begun(), kept, text::begun_words()])
}

/// Who needs the keeper, in one sentence.
fn first(now: &NowAnswer, tongue: Tongue) -> Markup {
    let ranked = ranked(now);
    let names = |of: &dyn Fn(&ColonyVerdict) -> bool| -> Vec<Message> {
        ranked.iter().filter(|(_, colony)| of(&colony.verdict)).map(|(_, colony)| (&colony.name).into()).collect()
    };
    let acting = names(&ColonyVerdict::is_urgent);
    let watched = names(&|verdict| matches!(verdict.word, Urgency::By | Urgency::LookInside));
    let says = match (acting.len(), watched.is_empty()) {
        (0, true) => text::calm(),
        (0, false) => text::next_are(listed(watched)),
        (number, true) => text::needed(listed(acting), number),
        (number, false) => Message::sentences([text::needed(listed(acting), number), text::after(listed(watched))]),
    };
    html! { p class="lede" { (marked(tongue, &says)) } }
}

/// The hives, each with its place in the yard, who is due first first.
fn ranked(now: &NowAnswer) -> Vec<(usize, &ColonyNow)> {
    let mut ranked: Vec<_> = now.colonies.iter().enumerate().collect();
    ranked.sort_by_key(|(_, colony)| colony.verdict.place());
    ranked
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
    let ranked = ranked(now);
    let group = |wanted: usize| ranked.iter().copied().filter(move |(_, colony)| need(&colony.verdict) == wanted);
    let is_long = now.colonies.len() > MANY;
    let say = |message: Message| view.tongue().say(&message);
    html! {
        @for (wanted, title) in [text::first(group(0).count()), text::then(group(1).count())].into_iter().enumerate() {
            @if group(wanted).next().is_some() {
                h2 { (say(title)) }
                ol class=(if is_long { "needs" } else { "hives" }) {
                    @for (at, colony) in group(wanted) {
                        @if is_long { (needing(view, at, colony)) } @else { (card(view, at, colony, now)) }
                    }
                }
            }
        }
        @if group(2).next().is_some() {
            h2 { (say(text::alone(group(2).count()))) }
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

fn listed(mut names: Vec<Message>) -> Message {
    if names.len() <= TOLD {
        return text::names(names);
    }
    let more = names.split_off(TOLD).len();
    text::names_more(more, names)
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
    let say = |message: Message| tongue.say(&message);
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
                @for beside in &colony.beside { p { span class="label" { (say(text::mind())) } " " (tongue.sentence(beside)) } }
                @if !colony.is_gone() {
                    p { span class="label" { (say(text::food())) } " " (tongue.sentence(&colony.food_lasts(to))) }
                    @if let Some(next) = next(now, at, tongue) { p { span class="label" { (say(text::next())) } " " (next) } }
                }
            }
        }
    }
}

/// What doing all of it changes; nothing where nothing is to be done.
fn worth(now: &NowAnswer, at: usize, tongue: Tongue) -> Markup {
    html! {
        @if let Some(shares) = now.first.colonies.get(at).and_then(shares) {
            p { span class="label" { (tongue.say(&text::well_in(now.looks_to.goal()))) } " " (marked(tongue, &told(shares))) }
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
pub(super) fn chances(first: &ColonyFirst) -> Option<Message> {
    shares(first).map(told)
}

fn told((not, done): (f64, f64)) -> Message {
    let (not, done) = (hives(not), hives(done));
    text::chances(done, not == done, not)
}

/// What comes after the first thing; none where nothing does.
fn next(now: &NowAnswer, at: usize, tongue: Tongue) -> Option<String> {
    now.first.colonies.get(at)?.then().next().map(|step| tongue.sentence(&step.words()))
}

/// Where figures of a kind come from.
pub(crate) fn why(what: &str, tongue: Tongue) -> Markup {
    html! { a class="why" href={ "/source?find=" (what) } { (tongue.say(&shared_page::says_who())) } }
}

fn ahead(view: &View, now: &NowAnswer) -> Markup {
    let days = view.standing.as_ref().map(|standing| standing.present.days.as_slice()).unwrap_or_default();
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    html! {
        section class="ahead" {
            dl {
                dt { (say(text::flight())) }
                dd { (marked(tongue, &flight_day(view, now))) }
                dt { (say(text::look())) }
                dd { (tongue.sentence(&now.next_round.says())) }
                dt { (say(text::lid())) }
                dd { (tongue.say(&now.lid.says)) }
            }
            @if !days.is_empty() { (folded(&say(text::days()), &html! {
                (draw::figure(&draw::days(days, tongue), "days", tongue))
                p class="small" { (say(text::days_of())) }
            })) }
        }
    }
}

fn flight_day(view: &View, now: &NowAnswer) -> Message {
    match &now.flight_day {
        Some(flight) if flight.on_most_days => text::flight_most_days(),
        Some(flight) => {
            let ready = view.visitor.may_write().then(text::flight_ready);
            let on = text::flight_on(in_hundred(flight.chance), flight.on);
            Message::sentences([on].into_iter().chain(ready))
        }
        None => text::flight_none(),
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
