//! A colony's notes, latest first.

use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::now::ColonyNow;
use snowhum_apiary::{Act, Colony, Entry, Note, Sign};
use snowhum_say::{Message, hive_page as text};

use crate::view::View;
use crate::words::{conditions, plain, time};

/// Notes listed before older ones are asked for.
const LISTED: usize = 1;
/// Notes of food that are told beside it.
const OF_FOOD: usize = 3;

/// The last notes of food and weight, latest first.
pub(crate) fn of_food(view: &View, colony: &Colony) -> Vec<Message> {
    let is_of_food = |entry: &Entry| matches!(entry, Entry::Sign(Sign::Weight(_)) | Entry::Act(Act::Fed { .. }));
    let notes = view.notes_of(colony.id).into_iter();
    let told = notes.flat_map(|note| {
        let on = day_of(view, note);
        let entries = note.entries.iter().filter(move |entry| is_of_food(entry));
        entries.map(move |entry| text::noted_on(on, plain(&entry.written(&|id| view.name_of(id)))))
    });
    told.take(OF_FOOD).collect()
}

/// The day of a note, on the yard's clock.
fn day_of(view: &View, note: &Note) -> Date {
    note.at.to_zoned_datetime(view.now.time_zone().clone()).date()
}

/// What a note did to the estimate, told once for all that was noted on its day.
fn did<'n>(view: &View, now: Option<&'n ColonyNow>, notes: &[&Note], at: usize) -> Option<&'n Message> {
    let day = day_of(view, notes.get(at)?);
    if at > 0 && notes.get(at - 1).is_some_and(|before| day_of(view, before) == day) {
        return None;
    }
    now?.evidence.iter().find(|visit| visit.on == day).map(|visit| &visit.moved)
}

/// The latest notes, each with what it did; all of them when they are asked for.
pub(crate) fn list(view: &View, colony: &Colony, now: Option<&ColonyNow>, all: bool) -> Markup {
    let notes = view.notes_of(colony.id);
    let listed = if all { notes.len() } else { LISTED.min(notes.len()) };
    let say = |message: Message| view.tongue().say(&message);
    html! {
        section id="notes" {
            h2 { (say(text::notes())) }
            @if notes.is_empty() { p { (say(text::no_notes())) } }
            ol class="notes" {
                @for (at, note) in notes.iter().enumerate().take(listed) { (one(view, note, did(view, now, &notes, at))) }
            }
            @if listed < notes.len() {
                p class="ways no-print" { a href={ "/hive/" (colony.id.0) "?notes=all#notes" } { (say(text::all_notes(notes.len()))) } }
            }
            @if !notes.is_empty() && view.visitor.may_write() {
                form class="no-print" method="post" action={ "/hive/" (colony.id.0) "/undo" } {
                    button { (say(text::take_back())) }
                }
            }
        }
    }
}

fn one(view: &View, note: &Note, moved: Option<&Message>) -> Markup {
    let tongue = view.tongue();
    html! {
        li {
            span class="label" {
                (time(day_of(view, note), tongue))
                @if let Some(weather) = conditions(note) { ", " (tongue.say(&weather)) }
            }
            @for written in view.written(note) { span class="sign" { (tongue.say(&plain(&written))) } }
            @if view.visitor.may_write() { a class="no-print" href={ "/note/" (note.id.0) } { (tongue.say(&text::change_note())) } }
            @if let Some(moved) = moved { p class="did" { (tongue.capital(moved)) "." } }
        }
    }
}
