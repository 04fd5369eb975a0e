//! Mites: every count of the yard with the worst first, and when each class of treatment can work here.

use axum::extract::State;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::fit::{ClassWindow, FitAnswer};
use snowhum_advice::sums::mites::{ColonyMites, MitesAnswer, SeasonDays, of_yard};
use snowhum_apiary::{Apiary, Colony};
use snowhum_say::{Message, Tongue, mites_page as text};

use super::feed::stood;
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::view::View;
use crate::words::{cautions, marked};

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let plan = app.plan().await;
    let jobs = app.windows().await;
    view.await_for(&plan);
    view.await_for(&jobs);
    let days = jobs.told().and_then(|jobs| SeasonDays::of(jobs, &view.apiary.site));
    let counted = of_yard(&view.apiary, None, None, days.as_ref());
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        (frame::age(&view, &plan))
        @if let Some(plan) = plan.told() { (stood(&view, plan)) }
        @match &counted {
            Some(Ok(answer)) => (counts(&view, answer)),
            Some(Err(wrong)) => p class="caution" { (tongue.say(&wrong.says())) },
            None => p class="lede" { (tongue.say(&text::nobody())) },
        }
        (uncounted(&view.apiary, tongue))
        p class="small" { (marked(tongue, &text::noted())) }
        (heard("/mites", tongue))
        @match &plan.answer {
            Some(Ok(plan)) => @if let Some(fit) = &plan.fit { (windows(fit, days.as_ref(), tongue)) },
            Some(Err(words)) => p class="caution" { (tongue.say(words)) },
            None => {}
        }
    };
    Ok(page(&view, Place::Mites, &heading, &body))
}

fn counts(view: &View, answer: &MitesAnswer) -> Markup {
    let tongue = view.tongue();
    let mut sorted: Vec<&ColonyMites> = answer.colonies.iter().collect();
    sorted.sort_by(|a, b| b.rate.total_cmp(&a.rate));
    let first = || sorted.first().map(|one| text::one(&one.name, one.verdict.words()));
    html! {
        p class="lede" { @if let Some(says) = answer.yard.as_ref().map(|yard| yard.say.clone()).or_else(first) { (tongue.say(&says)) } }
        (table(&view.apiary, answer, &sorted, tongue))
        @let (first, others) = answer.say.split_at(1.min(answer.say.len()));
        @for say in first { p { (tongue.say(say)) } }
        details {
            summary { (tongue.say(&text::more())) }
            ul {
                @for say in others { li { (tongue.say(say)) } }
                @for line in &answer.other_lines { li { (tongue.say(&text::line(&line.says, line.region(), &line.source))) } }
                @for source in &answer.sources { li { (tongue.capital(source)) } }
            }
        }
    }
}

fn table(apiary: &Apiary, answer: &MitesAnswer, sorted: &[&ColonyMites], tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let line = &answer.line;
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(text::table())) { table {
            caption { (say(text::caption(&line.says, line.region(), &line.source))) }
            thead { tr { @for head in [text::colony(), text::counted(), text::rate(), text::against()] { th scope="col" { (say(head)) } } } }
            tbody { @for one in sorted { tr {
                th scope="row" { (one.name) }
                td { (marked(tongue, &found(apiary, one))) }
                td { (say(text::rate_of(one.uneven.high, one.uneven.low, one.rate))) }
                td { (say(judged(apiary, one))) }
            } } }
        } }
    }
}

fn found(apiary: &Apiary, one: &ColonyMites) -> Message {
    let bees = one.bees.unwrap_or(0);
    match counted_on(apiary, &one.name) {
        Some(on) => text::found_on(bees, one.found, on),
        None => text::found(bees, one.found),
    }
}

fn counted_on(apiary: &Apiary, name: &str) -> Option<Date> {
    let colony = apiary.colonies.iter().find(|colony| colony.name == name)?;
    apiary.last_mite_count(colony, Date::MAX).map(|count| count.on)
}

/// The verdict, and what was done since the count, so that nobody takes an old count for today's.
fn judged(apiary: &Apiary, one: &ColonyMites) -> Message {
    let treated = || {
        let colony = apiary.colonies.iter().find(|colony| colony.name == one.name)?;
        apiary.treated_since(colony, counted_on(apiary, &one.name)?)
    };
    let verdict = one.verdict.words();
    match treated() {
        Some(on) => text::treated(on, verdict),
        None => verdict,
    }
}

fn uncounted(apiary: &Apiary, tongue: Tongue) -> Markup {
    let is_counted = |colony: &Colony| apiary.last_mite_count(colony, Date::MAX).is_some();
    let names = apiary.colonies.iter().filter(|colony| !is_counted(colony)).map(|colony| (&colony.name).into());
    let names: Vec<Message> = names.collect();
    html! { @if !names.is_empty() { p { (marked(tongue, &text::uncounted(names))) } } }
}

fn windows(fit: &FitAnswer, days: Option<&SeasonDays>, tongue: Tongue) -> Markup {
    let [all, none] = fit.treat_before;
    let begun = match days {
        Some(days) if days.usual == days.safe => text::begun(days.safe),
        Some(days) => text::begun_usual(days.safe, days.usual),
        None => text::done(all),
    };
    html! {
        section {
            h2 { (tongue.say(&text::windows())) }
            p { (marked(tongue, &text::spares(begun, none))) }
            (cautions(tongue, &[Hazard::Label, Hazard::Acids]))
            (folded(&tongue.say(&text::classes()), &html! {
                dl { @for window in &fit.windows { (one_window(window, tongue)) } }
                p class="small" { (tongue.say(&fit.winter_bees)) " " (tongue.say(&text::days())) }
            }))
        }
    }
}

fn one_window(window: &ClassWindow, tongue: Tongue) -> Markup {
    let says = text::class(&window.brood, &window.says, &window.supers, &window.weather);
    html! {
        dt { (tongue.capital(&window.class)) }
        dd { (tongue.say(&says)) " " span class="small" { (window.source) } }
    }
}
