//! Mites: every count of the yard with the worst first, and when each class of treatment can work here.

use axum::extract::State;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::fit::{ClassWindow, FitAnswer};
use snowhum_advice::sums::mites::{ColonyMites, MitesAnswer, SeasonDays, of_yard};
use snowhum_advice::words::day;
use snowhum_apiary::Apiary;
use snowhum_say::Tongue;

use super::feed::stood;
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::view::View;
use crate::words::{capital, date};

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let plan = app.plan().await;
    let jobs = app.windows().await;
    view.await_for(&plan);
    view.await_for(&jobs);
    let days = jobs.told().and_then(|jobs| SeasonDays::of(jobs, &view.apiary.site));
    let counted = of_yard(&view.apiary, None, None, days.as_ref());
    let body = html! {
        h1 { "Mites" }
        (frame::age(&view, &plan))
        @if let Some(plan) = plan.told() { (stood(&view, plan)) }
        @match &counted {
            Some(Ok(answer)) => (counts(&view, answer)),
            Some(Err(wrong)) => p class="caution" { (view.tongue().say(&wrong.says())) },
            None => p class="lede" {
                "Nobody has counted in this yard. Seeing no mites says little: of samples of 100 bees 37 in 100 show none where 1 bee in 100 carries one."
            },
        }
        (uncounted(&view.apiary))
        p class="small" { "Mites washed off bees are noted at the hive, such as " code { "mites=14 of 300" } "; the last count stands here." }
        (heard("/mites", view.tongue()))
        @match &plan.answer {
            Some(Ok(plan)) => @if let Some(fit) = &plan.fit { (windows(fit, days.as_ref(), view.tongue())) },
            Some(Err(words)) => p class="caution" { (words) },
            None => {}
        }
    };
    Ok(page(&view, Place::Mites, "Mites", &body))
}

fn counts(view: &View, answer: &MitesAnswer) -> Markup {
    let (apiary, tongue) = (&view.apiary, view.tongue());
    let mut sorted: Vec<&ColonyMites> = answer.colonies.iter().collect();
    sorted.sort_by(|a, b| b.rate.total_cmp(&a.rate));
    html! {
        p class="lede" {
            @if let Some(yard) = &answer.yard { (tongue.say(&yard.say)) }
            @else if let Some(one) = sorted.first() { (one.name) ": " (tongue.say(&one.verdict.words())) "." }
        }
        div class="wide" tabindex="0" role="region" aria-label="Mites, the worst first" { table {
            caption { "Mites per 100 bees, the worst first, and between what 95 of 100 such samples leave it; the line is " (answer.line.says) " (" (answer.line.region) ": " (answer.line.source) ")" }
            thead { tr { th scope="col" { "Colony" } th scope="col" { "Counted" } th scope="col" { "Per 100" } th scope="col" { "Against the line" } } }
            tbody { @for one in &sorted { tr {
                th scope="row" { (one.name) }
                td { (one.found) " in " (one.bees.unwrap_or(0)) @if let Some(on) = counted_on(apiary, &one.name) { ", " (date(on)) } }
                td { (format!("{:.1} ({:.1} to {:.1})", one.rate, one.uneven.low, one.uneven.high)) }
                td { (tongue.say(&one.verdict.words())) @if let Some(treated) = treated(apiary, &one.name) { (treated) } }
            } } }
        } }
        @let (first, others) = answer.say.split_at(1.min(answer.say.len()));
        @for say in first { p { (tongue.say(say)) } }
        details {
            summary { "More of it, other lines, and says who" }
            ul {
                @for say in others { li { (tongue.say(say)) } }
                @for line in &answer.other_lines { li { (line.region) ": " (line.says) " (" (line.source) ")" } }
                @for source in &answer.sources { li { (tongue.capital(source)) } }
            }
        }
    }
}

fn counted_on(apiary: &Apiary, name: &str) -> Option<Date> {
    let colony = apiary.colonies.iter().find(|colony| colony.name == name)?;
    apiary.last_mite_count(colony, Date::MAX).map(|count| count.on)
}

/// What was done since the count, so that nobody takes an old count for today's.
fn treated(apiary: &Apiary, name: &str) -> Option<String> {
    let colony = apiary.colonies.iter().find(|colony| colony.name == name)?;
    let counted = counted_on(apiary, name)?;
    let treated = apiary.treated_since(colony, counted)?;
    Some(format!("; treated since, on {}: count again", day(treated)))
}

fn uncounted(apiary: &Apiary) -> Markup {
    let names: Vec<&str> = apiary
        .colonies
        .iter()
        .filter(|colony| apiary.last_mite_count(colony, Date::MAX).is_none())
        .map(|colony| colony.name.as_str())
        .collect();
    html! { @if !names.is_empty() { p { span class="label" { "Not counted" } " " (names.join(", ")) ". They may be the worst." } } }
}

fn windows(fit: &FitAnswer, days: Option<&SeasonDays>, tongue: Tongue) -> Markup {
    let [all, none] = fit.treat_before;
    html! {
        section {
            h2 { "When a treatment can work here" }
            p {
                @match days {
                    Some(days) => {
                        "Begun by " (date(days.safe)) " to be safe"
                        @if days.usual != days.safe { " (" (date(days.usual)) " is in time in half of all years)" }
                    }
                    None => { "Done before about " (date(all)) }
                }
                ", a treatment spares the brood that becomes winter bees; each week later spares less of it, and after about " (date(none))
                " none: then it protects the neighbours and next year's bees, not bees already hurt. A treatment in November alone is no cure for this winter."
            }
            @for hazard in [Hazard::Label, Hazard::Acids] { p class="caution" { (hazard.says()) } }
            (folded("Class by class", &html! {
                dl { @for window in &fit.windows { (one_window(window, tongue)) } }
                p class="small" { (tongue.say(&fit.winter_bees)) " Days are from this site's weather, 8 in 10 between those in brackets." }
            }))
        }
    }
}

fn one_window(window: &ClassWindow, tongue: Tongue) -> Markup {
    html! {
        dt { (capital(&window.class)) }
        dd {
            (tongue.sentence(&window.says)) " " (capital(&window.brood)) "; " (window.supers) ". " (capital(&window.weather)) ". "
            span class="small" { (window.source) }
        }
    }
}
