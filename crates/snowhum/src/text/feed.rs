//! The answer to a shortage in words.

use jiff::civil::Date;
use snowhum_advice::sums::feed::{FeedAnswer, Season, Solid, Syrup};
use snowhum_units::{CubicMetre, Kilogram, Metre, System};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

/// The answer; with the day of the question and the day by which syrup must be finished, where they are given.
pub(crate) fn words(answer: &FeedAnswer, days: [Option<Date>; 2], units: System) -> String {
    let kg = |kg: f64| Kilogram::new(kg).show(units, 1);
    let mut page = format!("{} of stores short: {} of sugar\n\n", kg(answer.short_kg), kg(answer.sugar_kg.likely));
    page += &entry(
        "Sugar",
        &format!(
            "{} to {}: a kilogram of sugar makes 1.0 to 1.2 kg of stores",
            kg(answer.sugar_kg.least),
            kg(answer.sugar_kg.most)
        ),
    );
    for syrup in &answer.syrup {
        page += &entry(&syrup.strength, &recipe(syrup, units));
    }
    page += &entry("Syrup", &timing(answer, days));
    if !answer.syrup.is_empty() {
        page += &entry("By cups", &cups(answer));
    }
    page += &entry("Frames", &frames(answer, units));
    page += "\n";
    for solid in &answer.solid {
        page += &format!("  {}\n", wrapped(&slab(solid, units), 2));
    }
    page += "\n";
    for never in &answer.never {
        page += &entry("Never", &format!("{}: {}", never.what, never.why));
    }
    page += "\n";
    for say in answer.say.iter().map(in_words).chain(answer.cautions.iter().cloned()) {
        page += &format!("  {}\n", wrapped(&say, 2));
    }
    page += "\n";
    page + &wrapped(&format!("Stands on: {}.", tongue().say_all(&answer.sources).join("; ")), 2)
}

fn recipe(syrup: &Syrup, units: System) -> String {
    let litres = |litres: f64| CubicMetre::new(litres * 1e-3).show(units, 1);
    let sugar = Kilogram::new(syrup.sugar_kg).show(units, 1);
    let mut text =
        format!("by weight: {sugar} of sugar in {} of water make {}", litres(syrup.water_l), litres(syrup.syrup_l));
    text += &match units {
        System::Metric => format!("; each kg of sugar {:.2} L of water", syrup.water_l_per_kg_sugar),
        // Quarts: a kilogram is 2.2046 lb, a US quart 0.946 L.
        System::Us => {
            format!(
                "; each 10 lb of sugar {:.1} quarts of water",
                10.0 / 2.204_6 * syrup.water_l_per_kg_sugar / 0.946_353
            )
        }
    };
    if let Some(fills) = syrup.feeder_fills {
        text += &format!("; {fills:.1} feeders full");
    }
    if let Some(daily) = syrup.syrup_l_per_day {
        text += &format!("; {} a day", CubicMetre::new(daily * 1e-3).show(units, 2));
    }
    text
}

fn timing(answer: &FeedAnswer, [today, syrup_by]: [Option<Date>; 2]) -> String {
    let says = in_words(&answer.syrup_says);
    match (syrup_by, answer.days_left) {
        (Some(by), Some(1)) => format!("finished by {by}, 1 day from now. {says}"),
        (Some(by), Some(days)) if days > 0 => format!("finished by {by}, {days} days from now. {says}"),
        (Some(by), None) if !answer.syrup.is_empty() => format!("finished by {by}. {says}"),
        (None, _) if today.is_some() && answer.season == Season::Autumn => format!(
            "{says} Whether there is time for it is not known here: `snowhum plan` tells your site's last day; give it \
             as --syrup-by."
        ),
        _ => says,
    }
}

fn cups(answer: &FeedAnswer) -> String {
    let one = |cups: &snowhum_advice::sums::feed::ByVolume| {
        format!(
            "{} cups are {:.2}:1 by weight, {:.0} % sugar",
            cups.volumes, cups.sugar_per_water_by_weight, cups.sugar_percent
        )
    };
    let all: Vec<String> = answer.by_volume.iter().rev().map(one).collect();
    format!("poured sugar is lighter than water: {}", all.join("; "))
}

fn frames(answer: &FeedAnswer, units: System) -> String {
    let frames = &answer.frames;
    let each = Kilogram::new(frames.full_frame_kg.p50).show(units, 1);
    let (count, size, hive) = (frames.frames, &frames.size, &answer.hive);
    format!("{count:.1} {size} frames ({hive}), full and capped on both sides, {each} each")
}

fn slab(solid: &Solid, units: System) -> String {
    let kg = |kg: f64| Kilogram::new(kg).show(units, 1);
    let thick = Metre::new(solid.thickness_mm * 1e-3);
    let deep = match units {
        System::Metric => thick.show(units, 0),
        System::Us => thick.show(units, 1),
    };
    let mut text = format!("{}: {} feed as much, {deep} over the whole box", solid.what, kg(solid.kg));
    if let (Some(slab), Some(stores)) = (solid.slab_kg, solid.slab_stores_kg) {
        text += &format!("; your slab is {}, as much as {} of stores", kg(slab), kg(stores));
    }
    text
}
