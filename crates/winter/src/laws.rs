//! The parameters as plain numbers, ready for the loops over lanes.

use crate::{Parameters, Vectors};
use snowhum_physics::honey::Honey;
use snowhum_units::Fraction;
use snowhum_units::Same;

/// Seconds in a step.
pub(crate) const HOUR: f64 = 3_600.0;

/// Everything the hourly and daily steps need from the parameters that is the same for all members.
#[derive(Debug, Clone)]
pub(crate) struct Laws {
    pub(crate) tightest_at: f64,
    /// Looseness gained a kelvin.
    pub(crate) per_kelvin: f64,
    /// Logarithm of the conductance of a loosest over a tightest cluster.
    pub(crate) log_area_ratio: f64,
    /// Share of the way to the wanted looseness gone in an hour, tightening.
    pub(crate) contracting: f64,
    /// The same, loosening.
    pub(crate) expanding: f64,
    /// Looseness a full nest holds open.
    pub(crate) nest_looseness: f64,
    /// Mantle to air over core to air: how the warmth of the core over the air is shared is the same in every cluster.
    pub(crate) mantle_over_core: f64,
    /// Share of that warmth which lies between mantle and air.
    pub(crate) mantle_share: f64,
    pub(crate) core_broodless: f64,
    pub(crate) core_brood: f64,
    pub(crate) mantle_floor: f64,
    pub(crate) mantle_motionless: f64,
    /// ln(Q10) / 10.
    pub(crate) rest_per_kelvin: f64,
    pub(crate) bee_mass: f64,
    pub(crate) reference_mass: f64,
    /// J/kg of honey.
    pub(crate) honey_energy: f64,
    /// kg of water for a joule.
    pub(crate) water_per_joule: f64,
    /// kg of carbon dioxide for a kilogram of honey.
    pub(crate) dioxide_per_honey: f64,
    /// Share of metabolic heat that leaves as vapour.
    pub(crate) latent_share: f64,
    pub(crate) crop_reserve: f64,
    pub(crate) move_rate: f64,
    pub(crate) carry_from: f64,
    pub(crate) feed_from: f64,
    pub(crate) hours_between_meals: f64,
    pub(crate) chill_drop: f64,
    pub(crate) load_threshold: f64,
    pub(crate) load_wear: f64,
    pub(crate) summer_bee_hazard: f64,
    pub(crate) spring_bee_hazard: f64,
    pub(crate) other_hazard: f64,
    pub(crate) laying_half_stores: f64,
    pub(crate) laying_warmth: f64,
    pub(crate) laying_warmth_width: f64,
    pub(crate) brood_light_lead: f64,
    /// Days before winter bees emerge at which half of late summer's laying goes on, and over which it ends.
    pub(crate) brood_ends: f64,
    pub(crate) brood_ends_width: f64,
    pub(crate) laying_without_flight: f64,
    pub(crate) queenless_wear: f64,
    /// Carbon dioxide by volume that eases off and that stops the bees' heat.
    pub(crate) dioxide_eases: f64,
    pub(crate) dioxide_stops: f64,
    pub(crate) stifled_hours: f64,
    pub(crate) locked_in_hours: f64,
    /// Share of an opening that must be free for bees to leave by it.
    pub(crate) way_out_from: f64,
    pub(crate) confinement_days: f64,
    pub(crate) confinement_wear: f64,
    pub(crate) daily_scatter: f64,
    pub(crate) honey_heat: f64,
    /// The width of the vectors that all this is worked out with.
    pub(crate) vectors: Vectors,
}

/// Days over which a chance "over winter" is spread.
pub(crate) const WINTER_DAYS: f64 = 182.0;
/// Latent heat the model books for water leaving the bees, J/kg: evaporation at 0 °C.
pub(crate) const EVAPORATION: f64 = 2.501e6;
/// Latent heat of melting, J/kg.
pub(crate) const FUSION: f64 = 0.3335e6;

impl Laws {
    pub(crate) fn of(p: &Parameters) -> Self {
        let span = p.loosest_at.value - p.tightest_at.value;
        let yields = Honey::of_water(Fraction::new(p.honey_water.value)).burnt();
        let energy = yields.energy.get();
        let water = yields.water.get();
        let mantle_share = 1.0 - p.conductance_core_air.value / p.conductance_core_mantle.value;
        Self {
            tightest_at: p.tightest_at.value,
            per_kelvin: 1.0 / span,
            log_area_ratio: 2.0 / 3.0 * p.volume_ratio.value.same_ln(),
            contracting: 1.0 - (-1.0 / p.contracting_hours.value).same_exp(),
            expanding: 1.0 - (-1.0 / p.expanding_hours.value).same_exp(),
            nest_looseness: p.nest_looseness.value,
            mantle_over_core: 1.0 / mantle_share,
            mantle_share,
            core_broodless: p.core_broodless.value,
            core_brood: p.core_brood.value,
            mantle_floor: p.mantle_floor.value,
            mantle_motionless: p.mantle_motionless.value,
            rest_per_kelvin: p.rest_q10.value.same_ln() / 10.0,
            bee_mass: p.bee_mass.value,
            reference_mass: p.reference_cluster_mass.value,
            honey_energy: energy,
            water_per_joule: water / energy,
            dioxide_per_honey: yields.carbon_dioxide.get(),
            latent_share: water * EVAPORATION / energy,
            crop_reserve: p.crop_reserve.value,
            move_rate: p.move_rate.value,
            carry_from: p.carry_from.value,
            feed_from: p.feed_from.value,
            hours_between_meals: p.hours_between_meals.value,
            chill_drop: p.chill_drop.value,
            load_threshold: p.load_threshold.value,
            load_wear: p.load_wear.value,
            summer_bee_hazard: p.summer_bee_hazard.value,
            spring_bee_hazard: p.spring_bee_hazard.value,
            other_hazard: daily(p.other_loss.value),
            laying_half_stores: p.laying_half_stores.value,
            laying_warmth: p.laying_warmth.value,
            laying_warmth_width: p.laying_warmth_width.value,
            brood_light_lead: p.brood_light_lead.value,
            brood_ends: p.brood_ends.value,
            brood_ends_width: p.brood_ends_width.value,
            laying_without_flight: p.laying_without_flight.value,
            queenless_wear: p.queenless_wear.value,
            dioxide_eases: p.dioxide_eases.value,
            dioxide_stops: p.dioxide_stops.value,
            stifled_hours: p.stifled_hours.value,
            locked_in_hours: p.locked_in_hours.value,
            way_out_from: p.way_out_from.value,
            confinement_days: p.confinement_days.value,
            confinement_wear: p.confinement_wear.value,
            daily_scatter: p.daily_scatter.value,
            honey_heat: p.honey_heat.value,
            vectors: Vectors::Widest,
        }
    }
}

/// The daily hazard that adds up to a `chance` over a winter.
pub(crate) fn daily(chance: f64) -> f64 {
    -(1.0 - chance).same_ln() / WINTER_DAYS
}
