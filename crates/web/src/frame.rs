//! What stands over every page: what was just done, and whether what is shown is old.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::words::day;
use snowhum_apiary::NoteId;

use crate::lasting::Last;
use crate::said::Said;
use crate::view::View;
use crate::words::plain;

/// What was just done and, while an answer is behind, that it is on its way and of when the shown one is.
pub(crate) fn band(view: &View, renews: bool) -> Markup {
    let said = Said::now().and_then(|said| words(view, said));
    let waits = view.waits();
    if said.is_none() && !waits && !(view.is_behind && view.trouble.is_some()) {
        return html! {};
    }
    html! {
        div class="band" role="status" {
            @if let Some(said) = &said { p { (said) } }
            @if let (true, Some(trouble)) = (view.is_behind, &view.trouble) {
                p { strong { @if view.standing.is_some() { "No newer estimate: " } @else { "No estimate: " } } (trouble) }
                @if let Some(old) = old(view) { p { (old) } }
            } @else if waits {
                p { strong class="working" { "Working it out." } @if let Some(old) = old(view) { " " (old) } @if renews { " The page renews itself." } }
            } @else if said.is_some() && view.standing.is_some() {
                p { "What stands here counts it." }
            }
        }
    }
}

/// Of when the verdicts shown are, while they are old.
fn old(view: &View) -> Option<String> {
    let standing = view.standing.as_ref().filter(|_| view.is_behind)?;
    let of = standing.present.now.as_of;
    Some(format!("Until then: how it stood on {} {}, worked out at {}.", day(of), of.year(), clock(view, standing.at)))
}

/// How a verdict that is old is dated beside its word; none while it is of now.
pub(crate) fn dated(view: &View) -> Option<String> {
    let standing = view.standing.as_ref().filter(|_| view.is_behind)?;
    let of = standing.present.now.as_of;
    Some(if of == view.now.date() { format!("of {}", clock(view, standing.at)) } else { format!("of {}", day(of)) })
}

/// What is said where a long answer is of before the last change.
pub(crate) fn age<T>(view: &View, last: &Last<T>) -> Markup {
    html! {
        @match (last.at, last.is_behind) {
            // The band over the page says that it is on its way.
            (None, _) => {}
            (Some(at), true) => p class="band" role="status" {
                strong class="working" { "Working it out anew." } " What stands here was worked out at " (clock(view, at)) ", before the last change."
            },
            (Some(_), false) => {}
        }
    }
}

fn clock(view: &View, at: Timestamp) -> String {
    at.to_zoned_datetime(view.now.time_zone().clone()).strftime("%H:%M:%S").to_string()
}

fn words(view: &View, said: Said) -> Option<Markup> {
    Some(match said {
        Said::Noted(note) => html! { strong { "Noted" } (of_note(view, note)?) },
        Said::Changed(note) => html! { strong { "Changed" } (of_note(view, note)?) },
        Said::Withdrew(_) => html! { strong { "Withdrawn." } " The note counts no more." },
        Said::TookBack(colony) => {
            let (_, colony) = view.colony(colony).ok()?;
            html! { strong { "Taken back" } ": the last thing done at " (colony.name) "." }
        }
        Said::AnotherDay => {
            html! { strong { (day(view.now.date())) " " (view.now.date().year()) } " is looked at now." }
        }
    })
}

/// A note as the keeper wrote it.
fn of_note(view: &View, id: NoteId) -> Option<Markup> {
    let note = view.apiary.notes.iter().find(|note| note.id == id)?;
    let on = note.at.to_zoned_datetime(view.now.time_zone().clone()).date();
    let written: Vec<String> = view.written(note).iter().map(|text| plain(text)).collect();
    Some(
        html! { " at " (view.name_of(note.colony)) ", " (day(on)) ": " span class="said" { (written.join("; ")) } "." },
    )
}
