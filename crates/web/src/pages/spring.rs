//! First look in spring: whom to lift first, when to open, what to look for, what to feed.

use axum::extract::State;
use jiff::ToSpan;
use maud::{Markup, html};
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::spring::{OpenDays, Springtime};
use snowhum_advice::words::{day, hives};
use snowhum_say::Tongue;
use std::sync::Arc;

use super::jobs::told;
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::frame;
use crate::lasting::Last;
use crate::page::{Place, folded, page};
use crate::view::View;
use crate::words::{date, mass, weekday};

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let jobs = app.windows().await;
    let last = answer(&app, &view, &jobs).await;
    view.await_for(&last);
    let answered = match &jobs.answer {
        Some(Err(words)) => Some(Err(words)),
        _ => last.answer.as_ref().map(Result::as_ref),
    };
    let body = html! {
        h1 { "First look in spring" }
        (frame::age(&view, &last))
        @if let Some(jobs) = jobs.told() { (still_ahead(jobs)) }
        @match &answered {
            Some(Ok(spring)) => (body(spring, view.tongue())),
            Some(Err(words)) => p class="caution" { (words) },
            None if view.trouble.is_some() => p { "It stands on the estimate, and there is none." },
            None => {}
        }
        (heard("/spring"))
    };
    Ok(page(&view, Place::Spring, "First look in spring", &body))
}

/// Days before the first look from which the page is read to act by, no longer only to plan by: from midwinter on.
const AHEAD_DAYS: i32 = 100;

/// Said first in autumn, when the page tells of a spring that is months away.
fn still_ahead(jobs: &JobsAnswer) -> Markup {
    let first = jobs.window("first-look").and_then(|window| window.usual);
    let first = first.filter(|on| jobs.as_of < on.saturating_sub(AHEAD_DAYS.days()));
    html! {
        @if let Some(first) = first {
            p class="kept" {
                "Spring is months away: the first look comes here about " (date(first)) ". This page is to plan by; what is to be done now stands under "
                a href="/jobs" { "Jobs and dates" } "."
            }
        }
    }
}

/// It stands on the estimate and the windows of the year, and follows when these are of now.
async fn answer(app: &App, view: &View, jobs: &Last<JobsAnswer>) -> Last<Springtime> {
    let is_of_now = !jobs.is_behind && (!view.is_behind || view.trouble.is_some());
    let from = view.standing.as_ref().zip(jobs.told()).filter(|_| is_of_now);
    app.spring(from.map(|(standing, jobs)| (Arc::clone(standing), told(app, jobs)))).await
}

fn body(spring: &Springtime, tongue: Tongue) -> Markup {
    html! {
        h2 { "Lift first" }
        ol class="ranked" {
            @for one in &spring.lift_first {
                li {
                    strong { (one.name) } ", " (tongue.say(&one.hunger.words())) ": " (tongue.say(&one.says))
                    @if let Some(kilograms) = &one.reachable_kg { "; " (mass(kilograms.p50, tongue.system())) " within reach" } "."
                }
            }
        }
        p { (tongue.say(&spring.danger.says)) }
        (open(&spring.open, tongue))
        (folded("What to look for", &html! { ol class="ranked" {
            @for item in &spring.first_look { li { strong { (tongue.say(&item.look_for)) } " " (tongue.say(&item.why)) " " em { (tongue.say(&item.otherwise)) } } }
        } }))
        (feeding(spring, tongue))
        (strength(spring, tongue))
        p class="ways no-print" { a href="/jobs" { "Jobs and dates" } a href="/flight" { "Flight day" } }
    }
}

fn open(open: &OpenDays, tongue: Tongue) -> Markup {
    html! {
        h2 { "May I open?" }
        p { (tongue.say(&open.says)) }
        p class="small" { (tongue.say(&open.other_school)) }
        @if !open.days.is_empty() { (folded("Day by day", &html! {
            div class="wide" tabindex="0" role="region" aria-label="Days to open" {
                table {
                    caption { "Of 100 possible weathers of a day so many allow the lid off a minute, a first look, every comb lifted" }
                    thead { tr { th scope="col" { "Day" } th scope="col" { "lid off" } th scope="col" { "first look" } th scope="col" { "every comb" } } }
                    tbody {
                        @for one in &open.days {
                            tr {
                                th scope="row" { (weekday(one.on)) ", " (date(one.on)) }
                                td { (hives(one.lid)) } td { (hives(one.first_look)) } td { (hives(one.full_look)) }
                            }
                        }
                    }
                }
            }
        })) }
    }
}

fn feeding(spring: &Springtime, tongue: Tongue) -> Markup {
    html! {
        (folded("Feed in this order", &html! { ol class="ranked" {
            @for step in &spring.feeding {
                li {
                    strong { (tongue.say(&step.what)) }
                    @if let Some(from) = step.from { ", from about " (date(from)) }
                    @if let Some(until) = step.until { ", until about " (date(until)) }
                    ". " (tongue.say(&step.waits_for)) " " (tongue.say(&step.how))
                }
            }
        } }))
        (folded("Floor, wrap, boxes", &html! { ul class="actions" {
            @for step in &spring.hive {
                li { strong { (tongue.say(&step.what)) } ": " (tongue.sentence(&step.when)) " " (tongue.say(&step.waits_for)) " " (tongue.say(&step.why)) }
            }
        } }))
    }
}

fn strength(spring: &Springtime, tongue: Tongue) -> Markup {
    let strengths = html! {
        dl {
            @for one in &spring.strength {
                dt { (one.name) }
                dd {
                    "about " (format!("{:.1}", one.frames.p50)) " frames of bees (8 in 10: " (format!("{:.1}", one.frames.p10)) " to "
                    (format!("{:.1}", one.frames.p90)) "): " (tongue.say(&one.word.words()))
                }
            }
        }
        @match &spring.usual_strength {
            Some(usual) => p class="small" { "In " (usual.region) ": " (usual.says) " (" (usual.source) ")." },
            None => p class="small" { "No figure is known for " (day(spring.as_of)) " in this region; what is usual on the prairie is not usual here." },
        }
    };
    let weak = html! { @if !spring.weak.is_empty() { ul class="actions" { @for line in &spring.weak { li { (tongue.say(line)) } } } } };
    html! {
        (folded("How strong?", &strengths))
        (folded("A very weak colony", &weak))
    }
}
