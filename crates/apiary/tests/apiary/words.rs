//! Units, quick start, and what a figure is worth by how it was found.

#![expect(clippy::expect_used, reason = "a test fails by panicking")]

use crate::said;
use snowhum_apiary::{Apiary, KnownBy, Mites, StoresKind, demo_text, food_words, read, strength_words, weighed};
use snowhum_units::Kilogram;

const HEAD: &str = "[apiary]\nname = \"Yard\"\nas_of = 2025-10-05\n[site]\nlatitude = 50.0\nlongitude = -97.0\n\
                    elevation = \"240 m\"\nzone = \"America/Winnipeg\"\n";

fn yard(text: &str) -> Apiary {
    read(&format!("{HEAD}{text}"), "yard.toml").map(|(yard, _)| yard).expect("this yard has no faults")
}

fn quick(kind: &str, strength: &str, food: &str) -> Apiary {
    yard(&format!(
        "[[colony]]\nname = \"A\"\nkind = \"{kind}\"\nstrength = \"{strength}\"\nfood = \"{food}\"\nmites = \"not counted\"\n"
    ))
}

#[test]
fn each_word_of_bees_and_food_is_a_message_and_in_british_as_it_is_typed() {
    for row in strength_words().iter().chain(food_words()) {
        assert!(row.message().id().is_some() && said(&row.message()) == row.word, "{}", row.word);
    }
}

#[test]
fn us_units_give_the_same_yard_as_metric() {
    let us = demo_text()
        .replace("elevation = \"105 m\"", "elevation = \"344.488188976378 ft\"")
        .replace("stores = \"24 kg\"", "stores = \"52.91094292437251 lb\"")
        .replace("foam 50 mm", "1.968503937007874 in foam")
        .replace("stand = \"40 cm\"", "stand = \"15.748031496062993 in\"")
        .replace("upper_hole = \"20 mm\"", "upper_hole = \"0.7874015748031497 in\"");
    assert_ne!(us, demo_text());
    let (metric, us) = (read(demo_text(), "a").unwrap().0, read(&us, "b").unwrap().0);
    let close = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 1e-9, "{a} {b}");
    close(us.site.elevation.get(), metric.site.elevation.get());
    close(us.colonies[0].stores.total.p90.get(), metric.colonies[0].stores.total.p90.get());
    let (hive_us, hive) = (&us.hives[0], &metric.hives[0]);
    close(hive_us.lid[1].thickness.get(), hive.lid[1].thickness.get());
    close(hive_us.stand.get(), hive.stand.get());
    let area = |hive: &snowhum_apiary::Hive| hive.openings.iter().map(|opening| opening.area.get()).sum::<f64>();
    close(area(hive_us), area(hive));
    assert_eq!(us.colonies[1..], metric.colonies[1..]);
}

#[test]
fn four_facts_are_enough_and_their_ranges_are_wide() {
    let found = quick("Langstroth 10", "middling", "fair");
    let colony = &found.colonies[0];
    assert!(colony.quick_start && colony.mites == Mites::NotCounted);
    assert_eq!(found.hive_of(colony).unwrap().boxes.len(), 2);
    assert!(colony.bees.p90 / colony.bees.p10 > 1.8);
    let food = colony.stores.total;
    assert!(food.p90.get() / food.p10.get() > 1.8 && colony.stores.known_by == KnownBy::Heft);
}

#[test]
fn words_rise_and_mean_less_in_a_nucleus() {
    for kind in ["Langstroth 10", "Langstroth 10 polystyrene", "National", "nucleus"] {
        let mut before = (0.0, 0.0);
        for (strength, food) in [("weak", "light"), ("middling", "fair"), ("strong", "heavy")] {
            let found = quick(kind, strength, food);
            let (bees, food) = (found.colonies[0].bees.p50, found.colonies[0].stores.total.p50.get());
            assert!(bees > before.0 && food > before.1, "{kind} {strength}");
            before = (bees, food);
        }
    }
    let heavy = |kind| quick(kind, "strong", "heavy").colonies[0].stores.total.p50;
    assert!(heavy("nucleus") < heavy("National") && heavy("National") < heavy("Langstroth 10"));
}

#[test]
fn a_weight_makes_a_quick_start_narrower() {
    let colony = yard(
        "[[colony]]\nname = \"A\"\nkind = \"National\"\nstrength = \"strong\"\nstores = \"40 lb\"\nknown_by = \"scale\"\n",
    );
    assert!(!colony.colonies[0].quick_start);
    let food = colony.colonies[0].stores.total;
    assert!((food.p50.get() - 18.143_694_8).abs() < 1e-6 && food.p90.get() - food.p10.get() < 2.1);
}

#[test]
fn what_is_taken_without_being_said_is_told() {
    let text = "[[colony]]\nname = \"A\"\nkind = \"National\"\nstrength = \"strong\"\nfood = \"fair\"\n";
    let (found, advisories) = read(&format!("{HEAD}{text}"), "yard.toml").unwrap();
    assert_eq!(found.colonies[0].stores.kind, StoresKind::Sugar);
    for field in ["money", "site", "colony \"A\"", "colony \"A\".mites", "colony \"A\".stores_kind"] {
        assert!(advisories.iter().any(|advisory| advisory.field == field), "{field}: {advisories:?}");
    }
    assert!(advisories.iter().any(|advisory| said(&advisory.text).contains("no upper hole")));
}

#[test]
fn better_ways_of_weighing_give_narrower_ranges() {
    let width = |by| {
        let range = weighed(Kilogram::new(16.0), by, None);
        assert_eq!(range.p50.get(), 16.0);
        range.p90.get() - range.p10.get()
    };
    let widths = [KnownBy::Scale, KnownBy::TwoSidedLift, KnownBy::Frames, KnownBy::Stated, KnownBy::Heft].map(width);
    assert!(widths.is_sorted() && widths[0] < widths[4], "{widths:?}");
    let lift = weighed(Kilogram::new(8.0), KnownBy::TwoSidedLift, Some(Kilogram::new(2.0)));
    assert_eq!((lift.p10.get(), lift.p90.get()), (6.0, 10.0));
    let nearly_none = weighed(Kilogram::new(1.0), KnownBy::Heft, None);
    assert!(nearly_none.p10.get() > 0.0);
    assert_eq!(weighed(Kilogram::new(0.0), KnownBy::Scale, None).p10.get(), 0.0);
}

#[test]
fn combs_counted_give_bees_brood_and_food() {
    let text = "[[hive]]\nname = \"H\"\nkind = \"Langstroth 10\"\nboxes = [\"deep\"]\n[[colony]]\nname = \"A\"\nhive = \"H\"\n\
                seams_of_bees = 6\nbrood = \"1 frame\"\nstores_frames = 5\nmites = { found = 0, bees = 300, on = \"2025-09-01\" }\n";
    let colony = yard(text).colonies.remove(0);
    let face_cm2 = 42.9 * 20.3;
    assert!((colony.bees.p50 - 6.0 * 2.0 * face_cm2 * 1.4).abs() < 1.0);
    assert!((colony.stores.total.p50.get() - 5.0 * face_cm2 / 100.0 * 0.32).abs() < 0.01);
    assert!((colony.sealed_brood.unwrap().p50 - 2.0 * face_cm2 * 4.0 * 0.6).abs() < 1.0);
    assert_eq!((colony.frames_of_bees, colony.stores.known_by), (6.0, KnownBy::Frames));
}

#[test]
fn own_sizes_and_own_materials_are_taken_as_written() {
    let text = "[[material]]\nname = \"reed\"\nconductivity_w_per_m_k = 0.055\ndensity_kg_per_m3 = 150\n\
                specific_heat_j_per_kg_k = 1700\nvapour_resistance = 2\n\
                [[hive]]\nname = \"H\"\nkind = \"own\"\nwall = \"reed 2 in\"\nfacing = \"150 deg\"\n\
                boxes = [{ size = \"big\", length = \"450 mm\", width = \"15 in\", depth = \"300 mm\", frames = 10, \
                comb_length = \"410 mm\", comb_height = \"260 mm\" }]\n\
                [[colony]]\nname = \"A\"\nhive = \"H\"\nframes_of_bees = 6\nstores = \"15 kg\"\n";
    let hive = yard(text).hives.remove(0);
    assert_eq!((hive.standard.as_str(), hive.boxes[0].size.as_str(), hive.facing.get()), ("own sizes", "big", 150.0));
    assert_eq!(hive.boxes[0].wall.material.conductivity.get(), 0.055);
    assert!((hive.boxes[0].width.get() - 0.381).abs() < 1e-12);
    assert!((hive.boxes[0].comb_side.get() - 0.1066).abs() < 1e-12);
}
