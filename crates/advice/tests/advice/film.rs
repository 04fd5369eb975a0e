//! The winter told: its figures are those of the plan and of the present. Yard and log are invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::ToSpan;
use jiff::civil::date;
use snowhum_advice::film::{Came, FilmAnswer, FilmQuestion, film};
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::{PlanQuestion, plan};
use snowhum_units::Range;
use snowhum_watch::Sizes;

use crate::common;

fn told() -> (FilmAnswer, PlanAnswer, NowAnswer) {
    let apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    let as_of = date(2026, 2, 7);
    let parameters = snowhum_winter::Parameters::shipped().unwrap();
    let signs = snowhum_watch::Parameters::shipped().unwrap();
    let thresholds = Thresholds::shipped().unwrap();
    let (winter, autumn, spring) = common::weather(&apiary);
    let question = |as_of| PlanQuestion {
        apiary: &apiary,
        winter: &winter,
        autumn: &autumn,
        autumn_from: common::autumn_from(&apiary),
        as_of,
        spring,
        parameters: &parameters,
        members: 64,
        seed: 1,
    };
    let (foretold, ahead) = (question(apiary.as_of), question(as_of.saturating_add(1.days())));
    let sizes = Sizes { alive: 128, dead: 64 };
    let present =
        NowQuestion { plan: ahead, as_of, known_hours: 0, signs: &signs, thresholds: &thresholds, sizes, last: &[] };
    let ground = Ground::of(present);
    let (plan, now) = (plan(&foretold), ground.now(&ground.watch()));
    let told = film(&FilmQuestion { autumn: foretold, plan: &plan, present, now: &now });
    (told, plan, now)
}

#[test]
fn every_figure_of_the_film_is_one_of_the_plan_or_of_the_present() {
    let (film, plan, now) = told();
    let today = film.today();
    assert_eq!(film.date(today), now.as_of);
    assert_eq!((film.hives.len(), film.weather.len()), (now.colonies.len(), film.hives[0].days.len()));
    let thousandths = |chance: f64| (chance * 1_000.0).round();
    for (hive, (planned, colony)) in film.hives.iter().zip(plan.colonies.iter().zip(&now.colonies)) {
        assert_eq!((&hive.name, hive.foretold_alive), (&planned.name, planned.alive_in_spring));
        assert_eq!((hive.foretold_runs_out, hive.alive), (planned.runs_out, colony.alive));
        assert_eq!(hive.foretold_food, planned.food_lasts());
        let stands = &hive.days[today];
        if colony.seen_dead {
            assert_eq!((stands.alive, stands.food_kg), (0.0, None), "{}", hive.name);
            continue;
        }
        assert_eq!(thousandths(stands.alive), thousandths(colony.alive), "{}", hive.name);
        assert_eq!(stands.food_kg, colony.stores_kg.total, "{}", hive.name);
        for ahead in &colony.reachable_kg_ahead {
            let day = ahead.date.duration_since(film.from).as_hours() as usize / 24;
            let Some(of_film) = hive.days.get(day) else { continue };
            assert_eq!(of_film.reachable_kg, Some(ahead.range.p50), "{} on {}", hive.name, ahead.date);
        }
        let spring = planned.stores_kg.spring.p50;
        let foretold = hive.days.last().unwrap().foretold_kg.unwrap().p50;
        assert!((spring - foretold).abs() < 0.15, "{}: {spring} and {foretold}", hive.name);
        for evidence in &colony.evidence {
            let day = evidence.on.duration_since(film.from).as_hours() as usize / 24;
            let is_last = colony.evidence.iter().find(|other| other.on == evidence.on) == Some(evidence);
            if is_last && !colony.seen_dead {
                let food = hive.days[day].food_kg.map(|food| food.p50);
                assert_eq!(food, evidence.stores_after_kg, "{} on {}", hive.name, evidence.on);
                assert_eq!(thousandths(hive.days[day].alive), thousandths(evidence.alive_after));
            }
        }
    }
    assert!(film.hives.iter().any(|hive| hive.noted.len() > 3), "the log is told");
}

#[test]
fn a_film_names_no_place_and_repeats_no_free_words() {
    let (film, ..) = told();
    let text = serde_json::to_string(&film).unwrap();
    let apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    assert!(!text.contains(&apiary.name) && !text.contains(&apiary.site.zone), "{text}");
    assert!(!text.contains("words="));
    assert_eq!(film.clone().of_hive(2).unwrap().hives[0].name, film.hives[2].name);
    assert!(film.of_hive(99).is_none());
}

#[test]
fn what_came_is_held_against_eight_winters_of_ten() {
    let foretold = Range { p10: 4.0, p50: 6.0, p90: 8.0 };
    assert_eq!(
        [3.9, 4.0, 8.0, 8.1].map(|kg| Came::of(kg, foretold)),
        [Came::Less, Came::AsForetold, Came::AsForetold, Came::More]
    );
}
