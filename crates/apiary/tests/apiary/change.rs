//! Changes of a set-up do what they say and nothing else.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test fails by panicking")]

use snowhum_apiary::{ChangeKind, Floor, Hive, OpeningKind, SetupChange, demo_text, read};

fn hive(name: &str) -> Hive {
    let yard = read(demo_text(), "demo").unwrap().0;
    yard.hives.into_iter().find(|hive| hive.name == name).unwrap()
}

fn changed(hive: &Hive, change: &str) -> Hive {
    let change: SetupChange = change.parse().unwrap_or_else(|wrong| panic!("{change}: {wrong}"));
    hive.with_change(&change).unwrap_or_else(|wrong| panic!("{change}: {wrong}"))
}

fn area(hive: &Hive, kind: OpeningKind) -> f64 {
    hive.openings.iter().filter(|opening| opening.kind == kind).map(|opening| opening.area.get()).sum()
}

fn lid(hive: &Hive) -> Vec<String> {
    hive.lid.iter().map(ToString::to_string).collect()
}

#[test]
fn a_foam_lid_lies_on_the_inner_cover() {
    assert_eq!(lid(&changed(&hive("Larch"), "lid=50mm foam")), ["plywood 10 mm", "xps foam 50 mm"]);
    assert_eq!(lid(&changed(&hive("Alder"), "lid=2 in foam")), ["plywood 10 mm", "xps foam 50.8 mm"]);
    assert_eq!(lid(&changed(&hive("Alder"), "lid=off")), ["plywood 10 mm"]);
    let juniper = changed(&hive("Juniper"), "lid=50 mm foam");
    assert_eq!((lid(&juniper).len(), juniper.lid_breathes), (2, false));
}

#[test]
fn a_quilt_takes_the_lid_over_and_gives_it_back() {
    let quilted = changed(&hive("Alder"), "quilt=straw 60 mm");
    assert_eq!((lid(&quilted), quilted.lid_breathes), (vec!["straw 60 mm".to_owned()], true));
    let board = changed(&quilted, "quilt=off");
    assert_eq!((lid(&board), board.lid_breathes), (vec!["plywood 10 mm".to_owned()], false));
    assert!("quilt=50 mm foam".parse::<SetupChange>().is_err());
}

#[test]
fn holes_entrances_and_floors_open_and_shut() {
    let alder = hive("Alder");
    assert_eq!(area(&changed(&alder, "upper hole=off"), OpeningKind::UpperHole), 0.0);
    assert!((area(&changed(&alder, "upper hole=25 mm"), OpeningKind::UpperHole) - 4.909e-4).abs() < 1e-7);
    assert!((area(&changed(&alder, "entrance=full"), OpeningKind::Entrance) - 0.375 * 0.019).abs() < 1e-9);
    assert!((area(&changed(&alder, "entrance=reduced"), OpeningKind::Entrance) - 0.076 * 0.010).abs() < 1e-9);
    let open = changed(&alder, "floor=open mesh");
    assert!(open.floor == Floor::OpenMesh && area(&open, OpeningKind::Mesh) > 0.03);
    let tray = changed(&open, "floor=mesh with tray");
    assert!(matches!(tray.floor, Floor::TrayedMesh(_)) && area(&tray, OpeningKind::Mesh) == 0.0);
    assert_eq!(changed(&tray, "floor=solid"), alder);
}

#[test]
fn a_wrap_changes_the_walls_and_their_colour() {
    let larch = hive("Larch");
    let wrapped = changed(&larch, "wrap=felt paper");
    assert!(wrapped.wrap.len() == 1 && wrapped.wall_absorptance > larch.wall_absorptance);
    assert_eq!(changed(&wrapped, "wrap=off"), larch);
}

#[test]
fn fewer_boxes_lower_the_hole_and_close_joints() {
    let alder = hive("Alder");
    let single = changed(&alder, "boxes=deep");
    let height = |hive: &Hive| hive.openings.iter().find(|o| o.kind == OpeningKind::UpperHole).unwrap().height.get();
    assert_eq!(single.boxes.len(), 1);
    assert!((height(&alder) - height(&single) - 0.244).abs() < 1e-9);
    assert!((area(&single, OpeningKind::Crack) / area(&alder, OpeningKind::Crack) - 2.0 / 3.0).abs() < 1e-9);
    assert_eq!(changed(&single, "boxes=deep,deep"), alder);
    let mixed = changed(&alder, "boxes=deep, medium");
    assert_eq!((mixed.boxes[1].size.as_str(), &mixed.boxes[1].wall), ("medium", &alder.boxes[0].wall));
}

#[test]
fn a_change_prints_as_it_can_be_read_again() {
    let more =
        ["upper hole=off", "upper_hole=25 mm", "wrap=off", "entrance=100 x 8 mm", "boxes=deep,medium", "lid=off"];
    for text in ChangeKind::ALL.iter().flat_map(|kind| kind.examples()).chain(&more) {
        let change: SetupChange = text.parse().unwrap();
        assert_eq!(change.to_string().parse::<SetupChange>().unwrap(), change, "{text}");
    }
}

#[test]
fn anything_else_is_told_what_would_be_right() {
    let slips = [
        ("", "lid="),
        ("lid", "lid="),
        ("lod=50 mm foam", "\"lid\""),
        ("colour=red", "lid="),
        ("lid=foam", "thickness"),
        ("lid=50 foam", "mm"),
        ("wrap=50 mm gold", "[[material]]"),
        ("floor=moss", "open mesh"),
        ("upper hole=full", "25 mm"),
        ("entrance=wide", "mm"),
        ("boxes=", "1 to 12"),
        ("upper hole=25", "mm"),
    ];
    for (text, remedy) in slips {
        let wrong = text.parse::<SetupChange>().unwrap_err();
        assert!(wrong.to_string().contains(remedy), "{text}: {wrong}");
    }
    let change: SetupChange = "boxes=14x12".parse().unwrap();
    let wrong = hive("Alder").with_change(&change).unwrap_err();
    assert!(wrong.to_string().contains("deep, medium, shallow"), "{wrong}");
}
