//! Queens that are none, virgin, drone layers or laying workers: each its own end, word and action, none better than a
//! laying queen. Invented yards; orderings alone, so that a newly calibrated model keeps them.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::collections::HashSet;

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_advice::fit::{Verdict, VerdictKind};
use snowhum_advice::now::{ColonyNow, Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::plan::{ColonyPlan, PlanAnswer};
use snowhum_advice::queen::QueenTrouble;
use snowhum_advice::verdict::{ColonyFirst, Step, Task, Urgency, Why};
use snowhum_advice::{PlanQuestion, plan};
use snowhum_apiary::Apiary;
use snowhum_say::Tongue;
use snowhum_watch::Sizes;
use snowhum_winter::{Cause, Parameters};

use crate::common;

const TOLD: [&str; 4] = ["none", "virgin", "drone layer", "laying workers"];
const KIND: &str =
    "kind = \"Langstroth 10\"\nboxes = [\"deep\"]\nlid = [\"plywood 10 mm\", \"foam 50 mm\"]\nguard = \"slot 8 mm\"";
const BEES: &str = "frames_of_bees = 8\nbrood = \"none\"\nstores = \"20 kg\"\nmites = { found = 1, bees = 300, on = 2025-07-20 }\nqueen_year = 2025\ntroubles = \"none\"";

/// One colony a state of the queen, and a strong one beside them; what is told at visits after.
fn yard(as_of: &str, states: &[&str], visits: &str) -> Apiary {
    let mut text = format!(
        "[apiary]\nname = \"Invented\"\ninvented = true\nas_of = {as_of}\n[site]\nlatitude = 52\nlongitude = 10\nelevation = \"100 m\"\nzone = \"Europe/Berlin\"\n"
    );
    let own = |state: &&str| (state.to_string(), format!("queen = \"{state}\"\n{BEES}"));
    let all = states.iter().map(own).chain([("Strong".to_owned(), BEES.replace("= 8", "= 10"))]);
    for (name, lines) in all {
        text += &format!(
            "[[hive]]\nname = \"{name}\"\n{KIND}\n[[colony]]\nname = \"{name}\"\nhive = \"{name}\"\n{lines}\n"
        );
    }
    snowhum_apiary::read(&(text + visits), "invented").unwrap().0
}

fn planned_on(apiary: &Apiary) -> PlanAnswer {
    let (winter, autumn, spring) = common::weather(apiary);
    plan(&PlanQuestion {
        apiary,
        winter: &winter,
        autumn: &autumn,
        autumn_from: common::autumn_from(apiary),
        as_of: apiary.as_of,
        spring,
        parameters: &Parameters::shipped().unwrap(),
        members: 64,
        seed: 1,
    })
}

fn now_on(apiary: &Apiary, as_of: Date) -> NowAnswer {
    let (winter, autumn, spring) = common::weather(apiary);
    let (parameters, signs) = (Parameters::shipped().unwrap(), snowhum_watch::Parameters::shipped().unwrap());
    let thresholds = Thresholds::shipped().unwrap();
    let ground = Ground::of(NowQuestion {
        plan: PlanQuestion {
            apiary,
            winter: &winter,
            autumn: &autumn,
            autumn_from: common::autumn_from(apiary),
            as_of: as_of.saturating_add(1.days()),
            spring,
            parameters: &parameters,
            members: 64,
            seed: 1,
        },
        as_of,
        known_hours: 0,
        signs: &signs,
        thresholds: &thresholds,
        sizes: Sizes { alive: 128, dead: 64 },
        last: &[],
    });
    ground.now(&ground.watch())
}

fn colony<'a>(plan: &'a PlanAnswer, name: &str) -> &'a ColonyPlan {
    plan.colonies.iter().find(|colony| colony.name == name).unwrap()
}

fn verdict<'a>(plan: &'a PlanAnswer, name: &str) -> &'a Verdict {
    &plan.fit.as_ref().unwrap().colonies.iter().find(|colony| colony.name == name).unwrap().verdict
}

/// What is told first of a colony.
fn first<'a>(plan: &'a PlanAnswer, name: &str) -> &'a ColonyFirst {
    plan.first.colonies.iter().find(|colony| colony.name == name).unwrap()
}

fn first_of<'a>(now: &'a NowAnswer, name: &str) -> &'a ColonyFirst {
    now.first.colonies.iter().find(|colony| colony.name == name).unwrap()
}

fn here<'a>(now: &'a NowAnswer, name: &str) -> &'a ColonyNow {
    now.colonies.iter().find(|colony| colony.name == name).unwrap()
}

/// The same colony on the same random numbers, and food enough, since one that rears nothing eats less.
#[test]
fn no_state_of_the_queen_betters_the_same_colony_with_one_that_lays() {
    for as_of in ["2025-08-15", "2025-09-25", "2025-10-05"] {
        let alive = |state: &str| {
            let told = yard(as_of, &[state], "");
            let mut same = told.clone();
            for colony in &mut same.colonies {
                colony.id = told.colonies[1].id;
                colony.stores.total = colony.stores.total.map(|kept| kept * 1.6);
            }
            planned_on(&same).colonies[0].alive_in_spring
        };
        let laying = alive("laying");
        for state in TOLD {
            assert!(alive(state) <= laying, "{as_of} {state}: {} of {laying}", alive(state));
        }
    }
}

#[test]
fn each_state_has_its_own_end_word_and_first_action_and_none_betters_a_laying_queen() {
    for as_of in ["2025-08-15", "2025-09-25", "2025-10-05"] {
        let plan = planned_on(&yard(as_of, &["none", "virgin", "drone layer", "laying workers", "laying"], ""));
        let laying = colony(&plan, "laying");
        let (mut words, mut does, mut says, mut ends) = (HashSet::new(), HashSet::new(), HashSet::new(), Vec::new());
        for (state, trouble) in TOLD.iter().zip(QueenTrouble::ALL) {
            let told = colony(&plan, state);
            assert!(told.alive_fed_queenright <= laying.alive_fed_queenright, "{as_of} {state}");
            assert!(told.ends.queen_failed > laying.ends.queen_failed, "{as_of} {state}: {:?}", told.ends);
            assert_eq!(verdict(&plan, state).queen, Some(trouble));
            assert!(!matches!(
                verdict(&plan, state).kind,
                VerdictKind::Alone | VerdictKind::Company | VerdictKind::Boost
            ));
            assert!(first(&plan, state).why.contains(&Why::Queen { trouble }), "{:?}", first(&plan, state));
            let first = &told.actions[0];
            assert!(first.by_custom && first.by >= first.from, "{first:?}");
            let said = verdict(&plan, state);
            words.insert(Tongue::BRITISH.say(&said.words()));
            does.insert(Tongue::BRITISH.say(&first.what));
            says.insert(Tongue::BRITISH.say(&said.says));
            ends.push(told.ends.queen_failed);
        }
        for all in [&words, &does, &says] {
            assert_eq!(all.len(), 4, "{all:?}");
        }
        ends.sort_by(f64::total_cmp);
        assert!(ends.windows(2).all(|pair| pair[0] < pair[1]), "{as_of}: {ends:?}");
        assert_eq!(verdict(&plan, "laying").queen, None);
    }
}

#[test]
fn most_that_have_no_queen_end_for_want_of_one() {
    let plan = planned_on(&yard("2025-08-15", &["none", "drone layer", "laying workers"], ""));
    for state in ["none", "drone layer", "laying workers"] {
        let told = colony(&plan, state);
        assert!(told.alive_fed_queenright < 1e-9, "{state}");
        assert_eq!(told.ends.most_likely(), Some(Cause::QueenFailed), "{state}: {:?}", told.ends);
    }
}

#[test]
fn each_is_done_what_custom_asks_of_it_in_its_season() {
    let plan = |as_of| planned_on(&yard(as_of, &TOLD, ""));
    let says = |plan: &PlanAnswer, state: &str| Tongue::BRITISH.say(&verdict(plan, state).says);
    let kinds = |plan: &PlanAnswer| TOLD.map(|state| verdict(plan, state).kind);
    let summer = plan("2025-07-25");
    assert_eq!(kinds(&summer), [VerdictKind::Unite, VerdictKind::LookAgain, VerdictKind::Unite, VerdictKind::ShakeOut]);
    assert!(says(&summer, "none").contains("mated queen by about") && says(&summer, "none").contains("Strong"));
    assert!(says(&summer, "virgin").contains("in 100 such queens still mate"), "{}", says(&summer, "virgin"));
    assert!(says(&summer, "drone layer").contains("take her out"));
    assert!(says(&summer, "laying workers").starts_with("give it no queen"));
    for state in TOLD {
        assert!(first(&summer, state).steps.iter().any(|step| matches!(step.task, Task::Queen { .. })), "{state}");
    }

    let winter = plan("2025-12-20");
    assert_eq!(kinds(&winter), [VerdictKind::Wait; 4]);
    let all: HashSet<String> = TOLD.iter().map(|state| says(&winter, state)).collect();
    assert_eq!(all.len(), 4);
    for state in TOLD {
        assert!(says(&winter, state).starts_with("nothing now"), "{}", says(&winter, state));
        assert!(says(&winter, state).contains("on the first day on which bees fly well"));
        assert_eq!(first(&winter, state).verdict.word, Urgency::LookInside, "{state}");
    }
    let list = &winter.fit.as_ref().unwrap().shopping;
    assert!(list.hives.iter().all(|hive| hive.name == "Strong"), "what has no queen is not fed: {list:?}");
}

#[test]
fn no_sick_colony_without_a_queen_goes_to_another() {
    let mut sick = yard("2025-09-05", &TOLD, "");
    for colony in &mut sick.colonies[..4] {
        colony.autumn.troubles = Some(vec![snowhum_apiary::Trouble::Dysentery]);
    }
    let plan = planned_on(&sick);
    for state in TOLD {
        let says = Tongue::BRITISH.say(&verdict(&plan, state).says);
        assert!(!says.contains("to Strong"), "{says}");
    }
}

#[test]
fn the_present_knows_the_queen_by_file_and_by_note() {
    let visit = |day: &str, what: &str| format!("[[visit]]\nat = {day}T12:00:00\n[visit.seen]\nStrong = \"{what}\"\n");
    let as_of: Date = "2025-09-20".parse().unwrap();
    let now = now_on(&yard("2025-09-05", &TOLD, &visit("2025-09-15", "queen=drone layer")), as_of);
    for (state, trouble) in
        TOLD.iter().chain(["Strong"].iter()).zip(QueenTrouble::ALL.into_iter().chain([QueenTrouble::DroneLayer]))
    {
        let one = here(&now, state);
        assert_eq!(one.queen, Some(trouble));
        assert_ne!(one.verdict.word, Urgency::LeaveAlone);
        let queen = |step: &Step| matches!(step.task, Task::Queen { trouble: told, .. } if told == trouble);
        assert!(first_of(&now, state).steps.iter().any(queen), "{:?}", one.about);
        assert!(one.actions[0].by_custom && !one.nothing_helps);
        assert!(one.alive_queenright < 0.7 * one.alive, "{state}");
    }
    let mended =
        now_on(&yard("2025-09-05", &["none"], &visit("2025-09-15", "did=requeened").replace("Strong", "none")), as_of);
    let mended = here(&mended, "none");
    assert!(mended.queen.is_none() && mended.alive_queenright > 0.9 * mended.alive);

    let plan =
        planned_on(&yard("2025-09-05", &["laying"], &visit("2025-09-05", "queen=none").replace("Strong", "laying")));
    assert_eq!(verdict(&plan, "laying").queen, Some(QueenTrouble::NoQueen), "noted on the plan's own day");
}

#[test]
fn midwinter_waits_and_json_tells_the_trouble() {
    let now = now_on(&yard("2025-10-05", &TOLD, ""), "2025-12-28".parse().unwrap());
    for (state, trouble) in TOLD.iter().zip(QueenTrouble::ALL) {
        let one = here(&now, state);
        assert_eq!(one.verdict.word, Urgency::LookInside, "{:?}", one.about);
        assert_eq!(one.about.id(), Some("verdict-queen-wait"), "{:?}", one.about);
        let json = serde_json::to_value(one).unwrap();
        assert_eq!(json["queen"], serde_json::to_value(trouble).unwrap());
    }
    assert_eq!(serde_json::to_value(here(&now, "Strong")).unwrap().get("queen"), None);
}
