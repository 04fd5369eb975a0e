//! What to know: of one colony, where a wrong belief would mislead, and of the whole yard.

use snowhum_apiary::{Mites, Trouble, food_in};
use snowhum_say::{Message, fit as say};
use snowhum_units::Kilogram;

use super::answer::{ColonyFit, Stands, VerdictKind, What};
use super::look::Look;
use super::scales;
use crate::cautions::Hazard;
use crate::site::dates;
use crate::site::health::{foulbrood, mite_rate};

/// What to know of one colony.
pub(super) fn colony(look: &Look<'_>, at: usize) -> Vec<Message> {
    let colony = look.colony(at);
    let mut told = Vec::new();
    let bees = scales::all(look, at).into_iter().find(|scale| scale.what == What::Bees);
    let strong = bees.is_some_and(|scale| matches!(scale.stands, Stands::Usual | Stands::PerhapsOver | Stands::Over));
    if strong && colony.mites == Mites::NotCounted {
        told.push(say::say_strong());
    }
    if mite_rate(colony).is_some_and(|rate| rate < 0.05) {
        told.push(say::say_clean());
    }
    if colony.autumn.troubles.iter().flatten().any(|t| matches!(t, Trouble::Robbed | Trouble::Wasps)) {
        told.push(say::say_robbed());
    }
    if foulbrood(colony) {
        told.push(Hazard::Foulbrood.says());
    }
    told.extend(no_room(look, at));
    if look.is_nucleus(at) {
        told.push(say::say_nucleus());
    }
    told
}

/// Share of its combs that food may fill: bees cluster on empty cells under it (judgement).
const ROOM: f64 = 0.85;

/// What it is short of, where its combs cannot take that.
fn no_room(look: &Look<'_>, at: usize) -> Option<Message> {
    let (hive, now) = (&look.housed(at).hive, look.colony(at).stores.total.p50);
    let room = food_in(f64::from(hive.comb_count()), hive.mean_comb_side()).p50 * ROOM;
    let wanted = now + Kilogram::new(look.plan(at).shortage_kg);
    (look.is_short(at) && wanted > room).then(|| say::say_no_room(room, wanted))
}

/// What holds for the whole yard on this day, with the caution of treatments where one is advised.
pub(super) fn yard(look: &Look<'_>, colonies: &[ColonyFit]) -> Vec<Message> {
    let mut told = Vec::new();
    let short = look.places().any(|at| look.is_short(at));
    if short && look.today() <= look.dates.syrup_by.p90 {
        told.extend([say::say_feeding(), Hazard::Robbing.says()]);
    }
    told.extend(mites(look));
    if colonies.iter().any(|one| one.verdict.kind == VerdictKind::Treat) {
        told.extend([Hazard::Label, Hazard::Acids].map(Hazard::says));
    }
    if look.today() <= look.dates.cluster.p90 {
        let (queen, unite) = (&look.dates.requeen_by, &look.dates.unite_by);
        told.extend([say::say_queens(queen.p10, queen.p50, queen.p90), say::say_uniting(unite.p50)]);
    }
    let forgotten = look.places().all(|at| look.colony(at).autumn.left_on.is_none());
    if forgotten {
        told.push(say::say_left_on());
    }
    told
}

fn mites(look: &Look<'_>) -> Vec<Message> {
    let mut told = Vec::new();
    let [all_spared, none_spared] = dates::winter_bees(look.base);
    if look.today() > all_spared && look.month() >= 7 {
        told.extend([say::say_mites_now(all_spared, none_spared), dates::winter_bees_say(look.base)]);
    }
    if matches!(look.month(), 9 | 10) {
        told.push(say::say_count_again(look.dates.cluster.p50));
    }
    told
}
