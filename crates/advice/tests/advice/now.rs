//! What the demo yard's winter log must teach: signs weighed for what they are worth. Yard and log are invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::collections::HashMap;
use std::sync::{Mutex, OnceLock};

use jiff::ToSpan;
use jiff::civil::{Date, date};
use snowhum_advice::answer::ActionKind;
use snowhum_advice::now::{ColonyNow, Ground, NowAnswer, NowQuestion, Thresholds, alert};
use snowhum_advice::season::season;
use snowhum_advice::verdict::{ColonyVerdict, Urgency};
use snowhum_advice::{PlanQuestion, yard};
use snowhum_apiary::{Apiary, Note};
use snowhum_say::{Tongue, verdict as say};
use snowhum_units::Kelvin;
use snowhum_watch::Sizes;
use snowhum_weather::bend_through;

use crate::common;

const OCTOBER: Date = date(2025, 10, 5);
const FEBRUARY: Date = date(2026, 2, 7);
const APRIL: Date = date(2026, 4, 10);

fn apiary() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

/// Answers of the demo yard, each made once.
fn now(as_of: Date) -> &'static NowAnswer {
    static ANSWERS: OnceLock<Mutex<HashMap<Date, &'static NowAnswer>>> = OnceLock::new();
    let answers = ANSWERS.get_or_init(Mutex::default);
    let mut answers = answers.lock().unwrap();
    answers.entry(as_of).or_insert_with(|| Box::leak(Box::new(asked(&apiary(), as_of))))
}

fn asked(apiary: &Apiary, as_of: Date) -> NowAnswer {
    let parameters = snowhum_winter::Parameters::shipped().unwrap();
    let signs = snowhum_watch::Parameters::shipped().unwrap();
    let thresholds = Thresholds::shipped().unwrap();
    let (mut winter, autumn, spring) = common::weather(apiary);
    let days = as_of.duration_since(apiary.as_of).as_hours() / 24 + 1;
    let until = winter.start + jiff::SignedDuration::from_hours(24 * days);
    let read: Vec<(jiff::Timestamp, Kelvin)> = apiary
        .notes
        .iter()
        .filter(|note| note.at < until)
        .filter_map(|note: &Note| Some((note.at, note.conditions.air_k?)))
        .collect();
    bend_through(&mut winter, yard::place(&apiary.site), apiary.as_of, &read);
    let question = NowQuestion {
        plan: PlanQuestion {
            apiary,
            winter: &winter,
            autumn: &autumn,
            autumn_from: common::autumn_from(apiary),
            as_of: as_of.saturating_add(1.days()),
            spring,
            parameters: &parameters,
            members: snowhum_advice::MEMBERS,
            seed: 1,
        },
        as_of,
        known_hours: 0,
        signs: &signs,
        thresholds: &thresholds,
        sizes: Sizes { alive: 500, dead: 200 },
        last: &[],
    };
    let ground = Ground::of(question);
    ground.now(&ground.watch())
}

fn colony(as_of: Date, name: &str) -> &'static ColonyNow {
    now(as_of).colonies.iter().find(|colony| colony.name == name).unwrap()
}

#[test]
fn in_october_all_are_alive_and_the_hungry_one_is_known() {
    assert!(now(OCTOBER).colonies.iter().all(|colony| colony.alive > 0.98 && colony.evidence.is_empty()));
    let first = now(OCTOBER).first.colonies.iter().find(|colony| colony.name == "Juniper").unwrap();
    assert!(first.steps.iter().any(|step| step.task.words() == say::feed_solid()), "{:?}", first.steps);
    assert!(!colony(OCTOBER, "Alder").verdict.is_urgent());
}

#[test]
fn by_february_the_end_of_larch_by_mites_is_seen_coming() {
    let larch = colony(FEBRUARY, "Larch");
    assert!(larch.alive < 0.75, "{}", larch.alive);
    assert!(larch.alive_fed_queenright < 0.3, "{}", larch.alive_fed_queenright);
    assert_eq!(larch.ended.most_likely(), Some(snowhum_winter::Cause::Mites));
    assert_ne!(larch.verdict.word, Urgency::LeaveAlone);
    assert!(!larch.seen_dead);
}

#[test]
fn by_february_the_hunger_of_juniper_is_seen_coming_and_what_to_do_is_clear() {
    let juniper = colony(FEBRUARY, "Juniper");
    assert!(juniper.alive > 0.9 && juniper.alive_fed_queenright < 0.4, "{juniper:?}");
    let first = &juniper.actions[0];
    assert!(
        first.kind == ActionKind::SolidFeed && !first.too_close_to_call && first.worth_hives_in_100 > 25.0,
        "{first:?}"
    );
    let by = juniper.verdict.by.unwrap();
    assert!(
        Tongue::BRITISH.say(&juniper.about).contains("fondant") && by < juniper.runs_out.p10.unwrap(),
        "{:?}, {by}",
        juniper.about
    );
    assert!(juniper.look_first.weighing_money < 5.0, "{:?}", juniper.look_first);
}

#[test]
fn a_silent_nucleus_is_not_given_up() {
    let aspen = colony(FEBRUARY, "Aspen");
    assert!(aspen.alive >= 0.5, "{}", aspen.alive);
    let silent = aspen.evidence.iter().find(|e| e.note.contains("silent") && e.note.contains("dead=0")).unwrap();
    assert!(silent.alive_after < silent.alive_before, "{silent:?}");
}

#[test]
fn in_april_the_ageing_queen_of_birch_is_doubted() {
    let queen = |name: &str| {
        let colony = colony(APRIL, name);
        colony.alive_queenright / colony.alive
    };
    let birch = colony(APRIL, "Birch");
    assert!(queen("Birch") < queen("Alder") && queen("Birch") < queen("Juniper"), "{}", queen("Birch"));
    assert_eq!(birch.verdict.word, Urgency::LookInside, "{:?}", birch.about);
    assert!(Tongue::BRITISH.say(&birch.about).contains("look in"), "{:?}", birch.about);
    let weighed = birch.evidence.iter().find(|e| e.note.contains("side=") && e.on.month() == 3).unwrap();
    let moved = Tongue::BRITISH.say(&weighed.moved);
    assert!(moved.contains("queen"), "{moved}");
}

#[test]
fn what_was_seen_dead_is_told_as_dead_and_what_flew_as_alive() {
    let larch = colony(APRIL, "Larch");
    assert!(larch.seen_dead && larch.alive < 0.05 && larch.actions.is_empty(), "{larch:?}");
    for name in ["Alder", "Juniper"] {
        assert!(colony(APRIL, name).alive > 0.97, "{name} {}", colony(APRIL, name).alive);
    }
    let fed = colony(APRIL, "Juniper").alive_fed_queenright;
    assert!(fed > 0.6, "five kilograms of fondant in February carry it: {fed}");
}

#[test]
fn chances_and_ends_keep_their_sums() {
    for as_of in [OCTOBER, FEBRUARY, APRIL] {
        for colony in &now(as_of).colonies {
            assert!((colony.alive + colony.ended.total() - 1.0).abs() < 1e-9, "{}", colony.name);
            assert!(colony.alive_queenright <= colony.alive + 1e-12);
            assert!(colony.alive_fed_queenright <= colony.alive + 1e-12);
            assert!(colony.alive - colony.ends_ahead.total() >= colony.alive_fed_queenright - 1e-9);
            let fates = colony.fates;
            let all = [fates.well, fates.hungry, fates.queenless, fates.starved, fates.died_otherwise];
            assert!((all.iter().sum::<f64>() - 1.0).abs() < 1e-9, "{as_of} {}: {fates:?}", colony.name);
            assert!(all.iter().all(|chance| (0.0..=1.0).contains(chance)), "{fates:?}");
            assert!((fates.well - colony.alive_fed_queenright).abs() < 1e-12);
        }
    }
}

#[test]
fn the_next_look_is_told_beforehand() {
    let alder = &colony(FEBRUARY, "Alder").expect_next;
    assert_eq!(alder.on, date(2026, 2, 14));
    assert!(alder.dead_bees.least <= alder.dead_bees.middle && alder.dead_bees.middle < 100, "{alder:?}");
    assert!(alder.frost_at_hole.unwrap() > 0.1, "{alder:?}");
    assert!(colony(FEBRUARY, "Birch").expect_next.frost_at_hole.is_none(), "no hole, no rime");
    assert!(alder.flight < 0.2 && alder.hum > 0.1 && alder.hum < 0.7, "{alder:?}");
}

#[test]
fn a_keeper_is_told_at_most_once_a_week_unless_a_word_changes() {
    let first = alert(now(APRIL), None).unwrap();
    assert!(Tongue::BRITISH.say(&first.says).contains("Juniper"), "{:?}", first.says);
    let mut later = now(APRIL).clone();
    later.as_of = date(2026, 4, 13);
    assert_eq!(alert(&later, Some(&first)), None);
    let to = |word: Urgency| ColonyVerdict { word, by: None, first: None };
    later.colonies[0].verdict = to(Urgency::By);
    assert!(alert(&later, Some(&first)).is_some());
    later.colonies[0].verdict = now(APRIL).colonies[0].verdict.clone();
    later.as_of = date(2026, 4, 17);
    assert!(alert(&later, Some(&first)).is_some());
    later.colonies.iter_mut().for_each(|colony| colony.verdict = to(Urgency::LeaveAlone));
    let over = alert(&later, Some(&first)).unwrap();
    assert_eq!(Tongue::BRITISH.say(&over.says), "Nothing calls for you any more.");
    later.colonies[0].verdict = to(Urgency::LookInside);
    assert_eq!(alert(&later, Some(&over)), None, "nothing called, nothing calls");
}

#[test]
fn after_a_flying_day_those_that_did_not_fly_well_are_opened_first() {
    let after = now(date(2026, 3, 23));
    let order: Vec<&str> = after.open_first.iter().map(|first| first.name.as_str()).collect();
    assert_eq!(order, ["Aspen", "Birch"], "both flew thin, the hungrier first; Larch is dead, the others flew well");
    assert!(now(FEBRUARY).open_first.is_empty(), "nobody flew");
}

#[test]
fn answers_survive_json() {
    let json = serde_json::to_string(now(FEBRUARY)).unwrap();
    let read: NowAnswer = serde_json::from_str(&json).unwrap();
    assert_eq!((read.as_of, read.colonies.len()), (FEBRUARY, now(FEBRUARY).colonies.len()));
    assert_eq!(serde_json::to_string(&read).unwrap(), json, "what is read is said as it stands");
}

#[test]
fn an_entrance_noted_as_blocked_is_to_be_cleared_until_it_is() {
    let blocked = |state: &str| {
        let text = snowhum_apiary::demo_text().replace("entrance=cleared", &format!("entrance={state}"));
        let apiary = snowhum_apiary::read(&text, "demo").unwrap().0;
        let answer = asked(&apiary, date(2026, 1, 19));
        let birch = answer.colonies.iter().find(|colony| colony.name == "Birch").unwrap();
        birch.actions.iter().any(|action| Tongue::BRITISH.say(&action.what).contains("clear the entrance"))
    };
    assert!(blocked("blocked"));
    assert!(!blocked("cleared"));
}

#[test]
fn a_colony_put_to_another_brings_its_bees_and_food_and_is_no_more_watched() {
    let text = demo_with_union();
    let apiary = snowhum_apiary::read(&text, "demo").unwrap().0;
    let answer = asked(&apiary, date(2025, 11, 10));
    let of = |answer: &NowAnswer, name: &str| answer.colonies.iter().find(|c| c.name == name).unwrap().clone();
    let (aspen, birch) = (of(&answer, "Aspen"), of(&answer, "Birch"));
    assert_eq!(aspen.united_into.as_deref(), Some("Birch"));
    assert!(aspen.actions.is_empty() && Tongue::BRITISH.say(&aspen.about).contains("Birch"));
    let alone = of(&asked(&self::apiary(), date(2025, 11, 10)), "Birch");
    let more = birch.bees.unwrap().p50 - alone.bees.unwrap().p50;
    assert!((2_500.0..6_500.0).contains(&more), "{more}");
    let food = birch.stores_kg.total.unwrap().p50 - alone.stores_kg.total.unwrap().p50;
    assert!((3.5..7.5).contains(&food), "{food}");
}

#[test]
fn what_no_sum_holds_stands_beside_the_estimate() {
    let visit =
        "[[visit]]\nat = 2026-01-18T12:00:00\n[visit.seen]\nAlder = \"mouse=yes; pollen=no\"\nBirch = \"pollen=yes\"\n";
    let text = format!("{}\n{visit}", snowhum_apiary::demo_text());
    let noted = asked(&snowhum_apiary::read(&text, "demo").unwrap().0, date(2026, 1, 19));
    let alder = noted.colonies.iter().find(|colony| colony.name == "Alder").unwrap();
    assert!(Tongue::BRITISH.say(&alder.beside[0]).contains("mouse was noted on 18 January"), "{:?}", alder.beside);
    assert!(
        Tongue::BRITISH.say(&alder.beside[1]).contains("no pollen was carried in on 18 January while others"),
        "{:?}",
        alder.beside
    );
    assert_ne!(alder.verdict.word, Urgency::LeaveAlone);
    let larch = noted.colonies.iter().find(|colony| colony.name == "Larch").unwrap();
    assert!(larch.beside.iter().all(|one| one.id() != Some("now-beside-mouse")), "{:?}", larch.beside);
    assert!(noted.open_first.is_empty() && colony(APRIL, "Larch").beside.is_empty(), "nothing is asked of a dead one");
}

/// The demo yard with Aspen put to Birch in October.
fn demo_with_union() -> String {
    let visit = "[[visit]]\nat = 2025-10-12T12:00:00\nair = \"9 C\"\n[visit.seen]\nAspen = \"united=into Birch\"\n\n";
    snowhum_apiary::demo_text().replacen("[[visit]]", &format!("{visit}[[visit]]"), 1)
}

/// A yard far north, counted in August, one hive of it all but without food.
const HUNGRY: &str = r#"
[apiary]
name = "Far yard"
as_of = 2026-08-20
[site]
latitude = 61.7
longitude = 25.0
elevation = "80 m"
zone = "Europe/Helsinki"
[[colony]]
name = "Koivu"
kind = "Langstroth 10"
frames_of_bees = 9
stores = "6 kg"
mites = { found = 12, bees = 300, on = 2026-08-15 }
"#;

#[test]
fn bees_that_may_be_alive_and_hungry_are_offered_food_whatever_it_costs() {
    let apiary = snowhum_apiary::read(HUNGRY, "far").unwrap().0;
    let answer = asked(&apiary, date(2026, 11, 26));
    let koivu = &answer.colonies[0];
    assert!(koivu.alive > 0.1 && koivu.alive < 0.9, "{}", koivu.alive);
    let food = koivu.actions.iter().find(|action| action.kind == ActionKind::SolidFeed).unwrap();
    assert!(food.helps() && !koivu.nothing_helps, "{food:?}");
    assert!(koivu.verdict.is_urgent() && Tongue::BRITISH.say(&koivu.about).starts_with("listen"), "{:?}", koivu.about);
}

#[test]
fn a_season_counts_what_was_noted_from_the_day_of_the_count_on() {
    let mut apiary = apiary();
    let alder = apiary.colonies[0].id;
    let before = season(&apiary, now(FEBRUARY));
    let template = apiary.notes.iter().find(|note| note.colony == alder).unwrap().clone();
    let counted = apiary.as_of;
    let mut add = |number: u128, on: Date, line: &str| {
        let entries = snowhum_apiary::split_entries(line);
        let entries = entries.map(|entry| snowhum_apiary::Entry::read(entry, &|_| None).unwrap()).collect();
        let at = on.at(12, 0, 0, 0).in_tz("Europe/Helsinki").unwrap().timestamp();
        let id = snowhum_apiary::NoteId(uuid::Uuid::from_u128(number));
        apiary.notes.push(Note { id, at, entries, ..template.clone() });
    };
    add(1, counted.yesterday().unwrap(), "fed=2 kg fondant; treated=oxalic");
    add(2, counted, "fed=1 kg fondant");
    let after = season(&apiary, now(FEBRUARY));
    let (was, is) = (&before.colonies[0], &after.colonies[0]);
    assert_eq!(is.visits, was.visits + 1, "the note of the day of the count, and not the one before it");
    assert_eq!(is.treatments, was.treatments);
    let fondant = |season: &snowhum_advice::season::ColonySeason| {
        season.fed.iter().find(|given| given.what == snowhum_say::season::fondant()).map_or(0.0, |given| given.mass_kg)
    };
    assert!((fondant(is) - fondant(was) - 1.0).abs() < 1e-9);
}
