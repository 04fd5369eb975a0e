//! The form of a note at a hive: what is tapped, and a line for anything, as a yard file writes it.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::Colony;
use snowhum_say::{Message, note_page as text};
use snowhum_units::{Kilogram, Measured};

use super::notes::FEEDS;
use super::round::{Figure, Question};
use crate::ids;
use crate::page::{Place, page};
use crate::view::{Asked, View};

/// An empty form.
pub(super) fn form(view: &View, colony: &Colony) -> Markup {
    filled(view, colony, &Asked(Vec::new()), None)
}

/// The page of a form as it was sent, with what is wrong with it.
pub(super) fn to_mend(view: &View, colony: &Colony, typed: &Asked, wrong: &str) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let body = html! {
        h1 { (say(text::not_yet_at(&colony.name))) }
        (filled(view, colony, typed, Some(wrong)))
        p class="ways" { a href={ "/hive/" (colony.id.0) } { (say(text::back(&colony.name))) } }
    };
    page(view, Place::Elsewhere, &say(text::not_yet()), &body)
}

/// Why a form was not taken, beside its line.
pub(super) fn wrong_line(wrong: Option<&str>) -> Markup {
    html! { @if let Some(wrong) = wrong { p class="caution" role="alert" id="line.wrong" { (wrong) } } }
}

fn filled(view: &View, colony: &Colony, typed: &Asked, wrong: Option<&str>) -> Markup {
    if !view.visitor.may_write() {
        return html! {};
    }
    let visit = typed.get("visit").map_or_else(|| ids::new_id(Timestamp::now()).to_string(), str::to_owned);
    let say = |message: Message| view.tongue().say(&message);
    html! {
        // What leads to the form's own name opens what it is folded into.
        details class="folded no-print" open[wrong.is_some()] {
            summary { (say(text::note())) }
            form id="note" method="post" action={ "/hive/" (colony.id.0) "/note" } {
                input type="hidden" name="visit" value=(visit);
                (wrong_line(wrong))
                label for="line" { (say(text::line())) }
                input id="line" name="line" maxlength="600" autocomplete="off" placeholder="hum=heard by ear; dead=22 on snow"
                    value=(line(typed)) aria-invalid=[wrong.map(|_| "true")] aria-describedby=[wrong.map(|_| "line.wrong")];
                @for question in Question::at_a_hive().iter().filter(|one| !one.is_of_hole() || view.has_upper_hole(colony)) {
                    (question.shown_as(question.field, view.is_indoors(colony), typed.get(question.field), view.tongue()))
                }
                @if !view.is_indoors(colony) {
                    (field("depth", &say(text::depth(Figure::Depth.unit(view.settings.system).trim_start())), "", typed))
                }
                (fed(view, typed))
                (board(view, colony, typed))
                (field("mites", &say(text::mites()), "14 of 300", typed))
                label for="words" { (say(text::words())) }
                input id="words" name="words" maxlength="500" autocomplete="off" value=[typed.get("words")];
                label for="at" { (say(text::day(view.now.date()))) }
                input id="at" name="on" type="date" max=(view.now.date()) value=[typed.get("on")];
                button class="main" { (say(text::keep())) }
            }
            details {
                summary { (say(text::examples())) }
                ul class="examples" {
                    @for (_, example) in snowhum_apiary::sign_examples() {
                        li { code { (example) } @if let Some(words) = Question::called(example) { " " (say(words())) } }
                    }
                }
            }
        }
    }
}

/// What was typed in the line, and entries that were tapped on another page.
fn line(typed: &Asked) -> String {
    typed.get("line").into_iter().chain(typed.every("entry")).collect::<Vec<_>>().join("; ")
}

/// A short field.
fn field(name: &str, asks: &str, example: &str, typed: &Asked) -> Markup {
    html! {
        label for=(name) { (asks) }
        input id=(name) name=(name) maxlength="24" autocomplete="off" placeholder=(example) value=[typed.get(name)];
    }
}

/// Food given, tapped and typed.
fn fed(view: &View, typed: &Asked) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        label for="fed" { (say(text::fed(Kilogram::usual(view.settings.system)))) }
        input id="fed" name="fed" inputmode="decimal" maxlength="12" autocomplete="off" value=[typed.get("fed")];
        fieldset class="choices" {
            legend { (say(text::what_fed())) }
            @for (feed, words) in FEEDS {
                label { input type="radio" name="feed" value=(feed) checked[typed.get("feed") == Some(feed)]; span { (say(words())) } }
            }
        }
    }
}

/// A candy board, slab or feeder: put on, or how the one that is on was found.
fn board(view: &View, colony: &Colony, typed: &Asked) -> Markup {
    let on = view.apiary.food_body(colony.id, view.now.timestamp());
    let say = |message: Message| view.tongue().say(&message);
    html! {
        label for="board" { (say(text::board())) }
        input id="board" name="board" maxlength="120" autocomplete="off" placeholder="3 kg candy, rim 50 mm, hole 40 mm"
            value=[typed.get("board")];
        @if let Some(on) = on {
            fieldset class="choices" {
                legend { (say(text::board_on(on.body.kind.message()))) }
                @for (words, written) in [(text::eaten_up(), "board=eaten up"), (text::taken_off(), "board=off")] {
                    label { input type="radio" name="entry" value=(written); span { (say(words)) } }
                }
            }
        }
    }
}
