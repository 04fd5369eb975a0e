//! A hive as built, turned into the numbers the hourly step needs.

mod air_ways;
mod faces;
mod plan;

use snowhum_apiary::{Hive, food_in};
use snowhum_units::Same;
use snowhum_units::{Kilogram, Pascal};

pub(crate) use air_ways::{AirWays, SLOT_HEIGHT};
pub(crate) use faces::Faces;
pub(crate) use plan::Plan;

use crate::Parameters;
use crate::laws::HOUR;

/// Conductances, capacities, areas and openings of one hive.
///
/// Node temperatures of lid, walls and floor are those of the inside surface, as in ISO 6946: `inner` is the inside
/// film, the layers and the outside film follow outwards.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Shell {
    pub(crate) faces: Faces,
    pub(crate) ways: AirWays,
    /// Inside plan area, m².
    pub(crate) footprint: f64,
    /// Combs to air, W/K.
    pub(crate) comb: f64,
    pub(crate) low_comb: f64,
    /// Wax and wood of the combs over the step, W/K.
    pub(crate) comb_capacity: f64,
    pub(crate) low_comb_capacity: f64,
    /// Dry air of the zones, kg.
    pub(crate) warm_air: f64,
    pub(crate) cold_air: f64,
    /// Air pressure, Pa, and one over it.
    pub(crate) pressure: f64,
    pub(crate) per_pascal: f64,
    /// Height of the floor over the ground, m, and of the cold zone.
    pub(crate) stand: f64,
    pub(crate) cold_height: f64,
    /// Share of the walls against a neighbour.
    pub(crate) neighbour_share: f64,
    pub(crate) roof: Roof,
    /// Food over the cluster in its seams, kg, below which its top touches what lies on the top bars.
    pub(crate) within_touch: f64,
}

/// A cluster as it was counted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Cluster {
    /// Frames it covers.
    pub(crate) frames: f64,
    /// Its bees.
    pub(crate) mass: Kilogram,
}

/// What the roof does with snow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Roof {
    /// Share of what falls in calm air that stays.
    pub(crate) catch: f64,
    /// Wind at the hive that carries dry snow off, m/s.
    pub(crate) drift_from: f64,
    /// Share of the snow it carries off in an hour.
    pub(crate) drift_share: f64,
    /// Share of the sun that snow takes up.
    pub(crate) absorptance: f64,
    /// Density of snow that lies, kg/m³.
    pub(crate) density: f64,
    /// Thermal resistance of a kilogram of it on a square metre, m² K/W.
    pub(crate) resistance: f64,
    /// Conductance of the lid's layers without films, W/(m² K).
    pub(crate) lid: f64,
}

/// Air's share of the hive's inside (combs and frames take the rest; geometry of 35 mm spacing and 25 mm combs).
const AIR_SHARE: f64 = 0.35;
/// Boxes are never lower than this together, m.
const MIN_HEIGHT: f64 = 0.05;

impl Shell {
    /// Compiles a hive round a cluster.
    pub(crate) fn of(hive: &Hive, cluster: Cluster, p: &Parameters, pressure: Pascal) -> Self {
        let across = width(cluster.mass, p);
        let plan = Plan::of(hive, across, p);
        let air = AIR_SHARE * pressure.get() / (287.05 * 273.15);
        let frames: f64 = hive.boxes.iter().map(|b| f64::from(b.frames)).sum();
        let comb_area: f64 = hive.boxes.iter().map(|b| 2.0 * f64::from(b.frames) * b.comb_side.get()).sum();
        let warm_share = plan.warm_height / plan.height;
        let (film, empty) = (p.comb_film.value * comb_area, p.empty_comb_heat.value * frames / HOUR);
        let faces = Faces::of(hive, &plan, cluster.frames, p);
        Self {
            roof: Roof::of(&faces, p),
            faces,
            ways: AirWays::of(hive, &plan, p),
            footprint: plan.footprint,
            comb: film * warm_share,
            low_comb: film * (1.0 - warm_share),
            comb_capacity: empty * warm_share,
            low_comb_capacity: empty * (1.0 - warm_share),
            warm_air: air * plan.footprint * plan.warm_height,
            cold_air: air * plan.footprint * plan.cold_height,
            pressure: pressure.get(),
            per_pascal: 1.0 / pressure.get(),
            stand: hive.stand.get(),
            cold_height: plan.cold_height,
            within_touch: within_touch(hive, across, p),
            neighbour_share: hive.neighbour.as_ref().map_or(0.0, |neighbour| neighbour.share.get()),
        }
    }
}

/// Food, kg, that the seams of a cluster so wide hold in the height over it which its bees span.
fn within_touch(hive: &Hive, across: f64, p: &Parameters) -> f64 {
    let full: f64 = hive.boxes.iter().map(|b| food_in(f64::from(b.frames), b.comb_side).p50.get()).sum();
    let height = hive.boxes.iter().map(|b| b.depth.get()).sum::<f64>().max(MIN_HEIGHT);
    let width = hive.boxes.first().map_or(across, |b| b.width.get()).max(across);
    full / height * (across / width) * p.touch_over.value
}

/// Width of the tightest cluster as a ball between combs, m: bees and air fill the share that combs leave.
fn width(mass: Kilogram, p: &Parameters) -> f64 {
    let volume = mass.get() / (p.tightest_density.value * AIR_SHARE);
    (6.0 * volume / std::f64::consts::PI).same_cbrt()
}

impl Roof {
    /// A lid of no thickness still has the resistance of a sheet.
    const LEAST_RESISTANCE: f64 = 0.02;

    fn of(faces: &Faces, p: &Parameters) -> Self {
        Self {
            catch: p.roof_snow_catch.value,
            drift_from: p.roof_drift_from.value,
            drift_share: p.roof_drift_share.value,
            absorptance: p.roof_snow_absorptance.value,
            density: p.roof_snow_density.value,
            resistance: 1.0 / (p.roof_snow_density.value * p.roof_snow_conductivity.value),
            lid: 1.0 / faces.resistance[crate::block::LID].max(Self::LEAST_RESISTANCE),
        }
    }
}
