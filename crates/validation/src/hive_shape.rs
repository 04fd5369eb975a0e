//! What must rise, fall or stay in a whole hive at steady weather.

use snowhum_testkit::Dress;
use snowhum_units::{MetrePerSecond, Watt};
use snowhum_winter::{Parameters, SteadyAnswer, SteadyQuestion};

use crate::check::{Basis, Check, Claim, Class};
use crate::hives::{FOAM_LID, ask, question};

/// Insulation, wind, colony size.
pub(crate) fn checks(parameters: &Parameters) -> Vec<Check> {
    vec![
        lid_moves_water(parameters),
        insulation_lowers_loss(parameters),
        insulation_never_cools(parameters),
        insulation_never_costs_food_in_cold(parameters),
        wind_raises_loss(parameters),
        food_a_bee_falls(parameters),
        least_power_in_a_hive(parameters),
    ]
}

fn claim(id: &'static str, quantity: &'static str, source: &'static str, status: Basis) -> Claim {
    Claim { id, class: Class::Shape, quantity, source, status }
}

/// g a day on lid and on walls.
fn water(answer: &SteadyAnswer) -> [f64; 2] {
    let [lid, walls, _] = answer.condensation.map(|flow| flow.get() * 86_400e3);
    [lid, walls]
}

fn lid_moves_water(parameters: &Parameters) -> Check {
    let at = |dress| water(&ask(parameters, dress, question(-10.0)));
    let ([bare_lid, bare_walls], [foam_lid, foam_walls]) = (at(Dress::BARE), at(FOAM_LID));
    claim(
        "B-hive-1",
        "foam on the lid alone at -10 °C moves the water from lid to walls",
        "scipy and PsychroLib, coupled cases M1 and M2",
        Basis::OutsideTool,
    )
    .holds(
        "less on the lid, more on the walls",
        format!("lid {bare_lid:.0} to {foam_lid:.0}, walls {bare_walls:.0} to {foam_walls:.0} g a day"),
        foam_lid < bare_lid && foam_walls > bare_walls,
    )
}

/// Ever better dressed hives with a heater of 10 W in place of bees, at four temperatures.
fn dressed(parameters: &Parameters) -> Vec<Vec<SteadyAnswer>> {
    let heater = |outside_c| SteadyQuestion { heater: Some(Watt::new(10.0)), ..question(outside_c) };
    let at = |outside_c| {
        let foam = [0.0, 10.0, 25.0, 50.0, 100.0].map(|mm| Dress { lid_foam_mm: mm, wall_foam_mm: mm, ..Dress::BARE });
        foam.map(|dress| ask(parameters, dress, heater(outside_c))).to_vec()
    };
    [-25.0, -10.0, 0.0, 8.0].map(at).to_vec()
}

/// Whether `holds` for every step to a better dress.
fn at_every_step(runs: &[Vec<SteadyAnswer>], holds: impl Fn(&SteadyAnswer, &SteadyAnswer) -> bool) -> bool {
    runs.iter().all(|run| run.windows(2).all(|pair| matches!(pair, [worse, better] if holds(worse, better))))
}

fn insulation_lowers_loss(parameters: &Parameters) -> Check {
    let runs = dressed(parameters);
    let losses: Vec<String> =
        runs.get(1).into_iter().flatten().map(|answer| format!("{:.2}", answer.heat_loss.get())).collect();
    claim(
        "B-hive-2",
        "0, 10, 25, 50, 100 mm of foam all round, heater of 10 W, -25 to +8 °C: loss",
        "conduction",
        Basis::Derived,
    )
    .holds(
        "falls with every step",
        format!("at -10 °C {} W/K", losses.join(", ")),
        at_every_step(&runs, |worse, better| better.heat_loss < worse.heat_loss),
    )
}

fn insulation_never_cools(parameters: &Parameters) -> Check {
    let runs = dressed(parameters);
    let zones = |answer: &SteadyAnswer| format!("{:.0}/{:.0}", answer.warm_zone.celsius(), answer.floor_zone.celsius());
    let shown: Vec<String> = runs.get(1).into_iter().flatten().map(zones).collect();
    claim("B-hive-3", "the same: air above and below", "conduction", Basis::Derived).holds(
        "no zone ever cooler",
        format!("at -10 °C {} °C", shown.join(", ")),
        at_every_step(&runs, |worse, better| {
            better.warm_zone >= worse.warm_zone && better.floor_zone >= worse.floor_zone
        }),
    )
}

fn insulation_never_costs_food_in_cold(parameters: &Parameters) -> Check {
    let wrapped = Dress { lid_foam_mm: 50.0, wall_foam_mm: 25.0, ..Dress::BARE };
    let pairs = [-30.0, -20.0, -10.0, -4.0].map(|outside_c| {
        let at = |dress| ask(parameters, dress, question(outside_c));
        (at(Dress::BARE), at(wrapped))
    });
    let shown = pairs.map(|(bare, wrapped)| format!("{:.1} to {:.1}", bare.heat.get(), wrapped.heat.get()));
    claim(
        "B-hive-4",
        "heat of the bees with wrap and foam lid at -30, -20, -10, -4 °C, air round them below 5 °C",
        "cluster law below its least",
        Basis::Derived,
    )
    .holds(
        "never rises",
        format!("{} W", shown.join(", ")),
        pairs
            .iter()
            .all(|(bare, wrapped)| wrapped.warm_zone.celsius() < 5.0 && wrapped.heat <= bare.heat * (1.0 + 1e-9)),
    )
}

fn wind_raises_loss(parameters: &Parameters) -> Check {
    let at = |outside_c, wind| {
        ask(parameters, Dress::BARE, SteadyQuestion { wind: MetrePerSecond::new(wind), ..question(outside_c) })
    };
    let rows = [-15.0, -5.0, 2.0].map(|outside_c| [0.0, 3.0, 8.0].map(|wind| at(outside_c, wind)));
    let shown = rows[1].map(|answer| format!("{:.2}", answer.heat_loss.get()));
    let rising = |row: &[SteadyAnswer; 3]| row[0].heat_loss < row[1].heat_loss && row[1].heat_loss < row[2].heat_loss;
    claim(
        "B-hive-5",
        "wind of 0, 3, 8 m/s with both entrances open, -15 to +2 °C: loss",
        "wind pressure and films, ISO 6946 and ASHRAE Fundamentals",
        Basis::Derived,
    )
    .holds("rises with wind", format!("at -5 °C {} W/K", shown.join(", ")), rows.iter().all(rising))
}

fn food_a_bee_falls(parameters: &Parameters) -> Check {
    let per_bee = |bees: f64| {
        let answer = ask(parameters, Dress::BARE, SteadyQuestion { bees, ..question(-2.0) });
        answer.food.get() * 86_400e6 / bees
    };
    let [small, middle, large, largest] = [4_400.0, 8_900.0, 18_000.0, 34_000.0].map(per_bee);
    claim(
        "B-hive-6",
        "food a bee and day at 4,400, 8,900, 18,000 and 34,000 bees, -2 °C",
        "Free and Racey 1968, Entomol. exp. appl.; Harbo 1983, Environ. Entomol. 12:1559",
        Basis::Published,
    )
    .holds(
        "falls with size, little above 18,000",
        format!("{small:.1}, {middle:.1}, {large:.1}, {largest:.1} mg"),
        small > middle && middle > large && large > largest && small - large > 2.0 * (large - largest),
    )
}

fn least_power_in_a_hive(parameters: &Parameters) -> Check {
    let at = |outside_c: f64| ask(parameters, FOAM_LID, question(outside_c));
    let grid: Vec<(f64, SteadyAnswer)> =
        (-30..=24).map(|half| f64::from(half) / 2.0).map(|outside_c| (outside_c, at(outside_c))).collect();
    let least = grid.iter().map(|(_, answer)| answer.heat.get()).fold(f64::INFINITY, f64::min);
    let near: Vec<_> = grid.iter().filter(|(_, answer)| answer.heat.get() <= 1.01 * least).collect();
    let middle = |of: fn(&(f64, SteadyAnswer)) -> f64| near.iter().map(|row| of(row)).sum::<f64>() / near.len() as f64;
    let (outside_c, warm_c) = (middle(|row| row.0), middle(|row| row.1.warm_zone.celsius()));
    claim(
        "B-hive-7",
        "outdoor temperature at which heat is within 1 % of the least, its middle; two deeps with a foam lid",
        "Melathopoulos fact sheet for the air round the bees; the shift is that air's excess",
        Basis::Derived,
    )
    .holds(
        "colder than the 3 to 12 °C round the cluster at which that is so",
        format!("{outside_c:.0} °C outdoors, {warm_c:.0} °C round the cluster"),
        outside_c < warm_c && (3.0..=12.0).contains(&warm_c),
    )
}
