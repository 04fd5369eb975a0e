//! The answer to a weighing in words.

use snowhum_advice::cautions::Hazard;
use snowhum_advice::lifting;
use snowhum_advice::sums::weigh::{LiftIndex, Lifted, Part, Trend, WeighAnswer};
use snowhum_say::{Message, shared_terminal as shared, weigh_terminal as say};
use snowhum_units::{Kilogram, Metre, Range};

use crate::text::{entry, paragraphs, stands_on, wrapped};

pub(crate) fn words(answer: &WeighAnswer) -> String {
    let mut page = format!("{}\n\n", wrapped(head(answer), 0));
    page += &weights(answer);
    page += &paragraphs(&answer.say);
    page += "\n";
    for lift in answer.lifts.iter().filter(|lift| lift.index > 1.0) {
        page += &entry(say::back(), heavy(lift));
    }
    page += &entry("", Hazard::Lifting.says());
    if !answer.sources.is_empty() {
        page += "\n";
        page += &stands_on(&answer.sources);
    }
    page
}

/// Whole, readings, empty hive, bees, food: what there is of them.
fn weights(answer: &WeighAnswer) -> String {
    let range = |range: &Range<f64>| {
        let [least, likely, most] = [range.p10, range.p50, range.p90].map(Kilogram::new);
        shared::masses(least, likely, most)
    };
    let mut page = String::new();
    if let Some(whole) = &answer.whole_kg {
        page += &entry(say::whole(), range(whole));
    }
    if let Some(lifted) = &answer.lifted {
        page += &entry(say::readings(), readings(lifted));
    }
    if let Some(tare) = &answer.tare_kg {
        let part = |part: &Part| say::part(Kilogram::new(part.kg), &part.what);
        let parts: Vec<Message> = answer.tare_parts.iter().map(part).collect();
        let tare = if parts.is_empty() { range(tare) } else { say::empty_of(parts, range(tare)) };
        page += &entry(say::empty(), tare);
    }
    if let Some(bees) = &answer.bees_kg {
        page += &entry(shared::bees(), range(bees));
    }
    if answer.other_kg > 0.0 {
        page += &entry(say::other(), shared::mass(Kilogram::new(answer.other_kg)));
    }
    if let Some(stores) = answer.stores_kg.as_ref().map(range) {
        let stores = match &answer.hive {
            Some(hive) => say::stores_hive(hive, stores),
            None => say::stores(stores),
        };
        page += &entry(shared::food(), stores);
    }
    page
}

fn readings(lifted: &Lifted) -> Message {
    let off = lifted.off_centre_mm;
    let [centre, inset, lift, aside] = [lifted.centre_height_mm, lifted.inset_mm, lifted.lift_mm, off.abs()]
        .map(|millimetres| Metre::new(millimetres * 1e-3));
    say::read(centre, lifted.factor, inset, off < 0.0, lift, aside, Kilogram::new(lifted.sum_kg))
}

fn head(answer: &WeighAnswer) -> Message {
    match (&answer.stores_kg, &answer.whole_kg, &answer.trend) {
        (Some(stores), ..) => say::food_by(Kilogram::new(stores.p50), &answer.way),
        (None, Some(whole), _) => say::whole_by(&answer.way, Kilogram::new(whole.p50)),
        (None, None, Some(trend)) => trended(trend),
        (None, None, None) => answer.way.clone(),
    }
}

fn trended(trend: &Trend) -> Message {
    let plus_minus = Kilogram::new(trend.plus_minus_kg);
    match trend.change_kg {
        None => say::side_first(Kilogram::new(trend.now_kg)),
        Some(change) if change.abs() <= trend.plus_minus_kg => say::side_same(Kilogram::new(change), plus_minus),
        Some(change) => say::side_changed(Kilogram::new(change.abs()), change < 0.0, plus_minus),
    }
}

fn heavy(lift: &LiftIndex) -> Message {
    let [load, advised] = [lift.load_kg, lift.recommended_kg].map(Kilogram::new);
    say::heavy(lifting::advice(lift.index), advised, load, &lift.what)
}
