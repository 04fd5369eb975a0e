//! Hive standards and the arithmetic of combs against figures found in the trade and in the literature.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test fails by panicking")]

use snowhum_apiary::{
    HiveBox, Layer, bees_on, brood_words, comb_sources, findings, food_in, food_words, guards, materials,
    sitting_words, standard, standards, strength_words, usual_money,
};
use snowhum_units::SquareMetre;
use std::collections::HashSet;

fn built(kind: &str, size: &str) -> HiveBox {
    let wall: Layer = "pine 19 mm".parse().unwrap();
    let shelf = standard(kind).unwrap_or_else(|| panic!("{kind}"));
    shelf.size(size).unwrap_or_else(|| panic!("{kind} {size}")).build(&wall)
}

fn within(found: f64, expected: f64, share: f64, what: &str) {
    assert!((found / expected - 1.0).abs() <= share, "{what}: {found}, not {expected}");
}

#[test]
fn langstroth_boxes_measure_what_their_inches_say() {
    // 18 3/8 x 14 3/4 in inside; depths 9 5/8, 6 5/8, 5 11/16 in; eight frames 12 1/2 in wide (trade pages).
    let inch = 0.0254;
    for (size, depth_in) in [("deep", 9.625), ("medium", 6.625), ("shallow", 5.687_5)] {
        for (kind, width_in) in [("Langstroth 10", 14.75), ("Langstroth 8", 12.5)] {
            let one = built(kind, size);
            within(one.length.get(), 18.375 * inch, 0.005, size);
            within(one.width.get(), width_in * inch, 0.005, size);
            within(one.depth.get(), depth_in * inch, 0.005, size);
        }
    }
}

#[test]
fn national_boxes_measure_what_their_inches_say() {
    // Inside 16 5/8 x 14 5/8 in; depths 8 7/8, 5 7/8, 12 1/2 in (en.wikibooks, Beekeeping/British National).
    for (size, depth_in) in [("brood", 8.875), ("super", 5.875), ("14x12", 12.5)] {
        let one = built("National", size);
        within(one.length.get(), 14.625 * 0.0254, 0.005, size);
        within(one.width.get(), 16.625 * 0.0254, 0.005, size);
        within(one.depth.get(), depth_in * 0.0254, 0.005, size);
        assert_eq!(one.frames, 11);
    }
}

#[test]
fn comb_areas_agree_with_the_liebefeld_counts() {
    // Bees on a full side: Dadant 1,400, Langstroth 1,100, Zander 1,000, Deutsch Normal 900 at 1.25 a cm² (Imdorf 1987).
    for (kind, bees) in [("Dadant 12", 1_400.0), ("Langstroth 10", 1_100.0), ("Zander", 1_000.0), ("DNM", 900.0)] {
        within(built(kind, "brood").comb_side.get() * 1e4, bees / 1.25, 0.03, kind);
    }
    // 135 square inches a side of a deep Langstroth comb (htfbw.com).
    within(built("Langstroth 10", "deep").comb_side.get(), 135.0 * 0.0254 * 0.0254, 0.01, "deep");
}

#[test]
fn cells_in_a_box_come_near_the_published_counts() {
    // National 50,000-55,000; 14x12 80,000; Langstroth 61,000 (British associations); 366-387 cells a dm² of one face.
    for (kind, size, cells) in
        [("National", "brood", 53_000.0), ("National", "14x12", 80_000.0), ("Langstroth 10", "deep", 61_000.0)]
    {
        within(built(kind, size).comb_face().get() * 100.0 * 2.0 * 376.0, cells, 0.09, kind);
    }
}

#[test]
fn full_combs_of_food_weigh_what_the_trade_says() {
    // Net, a full comb: deep 2.7-3.6 kg, medium 1.6-1.8 kg, Dadant brood 3 kg or more, Deutsch Normal 2 kg, Zander more.
    let food = |kind: &str, size: &str| food_in(1.0, built(kind, size).comb_side).p50.get();
    assert!((2.7..=3.6).contains(&food("Langstroth 10", "deep")));
    assert!((1.6..=1.9).contains(&food("Langstroth 10", "medium")));
    assert!((3.0..=4.0).contains(&food("Dadant 12", "brood")));
    assert!((2.0..=2.4).contains(&food("DNM", "brood")));
    assert!((2.0..=2.4).contains(&food("National", "brood")));
    assert!(food("Zander", "brood") > food("DNM", "brood"));
}

#[test]
fn a_deep_frame_of_bees_holds_the_published_number() {
    let deep = bees_on(1.0, SquareMetre::new(0.0871));
    // 2,430 (Burgett and Burikam 1985); 2 x 1,100 loosely (Liebefeld) and up to twice that when clustered.
    within(deep.p50, 2_430.0, 0.02, "both faces");
    assert!(deep.p10 < 2_200.0 && deep.p90 > 3_600.0 && deep.p90 < 4_400.0, "{deep:?}");
}

#[test]
fn every_standard_asked_for_is_there_and_can_be_built() {
    let kinds = [
        "Langstroth 10",
        "Langstroth 8",
        "Langstroth 10 polystyrene",
        "nucleus",
        "Dadant",
        "Dadant 10",
        "National",
        "National polystyrene",
        "Zander",
        "Zander polystyrene",
        "Deutsch Normal",
        "DNM polystyrene",
        "Warré",
    ];
    for kind in kinds {
        let shelf = standard(kind).unwrap_or_else(|| panic!("{kind}"));
        assert!(!shelf.usual_boxes.is_empty(), "{kind}");
        let wall: Layer = shelf.wall.parse().unwrap_or_else(|wrong| panic!("{kind}: {wrong}"));
        for sheet in &shelf.lid {
            sheet.parse::<Layer>().unwrap_or_else(|wrong| panic!("{kind}: {wrong}"));
        }
        for size in &shelf.usual_boxes {
            let one = shelf.size(size).unwrap_or_else(|| panic!("{kind} {size}")).build(&wall);
            // A comb fits its box and takes at least 35 mm of the width (German spacing set), less at the last wall.
            assert!(one.comb_side.get() < one.length.get() * one.depth.get(), "{kind}");
            assert!(one.width.get() / f64::from(one.frames) > 0.0345, "{kind}");
        }
    }
    assert_eq!(standard("nucleus").unwrap().size("deep").unwrap().build(&"pine 19 mm".parse().unwrap()).frames, 5);
    assert!(standard("nucleus").unwrap().is_nucleus() && !standard("DNM").unwrap().is_nucleus());
}

#[test]
fn every_shipped_figure_names_its_source_and_status() {
    const STATUS: [&str; 4] = ["published", "common practice", "from memory", "judgement"];
    let mut rows: Vec<(&str, &str, &str)> = Vec::new();
    for shelf in standards() {
        rows.extend(shelf.sizes.iter().map(|size| (shelf.name.as_str(), size.source.as_str(), size.status.as_str())));
    }
    rows.extend(
        materials().iter().map(|stock| (stock.material.name.as_str(), stock.source.as_str(), stock.status.as_str())),
    );
    rows.extend(guards().iter().map(|row| (row.name.as_str(), row.source.as_str(), row.status.as_str())));
    let sized = strength_words().iter().chain(food_words());
    rows.extend(sized.map(|row| (row.word.as_str(), row.source.as_str(), row.status.as_str())));
    rows.extend(brood_words().iter().map(|row| (row.word.as_str(), row.source.as_str(), row.status.as_str())));
    rows.extend(findings().iter().map(|row| (row.word.as_str(), row.source.as_str(), row.status.as_str())));
    rows.extend(sitting_words().iter().map(|row| (row.word.as_str(), row.source.as_str(), row.status.as_str())));
    rows.extend(comb_sources());
    assert!(rows.len() > 90, "{}", rows.len());
    for (what, source, status) in rows {
        assert!(!source.is_empty() && STATUS.contains(&status), "{what}: {source} ({status})");
    }
    assert!(usual_money().0.colony > 0.0 && !usual_money().1.is_empty());
}

#[test]
fn no_name_or_alias_means_two_things() {
    let mut seen = HashSet::new();
    for stock in materials() {
        for name in stock.aliases.iter().chain([&stock.material.name]) {
            assert!(seen.insert(name.to_lowercase()), "{name}");
        }
    }
    let mut seen = HashSet::new();
    for shelf in standards() {
        let names: HashSet<String> =
            shelf.aliases.iter().chain([&shelf.name]).map(|name| name.to_lowercase()).collect();
        for name in names {
            assert!(seen.insert(name.clone()), "{name}");
        }
    }
}
