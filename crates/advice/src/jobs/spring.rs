//! From the first flight to the first flowers.

use super::answer::{JobWindow, Kind, Trigger};
use super::ground::Ground;
use super::window::{degrees, trigger, window};
use super::winter::FLOW_AT;
use super::year::{SiteDay, first, rises_for_good, warmth};
use crate::cautions::Hazard;
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
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let (start, midwinter) = (year.first(), year.midwinter());
    let mild = year.when(|path| first(path, midwinter, |day| day.mild));
    let light = year.spring(t.spring_light.value);
    let look = year.when(|path| first(path, light, |day| day.look));
    let mild_words = format!("The first calm, dry hour of {} after midwinter.", degrees(t.mild_air.value, system));
    let look_words = format!(
        "The first calm, dry hour of {} once days are {:.0} hours long.",
        degrees(t.look_air.value, system),
        t.spring_light.value
    );
    vec![
        window(
            "clean-floor",
            "First flight, floors cleared",
            Kind::About,
            (&mild, start),
            trigger("mild_air", &t.mild_air, mild_words),
        )
        .why("A winter's dead on the floor block the entrance and mould. Hives that do not fly are opened first."),
        window(
            "first-look",
            "First look at combs",
            Kind::About,
            (&look, start),
            trigger("look_air", &t.look_air, look_words),
        )
        .why("Minutes, and combs only as far as you must: food, eggs or brood, room.")
        .others(format!(
            "Some look only from {}; nobody lifts brood combs below {}.",
            degrees(t.full_look_air.value, system),
            degrees(t.comb_air.value, system)
        )),
    ]
}

fn unwrap(ground: &Ground<'_>) -> JobWindow {
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let (start, light) = (year.first(), year.spring(t.spring_light.value));
    let unwrap = year.when(|path| rises_for_good(path, light, 14, t.unwrap_night.value, night));
    let unwrap_words = format!(
        "The nights of a fortnight stay above {} on average, once days are {:.0} hours long.",
        degrees(t.unwrap_night.value, system),
        t.spring_light.value
    );
    window("unwrap", "Wrap off", Kind::From, (&unwrap, start), trigger("unwrap_night", &t.unwrap_night, unwrap_words))
        .why("Strong hives first. A weak one keeps its wrap longer: it has the most brood to warm for its bees.")
}

fn food(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let (start, midwinter) = (year.first(), year.midwinter());
    let syrup = year.when(|path| rises_for_good(path, midwinter, 7, t.spring_syrup_high.value, high));
    let pollen = year.when(|path| warmth(path, midwinter, FLOW_AT)).moved(-t.pollen_before_days.value);
    let syrup_words =
        format!("A week's warmest hours stay above {} on average.", degrees(t.spring_syrup_high.value, system));
    let pollen_words = format!("{:.0} days before the first flow.", t.pollen_before_days.value);
    vec![
        window("spring-syrup", "Thin syrup, if food is short", Kind::From, (&syrup, start), trigger("spring_syrup_high", &t.spring_syrup_high, syrup_words))
            .why("Until then solid food, above the cluster. Bees fetch syrup and cure it only on warm days."),
        window("pollen", "Added pollen, if none comes", Kind::From, (&pollen, start), trigger("pollen_before_days", &t.pollen_before_days, pollen_words))
            .why("Last of the three: solid food, then syrup, then pollen. Brood begun with it must be fed and kept warm to the end.")
            .others("In Minnesota strong hives get pollen from early March, to be split early.")
            .believed(
                "Pollen patties early always help.",
                "They start brood that cold nights and empty combs then starve.",
            ),
    ]
}

fn flowers(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year) = (ground.question.triggers, &ground.year);
    let (start, midwinter) = (year.first(), year.midwinter());
    let flow = year.when(|path| warmth(path, midwinter, FLOW_AT));
    let dandelion = year.when(|path| warmth(path, midwinter, t.dandelion_warmth.value));
    let willow = Trigger {
        words: "50 degree-days above 5 °C since midwinter: willow and alder.".to_owned(),
        value: FLOW_AT,
        figure: None,
        source: "our own reckoning; your own date of the first flow can stand in the yard file".to_owned(),
        status: Status::Judgement,
    };
    let bloom = || {
        let words = format!("Dandelions in bloom, at about {:.0} degree-days above 5 °C.", t.dandelion_warmth.value);
        trigger("dandelion_warmth", &t.dandelion_warmth, words)
    };
    vec![
        window("first-flow", "First flow: willow, alder", Kind::About, (&flow, start), willow)
            .why("Food begins to come in on flying days. Hunger runs a fortnight past it."),
        window("mite-count-spring", "Count mites", Kind::About, (&dandelion, start), bloom())
            .why("A colony that came through is not free of mites: few in spring are many by autumn.")
            .believed(
                "It survived, so it has no mites.",
                "Count at dandelion bloom, and again before honey comes off.",
            ),
        window("reverse", "Boxes may be reversed", Kind::From, (&dandelion, start), bloom())
            .why("Only if the lower box is empty and no brood lies across both; else it tears the nest in two.")
            .caution(&[Hazard::Lifting]),
    ]
}
