//! What is told of hives that winter indoors. The yard is the invented demo's, with a cellar.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::ToSpan;
use jiff::civil::{Date, date};
use snowhum_advice::answer::ActionKind;
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::verdict::{ColonyFirst, Task};
use snowhum_advice::{PlanQuestion, plan};
use snowhum_apiary::Apiary;
use snowhum_say::{Message, Tongue};
use snowhum_watch::Sizes;

use crate::common;

const FEBRUARY: Date = date(2026, 2, 7);

/// The demo, with a cellar for all of its hives or for Larch alone.
fn with_cellar(temperature: &str, for_all: bool, visits: &str) -> Apiary {
    let room = format!(
        "[[indoors]]\nname = \"Cellar\"\ntemperature = \"{temperature}\"\nin = 2025-11-10\nout = 2026-04-01\n\n[site]"
    );
    let demo = snowhum_apiary::demo_text().replacen("[site]", &room, 1);
    let demo = match for_all {
        true => demo.replacen("invented = true", "invented = true\nindoors = \"Cellar\"", 1),
        false => demo.replacen("name = \"Larch\"\nkind", "name = \"Larch\"\nindoors = \"Cellar\"\nkind", 1),
    };
    snowhum_apiary::read(&format!("{demo}{visits}"), "demo").unwrap().0
}

fn visit(at: &str, seen: &str) -> String {
    format!("\n[[visit]]\nat = {at}\nair = \"8 C\"\n[visit.seen]\nLarch = \"{seen}\"\n")
}

fn asked<T>(apiary: &Apiary, as_of: Date, answer: impl FnOnce(PlanQuestion<'_>) -> T) -> T {
    let parameters = snowhum_winter::Parameters::shipped().unwrap();
    let (winter, autumn, spring) = common::weather(apiary);
    answer(PlanQuestion {
        apiary,
        winter: &winter,
        autumn: &autumn,
        autumn_from: common::autumn_from(apiary),
        as_of,
        spring,
        parameters: &parameters,
        members: 128,
        seed: 1,
    })
}

fn planned(apiary: &Apiary) -> PlanAnswer {
    asked(apiary, apiary.as_of, |question| plan(&question))
}

fn now(apiary: &Apiary, as_of: Date) -> NowAnswer {
    let (signs, thresholds) = (snowhum_watch::Parameters::shipped().unwrap(), Thresholds::shipped().unwrap());
    asked(apiary, as_of.saturating_add(1.days()), |plan| {
        let sizes = Sizes { alive: 200, dead: 80 };
        let (signs, thresholds) = (&signs, &thresholds);
        let ground = Ground::of(NowQuestion { plan, as_of, known_hours: 0, signs, thresholds, sizes, last: &[] });
        ground.now(&ground.watch())
    })
}

fn year(apiary: &Apiary, as_of: Date) -> JobsAnswer {
    common::site_windows(apiary, as_of, 64, 1)
}

fn said(message: &Message) -> String {
    Tongue::BRITISH.say(message)
}

fn larch(first: &[ColonyFirst]) -> &ColonyFirst {
    first.iter().find(|one| one.name == "Larch").unwrap()
}

#[test]
fn the_plan_says_where_a_hive_is_to_winter_and_offers_it_no_wrap() {
    let indoors = planned(&with_cellar("4 C", false, ""));
    let told = larch(&indoors.first.colonies).indoors.clone().unwrap();
    assert_eq!((told.from, told.until), (date(2025, 11, 10), Some(date(2026, 4, 1))));
    assert!(
        !told.is_in
            && said(&told.says).contains("go into Cellar on 10 November")
            && said(&told.says).contains("1 April"),
        "{told:?}"
    );
    assert!(told.minds.is_empty(), "{told:?}");
    assert!(indoors.first.colonies.iter().filter(|one| one.name != "Larch").all(|one| one.indoors.is_none()));
    let of = |plan: &PlanAnswer| {
        let colony = plan.colonies.iter().find(|one| one.name == "Larch").unwrap();
        let wraps = colony.actions.iter().any(|action| action.kind == ActionKind::Wrap)
            || larch(&plan.first.colonies).steps.iter().any(|step| step.task == Task::Wrap);
        let eaten: f64 = colony.food_g_per_day.iter().map(|month| month.range.p50).sum();
        (wraps, eaten)
    };
    let outdoors = planned(&snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0);
    let ((wraps, eaten), (_, outdoors)) = (of(&indoors), of(&outdoors));
    assert!(!wraps && eaten < outdoors, "{eaten} g against {outdoors} g a day, summed over months");
}

#[test]
fn a_yard_without_a_room_says_nothing_of_rooms() {
    let demo = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    let json = serde_json::to_string(&planned(&demo)).unwrap() + &serde_json::to_string(&now(&demo, FEBRUARY)).unwrap();
    assert!(!json.contains("\"indoors\""), "not even a key");
}

#[test]
fn while_all_hives_stand_indoors_nobody_waits_for_a_flight() {
    let all = now(&with_cellar("4 C", true, ""), date(2026, 3, 20));
    assert!(all.flight_day.is_none() && all.open_first.is_empty(), "{:?} {:?}", all.flight_day, all.open_first);
    for colony in &all.colonies {
        let next = &colony.expect_next;
        assert!(next.indoors && next.flight == 0.0 && next.frost_at_hole.is_none(), "{next:?}");
        assert!((next.air_c - 4.0).abs() < 0.6, "{next:?}");
    }
    let living: Vec<&ColonyFirst> = all.first.colonies.iter().filter(|one| one.if_not.is_some()).collect();
    assert!(living.len() > 2 && living.iter().all(|one| one.is_indoors()), "{living:?}");
}

#[test]
fn a_plan_that_nobody_noted_is_told_as_a_plan_and_doubted_where_notes_speak_against_it() {
    let planned = now(&with_cellar("4 C", false, ""), FEBRUARY);
    let told = larch(&planned.first.colonies).indoors.as_ref().unwrap();
    assert!(told.is_in && !told.is_noted && said(&told.says).contains("carried=into Cellar"), "{told:?}");
    let colony = planned.colonies.iter().find(|one| one.name == "Larch").unwrap();
    assert!(
        colony.beside.iter().any(|beside| Tongue::BRITISH.say(beside).contains("seen outdoors alone")),
        "{:?}",
        colony.beside
    );
    let noted = now(&with_cellar("4 C", false, &visit("2025-11-20T15:00:00", "carried=into Cellar")), FEBRUARY);
    let told = larch(&noted.first.colonies).indoors.as_ref().unwrap();
    assert_eq!((told.from, told.is_noted), (date(2025, 11, 20), true), "the day noted moves the plan");
    assert!(said(&told.says).contains("since 20 November"), "{told:?}");
}

#[test]
fn no_flight_noted_indoors_changes_no_chance() {
    let carried = visit("2025-11-10T15:00:00", "carried=into Cellar");
    let none = format!("{carried}{}", visit("2026-02-03T12:00:00", "flight=none; pollen=no"));
    let alive = |visits: &str| {
        let answer = now(&with_cellar("4 C", false, visits), FEBRUARY);
        answer.colonies.iter().find(|one| one.name == "Larch").unwrap().alive
    };
    assert_eq!(alive(&carried), alive(&none));
}

#[test]
fn hives_are_carried_on_their_own_days_and_left_out_of_what_is_done_outdoors() {
    let october = date(2025, 10, 5);
    let one = year(&with_cellar("4 C", false, ""), october);
    let into = one.window("cellar-in").unwrap();
    assert_eq!(
        (said(&into.what), into.usual, into.colonies.len()),
        ("Into Cellar".to_owned(), Some(date(2025, 11, 10)), 1)
    );
    assert!(said(&into.caution.as_ref().unwrap().says).contains("carbon dioxide"), "{into:?}");
    assert!(into.other_school.as_ref().unwrap().id() == Some("jobs-by-weather"), "{into:?}");
    assert_eq!(one.window("cellar-out").unwrap().usual, Some(date(2026, 4, 1)));
    assert!(!one.window("wrap").unwrap().colonies.contains(&"Larch".to_owned()));
    let all = year(&with_cellar("4 C", true, ""), october);
    assert!(["wrap", "unwrap", "melt-check", "winter-yard"].iter().all(|id| all.window(id).is_none()));
    let noted = with_cellar("4 C", false, &visit("2025-11-20T15:00:00", "carried=into Cellar"));
    let december = year(&noted, date(2025, 12, 1));
    assert!(december.window("cellar-in").is_none(), "it is done");
    assert_eq!(december.window("cellar-out").unwrap().usual, Some(date(2026, 4, 1)));
}

#[test]
fn a_room_too_warm_or_too_cold_is_spoken_of_wherever_it_matters() {
    for (temperature, word) in [("4 C to 11 C", "too warm at 11 °C"), ("-6 C to 2 C", "cold at -6 °C")] {
        let yard = with_cellar(temperature, false, "");
        let answer = now(&yard, FEBRUARY);
        let colony = answer.colonies.iter().find(|one| one.name == "Larch").unwrap();
        assert!(colony.beside.iter().any(|beside| Tongue::BRITISH.say(beside).contains(word)), "{:?}", colony.beside);
        let year = year(&yard, date(2025, 10, 5));
        assert!(said(&year.window("cellar-in").unwrap().why).contains(word), "{:?}", year.window("cellar-in"));
        assert!(year.notes.iter().any(|note| said(note).contains(word)), "{:?}", year.notes);
    }
}
