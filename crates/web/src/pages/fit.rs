//! Fit for winter? Six scales for each colony and what to do with it.

mod guess;

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::fit::{ColonyFit, FitAnswer, Scale, Uniting, VerdictKind};
use snowhum_advice::plan::{ColonyPlan, PlanAnswer};
use snowhum_advice::shortage::WORTH_FEEDING;
use snowhum_advice::verdict::ColonyFirst;
use snowhum_advice::words::day;
use snowhum_picture::{FigureScale, FigureScales};
use snowhum_say::{Tongue, words};
use snowhum_units::{Kilogram, System};

use super::feed::{days_left, stood, to_buy};
use super::questions::heard;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::pages::apiary::chip;
use crate::view::{Asked, View};
use crate::words::{both_ways, mass};

/// Thermal resistance in the units of North America for one m² K/W.
const R_OF_SI: f64 = 5.678;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let last = app.plan().await;
    view.await_for(&last);
    let guesses = asked.get("guess").is_some();
    let body = html! {
        h1 { "Fit for winter?" }
        (frame::age(&view, &last))
        @match &last.answer {
            Some(Ok(plan)) => @match &plan.fit {
                Some(fit) if guesses => (guess::page(&view, plan, fit, &asked)),
                Some(fit) => (whole(&view, plan, fit)),
                None => p class="caution" { "The table of what is usual cannot be read." },
            },
            Some(Err(words)) => p class="caution" { (words) },
            None => {}
        }
    };
    Ok(page(&view, Place::Fit, "Fit for winter?", &body))
}

fn whole(view: &View, plan: &PlanAnswer, fit: &FitAnswer) -> Markup {
    html! {
        (stood(view, plan))
        p class="lede" { "Each colony as it was found on " (day(plan.as_of)) ", held against what is usual here: " (view.tongue().say(&fit.dates.country)) "." }
        p class="no-print" { "Learning? " a href="/fit?guess=1" { "Guess first, then see" } "." }
        div class="all-fitness" {
            @for (at, one) in fit.colonies.iter().enumerate() {
                @if let Some(colony) = plan.colonies.get(at) { (told(view, (one, colony), first(view, plan, at), at)) }
            }
        }
        (folded("The yard's last days", &html! { ul class="evidence" { @for say in &fit.say { li { (view.tongue().say(say)) } } } }))
        section {
            h2 { "To buy" }
            (to_buy(&fit.shopping, days_left(view, plan, &fit.shopping), view.settings.system))
            p { a href="/feed" { "Which hive gets what, and how" } "." }
        }
        (heard("/fit", view.tongue()))
    }
}

/// What is told first of a colony: as it stands on the day asked about, and until that is known as it was counted.
fn first<'a>(view: &'a View, plan: &'a PlanAnswer, at: usize) -> Option<&'a ColonyFirst> {
    let first = view.standing.as_ref().map_or(&plan.first, |standing| &standing.present.now.first);
    first.colonies.get(at)
}

fn told(view: &View, (fit, colony): (&ColonyFit, &ColonyPlan), first: Option<&ColonyFirst>, at: usize) -> Markup {
    let tongue = view.tongue();
    html! {
        section class="fitness" {
            div {
                h2 { (fit.name) " " @if let Some(first) = first { (chip(view, &first.verdict)) } }
                @if let Some(first) = first { (due(first, tongue)) }
                @if let Some(uniting) = &fit.unite { (united(uniting, fit.verdict.kind == VerdictKind::Unite, tongue)) }
                @let (first, others) = fit.verdict.reasons.split_at(1.min(fit.verdict.reasons.len()));
                @for reason in first { p { (tongue.capital(reason)) "." } }
                @if let Some(over) = &colony.over_rule { p { span class="label" { "Food" } " " (tongue.capital(&over.says)) "." } }
                @if !others.is_empty() || !fit.say.is_empty() {
                    details {
                        summary { "Why" }
                        ul { @for reason in others { li { (tongue.capital(reason)) "." } } }
                        @for say in &fit.say { p { (tongue.say(say)) } }
                    }
                }
            }
            details class="open-on-desk" {
                summary { "Six scales, and says who" }
                (draw::figure(&plate(fit, tongue), &format!("fit{at}"), tongue))
                (looks(fit, tongue))
                (ranges(fit, tongue))
            }
        }
    }
}

/// What is to be done for a colony, the first first, and what it is short of.
fn due(first: &ColonyFirst, tongue: Tongue) -> Markup {
    html! {
        @if first.steps.len() > 1 {
            ol class="ranked" { @for step in &first.steps { li { (tongue.sentence(&step.words())) } } }
        } @else {
            p class="about" { (tongue.sentence(&first.says())) }
        }
        @if first.short_kg >= WORTH_FEEDING.get() {
            p { span class="label" { "Food" } " " (tongue.say(&words::portion(Kilogram::new(first.short_kg)))) " of stores short." }
        }
    }
}

/// What to look at, where the yard file does not say.
fn looks(fit: &ColonyFit, tongue: Tongue) -> Markup {
    let looks: Vec<_> = fit.scales.iter().filter_map(|scale| Some((scale.what, scale.look.as_ref()?))).collect();
    html! {
        @if !looks.is_empty() {
            details {
                summary { "What to look at" }
                dl { @for (what, look) in looks { dt { (tongue.say(&what.words())) } dd { (tongue.capital(look)) "." } } }
            }
        }
    }
}

/// Where each range is from, with the other school where there is one.
fn ranges(fit: &ColonyFit, tongue: Tongue) -> Markup {
    html! {
        details {
            summary { "Says who?" }
            dl {
                @for scale in &fit.scales {
                    dt { (tongue.say(&scale.what.words())) }
                    dd {
                        (tongue.capital(&scale.says)) "."
                        @if let Some(usual) = &scale.usual {
                            @let [region, hive, says, source] = [&usual.region, &usual.hive, &usual.says, &usual.source].map(|part| tongue.say(part));
                            " " (region) ", " (hive) ": " (says) " (" (source) "; " (usual.status.words()) ")."
                        }
                        @if let Some(other) = &scale.other_school { " Other school: " (tongue.say(other)) "." }
                    }
                }
            }
        }
    }
}

fn united(uniting: &Uniting, is_verdict: bool, tongue: Tongue) -> Markup {
    html! {
        @if uniting.advised {
            details {
                summary { (if is_verdict { "How the two are put together" } else { "If you would rather unite it" }) }
                ol class="ranked" { @for step in &uniting.steps { li { (tongue.capital(step)) "." } } }
                @if let Some(carried) = &uniting.carried {
                    p class="small" {
                        "In the model, alone: " (both_ways(carried.weak_alone, "come to spring", "do not")) ". Put to "
                        (uniting.with.as_deref().unwrap_or("none")) ": " (both_ways(carried.together, "do as one", "do not")) "."
                    }
                }
            }
        } @else {
            @for why in &uniting.against { p { span class="label" { "Not united" } " " (tongue.capital(why)) "." } }
        }
    }
}

/// The six scales of a colony.
fn plate(fit: &ColonyFit, tongue: Tongue) -> snowhum_picture::Plate {
    let scales = fit.scales.iter().map(|scale| drawn(scale, tongue)).collect();
    FigureScales { title: format!("{} on six scales", fit.name), scales }.plate()
}

fn drawn(scale: &Scale, tongue: Tongue) -> FigureScale {
    let system = tongue.system();
    let usual_words = match &scale.usual {
        Some(usual) => {
            let (low, _) = parts(usual.low, &scale.unit, system);
            format!("usual {low} to {}: {}", amount(usual.high, &scale.unit, system), tongue.say(&usual.region))
        }
        None => "no range is known for this place".to_owned(),
    };
    FigureScale {
        name: tongue.say(&scale.what.words()),
        stands: scale.figure.map_or_else(String::new, |range| {
            format!("{} · {}", amount(range.p50, &scale.unit, system), tongue.say(&scale.stands.short()))
        }),
        words: tongue.say(&scale.says),
        usual: scale.usual.as_ref().map(|usual| [usual.low, usual.high]),
        usual_words,
        figure: scale.figure.map(|range| [range.p10, range.p50, range.p90]),
        end: scale.end,
    }
}

/// A figure with its unit.
pub(super) fn amount(value: f64, unit: &str, system: System) -> String {
    let (number, unit) = parts(value, unit, system);
    format!("{number} {unit}")
}

/// A figure and its unit, in the keeper's system.
pub(super) fn parts(value: f64, unit: &str, system: System) -> (String, String) {
    match (unit, system) {
        ("kg", _) => {
            let shown = mass(value, system);
            shown.split_once(' ').map_or((shown.clone(), String::new()), |(a, b)| (a.to_owned(), b.to_owned()))
        }
        (lid, System::Us) if lid.starts_with("m²") => {
            (format!("R {:.0}", value * R_OF_SI), "over the bees".to_owned())
        }
        _ if plain(value) == "1" => (
            "1".to_owned(),
            unit.replacen("winters", "winter", 1).replacen("frames", "frame", 1).replacen("mites", "mite", 1),
        ),
        _ => (plain(value), unit.to_owned()),
    }
}

fn plain(value: f64) -> String {
    if value >= 1_000.0 {
        crate::words::bees(value)
    } else if value.fract().abs() < 0.05 {
        format!("{value:.0}")
    } else {
        format!("{value:.1}")
    }
}
