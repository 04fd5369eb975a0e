//! Sugar for a shortage: litres of syrup, kilograms of solid feed, frames of stores.

mod answer;
pub(crate) mod question;
mod solid;

pub use answer::{ByVolume, FeedAnswer, Frames, Never, Solid, SugarKg, Syrup};
pub use question::{FeedQuestion, Season};

use serde::Deserialize;
use snowhum_apiary::food_in;
use snowhum_say::{Message, feed as say, feed_never};
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
    never: Vec<NotFed>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct NotFed {
    name: String,
    source: String,
}

impl NotFed {
    fn told(&self) -> Never {
        let said = |name: &str| feed_never::named(name).unwrap_or_default();
        Never { what: said(&self.name), why: said(&format!("{}-why", self.name)), source: self.source.clone() }
    }
}

/// Answers a shortage.
///
/// # Errors
/// When the shortage, the feeder or the slab is no size such a thing has.
pub fn feed(question: &FeedQuestion) -> Result<FeedAnswer, SumFault> {
    let figures: Figures = shipped("feeds.toml", SHIPPED)?;
    within(say::short(), question.short.get(), 0.1, 100.0)?;
    if let Some(feeder) = question.feeder {
        within(say::feeder(), feeder.get() * 1e3, 0.1, 50.0)?;
    }
    if let Some(slab) = question.slab {
        within(say::slab(), slab.get() * 1e3, 3.0, 150.0)?;
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
        syrup_says: syrup_says(question.season, days),
        by_volume: [(1.0, "1:1"), (1.5, "3:2"), (2.0, "2:1")]
            .map(|(volumes, name)| by_volume(volumes, name, &figures))
            .to_vec(),
        solid: figures.solid.all(question, figures.honey_sugar.value),
        frames: frames(question),
        never: figures.never.iter().map(NotFed::told).collect(),
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

fn syrup_says(season: Season, days: Option<i64>) -> Message {
    match (season, days) {
        (_, Some(days)) if days <= 0 => say::syrup_too_late(),
        (Season::Autumn, _) => say::syrup_autumn(),
        (Season::Winter, _) => say::syrup_winter(),
        (Season::Spring, _) => say::syrup_spring(),
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

fn sources(figures: &Figures) -> Vec<Message> {
    vec![
        say::sources_stores(&figures.stores_per_sugar.source),
        say::sources_densities(),
        say::sources_poured(figures.sugar_bulk.value / 1e3, &figures.sugar_bulk.source),
        say::sources_frame(),
        say::sources_candy(),
    ]
}
