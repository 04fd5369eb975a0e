//! The demo yard and the template are what they promise to be. Everything in the demo is invented.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test fails by panicking")]

use crate::said;
use jiff::civil::date;
use snowhum_apiary::{Apiary, Colony, Floor, Hive, KnownBy, Mites, OpeningKind, demo_text, read, template_text};

fn demo() -> Apiary {
    read(demo_text(), "rowan-bank.toml").unwrap_or_else(|faults| panic!("{faults}")).0
}

fn named<'a>(yard: &'a Apiary, name: &str) -> (&'a Colony, &'a Hive) {
    let colony = yard.colonies.iter().find(|colony| colony.name == name).unwrap();
    (colony, yard.hive_of(colony).unwrap())
}

fn area_cm2(hive: &Hive, kind: OpeningKind) -> f64 {
    hive.openings.iter().filter(|opening| opening.kind == kind).map(|opening| opening.area.get() * 1e4).sum()
}

#[test]
fn the_demo_yard_is_rowan_bank_and_says_it_is_invented() {
    let yard = demo();
    assert_eq!((yard.name.as_str(), yard.invented, yard.as_of), ("Rowan Bank", true, date(2025, 10, 5)));
    assert_eq!((yard.site.latitude.get(), yard.site.longitude.get(), yard.site.elevation.get()), (61.7, 27.3, 105.0));
    assert_eq!(yard.site.zone, "Europe/Helsinki");
    let names: Vec<&str> = yard.colonies.iter().map(|colony| colony.name.as_str()).collect();
    assert_eq!(names, ["Alder", "Birch", "Juniper", "Larch", "Aspen"]);
}

#[test]
fn the_demo_colonies_have_the_figures_of_the_fourth_of_october() {
    let yard = demo();
    let rows = [
        ("Alder", 20_000.0, 8.0, 24.0, 2, 2024),
        ("Birch", 15_000.0, 6.0, 14.0, 5, 2023),
        ("Juniper", 18_000.0, 6.0, 8.0, 3, 2025),
        ("Larch", 12_000.0, 7.0, 13.0, 24, 2024),
        ("Aspen", 6_000.0, 4.0, 6.5, 1, 2025),
    ];
    for (name, bees, frames, food_kg, mites, queen) in rows {
        let (colony, _) = named(&yard, name);
        assert_eq!((colony.bees.p50, colony.frames_of_bees), (bees, frames), "{name}");
        assert!(colony.bees.p10 < bees && bees < colony.bees.p90, "{name}");
        assert_eq!((colony.stores.total.p50.get(), colony.stores.known_by), (food_kg, KnownBy::Scale), "{name}");
        assert!(matches!(colony.mites, Mites::Counted { found, bees: 300, .. } if found == mites), "{name}");
        assert_eq!((colony.queen.year, colony.quick_start), (Some(queen), false), "{name}");
        let place = colony.stores.place;
        assert!((place.touched + place.above + place.beside + place.far - 1.0).abs() < 1e-12, "{name}");
    }
    let (juniper, _) = named(&yard, "Juniper");
    assert!((juniper.stores.place.far * juniper.stores.total.p50.get() - 1.5).abs() < 1e-9);
    assert!(named(&yard, "Aspen").0.queen.late_mated);
    assert_eq!(named(&yard, "Larch").0.treatments[0].on, date(2025, 9, 15));
    assert!(matches!(named(&yard, "Larch").0.mites, Mites::Counted { on, .. } if on == date(2025, 9, 8)));
}

#[test]
fn the_demo_hives_are_dressed_as_told() {
    let yard = demo();
    let (_, alder) = named(&yard, "Alder");
    assert_eq!((alder.boxes.len(), alder.boxes[0].frames, alder.wrap[0].material.name.as_str()), (2, 10, "felt paper"));
    assert!((alder.lid[1].thickness.get() - 0.05).abs() < 1e-12);
    assert_eq!(alder.lid[1].material.name, "xps foam");
    assert!((area_cm2(alder, OpeningKind::UpperHole) - std::f64::consts::PI).abs() < 1e-9);
    let (_, birch) = named(&yard, "Birch");
    assert!(matches!(birch.floor, Floor::TrayedMesh(_)));
    assert_eq!((birch.boxes.len(), birch.boxes[0].wall.material.name.as_str()), (1, "polystyrene"));
    assert_eq!(area_cm2(birch, OpeningKind::UpperHole), 0.0);
    let (_, juniper) = named(&yard, "Juniper");
    assert!(juniper.lid_breathes && juniper.floor == Floor::OpenMesh && area_cm2(juniper, OpeningKind::Mesh) > 300.0);
    let (_, larch) = named(&yard, "Larch");
    assert_eq!((larch.boxes[1].size.as_str(), larch.lid.len(), larch.wrap.len()), ("medium", 1, 0));
    assert!(area_cm2(larch, OpeningKind::Entrance) > 20.0 && area_cm2(larch, OpeningKind::UpperHole) > 4.0);
    let (_, aspen) = named(&yard, "Aspen");
    let neighbour = aspen.neighbour.as_ref().unwrap();
    assert_eq!((neighbour.hive, aspen.boxes[0].frames), (alder.id, 5));
    // The long side of 467 x 200 mm: 467 of 1,334 mm round.
    assert!((neighbour.share.get() - 0.35).abs() < 0.01);
}

#[test]
fn heights_of_openings_follow_the_stack() {
    let yard = demo();
    let (_, alder) = named(&yard, "Alder");
    let height = |kind| alder.openings.iter().find(|opening| opening.kind == kind).unwrap().height.get();
    assert!((height(OpeningKind::UpperHole) - (0.488 - 0.060)).abs() < 1e-9);
    assert!((height(OpeningKind::Entrance) - 0.004).abs() < 1e-9);
    assert!((height(OpeningKind::Crack) - 0.244).abs() < 1e-9);
}

#[test]
fn ids_follow_from_names_and_stay() {
    let (first, second) = (demo(), demo());
    assert_eq!(first, second);
    let renamed = demo_text().replace("name = \"Rowan Bank\"", "name = \"Other Bank\"");
    let other = read(&renamed, "other.toml").unwrap().0;
    assert_ne!(first.colonies[0].id, other.colonies[0].id);
    let given = "2f1f3a3e-33cf-4b53-9a51-0f3d4d1f3c11";
    let text = demo_text().replacen("[[colony]]\n", &format!("[[colony]]\nid = \"{given}\"\n"), 1);
    assert_eq!(read(&text, "given.toml").unwrap().0.colonies[0].id.0.to_string(), given);
}

#[test]
fn the_template_can_be_read_and_shows_both_ways_in() {
    let (yard, advisories) = read(template_text(), "template.toml").unwrap_or_else(|faults| panic!("{faults}"));
    assert_eq!(yard.colonies.iter().map(|colony| colony.quick_start).collect::<Vec<_>>(), [false, true]);
    assert_eq!(yard.colonies[1].mites, Mites::NotCounted);
    assert!(
        advisories
            .iter()
            .any(|advisory| said(&advisory.text).contains("ranges") || said(&advisory.text).contains("range"))
    );
    assert!(!yard.invented);
}
