//! The winter's log in a yard file.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_apiary::{Act, Apiary, DeadCount, DeadPlace, Entry, Faults, Feed, Sign, SnowCover, demo_text, read};

fn demo() -> Apiary {
    read(demo_text(), "rowan-bank.toml").unwrap().0
}

fn faults(text: &str) -> Faults {
    read(text, "yard.toml").unwrap_err()
}

#[test]
fn the_demo_carries_its_winter_log_in_order_of_time() {
    let yard = demo();
    assert!(yard.notes.len() >= 25);
    assert!(yard.notes.windows(2).all(|pair| (pair[0].at, pair[0].id) < (pair[1].at, pair[1].id)));
    let alder = yard.colonies.iter().find(|colony| colony.name == "Alder").unwrap();
    let november =
        yard.notes.iter().find(|note| note.colony == alder.id && note.at.to_string() == "2025-11-24T08:00:00Z");
    let november = november.unwrap();
    assert_eq!(november.conditions.snow, Some(SnowCover::New));
    assert!((november.conditions.air_k.unwrap().celsius() + 5.0).abs() < 1e-9);
    let dead = Sign::DeadBees { count: DeadCount::Counted(22), place: DeadPlace::Snow };
    assert_eq!(november.signs().last(), Some(&dead));
}

#[test]
fn things_done_are_told_from_things_seen() {
    let yard = demo();
    let juniper = yard.colonies.iter().find(|colony| colony.name == "Juniper").unwrap();
    let fed: Vec<&Act> =
        yard.notes.iter().filter(|note| note.colony == juniper.id).flat_map(|note| note.acts()).collect();
    assert!(fed.iter().any(|act| matches!(act, Act::Fed { feed: Feed::Fondant, mass_kg } if mass_kg.get() == 5.0)));
}

#[test]
fn every_wrong_note_names_its_line_and_what_would_be_right() {
    let text = demo_text()
        .replace("Larch = \"wings=yes;", "Lrach = \"wings=yes;")
        .replace("Aspen = \"dead=0 on snow\"", "Aspen = \"dead=few on snow\"")
        .replacen("air = \"-9 C\"", "air = \"-99 C\"", 1);
    let found = faults(&text);
    assert_eq!(found.faults.len(), 3, "{found}");
    assert!(found.to_string().contains("did you mean \"Larch\""), "{found}");
    assert!(found.to_string().contains("over 100"), "{found}");
    assert!(found.to_string().contains("\"-5 C\""), "{found}");
}

#[test]
fn ids_of_notes_stay_when_the_file_is_read_again() {
    let ids = |yard: &Apiary| yard.notes.iter().map(|note| note.id).collect::<Vec<_>>();
    assert_eq!(ids(&demo()), ids(&demo()));
}

#[test]
fn a_yard_with_its_log_survives_json() {
    let yard = demo();
    let json = serde_json::to_string(&yard).unwrap();
    let back: Apiary = serde_json::from_str(&json).unwrap();
    assert_eq!(back.notes, yard.notes);
    assert!(back.notes.iter().flat_map(|note| &note.entries).any(|entry| matches!(entry, Entry::Words(_))));
}
