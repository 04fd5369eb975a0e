//! Set-ups: one price for a change however it is written, one verdict on a difference. The yard is invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_advice::answer::Condensation;
use snowhum_advice::setup::{SetupRow, SetupVerdict, Try, WrongChange};
use snowhum_advice::yard::housed;
use snowhum_apiary::Apiary;
use snowhum_winter::Parameters;

fn demo() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

/// The first hive of the demo after some changes.
fn tried(changes: &[&str]) -> Result<Try, WrongChange> {
    let yard = demo();
    Try::of(String::new(), &housed(&yard)[0], changes, (&yard.money, &Parameters::shipped().unwrap()))
}

fn cost(changes: &[&str]) -> f64 {
    tried(changes).unwrap().cost
}

#[test]
fn a_change_costs_what_it_is_and_not_how_it_is_written() {
    let money = demo().money;
    for lid in ["lid=50 mm foam", "Lid=50 mm foam", " LID = foam 50 mm", "quilt=straw 60 mm"] {
        assert!((cost(&[lid]) - money.lid).abs() < 1e-9, "{lid}");
    }
    assert!((cost(&["lid=50 mm foam", "wrap=felt paper"]) - money.lid - money.wrap).abs() < 1e-9);
    for free in ["lid=off", "lid=bare", "lid=NONE", "wrap=off", "upper hole=25 mm", "floor=open mesh"] {
        assert!(cost(&[free]).abs() < 1e-9, "{free}");
    }
}

#[test]
fn a_hive_that_its_bees_cannot_leave_is_no_set_up_and_one_way_out_is_enough() {
    let wrong = tried(&["upper hole=off", "entrance=off"]).unwrap_err().to_string();
    assert!(wrong.contains("void themselves") && wrong.contains("carbon dioxide"), "{wrong}");
    assert!(tried(&["entrance=off", "upper hole=25 mm"]).is_ok() && tried(&["upper hole=off"]).is_ok());
}

#[test]
fn a_change_that_cannot_be_made_is_named() {
    let wrong = tried(&["wrap=off", "colour=red"]).unwrap_err();
    assert_eq!(wrong.change, "colour=red");
    assert!(wrong.to_string().contains("lid=50 mm foam"), "{wrong}");
}

fn verdict(difference: f64, too_close: bool) -> SetupVerdict {
    let row = SetupRow {
        name: snowhum_say::Message::NONE,
        alive_in_spring: 0.8,
        food_kg: 10.0,
        condensation_g_per_day: Condensation { lid: 0.0, walls: 0.0, floor: 0.0 },
        drip_on_cluster_g_per_day: 0.0,
        heat_loss_w_per_k: 1.0,
        cost_money: 0.0,
        difference_hives_in_100: difference,
        plus_minus: 1.0,
        too_close_to_call: too_close,
    };
    row.verdict()
}

#[test]
fn a_difference_is_one_only_where_it_is_no_chance_and_worth_the_trouble() {
    assert_eq!(verdict(9.0, true), SetupVerdict::MayBeChance);
    assert_eq!(verdict(1.9, false), SetupVerdict::Hardly);
    assert_eq!(verdict(-1.9, false), SetupVerdict::Hardly);
    assert_eq!(verdict(2.0, false), SetupVerdict::Better);
    assert_eq!(verdict(-2.0, false), SetupVerdict::Worse);
}
