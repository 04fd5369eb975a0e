//! A beginner's guess first, then the model's verdict beside it. Nothing is stored.

use maud::{Markup, html};
use snowhum_advice::fit::{ColonyFit, FitAnswer, Scale, VerdictKind, What};
use snowhum_advice::plan::PlanAnswer;
use snowhum_apiary::Colony;
use snowhum_say::{Message, Tongue, fit_page as text};
use snowhum_units::System;

use super::{amount, bare};
use crate::view::{Asked, View};

pub(super) fn page(view: &View, plan: &PlanAnswer, fit: &FitAnswer, asked: &Asked) -> Markup {
    let guesses: Vec<Option<VerdictKind>> = (0..fit.colonies.len()).map(|at| guessed(asked, at)).collect();
    let tongue = view.tongue();
    let any = guesses.iter().any(Option::is_some);
    let lede = if any { text::guesses() } else { text::facts(&fit.dates.country, plan.as_of) };
    html! {
        p class="lede" { (tongue.say(&lede)) }
        form method="get" action="/fit" {
            input type="hidden" name="guess" value="1";
            @for (at, colony) in fit.colonies.iter().enumerate() {
                section class="fitness" {
                    h2 { (colony.name) }
                    @if let Some(found) = view.apiary.colonies.iter().find(|found| found.name == colony.name) { (facts(colony, found, tongue)) }
                    @match guesses.get(at).copied().flatten() {
                        Some(guess) => (beside(guess, colony, tongue)),
                        None => (choices(at, tongue)),
                    }
                }
            }
            @if guesses.iter().any(Option::is_none) {
                @for (at, guess) in guesses.iter().enumerate() {
                    @if let Some(guess) = guess { input type="hidden" name={ "g" (at) } value=(guess.written()); }
                }
                button class="main" { (tongue.say(&text::show())) }
            }
        }
        p class="no-print" { a href="/fit?guess=1" { (tongue.say(&text::again())) } " · " a href="/fit" { (tongue.say(&text::whole())) } }
    }
}

fn guessed(asked: &Asked, at: usize) -> Option<VerdictKind> {
    let written = asked.get(&format!("g{at}"))?;
    VerdictKind::ALL.into_iter().find(|kind| kind.written() == written)
}

/// The keeper's figures, without what is made of them.
fn facts(colony: &ColonyFit, found: &Colony, tongue: Tongue) -> Markup {
    let told = |scale: &Scale| match scale.what {
        What::Queen | What::Hive => tongue.capital(&scale.says),
        What::Mites => tongue.say(&treated(found, figure(scale, tongue.system()))),
        What::Bees | What::Brood | What::Stores => tongue.say(&figure(scale, tongue.system())),
    };
    html! {
        dl {
            @for scale in &colony.scales { dt { (tongue.say(&scale.what.words())) } dd { (told(scale)) } }
            dt { (tongue.say(&text::seen())) }
            dd { (seen(found, tongue)) }
        }
    }
}

fn figure(scale: &Scale, system: System) -> Message {
    let Some(range) = scale.figure else { return text::not_known() };
    let middle = amount(scale.what, range.p50, system);
    if range.p90 <= range.p10 {
        return middle;
    }
    text::between(bare(scale.what, range.p90, system), bare(scale.what, range.p10, system), middle)
}

fn treated(found: &Colony, figure: Message) -> Message {
    let days: Vec<Message> = found.treatments.iter().map(|treatment| text::day(treatment.on)).collect();
    if days.is_empty() { figure } else { text::treated(days, figure) }
}

/// What ails it, as far as anyone looked.
fn seen(found: &Colony, tongue: Tongue) -> String {
    match &found.autumn.troubles {
        None => tongue.say(&text::not_noted()),
        Some(troubles) if troubles.is_empty() => tongue.say(&text::nothing_wrong()),
        Some(troubles) => {
            tongue.say_all(&troubles.iter().map(|trouble| trouble.message()).collect::<Vec<_>>()).join(", ")
        }
    }
}

fn choices(at: usize, tongue: Tongue) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (tongue.say(&text::guess())) }
            @for kind in VerdictKind::ALL {
                label { input type="radio" name={ "g" (at) } value=(kind.written()); span { (tongue.say(&kind.words())) } }
            }
        }
    }
}

fn beside(guess: VerdictKind, colony: &ColonyFit, tongue: Tongue) -> Markup {
    let verdict = &colony.verdict;
    html! {
        div class="kept" role="status" {
            p { span class="label" { (tongue.say(&text::you())) } " " (tongue.capital(&guess.words())) }
            p { span class="label" { (tongue.say(&text::model())) } " " (tongue.sentence(&verdict.kind.words())) }
            ul { @for reason in &verdict.reasons { li { (tongue.sentence(reason)) } } }
            p { (tongue.say(&if guess == verdict.kind { text::same() } else { text::differ() })) }
        }
    }
}
