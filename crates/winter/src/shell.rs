//! A hive as built, turned into the numbers the hourly step needs.

use snowhum_apiary::{Floor, FrameWay, Hive, Layer, OpeningKind, Side};
use snowhum_physics::air_layer::{self, AirLayer};
use snowhum_physics::films::{HeatFlow, standard_inner_resistance};
use snowhum_units::{Fraction, Kelvin, KelvinDifference, Metre, Pascal};

use crate::block::{FLOOR, LID, LOW_WALL, SURFACES, WALL};
use crate::laws::HOUR;
use crate::{Parameters, edges};

/// Conductances, capacities, areas and openings of one hive.
///
/// Node temperatures of lid, walls and floor are those of the inside surface, as in ISO 6946: `inner` is the inside
/// film, the layers and the outside film follow outwards.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Shell {
    /// Inside plan area, m².
    pub(crate) footprint: f64,
    /// Areas, m².
    pub(crate) area: [f64; SURFACES],
    /// Zone to surface, W/K.
    pub(crate) inner: [f64; SURFACES],
    /// Heat capacity over the step, W/K.
    pub(crate) capacity: [f64; SURFACES],
    /// What holds a surface's temperature when it melts, W/K.
    pub(crate) stiffness: [f64; SURFACES],
    /// Vapour exchange with the zone, kg/s for a unit of humidity ratio.
    pub(crate) vapour: [f64; SURFACES],
    /// Liquid held before it runs, kg.
    pub(crate) film: [f64; SURFACES],
    /// Layers without films, m² K/W.
    pub(crate) resistance: [f64; SURFACES],
    /// Edges, W/K.
    pub(crate) edge: [f64; SURFACES],
    /// Sun taken up by the lid and by the walls.
    pub(crate) lid_absorptance: f64,
    pub(crate) wall_absorptance: f64,
    /// Combs to air, W/K.
    pub(crate) comb: f64,
    pub(crate) low_comb: f64,
    /// Wax and wood of the combs over the step, W/K.
    pub(crate) comb_capacity: f64,
    pub(crate) low_comb_capacity: f64,
    /// Dry air of the zones, kg.
    pub(crate) warm_air: f64,
    pub(crate) cold_air: f64,
    /// Heights of warm and cold air between the openings, m.
    pub(crate) stack_warm: f64,
    pub(crate) stack_cold: f64,
    pub(crate) low: Openings,
    pub(crate) high: Openings,
    /// Open mesh under the hive, m².
    pub(crate) mesh_area: f64,
    /// Difference of wind pressure coefficients between low and high openings.
    pub(crate) wind_pressure: f64,
    pub(crate) wind_pumping: f64,
    /// Vapour through a breathing lid, kg/s for a unit of humidity ratio.
    pub(crate) lid_breathing: f64,
    /// 1 with an upper hole.
    pub(crate) has_hole: f64,
    pub(crate) pressure: f64,
    /// One over it.
    pub(crate) per_pascal: f64,
    /// Height of the floor over the ground, m, and of the cold zone.
    pub(crate) stand: f64,
    pub(crate) cold_height: f64,
    /// Share of the walls against a neighbour.
    pub(crate) neighbour_share: f64,
}

/// Openings at one level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Openings {
    /// Free area that ice, snow or dead bees can block, m².
    pub(crate) area: f64,
    /// Cracks, m².
    pub(crate) always: f64,
    pub(crate) discharge: f64,
    /// m.
    pub(crate) opening_height: f64,
}

/// Convective parts of the inside films by direction of heat flow, W/(m² K): ISO 13789:2017 table 8.
const CONVECTIVE: [f64; SURFACES] = [5.0, 2.5, 2.5, 0.7];
/// Wind pressure differences (windward +0.6, lee -0.3: from memory): openings on different sides, on one, cracks.
const ACROSS: f64 = 0.9;
const ALONG: f64 = 0.1;
const CRACKS: f64 = 0.3;
/// Wind gets between combs that lie across the entrance less than between those that point at it (judgement).
const WARM_WAY: f64 = 0.7;
/// Height of an entrance slot, m (half-inch to 20 mm, common practice).
const SLOT_HEIGHT: f64 = 0.015;
/// Air's share of the hive's inside (combs and frames take the rest; geometry of 35 mm spacing and 25 mm combs).
const AIR_SHARE: f64 = 0.35;
/// Vapour permeability of still air over its pressure gradient, as kg/(m s) for a unit of humidity ratio:
/// 2e-10 kg/(m s Pa) (ISO 13788) times 101325 / 0.622 Pa.
const PERMEABILITY: f64 = 2.0e-10 * 101_325.0 / 0.621_945;

impl Shell {
    /// Compiles a hive whose cluster covers `frames_of_bees`.
    pub(crate) fn of(hive: &Hive, frames_of_bees: f64, p: &Parameters, pressure: Pascal) -> Self {
        let plan = Plan::of(hive, p);
        let wall_r = wall_resistance(hive);
        let lid_r = resistance(&hive.lid);
        let (floor_r, mesh_area) = floor(hive, plan.footprint);
        let area = [plan.footprint, plan.wall_area, plan.low_wall_area, plan.footprint];
        let films = [
            standard_inner_resistance(HeatFlow::Up).get(),
            standard_inner_resistance(HeatFlow::Horizontal).get(),
            standard_inner_resistance(HeatFlow::Horizontal).get(),
            standard_inner_resistance(HeatFlow::Down).get(),
        ];
        let mut inner: [f64; SURFACES] = std::array::from_fn(|at| area[at] / films[at]);
        inner[WALL] = screened(hive, frames_of_bees, p, plan.wall_area, films[WALL]);
        let resistance = [lid_r, wall_r, wall_r, floor_r];
        let edge = edges::losses(resistance, area, inner, &plan);
        let capacity = [
            half_capacity(&hive.lid, area[LID]),
            half_capacity(&wall_layers(hive), area[WALL]),
            half_capacity(&wall_layers(hive), area[LOW_WALL]),
            floor_capacity(hive, area[FLOOR]),
        ]
        .map(|joules| joules / HOUR);
        let stiffness =
            std::array::from_fn(|at| capacity[at] + inner[at] + area[at] / (resistance[at] + 0.06) + edge[at]);
        let lid_film = if hive.lid_breathes { &p.quilt_water } else { &p.lid_film_water };
        let per_area = [lid_film.value, p.wall_film_water.value, p.wall_film_water.value, p.floor_film_water.value];
        let (low, high, has_hole) = openings(hive);
        let air = AIR_SHARE * pressure.get() / (287.05 * 273.15);
        let frames: f64 = hive.boxes.iter().map(|b| f64::from(b.frames)).sum();
        let comb_area: f64 = hive.boxes.iter().map(|b| 2.0 * f64::from(b.frames) * b.comb_side.get()).sum();
        let warm_share = plan.warm_height / plan.height;
        Self {
            footprint: plan.footprint,
            area,
            inner,
            capacity,
            stiffness,
            vapour: std::array::from_fn(|at| area[at] * CONVECTIVE[at] / crate::step::air::AIR_HEAT),
            film: std::array::from_fn(|at| area[at] * per_area[at]),
            resistance,
            edge,
            lid_absorptance: hive.roof_absorptance.get(),
            wall_absorptance: hive.wall_absorptance.get(),
            comb: p.comb_film.value * comb_area * warm_share,
            low_comb: p.comb_film.value * comb_area * (1.0 - warm_share),
            comb_capacity: p.empty_comb_heat.value * frames * warm_share / HOUR,
            low_comb_capacity: p.empty_comb_heat.value * frames * (1.0 - warm_share) / HOUR,
            warm_air: air * plan.footprint * plan.warm_height,
            cold_air: air * plan.footprint * plan.cold_height,
            stack_warm: stack_between(hive, plan.cold_height, plan.height),
            stack_cold: stack_between(hive, 0.0, plan.cold_height),
            low,
            high,
            mesh_area,
            wind_pressure: wind_pressure(hive),
            wind_pumping: p.wind_pumping.value * if hive.frames == FrameWay::Warm { WARM_WAY } else { 1.0 },
            lid_breathing: if hive.lid_breathes { breathing(hive, plan.footprint) } else { 0.0 },
            has_hole,
            pressure: pressure.get(),
            per_pascal: 1.0 / pressure.get(),
            stand: hive.stand.get(),
            cold_height: plan.cold_height,
            neighbour_share: hive.neighbour.as_ref().map_or(0.0, |neighbour| neighbour.share.get()),
        }
    }
}

/// Sizes of the inside, split into the zones.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Plan {
    pub(crate) footprint: f64,
    pub(crate) perimeter: f64,
    pub(crate) height: f64,
    pub(crate) warm_height: f64,
    pub(crate) cold_height: f64,
    pub(crate) wall_area: f64,
    pub(crate) low_wall_area: f64,
}

impl Plan {
    pub(crate) fn of(hive: &Hive, p: &Parameters) -> Self {
        let (length, width) = hive.boxes.first().map_or((0.465, 0.373), |b| (b.length.get(), b.width.get()));
        let height = hive.boxes.iter().map(|b| b.depth.get()).sum::<f64>() + hive.rim.get();
        let warm_height = (p.zone_share.value * height).min(p.zone_height.value);
        let perimeter = 2.0 * (length + width);
        Self {
            footprint: length * width,
            perimeter,
            height,
            warm_height,
            cold_height: height - warm_height,
            wall_area: perimeter * warm_height,
            low_wall_area: perimeter * (height - warm_height),
        }
    }
}

/// Sheets in series without films, m² K/W.
fn resistance(sheets: &[Layer]) -> f64 {
    sheets.iter().map(|sheet| sheet.thickness.get() / sheet.material.conductivity.get()).sum()
}

/// A still air layer between plain faces near 0 °C, m² K/W.
fn still_air(thickness_m: f64, flow: HeatFlow) -> f64 {
    let plain = Fraction::new(0.9);
    let layer = AirLayer { thickness: Metre::new(thickness_m), emissivity: [plain; 2], flow };
    air_layer::resistance(layer, Kelvin::from_celsius(0.0), KelvinDifference::new(5.0)).get()
}

fn wall_layers(hive: &Hive) -> Vec<Layer> {
    let mut sheets: Vec<Layer> = hive.boxes.last().map(|b| b.wall.clone()).into_iter().collect();
    sheets.extend(hive.wrap.iter().cloned());
    sheets
}

/// Walls and wrap without films. A wrap hung round a hive traps a thin air layer against the wood.
fn wall_resistance(hive: &Hive) -> f64 {
    const WRAP_GAP_M: f64 = 0.005;
    let sheets = resistance(&wall_layers(hive));
    if hive.wrap.is_empty() {
        return sheets;
    }
    sheets + still_air(WRAP_GAP_M, HeatFlow::Horizontal)
}

/// Resistance of the floor without films, and the area of open mesh.
fn floor(hive: &Hive, footprint: f64) -> (f64, f64) {
    match &hive.floor {
        Floor::Solid(sheet) => (resistance(std::slice::from_ref(sheet)), 0.0),
        Floor::TrayedMesh(tray) => {
            (resistance(std::slice::from_ref(tray)) + still_air(0.03, HeatFlow::Down), 0.0)
        }
        Floor::OpenMesh => {
            let mesh = hive.openings.iter().filter(|o| o.kind == OpeningKind::Mesh).map(|o| o.area.get()).sum::<f64>();
            (0.0, mesh.min(footprint))
        }
    }
}

/// Warm air to upper walls: walls along the outer combs are screened by the bare combs between them and the bees.
fn screened(hive: &Hive, frames_of_bees: f64, p: &Parameters, wall_area: f64, film: f64) -> f64 {
    let frames = hive.boxes.last().map_or(10.0, |b| f64::from(b.frames));
    let (length, width) = hive.boxes.last().map_or((0.465, 0.373), |b| (b.length.get(), b.width.get()));
    let bare_each_side = ((frames - frames_of_bees) / 2.0).clamp(0.0, frames / 2.0);
    let along = length / (length + width);
    let screen = p.bare_comb_resistance.value * bare_each_side;
    wall_area * (along / (film + screen) + (1.0 - along) / film)
}

/// Half of a build-up's heat capacity, the half the inside surface moves with, J/K; only the innermost 30 mm count.
fn half_capacity(sheets: &[Layer], area: f64) -> f64 {
    let mut depth = 0.0;
    let mut joules = 0.0;
    for sheet in sheets {
        let counted = sheet.thickness.get().min(0.03 - depth).max(0.0);
        joules += counted * sheet.material.density.get() * sheet.material.specific_heat.get();
        depth += counted;
    }
    0.5 * joules * area
}

fn floor_capacity(hive: &Hive, area: f64) -> f64 {
    match &hive.floor {
        Floor::Solid(sheet) | Floor::TrayedMesh(sheet) => half_capacity(std::slice::from_ref(sheet), area),
        // A wire mesh and its frame: about a kilogram of steel and wood a square metre (judgement).
        Floor::OpenMesh => 1_000.0 * area,
    }
}

/// Openings below and above the middle of the hive; cracks are shared between the two.
fn openings(hive: &Hive) -> (Openings, Openings, f64) {
    let sum = |kind: OpeningKind| hive.openings.iter().filter(|o| o.kind == kind).map(|o| o.area.get()).sum::<f64>();
    let discharge =
        |kind: OpeningKind| hive.openings.iter().find(|o| o.kind == kind).map_or(0.61, |o| o.discharge.get());
    let cracks = sum(OpeningKind::Crack) / 2.0;
    let (entrance, hole, mesh) = (sum(OpeningKind::Entrance), sum(OpeningKind::UpperHole), sum(OpeningKind::Mesh));
    let low = Openings {
        area: entrance,
        always: cracks + mesh,
        discharge: discharge(OpeningKind::Entrance),
        opening_height: SLOT_HEIGHT,
    };
    let high = Openings {
        area: hole,
        always: cracks,
        discharge: discharge(OpeningKind::UpperHole),
        opening_height: hole.sqrt(),
    };
    (low, high, if hole > 0.0 { 1.0 } else { 0.0 })
}

/// Metres of air column between the lowest and the highest opening that lie between `from` and `to`.
fn stack_between(hive: &Hive, from: f64, to: f64) -> f64 {
    let entrance = hive.openings.iter().find(|o| o.kind == OpeningKind::Entrance).map_or(0.0, |o| o.height.get());
    let top = hive.boxes.iter().map(|b| b.depth.get()).sum::<f64>() + hive.rim.get();
    let hole = hive.openings.iter().find(|o| o.kind == OpeningKind::UpperHole).map_or(top, |o| o.height.get());
    (to.min(hole) - from.max(entrance)).max(0.0)
}

fn wind_pressure(hive: &Hive) -> f64 {
    let side = |kind: OpeningKind| hive.openings.iter().find(|o| o.kind == kind).map(|o| o.side);
    match (side(OpeningKind::Entrance), side(OpeningKind::UpperHole)) {
        (Some(low), Some(high)) if low == high => ALONG,
        (Some(_), Some(Side::Round)) | (Some(_), None) | (None, _) => CRACKS,
        (Some(_), Some(_)) => ACROSS,
    }
}

/// Diffusion through a lid that breathes.
fn breathing(hive: &Hive, footprint: f64) -> f64 {
    let sd: f64 = hive.lid.iter().map(|sheet| sheet.thickness.get() * sheet.material.vapour_resistance).sum();
    footprint * PERMEABILITY / sd.max(0.02)
}
