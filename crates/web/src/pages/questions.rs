//! Other questions of the winter, answered short, with this yard's own figure where there is one.

use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::questions::{Belief, Question, YardFigure, beliefs_at, questions};
use snowhum_advice::words::{day, in_hundred};
use snowhum_say::Tongue;

use crate::view::View;

pub(crate) fn list(view: &View) -> Markup {
    html! { @for question in questions() { (one(view, question)) } }
}

/// What is often heard where a page is read, and what is so; nothing on a page where none arises.
pub(crate) fn heard(address: &str) -> Markup {
    html! {
        @if beliefs_at(address).next().is_some() {
            details class="no-print" {
                summary { "Often heard" }
                @for belief in beliefs_at(address) { p { (told(belief)) } }
            }
        }
    }
}

fn told(belief: &Belief) -> Markup {
    html! {
        "“" (belief.says) ".” " (belief.truth) " "
        span class="small" translate="no" { "(" (belief.status) ": " (belief.source) ")" }
    }
}

fn one(view: &View, question: &Question) -> Markup {
    let now = view.standing.as_ref().map(|standing| &standing.present.now);
    let figure = question.yard.zip(now).map(|(figure, now)| said(figure, now, view.tongue()));
    html! {
        details id=(question.name) {
            summary { (question.asks) }
            p { (question.answer) }
            @if let Some(figure) = figure { p { span class="label" { "In this yard" } " " (figure) } }
            @for hazard in &question.cautions { p class="caution" { (hazard.says()) } }
            @for belief in &question.beliefs { p { "Often heard: " (told(belief)) } }
            p class="small" { "See " a href=(question.address) { (question.page) } " or " code { "snowhum " (question.command) } ". " span translate="no" { "Stands on: " (question.source) " (" (question.status) ")." } }
        }
    }
}

/// The yard's own figure.
fn said(figure: YardFigure, now: &NowAnswer, tongue: Tongue) -> String {
    let living = || now.colonies.iter().filter(|colony| !colony.is_gone());
    let each = |of: &dyn Fn(&ColonyNow) -> Option<String>| {
        let told: Vec<String> =
            living().filter_map(|colony| Some(format!("{}: {}", colony.name, of(colony)?))).collect();
        if told.is_empty() { "nothing to tell.".to_owned() } else { format!("{}.", told.join("; ")) }
    };
    match figure {
        YardFigure::Alive => each(&|colony| Some(in_hundred(colony.alive))),
        YardFigure::Dead => each(&|colony| {
            let dead = &colony.expect_next.dead_bees;
            Some(format!("{} by {}", dead.words(), day(colony.expect_next.on)))
        }),
        YardFigure::Hungry => each(&|colony| Some(tongue.say(&colony.food_lasts(now.looks_to)))),
        YardFigure::Hole => each(&|colony| colony.expect_next.frost_at_hole.map(in_hundred)),
        YardFigure::Lid => format!("tomorrow at one: {}", tongue.say(&now.lid.says)),
        YardFigure::Flight => match &now.flight_day {
            Some(flight) if flight.on_most_days => "on most days now.".to_owned(),
            Some(flight) => {
                format!("on {} bees can fly in {} such winters.", day(flight.on), in_hundred(flight.chance))
            }
            None => "no flying day is likely within ten days.".to_owned(),
        },
    }
}
