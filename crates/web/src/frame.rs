//! What stands over every page: what was just done, and whether what is shown is old.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::NoteId;
use snowhum_say::{Message, shared_page as text};

use crate::lasting::Last;
use crate::said::Said;
use crate::view::View;
use crate::words::{marked, plain};

/// What was just done and, while an answer is behind, that it is on its way and of when the shown one is.
pub(crate) fn band(view: &View, renews: bool) -> Markup {
    let said = Said::now().and_then(|said| words(view, said));
    let waits = view.waits();
    if said.is_none() && !waits && !(view.is_behind && view.trouble.is_some()) {
        return html! {};
    }
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    html! {
        div class="band" role="status" {
            @if let Some(said) = &said { p { (marked(tongue, said)) } }
            @if let (true, Some(trouble)) = (view.is_behind, &view.trouble) {
                p { (marked(tongue, &text::trouble(view.standing.is_some(), trouble))) }
                @if let Some(old) = old(view) { p { (say(old)) } }
            } @else if waits {
                p { strong class="working" { (say(text::working())) } @if let Some(old) = old(view) { " " (say(old)) } @if renews { " " (say(text::renews())) } }
            } @else if said.is_some() && view.standing.is_some() {
                p { (say(text::counts_it())) }
            }
        }
    }
}

/// Of when the verdicts shown are, while they are old.
fn old(view: &View) -> Option<Message> {
    let standing = view.standing.as_ref().filter(|_| view.is_behind)?;
    Some(text::until_then(clock(view, standing.at), standing.present.now.as_of))
}

/// How a verdict that is old is dated beside its word; none while it is of now.
pub(crate) fn dated(view: &View) -> Option<Message> {
    let standing = view.standing.as_ref().filter(|_| view.is_behind)?;
    let of = standing.present.now.as_of;
    Some(if of == view.now.date() { text::of_clock(clock(view, standing.at)) } else { text::of_day(of) })
}

/// What is said where a long answer is of before the last change.
pub(crate) fn age<T>(view: &View, last: &Last<T>) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        @match (last.at, last.is_behind) {
            // The band over the page says that it is on its way.
            (None, _) => {}
            (Some(at), true) => p class="band" role="status" {
                strong class="working" { (say(text::working_anew())) } " " (say(text::before_change(clock(view, at))))
            },
            (Some(_), false) => {}
        }
    }
}

fn clock(view: &View, at: Timestamp) -> String {
    at.to_zoned_datetime(view.now.time_zone().clone()).strftime("%H:%M:%S").to_string()
}

fn words(view: &View, said: Said) -> Option<Message> {
    Some(match said {
        Said::Noted(note) => noted(view, note, false)?,
        Said::Changed(note) => noted(view, note, true)?,
        Said::Withdrew(_) => text::withdrawn(),
        Said::TookBack(colony) => text::taken_back(&view.colony(colony).ok()?.1.name),
        Said::AnotherDay => text::another_day(view.now.date()),
    })
}

/// A note as the keeper wrote it.
fn noted(view: &View, id: NoteId, is_changed: bool) -> Option<Message> {
    let note = view.apiary.notes.iter().find(|note| note.id == id)?;
    let on = note.at.to_zoned_datetime(view.now.time_zone().clone()).date();
    let written = view.written(note).iter().map(|text| plain(text)).collect();
    Some(text::noted(view.name_of(note.colony), is_changed, on, written))
}
