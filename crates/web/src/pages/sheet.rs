//! The pencil sheet: the round on paper, in the same order as the page it is typed into.

use axum::extract::State;
use maud::{Markup, html};
use snowhum_say::{Message, round_page as text};

use super::round::{Question, typed};
use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::View;

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Round, &view.tongue().say(&text::pencil()), &sheet(&view)))
}

/// The sheet.
pub(crate) fn sheet(view: &View) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let answers = |question: &Question, indoors: bool| {
        let words: Vec<String> = question.answers(indoors).iter().map(|(words, _)| say(words())).collect();
        words.join("  ·  ")
    };
    let asked = Question::all();
    html! {
        h1 { (say(text::pencil())) }
        p { (say(text::pencil_day())) }
        p class="small" { (say(text::pencil_ring())) }
        div class="papers" {
        @for (_, colony) in view.watched() {
            @let has_hole = view.has_upper_hole(colony);
            @let indoors = view.is_indoors(colony);
            @let is_asked = |question: &&Question| {
                (!question.is_of_hole() || has_hole) && !question.answers(indoors).is_empty()
            };
            section class="paper" {
                h2 { (colony.name) }
                @if indoors { p class="small" { (say(text::indoors())) } }
                table {
                    tbody {
                        @for question in asked.iter().filter(is_asked) {
                            tr { th scope="row" { (say((question.asks)())) } td { (answers(question, indoors)) } }
                        }
                        @for (asks, _, _, figure) in typed(indoors) {
                            tr { th scope="row" { (say(asks())) } td { "__________" (figure.unit(view.settings.system)) } }
                        }
                        tr { th scope="row" { (say(text::word())) } td { "" } }
                    }
                }
            }
        }
        }
    }
}
