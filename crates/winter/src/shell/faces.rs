//! Lid, walls and floor as things that conduct, store and get wet.

use snowhum_apiary::{Floor, Hive, Layer};
use snowhum_figures::winter_hour::MESH_CAPACITY;
use snowhum_physics::air_layer::{self, AirLayer};
use snowhum_physics::films::{HeatFlow, standard_inner_resistance};
use snowhum_units::{Fraction, Kelvin, KelvinDifference, Metre};

use super::plan::Plan;
use crate::block::{FLOOR, LID, LOW_WALL, SURFACES, WALL};
use crate::laws::HOUR;
use crate::{Parameters, edges};

/// The four surfaces, in the order of the block's.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Faces {
    /// Areas, m².
    pub(crate) area: [f64; SURFACES],
    /// Zone to surface, W/K.
    pub(crate) inner: [f64; SURFACES],
    /// Heat capacity over the step, W/K.
    pub(crate) capacity: [f64; SURFACES],
    /// Heat that moves a surface by a kelvin by the end of an hour, W/K.
    pub(crate) stiffness: [f64; SURFACES],
    /// Vapour exchange with the zone, kg/s for a unit of humidity ratio.
    pub(crate) vapour: [f64; SURFACES],
    /// Liquid held before it runs, kg.
    pub(crate) film: [f64; SURFACES],
    /// Layers without films, m² K/W.
    pub(crate) resistance: [f64; SURFACES],
    /// Edges, W/K.
    pub(crate) edge: [f64; SURFACES],
    /// Sun taken up by the lid.
    pub(crate) lid_absorptance: f64,
    /// Sun taken up by the walls.
    pub(crate) wall_absorptance: f64,
    /// Vapour through a breathing lid, kg/s for a unit of humidity ratio.
    pub(crate) lid_breathing: f64,
}

/// Convective parts of the inside films by direction of heat flow, W/(m² K): ISO 13789:2017 table 8.
const CONVECTIVE: [f64; SURFACES] = [5.0, 2.5, 2.5, 0.7];
/// Vapour permeability of still air over its pressure gradient, as kg/(m s) for a unit of humidity ratio:
/// 2e-10 kg/(m s Pa) (ISO 13788) times 101325 / 0.622 Pa.
const PERMEABILITY: f64 = 2.0e-10 * 101_325.0 / 0.621_945;

/// Outside film that stands for all weathers where only an order of size matters, m² K/W.
const SOME_FILM: f64 = 0.06;

impl Faces {
    pub(crate) fn of(hive: &Hive, plan: &Plan, frames_of_bees: f64, p: &Parameters) -> Self {
        let area = [plan.footprint, plan.wall_area, plan.low_wall_area, plan.footprint];
        let wall_r = wall_resistance(hive);
        let resistance = [sheets_resistance(&hive.lid), wall_r, wall_r, floor_resistance(&hive.floor)];
        let inner = inner(hive, area, frames_of_bees, p);
        let edge = edges::losses(resistance, area, inner, plan);
        let capacity = capacity(hive, area);
        let film = film(hive, p);
        Self {
            area,
            inner,
            capacity,
            stiffness: std::array::from_fn(|at| {
                let joined = inner[at] + area[at] / (resistance[at] + SOME_FILM) + edge[at];
                let z = joined / capacity[at];
                joined * (1.0 + z + 0.5 * z * z) / (z + 0.5 * z * z)
            }),
            vapour: std::array::from_fn(|at| area[at] * CONVECTIVE[at] / crate::step::air::AIR_HEAT),
            film: std::array::from_fn(|at| area[at] * film[at]),
            resistance,
            edge,
            lid_absorptance: hive.roof_absorptance.get(),
            wall_absorptance: hive.wall_absorptance.get(),
            lid_breathing: if hive.lid_breathes { breathing(hive, plan.footprint) } else { 0.0 },
        }
    }
}

/// Inside films, W/K.
fn inner(hive: &Hive, area: [f64; SURFACES], frames_of_bees: f64, p: &Parameters) -> [f64; SURFACES] {
    let films = [HeatFlow::Up, HeatFlow::Horizontal, HeatFlow::Horizontal, HeatFlow::Down]
        .map(|flow| standard_inner_resistance(flow).get());
    let mut inner: [f64; SURFACES] = std::array::from_fn(|at| area[at] / films[at]);
    inner[WALL] = screened(hive, frames_of_bees, p, area[WALL], films[WALL]);
    inner
}

/// Heat capacities over the step, W/K.
fn capacity(hive: &Hive, area: [f64; SURFACES]) -> [f64; SURFACES] {
    let walls = wall_layers(hive);
    [
        half_capacity(&hive.lid, area[LID]),
        half_capacity(&walls, area[WALL]),
        half_capacity(&walls, area[LOW_WALL]),
        floor_capacity(hive, area[FLOOR]),
    ]
    .map(|joules| joules / HOUR)
}

/// Liquid that surfaces hold, kg/m².
fn film(hive: &Hive, p: &Parameters) -> [f64; SURFACES] {
    let lid = if hive.lid_breathes { &p.quilt_water } else { &p.lid_film_water };
    [lid, &p.wall_film_water, &p.wall_film_water, &p.floor_film_water].map(|parameter| parameter.value)
}

/// Sheets in series without films, m² K/W.
fn sheets_resistance(sheets: &[Layer]) -> f64 {
    sheets.iter().map(|sheet| sheet.resistance().get()).sum()
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
    let sheets = sheets_resistance(&wall_layers(hive));
    if hive.wrap.is_empty() {
        return sheets;
    }
    sheets + still_air(WRAP_GAP_M, HeatFlow::Horizontal)
}

/// Floor without films, m² K/W; open mesh holds nothing.
fn floor_resistance(floor: &Floor) -> f64 {
    const TRAY_GAP_M: f64 = 0.03;
    match floor {
        Floor::Solid(sheet) => sheets_resistance(std::slice::from_ref(sheet)),
        Floor::TrayedMesh(tray) => {
            sheets_resistance(std::slice::from_ref(tray)) + still_air(TRAY_GAP_M, HeatFlow::Down)
        }
        Floor::OpenMesh => 0.0,
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
        Floor::OpenMesh => MESH_CAPACITY * area,
    }
}

/// Diffusion through a lid that breathes.
fn breathing(hive: &Hive, footprint: f64) -> f64 {
    let sd: f64 = hive.lid.iter().map(|sheet| sheet.thickness.get() * sheet.material.vapour_resistance).sum();
    footprint * PERMEABILITY / sd.max(0.02)
}
