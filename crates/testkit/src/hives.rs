//! Hives and colonies built by hand, so that tests of the model do not stand on the reader of yard files.

use snowhum_apiary::{
    Colony, ColonyId, Floor, FrameWay, Hive, HiveBox, HiveId, KnownBy, Layer, Material, Mites, Opening, OpeningKind,
    Queen, Side, Stores, StoresKind, StoresPlace,
};
use snowhum_units::{
    Degree, Fraction, JoulePerKilogramKelvin, Kilogram, KilogramPerCubicMetre, Metre, Range, SquareMetre,
    WattPerMetreKelvin,
};
use uuid::Uuid;

/// What a hive wears.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dress {
    /// Boxes.
    pub boxes: usize,
    /// Foam over the inner cover, mm.
    pub lid_foam_mm: f64,
    /// Foam round the walls, mm.
    pub wall_foam_mm: f64,
    /// Area of the upper hole, cm²; 0 for none.
    pub hole_cm2: f64,
}

impl Dress {
    /// Two bare deeps with an upper hole of 3 cm².
    pub const BARE: Self = Self { boxes: 2, lid_foam_mm: 0.0, wall_foam_mm: 0.0, hole_cm2: 3.0 };
}

fn material(name: &str, k: f64, density: f64, heat: f64, vapour: f64) -> Material {
    Material {
        name: name.to_owned(),
        conductivity: WattPerMetreKelvin::new(k),
        density: KilogramPerCubicMetre::new(density),
        specific_heat: JoulePerKilogramKelvin::new(heat),
        vapour_resistance: vapour,
    }
}

fn sheet(material: &Material, millimetres: f64) -> Layer {
    Layer { material: material.clone(), thickness: Metre::new(millimetres / 1_000.0) }
}

fn opening(kind: OpeningKind, square_centimetres: f64, height: f64, side: Side) -> Opening {
    Opening {
        kind,
        area: SquareMetre::new(square_centimetres * 1e-4),
        height: Metre::new(height),
        discharge: Fraction::new(0.61),
        side,
    }
}

/// Ten-frame Langstroth deeps of 19 mm pine on a solid floor, dressed as asked.
#[must_use]
pub fn langstroth(dress: Dress) -> Hive {
    own_hive(dress, 0.467, 0.375, 0.244, 10)
}

/// A hive of 19 mm pine with boxes of own inside sizes in metres.
#[must_use]
pub fn own_hive(dress: Dress, length: f64, width: f64, depth: f64, frames: u32) -> Hive {
    let pine = material("pine", 0.12, 450.0, 1_600.0, 50.0);
    let plywood = material("plywood", 0.13, 500.0, 1_600.0, 70.0);
    let foam = material("foam", 0.034, 35.0, 1_450.0, 150.0);
    let foam_sheet = |millimetres: f64| (millimetres > 0.0).then(|| sheet(&foam, millimetres));
    let top = depth * dress.boxes as f64;
    let mut openings = vec![
        opening(OpeningKind::Entrance, 7.5, 0.01, Side::Front),
        opening(OpeningKind::Crack, 1.0, top / 2.0, Side::Round),
    ];
    if dress.hole_cm2 > 0.0 {
        openings.push(opening(OpeningKind::UpperHole, dress.hole_cm2, top - 0.03, Side::Front));
    }
    let one = HiveBox {
        size: "deep".to_owned(),
        length: Metre::new(length),
        width: Metre::new(width),
        depth: Metre::new(depth),
        wall: sheet(&pine, 19.0),
        frames,
        comb_side: SquareMetre::new((length - 0.04) * (depth - 0.04)),
    };
    Hive {
        id: HiveId(Uuid::from_u128(1)),
        name: "test hive".to_owned(),
        standard: "Langstroth, 10 frames".to_owned(),
        floor: Floor::Solid(sheet(&pine, 19.0)),
        boxes: vec![one; dress.boxes],
        frames: FrameWay::Cold,
        lid: std::iter::once(sheet(&plywood, 10.0)).chain(foam_sheet(dress.lid_foam_mm)).collect(),
        lid_breathes: false,
        wrap: foam_sheet(dress.wall_foam_mm).into_iter().collect(),
        wall_absorptance: Fraction::new(0.7),
        roof_absorptance: Fraction::new(0.5),
        rim: Metre::new(0.01),
        openings,
        facing: Degree::new(180.0),
        stand: Metre::new(0.4),
        neighbour: None,
        indoors: None,
        food_body: None,
    }
}

/// A healthy colony with exactly this many bees and kilograms of sugar stores, in [`langstroth`].
#[must_use]
pub fn colony(bees: f64, stores_kg: f64) -> Colony {
    Colony {
        id: ColonyId(Uuid::from_u128(7)),
        name: "test colony".to_owned(),
        hive: HiveId(Uuid::from_u128(1)),
        bees: Range::exact(bees),
        sealed_brood: Some(Range::exact(0.0)),
        frames_of_bees: 8.0,
        stores: Stores {
            total: Range::exact(Kilogram::new(stores_kg)),
            place: StoresPlace { touched: 0.15, above: 0.6, beside: 0.2, far: 0.05 },
            kind: StoresKind::Sugar,
            known_by: KnownBy::Scale,
        },
        mites: Mites::Counted { found: 0, bees: 300, on: jiff::civil::date(2025, 9, 1) },
        queen: Queen { year: Some(2025), seen_or_laying: Some(true), late_mated: false },
        treatments: Vec::new(),
        autumn: snowhum_apiary::Autumn::default(),
        quick_start: false,
    }
}
