//! Jobs and dates of yards far apart: every date plausible for its place, none copied from another.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::sync::OnceLock;

use jiff::civil::{Date, date};
use snowhum_advice::PlanQuestion;
use snowhum_advice::cautions::Hazard;
use snowhum_advice::jobs::{Due, JobWindow, JobsAnswer, JobsQuestion, Kind, Triggers, jobs};
use snowhum_apiary::Apiary;
use snowhum_say::{Message, Tongue};
use snowhum_units::{Degree, Metre};
use snowhum_winter::Parameters;

use crate::common;

const PATHS: usize = 96;

fn demo() -> Apiary {
    snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0
}

/// The demo's yard somewhere else.
fn yard_at(latitude: f64, longitude: f64, elevation: f64, zone: &str) -> Apiary {
    let mut apiary = demo();
    apiary.site.latitude = Degree::new(latitude);
    apiary.site.longitude = Degree::new(longitude);
    apiary.site.elevation = Metre::new(elevation);
    apiary.site.zone = zone.to_owned();
    apiary
}

/// The site's windows without its colonies.
fn site(apiary: &Apiary, as_of: Date) -> JobsAnswer {
    common::site_windows(apiary, as_of, PATHS, 1)
}

struct Three {
    lake: JobsAnswer,
    plain: JobsAnswer,
    alp: JobsAnswer,
}

/// A lake shore at 61.7 N, a continental plain at 46 N, an alpine valley at 1,400 m.
fn three() -> &'static Three {
    static THREE: OnceLock<Three> = OnceLock::new();
    let day = date(2025, 10, 5);
    THREE.get_or_init(|| Three {
        lake: site(&yard_at(61.7, 25.0, 80.0, "Europe/Helsinki"), day),
        plain: site(&yard_at(46.0, 20.0, 90.0, "Europe/Belgrade"), day),
        alp: site(&yard_at(46.6, 8.0, 1_400.0, "Europe/Zurich"), day),
    })
}

fn window<'a>(answer: &'a JobsAnswer, id: &str) -> &'a JobWindow {
    answer.window(id).unwrap()
}

fn usual(answer: &JobsAnswer, id: &str) -> Date {
    window(answer, id).usual.unwrap()
}

#[test]
fn a_window_s_dates_rise_and_none_is_said_without_its_reason() {
    let Three { lake, plain, alp } = three();
    for answer in [lake, plain, alp] {
        assert!(answer.windows.len() > 25);
        for one in &answer.windows {
            let dates: Vec<Date> = [one.earliest, one.usual, one.latest].into_iter().flatten().collect();
            assert!(dates.is_sorted() && !dates.is_empty(), "{}: {dates:?}", one.id);
            assert!(dates[0] >= answer.from && dates[dates.len() - 1] < date(2026, 7, 2), "{}: {dates:?}", one.id);
            let texts =
                Tongue::BRITISH.say_all([&one.what, &one.when, &one.why, &one.trigger.words, &one.trigger.source]);
            for text in &texts {
                assert!(!text.is_empty() && !text.contains("NaN"), "{}: {text}", one.id);
            }
            assert!(texts[0].chars().count() <= 28, "{} does not fit beside a bar: {}", one.id, texts[0]);
        }
    }
}

#[test]
fn jobs_follow_one_another_as_they_must_in_every_yard() {
    let Three { lake, plain, alp } = three();
    for answer in [lake, plain, alp] {
        let of = |id: &str| usual(answer, id);
        let order = ["mite-count-summer", "treat-mites", "syrup-finished", "mite-count-autumn", "mouse-guard", "wrap"];
        assert!(order.map(of).is_sorted(), "{:?}", order.map(of));
        assert!(of("honey-off") <= of("treat-mites") && of("honey-off") <= of("feed-begun"));
        assert!(of("feed-begun") < of("syrup-finished"));
        assert!(of("clean-floor") <= of("first-look") && of("starvation-watch") < of("first-flow"));
        assert!(of("pollen") < of("first-flow") && of("first-flow") < of("mite-count-spring"));
        assert!(of("cellar-in") < of("cellar-out") && of("bear-fence-on") < of("bear-fence-thaw"));
    }
}

#[test]
fn no_yard_has_the_dates_of_another() {
    let Three { lake, plain, alp } = three();
    for id in ["honey-off", "syrup-finished", "wrap", "unwrap", "first-look", "first-flow"] {
        let days = [lake, plain, alp].map(|answer| usual(answer, id));
        assert!(days[0] != days[1] && days[1] != days[2] && days[0] != days[2], "{id}: {days:?}");
        let far = |a: Date, b: Date| (a.duration_since(b).as_hours() / 24).abs() >= 14;
        // Honey comes off the plain for the light and not for the cold.
        let apart = id == "honey-off" || (far(days[0], days[1]) && far(days[1], days[2]));
        assert!(apart, "the plain is another country: {id}: {days:?}");
    }
    assert!(usual(lake, "syrup-finished") < usual(plain, "syrup-finished"));
    assert!(usual(alp, "unwrap") > usual(plain, "unwrap") && usual(lake, "unwrap") > usual(plain, "unwrap"));
    assert!(usual(alp, "wrap") < usual(plain, "wrap"));
}

/// Finnish beekeepers' leaflet: honey off by the second week of August, syrup done by the end of August.
#[test]
fn finland_s_honey_is_off_by_the_second_week_of_august_and_its_syrup_done_when_august_ends() {
    let lake = &three().lake;
    let honey = usual(lake, "honey-off");
    assert!((date(2025, 7, 25)..=date(2025, 8, 14)).contains(&honey), "{honey}");
    let syrup = window(lake, "syrup-finished");
    assert!((date(2025, 8, 15)..=date(2025, 8, 31)).contains(&syrup.earliest.unwrap()), "the safe day: {syrup:?}");
    assert!(syrup.usual.unwrap() <= date(2025, 9, 14), "{syrup:?}");
}

/// University of Minnesota, poster 163: wraps soon after 1 November.
#[test]
fn minnesota_wraps_soon_after_the_first_of_november() {
    let answer = site(&yard_at(45.0, -93.3, 260.0, "America/Chicago"), date(2025, 10, 5));
    let wrap = usual(&answer, "wrap");
    assert!((date(2025, 10, 25)..=date(2025, 11, 15)).contains(&wrap), "{wrap}");
    let mites = usual(&answer, "treat-mites");
    assert!((date(2025, 8, 1)..=date(2025, 8, 31)).contains(&mites), "{mites}");
}

/// University of Guelph: southern Ontario feeds in the latter half of September. South-western Ontario's cellars are
/// emptied in late March to early April (common practice).
#[test]
fn southern_ontario_feeds_in_the_latter_half_of_september() {
    let answer = site(&yard_at(43.5, -80.4, 330.0, "America/Toronto"), date(2025, 10, 5));
    let (begun, finished) = (window(&answer, "feed-begun"), window(&answer, "syrup-finished"));
    assert!(begun.earliest.unwrap() <= date(2025, 9, 16), "{begun:?}");
    assert!(
        finished.usual.unwrap() >= date(2025, 9, 25) && finished.usual.unwrap() <= date(2025, 10, 15),
        "{finished:?}"
    );
    let out = usual(&answer, "cellar-out");
    assert!((date(2026, 3, 20)..=date(2026, 4, 20)).contains(&out), "{out}");
}

#[test]
fn the_southern_half_of_the_world_has_its_own_year() {
    let yard = yard_at(-45.0, 169.5, 300.0, "Pacific/Auckland");
    let answer = site(&yard, date(2026, 4, 5));
    assert_eq!(answer.from, date(2026, 1, 1));
    let wrap = usual(&answer, "wrap");
    assert!((date(2026, 4, 15)..=date(2026, 7, 15)).contains(&wrap), "{wrap}");
    let flow = usual(&answer, "first-flow");
    assert!((date(2026, 7, 15)..=date(2026, 10, 31)).contains(&flow), "{flow}");
    assert!(usual(&answer, "honey-off") < date(2026, 4, 15));
}

#[test]
fn what_is_due_changes_with_the_day() {
    let yard = yard_at(61.7, 25.0, 80.0, "Europe/Helsinki");
    let october = &three().lake;
    assert_eq!(window(october, "honey-off").due, Due::Past);
    assert_eq!(window(october, "first-flow").due, Due::Later);
    assert_eq!(window(october, "wrap").due, Due::Now);
    let april = site(&yard, date(2026, 4, 10));
    assert_eq!(window(&april, "wrap").due, Due::Past);
    assert_eq!(window(&april, "first-flow").due, Due::Soon);
    assert_eq!(window(&april, "starvation-watch").due, Due::Now);
    let june = site(&yard, date(2026, 6, 20));
    assert_eq!(june.from, date(2026, 7, 1), "in June the coming season counts");
}

#[test]
fn what_can_hurt_at_a_job_is_told_in_the_words_of_the_cautions() {
    let known = |name: &str| Hazard::ALL.into_iter().find(|hazard| hazard.name() == name).unwrap();
    for one in &three().lake.windows {
        let Some(caution) = &one.caution else { continue };
        let says = caution.about.split(", ").map(|name| known(name).says());
        assert_eq!(caution.says, Message::sentences(says), "{}", one.id);
    }
    let about = |id: &str| window(&three().lake, id).caution.as_ref().map(|caution| caution.about.clone());
    assert_eq!(about("treat-mites").unwrap(), "label, acids");
    assert_eq!(about("bear-fence-on").unwrap(), "fence");
    assert_eq!(about("melt-check").unwrap(), "ice");
}

#[test]
fn a_deadline_s_day_is_the_safe_one() {
    for one in &three().lake.windows {
        let expected = if one.kind == Kind::By { one.earliest } else { one.usual };
        assert_eq!(one.day(), expected, "{}", one.id);
    }
}

/// The demo's colonies under the model; its brood was not counted, so the rule of the trade holds beside.
#[test]
fn colonies_say_when_they_are_without_brood_and_when_it_begins() {
    let apiary = demo();
    let (winter, autumn, spring) = common::weather(&apiary);
    let parameters = Parameters::shipped().unwrap();
    let triggers = Triggers::shipped().unwrap();
    let plan = PlanQuestion {
        apiary: &apiary,
        winter: &winter,
        autumn: &autumn,
        autumn_from: common::autumn_from(&apiary),
        as_of: apiary.as_of,
        spring,
        parameters: &parameters,
        members: 64,
        seed: 1,
    };
    let answer = jobs(&JobsQuestion {
        apiary: &apiary,
        year: &common::site_year(&apiary, apiary.as_of, PATHS, 1),
        as_of: apiary.as_of,
        colonies: Some(plan),
        triggers: &triggers,
    });
    let (gone, begins) = (window(&answer, "broodless"), window(&answer, "brood-begins"));
    assert_eq!(gone.colonies.len(), apiary.colonies.len());
    assert!((date(2025, 10, 20)..=date(2025, 12, 10)).contains(&gone.usual.unwrap()), "{gone:?}");
    assert_eq!(gone.until, begins.usual);
    assert!((date(2026, 1, 15)..=date(2026, 3, 25)).contains(&begins.usual.unwrap()), "{begins:?}");
    assert!(usual(&answer, "midwinter-weighing") < begins.usual.unwrap());
}

#[test]
fn flying_days_are_few_in_winter_and_many_at_either_end() {
    let lake = &three().lake;
    let of = |month: i8, first: i8| {
        lake.half_months.iter().find(|half| half.from.month() == month && half.from.day() == first).unwrap()
    };
    assert!(of(1, 1).flying_days.p90 <= 1.0 && of(9, 1).flying_days.p50 >= 8.0 && of(5, 16).flying_days.p50 >= 10.0);
    for half in &lake.half_months {
        let days = half.to.duration_since(half.from).as_hours() as f64 / 24.0 + 1.0;
        for range in [half.flying_days, half.lid_days, half.comb_days] {
            assert!(range.p10 <= range.p50 && range.p50 <= range.p90 && range.p90 <= days.round(), "{half:?}");
        }
    }
}

#[test]
fn no_job_is_due_whose_last_day_is_past() {
    let answer = site(&demo(), date(2025, 11, 26));
    for job in answer.windows.iter().filter(|job| job.due == snowhum_advice::jobs::Due::Now) {
        let last = [job.latest, job.until].into_iter().flatten().max();
        assert!(last.is_none_or(|last| last >= date(2025, 11, 26)), "{}: {:?}", job.id, job.when);
    }
}

#[test]
fn food_is_watched_to_the_middle_of_april_however_early_it_flowers() {
    let plain = yard_at(46.0, 20.0, 90.0, "Europe/Budapest");
    let answer = site(&plain, date(2026, 9, 15));
    assert!(window(&answer, "starvation-watch").until.unwrap() >= date(2027, 4, 15));
}
