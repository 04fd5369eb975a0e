//! Promises every picture keeps, held on invented hives and charts.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "../examples/samples/mod.rs"]
mod samples;
mod support;

use snowhum_picture::{Cold, DayStrip, Fate, FoodFan, IdPrefix, Plate, PlateWidth, Tint};
use snowhum_say::{Language, Tongue};
use snowhum_units::System;
use std::collections::{BTreeMap, BTreeSet};
use support::{contrast, words_of};

fn plates() -> Vec<(String, Plate)> {
    plates_in(Language::British)
}

fn plates_in(language: Language) -> Vec<(String, Plate)> {
    let mut plates = Vec::new();
    for (name, mut hive) in samples::hives::all() {
        hive.tongue = hive.tongue.in_language(language);
        plates.push((format!("desk {name}"), hive.cutaway(PlateWidth::Desk)));
        plates.push((format!("phone {name}"), hive.cutaway(PlateWidth::Phone)));
        plates.push((format!("first desk {name}"), hive.cutaway_at_first(PlateWidth::Desk)));
        plates.push((format!("first phone {name}"), hive.cutaway_at_first(PlateWidth::Phone)));
        plates.push((format!("dress phone {name}"), hive.cutaway_of_dress(PlateWidth::Phone)));
        plates.push((format!("small {name}"), hive.thumbnail()));
    }
    let charts = samples::charts::all(Tongue::BRITISH.in_language(language));
    plates.extend(charts.into_iter().map(|(name, plate)| (name.to_owned(), plate)));
    plates
}

fn prefix() -> IdPrefix {
    IdPrefix::new("yard-1")
}

#[test]
fn every_picture_is_well_formed_and_has_title_description_and_role() {
    for (name, plate) in plates() {
        for svg in [plate.inline(&prefix()), plate.standalone(&prefix())] {
            let document = roxmltree::Document::parse(&svg).unwrap_or_else(|error| panic!("{name}: {error}"));
            let root = document.root_element();
            assert_eq!(root.attribute("role"), Some("img"), "{name}");
            assert_eq!(root.attribute("aria-labelledby"), Some("yard-1-t yard-1-d"), "{name}");
            for (tag, id) in [("title", "yard-1-t"), ("desc", "yard-1-d")] {
                let found = document.descendants().find(|node| node.has_tag_name(("http://www.w3.org/2000/svg", tag)));
                let found = found.unwrap();
                assert_eq!(found.attribute("id"), Some(id), "{name}");
                assert!(found.text().is_some_and(|words| !words.is_empty()), "{name}: empty {tag}");
            }
        }
    }
}

#[test]
fn every_id_starts_with_the_prefix_is_unique_and_every_reference_is_met() {
    for (name, plate) in plates() {
        let svg = plate.inline(&prefix());
        let document = roxmltree::Document::parse(&svg).unwrap();
        let ids: Vec<&str> = document.descendants().filter_map(|node| node.attribute("id")).collect();
        let unique: BTreeSet<&str> = ids.iter().copied().collect();
        assert_eq!(ids.len(), unique.len(), "{name}: an id twice");
        assert!(ids.iter().all(|id| id.starts_with("yard-1-")), "{name}: {ids:?}");
        for attribute in document.descendants().flat_map(|node| node.attributes()) {
            let wanted = attribute.value().strip_prefix("url(#").and_then(|rest| rest.strip_suffix(')'));
            let wanted = wanted.or_else(|| attribute.value().strip_prefix('#').filter(|_| attribute.name() == "href"));
            assert!(wanted.is_none_or(|id| unique.contains(id)), "{name}: nothing is called {wanted:?}");
        }
    }
}

#[test]
fn a_picture_for_a_page_holds_no_style_no_script_and_no_address() {
    for (name, plate) in plates() {
        let svg = plate.inline(&prefix());
        let document = roxmltree::Document::parse(&svg).unwrap();
        for node in document.descendants().filter(roxmltree::Node::is_element) {
            assert!(!["style", "script", "foreignObject", "a", "image"].contains(&node.tag_name().name()), "{name}");
            let is_bad = |name: &str| name == "style" || name.starts_with("on");
            assert!(!node.attributes().any(|attribute| is_bad(attribute.name())), "{name}");
        }
        assert_eq!(svg.matches("http").count(), 1, "{name}: an address beside the name space");
    }
}

#[test]
fn the_same_data_give_the_same_bytes() {
    for ((name, one), (_, other)) in plates().into_iter().zip(plates()) {
        assert_eq!(one.standalone(&prefix()), other.standalone(&prefix()), "{name}");
    }
}

#[test]
fn pictures_are_small() {
    for (name, plate) in plates() {
        let (inline, standalone) = (plate.inline(&prefix()).len(), plate.standalone(&prefix()).len());
        match name.as_str() {
            small if small.starts_with("small") => assert!(inline < 2_000, "{name}: {inline} bytes"),
            _ => assert!(standalone < 40_000, "{name}: {standalone} bytes"),
        }
    }
}

#[test]
fn no_words_cover_other_words_leave_the_view_or_are_cut_in_any_language() {
    for (name, plate) in Language::ALL.into_iter().flat_map(plates_in) {
        let svg = plate.inline(&prefix());
        let words = words_of(&svg);
        for (at, one) in words.iter().enumerate() {
            let (right, bottom) = (plate.scene.width() + 0.5, plate.scene.height());
            assert!(
                one.left >= -0.5 && one.right <= right && one.bottom <= bottom,
                "{name}: {} leaves the view",
                one.text
            );
            let covered: Vec<&str> =
                words[at + 1..].iter().filter(|other| one.covers(other)).map(|other| other.text.as_str()).collect();
            assert!(covered.is_empty(), "{name}: {} covers {covered:?}", one.text);
            assert!(!one.text.contains('…'), "{name}: {} is cut", one.text);
        }
    }
}

#[test]
fn words_are_large_enough_for_a_phone() {
    for (name, plate) in plates() {
        let words = words_of(&plate.inline(&prefix()));
        words.iter().for_each(|one| assert!(one.size >= 14.0, "{name}: {}", one.text));
        assert!([96.0, 360.0, 760.0].contains(&plate.scene.width()), "{name}");
    }
}

#[test]
fn every_tint_that_means_something_has_a_hatch() {
    for tint in Tint::ALL.into_iter().filter(|tint| !tint.is_neutral()) {
        assert!(tint.hatch().is_some(), "{tint:?}");
    }
    let names: BTreeSet<&str> = Tint::ALL.iter().map(|tint| tint.name()).collect();
    assert_eq!(names.len(), Tint::ALL.len());
}

#[test]
fn at_first_five_parts_are_pointed_at_and_the_bees_and_food_are_among_them() {
    let mut seen = BTreeSet::new();
    for (name, hive) in samples::hives::all() {
        for width in [PlateWidth::Desk, PlateWidth::Phone] {
            let (first, all) = (hive.cutaway_at_first(width).table, hive.cutaway(width).table);
            let parts: Vec<&str> =
                first.rows.iter().map(|row| row[0].as_str()).filter(|part| *part != "Weather").collect();
            assert!(parts.len() <= 5 && parts.len() <= all.rows.len(), "{name}: {parts:?}");
            assert!(first.rows.iter().all(|row| all.rows.contains(row)), "{name}: {parts:?} are among all parts");
            seen.extend(parts.into_iter().map(str::to_owned));
        }
    }
    for part in ["Cluster", "Food in reach", "Food out of reach"] {
        assert!(seen.contains(part), "{part} is never told: {seen:?}");
    }
}

#[test]
fn a_fan_of_food_tells_its_reserve_and_its_named_days() {
    for system in [System::Metric, System::Us] {
        let plate = FoodFan { tongue: Tongue::new(system), ..samples::charts::food() }.plate();
        let svg = plate.inline(&prefix());
        for words in ["first flowers, most likely 9 April", "feed by 9 March"] {
            assert!(plate.description.contains(words) && svg.contains(words), "{words}: {}", plate.description);
        }
        let reserve = if system == System::Metric { "4.0\u{a0}kg" } else { "9\u{a0}lb" };
        assert!(plate.description.contains(&format!("the reserve, {reserve}")), "{}", plate.description);
        assert!(svg.contains("data-part=\"reserve\"") && svg.contains(&format!("on that day, {reserve}")));
    }
}

#[test]
fn tints_of_one_picture_never_share_a_hatch() {
    let families: [&[Tint]; 4] = [
        &[
            Tint::Touched,
            Tint::InReach,
            Tint::OutOfReach,
            Tint::EmptyComb,
            Tint::Bees,
            Tint::Core,
            Tint::DeadBees,
            Tint::Snow,
        ],
        &[Tint::Wood, Tint::Foam, Tint::Poly, Tint::Straw, Tint::Cloth, Tint::Metal, Tint::Plastic, Tint::Ground],
        &[Tint::WideBand, Tint::NarrowBand],
        &[Tint::Lives, Tint::Hungry, Tint::Queenless, Tint::Starved, Tint::Lost],
    ];
    for family in families {
        let mut seen = BTreeMap::new();
        for tint in family {
            let before = seen.insert(format!("{:?}", tint.hatch()), tint);
            assert!(before.is_none(), "{tint:?} looks like {before:?}");
        }
    }
}

#[test]
fn every_coloured_fill_of_a_picture_is_hatched() {
    for (name, plate) in plates() {
        let svg = plate.inline(&prefix());
        for tint in Tint::ALL.into_iter().filter(|tint| !tint.is_neutral()) {
            let filled = svg.matches(&format!("class=\"sn-{}\"", tint.name())).count();
            let hatched = svg.matches(&format!("fill=\"url(#yard-1-{})\"", tint.name())).count();
            assert_eq!(filled, hatched, "{name}: {tint:?}");
        }
    }
}

#[test]
fn lines_and_words_stand_out_from_the_page_light_and_dark() {
    use snowhum_picture::Ink;
    for ink in [Ink::Full, Ink::Soft, Ink::Cold] {
        let (light, dark) = (contrast(ink.light(), Tint::Paper.light()), contrast(ink.dark(), Tint::Paper.dark()));
        assert!(light >= 4.5 && dark >= 4.5, "{ink:?}: {light:.1}, {dark:.1}");
    }
}

#[test]
fn a_picture_says_in_rows_what_it_shows() {
    for (name, plate) in plates().into_iter().filter(|(name, _)| !name.starts_with("small")) {
        assert!(!plate.table.rows.is_empty(), "{name}");
        assert!(plate.table.rows.iter().all(|row| row.len() == plate.table.head.len()), "{name}");
    }
    let hive = samples::hives::two_deeps().cutaway(PlateWidth::Desk);
    let row = |part: &str| hive.table.rows.iter().find(|row| row[0] == part).unwrap()[1].replace('\u{a0}', " ");
    assert_eq!(row("Warm core"), "21 °C");
    assert_eq!(row("Food out of reach"), "9.1 kg");
    assert_eq!(row("Entrance"), "18 cm² open, 30 % of it, air in 0.09 L/s");
    assert_eq!(row("Inner wall"), "−3 °C, frosted, 6.2 g a day");
}

#[test]
fn a_dead_hive_is_said_and_drawn_dead() {
    let plate = samples::hives::dead().cutaway(PlateWidth::Desk);
    assert!(plate.title.contains("dead") && plate.description.contains("The colony is dead"));
    let svg = plate.inline(&prefix());
    assert!(svg.contains("url(#yard-1-deadbees)") && !svg.contains("sn-core") && !svg.contains("class=\"sn-bees\""));
}

#[test]
fn snow_over_the_entrance_is_said() {
    let entrance = |plate: Plate| plate.table.rows.into_iter().find(|row| row[0] == "Entrance").unwrap()[1].clone();
    assert!(entrance(samples::hives::snowed_in().cutaway(PlateWidth::Desk)).contains("snow before it"));
    assert!(!entrance(samples::hives::two_deeps().cutaway(PlateWidth::Desk)).contains("snow before it"));
}

#[test]
fn counts_of_dead_bees_are_judged_by_their_band() {
    let rows = samples::charts::dead_bees().plate().table.rows;
    let judged: Vec<&str> = rows.iter().map(|row| row[3].as_str()).collect();
    assert_eq!(
        judged,
        ["as expected", "as expected", "more than expected", "more than expected", "fewer than expected"]
    );
}

#[test]
fn a_figure_nobody_knows_is_said_to_be_unknown_and_a_known_one_stands_on_its_scale() {
    let svg = samples::charts::scales().plate().standalone(&prefix());
    let count = |part: &str| svg.matches(&format!("data-part=\"{part}\"")).count();
    // Of four figures one is not known; the key shows one more.
    assert_eq!((count("scale"), count("usual"), count("figure"), count("error")), (4, 3, 4, 4));
    assert!(svg.contains("text-anchor=\"middle\">not known<"));
}

#[test]
fn empty_charts_are_drawn_without_a_fault() {
    let (mut food, mut bees, mut jobs) =
        (samples::charts::food(), samples::charts::dead_bees(), samples::charts::windows());
    food.days.clear();
    bees.counts.clear();
    jobs.windows.clear();
    let days = DayStrip { title: "Days".into(), days: Vec::new(), tongue: Tongue::BRITISH };
    let mut hundred = samples::charts::hundred();
    hundred.parts.retain(|part| part.fate == Fate::Lost);
    for plate in [food.plate(), bees.plate(), jobs.plate(), days.plate(), hundred.plate()] {
        roxmltree::Document::parse(&plate.standalone(&prefix())).unwrap();
    }
    assert!(samples::charts::days().days.iter().any(|day| day.cold == Cold::Hard));
}
