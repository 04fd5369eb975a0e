//! First look in spring: whom to lift first, when to open, what to look for, what to feed.

use axum::extract::State;
use jiff::ToSpan;
use maud::{Markup, html};
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::spring::{FeedStep, LiftFirst, OpenDays, Springtime};
use snowhum_say::{Message, Tongue, hives, spring_page as text};
use snowhum_units::Kilogram;
use std::sync::Arc;

use super::jobs::told;
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::frame;
use crate::lasting::Last;
use crate::page::{Place, folded, page};
use crate::view::View;
use crate::words::{cautioned, marked};

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let jobs = app.windows().await;
    let last = answer(&app, &view, &jobs).await;
    view.await_for(&last);
    let answered = match &jobs.answer {
        Some(Err(words)) => Some(Err(words)),
        _ => last.answer.as_ref().map(Result::as_ref),
    };
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        (frame::age(&view, &last))
        @if let Some(jobs) = jobs.told() { (still_ahead(jobs, tongue)) }
        @match &answered {
            Some(Ok(spring)) => (body(spring, tongue)),
            Some(Err(words)) => p class="caution" { (tongue.say(words)) },
            None if view.trouble.is_some() => p { (tongue.say(&text::no_estimate())) },
            None => {}
        }
        (heard("/spring", tongue))
    };
    Ok(page(&view, Place::Spring, &heading, &body))
}

/// Days before the first look from which the page is read to act by, no longer only to plan by: from midwinter on.
const AHEAD_DAYS: i32 = 100;

/// Said first in autumn, when the page tells of a spring that is months away.
fn still_ahead(jobs: &JobsAnswer, tongue: Tongue) -> Markup {
    let first = jobs.window("first-look").and_then(|window| window.usual);
    let first = first.filter(|on| jobs.as_of < on.saturating_sub(AHEAD_DAYS.days()));
    html! {
        @if let Some(first) = first {
            p class="kept" { (marked(tongue, &text::ahead(first))) }
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
    let say = |message: Message| tongue.say(&message);
    let lift = |one: &LiftFirst| match &one.reachable_kg {
        Some(food) => text::lift_weighed(Kilogram::new(food.p50), &one.name, one.hunger.words(), &one.says),
        None => text::lift_one(&one.name, one.hunger.words(), &one.says),
    };
    html! {
        h2 { (say(text::lift())) }
        ol class="ranked" { @for one in &spring.lift_first { li { (marked(tongue, &lift(one))) } } }
        p { (tongue.say(&spring.danger.says)) }
        (open(&spring.open, tongue))
        (folded(&say(text::look_for()), &html! { ol class="ranked" {
            @for item in &spring.first_look { li { strong { (tongue.say(&item.look_for)) } " " (tongue.say(&item.why)) " " em { (cautioned(tongue, &item.otherwise)) } } }
        } }))
        (feeding(spring, tongue))
        (strength(spring, tongue))
        p class="ways no-print" { a href="/jobs" { (say(text::jobs())) } a href="/flight" { (say(text::flight())) } }
    }
}

fn open(open: &OpenDays, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        h2 { (say(text::open())) }
        p { (tongue.say(&open.says)) }
        p class="small" { (tongue.say(&open.other_school)) }
        @if !open.days.is_empty() { (folded(&say(text::days()), &html! {
            div class="wide" tabindex="0" role="region" aria-label=(say(text::days_table())) {
                table {
                    caption { (say(text::days_caption())) }
                    thead { tr { @for head in [text::day(), text::lid(), text::first_look(), text::every_comb()] { th scope="col" { (say(head)) } } } }
                    tbody {
                        @for one in &open.days {
                            tr {
                                th scope="row" { (marked(tongue, &text::on(one.on))) }
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
    let parts = |step: &FeedStep| {
        let days = [step.from.map(text::step_from), step.until.map(text::step_until)];
        [text::step_what(&step.what)].into_iter().chain(days.into_iter().flatten()).collect()
    };
    html! {
        (folded(&tongue.say(&text::feeding()), &html! { ol class="ranked" {
            @for step in &spring.feeding {
                li { (marked(tongue, &text::step(&step.how, parts(step), &step.waits_for))) }
            }
        } }))
        (folded(&tongue.say(&text::hive()), &html! { ul class="actions" {
            @for step in &spring.hive {
                li { (marked(tongue, &text::hive_step(&step.waits_for, &step.what, &step.when, &step.why))) }
            }
        } }))
    }
}

fn strength(spring: &Springtime, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let strengths = html! {
        dl {
            @for one in &spring.strength {
                dt { (one.name) }
                dd { (say(text::frames(one.frames.p90, one.frames.p10, one.frames.p50, one.word.words()))) }
            }
        }
        @match &spring.usual_strength {
            Some(usual) => p class="small" { (say(text::usual(&usual.region, &usual.says, &usual.source))) },
            None => p class="small" { (say(text::no_usual(spring.as_of))) },
        }
    };
    let weak = html! { @if !spring.weak.is_empty() { ul class="actions" { @for line in &spring.weak { li { (tongue.say(line)) } } } } };
    html! {
        (folded(&say(text::strength()), &strengths))
        (folded(&say(text::weak()), &weak))
    }
}
