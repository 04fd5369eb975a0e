//! Things worth doing, on a page.

use maud::{Markup, html};
use snowhum_advice::answer::ActionAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_say::{Message, Tongue, hive_page as text};

use crate::words::{cautioned, marked};

pub(crate) fn actions(colony: &ColonyNow, currency: &str, tongue: Tongue) -> Markup {
    let first = if colony.nothing_helps { text::nothing_helps() } else { colony.look_first.says.clone() };
    html! {
        p { (tongue.say(&first)) }
        @if !colony.actions.is_empty() {
            ol class="actions" { @for action in &colony.actions { (one(action, currency, tongue)) } }
        }
    }
}

/// The days for it.
fn when(action: &ActionAnswer) -> Message {
    if action.from == action.by { text::on(action.by) } else { text::from_to(action.from, action.by) }
}

fn one(action: &ActionAnswer, currency: &str, tongue: Tongue) -> Markup {
    html! {
        li {
            p { (marked(tongue, &text::action(action.instead, &action.what, when(action)))) }
            p { (tongue.capital(&action.why)) "." }
            @if let Some(caution) = &action.caution { p class="caution" { (cautioned(tongue, &text::take_care(caution))) } }
            details {
                summary { (tongue.say(&text::worth())) }
                p { (tongue.capital(&action.worth(currency))) "." }
                @if let Some(rule) = &action.rule_of_thumb { p { (tongue.say(&text::rule(rule))) } }
                @if !action.sources.is_empty() {
                    ul { @for source in &action.sources { li { (tongue.say(source)) } } }
                }
            }
        }
    }
}
