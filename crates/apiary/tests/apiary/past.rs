//! A new autumn: what is carried over, what is left out, what stays as history.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::date;
use snowhum_apiary::{Apiary, AutumnCount, Mites, QueenState, demo_text, read, season_text};
use snowhum_units::{Bare, System};

const METRIC: Bare = Bare::In(System::Metric);

fn demo() -> Apiary {
    read(demo_text(), "demo").unwrap().0
}

fn counts() -> Vec<AutumnCount> {
    ["Alder=8 frames; 14 kg; 3/300 on 28 Aug; laying 2026", "Birch=middling; fair"]
        .iter()
        .map(|line| AutumnCount::of_line(line).unwrap())
        .collect()
}

#[test]
fn the_next_autumn_carries_the_counted_over_and_keeps_the_last_winter() {
    let (last, as_of) = (demo(), date(2026, 9, 10));
    let next = last.next_autumn(as_of, &counts(), METRIC).unwrap();
    let names: Vec<&str> = next.colonies.iter().map(|colony| colony.name.as_str()).collect();
    assert_eq!(names, ["Alder", "Birch"]);
    let alder = &next.colonies[0];
    assert_eq!(alder.id, last.colonies.iter().find(|colony| colony.name == "Alder").unwrap().id);
    assert_eq!(alder.mites, Mites::Counted { found: 3, bees: 300, on: date(2026, 8, 28) });
    assert_eq!((alder.autumn.queen, alder.queen.year), (Some(QueenState::Laying), Some(2026)));
    assert!((alder.stores.total.p50.get() - 14.0).abs() < 1e-9 && !alder.quick_start);
    assert_eq!(next.colonies[1].mites, Mites::NotCounted, "last year's count is none of this autumn");
    assert!(next.colonies[1].quick_start);
    assert!(next.notes.is_empty(), "what was noted last winter is no sign of this one");
    let then = next.in_winter(2025);
    assert_eq!((&then.colonies, &then.hives, then.as_of), (&last.colonies, &last.hives, last.as_of));
    assert_eq!(then.notes, last.notes);
    assert_eq!(next.in_winter(2026).as_of, as_of);
    let third = next.next_autumn(date(2027, 9, 1), &counts()[..1], METRIC).unwrap();
    assert_eq!(third.past.len(), 2);
    assert_eq!(third.in_winter(2025).notes, last.notes);
}

#[test]
fn bare_food_follows_the_keepers_units() {
    let pounds = AutumnCount::of_line("Alder=8; 30; ; ").unwrap();
    let next = demo().next_autumn(date(2026, 9, 10), &[pounds], Bare::In(System::Us)).unwrap();
    assert!((next.colonies[0].stores.total.p50.get() - 13.6).abs() < 0.01);
}

#[test]
fn what_is_missing_or_wrong_is_said_of_each_colony_at_once() {
    let lines = [
        "Aldr=8; 14 kg",
        "Birch=900 frames; 14 kg",
        "Larch=8; 500 kg",
        "Birch=8; 14 kg; many",
        "Alder=8; 14 kg; ; lost",
    ];
    let counts: Vec<AutumnCount> = lines.iter().map(|line| AutumnCount::of_line(line).unwrap()).collect();
    let faults = demo().next_autumn(date(2025, 10, 20), &counts, METRIC).unwrap_err();
    let fields: Vec<&str> = faults.iter().map(|fault| fault.field).collect();
    assert_eq!(fields, ["as_of", "colony", "bees", "food", "mites", "queen"]);
    assert!(faults[1].to_string().contains("Alder"), "{}", faults[1]);
    assert!(demo().next_autumn(date(2026, 9, 10), &[], METRIC).is_err());
    assert!(AutumnCount::of_line("Alder").is_err() && AutumnCount::of_line("Alder=8").is_err());
}

#[test]
fn the_new_yard_file_reads_as_the_new_autumn() {
    let next = demo().next_autumn(date(2026, 9, 10), &counts(), METRIC).unwrap();
    let text = season_text(demo_text(), "rowan-bank.toml", &next, &counts()).unwrap();
    let (again, _) = read(&text, "next").unwrap();
    assert_eq!(again.last_winter.as_deref(), Some("rowan-bank.toml"));
    assert_eq!((again.as_of, again.notes.len()), (next.as_of, 0));
    for (one, other) in again.colonies.iter().zip(&next.colonies) {
        assert_eq!((one.id, &one.mites, &one.queen.year), (other.id, &other.mites, &other.queen.year));
        assert_eq!(one.stores.total, other.stores.total);
        assert!((one.bees.p50 - other.bees.p50).abs() < 0.02 * other.bees.p50, "{} {}", one.bees.p50, other.bees.p50);
    }
    assert_eq!(again.colonies.len(), next.colonies.len());
    let mark = "# Rowan Bank: a club's teaching row";
    assert!(text.starts_with(mark), "what was written by hand stays");
}
