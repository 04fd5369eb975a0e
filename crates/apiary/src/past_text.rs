//! A yard file of the next autumn, made from the last one: what was written by hand stays as it was written.

use crate::shipped::same_name;
use crate::{Apiary, AutumnCount, Mites, QueenState, food_words, strength_words};
use toml_edit::{ArrayOfTables, DocumentMut, Item, Table, Value, value};

/// What a colony keeps from one autumn to the next; all else is found anew.
const STAYS: [&str; 7] = ["id", "name", "hive", "kind", "boxes", "stores_kind", "indoors"];

/// The text of the next autumn's file: the same yard and hives, the colonies that were counted with what was found, and the
/// file of the winter before by its name. `next` is that autumn as it was read from the counts.
///
/// # Errors
/// When the last file is no TOML, with what its reader says.
pub fn season_text(last: &str, file: &str, next: &Apiary, counts: &[AutumnCount]) -> Result<String, String> {
    let mut document: DocumentMut = last.parse().map_err(|error: toml_edit::TomlError| error.to_string())?;
    document.remove("visit");
    if let Some(head) = document.get_mut("apiary").and_then(Item::as_table_mut) {
        head.insert("as_of", value(next.as_of.to_string()));
        head.insert("last_winter", value(file));
    }
    // The days in and out of the winter before are none of the next.
    for key in ["indoors", "hive"] {
        let tables = document.get_mut(key).and_then(Item::as_array_of_tables_mut);
        tables.into_iter().flat_map(ArrayOfTables::iter_mut).for_each(|table| {
            table.remove("in");
            table.remove("out");
        });
    }
    if let Some(colonies) = document.get_mut("colony").and_then(Item::as_array_of_tables_mut) {
        renew(colonies, next, counts);
    }
    Ok(document.to_string())
}

fn renew(colonies: &mut ArrayOfTables, next: &Apiary, counts: &[AutumnCount]) {
    let name = |table: &Table| table.get("name").and_then(Item::as_str).unwrap_or_default().to_owned();
    colonies.retain(|table| next.colonies.iter().any(|colony| same_name(&colony.name, &name(table))));
    for table in colonies.iter_mut() {
        let called = name(table);
        let count = counts.iter().find(|count| same_name(&count.name, &called));
        let colony = next.colonies.iter().find(|colony| same_name(&colony.name, &called));
        let (Some(count), Some(colony)) = (count, colony) else { continue };
        table.retain(|key, _| STAYS.contains(&key));
        let is_word = |word: &str| strength_words().iter().any(|row| same_name(&row.word, word));
        match is_word(&count.bees) {
            true => table.insert("strength", value(count.bees.trim().to_lowercase())),
            false => table.insert("frames_of_bees", value((10.0 * colony.frames_of_bees).round() / 10.0)),
        };
        match food_words().iter().any(|row| same_name(&row.word, &count.food)) {
            true => table.insert("food", value(count.food.trim().to_lowercase())),
            false => table.insert("stores", value(format!("{:.1} kg", colony.stores.total.p50.get()))),
        };
        table.insert("mites", value(mites(&colony.mites)));
        if let Some(year) = colony.queen.year {
            table.insert("queen_year", Item::Value(Value::from(i64::from(year))));
        }
        if let Some(state) = colony.autumn.queen {
            let word = QueenState::WORDS.iter().find(|(_, one)| *one == state).map_or("", |(word, _)| word);
            table.insert("queen", value(word));
        }
    }
}

fn mites(mites: &Mites) -> String {
    match mites {
        Mites::NotCounted => "not counted".to_owned(),
        Mites::Counted { found, bees, on } => format!("{found} of {bees} on {on}"),
    }
}
