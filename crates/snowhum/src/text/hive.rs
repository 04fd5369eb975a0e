//! One hive at steady weather in words.

use snowhum_advice::HiveAnswer;
use snowhum_apiary::Hive;
use snowhum_say::hive_terminal as say;
use snowhum_units::{CubicMetrePerSecond, Kelvin, Kilogram, Metre, WattPerKelvin};
use snowhum_winter::{SteadyQuestion, UpperHole};

use crate::text::entry;
use crate::text::voice::in_words;

pub(crate) fn words(name: &str, hive: &Hive, question: &SteadyQuestion, answer: &HiveAnswer) -> String {
    in_words(&say::head(&hive.standard, name, question.outside))
        + "\n\n"
        + &warmth(question, answer)
        + &air(answer)
        + &water(answer)
        + &entry(say::hole(), say::hole_is(upper_hole(answer.upper_hole)))
        + &entry(say::loss(), say::loses(WattPerKelvin::new(answer.heat_loss_w_per_k)))
}

fn grams(grams: f64) -> Kilogram {
    Kilogram::new(grams / 1e3)
}

fn warmth(question: &SteadyQuestion, answer: &HiveAnswer) -> String {
    if let Some(heater) = question.heater {
        return entry(say::heater(), say::heated(heater.get()));
    }
    let across = Metre::new(2.0 * answer.radius_cm / 100.0);
    let [core, mantle] = [answer.core_c, answer.mantle_c].map(Kelvin::from_celsius);
    let (food, water) = (grams(answer.food_g_per_day), grams(answer.water_g_per_day));
    entry(say::cluster(), say::bees(across, question.bees, core, mantle))
        + &entry(say::heat(), say::warmth(food, water, answer.heat_w))
}

fn air(answer: &HiveAnswer) -> String {
    let [around, bottom] = [answer.warm_zone_c, answer.floor_zone_c].map(Kelvin::from_celsius);
    let faces = &answer.surface_c;
    let [lid, walls, below, floor] = [faces.lid, faces.walls, faces.lower_walls, faces.floor].map(Kelvin::from_celsius);
    let flow = CubicMetrePerSecond::new(1e-3 * answer.air_flow_l_per_s);
    let airs = say::airs(around, bottom, flow, answer.humidity_percent, answer.co2_percent);
    entry(say::air(), airs) + &entry(say::faces(), say::face(below, floor, lid, walls))
}

fn water(answer: &HiveAnswer) -> String {
    let caught = &answer.condensation_g_per_day;
    let drips = grams(answer.drip_on_cluster_g_per_day);
    entry(say::water(), say::caught(drips, grams(caught.floor), grams(caught.lid), grams(caught.walls)))
}

fn upper_hole(hole: UpperHole) -> &'static str {
    match hole {
        UpperHole::None => "none",
        UpperHole::Dry => "dry",
        UpperHole::Damp => "damp",
        UpperHole::Frost => "frost",
    }
}
