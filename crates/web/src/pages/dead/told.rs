//! The answer: stop, or causes with what to look at next and what can be used again.

use maud::{Markup, html};
use snowhum_advice::deadout::{DeadoutAnswer, Question, Seen};
use snowhum_apiary::Colony;
use snowhum_say::Tongue;

use super::form::words;
use crate::ids;
use crate::pages::hive;
use crate::view::View;
use crate::words::capital;

/// Foulbrood may be in it: nothing else is shown.
pub(super) fn stopped(view: &View, colony: &Colony, answer: &DeadoutAnswer) -> Markup {
    let Some(stop) = &answer.stop else { return html! {} };
    let tongue = view.tongue();
    html! {
        section class="stop" role="alert" {
            h2 { "Stop: this may be foulbrood" }
            p class="lede" { (stop.r#do) }
            p { (stop.why) }
            p { "Seen: " (stop.signs.join(", ").replace('-', " ")) "." }
            @for caution in &answer.cautions { p { (caution) } }
            p { "Comb: " (tongue.say(&answer.reuse.comb)) ". Stores: " (tongue.say(&answer.reuse.stores)) "." }
        }
        (keep(view, colony, answer))
        p { a href={ "/dead/" (colony.id.0) } { "I looked again: back to the four questions" } }
    }
}

/// Causes, where to look next, what can be used again.
pub(super) fn told(view: &View, at: usize, answer: &DeadoutAnswer, questions: &[Question]) -> Markup {
    let tongue = view.tongue();
    html! {
        @if let Some(first) = &answer.brood_first { p class="caution" { (first) } }
        section class="kept" role="status" {
            h2 { (tongue.say(&answer.likeliest())) }
            (causes(answer))
            @if let Some(look) = answer.look() { p { span class="label" { "Look next" } " " (tongue.say(&look)) } }
            p { a class="no-print" href="#signs" { "Tell more of what you see" } }
        }
        (records(answer, questions, tongue))
        @for say in &answer.say { p { (tongue.say(say)) } }
        @for caution in &answer.cautions { p class="caution" { (caution) } }
        section {
            h2 { "What can be used again" }
            dl {
                dt { "Comb" } dd { (tongue.sentence(&answer.reuse.comb)) }
                dt { "Stores, for bees" } dd { (tongue.sentence(&answer.reuse.stores)) }
                dt { "People" } dd { (tongue.say(&answer.reuse.people)) }
            }
        }
        section {
            h2 { "While it is open" }
            dl {
                @for after in &answer.after { dt { (after.what) } dd { (after.words) } }
            }
        }
        @if let Some(now) = view.colony_now(at) {
            section {
                h2 { "What the watch made of it from outside" }
                (hive::ended(now, tongue))
                p class="small" { "From weather and notes alone. It is not mixed into the causes above, since it stands on the same facts." }
            }
        }
        details {
            summary { "Says who?" }
            ul { @for source in &answer.sources { li { (tongue.say(source)) } } @for after in &answer.after { @if after.source != "none" { li { (after.what) ": " (after.source) } } } }
        }
    }
}

fn causes(answer: &DeadoutAnswer) -> Markup {
    let hundred = |chance: f64| format!("{:.0}", 100.0 * chance);
    html! {
        table class="causes" {
            caption { "Of 100 hives that look like this; the range is what others who know might say" }
            thead { tr { th scope="col" { "Cause" } th scope="col" { "Of 100" } th scope="col" { "Between" } } }
            tbody {
                @for cause in answer.listed() {
                    tr {
                        th scope="row" { (capital(&cause.words)) }
                        td { (hundred(cause.p)) }
                        td { (hundred(cause.low)) " and " (hundred(cause.high)) }
                    }
                }
            }
        }
    }
}

/// What the records answered in the keeper's place.
fn records(answer: &DeadoutAnswer, questions: &[Question], tongue: Tongue) -> Markup {
    let ask =
        |name: &str| questions.iter().find(|one| one.name == name).map_or(name, |one| one.ask.as_str()).to_owned();
    html! {
        @if !answer.from_records.is_empty() {
            details {
                summary { (answer.from_records.len()) " taken from the records" }
                ul class="sources" {
                    @for record in &answer.from_records {
                        li { (ask(&record.sign)) " " strong { (capital(words(record.seen))) } ": " (tongue.say(&record.because)) "." }
                    }
                }
            }
        }
    }
}

/// Keeps what was told; what the records answered is kept with it.
pub(super) fn keep(view: &View, colony: &Colony, answer: &DeadoutAnswer) -> Markup {
    let is_taken = |name: &str| answer.from_records.iter().any(|record| record.sign == name);
    let value = |seen: Seen| match seen {
        Seen::Yes => "yes",
        Seen::FairlyYes => "fairly-sure",
        Seen::FairlyNo => "fairly-no",
        Seen::No => "no",
        Seen::Unseen => "",
    };
    html! {
        form class="no-print" method="post" action={ "/dead/" (colony.id.0) } {
            input type="hidden" name="visit" value=(ids::new_id(jiff::Timestamp::now()));
            @for sign in answer.signs.iter().filter(|sign| sign.seen != Seen::Unseen && !is_taken(&sign.sign)) {
                input type="hidden" name=(sign.sign) value=(value(sign.seen));
            }
            label for="on" { "Day it was examined, if not " (snowhum_advice::words::day(view.now.date())) }
            input id="on" name="on" type="date" max=(view.now.date());
            button class="main" { "Keep in the record" }
        }
    }
}
