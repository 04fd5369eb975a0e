//! The JSON API: put twice is stored once, nothing is lost, everything offered is described.

use axum::http::StatusCode;
use jiff::civil::date;
use serde_json::{Value, json};
use snowhum_apiary::NoteId;
use snowhum_web::Reach;
use uuid::Uuid;

use crate::support::{Served, demo, run, run_bare};

fn note(served: &Served, at: u32, seen: &str) -> Value {
    json!({
        "visit": Uuid::from_u128(u128::from(at / 5 + 1)),
        "colony": served.yard.colonies[at as usize % 5].id.0,
        "at": format!("2026-02-0{}T10:{:02}:00Z", 1 + at % 3, at % 60),
        "air": "-6 C",
        "snow": "old",
        "seen": [seen],
        "words": format!("entry {at}"),
    })
}

fn id(at: u32) -> Uuid {
    Uuid::from_u128(0x019a_0000_0000_7000_8000_0000_0000_0000 + u128::from(at))
}

#[test]
fn a_note_put_again_is_stored_once_and_another_under_its_id_is_kept_beside_it() {
    run(|served| async move {
        let path = format!("/api/notes/{}", id(1));
        let first = note(&served, 1, "hum=heard by ear");
        assert_eq!(served.put(&path, &first).await.status, StatusCode::CREATED);
        assert_eq!(served.put(&path, &first).await.status, StatusCode::OK);
        assert_eq!(served.store.versions(NoteId(id(1))).await.unwrap().len(), 1);
        let other = served.put(&path, &note(&served, 1, "hum=silent by ear")).await;
        assert_eq!(other.status, StatusCode::CONFLICT);
        let versions: Value = serde_json::from_str(&served.get(&path).await.body).unwrap();
        assert_eq!(versions["versions"].as_array().unwrap().len(), 2, "both are kept");
    });
}

#[test]
fn two_hundred_entries_arrive_exactly_once_though_the_server_ends_twice_between() {
    let folder = std::env::temp_dir().join(format!("snowhum-web-{}", std::process::id()));
    let file = folder.join("records.db");
    for end in [70, 140, 200] {
        run_bare(async {
            // The sender knows of no answer and begins anew each time.
            let served = Served::open(Some(file.clone())).await;
            for at in 0..end {
                let answer = served.put(&format!("/api/notes/{}", id(at)), &note(&served, at, "dead=3 on snow")).await;
                assert!(answer.status.is_success(), "{at}: {} {}", answer.status, answer.body);
            }
        });
    }
    run_bare(async {
        let served = Served::open(Some(file.clone())).await;
        for at in 0..200 {
            assert_eq!(served.store.versions(NoteId(id(at))).await.unwrap().len(), 1, "entry {at}");
        }
    });
    std::fs::remove_dir_all(folder).unwrap();
}

#[test]
fn everything_described_answers_and_what_is_sent_is_the_described_form() {
    run(|served| async move {
        served.settled().await;
        let described: Value = serde_json::from_str(&served.get("/api").await.body).unwrap();
        for (path, operations) in described["paths"].as_object().unwrap() {
            if operations.get("get").is_some() && !path.contains('{') {
                assert_eq!(served.get(path).await.status, StatusCode::OK, "{path}");
            }
        }
        let mut example =
            described["paths"]["/api/notes/{id}"]["put"]["requestBody"]["content"]["application/json"]["example"]
                .clone();
        example["colony"] = json!(served.yard.colonies[0].id.0);
        let stored = served.put(&format!("/api/notes/{}", id(9)), &example).await;
        assert_eq!(stored.status, StatusCode::CREATED, "{}", stored.body);
    });
}

#[test]
fn what_cannot_be_read_is_refused_with_what_would_be_right() {
    run(|served| async move {
        let path = format!("/api/notes/{}", id(1));
        let wrong = served.put(&path, &note(&served, 1, "hum=loud")).await;
        assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(wrong.body.contains("heard"), "{}", wrong.body);
        let mut nobody = note(&served, 1, "hum=heard by ear");
        nobody["colony"] = json!(Uuid::from_u128(1));
        assert_eq!(served.put(&path, &nobody).await.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(served.store.versions(NoteId(id(1))).await.unwrap().is_empty());
    });
}

#[test]
fn an_estimate_that_cannot_be_computed_says_why() {
    run_bare(async {
        let served = Served::on(None, demo(), Reach::this_machine(), date(2026, 7, 1)).await;
        let answer = loop {
            let answer = served.get("/api/now").await;
            if !answer.body.contains("still being computed") {
                break answer;
            }
            tokio::time::sleep(std::time::Duration::from_millis(20)).await;
        };
        assert_eq!(answer.status, StatusCode::SERVICE_UNAVAILABLE);
        assert!(answer.body.contains("that day lies after this winter"), "{}", answer.body);
    });
}

#[test]
fn a_note_of_a_day_nobody_can_mean_is_refused_with_what_would_be_right() {
    run(|served| async move {
        for at in ["0019-02-01T10:00:00Z", "1949-12-31T10:00:00Z", "9999-01-01T00:00:00Z"] {
            let mut note = note(&served, 1, "hum=heard by ear");
            note["at"] = at.into();
            let answer = served.put(&format!("/api/notes/{}", id(9)), &note).await;
            assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY, "{at}: {}", answer.body);
            assert!(answer.body.contains("rite a day"), "{at}: {}", answer.body);
        }
        assert!(served.store.versions(NoteId(id(9))).await.unwrap().is_empty());
    });
}
