//! What spoke against a colony, and when: counts of autumn, then what was noted in winter.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{
    Apiary, Colony, DroppingsPlace, Heft, Mites, Note, OpeningState, Poked, Seen, Sign, Weighing, winter_year,
};
use snowhum_say::{Message, lessons as say};
use snowhum_units::Kilogram;

use super::lines::Parameters;
use super::season::{Diary, Season};
use crate::rules;

/// Something that spoke against a colony.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Trouble {
    /// The day it was known, or could have been.
    pub on: Date,
    /// What was found.
    pub what: Message,
    /// The causes it points to, by their short names; none for what any end looks like.
    pub points_to: Vec<String>,
}

/// All that spoke against a colony in a winter, earliest first.
pub(super) fn all(
    apiary: &Apiary,
    colony: &Colony,
    (diary, season): (&Diary<'_>, &Season),
    lines: &Parameters,
) -> Vec<Trouble> {
    let mut troubles = Vec::new();
    if season.is_counted(apiary) {
        troubles.extend(mites(colony, lines));
        troubles.extend(of_autumn(apiary, colony, lines));
    }
    let notes: Vec<(Date, &Note)> = diary.wintering(colony.id, season).collect();
    let signs = notes.iter().flat_map(|(on, note)| note.signs().map(|sign| (*on, sign)));
    troubles.extend(signs.filter_map(|(on, sign)| of_sign(on, sign)));
    troubles.extend(silence(&notes, lines));
    troubles.sort_by_key(|trouble| trouble.on);
    troubles
}

fn trouble(on: Date, what: Message, points_to: &[&str]) -> Trouble {
    Trouble { on, what, points_to: points_to.iter().map(|cause| (*cause).to_owned()).collect() }
}

fn mites(colony: &Colony, lines: &Parameters) -> Option<Trouble> {
    let Mites::Counted { found, bees, on } = colony.mites else { return None };
    let in_100 = 100.0 * f64::from(found) / f64::from(bees.max(1));
    (in_100 >= lines.mite_line.value).then(|| trouble(on, say::trouble_mites(bees, found), &["mites"]))
}

fn of_autumn(apiary: &Apiary, colony: &Colony, lines: &Parameters) -> Vec<Trouble> {
    let on = apiary.as_of;
    let mut troubles = Vec::new();
    let rule = apiary.hive_of(colony).and_then(|hive| rules::stores_rule(&apiary.site, hive));
    let stores = colony.stores.total.p50;
    if let Some((least, _)) =
        rule.and_then(|rule| rule.stores_kg).filter(|(least, _)| stores.get() < lines.short_of.value * least)
    {
        let what = say::trouble_stores(Kilogram::new(least), stores);
        troubles.push(trouble(on, what, &["starved", "isolation"]));
    }
    if colony.bees.p50 < lines.small.value {
        troubles.push(trouble(on, say::trouble_small(colony.bees.p50), &["small"]));
    }
    let age = colony.queen.year.map(|year| f64::from(winter_year(on, apiary.site.latitude) - year));
    if colony.queen.late_mated {
        troubles.push(trouble(on, say::trouble_queen_late(), &["queen"]));
    } else if age.is_some_and(|age| age >= lines.old_queen.value) {
        troubles.push(trouble(on, say::trouble_queen_old(colony.queen.year.unwrap_or_default()), &["queen"]));
    }
    troubles
}

fn of_sign(on: Date, sign: &Sign) -> Option<Trouble> {
    let (what, points_to): (Message, &[&str]) = match sign {
        Sign::CrumpledWings(Seen::Yes) => (say::trouble_wings(), &["mites"]),
        Sign::Weight(Weighing::Heft(Heft::Light)) => (say::trouble_light(), &["starved", "isolation"]),
        Sign::DeadQueen => (say::trouble_queen_dead(), &["queen"]),
        Sign::Drones(Seen::Yes) => (say::trouble_drones(), &["queen"]),
        Sign::Droppings(DroppingsPlace::Hive) => (say::trouble_streaks(), &["dysentery"]),
        Sign::Mouse(Seen::Yes) => (say::trouble_mouse(), &["mice"]),
        Sign::Robbers(Seen::Yes) | Sign::Wasps(Seen::Yes) => (say::trouble_robbers(), &["robbed", "small"]),
        Sign::Entrance(state) if was_shut(*state) => (say::trouble_entrance(), &["damp"]),
        Sign::UpperEntrance(state) if was_shut(*state) => (say::trouble_upper_entrance(), &["damp"]),
        _ => return None,
    };
    Some(trouble(on, what, points_to))
}

/// Whether it was found shut, cleared or not.
fn was_shut(state: OpeningState) -> bool {
    state.is_shut() || state == OpeningState::Cleared
}

/// The look at which silence had lasted long enough to be a word.
fn silence(notes: &[(Date, &Note)], lines: &Parameters) -> Option<Trouble> {
    let mut silent = 0.0;
    for (on, note) in notes {
        for sign in note.signs() {
            silent = match sign {
                Sign::Hum { heard: Seen::No, .. } => silent + 1.0,
                Sign::Hum { heard: Seen::Yes, .. }
                | Sign::Poke(Poked::Answered)
                | Sign::ClusterSeen { .. }
                | Sign::Flight(_) => 0.0,
                _ => silent,
            };
        }
        if silent >= lines.silences.value {
            return Some(trouble(*on, say::trouble_silence(), &[]));
        }
    }
    None
}
