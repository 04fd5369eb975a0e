//! Feeding: a shopping list for the yard, labels for the roofs, and what to know before.

use axum::extract::State;
use jiff::ToSpan;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::fit::{HiveFeed, Shopping, Spared};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::sums::feed::{ByVolume, FeedAnswer, FeedQuestion, Season, Solid, feed};
use snowhum_apiary::Apiary;
use snowhum_figures::looking_ahead::LIST_HOLDS;
use snowhum_say::{Message, Text, Tongue, feed_page as text};
use snowhum_units::{Bare, CubicMetre, Kilogram, Measured, Metre, System};

use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::sent::shortened;
use crate::view::{Asked, View};
use crate::words::{cautioned, marked};

/// A slab that is reckoned where no other is asked for.
const SLAB: Metre = Metre::new(0.05);
/// What a feeder can hold, litres.
const FEEDER_L: std::ops::RangeInclusive<f64> = 0.1..=50.0;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let last = app.plan().await;
    view.await_for(&last);
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        (frame::age(&view, &last))
        @match last.answer.as_ref().map(|plan| plan.as_ref().map(|plan| (plan, plan.fit.as_ref()))) {
            Some(Ok((plan, Some(fit)))) => @match feeder(&asked, &fit.shopping, tongue.system()) {
                Ok(list) => (yard(&view, plan, &list)),
                Err(wrong) => {
                    p class="caution" { (tongue.say(&wrong)) }
                    (yard(&view, plan, &fit.shopping))
                }
            },
            Some(Ok((_, None))) => p class="caution" { (tongue.say(&text::no_table())) },
            Some(Err(words)) => p class="caution" { (tongue.say(words)) },
            None => {}
        }
        @if last.told().is_some_and(|plan| plan.fit.as_ref().is_some_and(|fit| !fit.shopping.too_late_for_syrup)) {
            (feeder_form(&asked, tongue))
        }
        (knowledge(&view.apiary, tongue))
        (heard("/feed", tongue))
    };
    Ok(page(&view, Place::Feed, &heading, &body))
}

/// The list with the keeper's own feeder.
fn feeder(asked: &Asked, list: &Shopping, system: System) -> Result<Shopping, Message> {
    let Some(written) = asked.get("feeder") else { return Ok(list.clone()) };
    let litres = CubicMetre::read(written, Bare::In(system)).ok().map(|volume| volume.get() * 1e3);
    let litres = litres.filter(|litres| FEEDER_L.contains(litres));
    litres
        .map(|litres| list.with_feeder(litres))
        .ok_or_else(|| text::wrong(shortened(written), CubicMetre::usual(system)))
}

fn is_past(view: &View, plan: &PlanAnswer) -> bool {
    view.now.date() > plan.as_of.saturating_add((LIST_HOLDS as i32).days())
}

/// Said first where the hives were counted so long ago that the page tells of then, not of today.
pub(super) fn stood(view: &View, plan: &PlanAnswer) -> Markup {
    html! {
        @if is_past(view, plan) { p class="caution" { (marked(view.tongue(), &text::stood(plan.as_of))) } }
        @for left_out in &plan.left_out { p class="caution" { (view.tongue().say(left_out)) } }
    }
}

/// Days left for syrup; none where the count is too old to count days from.
pub(super) fn days_left(view: &View, plan: &PlanAnswer, list: &Shopping) -> Option<i64> {
    (!is_past(view, plan)).then_some(list.days_left)
}

fn yard(view: &View, plan: &PlanAnswer, list: &Shopping) -> Markup {
    let tongue = view.tongue();
    let clusters = plan.fit.as_ref().map_or(plan.as_of, |fit| fit.dates.cluster.p10);
    let hazard = hazard(view.now.date(), &(clusters..plan.spring));
    html! {
        (stood(view, plan))
        p class="lede" { (tongue.say(&text::lede(plan.as_of))) }
        (to_buy(list, days_left(view, plan, list), tongue))
        @if !list.hives.is_empty() { (table(list, tongue)) }
        @if !list.hives.is_empty() && (list.too_late_for_syrup || !is_past(view, plan)) {
            (folded(&tongue.say(&text::labels()), &html! { div class="papers labels" { @for hive in &list.hives { (label(hive, list, hazard, tongue)) } } }))
        }
    }
}

/// What to buy.
pub(super) fn to_buy(list: &Shopping, days_left: Option<i64>, tongue: Tongue) -> Markup {
    let nothing = if list.unfed.is_empty() { text::none_short } else { text::none };
    let says = if list.hives.is_empty() { nothing() } else { bought(list, days_left) };
    html! {
        @if let Some(says) = list.unfed_say() { p { (tongue.say(&says)) } }
        p { (marked(tongue, &says)) }
    }
}

fn bought(list: &Shopping, days_left: Option<i64>) -> Message {
    let of = |kilograms: f64, say: fn(Kilogram) -> Message| {
        if kilograms > 0.0 { say(Kilogram::new(kilograms)) } else { Message::NONE }
    };
    let [syrup, fondant] = if list.too_late_for_syrup {
        [Message::NONE, text::too_late(Kilogram::new(list.solid_kg), list.finish_by_half)]
    } else {
        [syrup(list, days_left), of(list.solid_kg, text::buy_fondant)]
    };
    let (later, spared) = (of(list.later_fondant_kg, text::buy_later), of(list.spared_kg, text::spared));
    Message::sentences([syrup, fondant, later, spared])
}

/// Sugar for the hives that still have time for syrup; nothing where none has.
fn syrup(list: &Shopping, days_left: Option<i64>) -> Message {
    if list.sugar_kg <= 0.0 {
        return Message::NONE;
    }
    let left = match days_left {
        Some(0..) => "days",
        Some(_) => "past",
        None => "not-told",
    };
    let (sugar, syrup) = (Kilogram::new(list.sugar_kg), litres(list.syrup_l));
    text::buy_sugar(days_left.unwrap_or_default(), left, list.finish_by, sugar, syrup, list.finish_by_half)
}

fn table(list: &Shopping, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let late = list.too_late_for_syrup;
    let heads: &[Text] = if late { &LATE_HEADS } else { &HEADS };
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(text::of_each())) {
            table {
                thead { tr { @for head in heads { th scope="col" { (say(head())) } } } }
                tbody { @for hive in &list.hives { tr {
                    th scope="row" { (hive.name) }
                    td { (say(text::mass(Kilogram::new(hive.short_kg)))) }
                    (feed_cells(hive, list, tongue))
                    td { (say(frames(hive))) }
                } } }
            }
            @if !late { p class="small" { (say(text::feeder(litres(list.feeder_l)))) } }
        }
    }
}

/// Heads of the table while there is time for syrup.
const HEADS: [Text; 8] =
    [text::hive, text::short, text::sugar, text::water, text::syrup, text::feeders, text::begin_by, text::or_frames];
/// Its heads once there is none.
const LATE_HEADS: [Text; 5] = [text::hive, text::short, text::fondant, text::or_candy, text::or_frames];

/// What one hive is fed, in the columns between what it is short of and its frames.
fn feed_cells(hive: &HiveFeed, list: &Shopping, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let late = list.too_late_for_syrup;
    let [fondant, candy, later] = [hive.fondant_kg, hive.candy_kg, hive.later_fondant_kg].map(Kilogram::new);
    html! {
        @if !hive.is_fed_now() {
            td colspan=(if late { "2" } else { "5" }) data-label=(say(text::feed())) { (say(text::not_now(later))) }
        } @else if late {
            td { (say(text::mass(fondant))) }
            td { (say(text::candy(candy, Metre::new(hive.candy_mm * 1e-3)))) }
        } @else if hive.is_solid() {
            td colspan="5" data-label=(say(text::feed())) { (say(text::solid(fondant))) }
        } @else {
            (syrup_cells(hive, tongue))
        }
    }
}

fn syrup_cells(hive: &HiveFeed, tongue: Tongue) -> Markup {
    let [sugar, fondant] = [hive.sugar_kg, hive.fondant_kg].map(Kilogram::new);
    let sugar = if hive.fondant_kg > 0.0 { text::sugar_and_fondant(fondant, sugar) } else { text::mass(sugar) };
    let [water, syrup] = [hive.water_l, hive.syrup_l].map(|filled| text::volume(litres(filled)));
    let begins = text::begins(hive.begin_by.iter().map(|begin| text::begin(&begin.feeder, begin.on)).collect());
    html! { @for cell in [sugar, water, syrup, text::fills(hive.feeder_fills), begins] { td { (marked(tongue, &cell)) } } }
}

fn frames(hive: &HiveFeed) -> Message {
    let told = |frames: &Spared| text::frames(Kilogram::new(frames.kg), frames.frames, &frames.from);
    hive.frames.as_ref().map_or_else(text::no_frames, told)
}

/// What can hurt when a lid is lifted to feed on the day asked about: cold once bees cluster, robbers before.
fn hazard(today: Date, clustered: &std::ops::Range<Date>) -> Hazard {
    if clustered.contains(&today) { Hazard::LidOff } else { Hazard::Robbing }
}

/// One roof's label.
fn label(hive: &HiveFeed, list: &Shopping, hazard: Hazard, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let [sugar, fondant, later] = [hive.sugar_kg, hive.fondant_kg, hive.later_fondant_kg].map(Kilogram::new);
    html! {
        section class="paper" {
            h2 { (hive.name) }
            @if !hive.is_fed_now() {
                p class="lede" { (say(text::label_weigh())) }
                p { (say(text::label_at_hand(later))) }
            } @else if hive.is_solid() {
                p class="lede" { (say(text::label_fondant(fondant))) }
                p { (say(text::label_over())) " " (cautioned(tongue, &hazard.says())) }
            } @else {
                p class="lede" { (say(text::label_syrup(litres(hive.syrup_l)))) }
                p { (say(text::label_mix(sugar, litres(hive.water_l)))) }
                @if hive.fondant_kg > 0.0 { p { (say(text::label_and_fondant(fondant))) } }
                p { (marked(tongue, &text::label_by(hive.finish_by.unwrap_or(list.finish_by)))) " " (cautioned(tongue, &Hazard::Robbing.says())) }
            }
            @if hive.is_fed_now() && hive.later_fondant_kg > 0.0 { p { (say(text::label_later(later))) } }
            p class="small" { (say(text::label_given())) }
        }
    }
}

fn litres(litres: f64) -> CubicMetre {
    CubicMetre::new(litres * 1e-3)
}

fn feeder_form(asked: &Asked, tongue: Tongue) -> Markup {
    html! {
        form method="get" action="/feed" {
            label for="feeder" { (tongue.say(&text::holds(tongue.system() == System::Us))) }
            input id="feeder" name="feeder" inputmode="decimal" maxlength="12" value=(asked.get("feeder").unwrap_or_default());
            button class="main" { (tongue.say(&text::reckon())) }
        }
    }
}

/// What to know before feeding, whatever is short.
fn knowledge(apiary: &Apiary, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let autumn = answer(apiary, Season::Autumn);
    let winter = answer(apiary, Season::Winter);
    html! {
        @if let (Some(autumn), Some(winter)) = (&autumn, &winter) {
            (folded(&say(text::cups()), &cups(autumn, tongue)))
            (folded(&say(text::slab()), &slab(winter, tongue)))
            (folded(&say(text::before()), &html! {
                ul class="evidence" { @for said in each_once(&autumn.say, &winter.say) { li { (tongue.say(said)) } } }
            }))
            (folded(&say(text::never()), &html! {
                ul { @for never in &autumn.never { li { (say(text::never_of(&never.what, &never.why))) } } }
            }))
            section class="caution" { @for caution in each_once(&autumn.cautions, &winter.cautions) { p { (cautioned(tongue, caution)) } } }
        }
    }
}

fn cups(autumn: &FeedAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let told = |cups: &ByVolume| {
        text::cups_are(cups.meant_percent, cups.sugar_percent, &cups.volumes, cups.sugar_per_water_by_weight)
    };
    html! {
        p { (say(text::cups_thin())) }
        ul { @for cups in &autumn.by_volume { li { (say(told(cups))) } } }
        p { (tongue.say(&autumn.syrup_says)) }
        p { (say(text::spring())) }
    }
}

fn slab(winter: &FeedAnswer, tongue: Tongue) -> Markup {
    let told = |solid: &Solid| {
        let honey = Kilogram::new(solid.slab_stores_kg.unwrap_or(0.0));
        Some(text::slab_of(honey, Kilogram::new(solid.slab_kg?), &solid.what))
    };
    html! {
        p { (tongue.say(&text::slab_laid(&winter.hive, SLAB))) }
        ul { @for told in winter.solid.iter().filter_map(told) { li { (tongue.say(&told)) } } }
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
        let label = |today| label(&list.hives[0], &list, hazard(today, &cold), Tongue::BRITISH).into_string();
        let (august, october, june) = (label(date(2025, 8, 28)), label(date(2025, 10, 5)), label(date(2026, 6, 1)));
        for warm in [august, june] {
            assert!(warm.contains("robbers and wasps") && !warm.contains("lid off"), "{warm}");
        }
        assert!(october.contains("lid off for less than a minute") && !october.contains("robbers"), "{october}");
    }
}
