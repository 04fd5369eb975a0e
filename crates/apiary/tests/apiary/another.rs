//! A hive added to a yard is what a yard file would say of it. Yards are invented.

use snowhum_apiary::{AnotherHive, ChosenDress, OpeningKind, demo_text, read};

fn maple() -> AnotherHive {
    AnotherHive {
        name: "Maple".to_owned(),
        kind: "Langstroth 10".to_owned(),
        dress: ChosenDress {
            boxes: "deep,deep".to_owned(),
            lid: "foam 50 mm".to_owned(),
            wrap: "felt paper".to_owned(),
            floor: "solid".to_owned(),
            entrance: "reduced".to_owned(),
            guard: "slot 8 mm".to_owned(),
            upper_hole: "20 mm".to_owned(),
            board: "3 kg candy, rim 50 mm, hole 40 mm".to_owned(),
        },
        strength: "middling".to_owned(),
        food: "fair".to_owned(),
    }
}

#[test]
fn a_hive_added_is_the_one_the_file_with_it_holds_and_its_remarks_stay() {
    let text = demo_text();
    let (yard, _) = read(text, "demo").unwrap();
    let added = yard.with_another(&maple()).unwrap();
    let with_it = maple().appended_to(text);
    let (file, _) = read(&with_it, "demo").unwrap();
    assert_eq!(added.colonies, file.colonies);
    assert_eq!(added.hives, file.hives);
    assert!(with_it.starts_with(text.trim_end()), "what was written stays");
    let hive = added.hives.last().unwrap();
    assert_eq!(hive.boxes.len(), 2);
    assert!(!hive.lid.is_empty() && !hive.wrap.is_empty());
    assert!(hive.food_body.is_some(), "a board is on it");
    assert!(hive.openings.iter().any(|opening| opening.kind == OpeningKind::UpperHole));
}

#[test]
fn what_is_wrong_is_said_at_its_field() {
    let (yard, _) = read(demo_text(), "demo").unwrap();
    let of = |another: AnotherHive| yard.with_another(&another).unwrap_err().remove(0).field;
    assert_eq!(of(AnotherHive { name: " ".to_owned(), ..maple() }), "name");
    assert_eq!(of(AnotherHive { name: "alder".to_owned(), ..maple() }), "name");
    let dressed = |key: &str, chosen: &str| {
        let dress = ChosenDress::of(|one| if one == key { chosen.to_owned() } else { String::new() });
        AnotherHive { dress, ..maple() }
    };
    for (key, chosen) in [("lid", "cheese"), ("boxes", "vast"), ("guard", "a cat"), ("board", "some")] {
        assert_eq!(of(dressed(key, chosen)), key, "{chosen}");
    }
    assert_eq!(of(AnotherHive { strength: "mighty".to_owned(), ..maple() }), "strength");
}
