//! The answer to a weighing in words.

use snowhum_advice::sums::weigh::{LiftIndex, Trend, WeighAnswer};
use snowhum_units::{Kilogram, Metre, Range, System};

use crate::text::{entry, wrapped};

pub(crate) fn words(answer: &WeighAnswer, units: System) -> String {
    let range = |range: &Range<f64>| {
        let [low, likely, high] = [range.p10, range.p50, range.p90].map(|kg| Kilogram::new(kg).show(units, 1));
        format!("{likely} ({low} to {high})")
    };
    let mut page = format!("{}\n\n", wrapped(&head(answer, units), 0));
    if let Some(whole) = &answer.whole_kg {
        page += &entry("Whole", &range(whole));
    }
    if let Some(lifted) = answer.lifted {
        let off = Metre::new(lifted.off_centre_mm.abs() * 1e-3).show(units, 0);
        let side = if lifted.off_centre_mm < 0.0 { "left" } else { "right" };
        let sum = Kilogram::new(lifted.sum_kg).show(units, 1);
        let text =
            format!("{sum} read, times {:.3} for supports and lift; load {off} {side} of the middle", lifted.factor);
        page += &entry("Readings", &text);
    }
    if let Some(tare) = &answer.tare_kg {
        let kg = |kg: f64| Kilogram::new(kg).show(units, 1);
        let parts: Vec<String> =
            answer.tare_parts.iter().map(|part| format!("{} {}", part.what, kg(part.kg))).collect();
        let parts = if parts.is_empty() { String::new() } else { format!(": {}", parts.join(", ")) };
        page += &entry("Empty hive", &format!("{}{parts}", range(tare)));
    }
    if let Some(bees) = &answer.bees_kg {
        page += &entry("Bees", &range(bees));
    }
    if answer.other_kg > 0.0 {
        page += &entry("Other", &Kilogram::new(answer.other_kg).show(units, 1));
    }
    if let Some(stores) = &answer.stores_kg {
        page += &entry("Food", &format!("{}; in 8 cases of 10 it lies in that range", range(stores)));
    }
    for say in &answer.say {
        page += &format!("  {}\n", wrapped(say, 2));
    }
    page += "\n";
    for lift in answer.lifts.iter().filter(|lift| lift.index > 1.0) {
        page += &entry("Your back", &heavy(lift, units));
    }
    page += &entry(
        "",
        "Over 1 the risk rises, over 3 many are hurt: ask for a second pair of hands, or move frames one by one.",
    );
    if !answer.sources.is_empty() {
        page += "\n";
        page += &wrapped(&format!("Stands on: {}.", answer.sources.join("; ")), 2);
    }
    page
}

fn head(answer: &WeighAnswer, units: System) -> String {
    match (&answer.stores_kg, &answer.whole_kg, &answer.trend) {
        (Some(stores), ..) => format!("Food by {}: {}", answer.way, Kilogram::new(stores.p50).show(units, 1)),
        (None, Some(whole), _) => format!("Whole hive by {}: {}", answer.way, Kilogram::new(whole.p50).show(units, 1)),
        (None, None, Some(trend)) => trended(trend, units),
        (None, None, None) => answer.way.clone(),
    }
}

fn trended(trend: &Trend, units: System) -> String {
    let kg = |kg: f64| Kilogram::new(kg).show(units, 1);
    match trend.change_kg {
        None => format!("{} at one side: write it down, and lift the same side again", kg(trend.now_kg)),
        Some(change) if change.abs() <= trend.plus_minus_kg => {
            format!("One side: no change beyond reading ({}, plus or minus {})", kg(change), kg(trend.plus_minus_kg))
        }
        Some(change) => {
            let way = if change < 0.0 { "lighter" } else { "heavier" };
            format!("One side is {} {way}, plus or minus {}", kg(change.abs()), kg(trend.plus_minus_kg))
        }
    }
}

fn heavy(lift: &LiftIndex, units: System) -> String {
    let kg = |kg: f64| Kilogram::new(kg).show(units, 1);
    format!("{}: {}, {:.1} times the {} advised", lift.what, kg(lift.load_kg), lift.index, kg(lift.recommended_kg))
}
