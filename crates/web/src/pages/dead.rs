//! A dead colony: foulbrood first, then signs, causes, what to look at next, what can be used again; kept as a note.

mod form;
mod told;

use axum::Form;
use axum::extract::{Path, State};
use axum::http::Uri;
use axum::response::Redirect;
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::deadout::{
    DeadoutAnswer, FromRecords, Question, Seen, SeenSign, deadout, from_records, questions, to_keep,
};
use snowhum_advice::sums::SumFault;
use snowhum_apiary::{Act, Colony, ColonyId, Conditions, Entry, Note, Sign, VisitId};

use super::notes::{self, Pairs};
use super::questions::heard;
use crate::app::App;
use crate::aside::aside;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};

/// Seed of the redrawn tables: the same signs give the same ranges.
const SEED: u64 = 1;

/// Which colony?
pub(crate) async fn list(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let is_dead = |at: usize| view.colony_now(at).is_some_and(|now| now.seen_dead);
    let mut all: Vec<(usize, &Colony)> = view.apiary.colonies.iter().enumerate().collect();
    all.sort_by_key(|(at, _)| !is_dead(*at));
    let body = html! {
        h1 { "Dead colony" }
        p class="lede" { "Why did it die, and what of it can be used again? Foulbrood is looked for first." }
        ul class="sources" {
            @for (at, colony) in &all {
                li {
                    a class="way" href={ "/dead/" (colony.id.0) } { (colony.name) }
                    @if is_dead(*at) { " seen dead" }
                    @if let Some(kept) = kept(&view, colony.id) { ", " (kept) }
                }
            }
        }
        (heard("/dead"))
        p class="small" { "In winter a hive that is only silent stays shut: " a href="/" { "the yard page" } " says how likely it is dead." }
    };
    Ok(page(&view, Place::Dead, "Dead colony", &body))
}

/// The last examination kept of a colony, in words.
pub(crate) fn kept(view: &View, colony: ColonyId) -> Option<String> {
    let examined = view.notes_of(colony).into_iter().find_map(|note| {
        note.acts().find_map(|act| match act {
            Act::Examined(examined) => Some((note.at, examined)),
            _ => None,
        })
    });
    let (at, examined) = examined?;
    let on = at.to_zoned_datetime(view.now.time_zone().clone()).date();
    let kept = snowhum_advice::lessons::KeptExamination::of(on, examined);
    Some(format!("examined {}: {}", snowhum_advice::words::day(on), view.tongue().say(&kept.words)))
}

/// One colony, examined as far as is told.
pub(crate) async fn show(
    State(app): State<App>,
    Path(id): Path<String>,
    uri: Uri,
    asked: Asked,
) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (at, colony) = view.addressed(&id, &uri)?;
    let questions = questions().map_err(of_program)?;
    let title = format!("{}: dead colony", colony.name);
    let answered = match asked.get("step") {
        Some(_) => Some(answer(&view, colony, &questions, &asked).await?),
        None => None,
    };
    let body = html! {
        h1 { (colony.name) ": why did it die?" }
        @if let Some(kept) = kept(&view, colony.id) { p { "In the record: " (kept) "." } }
        @match answered {
            Some(Ok((_, answer))) if answer.stop.is_some() => (told::stopped(&view, colony, &answer)),
            Some(Ok((records, answer))) => {
                (told::told(&view, at, &answer, &questions))
                (told::keep(&view, colony, &answer))
                (heard("/dead"))
                (form::signs((&view, colony), &questions, &asked, &records))
            }
            Some(Err(wrong)) => {
                p class="caution" { (wrong) }
                (form::brood((&view, colony), &questions, &asked))
            }
            None => (form::brood((&view, colony), &questions, &asked)),
        }
    };
    Ok(page(&view, Place::Dead, &title, &body))
}

/// Keeps an examination as a note: the colony is dead, and this is what was found.
pub(crate) async fn keep(
    State(app): State<App>,
    Path(id): Path<String>,
    Form(pairs): Pairs,
) -> Result<Redirect, Fault> {
    let view = View::of(&app).await?;
    let (_, colony) = view.meant(&id)?;
    let form = Asked(pairs);
    let questions = questions().map_err(of_program)?;
    let at = notes::time(&view, &form)?;
    let (_, answer) = answer(&view, colony, &questions, &form).await?.map_err(Fault::Wrong)?;
    let nothing = || Fault::Wrong("No sign is told; look first, then keep what you found.".to_owned());
    let examined = to_keep(&answer).ok_or_else(nothing)?;
    let visit = form.get("visit").and_then(|text| text.parse().ok()).unwrap_or_else(|| ids::new_id(Timestamp::now()));
    let note = Note {
        id: ids::note_of(VisitId(visit), colony.id),
        visit: VisitId(visit),
        colony: colony.id,
        at,
        conditions: Conditions::default(),
        entries: vec![Entry::Sign(Sign::SeenDead), Entry::Act(Act::Examined(examined))],
    };
    notes::keep(&app, &note).await?;
    Ok(Redirect::to(&format!("/hive/{}", colony.id.0)))
}

/// What the records answer, and the answer; or what is wrong with what was told.
async fn answer(
    view: &View,
    colony: &Colony,
    questions: &[Question],
    asked: &Asked,
) -> Result<Result<(Vec<FromRecords>, DeadoutAnswer), String>, Fault> {
    let signs = match signs(questions, asked) {
        Ok(signs) => signs,
        Err(wrong) => return Ok(Err(wrong)),
    };
    let records = from_records(&view.apiary, colony, view.now.date()).map_err(of_program)?;
    match aside(move || deadout(&signs, &records, SEED).map(|answer| (records, answer))).await? {
        Ok(found) => Ok(Ok(found)),
        Err(SumFault::Contradiction(words)) => Ok(Err(view.tongue().capital(&words))),
        Err(other) => Err(of_program(other)),
    }
}

/// The signs of a form; what it does not name was not looked at.
fn signs(questions: &[Question], asked: &Asked) -> Result<Vec<SeenSign>, String> {
    let sign = |question: &Question| {
        let written = asked.get(&question.name)?;
        let wrong = || format!("{}: write yes, fairly sure, no, or leave it open.", shortened(written));
        Some(Seen::read(written).ok_or_else(wrong).map(|seen| SeenSign { name: question.name.clone(), seen }))
    };
    questions.iter().filter_map(sign).collect()
}

fn of_program(fault: SumFault) -> Fault {
    Fault::Wrong(fault.to_string())
}
