//! Things worth doing, on a page.

use maud::{Markup, html};
use snowhum_advice::answer::ActionAnswer;
use snowhum_advice::now::ColonyNow;

use crate::words::{capital, date};

pub(crate) fn actions(colony: &ColonyNow, currency: &str) -> Markup {
    html! {
        section {
            h2 { "What to do" }
            @if colony.nothing_helps {
                p { (if colony.actions.is_empty() { "Nothing you can do now changes this." } else { "Nothing that clearly helps." }) }
            } @else {
                p { (colony.look_first.says) }
            }
            @if !colony.actions.is_empty() {
                ol class="actions" { @for action in &colony.actions { (one(action, currency)) } }
            }
        }
    }
}

fn one(action: &ActionAnswer, currency: &str) -> Markup {
    html! {
        li {
            p { strong { (capital(&action.what)) } ", from " (date(action.from)) " to " (date(action.by)) "." }
            p { (capital(&action.why)) "." }
            @if let Some(caution) = &action.caution { p class="caution" { strong { "Take care: " } (caution) "." } }
            details {
                summary { "Its worth, and who says so" }
                p {
                    @if action.too_close_to_call {
                        "Too close to call: chance could turn it either way."
                    } @else {
                        (format!("About {:.0} hives in 100 more alive, fed and queenright (± {:.0}), ", action.worth_hives_in_100, action.plus_minus))
                        (format!("{:.0} {currency} after its cost of {:.0} {currency}.", action.worth_money, action.cost_money))
                    }
                }
                @if let Some(rule) = &action.rule_of_thumb { p { "Beside it, a rule of the trade: " (rule) "." } }
                @if !action.sources.is_empty() {
                    ul { @for source in &action.sources { li { (source) } } }
                }
            }
        }
    }
}
