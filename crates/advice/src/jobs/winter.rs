//! The broodless time, the winter's weighing, and the long watch until flowers.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Message, jobs as say};

use super::answer::{JobWindow, Kind, Trigger};
use super::colonies::Broods;
use super::ground::Ground;
use super::indoors::{self, Way};
use super::window::{degrees, trigger, window};
use super::year::{first_of_autumn, melts, rises_above, rises_for_good, warmth};
use crate::cautions::Hazard;
use crate::dates::Dates;
use snowhum_winter::Status;

/// Warmth at which the first flow begins, K d above 5 °C: the site's first flow as weather has it.
pub(super) const FLOW_AT: f64 = 50.0;

/// The windows of winter.
pub(super) fn windows(ground: &Ground<'_>) -> Vec<JobWindow> {
    let flow = ground.year.when(|path| warmth(path, ground.year.midwinter(), FLOW_AT));
    let mut windows = match &ground.broods {
        Some(broods) => of_brood(ground, broods, &flow),
        None => by_rule(ground, &flow),
    };
    windows.extend(thaw(ground));
    windows
}

/// A trigger that is the colony's own brood, by the model.
fn brood(words: Message) -> Trigger {
    Trigger { words, value: 0.0, figure: None, source: say::source_brood(), status: Status::Judgement }
}

fn of_brood(ground: &Ground<'_>, broods: &Broods, flow: &Dates) -> Vec<JobWindow> {
    let t = ground.question.triggers;
    let (days, first) = (&broods.days, broods.first);
    let begins = days.back.at(0.5, first);
    let (after, night) = (t.broodless_after_days.value, degrees(&t.hard_frost));
    let none = say::broodless_waits_model(t.brood_none.value, after, night);
    let broodless = broodless_window((&days.gone, first), trigger("brood_none", &t.brood_none, none)).until(begins);
    let brood_begins = brood(say::brood_begins_waits());
    let windows = [
        broodless,
        weighing(ground, broods),
        window("brood-begins", say::brood_begins(), Kind::About, (&days.back, first), brood_begins)
            .why(say::brood_begins_why()),
        watch(ground, (&days.back, first), flow, brood(say::starvation_watch_waits())),
    ];
    windows.map(|window| window.of_colonies(broods.names.clone())).into()
}

/// The weighing that leaves time to feed before brood takes the food.
fn weighing(ground: &Ground<'_>, broods: &Broods) -> JobWindow {
    let days = &ground.question.triggers.weigh_before_days;
    let weigh = broods.days.back.moved(-days.value);
    let before = trigger("weigh_before_days", days, say::midwinter_weighing_waits(days.value));
    weighing_window(Kind::About, (&weigh, broods.first), before)
}

fn weighing_window(kind: Kind, dates: (&Dates, Date), trigger: Trigger) -> JobWindow {
    window("midwinter-weighing", say::midwinter_weighing(), kind, dates, trigger)
        .why(say::midwinter_weighing_why())
        .caution(&[Hazard::OneSide])
}

/// Without a counted colony: what the trade goes by.
fn by_rule(ground: &Ground<'_>, flow: &Dates) -> Vec<JobWindow> {
    let (t, first) = (ground.question.triggers, ground.year.first());
    let gone = hard_frost(ground);
    let days = &t.watch_before_flow_days;
    let watched = flow.moved(-days.value);
    let late = || trigger("watch_before_flow_days", days, say::before_flow(days.value));
    let after = &t.broodless_after_days;
    let rule = say::broodless_waits(after.value, degrees(&t.hard_frost));
    vec![
        broodless_window((&gone, first), trigger("broodless_after_days", after, rule)),
        weighing_window(Kind::By, (&watched, first), late()),
        watch(ground, (&watched, first), flow, late()),
    ]
}

/// The trade's rule for the end of brood. It holds beside the model too, since brood is seldom counted in autumn.
fn hard_frost(ground: &Ground<'_>) -> Dates {
    let t = ground.question.triggers;
    let frost = ground.year.when(|path| first_of_autumn(path, |day| day.low < t.hard_frost.value));
    frost.moved(t.broodless_after_days.value)
}

fn broodless_window(dates: (&Dates, Date), trigger: Trigger) -> JobWindow {
    window("broodless", say::broodless(), Kind::From, dates, trigger)
        .why(say::broodless_why())
        .believed(say::broodless_belief(), say::broodless_so())
        .caution(&[Hazard::Label, Hazard::Acids])
}

/// The day to which food is watched wherever it flowers early: the middle of April, in the south of October (common
/// practice: most hungry colonies die in March and April).
fn least_watched(first: Date) -> Date {
    let (year, month) = if first.month() == 7 { (first.year() + 1, 4) } else { (first.year(), 10) };
    Date::new(year, month, 15).unwrap_or(first)
}

/// The watch over food until flowers.
fn watch(ground: &Ground<'_>, dates: (&Dates, Date), flow: &Dates, trigger: Trigger) -> JobWindow {
    let t = ground.question.triggers;
    let flowers = flow.at(0.9, ground.year.first()).map(say::starvation_watch_flowers);
    let steady = flow.at(0.5, ground.year.first()).map(|on| on.saturating_add(14.days()));
    let end = steady.map(|on| on.max(least_watched(ground.year.first())));
    window("starvation-watch", say::starvation_watch(t.heft_every_days.value), Kind::From, dates, trigger)
        .until(end)
        .why(Message::sentences([say::starvation_watch_why(), flowers.unwrap_or_default()]))
        .believed(say::starvation_watch_belief(), say::starvation_watch_so())
        .caution(&[Hazard::OneSide])
}

/// What the thaw asks for.
fn thaw(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year) = (ground.question.triggers, &ground.year);
    let (first, midwinter) = (year.first(), year.midwinter());
    let melt = year.when(|path| melts(path, midwinter, t.snow_lies.value, t.snow_left.value));
    let bears = year.when(|path| rises_for_good(path, midwinter, 14, t.thaw_mean.value, |day| day.mean));
    let sunk = trigger("snow_left", &t.snow_left, say::melt_check_waits(100.0 * t.snow_left.value));
    let thawed = trigger("thaw_mean", &t.thaw_mean, say::bear_fence_thaw_waits(degrees(&t.thaw_mean)));
    let mut windows = vec![
        window("melt-check", say::melt_check(), Kind::From, (&melt, first), sunk)
            .why(say::melt_check_why())
            .caution(&[Hazard::Ice]),
        window("bear-fence-thaw", say::bear_fence_thaw(), Kind::By, (&bears, first), thawed)
            .why(say::bear_fence_thaw_why())
            .caution(&[Hazard::Fence]),
    ];
    windows.extend(indoors::carried(ground, Way::Out, out_of_the_cellar(ground)));
    windows
}

fn out_of_the_cellar(ground: &Ground<'_>) -> JobWindow {
    let (t, year) = (ground.question.triggers, &ground.year);
    let out = year.when(|path| rises_above(path, year.midwinter(), 14, t.cellar_mean.value, |day| day.mean));
    let reached = trigger("cellar_mean", &t.cellar_mean, say::cellar_out_waits(degrees(&t.cellar_mean)));
    window("cellar-out", say::cellar_out(), Kind::From, (&out, year.first()), reached)
        .why(say::cellar_out_why())
        .caution(&[Hazard::Carrying])
}
