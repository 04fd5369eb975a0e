//! One hive: what is going on in there?

use axum::extract::{Path, State};
use axum::http::Uri;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::dead_bees::usual_words;
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::words::{day, hives, part_of_month};
use snowhum_apiary::Colony;
use snowhum_say::Tongue;

use super::hive_figures::{expectations, figures};
use super::{action, apiary, dead, done, lifting, note_form, signs};
use crate::app::App;
use crate::draw::{self, Parts};
use crate::fault::Fault;
use crate::page::{Place, folded, page};
use crate::view::{Asked, View};
use crate::words::{both_ways, capital};

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
    let body = html! {
        h1 {
            (colony.name)
            @if let Some(now) = view.colony_now(at) { " " (apiary::chip(view, &now.verdict)) }
        }
        @match view.colony_now(at) {
            Some(now) => (standing(view, at, colony, (now, further))),
            None => {
                p class="lede" { "The estimate is on its way. Notes can be made meanwhile." }
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
    html! {
        nav class="walk" aria-label="Hives in walking order" {
            @if let Some(before) = beside(at.checked_sub(1)) { a rel="prev" href={ "/hive/" (before.id.0) } { "← " (before.name) } }
            @if let Some(after) = beside(at.checked_add(1)) { a rel="next" href={ "/hive/" (after.id.0) } { (after.name) " →" } }
            @if let Some(here) = beside(Some(at)).filter(|_| view.visitor.may_write()) {
                a class="no-print" href="#note" { "Note" }
                a class="no-print" href={ "/hive/" (here.id.0) "/weigh" } { "Weigh" }
                a class="no-print" href={ "/hive/" (here.id.0) "/change" } { "Change" }
                a class="no-print" href={ "/hive/" (here.id.0) "/tell" } { "Its winter" }
            }
        }
    }
}

fn standing(view: &View, at: usize, colony: &Colony, (now, further): (&ColonyNow, Further)) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let (answer, tongue) = (&standing.present.now, view.tongue());
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
                figure class="plate" { (draw::bare(&draw::fates(&now.fates, &tongue.say(&answer.looks_to.goal())), "fates")) }
                (food(view, colony, answer, at))
            }
        }
        @if let Some(picture) = draw::cutaway(view, at, further.parts) { (picture) }
        (note_form::form(view, colony))
        (signs::list(view, colony, Some(now), further.all_notes))
        @if !now.is_gone() {
            (folded("What to do, and its worth", &action::actions(now, &answer.currency, tongue)))
        }
        (folded(if now.is_gone() { "Dead bees found" } else { "Alive today? Dead bees found" }, &html! {
            @if !now.is_gone() { (chance(now)) }
            @if let Some(found) = dead_found(now, tongue) { (found) }
        }))
        @if !now.is_gone() { (folded("What the next look should show", &expectations(now, view.settings.system))) }
        (folded("Before you lift or open it", &lifting::before_lifting(view, at)))
        (figures(view, at))
    }
}

/// Why it is so, and what doing it changes.
fn reason(answer: &NowAnswer, at: usize, tongue: Tongue) -> Markup {
    let Some(first) = answer.first.colonies.get(at).filter(|first| !first.steps.is_empty()) else { return html! {} };
    html! {
        p {
            @if !first.why.is_empty() { (tongue.sentence(&first.reasons())) " " }
            @if let Some(chances) = apiary::chances(first) { "Well in " (tongue.say(&answer.looks_to.goal())) ": " (chances) }
        }
    }
}

/// A colony that lives here no more.
fn gone(view: &View, colony: &Colony, now: &ColonyNow) -> Markup {
    html! {
        @if now.seen_dead {
            @if now.is_unexplained() { (ended(now)) }
            @if let Some(kept) = dead::kept(view, colony.id) { p { (view.tongue().capital(&kept)) "." } }
            p {
                (Hazard::Foulbrood.says()) " "
                @if view.visitor.may_write() { a href={ "/dead/" (colony.id.0) } { "Examine it sign by sign" } "." }
            }
        }
    }
}

/// Food from here to spring, with what the notes said of it.
fn food(view: &View, colony: &Colony, answer: &NowAnswer, at: usize) -> Markup {
    let Some(now) = answer.colonies.get(at) else { return html! {} };
    let noted = signs::of_food(view, colony);
    html! {
        section {
            h2 { "Food" }
            p { (view.tongue().sentence(&now.food_lasts(answer.looks_to))) }
            @if let Some(body) = &now.food_body { p { (view.tongue().sentence(&body.says)) } }
            @if let Some(plate) = draw::food(answer, at, view.settings.system) {
                details class="open-on-desk" {
                    summary { "Day by day" }
                    (draw::figure(&plate, "food"))
                    @if !noted.is_empty() { p { span class="label" { "Noted" } " " (noted.join("; ")) "." } }
                }
            }
            @if colony.quick_start { p class="small" { "Known in words alone: weigh it, and the fan narrows." } }
        }
    }
}

fn chance(now: &ColonyNow) -> Markup {
    html! {
        p { (both_ways(now.alive, "are alive today", "are not")) ". " (apiary::why("signs")) }
        @if now.alive > 0.01 {
            p { (both_ways(now.alive_queenright / now.alive, "that live have a queen", "have none")) "; no sign from outside proves it." }
        }
        @if now.alive < 0.9 { (ended(now)) }
    }
}

pub(super) fn ended(now: &ColonyNow) -> Markup {
    let mut causes: Vec<_> = now.ended.by_cause().into_iter().filter(|(_, chance)| *chance >= 0.005).collect();
    causes.sort_by(|a, b| b.1.total_cmp(&a.1));
    html! {
        @if !causes.is_empty() {
            p {
                (if now.seen_dead { "What most likely ended it, of 100 such hives: " } else { "If it is dead, of 100 such hives: " })
                (causes.iter().map(|(cause, chance)| format!("{} {}", cause.words(), hives(*chance))).collect::<Vec<_>>().join(", "))
                "."
                @if let Some(between) = &now.ended_between {
                    " Most likely " (part_of_month(between.p50)) ", between " (day(between.p10)) " and " (day(between.p90)) "."
                }
            }
        }
    }
}

fn dead_found(now: &ColonyNow, tongue: Tongue) -> Option<Markup> {
    let plate = draw::dead_bees_found(now)?;
    let last = now.evidence.iter().find_map(|visit| visit.dead_bees.first());
    Some(html! {
        (draw::figure(&plate, "dead"))
        @if let Some(last) = last {
            p { (capital(last.verdict.words())) ": " (tongue.say(&usual_words(&last.usual))) ". " (tongue.sentence(&last.lie)) " " (apiary::why("dead")) }
        }
    })
}
