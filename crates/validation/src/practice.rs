//! What the trade finds, without a measurement that could be named.

use snowhum_testkit::{Dress, langstroth};
use snowhum_winter::{Daily, Parameters};

use crate::check::{Band, Basis, Check, Claim, Class};
use crate::winters::{MARCH_TO_APRIL, NOVEMBER_TO_JANUARY, Winter};

/// Yearly means, °C.
const CENTRAL_EUROPE: f64 = 9.0;
const NORTH: f64 = 3.5;

/// Feed, frames and food.
pub(crate) fn checks(parameters: &Parameters) -> Vec<Check> {
    let claim = |id, quantity, source, status| Claim { id, class: Class::Practice, quantity, source, status };
    let central = Winter::fed(parameters, 18_000.0, CENTRAL_EUROPE);
    let month = |days| 30.4 * central.mean(Daily::Eaten, days);
    let north = Winter::fed(parameters, 18_000.0, NORTH);
    vec![
        claim(
            "P-feed-1",
            "5 cm of damp sugar over a ten-frame box (about 8 kg)",
            "common practice; damp sugar 0.95 kg/L from memory",
            Basis::CommonPractice,
        )
        .within(Band::new(7.0, 9.0, "kg", 1), candy_board()),
        claim(
            "P-feed-2",
            "20 full deep frames in two boxes (10 frames hold 32 kg)",
            "CAPA, as quoted: 70 lb in ten deep frames; comb 25 mm, 95 % filled",
            Basis::CommonPractice,
        )
        .within(Band::new(51.0, 77.0, "kg", 0), twenty_frames()),
        claim(
            "P-food-1",
            "food a month while broodless, November to January (about 1 kg)",
            "central European practice, as in bienen & natur",
            Basis::CommonPractice,
        )
        .within(Band::new(0.7, 1.5, "kg", 1), month(NOVEMBER_TO_JANUARY)),
        claim(
            "P-food-2",
            "food a month with brood, March and April (about 3 kg)",
            "central European practice, as in bienen & natur",
            Basis::CommonPractice,
        )
        .within(Band::new(2.0, 4.0, "kg", 1), month(MARCH_TO_APRIL)),
        claim(
            "P-food-3",
            "food used to mid-May by nine in ten of 18,000 bees in a northern place, and 3 kg to spare",
            "winter feed by rule of thumb in Sweden, one or two boxes: 16 to 25 kg",
            Basis::CommonPractice,
        )
        .within(Band::new(16.0, 25.0, "kg", 1), north.used_by_nine_in_ten() + 3.0)
        .because(
            "nine in ten use less by mid-May than the trade feeds; its figures carry what bees leave behind in far combs, \
             brooding winters and the keeper's caution. The computed need is the smaller one: add to it rather than trust it \
             to the kilogram",
        ),
    ]
}

/// kg.
fn candy_board() -> f64 {
    const DEPTH_M: f64 = 0.05;
    const DAMP_SUGAR_KG_M3: f64 = 950.0;
    let hive = langstroth(Dress::BARE);
    let plan = hive.boxes.first().map_or(f64::NAN, |one| (one.length * one.width).get());
    plan * DEPTH_M * DAMP_SUGAR_KG_M3
}

/// kg.
fn twenty_frames() -> f64 {
    const COMB_M: f64 = 0.025;
    const FILLED: f64 = 0.95;
    const HONEY_KG_M3: f64 = 1_420.0;
    let hive = langstroth(Dress::BARE);
    hive.boxes.iter().map(|one| f64::from(one.frames) * one.comb_side.get()).sum::<f64>()
        * COMB_M
        * FILLED
        * HONEY_KG_M3
}
