//! Jobs and dates on the page and in the keeper's calendar.

use axum::http::StatusCode;
use serde_json::Value;

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
        let hives = windows["hives"].as_array().unwrap().iter().filter(|one| !one["on"].is_null()).count();
        let next = &windows["next_round"];
        let (on, custom) = (next["on"].as_str(), next["fortnight"].as_str());
        let by_custom = custom.is_some_and(|custom| on.is_none_or(|on| on > custom));
        let round = usize::from(on.is_some()) + usize::from(by_custom);
        assert!(hives > 0 && events == dated + hives + round, "{events} events for {dated} windows and {hives} hives");
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
