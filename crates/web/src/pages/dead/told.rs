//! The answer: stop, or causes with what to look at next and what can be used again.

use maud::{Markup, html};
use snowhum_advice::deadout::{DeadoutAnswer, Question, Seen};
use snowhum_apiary::Colony;
use snowhum_say::{Message, Tongue, dead_page as text, deadout_table};

use super::form::words;
use crate::ids;
use crate::pages::hive;
use crate::view::View;
use crate::words::{cautioned, marked};

/// Foulbrood may be in it: nothing else is shown.
pub(super) fn stopped(view: &View, colony: &Colony, answer: &DeadoutAnswer) -> Markup {
    let Some(stop) = &answer.stop else { return html! {} };
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let signs = stop
        .signs
        .iter()
        .map(|sign| deadout_table::named(&format!("{sign}-seen")).unwrap_or_else(|| sign.into()))
        .collect();
    html! {
        section class="stop" role="alert" {
            h2 { (say(text::stop())) }
            p class="lede" { (tongue.say(&stop.r#do)) }
            p { (tongue.say(&stop.why)) }
            p { (say(text::seen(signs))) }
            @for caution in &answer.cautions { p { (cautioned(tongue, caution)) } }
            p { (say(text::stop_reuse(&answer.reuse.comb, &answer.reuse.stores))) }
        }
        (keep(view, colony, answer))
        p { a href={ "/dead/" (colony.id.0) } { (say(text::looked_again())) } }
    }
}

/// Causes, where to look next, what can be used again.
pub(super) fn told(view: &View, at: usize, answer: &DeadoutAnswer, questions: &[Question]) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    html! {
        @if let Some(first) = &answer.brood_first { p class="caution" { (tongue.say(first)) } }
        section class="kept" role="status" {
            h2 { (tongue.say(&answer.likeliest())) }
            (causes(answer, tongue))
            @if let Some(look) = answer.look() { p { span class="label" { (say(text::look_next())) } " " (tongue.say(&look)) } }
            p { a class="no-print" href="#signs" { (say(text::tell_more())) } }
        }
        (records(answer, questions, tongue))
        @for said in &answer.say { p { (tongue.say(said)) } }
        @for caution in &answer.cautions { p class="caution" { (cautioned(tongue, caution)) } }
        section {
            h2 { (say(text::reuse())) }
            dl {
                dt { (say(text::comb())) } dd { (tongue.sentence(&answer.reuse.comb)) }
                dt { (say(text::stores())) } dd { (tongue.sentence(&answer.reuse.stores)) }
                dt { (say(text::people())) } dd { (tongue.say(&answer.reuse.people)) }
            }
        }
        section {
            h2 { (say(text::open())) }
            dl { @for after in &answer.after { dt { (tongue.say(&after.what)) } dd { (tongue.say(&after.words)) } } }
        }
        @if let Some(now) = view.colony_now(at) {
            section {
                h2 { (say(text::watch())) }
                (hive::ended(now, tongue))
                p class="small" { (say(text::watch_note())) }
            }
        }
        details {
            summary { (say(text::who())) }
            ul { @for source in &answer.sources { li { (tongue.say(source)) } } @for after in &answer.after { @if after.source != "none" { li { (tongue.say(&after.what)) ": " (after.source) } } } }
        }
    }
}

fn causes(answer: &DeadoutAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        table class="causes" {
            caption { (say(text::causes())) }
            thead { tr { @for head in [text::cause(), text::of_hundred(), text::between()] { th scope="col" { (say(head)) } } } }
            tbody {
                @for cause in answer.listed() {
                    tr {
                        th scope="row" { (tongue.capital(&cause.words)) }
                        td { (format!("{:.0}", 100.0 * cause.p)) }
                        td { (say(text::range(100.0 * cause.high, 100.0 * cause.low))) }
                    }
                }
            }
        }
    }
}

/// What the records answered in the keeper's place.
fn records(answer: &DeadoutAnswer, questions: &[Question], tongue: Tongue) -> Markup {
    let of = |name: &str| questions.iter().find(|one| one.name == name);
    let ask = |name: &str| of(name).map_or_else(|| name.into(), |one| one.ask.clone());
    html! {
        @if !answer.from_records.is_empty() {
            details {
                summary { (tongue.say(&text::taken(answer.from_records.len()))) }
                ul class="sources" {
                    @for record in &answer.from_records {
                        li { (marked(tongue, &text::taken_one(ask(&record.sign), &record.because, words(record.seen)))) }
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
    let today = view.now.date();
    html! {
        form class="no-print" method="post" action={ "/dead/" (colony.id.0) } {
            input type="hidden" name="visit" value=(ids::new_id(jiff::Timestamp::now()));
            @for sign in answer.signs.iter().filter(|sign| sign.seen != Seen::Unseen && !is_taken(&sign.sign)) {
                input type="hidden" name=(sign.sign) value=(value(sign.seen));
            }
            label for="on" { (view.tongue().say(&text::examined_on(today))) }
            input id="on" name="on" type="date" max=(today);
            button class="main" { (view.tongue().say(&text::keep())) }
        }
    }
}
