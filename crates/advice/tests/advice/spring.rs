//! Spring of the demo yard on 10 April: the hungry first, nobody told that the danger is over.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::sync::OnceLock;

use jiff::ToSpan;
use jiff::civil::{Date, date};
use jiff::tz::TimeZone;
use snowhum_advice::cautions::Hazard;
use snowhum_advice::jobs::{JobsAnswer, JobsQuestion, SiteYear, Triggers, jobs, season_start};
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion, Thresholds};
use snowhum_advice::spring::{Hunger, SpringQuestion, Springtime, StrengthWord, spring};
use snowhum_advice::{PlanQuestion, yard};
use snowhum_apiary::Apiary;
use snowhum_say::Tongue;
use snowhum_units::Degree;
use snowhum_watch::Sizes;
use snowhum_weather::{AirPaths, Climate, Ensemble, generate};
use snowhum_winter::Parameters;

const APRIL: Date = date(2026, 4, 10);
const SPRING: Date = date(2026, 5, 15);

struct World {
    apiary: Apiary,
    winter: Ensemble,
    now: NowAnswer,
    jobs: JobsAnswer,
}

fn weather(apiary: &Apiary, from: Date, days: i64) -> Ensemble {
    let place = yard::place(&apiary.site);
    let zone = TimeZone::get(&apiary.site.zone).unwrap();
    generate(place, &Climate::at(place).unwrap(), &zone, from, 24 * days as usize, 16, 1).unwrap()
}

fn world() -> &'static World {
    static WORLD: OnceLock<World> = OnceLock::new();
    WORLD.get_or_init(|| {
        let apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
        let winter = weather(&apiary, apiary.as_of, SPRING.duration_since(apiary.as_of).as_hours() / 24);
        let now = now(&apiary, &winter);
        let from = season_start(APRIL, apiary.site.latitude);
        let (year, triggers) = (weather(&apiary, from, 366), Triggers::shipped().unwrap());
        let jobs = jobs(&JobsQuestion {
            apiary: &apiary,
            year: &SiteYear::of(&apiary.site, &year, from, &triggers),
            as_of: APRIL,
            colonies: None,
            triggers: &triggers,
        })
        .told_by(&now);
        World { apiary, winter, now, jobs }
    })
}

fn now(apiary: &Apiary, winter: &Ensemble) -> NowAnswer {
    let parameters = Parameters::shipped().unwrap();
    let (signs, thresholds) = (snowhum_watch::Parameters::shipped().unwrap(), Thresholds::shipped().unwrap());
    let plan = PlanQuestion {
        apiary,
        winter,
        autumn: &AirPaths::from(winter),
        autumn_from: apiary.as_of,
        as_of: APRIL.saturating_add(1.days()),
        spring: SPRING,
        parameters: &parameters,
        members: 32,
        seed: 1,
    };
    let ground = Ground::of(NowQuestion {
        plan,
        as_of: APRIL,
        known_hours: 0,
        signs: &signs,
        thresholds: &thresholds,
        sizes: Sizes { alive: 128, dead: 32 },
        last: &[],
    });
    let watchings = ground.watch();
    ground.now(&watchings)
}

fn answer(apiary: &Apiary) -> Springtime {
    let World { winter, now, jobs, .. } = world();
    let triggers = Triggers::shipped().unwrap();
    spring(&SpringQuestion { apiary, now, jobs, winter, triggers: &triggers })
}

#[test]
fn the_hungriest_stands_first_and_no_dead_hive_is_lifted() {
    let answer = answer(&world().apiary);
    let days: Vec<i64> = answer.lift_first.iter().map(|one| one.days_left.unwrap_or(i64::MAX)).collect();
    assert!(days.is_sorted() && days.len() == 4, "{days:?}");
    assert!(answer.lift_first.iter().all(|one| one.name != "Larch"), "Larch was seen dead");
    for one in &answer.lift_first {
        let soon = one.days_left.is_some_and(|left| left <= 21);
        assert_eq!(one.hunger == Hunger::Now, soon, "{:?}", one.says);
        assert_eq!(one.hunger == Hunger::Lasts, one.days_left.is_none());
    }
    assert!(Tongue::BRITISH.say(&answer.danger.says).contains("does not end in February"));
    assert!(answer.danger.until.unwrap() > APRIL, "late in April it is not over here");
}

#[test]
fn the_windows_know_of_the_hunger_that_the_present_knows() {
    let World { now, jobs, .. } = world();
    let hungry = now.colonies.iter().filter(|one| !one.seen_dead && one.runs_out.p10.is_some()).count();
    let window = jobs.window("food-runs-out");
    assert_eq!(window.map_or(0, |window| window.colonies.len()), hungry);
    if let Some(window) = window {
        let first = now.colonies.iter().filter(|one| !one.seen_dead).filter_map(|one| one.runs_out.p10).min();
        assert_eq!(window.earliest, first);
        assert_eq!(window.share, None, "nobody knows in how many winters");
    }
}

#[test]
fn food_comes_solid_then_as_syrup_then_as_pollen() {
    let answer = answer(&world().apiary);
    let from: Vec<Option<Date>> = answer.feeding.iter().map(|step| step.from).collect();
    assert_eq!(answer.feeding.len(), 3);
    assert!(from[0].is_none() && from[1].unwrap() <= from[2].unwrap(), "{from:?}");
    assert_eq!(answer.feeding[0].until, from[1]);
    let own = world().jobs.window("pollen").unwrap().usual;
    let waits = Tongue::BRITISH.say(&answer.feeding[2].waits_for);
    assert_eq!(waits.contains("before syrup"), from[2] != own, "the reason is that of the day: {waits}");
}

#[test]
fn a_hive_may_be_opened_more_often_for_food_than_for_combs() {
    let open = answer(&world().apiary).open;
    assert_eq!(open.days.len(), 10);
    assert_eq!(open.days[0].on, date(2026, 4, 11));
    for day in &open.days {
        assert!(day.full_look <= day.first_look && day.first_look <= day.lid, "{day:?}");
    }
    assert!(open.days.iter().any(|day| day.lid > 0.5));
}

#[test]
fn strength_is_measured_only_where_a_figure_is_known() {
    let finland = answer(&world().apiary);
    assert!(finland.usual_strength.is_none());
    assert!(finland.strength.iter().all(|one| matches!(one.word, StrengthWord::NotKnown | StrengthWord::VeryWeak)));
    let mut prairie = world().apiary.clone();
    (prairie.site.latitude, prairie.site.longitude) = (Degree::new(50.0), Degree::new(-100.0));
    assert!(answer(&prairie).usual_strength.is_none(), "on 10 April none is known there either");
    let World { winter, now, jobs, .. } = world();
    let (triggers, now) = (Triggers::shipped().unwrap(), NowAnswer { as_of: date(2026, 3, 15), ..now.clone() });
    let (apiary, jobs, triggers) = (&prairie, jobs, &triggers);
    let march = spring(&SpringQuestion { apiary, now: &now, jobs, winter, triggers });
    assert_eq!(march.usual_strength.map(|usual| usual.frames), Some((6.0, 8.0)));
    assert!(march.strength.iter().all(|one| one.word != StrengthWord::NotKnown));
}

#[test]
fn the_first_look_stops_at_foulbrood_and_a_weak_colony_is_not_united_sick() {
    let answer = answer(&world().apiary);
    let brood = answer.first_look.iter().find(|item| item.look_for.id() == Some("spring-look-brood")).unwrap();
    assert_eq!(brood.otherwise, Hazard::Foulbrood.says());
    let otherwise = Tongue::BRITISH.say(&brood.otherwise);
    assert!(otherwise.contains("move nothing"), "{otherwise}");
    let weak = answer.strength.iter().any(|one| one.word == StrengthWord::VeryWeak);
    assert_eq!(answer.weak.is_empty(), !weak);
    assert!(answer.weak.is_empty() || Tongue::BRITISH.say(&answer.weak[0]).contains("Never unite a sick colony"));
}
