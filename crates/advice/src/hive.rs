//! One hive at steady weather, as it is answered.

use serde::{Deserialize, Serialize};
use snowhum_winter::{Housed, Parameters, SteadyQuestion, UpperHole, steady};

use crate::answer::Condensation;
use crate::statistics::rounded;

/// A hive settled at steady weather.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveAnswer {
    /// Heat of the colony or of the heater.
    pub heat_w: f64,
    /// Core of the cluster, or of the brood nest.
    pub core_c: f64,
    /// Mantle of the cluster.
    pub mantle_c: f64,
    /// Air round and over the cluster.
    pub warm_zone_c: f64,
    /// Air below.
    pub floor_zone_c: f64,
    /// Inside surfaces.
    pub surface_c: Surfaces,
    /// Radius of the cluster as a sphere.
    pub radius_cm: f64,
    /// Stores eaten.
    pub food_g_per_day: f64,
    /// Water given off.
    pub water_g_per_day: f64,
    /// Air in and out.
    pub air_flow_l_per_s: f64,
    /// Heat over the warm zone's excess over outdoors.
    pub heat_loss_w_per_k: f64,
    /// Of the air round the cluster.
    pub humidity_percent: f64,
    /// Of the hive's air, by volume.
    pub co2_percent: f64,
    /// Water caught by each face, gross.
    pub condensation_g_per_day: Condensation,
    /// Of it dripping on the cluster.
    pub drip_on_cluster_g_per_day: f64,
    /// What the upper hole shows.
    pub upper_hole: UpperHole,
}

/// Inside surface temperatures.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Surfaces {
    /// Lid.
    pub lid: f64,
    /// Walls round the cluster.
    pub walls: f64,
    /// Walls below.
    pub lower_walls: f64,
    /// Floor.
    pub floor: f64,
}

/// Asks the model about one hive at steady weather.
#[must_use]
pub fn hive(housed: &Housed, parameters: &Parameters, question: SteadyQuestion) -> HiveAnswer {
    let a = steady(housed, parameters, question);
    let grams = |rate: snowhum_units::KilogramPerSecond| rounded(rate.get() * 86_400e3, 2);
    let [lid, walls, lower_walls, floor] = a.surfaces.map(|t| rounded(t.celsius(), 2));
    HiveAnswer {
        heat_w: rounded(a.heat.get(), 3),
        core_c: rounded(a.core.celsius(), 2),
        mantle_c: rounded(a.mantle.celsius(), 2),
        warm_zone_c: rounded(a.warm_zone.celsius(), 2),
        floor_zone_c: rounded(a.floor_zone.celsius(), 2),
        surface_c: Surfaces { lid, walls, lower_walls, floor },
        radius_cm: rounded(a.radius.get() * 100.0, 1),
        food_g_per_day: grams(a.food),
        water_g_per_day: grams(a.water),
        air_flow_l_per_s: rounded(a.air_flow.get() * 1e3, 3),
        heat_loss_w_per_k: rounded(a.heat_loss.get(), 3),
        humidity_percent: rounded(a.relative_humidity.get() * 100.0, 1),
        co2_percent: rounded(a.carbon_dioxide.get() * 100.0, 3),
        condensation_g_per_day: Condensation {
            lid: grams(a.condensation[0]),
            walls: grams(a.condensation[1]),
            floor: grams(a.condensation[2]),
        },
        drip_on_cluster_g_per_day: grams(a.drip),
        upper_hole: a.upper_hole,
    }
}
