//! Solid feed: how much, and how thick it lies on a box.

use serde::Deserialize;
use snowhum_say::{Message, feed as say};
use snowhum_units::{Kilogram, KilogramPerCubicMetre, Metre};
use snowhum_winter::Status;

use super::answer::Solid;
use super::question::FeedQuestion;
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

impl Kinds {
    /// Each for what is short, matched by the sugar in stores; a slab covers the whole box.
    pub(super) fn all(&self, question: &FeedQuestion, honey_sugar: f64) -> Vec<Solid> {
        let kinds = [
            (say::solid_damp(), &self.damp),
            (say::solid_dry(), &self.dry),
            (say::solid_fondant(), &self.fondant),
            (say::solid_cooked(), &self.cooked),
        ];
        kinds.map(|(what, kind)| kind.solid(what, question, honey_sugar)).into()
    }
}

impl Kind {
    fn solid(&self, what: Message, question: &FeedQuestion, honey_sugar: f64) -> Solid {
        let footprint = question.hive_box.length * question.hive_box.width;
        let density = KilogramPerCubicMetre::new(self.value);
        let stores_per_kg = self.sugar / honey_sugar;
        let kg = question.short / stores_per_kg;
        let centimetre = density * (footprint * Metre::new(0.01));
        let slab = question.slab.map(|thickness| density * (footprint * thickness));
        let stores = |slab: Kilogram| rounded((slab * stores_per_kg).get(), 1);
        Solid {
            what,
            kg: rounded(kg.get(), 2),
            thickness_mm: rounded(10.0 * (kg / centimetre), 0),
            kg_per_cm: rounded(centimetre.get(), 2),
            slab_kg: slab.map(|slab| rounded(slab.get(), 1)),
            slab_stores_kg: slab.map(stores),
            needs_heat: self.heat,
            source: self.source.clone(),
            status: self.status,
        }
    }
}
