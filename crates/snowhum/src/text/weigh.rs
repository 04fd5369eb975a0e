//! The answer to a weighing in words.

use snowhum_advice::cautions::Hazard;
use snowhum_advice::lifting;
use snowhum_advice::sums::weigh::{LiftIndex, Lifted, Trend, WeighAnswer};
use snowhum_units::{Kilogram, Metre, Range, System};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

pub(crate) fn words(answer: &WeighAnswer, units: System) -> String {
    let mut page = format!("{}\n\n", wrapped(&head(answer, units), 0));
    page += &weights(answer, units);
    for say in &answer.say {
        page += &format!("  {}\n", wrapped(&in_words(say), 2));
    }
    page += "\n";
    for lift in answer.lifts.iter().filter(|lift| lift.index > 1.0) {
        page += &entry("Your back", &heavy(lift, units));
    }
    page += &entry("", Hazard::Lifting.says());
    if !answer.sources.is_empty() {
        page += "\n";
        page += &wrapped(&format!("Stands on: {}.", tongue().say_all(&answer.sources).join("; ")), 2);
    }
    page
}

/// Whole, readings, empty hive, bees, food: what there is of them.
fn weights(answer: &WeighAnswer, units: System) -> String {
    let kg = |kg: f64| Kilogram::new(kg).show(units, 1);
    let range = |range: &Range<f64>| format!("{} ({} to {})", kg(range.p50), kg(range.p10), kg(range.p90));
    let mut page = String::new();
    if let Some(whole) = &answer.whole_kg {
        page += &entry("Whole", &range(whole));
    }
    if let Some(lifted) = &answer.lifted {
        page += &entry("Readings", &readings(lifted, units));
    }
    if let Some(tare) = &answer.tare_kg {
        let parts: Vec<String> =
            answer.tare_parts.iter().map(|part| format!("{} {}", in_words(&part.what), kg(part.kg))).collect();
        let parts = if parts.is_empty() { String::new() } else { format!(": {}", parts.join(", ")) };
        page += &entry("Empty hive", &format!("{}{parts}", range(tare)));
    }
    if let Some(bees) = &answer.bees_kg {
        page += &entry("Bees", &range(bees));
    }
    if answer.other_kg > 0.0 {
        page += &entry("Other", &kg(answer.other_kg));
    }
    if let Some(stores) = &answer.stores_kg {
        let hive = answer.hive.as_ref().map(|hive| format!(" ({hive})")).unwrap_or_default();
        page += &entry("Food", &format!("{}{hive}; in 8 cases of 10 it lies in that range", range(stores)));
    }
    page
}

fn readings(lifted: &Lifted, units: System) -> String {
    let length = |millimetres: f64| {
        let decimals = if units == System::Us { 1 } else { 0 };
        Metre::new(millimetres * 1e-3).show(units, decimals)
    };
    let side = if lifted.off_centre_mm < 0.0 { "left" } else { "right" };
    format!(
        "{} read, times {:.3} for supports set in by {}, a lift of {} and the middle of the load {} up; it lies {} {side} of the middle",
        Kilogram::new(lifted.sum_kg).show(units, 1),
        lifted.factor,
        length(lifted.inset_mm),
        length(lifted.lift_mm),
        length(lifted.centre_height_mm),
        length(lifted.off_centre_mm.abs())
    )
}

fn head(answer: &WeighAnswer, units: System) -> String {
    match (&answer.stores_kg, &answer.whole_kg, &answer.trend) {
        (Some(stores), ..) => {
            format!("Food by {}: {}", in_words(&answer.way), Kilogram::new(stores.p50).show(units, 1))
        }
        (None, Some(whole), _) => {
            format!("Whole hive by {}: {}", in_words(&answer.way), Kilogram::new(whole.p50).show(units, 1))
        }
        (None, None, Some(trend)) => trended(trend, units),
        (None, None, None) => in_words(&answer.way),
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
    format!(
        "{}, {}: {} (advised: {})",
        in_words(&lift.what),
        kg(lift.load_kg),
        in_words(&lifting::advice(lift.index)),
        kg(lift.recommended_kg)
    )
}
