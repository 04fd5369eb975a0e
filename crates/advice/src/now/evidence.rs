//! What each visit did to the estimate, in words.

use snowhum_apiary::{Apiary, ColonyId, NoteId};
use snowhum_say::{Message, now as say};
use snowhum_units::Kilogram;
use snowhum_watch::{DeadBees, Moved, Watching};

use super::answer::{DeadBeesCounted, Evidence};
use crate::dates::date_of_hour;
use crate::dead_bees::{ledger_words, usual_words};
use crate::statistics::rounded;
use snowhum_say::{against, hives};

/// Hives in a hundred below which a move is called none.
const HARDLY: i64 = 1;
/// Stores, kg, below which a move is called none.
const HARDLY_KG: f64 = 0.4;

/// The visits of a colony, latest first.
pub(super) fn all(apiary: &Apiary, watching: &Watching) -> Vec<Evidence> {
    watching.moved.iter().rev().map(|moved| one(apiary, moved)).filter(|evidence| !evidence.note.is_empty()).collect()
}

fn one(apiary: &Apiary, moved: &Moved) -> Evidence {
    let stores = |standing: &snowhum_watch::Standing| standing.stores_kg.map(|range| rounded(range.p50, 1));
    Evidence {
        on: date_of_hour(apiary.as_of, moved.hour),
        note: moved.notes.iter().map(|id| written(apiary, *id)).collect::<Vec<_>>().join("; "),
        moved: words(moved),
        alive_before: moved.before.alive,
        alive_after: moved.after.alive,
        stores_before_kg: stores(&moved.before),
        stores_after_kg: stores(&moved.after),
        unexplained: moved.unexplained,
        dead_bees: moved.dead_bees.iter().map(|one| counted(apiary, one)).collect(),
    }
}

fn counted(apiary: &Apiary, dead: &DeadBees) -> DeadBeesCounted {
    DeadBeesCounted {
        since: date_of_hour(apiary.as_of, dead.since),
        found: dead.found.1.map_or(dead.found.0, |most| dead.found.0.midpoint(most)),
        usual: dead.usual,
        verdict: dead.against(),
        lie: ledger_words(&dead.ledger),
    }
}

fn written(apiary: &Apiary, id: NoteId) -> String {
    let name = |colony: ColonyId| {
        let found = apiary.colonies.iter().find(|other| other.id == colony);
        found.map_or_else(|| colony.0.to_string(), |other| other.name.clone())
    };
    let Some(note) = apiary.notes.iter().find(|note| note.id == id) else { return String::new() };
    note.entries.iter().map(|entry| entry.written(&name)).collect::<Vec<_>>().join("; ")
}

fn words(moved: &Moved) -> Message {
    if moved.unexplained {
        return say::moved_unexplained();
    }
    let dead = |dead: &DeadBees| say::moved_dead(against(dead.against()), usual_words(&dead.usual));
    let mut parts: Vec<Message> = moved.dead_bees.iter().map(dead).collect();
    let (before, after) = (hives(moved.before.alive), hives(moved.after.alive));
    if i64::from(before).abs_diff(i64::from(after)) as i64 > HARDLY {
        parts.push(say::moved_alive(after, before));
    }
    if let (Some(before), Some(after)) = (moved.before.stores_kg, moved.after.stores_kg)
        && (before.p50 - after.p50).abs() > HARDLY_KG
    {
        parts.push(say::moved_food(Kilogram::new(after.p50), Kilogram::new(before.p50)));
    }
    let queen = |standing: &snowhum_watch::Standing| standing.queenright / standing.alive.max(1e-9);
    let (before, after) = (hives(queen(&moved.before)), hives(queen(&moved.after)));
    if i64::from(before).abs_diff(i64::from(after)) as i64 > HARDLY {
        parts.push(say::moved_queen(after, before));
    }
    match parts.len() {
        0 if moved.signs == 0 => say::moved_noted(),
        0 => say::moved_little(),
        _ => say::moved_several(parts),
    }
}
