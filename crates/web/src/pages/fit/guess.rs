//! A beginner's guess first, then the model's verdict beside it. Nothing is stored.

use maud::{Markup, html};
use snowhum_advice::fit::{ColonyFit, FitAnswer, Scale, VerdictKind, What};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::words::day;
use snowhum_apiary::Colony;
use snowhum_say::Tongue;
use snowhum_units::System;

use super::{amount, parts};
use crate::view::{Asked, View};

pub(super) fn page(view: &View, plan: &PlanAnswer, fit: &FitAnswer, asked: &Asked) -> Markup {
    let guesses: Vec<Option<VerdictKind>> = (0..fit.colonies.len()).map(|at| guessed(asked, at)).collect();
    let tongue = view.tongue();
    let any = guesses.iter().any(Option::is_some);
    html! {
        p class="lede" {
            @if any { "Your guesses beside the model's. Neither has looked in spring." }
            @else { "The facts of " (day(plan.as_of)) ", " (view.tongue().say(&fit.dates.country)) ". What would you do with each colony?" }
        }
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
                button class="main" { "Show the model's" }
            }
        }
        p class="no-print" { a href="/fit?guess=1" { "Guess again" } " · " a href="/fit" { "The whole page" } }
    }
}

fn guessed(asked: &Asked, at: usize) -> Option<VerdictKind> {
    let written = asked.get(&format!("g{at}"))?;
    VerdictKind::ALL.into_iter().find(|kind| kind.written() == written)
}

/// The keeper's figures, without what is made of them.
fn facts(colony: &ColonyFit, found: &Colony, tongue: Tongue) -> Markup {
    html! {
        dl {
            @for scale in &colony.scales {
                dt { (tongue.say(&scale.what.words())) }
                dd {
                    @match scale.what {
                        What::Queen | What::Hive => (tongue.capital(&scale.says)),
                        _ => (figure(scale, tongue.system())),
                    }
                    @if scale.what == What::Mites { (treated(found)) }
                }
            }
            dt { "Seen" }
            dd { (seen(found)) }
        }
    }
}

fn figure(scale: &Scale, system: System) -> String {
    let Some(range) = scale.figure else { return "not known".to_owned() };
    let middle = amount(range.p50, &scale.unit, system);
    if range.p90 <= range.p10 {
        return middle;
    }
    let (low, high) = (parts(range.p10, &scale.unit, system).0, parts(range.p90, &scale.unit, system).0);
    format!("{middle} ({low} to {high})")
}

fn treated(found: &Colony) -> String {
    let days: Vec<String> = found.treatments.iter().map(|treatment| day(treatment.on)).collect();
    if days.is_empty() { String::new() } else { format!("; treated {}", days.join(", ")) }
}

/// What ails it, as far as anyone looked.
fn seen(found: &Colony) -> String {
    match &found.autumn.troubles {
        None => "nothing is noted either way".to_owned(),
        Some(troubles) if troubles.is_empty() => "nothing wrong".to_owned(),
        Some(troubles) => troubles.iter().map(|trouble| trouble.words()).collect::<Vec<_>>().join(", "),
    }
}

fn choices(at: usize, tongue: Tongue) -> Markup {
    html! {
        fieldset class="choices" {
            legend { "Your guess" }
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
            p { span class="label" { "You" } " " (tongue.capital(&guess.words())) }
            p { span class="label" { "The model" } " " (tongue.capital(&verdict.kind.words())) "." }
            ul { @for reason in &verdict.reasons { li { (tongue.capital(reason)) "." } } }
            @if guess == verdict.kind { p { "The same." } } @else { p { "They differ. Where the reasons do not convince you, look again at the bees: you know what the figures leave out." } }
        }
    }
}
