//! Words: the trade's terms on both sides of the ocean, and what work can hurt.

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::glossary::{Term, find, terms};
use snowhum_say::{Message, Tongue, words_page as text};

use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::{cautioned, founded, marked};

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let sought = asked.get("find");
    let found: Vec<&Term> = sought.map_or_else(|| terms().iter().collect(), find);
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede())) }
        form method="get" action="/words" {
            label for="find" { (say(text::word())) }
            input id="find" name="find" maxlength="60" value=(sought.unwrap_or_default());
            button class="main" { (say(text::find())) }
        }
        @if found.is_empty() {
            p { (marked(tongue, &text::not_found())) }
        } @else {
            (table(&found, tongue))
        }
        p class="small" { (marked(tongue, &text::which())) }
        section { h2 { (say(text::hurt())) } (cautions(tongue)) }
    };
    Ok(page(&view, Place::Words, &heading, &body))
}

fn table(found: &[&Term], tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(text::heading())) translate="no" {
            table class="terms" {
                thead { tr { @for head in [text::british(), text::american(), text::meaning()] { th scope="col" { (say(head)) } } } }
                tbody {
                    @for term in found {
                        tr {
                            th scope="row" { strong { (term.british) } }
                            td { (term.american) }
                            td { (tongue.say(&term.means)) @if let Some(trap) = &term.trap { " " em { (tongue.say(trap)) } } }
                        }
                    }
                }
            }
        }
    }
}

fn cautions(tongue: Tongue) -> Markup {
    html! {
        dl class="cautions" {
            @for hazard in Hazard::ALL {
                dt id=(hazard.name()) { (tongue.say(&hazard.title())) }
                dd {
                    (cautioned(tongue, &hazard.says())) " "
                    @if let Some(on) = hazard.founded() { span class="small" translate="no" { "(" (tongue.say(&founded(&on.status))) ": " (on.source) ".)" } }
                }
            }
        }
    }
}
