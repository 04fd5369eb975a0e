//! A hive as built, turned into the numbers the hourly step needs.

mod air_ways;
mod faces;
mod plan;

use snowhum_apiary::Hive;
use snowhum_units::Pascal;

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
}

/// Air's share of the hive's inside (combs and frames take the rest; geometry of 35 mm spacing and 25 mm combs).
const AIR_SHARE: f64 = 0.35;

impl Shell {
    /// Compiles a hive whose cluster covers `frames_of_bees`.
    pub(crate) fn of(hive: &Hive, frames_of_bees: f64, p: &Parameters, pressure: Pascal) -> Self {
        let plan = Plan::of(hive, p);
        let air = AIR_SHARE * pressure.get() / (287.05 * 273.15);
        let frames: f64 = hive.boxes.iter().map(|b| f64::from(b.frames)).sum();
        let comb_area: f64 = hive.boxes.iter().map(|b| 2.0 * f64::from(b.frames) * b.comb_side.get()).sum();
        let warm_share = plan.warm_height / plan.height;
        let (film, empty) = (p.comb_film.value * comb_area, p.empty_comb_heat.value * frames / HOUR);
        Self {
            faces: Faces::of(hive, &plan, frames_of_bees, p),
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
            neighbour_share: hive.neighbour.as_ref().map_or(0.0, |neighbour| neighbour.share.get()),
        }
    }
}
