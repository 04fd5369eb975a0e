//! What to make of a dead hive, in words.

use super::answer::{CauseChance, Seen, ToldSign};
use super::tables::Tables;
use crate::cautions::Hazard;

/// A chance from which a cause counts beside another.
const WORTH_SAYING: f64 = 0.15;

/// What can hurt. While the brood is not looked at, foulbrood is asked for before anything else and not told twice.
pub(super) fn cautions(unseen_brood: bool) -> Vec<String> {
    if unseen_brood { Hazard::each(&[Hazard::FoodLaw]) } else { Hazard::each(&[Hazard::Foulbrood, Hazard::FoodLaw]) }
}

pub(super) fn of(causes: &[CauseChance], told: &[ToldSign], unseen_brood: bool, tables: &Tables) -> Vec<String> {
    let chance = |name: &str| causes.iter().find(|cause| cause.cause == name).map_or(0.0, |cause| cause.p);
    let mut say = Vec::new();
    let is_yes = |name: &str| told.iter().any(|sign| sign.sign == name && sign.seen.is_yes());
    if told.iter().all(|sign| sign.seen == Seen::Unseen) {
        say.push(
            "No sign is told yet: this is only what dead hives of small keepers in the north usually are.".to_owned(),
        );
    }
    if is_yes("no-food") && is_yes("food-near") {
        say.push("No food anywhere and food near the cluster cannot both be: look again.".to_owned());
    }
    if !unseen_brood {
        say.push(tables.stop.clean.clone());
    }
    if chance("mites") >= WORTH_SAYING && chance("small") + chance("isolation") >= WORTH_SAYING {
        let words = "Mites in autumn leave a small cluster, which then dies of cold or beside its food: both can be true, and what began it is what to mend.";
        say.push(words.to_owned());
    }
    let signs = tables.sign.iter().filter(|sign| is_yes(&sign.name));
    say.extend(signs.filter_map(|sign| sign.on_yes.clone()));
    say.push("Close the hive today, so that it is not robbed.".to_owned());
    say
}
