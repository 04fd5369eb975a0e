//! A colony's notes, latest first.

use maud::{Markup, html};
use snowhum_apiary::Colony;

use crate::view::View;
use crate::words::{conditions, date, plain};

/// Notes listed before older ones are asked for.
const LISTED: usize = 40;

pub(crate) fn list(view: &View, colony: &Colony, all: bool) -> Markup {
    let notes = view.notes_of(colony.id);
    let listed = if all { notes.len() } else { LISTED.min(notes.len()) };
    html! {
        section id="notes" {
            h2 { "Notes" }
            @if notes.is_empty() { p { "None yet." } }
            ol class="notes" {
                @for note in &notes[..listed] {
                    li {
                        span class="label" {
                            (date(note.at.to_zoned_datetime(view.now.time_zone().clone()).date()))
                            @if let Some(weather) = conditions(note, view.settings.system) { ", " (weather) }
                        }
                        @for written in view.written(note) { span class="sign" { (plain(&written)) } }
                        @if view.visitor.may_write() { a class="no-print" href={ "/note/" (note.id.0) } { "change" } }
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
