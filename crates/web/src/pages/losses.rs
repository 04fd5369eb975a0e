//! Losses and lessons: what was lost, what that says, what to do next autumn; a club's winter; a survey's numbers.

mod club;
mod count;
mod told;

use axum::Form;
use axum::extract::State;
use axum::response::Redirect;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::lessons::{Forecast, LessonsAnswer, LessonsQuestion, lessons};
use snowhum_apiary::winter_year;
use snowhum_say::{Message, losses_page as text};

use super::notes::Pairs;
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};

/// Most colonies that can have come or gone in a winter.
const MOST: u32 = 1_000;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let spring = spring(&app, &mut view).await;
    let answered = match spring {
        Some(spring) => Some(answer(&app, &mut view, spring, &asked).await),
        None => None,
    };
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        @if asked.get("kept").is_some() { p class="kept" role="status" { (tongue.say(&text::kept())) } }
        @match &answered {
            Some(Ok(answer)) => {
                (told::told(&view, answer, &asked))
                (count::form(&view, answer, &asked))
                (told::behind(&view, answer))
            }
            Some(Err(wrong)) => p class="caution" { (tongue.say(wrong)) },
            None => p class="lede" { (tongue.say(&text::on_its_way())) },
        }
        (club::section(&asked, tongue))
        (heard("/losses", tongue))
    };
    Ok(page(&view, Place::Losses, &heading, &body))
}

/// Keeps the spring count.
pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let view = View::of(&app).await?;
    let kept = count::keep(&app, &view, &Asked(pairs)).await?;
    Ok(Redirect::to(&format!("/losses?kept={kept}")))
}

/// When winter ends here: the estimate says it; once a winter is past there is none, and its plan does.
async fn spring(app: &App, view: &mut View) -> Option<Date> {
    match (&view.standing, &view.trouble) {
        (Some(standing), _) => Some(standing.present.now.spring),
        (None, Some(_)) => {
            let plan = app.plan().await;
            view.await_for(&plan);
            plan.told().map(|plan| plan.spring)
        }
        (None, None) => None,
    }
}

async fn answer(app: &App, view: &mut View, spring: Date, asked: &Asked) -> Result<LessonsAnswer, Message> {
    let untold = question(view, spring, asked)?;
    let answer = lessons(&untold).map_err(|wrong| text::wrong(wrong.says()))?;
    // The plan is of the winter the colonies were counted for last; one that is over had another.
    let is_planned = answer.season.year == winter_year(view.apiary.as_of, view.apiary.site.latitude);
    if asked.get("foretold").is_none() || !is_planned || !answer.can_be_scored() {
        return Ok(answer);
    }
    let last = app.plan().await;
    view.await_for(&last);
    let plan = match last.answer {
        Some(plan) => plan?,
        None => return Ok(answer),
    };
    let of = |colony: &snowhum_advice::plan::ColonyPlan| Forecast {
        colony: colony.name.clone(),
        alive: colony.alive_in_spring,
    };
    let forecasts: Vec<Forecast> = plan.colonies.iter().map(of).collect();
    let question = question(view, spring, asked)?;
    lessons(&LessonsQuestion { forecasts: &forecasts, ..question }).map_err(|wrong| wrong.says())
}

fn question<'a>(view: &'a View, spring: Date, asked: &Asked) -> Result<LessonsQuestion<'a>, Message> {
    let season = match asked.get("season") {
        Some(written) => {
            let year = written.parse::<i16>().ok().filter(|year| (1900..=2200).contains(year));
            Some(year.ok_or_else(|| text::wrong_year(shortened(written)))?)
        }
        None => None,
    };
    let number = |name: &str| match asked.get(name) {
        Some(written) => {
            let read = written.parse::<u32>().ok().filter(|number| *number <= MOST);
            read.ok_or_else(|| text::wrong_count(shortened(written)))
        }
        None => Ok(0),
    };
    Ok(LessonsQuestion {
        apiary: &view.apiary,
        as_of: view.now.date(),
        season,
        spring,
        added: number("added")?,
        removed: number("removed")?,
        forecasts: &[],
    })
}
