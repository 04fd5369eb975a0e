//! Fit for winter? Six scales for each colony and what to do with it.

mod guess;

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::answer::founded;
use snowhum_advice::fit::{Carried, ColonyFit, FitAnswer, Scale, Uniting, Usual, VerdictKind, What};
use snowhum_advice::plan::{ColonyPlan, PlanAnswer};
use snowhum_advice::shortage::WORTH_FEEDING;
use snowhum_advice::verdict::ColonyFirst;
use snowhum_picture::{FigureScale, FigureScales};
use snowhum_say::{Message, Tongue, feed_page, fit_page as text, hives, in_hundred};
use snowhum_units::{Kilogram, SquareMetreKelvinPerWatt, System};

use super::feed::{days_left, stood, to_buy};
use super::questions::heard;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::pages::apiary::chip;
use crate::view::{Asked, View};
use crate::words::{beside, cautioned, marked};

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let last = app.plan().await;
    view.await_for(&last);
    let guesses = asked.get("guess").is_some();
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        (frame::age(&view, &last))
        @match &last.answer {
            Some(Ok(plan)) => @match &plan.fit {
                Some(fit) if guesses => (guess::page(&view, plan, fit, &asked)),
                Some(fit) => (whole(&view, plan, fit)),
                None => p class="caution" { (tongue.say(&feed_page::no_table())) },
            },
            Some(Err(words)) => p class="caution" { (tongue.say(words)) },
            None => {}
        }
    };
    Ok(page(&view, Place::Fit, &heading, &body))
}

fn whole(view: &View, plan: &PlanAnswer, fit: &FitAnswer) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    html! {
        (stood(view, plan))
        p class="lede" { (say(text::lede(&fit.dates.country, plan.as_of))) }
        p class="no-print" { (marked(tongue, &text::learning())) }
        div class="all-fitness" {
            @for (at, one) in fit.colonies.iter().enumerate() {
                @if let Some(colony) = plan.colonies.get(at) { (told(view, (one, colony), first(view, plan, at), at)) }
            }
        }
        (folded(&say(text::last_days()), &html! { ul class="evidence" { @for said in &fit.say { li { (cautioned(tongue, said)) } } } }))
        section {
            h2 { (say(text::buy())) }
            (to_buy(&fit.shopping, days_left(view, plan, &fit.shopping), tongue))
            p { (marked(tongue, &text::which())) }
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
                (reasons(fit, colony, tongue))
            }
            details class="open-on-desk" {
                summary { (tongue.say(&text::six())) }
                (draw::figure(&plate(fit, tongue), &format!("fit{at}"), tongue))
                (looks(fit, tongue))
                (ranges(fit, tongue))
            }
        }
    }
}

/// The first reason in sight, the others a tap down.
fn reasons(fit: &ColonyFit, colony: &ColonyPlan, tongue: Tongue) -> Markup {
    let (first, others) = fit.verdict.reasons.split_at(1.min(fit.verdict.reasons.len()));
    html! {
        @for reason in first { p { (tongue.sentence(reason)) } }
        @if let Some(over) = &colony.over_rule { p { (food(tongue)) " " (tongue.sentence(&over.says)) } }
        @if !others.is_empty() || !fit.say.is_empty() {
            details {
                summary { (tongue.say(&text::why())) }
                ul { @for reason in others { li { (tongue.sentence(reason)) } } }
                @for say in &fit.say { p { (cautioned(tongue, say)) } }
            }
        }
    }
}

fn food(tongue: Tongue) -> Markup {
    html! { span class="label" { (tongue.say(&text::food())) } }
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
            p { (food(tongue)) " " (tongue.say(&text::short(Kilogram::new(first.short_kg)))) }
        }
    }
}

/// What to look at, where the yard file does not say.
fn looks(fit: &ColonyFit, tongue: Tongue) -> Markup {
    let looks: Vec<_> = fit.scales.iter().filter_map(|scale| Some((scale.what, scale.look.as_ref()?))).collect();
    html! {
        @if !looks.is_empty() {
            details {
                summary { (tongue.say(&text::look())) }
                dl { @for (what, look) in looks { dt { (tongue.say(&what.words())) } dd { (tongue.sentence(look)) } } }
            }
        }
    }
}

/// Where each range is from, with the other school where there is one.
fn ranges(fit: &ColonyFit, tongue: Tongue) -> Markup {
    let range = |usual: &Usual| {
        let [hive, region, says, source] = [&usual.hive, &usual.region, &usual.says, &usual.source];
        tongue.say(&text::range(hive, region, says, source, founded(usual.status)))
    };
    html! {
        details {
            summary { (tongue.say(&text::who())) }
            dl {
                @for scale in &fit.scales {
                    dt { (tongue.say(&scale.what.words())) }
                    dd {
                        (tongue.sentence(&scale.says))
                        @if let Some(usual) = &scale.usual { " " (range(usual)) }
                        @if let Some(other) = &scale.other_school { " " (tongue.say(&text::other_school(other))) }
                    }
                }
            }
        }
    }
}

fn united(uniting: &Uniting, is_verdict: bool, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        @if uniting.advised {
            details {
                summary { (say(text::unite(is_verdict))) }
                ol class="ranked" { @for step in &uniting.steps { li { (tongue.sentence(step)) (beside(tongue, step)) } } }
                @if let Some(carried) = &uniting.carried { p class="small" { (say(put_together(uniting, carried))) } }
            }
        } @else {
            @for why in &uniting.against { p { span class="label" { (say(text::not_united())) } " " (tongue.sentence(why)) } }
        }
    }
}

/// What the model makes of it.
fn put_together(uniting: &Uniting, carried: &Carried) -> Message {
    let of = |chance: f64, both: fn(u32, u32) -> Message, nearly: fn(Message) -> Message| match chance {
        0.01..=0.99 => both(100 - hives(chance), hives(chance)),
        _ => nearly(in_hundred(chance)),
    };
    let alone = of(carried.weak_alone, text::alone, text::alone_nearly);
    let together = of(carried.together, text::together, text::together_nearly);
    text::carried(alone, uniting.with.as_ref().map_or_else(text::no_other, Message::from), together)
}

/// The six scales of a colony.
fn plate(fit: &ColonyFit, tongue: Tongue) -> snowhum_picture::Plate {
    let scales = fit.scales.iter().map(|scale| drawn(scale, tongue)).collect();
    FigureScales { title: tongue.say(&text::picture(&fit.name)), scales, tongue }.plate()
}

fn drawn(scale: &Scale, tongue: Tongue) -> FigureScale {
    let system = tongue.system();
    let range = |usual: &Usual| {
        let (low, high) = (bare(scale.what, usual.low, system), amount(scale.what, usual.high, system));
        text::usual(high, low, &usual.region)
    };
    let stands = |middle| tongue.say(&text::stands(amount(scale.what, middle, system), scale.stands.short()));
    FigureScale {
        name: tongue.say(&scale.what.words()),
        stands: scale.figure.map_or_else(String::new, |figure| stands(figure.p50)),
        words: tongue.say(&scale.says),
        usual: scale.usual.as_ref().map(|usual| [usual.low, usual.high]),
        usual_words: tongue.say(&scale.usual.as_ref().map_or_else(text::no_range, range)),
        figure: scale.figure.map(|range| [range.p10, range.p50, range.p90]),
        end: scale.end,
    }
}

/// A figure of a scale with its unit.
fn amount(what: What, value: f64, system: System) -> Message {
    let is_one = (1.0..1.05).contains(&value);
    match (what, system) {
        (What::Stores, _) => text::mass(Kilogram::new(value)),
        (What::Hive, System::Us) => snowhum_say::fit::hive_lid(SquareMetreKelvinPerWatt::new(value)),
        (What::Hive, System::Metric) => text::lid(number(value)),
        (What::Bees, _) => text::bees(number(value)),
        (What::Brood, _) => text::frames(is_one, number(value)),
        (What::Queen, _) => text::winters(is_one, number(value)),
        (What::Mites, _) => text::mites(is_one, number(value)),
    }
}

/// A figure of a scale where the next one tells its unit.
fn bare(what: What, value: f64, system: System) -> Message {
    match (what, system) {
        (What::Stores, _) => text::mass_bare(Kilogram::new(value)),
        (What::Hive, System::Us) => text::resistance(SquareMetreKelvinPerWatt::new(value)),
        _ => number(value),
    }
}

fn number(value: f64) -> Message {
    if value >= 1_000.0 { crate::words::bees(value).into() } else { text::number(is_whole(value), value) }
}

fn is_whole(value: f64) -> bool {
    value.fract().abs() < 0.05
}
