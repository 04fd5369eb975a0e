//! The pencil sheet: the round on paper, in the same order as the page it is typed into.

use axum::extract::State;
use maud::{Markup, html};

use super::round::{FURTHER, INDOORS, Question, USUAL, typed};
use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::View;

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(page(&view, Place::Round, "A round with a pencil", &sheet(&view)))
}

/// The sheet.
pub(crate) fn sheet(view: &View) -> Markup {
    let answers = |question: &Question, indoors: bool| {
        let words: Vec<&str> = question.answers(indoors).iter().map(|(words, _)| *words).collect();
        words.join("  ·  ")
    };
    html! {
        h1 { "A round with a pencil" }
        p { "Day ____________  hour ______  air ______  snow: bare · old · fresh" }
        p class="small" { "Ring one word a line. In the evening the same order stands on the page “Yard round”." }
        div class="papers" {
        @for (_, colony) in view.watched() {
            @let has_hole = view.has_upper_hole(colony);
            @let indoors = view.is_indoors(colony);
            @let is_asked = |question: &&Question| {
                (!question.is_of_hole() || has_hole) && !question.answers(indoors).is_empty()
            };
            section class="paper" {
                h2 { (colony.name) }
                @if indoors { p class="small" { (INDOORS) } }
                table {
                    tbody {
                        @for question in USUAL.iter().chain(&FURTHER).filter(is_asked) {
                            tr { th scope="row" { (question.asks) } td { (answers(question, indoors)) } }
                        }
                        @for (asks, _, _, figure) in typed(indoors) {
                            tr { th scope="row" { (asks) } td { "__________" (figure.unit(view.settings.system)) } }
                        }
                        tr { th scope="row" { "A word" } td { "" } }
                    }
                }
            }
        }
        }
    }
}
