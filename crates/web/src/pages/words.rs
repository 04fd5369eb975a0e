//! Words: the trade's terms on both sides of the ocean, and what work can hurt.

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::glossary::{Term, find, terms};

use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let sought = asked.get("find");
    let found: Vec<&Term> = sought.map_or_else(|| terms().iter().collect(), find);
    let body = html! {
        h1 { "Words" }
        p class="lede" { "What the words mean here, in Britain and in North America." }
        form method="get" action="/words" {
            label for="find" { "A word" }
            input id="find" name="find" maxlength="60" value=(sought.unwrap_or_default());
            button class="main" { "Find it" }
        }
        @if found.is_empty() {
            p { "That word is not among them. " a href="/words" { "All words" } "." }
        } @else {
            (table(&found))
        }
        p class="small" { "Which of the two the pages use is chosen under " a href="/settings" { "Settings" } ". Meanings are common practice in words of our own." }
        section { h2 { "Where work can hurt" } (cautions()) }
    };
    Ok(page(&view, Place::Words, "Words", &body))
}

fn table(found: &[&Term]) -> Markup {
    html! {
        div class="wide" tabindex="0" role="region" aria-label="Words" translate="no" {
            table class="terms" {
                thead { tr { th scope="col" { "British" } th scope="col" { "North American" } th scope="col" { "Meaning" } } }
                tbody {
                    @for term in found {
                        tr {
                            th scope="row" { strong { (term.british) } }
                            td { (term.american) }
                            td { (term.means) @if let Some(trap) = &term.trap { " " em { (trap) } } }
                        }
                    }
                }
            }
        }
    }
}

fn cautions() -> Markup {
    html! {
        dl class="cautions" {
            @for hazard in Hazard::ALL {
                @let caution = hazard.caution();
                dt id=(hazard.name()) { (caution.title) }
                dd { (caution.says) " " span class="small" translate="no" { "(" (caution.status) ": " (caution.source) ".)" } }
            }
        }
    }
}
