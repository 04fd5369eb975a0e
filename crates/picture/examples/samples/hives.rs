//! Seven invented hives.

use snowhum_picture::*;
use snowhum_say::Tongue;
use snowhum_units::*;

/// Every hive with the name of its file.
pub(crate) fn all() -> Vec<(&'static str, HiveSection)> {
    vec![
        ("two-deeps", two_deeps()),
        ("poly", poly()),
        ("dadant", dadant()),
        ("nucleus", nucleus()),
        ("three-mediums", three_mediums()),
        ("dead", dead()),
        ("snowed-in", snowed_in()),
    ]
}

pub(crate) fn sheet(name: &str, millimetres: f64) -> Sheet {
    Sheet { name: name.into(), thickness: Metre::new(millimetres / 1e3), look: Look::of(name) }
}

/// A box by its inner width, depth and comb height in millimetres.
pub(crate) fn a_box(wall: Sheet, frames: u32, [width, depth, comb]: [f64; 3]) -> SectionBox {
    SectionBox {
        inner_width: Metre::new(width / 1e3),
        height: Metre::new(depth / 1e3),
        wall,
        frames,
        spacing: Metre::new(0.035),
        comb_height: Metre::new(comb / 1e3),
    }
}

fn deep() -> SectionBox {
    a_box(sheet("pine", 19.0), 10, [375.0, 244.0, 203.0])
}

fn stores(in_box: usize, state: StoresState, [left, right, bottom, top]: [f64; 4], kilograms: f64) -> Stores {
    let [left, right, bottom, top] = [left, right, bottom, top].map(Fraction::new);
    Stores { in_box, state, left, right, bottom, top, mass: Kilogram::new(kilograms) }
}

fn opening(name: &str, face: Face, [height, width, depth]: [f64; 3], open: f64, litres: f64) -> SectionOpening {
    let [height, width, depth] = [height, width, depth].map(|mm| Metre::new(mm / 1e3));
    let flow = CubicMetrePerSecond::new(litres / 1e3);
    SectionOpening { name: name.into(), face, height, width, depth, open: Fraction::new(open), shut: None, flow }
}

fn readings(celsius: [f64; 5]) -> Vec<Reading> {
    let spots = [Spot::WarmZone, Spot::ColdZone, Spot::Lid, Spot::Walls, Spot::Floor];
    let reading = |(spot, value)| Reading { spot, temperature: Kelvin::from_celsius(value) };
    spots.into_iter().zip(celsius).map(reading).collect()
}

fn wet(face: InnerFace, form: WaterForm, grams_a_day: f64) -> WetFace {
    WetFace { face, form, rate: KilogramPerSecond::new(grams_a_day / 86_400e3) }
}

fn cluster(across: f64, [height, radius, core_radius]: [f64; 3], [core, mantle]: [f64; 2], bees: u32) -> SectionColony {
    SectionColony::Alive(Cluster {
        across: Fraction::new(across),
        height: Metre::new(height / 1e3),
        radius: Metre::new(radius / 1e3),
        core_radius: Metre::new(core_radius / 1e3),
        core: Kelvin::from_celsius(core),
        mantle: Kelvin::from_celsius(mantle),
        bees,
    })
}

fn metal_roof(skirt: f64) -> Option<Roof> {
    Some(Roof { sheet: sheet("steel sheet", 1.0), skirt: Metre::new(skirt / 1e3) })
}

pub(crate) fn two_deeps() -> HiveSection {
    let mut hive = HiveSection::new("Juniper", vec![deep(), deep()]);
    hive.lid = vec![sheet("plywood", 9.0), sheet("xps foam", 50.0)];
    hive.rim = Metre::new(0.02);
    hive.roof = metal_roof(70.0);
    hive.wrap = vec![sheet("xps foam", 25.0), sheet("felt paper", 1.0)];
    hive.stand = Metre::new(0.35);
    hive.snow = Snow { roof: Metre::new(0.06), bank: Metre::new(0.18) };
    hive.openings = vec![
        opening("Entrance", Face::Front, [11.0, 300.0, 20.0], 0.3, 0.09),
        opening("Upper hole", Face::Front, [470.0, 22.0, 22.0], 1.0, -0.09),
    ];
    hive.colony = cluster(0.46, [285.0, 118.0, 62.0], [21.0, 9.0], 11_200);
    hive.stores = vec![
        stores(1, StoresState::Touched, [0.2, 0.72, 0.45, 0.8], 4.1),
        stores(1, StoresState::InReach, [0.2, 0.72, 0.8, 1.0], 4.0),
        stores(1, StoresState::OutOfReach, [0.0, 0.2, 0.15, 1.0], 3.4),
        stores(1, StoresState::OutOfReach, [0.72, 1.0, 0.1, 1.0], 4.6),
        stores(0, StoresState::OutOfReach, [0.8, 1.0, 0.55, 1.0], 1.1),
    ];
    hive.temperatures = readings([4.2, -11.0, 5.1, -2.8, -13.4]);
    hive.wet = vec![wet(InnerFace::Walls, WaterForm::Frost, 6.2), wet(InnerFace::Floor, WaterForm::Frost, 2.4)];
    hive.dead_on_floor = 420;
    hive.outside = Some(Kelvin::from_celsius(-18.0));
    hive.wind = Some(MetrePerSecond::new(3.0));
    hive
}

pub(crate) fn poly() -> HiveSection {
    let mut hive = HiveSection::new("Birch", vec![a_box(sheet("polystyrene", 40.0), 10, [375.0, 244.0, 203.0])]);
    hive.floor = SectionFloor { kind: FloorLook::TrayedMesh, thickness: Metre::new(0.05), rise: Metre::new(0.02) };
    hive.lid = vec![sheet("polystyrene", 40.0)];
    hive.stand = Metre::new(0.14);
    hive.openings = vec![
        opening("Entrance", Face::Front, [10.0, 120.0, 10.0], 1.0, 0.04),
        opening("Joints of tray and lid", Face::Round, [264.0, 0.0, 0.0], 1.0, -0.04),
    ];
    hive.colony = cluster(0.5, [128.0, 98.0, 48.0], [20.0, 10.0], 8_300);
    hive.stores = vec![
        stores(0, StoresState::Touched, [0.22, 0.8, 0.72, 1.0], 3.0),
        stores(0, StoresState::InReach, [0.0, 0.22, 0.3, 1.0], 3.2),
        stores(0, StoresState::InReach, [0.8, 1.0, 0.3, 1.0], 3.1),
    ];
    hive.temperatures = readings([11.0, 2.0, 10.0, 5.0, -1.0]);
    hive.wet = vec![wet(InnerFace::Walls, WaterForm::Water, 12.0)];
    hive.outside = Some(Kelvin::from_celsius(-6.0));
    hive.wind = Some(MetrePerSecond::new(5.0));
    hive
}

pub(crate) fn dadant() -> HiveSection {
    let mut hive = HiveSection::new("Alder", vec![a_box(sheet("pine", 24.0), 12, [450.0, 310.0, 270.0])]);
    hive.way = CombWay::Warm;
    hive.rim = Metre::new(0.01);
    hive.lid = vec![sheet("canvas", 1.0), sheet("straw", 80.0), sheet("pine", 20.0)];
    hive.roof = metal_roof(30.0);
    hive.stand = Metre::new(0.40);
    hive.snow = Snow { roof: Metre::new(0.12), bank: Metre::new(0.05) };
    hive.openings = vec![opening("Entrance", Face::Front, [8.0, 200.0, 8.0], 0.6, 0.03)];
    hive.colony = cluster(0.42, [170.0, 125.0, 66.0], [22.0, 9.0], 13_500);
    hive.stores = vec![
        stores(0, StoresState::Touched, [0.06, 0.8, 0.7, 0.86], 2.6),
        stores(0, StoresState::InReach, [0.04, 0.96, 0.86, 1.0], 5.4),
        stores(0, StoresState::OutOfReach, [0.8, 0.96, 0.3, 0.86], 3.2),
    ];
    hive.temperatures = readings([8.0, -4.0, 7.0, 1.0, -6.0]);
    hive.wet = vec![wet(InnerFace::Lid, WaterForm::Water, 3.0)];
    hive.outside = Some(Kelvin::from_celsius(-9.0));
    hive.wind = Some(MetrePerSecond::new(1.0));
    hive
}

pub(crate) fn nucleus() -> HiveSection {
    let mut hive = HiveSection::new("Aspen", vec![a_box(sheet("polystyrene", 35.0), 5, [200.0, 244.0, 203.0])]);
    hive.lid = vec![sheet("plastic sheet", 0.5), sheet("polystyrene", 35.0)];
    hive.floor = SectionFloor { kind: FloorLook::Mesh, thickness: Metre::new(0.045), rise: Metre::new(0.015) };
    hive.stand = Metre::new(0.10);
    hive.openings = vec![
        opening("Round entrance", Face::Front, [35.0, 30.0, 30.0], 0.5, -0.02),
        opening("Mesh floor", Face::Below, [0.0, 150.0, 300.0], 0.3, 0.02),
    ];
    hive.colony = cluster(0.5, [140.0, 68.0, 30.0], [18.0, 8.0], 3_900);
    hive.stores = vec![
        stores(0, StoresState::Touched, [0.2, 0.8, 0.7, 1.0], 1.6),
        stores(0, StoresState::InReach, [0.0, 0.2, 0.1, 1.0], 1.7),
        stores(0, StoresState::InReach, [0.8, 1.0, 0.1, 1.0], 1.8),
    ];
    hive.temperatures = readings([7.0, -3.0, 6.0, 2.0, -5.0]);
    hive.outside = Some(Kelvin::from_celsius(-7.0));
    hive.tongue = Tongue::new(System::Us);
    hive
}

pub(crate) fn three_mediums() -> HiveSection {
    let medium = || a_box(sheet("cedar", 19.0), 8, [318.0, 168.0, 130.0]);
    let mut hive = HiveSection::new("Larch", vec![medium(), medium(), medium()]);
    hive.lid = vec![sheet("plywood", 10.0), sheet("wood shavings", 60.0), sheet("plywood", 10.0)];
    hive.roof = metal_roof(50.0);
    hive.wrap = vec![sheet("felt paper", 1.0)];
    hive.stand = Metre::new(0.30);
    hive.openings = vec![
        opening("Entrance", Face::Front, [11.0, 280.0, 22.0], 0.2, 0.12),
        opening("Hole in the side", Face::Right, [440.0, 16.0, 16.0], 1.0, -0.12),
    ];
    hive.colony = cluster(0.55, [330.0, 105.0, 55.0], [20.0, 9.0], 9_600);
    hive.stores = vec![
        stores(2, StoresState::Touched, [0.3, 0.8, 0.1, 1.0], 4.4),
        stores(2, StoresState::InReach, [0.0, 0.3, 0.1, 1.0], 2.6),
        stores(2, StoresState::InReach, [0.8, 1.0, 0.1, 1.0], 1.7),
        stores(1, StoresState::OutOfReach, [0.0, 0.18, 0.3, 1.0], 1.2),
        stores(0, StoresState::OutOfReach, [0.0, 0.3, 0.5, 1.0], 1.5),
    ];
    hive.temperatures = readings([1.0, -13.0, 3.0, -6.0, -14.0]);
    hive.wet = vec![wet(InnerFace::Lid, WaterForm::Frost, 1.2), wet(InnerFace::Walls, WaterForm::Frost, 9.0)];
    hive.dead_on_floor = 150;
    hive.outside = Some(Kelvin::from_celsius(-15.0));
    hive.wind = Some(MetrePerSecond::new(6.0));
    hive
}

pub(crate) fn dead() -> HiveSection {
    let mut hive = two_deeps();
    hive.name = "Larch".into();
    hive.colony = SectionColony::Dead(DeadColony {
        across: Fraction::new(0.4),
        height: Metre::new(0.42),
        radius: Metre::new(0.055),
        words: "small cluster, head down in empty cells, food two frames away".into(),
    });
    hive.stores = vec![stores(1, StoresState::OutOfReach, [0.6, 1.0, 0.0, 1.0], 9.2)];
    hive.temperatures = Vec::new();
    hive.wet = Vec::new();
    hive.wrap = Vec::new();
    hive.snow = Snow::default();
    hive.openings = vec![opening("Entrance", Face::Front, [11.0, 300.0, 20.0], 0.3, 0.0)];
    hive.dead_on_floor = 6_000;
    hive.outside = Some(Kelvin::from_celsius(4.0));
    hive.wind = None;
    hive
}

pub(crate) fn snowed_in() -> HiveSection {
    let mut hive = two_deeps();
    hive.name = "Birch".into();
    hive.stand = Metre::new(0.15);
    hive.snow = Snow { roof: Metre::new(0.28), bank: Metre::new(0.24) };
    hive.openings = vec![
        opening("Entrance", Face::Front, [11.0, 300.0, 20.0], 0.3, 0.005),
        opening("Upper hole", Face::Front, [470.0, 22.0, 22.0], 1.0, -0.005),
    ];
    hive.wind = Some(MetrePerSecond::new(9.0));
    hive
}
