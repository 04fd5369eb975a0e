//! The broodless time, the winter's weighing, and the long watch until flowers.

use jiff::ToSpan;

use super::answer::{JobWindow, Kind, Trigger};
use super::colonies::Broods;
use super::ground::Ground;
use super::indoors::{self, Way};
use super::window::{degrees, trigger, window};
use super::year::{first_of_autumn, melts, rises_above, rises_for_good, warmth};
use crate::cautions::Hazard;
use crate::dates::Dates;
use crate::words::day;
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
fn brood(words: &str) -> Trigger {
    Trigger {
        words: words.to_owned(),
        value: 0.0,
        figure: None,
        source: "the winter model of your colonies under this site's weather".to_owned(),
        status: Status::Judgement,
    }
}

fn of_brood(ground: &Ground<'_>, broods: &Broods, flow: &Dates) -> Vec<JobWindow> {
    let t = ground.question.triggers;
    let days = &broods.days;
    let begins = days.back.at(0.5, broods.first);
    let broodless = trigger(
        "brood_none",
        &t.brood_none,
        format!(
            "No colony has {:.0} cells of brood left, by the model, and {}.",
            t.brood_none.value,
            frost_words(ground)
        ),
    );
    let of_all = |window: JobWindow| window.of_colonies(broods.names.clone());
    vec![
        of_all(broodless_window((&days.gone, broods.first), broodless).until(begins)),
        of_all(weighing(ground, broods)),
        of_all(
            window(
                "brood-begins",
                "Brood begins",
                Kind::About,
                (&days.back, broods.first),
                brood("A palm's breadth of brood, by the model."),
            )
            .why("From now on the nest is kept warm day and night, and a colony eats two to three times as much."),
        ),
        of_all(watch(ground, (&days.back, broods.first), flow, brood("From the first brood to the first flow."))),
    ]
}

/// The weighing that leaves time to feed before brood takes the food.
fn weighing(ground: &Ground<'_>, broods: &Broods) -> JobWindow {
    let t = ground.question.triggers;
    let weigh = broods.days.back.moved(-t.weigh_before_days.value);
    let words = format!("{:.0} days before brood is there again.", t.weigh_before_days.value);
    let before = trigger("weigh_before_days", &t.weigh_before_days, words);
    window("midwinter-weighing", "The winter's weighing", Kind::About, (&weigh, broods.first), before)
        .why(WEIGHING)
        .caution(&[Hazard::OneSide])
}

/// Without a counted colony: what the trade goes by.
fn by_rule(ground: &Ground<'_>, flow: &Dates) -> Vec<JobWindow> {
    let (t, year) = (ground.question.triggers, &ground.year);
    let gone = hard_frost(ground);
    let rule = crate::words::sentence(&frost_words(ground));
    let before = format!("{:.0} days before the first flow.", t.watch_before_flow_days.value);
    let watched = flow.moved(-t.watch_before_flow_days.value);
    let late = || trigger("watch_before_flow_days", &t.watch_before_flow_days, before.clone());
    vec![
        broodless_window((&gone, year.first()), trigger("broodless_after_days", &t.broodless_after_days, rule)),
        window("midwinter-weighing", "The winter's weighing", Kind::By, (&watched, year.first()), late())
            .why(WEIGHING)
            .caution(&[Hazard::OneSide]),
        watch(ground, (&watched, year.first()), flow, late()),
    ]
}

/// The trade's rule for the end of brood. It holds beside the model too, since brood is seldom counted in autumn.
fn hard_frost(ground: &Ground<'_>) -> Dates {
    let t = ground.question.triggers;
    let frost = ground.year.when(|path| first_of_autumn(path, |day| day.low < t.hard_frost.value));
    frost.moved(t.broodless_after_days.value)
}

fn frost_words(ground: &Ground<'_>) -> String {
    let t = ground.question.triggers;
    let limit = degrees(t.hard_frost.value, ground.question.system);
    format!("{:.0} days after the first night below {limit}", t.broodless_after_days.value)
}

const WEIGHING: &str = "A month without brood takes about a kilogram, a month with brood three. Weighed just before, there \
     is time to put solid food above the cluster.";

fn broodless_window(dates: (&Dates, jiff::civil::Date), trigger: Trigger) -> JobWindow {
    window("broodless", "Broodless: winter treatment", Kind::From, dates, trigger)
        .why(
            "Some treatments reach only mites on bees: with brood a quarter to two fifths of them, without it nearly all. \
             Be sure first that there is no brood; treat a yard together. A trickle is given once a winter: again, it harms bees.",
        )
        .believed("One oxalic treatment mends everything, brood or not.", "It does not reach mites under cappings.")
        .caution(&[Hazard::Label, Hazard::Acids])
}

/// The day to which food is watched wherever it flowers early: the middle of April, in the south of October (common
/// practice: most hungry colonies die in March and April).
fn least_watched(first: jiff::civil::Date) -> jiff::civil::Date {
    let (year, month) = if first.month() == 7 { (first.year() + 1, 4) } else { (first.year(), 10) };
    jiff::civil::Date::new(year, month, 15).unwrap_or(first)
}

/// The watch over food until flowers.
fn watch(ground: &Ground<'_>, dates: (&Dates, jiff::civil::Date), flow: &Dates, trigger: Trigger) -> JobWindow {
    let t = ground.question.triggers;
    let flowers = flow.at(0.9, ground.year.first());
    let steady = flow.at(0.5, ground.year.first()).map(|on| on.saturating_add(14.days()));
    let end = steady.map(|on| on.max(least_watched(ground.year.first())));
    let until =
        flowers.map_or_else(String::new, |on| format!(" In one winter of ten nothing flowers before {}.", day(on)));
    let what = format!("Lift every {:.0} days for food", t.heft_every_days.value);
    window("starvation-watch", &what, Kind::From, dates, trigger)
        .until(end)
        .why(format!("Most hungry colonies die with brood in spring, not in the coldest month.{until}"))
        .believed(
            "The danger ends in February.",
            "It begins then: brood, cold nights and no flowers yet. Most food is eaten in the last weeks.",
        )
        .caution(&[Hazard::OneSide])
}

/// What the thaw asks for.
fn thaw(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let (first, midwinter) = (year.first(), year.midwinter());
    let melt = year.when(|path| melts(path, midwinter, t.snow_lies.value, t.snow_left.value));
    let bears = year.when(|path| rises_for_good(path, midwinter, 14, t.thaw_mean.value, |day| day.mean));
    let sunk = format!("The winter's snow has sunk to {:.0} % of its deepest.", 100.0 * t.snow_left.value);
    let thawed = format!("The mean of a fortnight stays above {}.", degrees(t.thaw_mean.value, system));
    let mut windows = vec![
        window(
            "melt-check",
            "Meltwater, leaning hives",
            Kind::From,
            (&melt, first),
            trigger("snow_left", &t.snow_left, sunk),
        )
        .why("Water at the floor, ice before the entrance, a stand that has sunk on one side.")
        .caution(&[Hazard::Ice]),
        window(
            "bear-fence-thaw",
            "Bear fence on again",
            Kind::By,
            (&bears, first),
            trigger("thaw_mean", &t.thaw_mean, thawed),
        )
        .why("Bears wake hungry and hives smell of brood.")
        .caution(&[Hazard::Fence]),
    ];
    windows.extend(indoors::carried(ground, Way::Out, out_of_the_cellar(ground)));
    windows
}

fn out_of_the_cellar(ground: &Ground<'_>) -> JobWindow {
    let (t, year) = (ground.question.triggers, &ground.year);
    let out = year.when(|path| rises_above(path, year.midwinter(), 14, t.cellar_mean.value, |day| day.mean));
    let stored = format!("The mean of a fortnight reaches {}.", degrees(t.cellar_mean.value, ground.question.system));
    window(
        "cellar-out",
        "Out of the cellar, if used",
        Kind::From,
        (&out, year.first()),
        trigger("cellar_mean", &t.cellar_mean, stored),
    )
    .why("In the evening before a flying day, each to its old place.")
    .caution(&[Hazard::Carrying])
}
