//! Sugar for a shortage: litres of syrup, kilograms of solid feed, frames of stores.

mod answer;
pub(crate) mod question;
mod solid;

pub use answer::{ByVolume, FeedAnswer, Frames, Never, Solid, SugarKg, Syrup};
pub use question::{FeedQuestion, Season};

use serde::Deserialize;
use snowhum_apiary::food_in;
use snowhum_units::Kilogram;
use snowhum_winter::Parameter;

use super::{SumFault, shipped, within};
use crate::statistics::rounded;
use crate::syrup::{Strength, sugar_for};

/// Name and number of the answer's form; the number rises when a key changes.
pub const FEED_SCHEMA: &str = "snowhum.feed/1";

const SHIPPED: &str = include_str!("../../../../data/feeds.toml");

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Figures {
    stores_per_sugar: Parameter,
    honey_sugar: Parameter,
    sugar_bulk: Parameter,
    water: Parameter,
    ripe: Parameter,
    solid: solid::Kinds,
    never: Vec<Never>,
}

/// Answers a shortage.
///
/// # Errors
/// When the shortage, the feeder or the slab is no size such a thing has.
pub fn feed(question: &FeedQuestion) -> Result<FeedAnswer, SumFault> {
    let figures: Figures = shipped("feeds.toml", SHIPPED)?;
    within("stores that are short (kg)", question.short.get(), 0.1, 100.0)?;
    if let Some(feeder) = question.feeder {
        within("what the feeder holds (L)", feeder.get() * 1e3, 0.1, 50.0)?;
    }
    if let Some(slab) = question.slab {
        within("thickness of the slab (mm)", slab.get() * 1e3, 3.0, 150.0)?;
    }
    let sugar = sugar_for(question.short);
    let days = days_left(question);
    let strengths: &[Strength] = match question.season {
        _ if days.is_some_and(|days| days <= 0) => &[],
        Season::Autumn => &[Strength::TwoToOne, Strength::ThreeToTwo],
        Season::Winter => &[],
        Season::Spring => &[Strength::OneToOne, Strength::ThreeToTwo],
    };
    Ok(FeedAnswer {
        schema: FEED_SCHEMA.to_owned(),
        season: question.season,
        hive: question.hive.clone(),
        short_kg: rounded(question.short.get(), 2),
        sugar_kg: sugar_range(question.short, sugar, &figures),
        days_left: days,
        syrup: strengths.iter().map(|strength| syrup(*strength, sugar, days, question, &figures)).collect(),
        syrup_says: syrup_says(question.season, days).to_owned(),
        by_volume: [(1.0, "1:1"), (1.5, "3:2"), (2.0, "2:1")]
            .map(|(volumes, name)| by_volume(volumes, name, &figures))
            .to_vec(),
        solid: figures.solid.all(question, figures.honey_sugar.value),
        frames: frames(question),
        never: figures.never.clone(),
        say: answer::say(question.season),
        cautions: answer::cautions(question.season),
        sources: sources(&figures),
    })
}

fn sugar_range(short: Kilogram, sugar: Kilogram, figures: &Figures) -> SugarKg {
    let per = |stores: Option<f64>| stores.map_or(sugar, |stores| short / stores);
    SugarKg {
        least: rounded(per(figures.stores_per_sugar.high).get(), 2),
        likely: rounded(sugar.get(), 2),
        most: rounded(per(figures.stores_per_sugar.low).get(), 2),
    }
}

fn days_left(question: &FeedQuestion) -> Option<i64> {
    let (from, to) = (question.as_of?, question.syrup_by?);
    Some(i64::from(from.until(to).ok()?.get_days()))
}

fn syrup(strength: Strength, sugar: Kilogram, days: Option<i64>, question: &FeedQuestion, figures: &Figures) -> Syrup {
    let litres = strength.syrup_with(sugar).get() * 1e3;
    let water = sugar * strength.water_per_sugar();
    let litres_of = |water: Kilogram| water.get() / figures.water.value * 1e3;
    let kept = sugar * (1.0 / figures.ripe.value - 1.0);
    Syrup {
        strength: strength.words().to_owned(),
        sugar_kg: rounded(sugar.get(), 2),
        water_l: rounded(litres_of(water), 2),
        syrup_l: rounded(litres, 2),
        water_l_per_kg_sugar: rounded(litres_of(water) / sugar.get(), 3),
        syrup_l_per_kg_sugar: rounded(litres / sugar.get(), 3),
        water_to_evaporate_kg: rounded((water - kept).get(), 2),
        feeder_fills: question.feeder.map(|feeder| rounded(litres / (feeder.get() * 1e3), 1)),
        syrup_l_per_day: days.filter(|days| *days > 0).map(|days| rounded(litres / days as f64, 2)),
    }
}

fn syrup_says(season: Season, days: Option<i64>) -> &'static str {
    match (season, days) {
        (_, Some(days)) if days <= 0 => {
            "The day for syrup has passed: bees can no longer ripen it. Give frames of stores, else solid feed."
        }
        (Season::Autumn, _) => {
            "Syrup must be finished by its day, not begun. No 1:1 in autumn: bees would have to dry away three times the water of 2:1."
        }
        (Season::Winter, _) => "No syrup in winter: clustered bees neither reach nor ripen it, and it chills them.",
        (Season::Spring, _) => {
            "Syrup only once days stay above 10 °C (50 °F); 1:1 is taken as a flow, so feed no more than is short."
        }
    }
}

/// What so many volumes of sugar to one of water are by weight.
fn by_volume(volumes: f64, name: &str, figures: &Figures) -> ByVolume {
    let weight = volumes * figures.sugar_bulk.value / figures.water.value;
    ByVolume {
        volumes: name.to_owned(),
        sugar_per_water_by_weight: rounded(weight, 2),
        sugar_percent: rounded(100.0 * weight / (1.0 + weight), 1),
        meant_percent: rounded(100.0 * volumes / (1.0 + volumes), 1),
    }
}

fn frames(question: &FeedQuestion) -> Frames {
    let one = food_in(1.0, question.hive_box.comb_side);
    Frames {
        size: question.hive_box.size.clone(),
        full_frame_kg: one.map(|kg| rounded(kg.get(), 2)),
        frames: rounded(question.short / one.p50, 1),
    }
}

fn sources(figures: &Figures) -> Vec<String> {
    vec![
        format!("stores from sugar: {}", figures.stores_per_sugar.source),
        "densities of syrup: from memory of handbook tables of sucrose at 20 °C".to_owned(),
        format!("poured sugar {} kg/L: {}", figures.sugar_bulk.value / 1e3, figures.sugar_bulk.source),
        "a full frame: 0.30 (Swedish Beekeepers) to 0.35 kg/dm² (Bienen-Zeitung wiki)".to_owned(),
        "candy cannot replace autumn stores in deep cold: University of Minnesota".to_owned(),
    ]
}
