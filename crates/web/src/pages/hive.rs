//! One hive: what is going on in there?

use axum::extract::{Path, State};
use axum::http::Uri;
use maud::{Markup, html};
use snowhum_advice::LooksTo;
use snowhum_advice::cautions::Hazard;
use snowhum_advice::dead_bees::usual_words;
use snowhum_advice::now::ColonyNow;
use snowhum_advice::words::{day, hives, part_of_month, run_out};
use snowhum_apiary::Colony;
use snowhum_units::{Kilogram, Measured};

use super::hive_figures::{expectations, figures};
use super::notes::FEEDS;
use super::{action, apiary, dead, lifting, round, signs};
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::view::View;
use crate::words::{both_ways, capital, date};

pub(crate) async fn show(State(app): State<App>, Path(id): Path<String>, uri: Uri) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (at, colony) = view.addressed(&id, &uri)?;
    Ok(drawn(&view, at, colony, uri.query() == Some("notes=all")))
}

/// A function of its own in the machine's code too, so that what a page costs can be counted.
#[inline(never)]
fn drawn(view: &View, at: usize, colony: &Colony, all_notes: bool) -> Markup {
    let body = html! {
        (walk(view, at))
        h1 {
            (colony.name)
            @if let Some(now) = view.colony_now(at) { " " (apiary::chip(view, &now.verdict)) }
        }
        @match view.colony_now(at) {
            Some(now) => (standing(view, at, colony, now)),
            None => {
                p class="lede" { "The estimate is on its way. Notes can be made meanwhile." }
                (note_form(view, colony))
            }
        }
        (signs::list(view, colony, all_notes))
    };
    page(view, Place::Hive, &colony.name, &body)
}

/// To the hive before and the hive after, in walking order.
fn walk(view: &View, at: usize) -> Markup {
    let beside = |at: Option<usize>| at.and_then(|at| view.apiary.colonies.get(at));
    html! {
        nav class="walk" aria-label="Hives in walking order" {
            @if let Some(before) = beside(at.checked_sub(1)) { a rel="prev" href={ "/hive/" (before.id.0) } { "← " (before.name) } }
            @if let Some(after) = beside(at.checked_add(1)) { a rel="next" href={ "/hive/" (after.id.0) } { (after.name) " →" } }
            @if view.visitor.may_write() {
                a class="no-print" href="#note" { "Note something" }
                @if let Some(here) = beside(Some(at)) {
                    a class="no-print" href={ "/hive/" (here.id.0) "/weigh" } { "Weigh it" }
                    a class="no-print" href={ "/hive/" (here.id.0) "/change" } { "Change it" }
                    a class="no-print" href={ "/hive/" (here.id.0) "/tell" } { "Its winter told" }
                }
            }
        }
    }
}

fn standing(view: &View, at: usize, colony: &Colony, now: &ColonyNow) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let answer = &standing.present.now;
    let system = view.settings.system;
    html! {
        p class="lede" { (capital(&now.about)) "." }
        @if let Some(indoors) = view.indoors(at) { p { (capital(&indoors.says)) "." } }
        @for beside in &now.beside { p class="caution" { (capital(beside)) "." } }
        @if colony.quick_start {
            p class="small" { "Only the four quick facts are known of it, so the ranges are wide; each further fact narrows them." }
        }
        @if let Some(picture) = draw::cutaway(view, at) { (picture) }
        p class="small" { "Drawn to scale from the yard file. Where the cluster sits and where the food hangs are reckoned, not seen; temperatures as for a colony without brood." }
        @if !now.is_gone() {
            (note_form(view, colony))
            (action::actions(now, &answer.currency))
            (chance(now, answer.looks_to))
            section {
                h2 { "Food" }
                p { (capital(&run_out(&now.runs_out, answer.looks_to))) "." }
                @if let Some(body) = &now.food_body { p { (capital(&body.says)) "." } }
                @if let Some(plate) = draw::food(now, answer.as_of, answer.spring, system) { (draw::figure(&plate, "food")) }
            }
        } @else if now.seen_dead {
            @if now.is_unexplained() { (ended(now)) }
            @if let Some(kept) = dead::kept(view, colony.id) { p { (capital(&kept)) "." } }
            p {
                (Hazard::Foulbrood.says()) " "
                @if view.visitor.may_write() { a href={ "/dead/" (colony.id.0) } { "Examine it sign by sign" } "." }
            }
        }
        @if now.is_gone() { (note_form(view, colony)) }
        (dead_found(now))
        @if !now.is_gone() { (expectations(now, system)) }
        (evidence(now))
        (lifting::before_lifting(view, at))
        (figures(view, at))
    }
}

fn chance(now: &ColonyNow, to: LooksTo) -> Markup {
    let (so, not_so) = ("are alive today", "are not");
    html! {
        section class="chance" {
            div {
            h2 { "Alive?" }
            p { (both_ways(now.alive, so, not_so)) ". " (apiary::why("signs")) }
            @if now.alive > 0.01 {
                p {
                    (both_ways(now.alive_queenright / now.alive, "that live have a queen", "have none"))
                    "; no sign from outside proves it."
                }
            }
            p { (both_ways(now.alive_fed_queenright, &format!("come to {} alive, fed and queenright", to.goal()), "do not")) "." }
            @if now.alive < 0.9 { (ended(now)) }
            }
            (draw::figure(&draw::hundred("Of 100 hives like this, today", now.alive, so, not_so), "alive"))
        }
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

fn dead_found(now: &ColonyNow) -> Markup {
    let last = now.evidence.iter().find_map(|visit| visit.dead_bees.first());
    html! {
        @if let Some(plate) = draw::dead_bees_found(now) {
            section {
                h2 { "Dead bees found" }
                (draw::figure(&plate, "dead"))
                @if let Some(last) = last {
                    p {
                        (capital(last.verdict.words())) ": " (usual_words(&last.usual)) ". "
                        (capital(&last.lie)) ". " (apiary::why("dead"))
                    }
                }
            }
        }
    }
}

/// Visits whose part is told; the notes below go further back.
const EVIDENCE: usize = 10;

fn evidence(now: &ColonyNow) -> Markup {
    html! {
        @if !now.evidence.is_empty() {
            section {
                h2 { "What each sign did" }
                ol class="evidence" {
                    @for visit in now.evidence.iter().take(EVIDENCE) {
                        li {
                            span class="label" { (date(visit.on)) }
                            @for written in snowhum_apiary::split_entries(&visit.note) { span class="sign" { (crate::words::plain(written)) } }
                            p { (capital(&visit.moved)) "." }
                        }
                    }
                }
            }
        }
    }
}

/// Food given, tapped and typed.
fn fed(view: &View) -> Markup {
    let unit = Kilogram::usual(view.settings.system);
    html! {
        label for="fed" { "Fed, " (unit) }
        input id="fed" name="fed" inputmode="decimal" maxlength="12" autocomplete="off";
        fieldset class="choices" {
            legend { "What was fed" }
            @for feed in FEEDS { label { input type="radio" name="feed" value=(feed); span { (feed) } } }
        }
    }
}

/// A candy board, slab or feeder: put on, or how the one that is on was found.
fn board(view: &View, colony: &Colony) -> Markup {
    let on = view.apiary.food_body(colony.id, view.now.timestamp());
    html! {
        label for="board" { "Board, slab or feeder put on" }
        input id="board" name="board" maxlength="120" autocomplete="off" placeholder="3 kg candy, rim 50 mm, hole 40 mm";
        @if let Some(on) = on {
            fieldset class="choices" {
                legend { "The " (on.body.kind.words()) " on it" }
                @for (words, written) in [("eaten up", "board=eaten up"), ("taken off", "board=off")] {
                    label { input type="radio" name="entry" value=(written); span { (words) } }
                }
            }
        }
    }
}

/// What is tapped at the hive, and a line for anything, as a yard file writes it.
fn note_form(view: &View, colony: &Colony) -> Markup {
    if !view.visitor.may_write() {
        return html! {};
    }
    html! {
        section class="no-print" id="note" {
            h2 { "Note something" }
            form method="post" action={ "/hive/" (colony.id.0) "/note" } {
                input type="hidden" name="visit" value=(ids::new_id(jiff::Timestamp::now()));
                label for="line" { "Signs and things done, several with “;” between" }
                input id="line" name="line" maxlength="600" autocomplete="off" placeholder="hum=heard by ear; dead=22 on snow";
                @for question in round::AT_A_HIVE.iter().filter(|one| !one.is_of_hole() || view.has_upper_hole(colony)) {
                    (question.shown(question.field, view.is_indoors(colony)))
                }
                @if !view.is_indoors(colony) {
                    label for="depth" { "Snow against the box, over the ground," (round::Figure::Depth.unit(view.settings.system)) }
                    input id="depth" name="depth" inputmode="decimal" maxlength="12" autocomplete="off";
                }
                (fed(view))
                (board(view, colony))
                label for="words" { "Free words" }
                input id="words" name="words" maxlength="500" autocomplete="off";
                label for="at" { "Day, if not " (day(view.now.date())) }
                input id="at" name="on" type="date" max=(view.now.date());
                button class="main" { "Keep it" }
            }
            details {
                summary { "What can be written" }
                ul class="examples" { @for (_, example) in snowhum_apiary::sign_examples() { li { code { (example) } } } }
            }
        }
    }
}
