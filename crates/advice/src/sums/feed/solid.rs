//! Solid feed: how much, and how thick it lies on a box.

use serde::Deserialize;
use snowhum_units::{Kilogram, KilogramPerCubicMetre, Metre};
use snowhum_winter::Status;

use super::{FeedQuestion, Figures, Solid};
use crate::statistics::rounded;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Kinds {
    dry: Kind,
    damp: Kind,
    cooked: Kind,
    fondant: Kind,
}

/// A kind of solid feed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Kind {
    name: String,
    /// Density, kg/m³.
    value: f64,
    /// Share of sugar.
    sugar: f64,
    /// Whether it is cooked.
    heat: bool,
    #[serde(rename = "unit")]
    _unit: String,
    source: String,
    status: Status,
}

pub(super) fn all(question: &FeedQuestion, figures: &Figures) -> Vec<Solid> {
    let kinds = &figures.solid;
    [&kinds.damp, &kinds.dry, &kinds.fondant, &kinds.cooked].map(|kind| solid(kind, question, figures)).to_vec()
}

/// Stores are matched by their sugar; the slab covers the whole box.
fn solid(kind: &Kind, question: &FeedQuestion, figures: &Figures) -> Solid {
    let footprint = question.hive_box.length * question.hive_box.width;
    let density = KilogramPerCubicMetre::new(kind.value);
    let stores_per_kg = kind.sugar / figures.honey_sugar.value;
    let kg = question.short / stores_per_kg;
    let centimetre = density * (footprint * Metre::new(0.01));
    let slab = question.slab.map(|thickness| density * (footprint * thickness));
    let stores = |slab: Kilogram| rounded((slab * stores_per_kg).get(), 1);
    Solid {
        what: kind.name.clone(),
        kg: rounded(kg.get(), 2),
        thickness_mm: rounded(10.0 * (kg / centimetre), 0),
        kg_per_cm: rounded(centimetre.get(), 2),
        slab_kg: slab.map(|slab| rounded(slab.get(), 1)),
        slab_stores_kg: slab.map(stores),
        needs_heat: kind.heat,
        source: kind.source.clone(),
        status: kind.status,
    }
}
