//! What each visit did to the estimate, in words.

use snowhum_apiary::{Apiary, ColonyId, NoteId};
use snowhum_units::{Kilogram, System};
use snowhum_watch::{DeadBees, Moved, Watching};

use super::answer::{DeadBeesCounted, Evidence};
use crate::dates::date_of_hour;
use crate::dead_bees::{ledger_words, usual_words};
use crate::statistics::rounded;
use crate::words::hives;

/// Hives in a hundred below which a move is called none.
const HARDLY: i64 = 1;
/// Stores, kg, below which a move is called none.
const HARDLY_KG: f64 = 0.4;

/// The visits of a colony, latest first.
pub(super) fn all(apiary: &Apiary, watching: &Watching, system: System) -> Vec<Evidence> {
    watching
        .moved
        .iter()
        .rev()
        .map(|moved| one(apiary, moved, system))
        .filter(|evidence| !evidence.note.is_empty())
        .collect()
}

fn one(apiary: &Apiary, moved: &Moved, system: System) -> Evidence {
    let stores = |standing: &snowhum_watch::Standing| standing.stores_kg.map(|range| rounded(range.p50, 1));
    Evidence {
        on: date_of_hour(apiary.as_of, moved.hour),
        note: moved.notes.iter().map(|id| written(apiary, *id)).collect::<Vec<_>>().join("; "),
        moved: words(moved, system),
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

fn dead_words(dead: &DeadBees) -> String {
    format!("dead bees {}: {}", dead.against().words(), usual_words(&dead.usual))
}

fn words(moved: &Moved, system: System) -> String {
    if moved.unexplained {
        return "fits nothing the model thought possible; taken with reserve. Is it right?".to_owned();
    }
    let (before, after) = (hives(moved.before.alive), hives(moved.after.alive));
    let mut parts: Vec<String> = moved.dead_bees.iter().map(dead_words).collect();
    if i64::from(before).abs_diff(i64::from(after)) as i64 > HARDLY {
        parts.push(format!("alive from {before} to {after} in 100"));
    }
    if let (Some(from), Some(to)) = (moved.before.stores_kg, moved.after.stores_kg)
        && (from.p50 - to.p50).abs() > HARDLY_KG
    {
        let told = |kilograms: f64| Kilogram::new(kilograms).show(system, 1);
        parts.push(format!("food from {} to {}", told(from.p50), told(to.p50)));
    }
    let queen = |standing: &snowhum_watch::Standing| standing.queenright / standing.alive.max(1e-9);
    let (from, to) = (hives(queen(&moved.before)), hives(queen(&moved.after)));
    if i64::from(from).abs_diff(i64::from(to)) as i64 > HARDLY {
        parts.push(format!("with a queen from {from} to {to} in 100 of those alive"));
    }
    if !parts.is_empty() {
        return parts.join(", ");
    }
    if moved.signs == 0 { "noted".to_owned() } else { "says little more than was known".to_owned() }
}
