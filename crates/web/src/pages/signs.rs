//! A colony's notes, latest first.

use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::now::ColonyNow;
use snowhum_advice::words::day;
use snowhum_apiary::{Act, Colony, Entry, Note, Sign};

use crate::view::View;
use crate::words::{capital, conditions, date, plain};

/// Notes listed before older ones are asked for.
const LISTED: usize = 1;
/// Notes of food that are told beside it.
const OF_FOOD: usize = 3;

/// The last notes of food and weight, latest first.
pub(crate) fn of_food(view: &View, colony: &Colony) -> Vec<String> {
    let is_of_food = |entry: &Entry| matches!(entry, Entry::Sign(Sign::Weight(_)) | Entry::Act(Act::Fed { .. }));
    let notes = view.notes_of(colony.id).into_iter();
    let told = notes.flat_map(|note| {
        let on = day(day_of(view, note));
        let entries = note.entries.iter().filter(|entry| is_of_food(entry));
        entries
            .map(move |entry| format!("{on} {}", view.tongue().say(&plain(&entry.written(&|id| view.name_of(id))))))
            .collect::<Vec<_>>()
    });
    told.take(OF_FOOD).collect()
}

/// The day of a note, on the yard's clock.
fn day_of(view: &View, note: &Note) -> Date {
    note.at.to_zoned_datetime(view.now.time_zone().clone()).date()
}

/// What a note did to the estimate, told once for all that was noted on its day.
fn did(view: &View, now: Option<&ColonyNow>, notes: &[&Note], at: usize) -> Option<String> {
    let day = day_of(view, notes.get(at)?);
    if at > 0 && notes.get(at - 1).is_some_and(|before| day_of(view, before) == day) {
        return None;
    }
    now?.evidence.iter().find(|visit| visit.on == day).map(|visit| view.tongue().say(&visit.moved))
}

/// The latest notes, each with what it did; all of them when they are asked for.
pub(crate) fn list(view: &View, colony: &Colony, now: Option<&ColonyNow>, all: bool) -> Markup {
    let notes = view.notes_of(colony.id);
    let listed = if all { notes.len() } else { LISTED.min(notes.len()) };
    html! {
        section id="notes" {
            h2 { "Notes, and what each did" }
            @if notes.is_empty() { p { "None yet." } }
            ol class="notes" {
                @for (at, note) in notes.iter().enumerate().take(listed) {
                    li {
                        span class="label" {
                            (date(note.at.to_zoned_datetime(view.now.time_zone().clone()).date()))
                            @if let Some(weather) = conditions(note) { ", " (view.tongue().say(&weather)) }
                        }
                        @for written in view.written(note) { span class="sign" { (view.tongue().say(&plain(&written))) } }
                        @if view.visitor.may_write() { a class="no-print" href={ "/note/" (note.id.0) } { "change" } }
                        @if let Some(moved) = did(view, now, &notes, at) { p class="did" { (capital(&moved)) "." } }
                    }
                }
            }
            @if listed < notes.len() {
                p class="ways no-print" { a href={ "/hive/" (colony.id.0) "?notes=all#notes" } { "All " (notes.len()) " notes" } }
            }
            @if !notes.is_empty() && view.visitor.may_write() {
                form class="no-print" method="post" action={ "/hive/" (colony.id.0) "/undo" } {
                    button { "Take back the last thing done here" }
                }
            }
        }
    }
}
