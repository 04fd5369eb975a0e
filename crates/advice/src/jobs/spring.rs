//! From the first flight to the first flowers.

use super::answer::{JobWindow, Kind, Trigger};
use super::ground::Ground;
use super::window::{degrees, trigger, window};
use super::winter::FLOW_AT;
use super::year::{SiteDay, first, rises_for_good, warmth};
use crate::cautions::Hazard;
use snowhum_say::jobs as say;
use snowhum_units::KelvinDifference;
use snowhum_winter::Status;

/// The windows of spring.
pub(super) fn windows(ground: &Ground<'_>) -> Vec<JobWindow> {
    let mut windows = looks(ground);
    windows.push(unwrap(ground));
    windows.extend(food(ground));
    windows.extend(flowers(ground));
    windows
}

fn high(day: &SiteDay) -> f64 {
    day.high
}

fn night(day: &SiteDay) -> f64 {
    day.night
}

fn looks(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year) = (ground.question.triggers, &ground.year);
    let (start, midwinter) = (year.first(), year.midwinter());
    let mild = year.when(|path| first(path, midwinter, |day| day.mild));
    let light = year.spring(t.spring_light.value);
    let look = year.when(|path| first(path, light, |day| day.look));
    let flight = trigger("mild_air", &t.mild_air, say::clean_floor_waits(degrees(&t.mild_air)));
    let words = say::first_look_waits(degrees(&t.look_air), t.spring_light.value);
    vec![
        window("clean-floor", say::clean_floor(), Kind::About, (&mild, start), flight).why(say::clean_floor_why()),
        window("first-look", say::first_look(), Kind::About, (&look, start), trigger("look_air", &t.look_air, words))
            .why(say::first_look_why())
            .others(say::first_look_others(degrees(&t.full_look_air), degrees(&t.comb_air))),
    ]
}

fn unwrap(ground: &Ground<'_>) -> JobWindow {
    let (t, year) = (ground.question.triggers, &ground.year);
    let (start, light) = (year.first(), year.spring(t.spring_light.value));
    let unwrap = year.when(|path| rises_for_good(path, light, 14, t.unwrap_night.value, night));
    let words = say::unwrap_waits(degrees(&t.unwrap_night), t.spring_light.value);
    window("unwrap", say::unwrap(), Kind::From, (&unwrap, start), trigger("unwrap_night", &t.unwrap_night, words))
        .why(say::unwrap_why())
}

fn food(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year) = (ground.question.triggers, &ground.year);
    let (start, midwinter) = (year.first(), year.midwinter());
    let (warm, ahead) = (&t.spring_syrup_high, &t.pollen_before_days);
    let syrup = year.when(|path| rises_for_good(path, midwinter, 7, warm.value, high));
    let pollen = year.when(|path| warmth(path, midwinter, FLOW_AT)).moved(-ahead.value);
    let taken = trigger("spring_syrup_high", warm, say::spring_syrup_waits(degrees(warm)));
    let before = trigger("pollen_before_days", ahead, say::before_flow(ahead.value));
    vec![
        window("spring-syrup", say::spring_syrup(), Kind::From, (&syrup, start), taken).why(say::spring_syrup_why()),
        window("pollen", say::pollen(), Kind::From, (&pollen, start), before)
            .why(say::pollen_why())
            .others(say::pollen_others())
            .believed(say::pollen_belief(), say::pollen_so()),
    ]
}

fn flowers(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year) = (ground.question.triggers, &ground.year);
    let (start, midwinter) = (year.first(), year.midwinter());
    let flow = year.when(|path| warmth(path, midwinter, FLOW_AT));
    let dandelion = year.when(|path| warmth(path, midwinter, t.dandelion_warmth.value));
    let willow = Trigger {
        words: say::first_flow_waits(KelvinDifference::new(FLOW_AT)),
        value: FLOW_AT,
        figure: None,
        source: say::source_flow(),
        status: Status::Judgement,
    };
    let warmth = &t.dandelion_warmth;
    let bloom = || trigger("dandelion_warmth", warmth, say::dandelion_waits(KelvinDifference::new(warmth.value)));
    vec![
        window("first-flow", say::first_flow(), Kind::About, (&flow, start), willow).why(say::first_flow_why()),
        window("mite-count-spring", say::mite_count_spring(), Kind::About, (&dandelion, start), bloom())
            .why(say::mite_count_spring_why())
            .believed(say::mite_count_spring_belief(), say::mite_count_spring_so()),
        window("reverse", say::reverse(), Kind::From, (&dandelion, start), bloom())
            .why(say::reverse_why())
            .caution(&[Hazard::Lifting]),
    ]
}
