use crate::table::{PRINTED, near, near_part, worked};
use snowhum_physics::honey::{Burnt, Honey};
use snowhum_units::Fraction;

/// USDA FoodData Central and stoichiometry, to the printed digits.
#[test]
fn average_honey_gives_its_water_gases_and_heat() {
    let burnt = Honey::AVERAGE.burnt();
    near("water", burnt.water.get(), 0.665, 5e-4);
    near("carbon dioxide", burnt.carbon_dioxide.get(), 1.208, 5e-4);
    near("oxygen", burnt.oxygen.get(), 0.878, 5e-4);
    near("residue", burnt.residue.get(), 0.005, 1e-12);
    near_part("energy", burnt.energy.get(), 12.72e6, 1e-12);
    let honey_g_per_watt_day = 86_400e3 / burnt.energy.get();
    near("honey a watt-day", honey_g_per_watt_day, 6.79, 5e-3);
    near("water a watt-day", honey_g_per_watt_day * burnt.water.get(), 4.52, 5e-3);
    near("carbon dioxide a watt-day", honey_g_per_watt_day * burnt.carbon_dioxide.get(), 8.20, 6e-3);
}

#[test]
fn burning_keeps_mass_exactly() {
    for water in [0.0, 0.14, 0.171, 0.18, 0.20, 0.5] {
        for honey in [Honey::of_water(Fraction::new(water)), Honey::all_hexose(Fraction::new(water))] {
            let Burnt { water, carbon_dioxide, oxygen, residue, .. } = honey.burnt();
            near("mass", (water + carbon_dioxide + residue).get(), 1.0 + oxygen.get(), 1e-14);
        }
    }
}

#[test]
fn honey_of_hexose_gives_the_tables_made_at_eighteen_percent() {
    for percent in [16, 17, 18, 20] {
        let burnt = Honey::all_hexose(Fraction::new(f64::from(percent) / 100.0)).burnt();
        let name = format!("total water per kg honey at {percent}% water, all solids as hexose");
        near_part(&name, burnt.water.get(), worked("metab", &name), PRINTED);
    }
    let burnt = Honey::all_hexose(Fraction::new(0.18)).burnt();
    near_part("heat", burnt.energy.get(), worked("metab", "heat per kg honey 18% water"), PRINTED);
    let water_g_day = 10.0 / burnt.energy.get() * burnt.water.get() * 86_400e3;
    near_part("at 10 W", water_g_day, worked("metab", "water output at 10 W, 18% honey"), PRINTED);
    let honey_kg = 10.0 * 86_400.0 * 30.0 / burnt.energy.get();
    near_part("eaten", honey_kg, worked("metab", "honey use for 10 W over 30 d"), PRINTED);
}

/// The tables take 44.0095 g/mol for carbon dioxide, here 44.009, with which mass is kept to the last digit.
#[test]
fn hexose_alone_gives_its_water_gases_and_heat() {
    let burnt = Honey::all_hexose(Fraction::ZERO).burnt();
    near_part("water", burnt.water.get(), worked("metab", "metabolic water per kg hexose"), PRINTED);
    near_part("oxygen", burnt.oxygen.get(), worked("metab", "O2 per kg hexose"), PRINTED);
    near_part("carbon dioxide", burnt.carbon_dioxide.get(), worked("metab", "CO2 per kg hexose"), 1.2e-5);
    let heat = worked("metab", "glucose enthalpy of combustion (2803 kJ/mol) per kg");
    near_part("heat", burnt.energy.get(), heat, PRINTED);
}
