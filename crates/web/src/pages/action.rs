//! Things worth doing, on a page.

use maud::{Markup, html};
use snowhum_advice::answer::ActionAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_say::Tongue;

use crate::words::date;

pub(crate) fn actions(colony: &ColonyNow, currency: &str, tongue: Tongue) -> Markup {
    html! {
        @if colony.nothing_helps {
            p { "Nothing that was tried in the model helps by more than chance." }
        } @else {
            p { (tongue.say(&colony.look_first.says)) }
        }
        @if !colony.actions.is_empty() {
            ol class="actions" { @for action in &colony.actions { (one(action, currency, tongue)) } }
        }
    }
}

/// The days for it.
pub(super) fn when(action: &ActionAnswer) -> Markup {
    html! {
        @if action.from == action.by { "on " (date(action.by)) }
        @else { "from " (date(action.from)) " to " (date(action.by)) }
    }
}

fn one(action: &ActionAnswer, currency: &str, tongue: Tongue) -> Markup {
    html! {
        li {
            p { @if action.instead { "Or instead: " } strong { (tongue.capital(&action.what)) } ", " (when(action)) "." }
            p { (tongue.capital(&action.why)) "." }
            @if let Some(caution) = &action.caution { p class="caution" { strong { "Take care: " } (tongue.say(caution)) "." } }
            details {
                summary { "Its worth, and who says so" }
                p { (tongue.capital(&action.worth(currency))) "." }
                @if let Some(rule) = &action.rule_of_thumb { p { "Beside it, a rule of the trade: " (tongue.say(rule)) "." } }
                @if !action.sources.is_empty() {
                    ul { @for source in &action.sources { li { (tongue.say(source)) } } }
                }
            }
        }
    }
}
