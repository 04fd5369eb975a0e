//! A yard begun with four facts a hive: what is typed reads as a file does, and each fault is at its field. Invented.

use crate::said;
use snowhum_apiary::{
    ChosenDress, Combs, Hive, Mites, OpeningKind, QuickHive, QuickStart, food_range, read, standard, strength_range,
};
use snowhum_units::System;

fn facts() -> QuickStart {
    let hive = |name: &str| QuickHive {
        name: name.to_owned(),
        kind: "Langstroth, 10 frames".to_owned(),
        strength: "middling".to_owned(),
        food: "fair".to_owned(),
        ..QuickHive::default()
    };
    QuickStart {
        name: "My \"yard\"".to_owned(),
        as_of: "2025-10-05".to_owned(),
        latitude: "61,7".to_owned(),
        longitude: "−27.3".to_owned(),
        elevation: "345".to_owned(),
        zone: "America/St_Johns".to_owned(),
        hives: vec![hive("One"), hive("Two")],
    }
}

#[test]
fn words_make_a_yard_and_its_file_reads_as_the_same() {
    let yard = facts().read(System::Us).unwrap();
    assert_eq!((yard.name.as_str(), yard.colonies.len()), ("My \"yard\"", 2));
    assert_eq!((yard.site.latitude.get(), yard.site.longitude.get()), (61.7, -27.3));
    assert!((yard.site.elevation.get() - 105.2).abs() < 0.1, "a bare height is in feet");
    assert_eq!(yard.colonies[0].mites, Mites::NotCounted);
    let hive = yard.hive_of(&yard.colonies[0]).unwrap();
    assert_eq!(hive.boxes.len(), standard("Langstroth, 10 frames").unwrap().usual_boxes.len());
    assert_eq!(yard.colonies[0].stores.total, food_range("fair", Combs::of(hive)).unwrap());
    assert_eq!(read(&facts().text(System::Us), "my-yard.toml").unwrap().0, yard);
}

#[test]
fn figures_go_in_as_figures() {
    let mut facts = facts();
    let hive = &mut facts.hives[1];
    (hive.strength, hive.food) = ("7,5".to_owned(), "12".to_owned());
    (hive.mites, hive.mites_of, hive.mites_on) = ("9".to_owned(), "300".to_owned(), "2025-08-28".to_owned());
    let yard = facts.read(System::Metric).unwrap();
    assert_eq!((yard.colonies[1].frames_of_bees, yard.colonies[1].stores.total.p50.get()), (7.5, 12.0));
    assert!(matches!(yard.colonies[1].mites, Mites::Counted { found: 9, bees: 300, .. }));
}

#[test]
fn a_hive_is_dressed_as_chosen_and_the_rest_of_it_is_usual() {
    let mut facts = facts();
    facts.hives[1].dress = ChosenDress {
        lid: "foam 50 mm".to_owned(),
        guard: "slot 8 mm".to_owned(),
        upper_hole: "20 mm".to_owned(),
        ..ChosenDress::default()
    };
    let yard = facts.read(System::Metric).unwrap();
    let [plain, dressed] = [0, 1].map(|at| yard.hive_of(&yard.colonies[at]).unwrap());
    assert_eq!(dressed.boxes, plain.boxes);
    assert!(dressed.lid.len() == 1 && dressed.lid != plain.lid);
    let has_hole = |hive: &Hive| hive.openings.iter().any(|opening| opening.kind == OpeningKind::UpperHole);
    assert!(has_hole(dressed) && !has_hole(plain));
    assert_eq!(read(&facts.text(System::Metric), "my-yard.toml").unwrap().0, yard);
    facts.hives[0].dress.lid = "cheese".to_owned();
    facts.hives[1].dress.guard = "a cat".to_owned();
    let places: Vec<_> =
        facts.read(System::Metric).unwrap_err().iter().map(|fault| (fault.hive, fault.field)).collect();
    assert_eq!(places, [(Some(0), "lid"), (Some(1), "guard")]);
}

#[test]
fn where_nobody_looked_every_range_reaches_from_weak_to_strong() {
    for combs in [Combs::Nucleus, Combs::OneBox, Combs::TwoBoxes] {
        let bees = |word: &str| strength_range(word, combs).unwrap();
        let food = |word: &str| food_range(word, combs).unwrap().map(|mass| mass.get());
        for (unknown, [low, middle, high]) in [
            (bees("not looked at"), ["weak", "middling", "strong"].map(bees)),
            (food("not looked at"), ["light", "fair", "heavy"].map(food)),
        ] {
            assert!(unknown.p10 < low.p50 && unknown.p90 > high.p50 && unknown.p50 == middle.p50, "{combs:?}");
            assert!(unknown.p10 > low.p10 && unknown.p90 < high.p90, "{combs:?}: the ends seldom");
        }
    }
}

#[test]
fn each_fault_is_at_its_hive_and_field() {
    let mut facts = facts();
    facts.zone = "Atlantis".to_owned();
    facts.hives[0].strength = String::new();
    facts.hives[1].name = "one".to_owned();
    facts.hives[1].mites = "9".to_owned();
    let faults = facts.read(System::Metric).unwrap_err();
    let places: Vec<_> = faults.iter().map(|fault| (fault.hive, fault.field)).collect();
    for place in [(None, "zone"), (Some(0), "strength"), (Some(1), "mites_of"), (Some(1), "name")] {
        assert!(places.contains(&place), "{place:?} is not in {faults:?}");
    }
    assert!(faults.iter().all(|fault| said(&fault.says).len() > 10));
}

#[test]
fn nothing_typed_can_break_out_of_its_line() {
    let mut facts = facts();
    facts.name = "a\"\n[[colony]]\nname = 1\n'''".to_owned();
    facts.hives[0].name = "\"\"\"\u{0}\r\n".to_owned();
    let text = facts.text(System::Metric);
    assert_eq!(text.lines().filter(|line| *line == "[[colony]]").count(), 2);
}
