//! The cut-away is drawn to scale.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "../examples/samples/hives.rs"]
mod hives;

use snowhum_picture::{IdPrefix, PlateWidth, SectionColony};

/// Boxes of a named part, as left, top, right, bottom.
fn parts(svg: &str, part: &str) -> Vec<[f64; 4]> {
    let document = roxmltree::Document::parse(svg).unwrap();
    let named = document.descendants().filter(|node| node.attribute("data-part") == Some(part));
    named.map(|node| corners(node.attribute("d").unwrap())).collect()
}

fn corners(d: &str) -> [f64; 4] {
    let numbers: Vec<f64> = d.split(|c: char| c.is_alphabetic() || c == ' ').filter_map(|n| n.parse().ok()).collect();
    [numbers[0], numbers[1], numbers[2], numbers[3]]
}

#[test]
fn boxes_have_the_proportions_of_the_hive() {
    for (name, hive) in hives::all() {
        for width in [PlateWidth::Desk, PlateWidth::Phone] {
            let svg = hive.cutaway(width).inline(&IdPrefix::new("a"));
            let boxes = parts(&svg, "box");
            assert_eq!(boxes.len(), hive.boxes.len(), "{name}");
            let scale = scale(&svg, hive.tongue.system());
            for ([left, top, right, bottom], wanted) in boxes.into_iter().zip(&hive.boxes) {
                let outer = wanted.inner_width.get() + 2.0 * wanted.wall.thickness.get();
                let (wide, high) = ((right - left) / scale, (bottom - top) / scale);
                assert!((wide - outer).abs() < 1e-4, "{name}: {wide} m for {outer} m");
                assert!((high - wanted.height.get()).abs() < 1e-4, "{name}: {high} m for {:?}", wanted.height);
            }
        }
    }
}

/// Units of the view a metre, by the scale bar.
fn scale(svg: &str, system: snowhum_units::System) -> f64 {
    let document = roxmltree::Document::parse(svg).unwrap();
    let bar = document.descendants().find(|node| node.attribute("data-part") == Some("scale")).unwrap();
    let (from, to) = bar.attribute("d").unwrap().split_once('H').unwrap();
    let from: f64 = from.trim_start_matches('M').split(' ').next().unwrap().parse().unwrap();
    let metres = if system == snowhum_units::System::Metric { 0.1 } else { 0.1016 };
    (to.parse::<f64>().unwrap() - from) / metres
}

#[test]
fn the_cluster_is_as_large_as_it_is() {
    for (name, hive) in hives::all() {
        let SectionColony::Alive(cluster) = &hive.colony else { continue };
        let svg = hive.cutaway(PlateWidth::Desk).inline(&IdPrefix::new("a"));
        let document = roxmltree::Document::parse(&svg).unwrap();
        let drawn = document.descendants().find(|node| node.attribute("class") == Some("sn-bees")).unwrap();
        let d = drawn.attribute("d").unwrap();
        let radius: f64 = d.split_once('a').unwrap().1.split(' ').next().unwrap().parse().unwrap();
        let metres = radius / scale(&svg, hive.tongue.system());
        assert!((metres - cluster.radius.get()).abs() < 1e-4, "{name}: {metres} m");
    }
}

#[test]
fn twice_the_snow_is_drawn_twice_as_deep() {
    let mut hive = hives::dadant();
    let depth = |hive: &snowhum_picture::HiveSection| {
        let plate = hive.cutaway(PlateWidth::Desk);
        let svg = plate.inline(&IdPrefix::new("a"));
        let document = roxmltree::Document::parse(&svg).unwrap();
        let snow = document.descendants().find(|node| node.attribute("data-part") == Some("roof-snow")).unwrap();
        let outline = snow.attribute("d").or_else(|| snow.first_element_child().and_then(|path| path.attribute("d")));
        let numbers: Vec<f64> = outline
            .unwrap()
            .split(|c: char| c.is_alphabetic() || c == ' ')
            .filter_map(|number| number.parse().ok())
            .collect();
        let bottom = numbers[1];
        let top = numbers.iter().skip(3).copied().filter(|y| *y < bottom && *y > 60.0).fold(bottom, f64::min);
        (bottom - top) / scale(&svg, hive.tongue.system())
    };
    let once = depth(&hive);
    hive.snow.roof = hive.snow.roof * 2.0;
    let twice = depth(&hive);
    assert!((twice / once - 2.0).abs() < 0.03, "{once} m, then {twice} m");
}

#[test]
fn small_hives_share_one_scale_and_stand_on_one_line() {
    for (name, hive) in hives::all().into_iter().filter(|(name, _)| *name != "snowed-in") {
        let svg = hive.thumbnail().inline(&IdPrefix::new("a"));
        let document = roxmltree::Document::parse(&svg).unwrap();
        let boxes = document.descendants().find(|node| node.attribute("data-part") == Some("boxes")).unwrap();
        let d = boxes.attribute("d").unwrap();
        let first = d.split('z').nth(1).unwrap();
        let [left, _, right, _] = corners(first);
        let outer = hive.boxes[0].inner_width.get() + 2.0 * hive.boxes[0].wall.thickness.get();
        assert!(((right - left) / outer - 128.0).abs() < 0.1, "{name}: {} units a metre", (right - left) / outer);
    }
}
