//! One hive at steady weather in words.

use snowhum_advice::HiveAnswer;
use snowhum_apiary::Hive;
use snowhum_units::{Kelvin, Kilogram, Metre, System};
use snowhum_winter::{SteadyQuestion, UpperHole};

use crate::text::entry;

pub(crate) fn words(
    name: &str,
    hive: &Hive,
    question: &SteadyQuestion,
    answer: &HiveAnswer,
    system: System,
) -> String {
    let t = |celsius: f64| Kelvin::from_celsius(celsius).show(system, 1);
    let small = |grams: f64| match system {
        System::Metric => format!("{grams:.1} g"),
        System::Us => format!("{:.2} oz", Kilogram::new(grams / 1e3).get() / 0.028_349_523),
    };
    let mut page = format!(
        "{name}, {}, {} outside, settled\n\n",
        hive.standard,
        question.outside.show(system, 1)
    );
    match question.heater {
        Some(watt) => page += &entry("Heater", &format!("{:.1} W in place of the bees", watt.get())),
        None => {
            page += &entry(
                "Cluster",
                &format!(
                    "{:.0} bees, {} across; core {}, mantle {}",
                    question.bees,
                    Metre::new(2.0 * answer.radius_cm / 100.0).show(system, 0),
                    t(answer.core_c),
                    t(answer.mantle_c)
                ),
            );
            page += &entry(
                "Heat",
                &format!(
                    "{:.1} W, from {} of stores a day, which also give {} of water",
                    answer.heat_w,
                    small(answer.food_g_per_day),
                    small(answer.water_g_per_day)
                ),
            );
        }
    }
    page += &entry(
        "Air",
        &format!(
            "{} round the cluster, {} at the floor; {:.2} L/s goes through, {:.0} % humid, {:.2} % carbon dioxide",
            t(answer.warm_zone_c),
            t(answer.floor_zone_c),
            answer.air_flow_l_per_s,
            answer.humidity_percent,
            answer.co2_percent
        ),
    );
    let s = &answer.surface_c;
    page += &entry("Faces", &format!("lid {}, walls {}, floor {}", t(s.lid), t(s.walls), t(s.floor)));
    let water = &answer.condensation_g_per_day;
    page += &entry(
        "Water",
        &format!(
            "a day, lid {}, walls {}, floor {} caught; {} drips on the cluster",
            small(water.lid),
            small(water.walls),
            small(water.floor),
            small(answer.drip_on_cluster_g_per_day)
        ),
    );
    page += &entry("Upper hole", upper_hole(answer.upper_hole));
    page += &entry("Heat loss", &format!("{:.2} W for each kelvin over outdoors", answer.heat_loss_w_per_k));
    page
}

fn upper_hole(hole: UpperHole) -> &'static str {
    match hole {
        UpperHole::None => "there is none",
        UpperHole::Dry => "dry",
        UpperHole::Damp => "a wet rim: breath, a sign of life",
        UpperHole::Frost => "frost: breath, a sign of life",
    }
}
