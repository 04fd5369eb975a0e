//! What to make of a dead hive, in words.

use snowhum_say::{Message, deadout as say, deadout_table};

use super::answer::{CauseChance, Seen, ToldSign};
use super::tables::Tables;
use crate::cautions::Hazard;

/// A chance from which a cause counts beside another.
const WORTH_SAYING: f64 = 0.15;

/// What can hurt. While the brood is not looked at, foulbrood is asked for before anything else and not told twice.
pub(super) fn cautions(unseen_brood: bool) -> Vec<Message> {
    if unseen_brood { Hazard::each(&[Hazard::FoodLaw]) } else { Hazard::each(&[Hazard::Foulbrood, Hazard::FoodLaw]) }
}

pub(super) fn of(causes: &[CauseChance], told: &[ToldSign], unseen_brood: bool, tables: &Tables) -> Vec<Message> {
    let chance = |name: &str| causes.iter().find(|cause| cause.cause == name).map_or(0.0, |cause| cause.p);
    let mut said = Vec::new();
    let is_yes = |name: &str| told.iter().any(|sign| sign.sign == name && sign.seen.is_yes());
    if told.iter().all(|sign| sign.seen == Seen::Unseen) {
        said.push(say::nothing_told());
    }
    if is_yes("no-food") && is_yes("food-near") {
        said.push(say::food_twice());
    }
    if !unseen_brood {
        said.push(say::stop_clean());
    }
    if chance("mites") >= WORTH_SAYING && chance("small") + chance("isolation") >= WORTH_SAYING {
        said.push(say::chain());
    }
    let signs = tables.sign.iter().filter(|sign| is_yes(&sign.name));
    said.extend(signs.filter_map(|sign| deadout_table::named(&format!("{}-yes", sign.name))));
    said.push(say::close());
    said
}
