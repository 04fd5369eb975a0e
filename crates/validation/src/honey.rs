//! What honey turns into.

use snowhum_physics::honey::Honey;
use snowhum_physics::moist_air::evaporation as heat_of_evaporation;
use snowhum_units::Kelvin;

use crate::check::{Band, Basis, Check, Claim, Class};

/// Water, gases and heat of a kilogram of honey and of a watt.
pub(crate) fn checks() -> Vec<Check> {
    const SOURCE: &str = "USDA FoodData Central for honey; stoichiometry of hexose";
    let claim = |id, quantity| Claim { id, class: Class::Exact, quantity, source: SOURCE, status: Basis::Derived };
    let burnt = Honey::AVERAGE.burnt();
    let per_watt_day = 86_400e3 / burnt.energy.get();
    let one_percent = |value, unit, decimals| Band::part(value, 0.01, unit, decimals);
    let closure = burnt.water.get() + burnt.carbon_dioxide.get() + burnt.residue.get() - 1.0 - burnt.oxygen.get();
    let evaporation = heat_of_evaporation(Kelvin::from_celsius(0.0)).get();
    vec![
        claim("A-honey-1", "water out of a kilogram of honey (0.665 within 1 %)")
            .within(one_percent(0.665, "kg", 4), burnt.water.get()),
        claim("A-honey-2", "carbon dioxide out of it (1.208 within 1 %)")
            .within(one_percent(1.208, "kg", 4), burnt.carbon_dioxide.get()),
        claim("A-honey-3", "oxygen into it (0.878 within 1 %)").within(one_percent(0.878, "kg", 4), burnt.oxygen.get()),
        claim("A-honey-4", "heat of it (12.72 within 1 %)")
            .within(one_percent(12.72, "MJ", 3), burnt.energy.get() / 1e6),
        claim("A-honey-5", "mass in less mass out").differs_at_most(1e-12, "kg/kg", closure.abs()),
        claim("A-honey-6", "honey for a watt over a day (6.79 within 1 %)")
            .within(one_percent(6.79, "g", 3), per_watt_day),
        claim("A-honey-7", "water from a watt over a day (4.52 within 1 %)")
            .within(one_percent(4.52, "g", 3), per_watt_day * burnt.water.get()),
        claim("A-honey-8", "carbon dioxide from a watt over a day (8.20 within 1 %)")
            .within(one_percent(8.20, "g", 3), per_watt_day * burnt.carbon_dioxide.get()),
        claim("A-honey-9", "share of honey's heat that evaporating all of that water takes")
            .within(Band::new(0.12, 0.14, "of it", 3), burnt.water.get() * evaporation / burnt.energy.get()),
    ]
}
