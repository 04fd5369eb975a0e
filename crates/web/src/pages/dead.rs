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
use snowhum_say::{Message, dead_page as text};

use super::notes::{self, Pairs};
use super::questions::heard;
use crate::app::App;
use crate::aside::aside;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};
use crate::words::marked;

/// Seed of the redrawn tables: the same signs give the same ranges.
const SEED: u64 = 1;

/// Which colony?
pub(crate) async fn list(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let is_dead = |at: usize| view.colony_now(at).is_some_and(|now| now.seen_dead);
    let mut all: Vec<(usize, &Colony)> = view.apiary.colonies.iter().enumerate().collect();
    all.sort_by_key(|(at, _)| !is_dead(*at));
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede())) }
        ul class="sources" {
            @for (at, colony) in &all {
                li {
                    a class="way" href={ "/dead/" (colony.id.0) } { (colony.name) }
                    @if is_dead(*at) { " " (say(text::seen_dead())) }
                    @if let Some(kept) = kept(&view, colony.id) { ", " (say(kept)) }
                }
            }
        }
        (heard("/dead", tongue))
        p class="small" { (marked(tongue, &text::shut())) }
    };
    Ok(page(&view, Place::Dead, &heading, &body))
}

/// The last examination kept of a colony, in words.
pub(crate) fn kept(view: &View, colony: ColonyId) -> Option<Message> {
    let examined = view.notes_of(colony).into_iter().find_map(|note| {
        note.acts().find_map(|act| match act {
            Act::Examined(examined) => Some((note.at, examined)),
            _ => None,
        })
    });
    let (at, examined) = examined?;
    let on = at.to_zoned_datetime(view.now.time_zone().clone()).date();
    let kept = snowhum_advice::lessons::KeptExamination::of(on, examined);
    Some(text::kept(kept.words, on))
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
    let say = |message: Message| view.tongue().say(&message);
    let answered = match asked.get("step") {
        Some(_) => Some(answer(&view, colony, &questions, &asked).await?),
        None => None,
    };
    let body = html! {
        h1 { (say(text::why(&colony.name))) }
        @if let Some(kept) = kept(&view, colony.id) { p { (say(text::in_record(kept))) } }
        @match answered {
            Some(Ok((_, answer))) if answer.stop.is_some() => (told::stopped(&view, colony, &answer)),
            Some(Ok((records, answer))) => {
                (told::told(&view, at, &answer, &questions))
                (told::keep(&view, colony, &answer))
                (heard("/dead", view.tongue()))
                (form::signs((&view, colony), &questions, &asked, &records))
            }
            Some(Err(wrong)) => {
                p class="caution" { (say(wrong)) }
                (form::brood((&view, colony), &questions, &asked))
            }
            None => (form::brood((&view, colony), &questions, &asked)),
        }
    };
    Ok(page(&view, Place::Dead, &say(text::title(&colony.name)), &body))
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
    let nothing = || Fault::Wrong(text::wrong_none());
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
) -> Result<Result<(Vec<FromRecords>, DeadoutAnswer), Message>, Fault> {
    let signs = match signs(questions, asked) {
        Ok(signs) => signs,
        Err(wrong) => return Ok(Err(wrong)),
    };
    let records = from_records(&view.apiary, colony, view.now.date()).map_err(of_program)?;
    match aside(move || deadout(&signs, &records, SEED).map(|answer| (records, answer))).await? {
        Ok(found) => Ok(Ok(found)),
        Err(SumFault::Contradiction(words)) => Ok(Err(view.tongue().capital(&words).into())),
        Err(other) => Err(of_program(other)),
    }
}

/// The signs of a form; what it does not name was not looked at.
fn signs(questions: &[Question], asked: &Asked) -> Result<Vec<SeenSign>, Message> {
    let sign = |question: &Question| {
        let written = asked.get(&question.name)?;
        let wrong = || text::wrong_sign(shortened(written));
        Some(Seen::read(written).ok_or_else(wrong).map(|seen| SeenSign { name: question.name.clone(), seen }))
    };
    questions.iter().filter_map(sign).collect()
}

fn of_program(fault: SumFault) -> Fault {
    Fault::wrong(fault.to_string())
}
