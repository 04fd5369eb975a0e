//! One hive: what is going on in there?

use axum::extract::{Path, State};
use axum::http::Uri;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::dead_bees::usual_words;
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_apiary::Colony;
use snowhum_say::{Message, Tongue, against, hive_page as text, hives};

use super::hive_figures::{expectations, figures};
use super::{action, apiary, dead, done, lifting, note_form, signs};
use crate::app::App;
use crate::draw::{self, Parts};
use crate::fault::Fault;
use crate::page::{Place, folded, page};
use crate::view::{Asked, View};
use crate::words::{cautioned, marked, of_hundred};

/// What is asked for beside what is shown first.
#[derive(Clone, Copy)]
struct Further {
    all_notes: bool,
    parts: Parts,
}

pub(crate) async fn show(
    State(app): State<App>,
    Path(id): Path<String>,
    asked: Asked,
    uri: Uri,
) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (at, colony) = view.addressed(&id, &uri)?;
    let parts = if asked.get("parts").is_some() { Parts::Every } else { Parts::First };
    Ok(drawn(&view, at, colony, Further { all_notes: asked.get("notes").is_some(), parts }))
}

/// A function of its own in the machine's code too, so that what a page costs can be counted.
#[inline(never)]
fn drawn(view: &View, at: usize, colony: &Colony, further: Further) -> Markup {
    let tongue = view.tongue();
    let body = html! {
        h1 {
            (colony.name)
            @if let Some(now) = view.colony_now(at) { " " (apiary::chip(view, &now.verdict)) }
        }
        @match view.colony_now(at) {
            Some(now) => (standing(view, at, colony, (now, further))),
            None => {
                p class="lede" { (tongue.say(&text::not_yet())) }
                (note_form::form(view, colony))
                (signs::list(view, colony, None, further.all_notes))
            }
        }
    };
    page(view, Place::Hive, &colony.name, &body)
}

/// To the hive before and the hive after, in walking order, and what can be done at this one.
fn walk(view: &View, at: usize) -> Markup {
    let beside = |at: Option<usize>| at.and_then(|at| view.apiary.colonies.get(at));
    let say = |message: Message| view.tongue().say(&message);
    html! {
        nav class="walk" aria-label=(say(text::walk())) {
            @if let Some(before) = beside(at.checked_sub(1)) { a rel="prev" href={ "/hive/" (before.id.0) } { "← " (before.name) } }
            @if let Some(after) = beside(at.checked_add(1)) { a rel="next" href={ "/hive/" (after.id.0) } { (after.name) " →" } }
            @if let Some(here) = beside(Some(at)).filter(|_| view.visitor.may_write()) {
                a class="no-print" href="#note" { (say(text::note())) }
                a class="no-print" href={ "/hive/" (here.id.0) "/weigh" } { (say(text::weigh())) }
                a class="no-print" href={ "/hive/" (here.id.0) "/change" } { (say(text::change())) }
                a class="no-print" href={ "/hive/" (here.id.0) "/tell" } { (say(text::winter())) }
            }
        }
    }
}

fn standing(view: &View, at: usize, colony: &Colony, (now, further): (&ColonyNow, Further)) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let (answer, tongue) = (&standing.present.now, view.tongue());
    let say = |message: Message| tongue.say(&message);
    html! {
        p class="lede" { (tongue.sentence(&now.about)) }
        (reason(answer, at, tongue))
        @if let Some(indoors) = view.indoors(at) { p { (tongue.sentence(&indoors.says)) } }
        @for beside in &now.beside { p class="caution" { (tongue.sentence(beside)) } }
        (done::button(view, at, colony))
        (walk(view, at))
        @if now.is_gone() { (gone(view, colony, now)) } @else {
            div class="outlook" {
                // Its key says all that a table would.
                figure class="plate" { (draw::bare(&draw::fates(&now.fates, answer.looks_to.goal(), tongue), "fates")) }
                (food(view, colony, answer, at))
            }
        }
        @if let Some(picture) = draw::cutaway(view, at, further.parts) { (picture) }
        (note_form::form(view, colony))
        (signs::list(view, colony, Some(now), further.all_notes))
        @if !now.is_gone() {
            (folded(&say(text::what_to_do()), &action::actions(now, &answer.currency, tongue)))
        }
        (folded(&say(if now.is_gone() { text::dead_found() } else { text::alive_today() }), &html! {
            @if !now.is_gone() { (chance(now, tongue)) }
            @if let Some(found) = dead_found(now, tongue) { (found) }
        }))
        @if !now.is_gone() { (folded(&say(text::expected()), &expectations(now, tongue))) }
        (folded(&say(text::before()), &lifting::before_lifting(view, at)))
        (figures(view, at))
    }
}

/// Why it is so, and what doing it changes.
fn reason(answer: &NowAnswer, at: usize, tongue: Tongue) -> Markup {
    let Some(first) = answer.first.colonies.get(at).filter(|first| !first.steps.is_empty()) else { return html! {} };
    html! {
        p {
            @if !first.why.is_empty() { (tongue.sentence(&first.reasons())) " " }
            @if let Some(chances) = apiary::chances(first) { (marked(tongue, &text::well(chances, answer.looks_to.goal()))) }
        }
    }
}

/// A colony that lives here no more.
fn gone(view: &View, colony: &Colony, now: &ColonyNow) -> Markup {
    html! {
        @if now.seen_dead {
            @if now.is_unexplained() { (ended(now, view.tongue())) }
            @if let Some(kept) = dead::kept(view, colony.id) { p { (view.tongue().capital(&kept)) "." } }
            p {
                (cautioned(view.tongue(), &Hazard::Foulbrood.says())) " "
                @if view.visitor.may_write() { a href={ "/dead/" (colony.id.0) } { (view.tongue().say(&text::examine())) } "." }
            }
        }
    }
}

/// Food from here to spring, with what the notes said of it.
fn food(view: &View, colony: &Colony, answer: &NowAnswer, at: usize) -> Markup {
    let Some(now) = answer.colonies.get(at) else { return html! {} };
    let (noted, tongue) = (signs::of_food(view, colony), view.tongue());
    let say = |message: Message| tongue.say(&message);
    html! {
        section {
            h2 { (say(text::food())) }
            p { (tongue.sentence(&now.food_lasts(answer.looks_to))) }
            @if let Some(body) = &now.food_body { p { (tongue.sentence(&body.says)) } }
            @if let Some(plate) = draw::food(answer, at, tongue) {
                details class="open-on-desk" {
                    summary { (say(text::day_by_day())) }
                    (draw::figure(&plate, "food", tongue))
                    @if !noted.is_empty() { p { (marked(tongue, &text::noted(noted))) } }
                }
            }
            @if colony.quick_start { p class="small" { (say(text::weigh_it())) } }
        }
    }
}

fn chance(now: &ColonyNow, tongue: Tongue) -> Markup {
    let alive = of_hundred(now.alive, text::alive_hardly, text::alive);
    html! {
        p { (tongue.say(&alive)) " " (apiary::why("signs", tongue)) }
        @if now.alive > 0.01 {
            p { (tongue.say(&of_hundred(now.alive_queenright / now.alive, text::queen_hardly, text::queen))) }
        }
        @if now.alive < 0.9 { (ended(now, tongue)) }
    }
}

pub(super) fn ended(now: &ColonyNow, tongue: Tongue) -> Markup {
    let mut causes: Vec<_> = now.ended.by_cause().into_iter().filter(|(_, chance)| *chance >= 0.005).collect();
    causes.sort_by(|a, b| b.1.total_cmp(&a.1));
    if causes.is_empty() {
        return html! {};
    }
    let causes = causes.iter().map(|(cause, chance)| text::cause(cause.words(), hives(*chance))).collect();
    let between = now.ended_between.as_ref().map(|on| text::ended_between(on.p10, on.p90, on.p50));
    let says = [text::ended(causes, now.seen_dead)].into_iter().chain(between);
    html! { p { (tongue.say(&Message::sentences(says))) } }
}

fn dead_found(now: &ColonyNow, tongue: Tongue) -> Option<Markup> {
    let plate = draw::dead_bees_found(now, tongue)?;
    let last = now.evidence.iter().find_map(|visit| visit.dead_bees.first());
    let against = last.map(|last| text::dead_against(&last.lie, usual_words(&last.usual), against(last.verdict)));
    Some(html! {
        (draw::figure(&plate, "dead", tongue))
        @if let Some(against) = against { p { (tongue.say(&against)) " " (apiary::why("dead", tongue)) } }
    })
}
