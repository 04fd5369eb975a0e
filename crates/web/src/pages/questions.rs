//! Other questions of the winter, answered short, with this yard's own figure where there is one.

use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::questions::{Belief, Question, YardFigure, beliefs_at, questions};
use snowhum_say::{Message, Tongue, in_hundred, questions_page as text, usual};

use crate::page::name_of;
use crate::view::View;
use crate::words::{cautioned, founded, marked};

pub(crate) fn list(view: &View) -> Markup {
    html! { @for question in questions() { (one(view, question)) } }
}

/// What is often heard where a page is read, and what is so; nothing on a page where none arises.
pub(crate) fn heard(address: &str, tongue: Tongue) -> Markup {
    html! {
        @if beliefs_at(address).next().is_some() {
            details class="no-print" {
                summary { (tongue.say(&text::heard())) }
                @for belief in beliefs_at(address) { p { (told(belief, tongue)) } }
            }
        }
    }
}

fn told(belief: &Belief, tongue: Tongue) -> Markup {
    html! {
        (tongue.say(&text::told(belief.says(), belief.truth()))) " "
        span class="small" translate="no" { "(" (tongue.say(&founded(&belief.status))) ": " (belief.source) ")" }
    }
}

fn one(view: &View, question: &Question) -> Markup {
    let now = view.standing.as_ref().map(|standing| &standing.present.now);
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let figure = question.yard.zip(now).map(|(figure, now)| said(figure, now));
    let page = name_of(&question.address).map_or_else(|| (&question.address).into(), |name| name());
    let see = text::see(&question.address, &question.command, page);
    html! {
        details id=(question.name) {
            summary { (say(question.asks())) }
            p { (say(question.answer())) }
            @if let Some(figure) = figure { p { span class="label" { (say(text::here())) } " " (say(figure)) } }
            @for hazard in &question.cautions { p class="caution" { (cautioned(tongue, &hazard.says())) } }
            @for belief in &question.beliefs { p { (say(text::heard_here())) " " (told(belief, tongue)) } }
            p class="small" { (marked(tongue, &see)) " " span translate="no" { (say(text::stands_on(&question.source, founded(&question.status)))) } }
        }
    }
}

/// The yard's own figure.
fn said(figure: YardFigure, now: &NowAnswer) -> Message {
    let each = |of: &dyn Fn(&ColonyNow) -> Option<Message>| {
        let living = now.colonies.iter().filter(|colony| !colony.is_gone());
        let told: Vec<Message> = living.filter_map(|colony| Some(text::hive(of(colony)?, &colony.name))).collect();
        if told.is_empty() { text::nothing() } else { text::each(told) }
    };
    match figure {
        YardFigure::Alive => each(&|colony| Some(in_hundred(colony.alive))),
        YardFigure::Dead => each(&|colony| {
            let next = &colony.expect_next;
            Some(text::dead(usual(next.dead_bees), next.on))
        }),
        YardFigure::Hungry => each(&|colony| Some(colony.food_lasts(now.looks_to))),
        YardFigure::Hole => each(&|colony| colony.expect_next.frost_at_hole.map(in_hundred)),
        YardFigure::Lid => text::lid(&now.lid.says),
        YardFigure::Flight => match &now.flight_day {
            Some(flight) if flight.on_most_days => text::most_days(),
            Some(flight) => text::flight(in_hundred(flight.chance), flight.on),
            None => text::no_flight(),
        },
    }
}
