//! Heat of two kilograms of bees over the temperature of the air about them.

use snowhum_testkit::Dress;
use snowhum_units::{Kelvin, Kilogram};
use snowhum_winter::{Parameters, cluster_at};

use crate::hives::{FOAM_LID, ask, question};
use crate::numbers::{QUIET_G_A_DAY, TARGET_CURVE, TARGET_PART, TIGHT_CLUSTER};
use crate::picture::{Axis, Face, Fill, Mark, Picture, Sample, Sheet, Stroke};

/// Heat of a gram of honey a day, W (12.72 MJ/kg: USDA FoodData Central).
const W_PER_G_A_DAY: f64 = 12_720.0 / 86_400.0;

pub(super) fn picture(parameters: &Parameters) -> Picture {
    let temperatures = || (-64..=28).map(|half| f64::from(half) / 2.0);
    let in_hive = |dress: Dress| -> Vec<(f64, f64)> {
        temperatures().map(|t_c| (t_c, ask(parameters, dress, question(t_c)).heat.get())).collect()
    };
    let alone: Vec<(f64, f64)> = temperatures()
        .map(|t_c| (t_c, cluster_at(parameters, Kilogram::new(2.0), Kelvin::from_celsius(t_c)).heat.get()))
        .collect();
    let (bare, foam) = (in_hive(Dress::BARE), in_hive(FOAM_LID));
    let face = Face {
        file: "cluster-heat.svg",
        title: "Heat of 2 kg of bees without brood".to_owned(),
        description: described(&bare, &foam),
    };
    let quiet_w = QUIET_G_A_DAY.map(|grams| grams * W_PER_G_A_DAY);
    let mut sheet = Sheet::new(
        face,
        52.0,
        Axis::numbers("air outdoors, or round a cluster alone, °C", -35, 15, 5),
        Axis::numbers("heat, W", 0, 14, 2),
    )
    .block([-10.0, 4.0], quiet_w, Fill::Expected)
    .line(&alone, Stroke::Dotted)
    .line(&foam, Stroke::Dashed)
    .line(&bare, Stroke::Solid);
    for (t_c, heat_w) in TARGET_CURVE {
        let [low, high] = [1.0 - TARGET_PART, 1.0 + TARGET_PART].map(|part| part * heat_w);
        sheet = sheet.whisker(t_c, [low, high]).mark((t_c, heat_w), Mark::Square);
    }
    for (t_c, heat_w) in TIGHT_CLUSTER {
        sheet = sheet.mark((t_c, heat_w), Mark::Diamond);
    }
    sheet
        .key(&[
            (Sample::Line(Stroke::Solid), "computed: two bare deeps"),
            (Sample::Whiskered(Mark::Square), "expected in thin wood, within 40 %"),
            (Sample::Line(Stroke::Dashed), "computed: with a foam lid"),
            (Sample::Area(Fill::Expected), "quiet hives, 22 to 50 g of food a day"),
            (Sample::Line(Stroke::Dotted), "computed: the cluster alone, still air"),
            (Sample::Mark(Mark::Diamond), "tightest cluster, 3 and 6 W/kg"),
        ])
        .finished()
}

fn described(bare: &[(f64, f64)], foam: &[(f64, f64)]) -> String {
    let at = |course: &[(f64, f64)], t_c: f64| course.iter().find(|(t, _)| *t == t_c).map_or(f64::NAN, |(_, w)| *w);
    format!(
        "Computed heat over outdoor temperature: {:.1} W at -30 °C, {:.1} W at -10 °C and {:.1} W at +4 °C in two bare deeps \
         (solid line), {:.1}, {:.1} and {:.1} W with a foam lid (dashed), and the cluster alone in still air (dotted).",
        at(bare, -30.0),
        at(bare, -10.0),
        at(bare, 4.0),
        at(foam, -30.0),
        at(foam, -10.0),
        at(foam, 4.0),
    )
}
