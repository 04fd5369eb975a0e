//! A new autumn begun in the browser, and slips that are asked about.

use super::support::{Served, demo, run_bare};
use axum::http::StatusCode;
use jiff::civil::date;
use snowhum_advice::lessons::{LessonsAnswer, LessonsQuestion, lessons};
use snowhum_apiary::Apiary;
use snowhum_web::Reach;

fn own() -> Apiary {
    Apiary { invented: false, ..demo() }
}

/// The winter of 2025 as its losses are told on a day after it.
fn losses(apiary: &Apiary) -> LessonsAnswer {
    let question = LessonsQuestion {
        apiary,
        as_of: date(2026, 11, 1),
        season: Some(2025),
        spring: date(2026, 5, 9),
        added: 0,
        removed: 0,
        forecasts: &[],
    };
    lessons(&question).unwrap()
}

#[test]
fn the_yard_leads_to_the_new_autumn_and_last_winter_stays_as_it_was() {
    run_bare(async {
        let served = Served::on(None, own(), Reach::this_machine(), date(2026, 9, 10)).await;
        let yard = served.get("/").await.body;
        assert!(yard.contains("for a winter that is over") && yard.contains("href=\"/season\""));
        let form = served.get("/season").await.body;
        assert!(form.contains("name=\"0.bees\"") && form.contains("5 October 2025"), "{form}");
        let before = served.store.yard(served.yard.id).await.unwrap().unwrap();
        let nothing = served.post("/season", &[("as_of", "10.9.2026")]).await;
        assert_eq!(nothing.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(nothing.body.contains("Alder: ") && nothing.body.contains("middling"), "{}", nothing.body);
        let mut pairs = vec![("as_of", "10.9.2026"), ("0.bees", "8"), ("0.food", "14,5"), ("0.mites", "3 %")];
        pairs.extend([("1.gone", "yes"), ("2.gone", "yes"), ("3.gone", "yes"), ("4.gone", "yes")]);
        let begun = served.post("/season", &pairs).await;
        assert_eq!(begun.status, StatusCode::SEE_OTHER, "{}", begun.body);
        let after = served.store.yard(served.yard.id).await.unwrap().unwrap();
        assert_eq!((after.as_of, after.colonies.len()), (date(2026, 9, 10), 1));
        let then = after.in_winter(2025);
        assert_eq!((&then.colonies, &then.notes), (&before.colonies, &before.notes), "history, to the digit");
        assert!(after.notes.is_empty());
        assert!(!served.get("/").await.body.contains("for a winter that is over"));
        assert_eq!(losses(&after), losses(&before), "to the digit");
    });
}

#[test]
fn a_hive_that_is_new_comes_with_the_autumn() {
    run_bare(async {
        let served = Served::on(None, own(), Reach::this_machine(), date(2026, 9, 10)).await;
        let counted = [("as_of", "10.9.2026"), ("0.bees", "8"), ("0.food", "14"), ("1.gone", "yes"), ("2.gone", "yes")];
        let counted = [&counted[..], &[("3.gone", "yes"), ("4.gone", "yes")]].concat();
        let foodless = [("name", "Maple"), ("kind", "Langstroth 10"), ("strength", "middling")];
        let wrong = served.post("/season", &[&counted[..], &foodless].concat()).await;
        assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(wrong.body.contains("value=\"Maple\"") && wrong.body.contains("food"), "{}", wrong.body);
        assert!(wrong.body.contains("name=\"0.bees\"") && wrong.body.contains("value=\"8\""), "what was counted stays");
        let taken = [("name", "Birch"), ("strength", "middling"), ("food", "fair")];
        let taken = served.post("/season", &[&counted[..], &taken].concat()).await;
        assert!(taken.body.contains("Another hive has this name"), "a hive whose colony died keeps its name");
        let maple = [("name", "Maple"), ("kind", "Langstroth 10"), ("strength", "middling"), ("food", "fair")];
        let maple = [&maple[..], &[("lid", "foam 50 mm")]].concat();
        let begun = served.post("/season", &[&counted[..], &maple].concat()).await;
        assert_eq!(begun.status, StatusCode::SEE_OTHER, "{}", begun.body);
        let after = served.store.yard(served.yard.id).await.unwrap().unwrap();
        let names: Vec<&str> = after.colonies.iter().map(|colony| colony.name.as_str()).collect();
        assert_eq!((names, after.as_of), (vec!["Alder", "Maple"], date(2026, 9, 10)));
        assert!(!after.hives.iter().find(|hive| hive.id == after.colonies[1].hive).unwrap().lid.is_empty());
        let page = served.get("/?begun=autumn").await.body;
        assert!(page.contains("The new autumn is begun.") && !page.contains("Your yard is begun."));
    });
}

#[test]
fn the_invented_yard_begins_no_autumn() {
    run_bare(async {
        let served = Served::open(None).await;
        assert_eq!(served.post("/season", &[]).await.status, StatusCode::UNPROCESSABLE_ENTITY);
    });
}

#[test]
fn a_note_twice_or_before_the_count_is_asked_about_on_a_page_and_kept_from_a_phone() {
    run_bare(async {
        let served = Served::open_yard(None, own()).await;
        let page = format!("/hive/{}/note", served.colony("Alder"));
        let early = [("line", "hum=heard by ear"), ("on", "1.9.2025")];
        let asked = served.post(&page, &early).await;
        assert_eq!(asked.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(asked.body.contains("name=\"sure\"") && asked.body.contains("before the colonies were counted"));
        let sure = served.post(&page, &[&early[..], &[("sure", "yes")]].concat()).await;
        assert_eq!(sure.status, StatusCode::SEE_OTHER);
        let now = [("line", "scale=46"), ("on", "6 Feb 2026")];
        assert_eq!(served.post(&page, &now).await.status, StatusCode::SEE_OTHER);
        let again = served.post(&page, &now).await;
        assert!(again.body.contains("the same stands noted"), "{}", again.body);
        // A phone that sends what was tapped out of reach cannot be asked: ids tell doubles, and nothing is lost.
        let sent = serde_json::json!({
            "visit": "019a0000-0000-7000-8000-0000000000f1", "colony": served.colony("Alder"),
            "at": "2026-02-06T10:00:00Z", "seen": ["scale=46"],
        });
        let put = served.put("/api/notes/019a0000-0000-7000-8000-0000000000a1", &sent).await;
        assert_eq!(put.status, StatusCode::CREATED, "{}", put.body);
    });
}
