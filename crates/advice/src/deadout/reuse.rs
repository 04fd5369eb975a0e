//! What of a dead hive can be used again: the strictest rule of the causes that may be, and of what was seen.

use snowhum_say::deadout as say;

use super::answer::{CauseChance, Reuse, ToldSign};
use super::tables::{Cause, Tables, said};

/// A cause this likely rules what is used again.
const MAY_BE: f64 = 0.10;

pub(super) fn of(causes: &[CauseChance], told: &[ToldSign], unseen_brood: bool, tables: &Tables) -> Reuse {
    let likely = causes.iter().filter(|cause| cause.p >= MAY_BE).map(|cause| cause.cause.as_str());
    let seen = tables
        .sign
        .iter()
        .filter(|sign| told.iter().any(|told| told.sign == sign.name && told.seen.is_yes()))
        .filter_map(|sign| sign.reuse_as.as_deref());
    let rules: Vec<&Cause> =
        likely.chain(seen).filter_map(|name| tables.cause.iter().find(|cause| cause.name == name)).collect();
    let Some(strictest) = rules.iter().map(|cause| cause.strictness).max() else { return nothing(&[]) };
    let mut ruling: Vec<&Cause> = Vec::new();
    for cause in rules.into_iter().filter(|cause| cause.strictness == strictest) {
        if !ruling.iter().any(|other| other.name == cause.name) {
            ruling.push(cause);
        }
    }
    let joined = |what: &str| {
        let all = say::rules(ruling.iter().map(|cause| said(&format!("{}-{what}", cause.name))).collect());
        if unseen_brood { say::brood_first(all) } else { all }
    };
    Reuse {
        comb: joined("comb"),
        stores: joined("stores"),
        because: ruling.iter().map(|cause| cause.name.clone()).collect(),
        people: say::people(),
    }
}

/// Foulbrood: nothing leaves the hive.
pub(super) fn nothing(signs: &[String]) -> Reuse {
    Reuse { comb: say::comb_stays(), stores: say::stores_stay(), because: signs.to_vec(), people: say::people() }
}
