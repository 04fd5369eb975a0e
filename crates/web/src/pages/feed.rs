//! Feeding: a shopping list for the yard, labels for the roofs, and what to know before.

use axum::extract::State;
use jiff::ToSpan;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::fit::{HiveFeed, Shopping};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::sums::feed::{FeedAnswer, FeedQuestion, Season, feed};
use snowhum_advice::words::day;
use snowhum_apiary::Apiary;
use snowhum_figures::looking_ahead::LIST_HOLDS;
use snowhum_say::Tongue;
use snowhum_units::{Bare, CubicMetre, Kilogram, Measured, Metre, System};

use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::sent::shortened;
use crate::view::{Asked, View};
use crate::words::{capital, date, mass};

/// A slab that is reckoned where no other is asked for.
const SLAB: Metre = Metre::new(0.05);
/// What a feeder can hold, litres.
const FEEDER_L: std::ops::RangeInclusive<f64> = 0.1..=50.0;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let last = app.plan().await;
    view.await_for(&last);
    let system = view.settings.system;
    let body = html! {
        h1 { "Feeding" }
        (frame::age(&view, &last))
        @match last.answer.as_ref().map(|plan| plan.as_ref().map(|plan| (plan, plan.fit.as_ref()))) {
            Some(Ok((plan, Some(fit)))) => @match feeder(&asked, &fit.shopping, system) {
                Ok(list) => (yard(&view, plan, &list)),
                Err(wrong) => {
                    p class="caution" { (wrong) }
                    (yard(&view, plan, &fit.shopping))
                }
            },
            Some(Ok((_, None))) => p class="caution" { "The table of what is usual cannot be read." },
            Some(Err(words)) => p class="caution" { (words) },
            None => {}
        }
        @if last.told().is_some_and(|plan| plan.fit.as_ref().is_some_and(|fit| !fit.shopping.too_late_for_syrup)) {
            (feeder_form(&asked, system))
        }
        (knowledge(&view.apiary, view.tongue()))
        (heard("/feed", view.tongue()))
    };
    Ok(page(&view, Place::Feed, "Feeding", &body))
}

/// The list with the keeper's own feeder.
fn feeder(asked: &Asked, list: &Shopping, system: System) -> Result<Shopping, String> {
    let Some(text) = asked.get("feeder") else { return Ok(list.clone()) };
    let unit = CubicMetre::usual(system);
    let litres = CubicMetre::read(text, Bare::In(system)).ok().map(|volume| volume.get() * 1e3);
    let litres = litres.filter(|litres| FEEDER_L.contains(litres));
    litres
        .map(|litres| list.with_feeder(litres))
        .ok_or_else(|| format!("{}: write what your feeder holds, such as 6 {unit}.", shortened(text)))
}

fn is_past(view: &View, plan: &PlanAnswer) -> bool {
    view.now.date() > plan.as_of.saturating_add((LIST_HOLDS as i32).days())
}

/// Said first where the hives were counted so long ago that the page tells of then, not of today.
pub(super) fn stood(view: &View, plan: &PlanAnswer) -> Markup {
    html! {
        @if is_past(view, plan) {
            p class="caution" {
                "As it stood on " (day(plan.as_of)) ", when the hives were counted; that day is past: see "
                a href="/" { "The yard" } " for today."
            }
        }
        @for left_out in &plan.left_out { p class="caution" { (view.tongue().say(left_out)) } }
    }
}

/// Days left for syrup; none where the count is too old to count days from.
pub(super) fn days_left(view: &View, plan: &PlanAnswer, list: &Shopping) -> Option<i64> {
    (!is_past(view, plan)).then_some(list.days_left)
}

fn yard(view: &View, plan: &PlanAnswer, list: &Shopping) -> Markup {
    let system = view.settings.system;
    let clusters = plan.fit.as_ref().map_or(plan.as_of, |fit| fit.dates.cluster.p10);
    let hazard = hazard(view.now.date(), &(clusters..plan.spring));
    html! {
        (stood(view, plan))
        p class="lede" { "What the yard was short of on " (day(plan.as_of)) ", so that 9 in 10 such hives come to spring with food in reach." }
        (shopping(list, days_left(view, plan, list), system))
        @if !list.hives.is_empty() && (list.too_late_for_syrup || !is_past(view, plan)) {
            (folded("Labels for the roofs", &html! { div class="papers labels" { @for hive in &list.hives { (label(hive, list, hazard, system)) } } }))
        }
    }
}

/// What to buy, and which hive gets it.
fn shopping(list: &Shopping, days_left: Option<i64>, system: System) -> Markup {
    html! {
        (to_buy(list, days_left, system))
        @if !list.hives.is_empty() {
            div class="wide" tabindex="0" role="region" aria-label="Food for each hive" { (table(list, system)) }
        }
    }
}

/// What to buy.
pub(super) fn to_buy(list: &Shopping, days_left: Option<i64>, system: System) -> Markup {
    html! {
        @if let Some(says) = list.unfed_say() { p { (Tongue::new(system).say(&says)) } }
        @if list.hives.is_empty() {
            p { @if list.unfed.is_empty() { "No colony is short: nothing to buy." } @else { "Nothing to buy." } }
        } @else {
            p {
                @if list.too_late_for_syrup {
                    strong { (mass(list.solid_kg, system)) " of fondant" } ", or as much damp sugar. The day for syrup here was about "
                    (date(list.finish_by_half)) "; bees can no longer ripen it."
                } @else {
                    (still_syrup(list, days_left, system))
                }
                @if list.later_fondant_kg > 0.0 {
                    " At hand for the midwinter weighing, since the need is far over the rule here: " (mass(list.later_fondant_kg, system)) " of fondant."
                }
                @if list.spared_kg > 0.0 {
                    " Frames from heavy, healthy hives of this yard can stand for " (mass(list.spared_kg, system))
                    " of the stores that are short; each frame is counted once."
                }
            }
        }
    }
}

/// What to buy while some hives, or all, still have time for syrup.
fn still_syrup(list: &Shopping, days_left: Option<i64>, system: System) -> Markup {
    html! {
        @if list.sugar_kg > 0.0 {
            strong { (mass(list.sugar_kg, system)) " of white sugar" } ", which makes " (litres(list.syrup_l, system))
            " of 3:2 syrup. It must be finished, not begun, by " (date(list.finish_by)) " to be safe ("
            (date(list.finish_by_half)) " is in time in half of all years)"
            @match days_left {
                Some(left @ 0..) => { "; " (left) " days are left for it." }
                Some(_) => "; the safe day is past.",
                None => ".",
            }
        }
        @if list.solid_kg > 0.0 {
            " " strong { (mass(list.solid_kg, system)) " of fondant" } ", or as much damp sugar, for what no feeder gives in time."
        }
    }
}

fn table(list: &Shopping, system: System) -> Markup {
    let late = list.too_late_for_syrup;
    html! {
        table {
            thead { tr {
                th scope="col" { "Hive" } th scope="col" { "Short" }
                @if late { th scope="col" { "Fondant" } th scope="col" { "Or damp sugar" } }
                @else { th scope="col" { "Sugar" } th scope="col" { "Water" } th scope="col" { "Syrup 3:2" } th scope="col" { "Feeders full" } th scope="col" { "Begin by" } }
                th scope="col" { "Or frames" }
            } }
            tbody { @for hive in &list.hives { tr {
                th scope="row" { (hive.name) }
                td { (mass(hive.short_kg, system)) }
                @if !hive.is_fed_now() {
                    td colspan=(if late { "2" } else { "5" }) data-label="Feed" { "nothing now; weigh it in midwinter, " (later(hive, system)) }
                } @else if late {
                    td { (mass(hive.fondant_kg, system)) }
                    td { (mass(hive.candy_kg, system)) ", " (Metre::new(hive.candy_mm * 1e-3).show(system, usize::from(system == System::Us))) " thick" }
                } @else if hive.is_solid() {
                    td colspan="5" data-label="Feed" { (mass(hive.fondant_kg, system)) " of fondant: no feeder is quick enough for syrup now" }
                } @else {
                    td { (mass(hive.sugar_kg, system)) @if hive.fondant_kg > 0.0 { ", and " (mass(hive.fondant_kg, system)) " of fondant" } }
                    td { (litres(hive.water_l, system)) } td { (litres(hive.syrup_l, system)) }
                    td { (format!("{:.1}", hive.feeder_fills)) }
                    td {
                        @for (at, begin) in hive.begin_by.iter().enumerate() { @if at > 0 { "; " } (date(begin.on)) " with " (snowhum_say::Tongue::new(system).say(&begin.feeder)) } }
                }
                td { @if let Some(frames) = &hive.frames { (frames.frames) " from " (frames.from) " (" (mass(frames.kg, system)) ")" } @else { "none to spare" } }
            } } }
        }
        @if !late { p class="small" { "A feeder of " (litres(list.feeder_l, system)) " is taken." } }
    }
}

/// Fondant kept until the winter's weighing.
fn later(hive: &HiveFeed, system: System) -> String {
    format!("with {} of fondant at hand", mass(hive.later_fondant_kg, system))
}

/// What can hurt when a lid is lifted to feed on the day asked about: cold once bees cluster, robbers before.
fn hazard(today: Date, clustered: &std::ops::Range<Date>) -> Hazard {
    if clustered.contains(&today) { Hazard::LidOff } else { Hazard::Robbing }
}

/// One roof's label.
fn label(hive: &HiveFeed, list: &Shopping, hazard: Hazard, system: System) -> Markup {
    html! {
        section class="paper" {
            h2 { (hive.name) }
            @if !hive.is_fed_now() {
                p class="lede" { "Weigh in midwinter" }
                p { (capital(&later(hive, system))) "." }
            } @else if hive.is_solid() {
                p class="lede" { "Fondant " (mass(hive.fondant_kg, system)) }
                p { "Right over the bees, a path left free round it. " (hazard.says()) }
            } @else {
                p class="lede" { "Syrup 3:2, " (litres(hive.syrup_l, system)) }
                p { (mass(hive.sugar_kg, system)) " of sugar in " (litres(hive.water_l, system)) " of water, by weight." }
                @if hive.fondant_kg > 0.0 { p { "And " (mass(hive.fondant_kg, system)) " of fondant: syrup is too late for the rest." } }
                p { "Finished by " (date(hive.finish_by.unwrap_or(list.finish_by))) ". " (Hazard::Robbing.says()) }
            }
            @if hive.is_fed_now() && hive.later_fondant_kg > 0.0 { p { "Weigh in midwinter, " (later(hive, system)) "." } }
            p class="small" { "Given: ________  ________  ________" }
        }
    }
}

fn litres(litres: f64, system: System) -> String {
    CubicMetre::new(litres * 1e-3).show(system, 1)
}

fn feeder_form(asked: &Asked, system: System) -> Markup {
    let unit = if system == System::Us { "gallons" } else { "litres" };
    html! {
        form method="get" action="/feed" {
            label for="feeder" { "What your feeder holds, " (unit) }
            input id="feeder" name="feeder" inputmode="decimal" maxlength="12" value=(asked.get("feeder").unwrap_or_default());
            button class="main" { "Reckon its fills" }
        }
    }
}

/// What to know before feeding, whatever is short.
fn knowledge(apiary: &Apiary, tongue: Tongue) -> Markup {
    let system = tongue.system();
    let autumn = answer(apiary, Season::Autumn);
    let winter = answer(apiary, Season::Winter);
    html! {
        @if let (Some(autumn), Some(winter)) = (&autumn, &winter) {
            (folded("Cups are not kilograms", &html! {
                p { "Poured sugar is lighter than water, so cups make thinner syrup than the same figures by weight." }
                ul { @for cups in &autumn.by_volume {
                    li { (cups.volumes) " by cups is " (format!("{:.2}", cups.sugar_per_water_by_weight)) ":1 by weight, " (format!("{:.0}", cups.sugar_percent)) " % sugar, not " (format!("{:.0}", cups.meant_percent)) " %." }
                } }
                p { (tongue.say(&autumn.syrup_says)) }
                p { "1:1 is for spring, once bees fly every day and carry in." }
            }))
            (folded("A slab over the bees", &html! {
                p { "Laid " (SLAB.show(system, 0)) " thick over the whole of a " (winter.hive) " box:" }
                ul { @for solid in &winter.solid { @if let Some(kg) = solid.slab_kg {
                    li { (capital(&solid.what)) ": " (mass(kg, system)) ", feeding as much as " (mass(solid.slab_stores_kg.unwrap_or(0.0), system)) " of honey." }
                } } }
            }))
            (folded("Before you feed", &html! {
                ul class="evidence" { @for say in each_once(&autumn.say, &winter.say) { li { (tongue.say(say)) } } }
            }))
            (folded("Not to be fed", &html! {
                ul { @for never in &autumn.never { li { (capital(&never.what)) ": " (never.why) "." } } }
            }))
            section class="caution" { @for caution in each_once(&autumn.cautions, &winter.cautions) { p { (caution) } } }
        }
    }
}

/// What either season has to say, each once.
fn each_once<'a, T: PartialEq>(autumn: &'a [T], winter: &'a [T]) -> Vec<&'a T> {
    let more = winter.iter().filter(|say| !autumn.contains(say));
    autumn.iter().chain(more).collect()
}

fn answer(apiary: &Apiary, season: Season) -> Option<FeedAnswer> {
    let hive = apiary.hives.first()?;
    let question = FeedQuestion {
        short: Kilogram::new(1.0),
        season,
        as_of: None,
        syrup_by: None,
        feeder: None,
        hive: hive.standard.clone(),
        hive_box: hive.boxes.last()?.clone(),
        slab: Some(SLAB),
    };
    feed(&question).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    fn fed_solid() -> Shopping {
        let hive = HiveFeed {
            name: "Alder".to_owned(),
            short_kg: 9.0,
            now_kg: 9.0,
            later_fondant_kg: 0.0,
            mix: "solid".to_owned(),
            sugar_kg: 8.2,
            water_l: 5.5,
            syrup_l: 10.6,
            feeder_fills: 1.1,
            finish_by: None,
            begin_by: Vec::new(),
            fondant_kg: 8.3,
            candy_kg: 7.9,
            candy_mm: 50.0,
            frames: None,
        };
        Shopping {
            unfed: Vec::new(),
            hives: vec![hive],
            sugar_kg: 0.0,
            syrup_l: 0.0,
            solid_kg: 8.3,
            later_fondant_kg: 0.0,
            spared_kg: 0.0,
            feeder_l: 10.0,
            finish_by: date(2025, 8, 26),
            finish_by_half: date(2025, 9, 9),
            days_left: -2,
            too_late_for_syrup: false,
        }
    }

    #[test]
    fn a_roofs_label_warns_of_robbers_in_august_and_of_the_cold_once_bees_cluster() {
        let (list, cold) = (fed_solid(), date(2025, 9, 30)..date(2026, 5, 20));
        let label = |today| label(&list.hives[0], &list, hazard(today, &cold), System::Metric).into_string();
        let (august, october, june) = (label(date(2025, 8, 28)), label(date(2025, 10, 5)), label(date(2026, 6, 1)));
        for warm in [august, june] {
            assert!(warm.contains("robbers and wasps") && !warm.contains("lid off"), "{warm}");
        }
        assert!(october.contains("lid off for less than a minute") && !october.contains("robbers"), "{october}");
    }
}
