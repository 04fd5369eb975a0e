//! What is noted standing at a hive in the snow, and what is answered: a bee that answers, silence, openings shut. The
//! yard is invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::{Date, date};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_apiary::Apiary;

use crate::common::{asked, note};
use snowhum_say::Tongue;

const FEBRUARY: Date = date(2026, 2, 7);
const SILENT: &str = "hum=silent by ear; dead=0 on snow; droppings=none; poke=silent";

fn apiary() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

fn names(apiary: &Apiary) -> Vec<String> {
    apiary.colonies.iter().map(|colony| colony.name.clone()).collect()
}

fn colony<'a>(answer: &'a NowAnswer, name: &str) -> &'a ColonyNow {
    answer.colonies.iter().find(|colony| colony.name == name).unwrap()
}

#[test]
fn a_live_bee_at_the_hole_takes_every_colony_above_99_in_100() {
    let mut yard = apiary();
    for name in names(&yard) {
        note(&mut yard, &name, FEBRUARY, "poke=answered");
    }
    for colony in asked(&yard, FEBRUARY).colonies {
        let before = colony.evidence[0].alive_before;
        assert!(colony.alive > 0.99, "{}: from {before:.3} to {:.4}", colony.name, colony.alive);
    }
}

#[test]
fn a_board_is_said_to_be_reached_only_where_the_cluster_has_come_up_to_it() {
    let mut yard = apiary();
    for name in names(&yard) {
        note(&mut yard, &name, date(2025, 12, 7), "board=3 kg candy, rim 50 mm");
    }
    let answer = asked(&yard, FEBRUARY);
    let body = |name: &str| colony(&answer, name).food_body.clone().unwrap();
    let (hungry, heavy) = (body("Juniper"), body("Alder"));
    assert!(hungry.reached > 0.5 && hungry.left_kg.unwrap().p50 < 2.9, "{hungry:?}");
    assert!(heavy.reached < 0.1 && heavy.left_kg.unwrap().p50 == 3.0, "{heavy:?}");
    assert!(
        Tongue::BRITISH.say(&heavy.says).contains("not reached") && hungry.since == Some(date(2025, 12, 7)),
        "{:?}",
        heavy.says
    );
    let all = colony(&answer, "Alder").stores_kg.total.unwrap().p50;
    assert!(all > 3.0 + colony(&asked(&apiary(), FEBRUARY), "Alder").stores_kg.total.unwrap().p50 - 0.5, "{all}");
}

#[test]
fn a_warm_hand_under_the_lid_raises_a_colony_in_doubt_and_a_cold_one_does_not() {
    let alive = |line: &str| {
        let mut yard = apiary();
        note(&mut yard, "Aspen", FEBRUARY, line);
        let answer = asked(&yard, FEBRUARY);
        let aspen = colony(&answer, "Aspen");
        (aspen.evidence[0].alive_before, aspen.alive)
    };
    let (warm, cold) = (alive("lid=warm"), alive("lid=cold"));
    assert!(warm.1 > warm.0 && cold.1 < cold.0 && cold.1 > 0.3 * cold.0, "{warm:?} {cold:?}");
}

#[test]
fn what_lies_behind_a_guard_is_held_against_a_range_that_can_be_left() {
    let mut yard = apiary();
    note(&mut yard, "Juniper", FEBRUARY, "dead=120 behind guard");
    let answer = asked(&yard, FEBRUARY);
    let usual = colony(&answer, "Juniper").evidence[0].dead_bees[0].usual;
    assert!(usual.least > 50 && usual.most < 40 * usual.least, "{usual:?}");
}

#[test]
fn four_silent_dry_looks_leave_a_colony_that_was_likely_alive_in_doubt_and_no_more() {
    let mut yard = apiary();
    yard.notes.clear();
    let looks = [date(2026, 1, 10), date(2026, 1, 17), date(2026, 1, 24), date(2026, 1, 31)];
    for (name, on) in names(&yard).iter().flat_map(|name| looks.map(|on| (name.clone(), on))) {
        note(&mut yard, &name, on, SILENT);
    }
    let answer = asked(&yard, date(2026, 1, 31));
    let told: Vec<(f64, f64, &str)> = answer
        .colonies
        .iter()
        .map(|colony| (colony.evidence.last().unwrap().alive_before, colony.alive, colony.name.as_str()))
        .collect();
    let likely: Vec<_> = told.iter().filter(|(before, ..)| *before > 0.85).collect();
    assert!(likely.len() >= 2, "few were likely alive: {told:?}");
    for (_, after, name) in likely {
        assert!((0.3..0.8).contains(after), "{name}: {told:.3?}");
    }
}

#[test]
fn an_opening_noted_shut_is_told_with_its_day_until_it_is_noted_cleared() {
    let mut yard = apiary();
    note(&mut yard, "Alder", date(2026, 1, 3), "upper=blocked");
    note(&mut yard, "Alder", date(2026, 1, 8), "upper=not visible; entrance=clear");
    let (blocked, name) = (asked(&yard, date(2026, 1, 9)), "Alder");
    let told = "upper hole noted blocked on 3 January";
    assert!(
        colony(&blocked, name).beside.iter().any(|line| Tongue::BRITISH.say(line).starts_with(told)),
        "{:?}",
        colony(&blocked, name)
    );
    assert_eq!(colony(&blocked, name).expect_next.frost_at_hole, None, "nobody sees rime at a hole that is shut");
    let says = |answer: &NowAnswer, what: &str| {
        colony(answer, name).actions.iter().any(|action| Tongue::BRITISH.say(&action.what).contains(what))
    };
    let clears = |answer: &NowAnswer| says(answer, "clear the upper hole");
    assert!(!colony(&blocked, name).nothing_helps, "clearing it is something");
    assert!(clears(&blocked), "{:?}", colony(&blocked, name).actions);
    assert!(!says(&blocked, "entrance"), "that one is clear");
    note(&mut yard, "Alder", date(2026, 1, 9), "upper=cleared");
    let cleared = asked(&yard, date(2026, 1, 9));
    assert!(!colony(&cleared, name).beside.iter().any(|line| Tongue::BRITISH.say(line).contains("noted")));
    assert!(!clears(&cleared) && colony(&cleared, name).expect_next.frost_at_hole.is_some());
}
