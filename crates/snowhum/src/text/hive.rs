//! One hive at steady weather in words.

use snowhum_advice::HiveAnswer;
use snowhum_apiary::Hive;
use snowhum_units::{Kelvin, Kilogram, Metre, System};
use snowhum_winter::{SteadyQuestion, UpperHole};

use crate::text::entry;

pub(crate) fn words(name: &str, hive: &Hive, question: &SteadyQuestion, answer: &HiveAnswer, system: System) -> String {
    let outside = question.outside.show(system, 1);
    let mut page = format!("{name}, {}, {outside} outside, settled\n\n", hive.standard);
    page += &warmth(question, answer, system);
    page += &air(answer, system);
    page += &water(answer, system);
    page += &entry("Upper hole", upper_hole(answer.upper_hole));
    page += &entry("Heat loss", &format!("{:.2} W for each kelvin over outdoors", answer.heat_loss_w_per_k));
    page
}

fn degrees(celsius: f64, system: System) -> String {
    Kelvin::from_celsius(celsius).show(system, 1)
}

/// Grams, or ounces.
fn small(grams: f64, system: System) -> String {
    match system {
        System::Metric => format!("{grams:.1} g"),
        System::Us => format!("{:.2} oz", Kilogram::new(grams / 1e3).get() / 0.028_349_523),
    }
}

fn warmth(question: &SteadyQuestion, answer: &HiveAnswer, system: System) -> String {
    if let Some(heater) = question.heater {
        return entry("Heater", &format!("{:.1} W in place of the bees", heater.get()));
    }
    let across = Metre::new(2.0 * answer.radius_cm / 100.0).show(system, 0);
    let (core, mantle) = (degrees(answer.core_c, system), degrees(answer.mantle_c, system));
    let (food, water) = (small(answer.food_g_per_day, system), small(answer.water_g_per_day, system));
    entry("Cluster", &format!("{:.0} bees, {across} across; core {core}, mantle {mantle}", question.bees))
        + &entry(
            "Heat",
            &format!("{:.1} W, from {food} of stores a day, which also give {water} of water", answer.heat_w),
        )
}

fn air(answer: &HiveAnswer, system: System) -> String {
    let t = |celsius| degrees(celsius, system);
    let s = &answer.surface_c;
    let air = format!(
        "{} round the cluster, {} at the floor; {:.2} L/s goes through, {:.0} % humid, {:.2} % carbon dioxide",
        t(answer.warm_zone_c),
        t(answer.floor_zone_c),
        answer.air_flow_l_per_s,
        answer.humidity_percent,
        answer.co2_percent
    );
    let faces = format!("lid {}, walls {} (below {}), floor {}", t(s.lid), t(s.walls), t(s.lower_walls), t(s.floor));
    entry("Air", &air) + &entry("Faces", &faces)
}

fn water(answer: &HiveAnswer, system: System) -> String {
    let g = |grams| small(grams, system);
    let w = &answer.condensation_g_per_day;
    let drip = g(answer.drip_on_cluster_g_per_day);
    let caught = format!("caught a day: lid {}, walls {}, floor {}", g(w.lid), g(w.walls), g(w.floor));
    entry("Water", &format!("{caught}; {drip} drips on the cluster"))
}

fn upper_hole(hole: UpperHole) -> &'static str {
    match hole {
        UpperHole::None => "there is none",
        UpperHole::Dry => "dry",
        UpperHole::Damp => "a wet rim: breath, a sign of life",
        UpperHole::Frost => "frost: breath, a sign of life",
    }
}
