//! Sugar for a shortage: syrup, cups, slabs and frames, against published kitchen tables and practice.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::date;
use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::boxes::{box_named, standard_named};
use snowhum_advice::sums::feed::{FeedAnswer, FeedQuestion, Season, feed};
use snowhum_advice::syrup::{STORES_PER_FONDANT, STORES_PER_SUGAR};
use snowhum_say::{Message, Tongue};
use snowhum_units::{CubicMetre, Kilogram, Metre};

fn said(message: &Message) -> String {
    Tongue::BRITISH.say(message)
}

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn short(kg: f64) -> FeedQuestion {
    FeedQuestion {
        short: Kilogram::new(kg),
        season: Season::Autumn,
        as_of: None,
        syrup_by: None,
        feeder: None,
        hive: "Langstroth, 10 frames".to_owned(),
        hive_box: box_named(standard_named("Langstroth 10").unwrap(), "deep").unwrap(),
        slab: None,
    }
}

/// The answer for so much sugar, fed as syrup.
fn sugar(kg: f64, season: Season) -> FeedAnswer {
    feed(&FeedQuestion { season, ..short(kg * STORES_PER_SUGAR) }).unwrap()
}

fn strengths(answer: &FeedAnswer) -> Vec<&str> {
    answer.syrup.iter().map(|syrup| syrup.strength.as_str()).collect()
}

#[test]
fn kitchen_tables_are_met_within_their_own_spread() {
    // Sugar and water weighed, litres made: Swedish Beekeepers' Association 10 kg + 6.7 L = 12.7 L; German leaflet
    // 3 kg + 2 L = 3.75 L and 1 kg + 1 L = 1.5 L. Tables differ from each other by 5 %, the last by 8 %.
    let three_to_two = &sugar(10.0, Season::Autumn).syrup[1];
    near(three_to_two.syrup_l, 12.7, 0.05 * 12.7);
    near(three_to_two.water_l, 6.7, 0.05);
    near(sugar(3.0, Season::Autumn).syrup[1].syrup_l, 3.75, 0.05 * 3.75);
    near(sugar(1.0, Season::Spring).syrup[0].syrup_l, 1.5, 0.09 * 1.5);
}

#[test]
fn litres_and_sugar_are_those_of_the_density() {
    // 15 L of 2:1 hold 13.3 kg of sugar, four imperial gallons (18.2 L) 16.1 kg.
    near(sugar(13.3, Season::Autumn).syrup[0].syrup_l, 15.0, 0.1);
    near(sugar(16.1, Season::Autumn).syrup[0].syrup_l, 18.2, 0.1);
}

#[test]
fn water_to_dry_away_is_what_is_over_a_quarter_of_the_sugar() {
    let [two, three] = &sugar(1.0, Season::Autumn).syrup[..] else { panic!("two strengths in autumn") };
    near(two.water_to_evaporate_kg, 0.25, 1e-9);
    near(three.water_to_evaporate_kg, 0.42, 0.006);
    near(sugar(1.0, Season::Spring).syrup[0].water_to_evaporate_kg, 0.75, 1e-9);
}

#[test]
fn no_thin_syrup_in_autumn_and_none_in_winter() {
    assert_eq!(strengths(&sugar(5.0, Season::Autumn)), ["2:1", "3:2"]);
    assert_eq!(strengths(&sugar(5.0, Season::Winter)), [""; 0]);
    assert_eq!(strengths(&sugar(5.0, Season::Spring)), ["1:1", "3:2"]);
}

#[test]
fn syrup_whose_day_has_passed_is_not_offered() {
    let on = |day| {
        let dates = FeedQuestion { as_of: Some(day), syrup_by: Some(date(2026, 9, 10)), ..short(8.0) };
        feed(&dates).unwrap()
    };
    let late = on(date(2026, 9, 20));
    assert_eq!((late.days_left, late.syrup.len()), (Some(-10), 0));
    assert_eq!(late.syrup_says.id(), Some("feed-syrup-too-late"));
    let early = on(date(2026, 7, 31));
    assert_eq!(early.days_left, Some(41));
    near(early.syrup[0].syrup_l_per_day.unwrap() * 41.0, early.syrup[0].syrup_l, 0.21);
}

#[test]
fn two_cups_to_one_are_not_two_to_one() {
    let cups = sugar(5.0, Season::Autumn).by_volume;
    let two = cups.iter().find(|cups| cups.volumes == "2:1").unwrap();
    near(two.sugar_per_water_by_weight, 1.7, 0.01);
    near(two.sugar_percent, 63.0, 0.2);
    near(two.meant_percent, 66.7, 0.05);
}

#[test]
fn five_centimetres_of_damp_sugar_on_ten_frames_are_about_eight_kilograms() {
    let answer = feed(&FeedQuestion { slab: Some(Metre::new(0.05)), ..short(5.0) }).unwrap();
    let kind = |name: &str| answer.solid.iter().find(|solid| said(&solid.what).contains(name)).unwrap();
    near(kind("damp").slab_kg.unwrap(), 8.2, 0.3);
    // Kilograms a centimetre on 46.5 by 37 cm: dry 1.46, damp 1.63, cooked 2.20, fondant 2.37.
    let small = 46.5 * 37.0 / (46.7 * 37.5);
    for (name, kg) in [("dry", 1.46), ("damp", 1.63), ("cooked", 2.20), ("fondant", 2.37)] {
        near(kind(name).kg_per_cm * small, kg, 0.01);
    }
}

#[test]
fn solid_feed_is_matched_by_its_sugar_as_the_plan_does() {
    let answer = feed(&short(5.0)).unwrap();
    let fondant = answer.solid.iter().find(|solid| said(&solid.what).contains("fondant")).unwrap();
    near(fondant.kg, 5.0 / STORES_PER_FONDANT, 0.006);
    near(fondant.thickness_mm, 10.0 * fondant.kg / fondant.kg_per_cm, 0.51);
}

#[test]
fn frames_and_feeders_are_counted() {
    let answer = feed(&FeedQuestion { feeder: Some(CubicMetre::new(0.006)), ..short(8.0) }).unwrap();
    // A deep frame of 8.7 dm² holds 2.8 kg at 0.32 kg/dm².
    near(answer.frames.full_frame_kg.p50, 2.8, 0.05);
    near(answer.frames.frames, 2.9, 0.05);
    near(answer.syrup[0].feeder_fills.unwrap() * 6.0, answer.syrup[0].syrup_l, 0.31);
    near(answer.sugar_kg.least, 8.0 / 1.2, 0.006);
    near(answer.sugar_kg.most, 8.0, 1e-9);
}

#[test]
fn hot_sugar_is_cautioned_and_what_not_to_feed_is_said() {
    let answer = feed(&short(8.0)).unwrap();
    assert!(answer.cautions.iter().any(|caution| said(caution).contains("115 °C")));
    assert!(answer.never.iter().all(|never| !never.what.is_none() && !never.why.is_none()));
    for what in ["brown sugar", "honey of unknown", "vinegar"] {
        assert!(answer.never.iter().any(|never| said(&never.what).contains(what)), "{what}");
    }
}

#[test]
fn sizes_that_cannot_be_are_refused() {
    assert!(matches!(feed(&short(-1.0)), Err(SumFault::OutOfRange { .. })));
    assert!(matches!(feed(&short(f64::NAN)), Err(SumFault::OutOfRange { .. })));
    assert!(feed(&FeedQuestion { slab: Some(Metre::new(2.0)), ..short(5.0) }).is_err());
    assert!(feed(&FeedQuestion { feeder: Some(CubicMetre::ZERO), ..short(5.0) }).is_err());
    assert!(matches!(standard_named("Bathtub"), Err(SumFault::Unknown { .. })));
    assert!(box_named(standard_named("Langstroth 10").unwrap(), "cellar").is_err());
}
