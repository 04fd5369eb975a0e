//! Bad numbers and hostile words do no harm.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "../examples/samples/mod.rs"]
mod samples;

use proptest::prelude::*;
use snowhum_picture::*;
use snowhum_say::Tongue;
use snowhum_units::*;

const WORDS: &str = "<script>alert('x')</script> \"&amp;\" ]]> --> \u{0}\u{1b}\u{202e}\u{fffe} <b>";

/// Names of parts a picture of ours may hold.
const ELEMENTS: [&str; 11] =
    ["svg", "title", "desc", "style", "defs", "pattern", "clipPath", "g", "path", "use", "text"];

fn is_sound(plate: &Plate) {
    let svg = plate.standalone(&IdPrefix::new(WORDS));
    let document = roxmltree::Document::parse(&svg).unwrap();
    for node in document.descendants().filter(roxmltree::Node::is_element) {
        let name = node.tag_name().name();
        assert!(ELEMENTS.contains(&name) || name == "tspan", "<{name}> came in from outside");
        for attribute in node.attributes().filter(|attribute| !attribute.name().starts_with("aria")) {
            let value = attribute.value().to_lowercase();
            let is_number_lost = ["nan", "inf"].iter().any(|bad| value.contains(bad));
            assert!(!is_number_lost || attribute.name() == "id", "{}=\"{value}\"", attribute.name());
        }
    }
    let words = document.descendants().filter(|node| node.is_text()).filter_map(|node| node.text());
    for text in words.chain(plate.table.rows.iter().flatten().map(String::as_str)) {
        assert!(!text.contains("NaN") && !text.to_lowercase().split(' ').any(|word| word == "inf"), "{text}");
    }
    assert!(plate.scene.height() < 20_000.0 && svg.len() < 2_000_000);
}

fn us_food() -> FoodFan {
    FoodFan { tongue: Tongue::new(System::Us), ..samples::charts::food() }
}

fn named(mut hive: HiveSection) -> HiveSection {
    hive.name = WORDS.into();
    hive.lid.iter_mut().chain(&mut hive.wrap).for_each(|sheet| sheet.name = WORDS.into());
    hive.boxes.iter_mut().for_each(|one| one.wall.name = WORDS.into());
    hive.openings.iter_mut().for_each(|opening| opening.name = WORDS.into());
    if let SectionColony::Dead(dead) = &mut hive.colony {
        dead.words = WORDS.into();
    }
    hive
}

#[test]
fn hostile_words_are_shown_and_never_obeyed() {
    for (_, hive) in samples::hives::all() {
        let hive = named(hive);
        [hive.cutaway(PlateWidth::Desk), hive.cutaway(PlateWidth::Phone), hive.thumbnail()].iter().for_each(is_sound);
    }
    let svg = named(samples::hives::poly()).cutaway(PlateWidth::Desk).inline(&IdPrefix::new("x"));
    assert!(svg.contains("&lt;script&gt;") && !svg.contains("<script"));
}

#[test]
fn hostile_words_in_charts_are_shown_and_never_obeyed() {
    let (mut food, mut bees, mut days) = (us_food(), samples::charts::dead_bees(), samples::charts::days());
    let (mut jobs, mut hundred) = (samples::charts::windows(), samples::charts::hundred());
    let words = || String::from(WORDS);
    food.title = words();
    food.ticks.iter_mut().chain(&mut food.horizon).for_each(|tick| tick.words = words());
    food.days.iter_mut().for_each(|day| day.when = words());
    bees.counts.iter_mut().for_each(|count| count.when = words());
    days.days.iter_mut().for_each(|day| (day.day, day.date, day.when) = (words(), words(), words()));
    jobs.windows.iter_mut().for_each(|window| (window.name, window.words) = (words(), words()));
    jobs.today.iter_mut().for_each(|today| today.words = words());
    hundred.parts.iter_mut().for_each(|part| part.words = words());
    let mut scales = samples::charts::scales();
    scales
        .scales
        .iter_mut()
        .for_each(|one| (one.name, one.stands, one.words, one.usual_words) = (words(), words(), words(), words()));
    is_sound(&scales.plate());
    [food.plate(), bees.plate(), days.plate(), jobs.plate(), hundred.plate()].iter().for_each(is_sound);
    samples::charts::all(Tongue::BRITISH).iter().for_each(|(_, untouched)| is_sound(untouched));
}

#[test]
fn a_mark_without_a_place_is_not_drawn() {
    let mut scene = Scene::new(f64::NAN, f64::INFINITY);
    let (lost, known) = (Point::new(f64::NAN, 1.0), Point::new(1.0, f64::INFINITY));
    scene.shape(Path::line(lost, known), None, Pen::new(Ink::Full, f64::NAN));
    scene.shape(Path::circle(Point::new(1.0, 1.0), f64::NAN), Some(Tint::Wood), Pen::FIRM);
    scene.shape(Path::bow(Point::new(0.0, 0.0), lost, Point::new(1.0, 1.0)), None, Pen::FIRM);
    scene.shape(Path::rect(Rect::new(0.0, 0.0, f64::INFINITY, 1.0)), None, Pen::FIRM);
    scene.words(known, "lost", Type::regular(14.0));
    scene.words(Point::new(1.0, 1.0), "kept", Type::regular(f64::NAN));
    let plate = Plate { title: "x".into(), description: "y".into(), scene, table: Table::default() };
    let svg = plate.inline(&IdPrefix::new("a"));
    assert!(!svg.contains("NaN") && !svg.contains("inf") && !svg.contains("lost") && !svg.contains("<path"), "{svg}");
    assert!(svg.contains("kept"));
}

/// Numbers good and bad.
fn number() -> impl Strategy<Value = f64> {
    prop_oneof![
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(f64::NEG_INFINITY),
        Just(0.0),
        Just(-1.0),
        Just(1e300),
        Just(f64::MIN_POSITIVE),
        -1.0..1.0f64,
        -1e4..1e4f64,
    ]
}

prop_compose! {
    fn a_sheet()(thickness in number()) -> Sheet {
        Sheet { name: "pine".into(), thickness: Metre::new(thickness), look: Look::Straw }
    }
}

prop_compose! {
    fn a_box()(inner in number(), height in number(), wall in a_sheet(), frames in any::<u32>(), spacing in number(),
               comb in number()) -> SectionBox {
        let (inner_width, height) = (Metre::new(inner), Metre::new(height));
        SectionBox { inner_width, height, wall, frames, spacing: Metre::new(spacing), comb_height: Metre::new(comb) }
    }
}

prop_compose! {
    fn some_stores()(in_box in 0usize..9, edges in prop::array::uniform4(number()), mass in number()) -> Stores {
        let [left, right, bottom, top] = edges.map(Fraction::new);
        Stores { in_box, state: StoresState::Touched, left, right, bottom, top, mass: Kilogram::new(mass) }
    }
}

prop_compose! {
    fn an_opening()(face in 0usize..6, sizes in prop::array::uniform3(number()), open in number(), flow in number())
        -> SectionOpening {
        let side = [Face::Front, Face::Back, Face::Left, Face::Right, Face::Below, Face::Round][face];
        let [height, width, depth] = sizes.map(Metre::new);
        let (open, flow) = (Fraction::new(open), CubicMetrePerSecond::new(flow));
        let shut = (face % 2 == 0).then(|| "noted blocked on 3 January".to_owned());
        SectionOpening { name: "hole".into(), face: side, height, width, depth, open, shut, flow }
    }
}

prop_compose! {
    fn a_cluster()(across in number(), sizes in prop::array::uniform3(number()), warmth in prop::array::uniform2(number()),
                   bees in any::<u32>()) -> SectionColony {
        let [height, radius, core_radius] = sizes.map(Metre::new);
        let [core, mantle] = warmth.map(Kelvin::new);
        let across = Fraction::new(across);
        SectionColony::Alive(Cluster { across, height, radius, core_radius, core, mantle, bees })
    }
}

prop_compose! {
    fn a_hive()(boxes in prop::collection::vec(a_box(), 0..12), lid in prop::collection::vec(a_sheet(), 0..12),
                skirt in number(), openings in prop::collection::vec(an_opening(), 0..12), colony in a_cluster(),
                stores in prop::collection::vec(some_stores(), 0..20), lengths in prop::array::uniform6(number()),
                warmth in number(), wet in number(), dead in any::<u32>(), warm in any::<bool>()) -> HiveSection {
        let mut hive = HiveSection::new("Juniper", boxes);
        let [rim, thickness, rise, roof, bank, stand] = lengths.map(Metre::new);
        hive.roof = lid.first().map(|sheet| Roof { sheet: sheet.clone(), skirt: Metre::new(skirt) });
        hive.wrap = lid.clone();
        hive.floor = SectionFloor { kind: FloorLook::TrayedMesh, thickness, rise };
        hive.snow = Snow { roof, bank };
        (hive.lid, hive.openings, hive.colony, hive.stores) = (lid, openings, colony, stores);
        (hive.rim, hive.stand, hive.dead_on_floor) = (rim, stand, dead);
        hive.way = if warm { CombWay::Warm } else { CombWay::Cold };
        let face = |face| WetFace { face, form: WaterForm::Water, rate: KilogramPerSecond::new(wet) };
        hive.wet = [InnerFace::Lid, InnerFace::Walls, InnerFace::Floor].map(face).into();
        hive.temperatures = vec![Reading { spot: Spot::WarmZone, temperature: Kelvin::new(warmth) }];
        hive.outside = Some(Kelvin::new(warmth));
        hive.wind = Some(MetrePerSecond::new(wet));
        hive
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn no_number_of_a_hive_breaks_its_picture(hive in a_hive()) {
        [hive.cutaway(PlateWidth::Desk), hive.cutaway(PlateWidth::Phone), hive.thumbnail()].iter().for_each(is_sound);
    }

    #[test]
    fn no_number_of_food_breaks_its_fan(days in prop::collection::vec((any::<i32>(), prop::array::uniform5(number())), 0..20),
                                        weighed in number(), about in number(), horizon in any::<i32>()) {
        let mut fan = us_food();
        let day = |(day, left): (i32, [f64; 5])| FoodDay { day, when: "then".into(), left: left.map(Kilogram::new) };
        fan.days = days.into_iter().map(day).collect();
        let (left, give_or_take) = (Kilogram::new(weighed), Kilogram::new(about));
        fan.weighings = vec![Weighing { day: horizon, when: "then".into(), left, give_or_take }];
        fan.horizon = Some(Tick { day: horizon, words: "flowers".into() });
        is_sound(&fan.plate());
    }

    #[test]
    fn no_number_breaks_the_other_charts(a in any::<u32>(), b in any::<u32>(), day in any::<i32>(), share in number()) {
        let mut bees = samples::charts::dead_bees();
        bees.counts[0].found = a;
        bees.counts[1].expected = Usual { least: b, middle: a, most: b };
        let mut jobs = samples::charts::windows();
        jobs.windows[0].days = [day, i32::MIN, i32::MAX];
        let mut hundred = samples::charts::hundred();
        hundred.parts[0].share = Fraction::new(share);
        let mut days = samples::charts::days();
        (days.days[0].low, days.days[0].wind) = (Kelvin::new(share), MetrePerSecond::new(share));
        let mut scales = samples::charts::scales();
        (scales.scales[0].figure, scales.scales[1].end, scales.scales[3].usual) = (Some([share, 1.0, -share]), share, Some([share, share]));
        [bees.plate(), jobs.plate(), hundred.plate(), days.plate(), scales.plate()].iter().for_each(is_sound);
    }
}
