//! Jobs and dates on the page and in the keeper's calendar.

use axum::http::StatusCode;
use jiff::civil::date;
use serde_json::Value;
use snowhum_advice::answer::OpenDates;
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::now::{Fates, NowAnswer};
use snowhum_advice::verdict::{ColonyVerdict, Urgency};
use snowhum_say::Tongue;

use crate::support::{Served, demo, run, run_bare};

#[test]
fn what_is_due_stands_first_with_its_reason_and_its_source() {
    run(|served| async move {
        served.settled().await;
        let page = served.get("/jobs").await.body;
        let (now, year) = (page.find("Due now").unwrap(), page.find("Its day is past").unwrap());
        assert!(now < year && page.contains("/source/jobs/") && page.contains("Not so."));
        assert!(page.contains("aria-current=\"page\">Jobs"));
        let spring = served.get("/spring").await.body;
        assert!(spring.find("Lift first").unwrap() < spring.find("May I open?").unwrap());
        assert!(spring.contains("does not end in February") && spring.contains("move nothing"));
    });
}

#[test]
fn the_calendar_is_a_download_with_one_event_for_each_dated_window_and_for_each_hive_that_needs_something() {
    run(|served| async move {
        served.settled().await;
        let answer = served.get("/jobs.ics").await;
        assert_eq!(answer.status, StatusCode::OK);
        assert_eq!(answer.headers["content-type"], "text/calendar; charset=utf-8");
        assert!(answer.headers["content-disposition"].to_str().unwrap().contains("attachment"));
        let windows: Value = serde_json::from_str(&served.get("/api/jobs").await.body).unwrap();
        let dated = windows["windows"].as_array().unwrap().iter().filter(|one| !one["earliest"].is_null()).count();
        let events = answer.body.matches("BEGIN:VEVENT").count();
        let hives = windows["hives"].as_array().unwrap();
        let then = hives.iter().filter_map(|one| one["then"].as_array()).flatten();
        let then = then.filter(|step| !step["by"].is_null()).count();
        let hives = hives.iter().filter(|one| !one["on"].is_null()).count() + then;
        let next = &windows["next_round"];
        let (on, custom) = (next["on"].as_str(), next["fortnight"].as_str());
        let by_custom = custom.is_some_and(|custom| on.is_none_or(|on| on > custom));
        let round = usize::from(on.is_some()) + usize::from(by_custom);
        assert!(hives > 0 && events == dated + hives + round, "{events} events for {dated} windows and {hives} hives");
    });
}

#[test]
fn who_is_due_first_stands_first_and_every_later_step_of_a_hive_stands_beside_it() {
    run(|served| async move {
        served.settled().await;
        let answer: JobsAnswer = serde_json::from_str(&served.get("/api/jobs").await.body).unwrap();
        assert!(answer.hives.is_sorted_by_key(|hive| hive.verdict.place()));
        let (yard, jobs) = (served.get("/").await.body, served.get("/jobs").await.body);
        for (page, end) in [(yard, "</a> <span class=\"word"), (jobs.clone(), "</strong> <span class=\"word")] {
            let places: Vec<_> = answer.hives.iter().map(|hive| page.find(&format!("{}{end}", hive.name))).collect();
            assert!(places.iter().all(Option::is_some) && places.is_sorted(), "{places:?}");
        }
        let then: Vec<String> = answer
            .hives
            .iter()
            .flat_map(|hive| &hive.then)
            .map(|step| Tongue::BRITISH.sentence(&step.words()))
            .collect();
        assert!(!then.is_empty() && then.iter().all(|step| jobs.contains(step)), "{then:?}");
    });
}

#[test]
fn today_comes_before_this_week_and_an_earlier_day_before_a_later() {
    let of = |word, day: i8| ColonyVerdict { word, by: Some(date(2025, 10, day)), first: None }.place();
    assert!(of(Urgency::Today, 6) < of(Urgency::ThisWeek, 12));
    assert!(of(Urgency::ThisWeek, 11) < of(Urgency::ThisWeek, 12) && of(Urgency::ThisWeek, 12) < of(Urgency::By, 14));
    assert!(of(Urgency::By, 14) < of(Urgency::By, 20) && of(Urgency::By, 20) < of(Urgency::LeaveAlone, 5));
}

#[test]
fn food_of_which_more_than_one_in_ten_run_short_is_not_said_to_last_plainly() {
    run(|served| async move {
        served.settled().await;
        let mut answer: Value = serde_json::from_str(&served.get("/api/now").await.body).unwrap();
        let answer: NowAnswer = serde_json::from_value(answer["now"].take()).unwrap();
        let mut colony = answer.colonies[0].clone();
        colony.runs_out = OpenDates { p10: None, p50: None, p90: None };
        let mut said = |hungry: f64| {
            colony.fates = Fates { well: 0.5, hungry, ..Fates::default() };
            Tongue::BRITISH.say(&colony.food_lasts(answer.looks_to))
        };
        assert!(said(0.1).starts_with("barely lasts") && said(0.02).starts_with("lasts"));
    });
}

#[test]
fn a_hostile_name_is_text_in_the_page_and_in_the_calendar() {
    let mut yard = demo();
    yard.name = "<b>Bank</b>, \"one\";\r\nEND:VCALENDAR\r\nX-EVIL:1".to_owned();
    run_bare(async {
        let served = Served::open_yard(None, yard).await;
        served.settled().await;
        assert!(!served.get("/jobs").await.body.contains("<b>Bank"));
        let calendar = served.get("/jobs.ics").await.body;
        assert_eq!(calendar.matches("\r\nEND:VCALENDAR").count(), 1);
        assert!(!calendar.contains("\nX-EVIL"));
    });
}
