//! The answer to a shortage in words.

use jiff::civil::Date;
use snowhum_advice::sums::feed::{ByVolume, FeedAnswer, Season, Solid, Syrup};
use snowhum_say::{Message, feed_terminal as say, shared_terminal as shared};
use snowhum_units::{CubicMetre, Kilogram, Metre, System};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, paragraphs, stands_on};

/// The answer; with the day of the question and the day by which syrup must be finished, where they are given.
pub(crate) fn words(answer: &FeedAnswer, days: [Option<Date>; 2]) -> String {
    let sugar = &answer.sugar_kg;
    let [short, least, likely, most] = [answer.short_kg, sugar.least, sugar.likely, sugar.most].map(Kilogram::new);
    let mut page = in_words(&say::head(short, likely)) + "\n\n";
    page += &entry(say::sugar(), say::sugar_range(least, most));
    for syrup in &answer.syrup {
        page += &entry(&syrup.strength, recipe(syrup));
    }
    page += &entry(shared::syrup(), timing(answer, days));
    if !answer.syrup.is_empty() {
        page += &entry(say::by_cups(), say::lighter(answer.by_volume.iter().rev().map(cups).collect()));
    }
    page += &entry(shared::frames(), frames(answer));
    page += "\n";
    page += &paragraphs(answer.solid.iter().map(slab));
    page += "\n";
    for never in &answer.never {
        page += &entry(say::never(), shared::of(&never.what, &never.why));
    }
    page += "\n";
    page += &paragraphs(&answer.say);
    page += &paragraphs(&answer.cautions);
    page + "\n" + &stands_on(&answer.sources)
}

fn recipe(syrup: &Syrup) -> Message {
    let litres = |litres: f64| CubicMetre::new(litres * 1e-3);
    let each = syrup.water_l_per_kg_sugar;
    let mut parts = vec![
        say::recipe(Kilogram::new(syrup.sugar_kg), litres(syrup.syrup_l), litres(syrup.water_l)),
        match tongue().system() {
            System::Metric => say::litres(each),
            // Quarts: a kilogram is 2.2046 lb, a US quart 0.946 L.
            System::Us => say::quarts(10.0 / 2.204_6 * each / 0.946_353),
        },
    ];
    parts.extend(syrup.feeder_fills.map(say::fills));
    parts.extend(syrup.syrup_l_per_day.map(|daily| say::daily(litres(daily))));
    shared::parts(parts)
}

fn timing(answer: &FeedAnswer, [today, syrup_by]: [Option<Date>; 2]) -> Message {
    let says = &answer.syrup_says;
    match (syrup_by, answer.days_left) {
        (Some(by), Some(days)) if days > 0 => say::finished_in(by.to_string(), days, says),
        (Some(by), None) if !answer.syrup.is_empty() => say::finished(by.to_string(), says),
        (None, _) if today.is_some() && answer.season == Season::Autumn => say::no_last_day(says),
        _ => says.clone(),
    }
}

fn cups(cups: &ByVolume) -> Message {
    say::cups(cups.sugar_percent, cups.sugar_per_water_by_weight, &cups.volumes)
}

fn frames(answer: &FeedAnswer) -> Message {
    let frames = &answer.frames;
    say::frames(Kilogram::new(frames.full_frame_kg.p50), frames.frames, &answer.hive, &frames.size)
}

fn slab(solid: &Solid) -> Message {
    let mut parts = vec![say::slab(Kilogram::new(solid.kg), Metre::new(solid.thickness_mm * 1e-3), &solid.what)];
    if let (Some(slab), Some(stores)) = (solid.slab_kg, solid.slab_stores_kg) {
        parts.push(say::own_slab(Kilogram::new(slab), Kilogram::new(stores)));
    }
    shared::parts(parts)
}
