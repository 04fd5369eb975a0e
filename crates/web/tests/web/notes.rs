//! What is noted is kept once, shown, changed, withdrawn and taken back; nothing is lost.

use axum::http::StatusCode;
use snowhum_apiary::NoteId;
use snowhum_store::VersionKind;

use crate::support::{FEBRUARY, Served, demo, run, run_bare, well_formed};

const VISIT: &str = "019a0000-0000-7000-8000-000000000001";

async fn count(served: &Served) -> usize {
    served.store.yard(served.yard.id).await.unwrap().unwrap().notes.len()
}

#[test]
fn a_round_sent_twice_is_kept_once() {
    run(|served| async move {
        let before = count(&served).await;
        let round = [
            ("visit", VISIT),
            ("air", "-5"),
            ("snow", "none"),
            ("0.dead", "dead=6-20"),
            ("0.hum", "hum=heard by ear"),
            ("1.count", "17"),
            ("1.dead", "dead=1-5"),
            ("2.words", "a tit at the hole; gone when I came"),
        ];
        for _ in 0..2 {
            let kept = served.post("/round", &round).await;
            assert_eq!(kept.status, StatusCode::SEE_OTHER);
            assert_eq!(kept.headers["location"], "/round?kept=3");
        }
        assert_eq!(count(&served).await, before + 3);
        let alder = served.get(&format!("/hive/{}", served.colony("Alder"))).await.body;
        assert!(alder.contains("dead bees: 6-20 on ground") && alder.contains("hum: heard by ear"));
        let birch = served.get(&format!("/hive/{}", served.colony("Birch"))).await.body;
        assert!(birch.contains("dead bees: 17 on ground"), "a count outdoes a band");
        let juniper = served.get(&format!("/hive/{}", served.colony("Juniper"))).await.body;
        assert!(juniper.contains("a tit at the hole; gone when I came"), "free words are one entry");
    });
}

#[test]
fn the_estimate_follows_a_note() {
    run(|served| async move {
        let before = served.settled().await;
        served.post("/round", &[("visit", VISIT), ("4.hum", "hum=heard by ear")]).await;
        let after = served.settled().await;
        let alive = |now: &serde_json::Value| now["now"]["colonies"][4]["alive"].as_f64().unwrap();
        assert!(alive(&after) > alive(&before), "{} then {}", alive(&before), alive(&after));
        assert_eq!(after["now"]["colonies"][4]["evidence"][0]["on"], FEBRUARY.to_string());
    });
}

#[test]
fn a_note_is_edited_withdrawn_and_taken_back_and_every_version_stays() {
    run(|served| async move {
        let larch = served.colony("Larch");
        served.post(&format!("/hive/{larch}/note"), &[("visit", VISIT), ("line", "hum=silent by ear")]).await;
        let notes = served.store.yard(served.yard.id).await.unwrap().unwrap().notes;
        let note = notes.iter().find(|note| note.visit.0.to_string() == VISIT).unwrap().id;
        let page = format!("/note/{}", note.0);
        assert_eq!(served.post(&page, &[("line", "hum=heard by ear")]).await.status, StatusCode::SEE_OTHER);
        served.post(&format!("{page}/withdraw"), &[]).await;
        assert!(!served.get(&format!("/hive/{larch}")).await.body.contains(&page), "a withdrawn note counts no more");
        served.post(&format!("/hive/{larch}/undo"), &[]).await;
        let versions = served.store.versions(NoteId(note.0)).await.unwrap();
        let kinds: Vec<VersionKind> = versions.iter().map(|version| version.kind).collect();
        use VersionKind::{Edited, Made, Restored, Withdrawn};
        assert_eq!(kinds, [Made, Edited, Withdrawn, Restored]);
        assert!(served.get(&page).await.body.contains("hum: silent by ear"), "the first version is still shown");
    });
}

#[test]
fn a_note_that_cannot_be_read_stays_in_its_form_with_what_was_typed_and_the_nearest_guess() {
    run(|served| async move {
        served.settled().await;
        let before = count(&served).await;
        let page = format!("/hive/{}/note", served.colony("Alder"));
        let typed = [
            ("visit", VISIT),
            ("line", "hume=heard by ear"),
            ("poke", "poke=answered"),
            ("fed", "7.5"),
            ("feed", "fondant"),
            ("words", "a <b> in the line"),
            ("on", "2026-02-03"),
        ];
        let refused = served.post(&page, &typed).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(well_formed(&refused.body), Ok(()));
        for kept in [
            "value=\"hume=heard by ear\"",
            "value=\"poke=answered\" checked",
            "value=\"7.5\"",
            "value=\"fondant\" checked",
            "value=\"a &lt;b&gt; in the line\"",
            "value=\"2026-02-03\"",
            VISIT,
            "aria-invalid=\"true\"",
            "did you mean",
            "hum=heard by ear",
        ] {
            assert!(refused.body.contains(kept), "{kept} is lost: {}", refused.body);
        }
        assert!(!refused.body.contains("Go back"));
        assert_eq!(count(&served).await, before);
        let mended = typed.map(|(name, value)| (name, if name == "line" { "hum=heard by ear" } else { value }));
        let kept = served.post(&page, &mended).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER, "{}", kept.body);
        assert_eq!(count(&served).await, before + 1);
    });
}

#[test]
fn a_change_of_a_note_that_cannot_be_read_stays_in_its_form() {
    run(|served| async move {
        let note = served.yard.notes.first().unwrap().id.0;
        let page = format!("/note/{note}");
        let refused = served.post(&page, &[("line", "dead=4 on sno"), ("words", "wind")]).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(well_formed(&refused.body), Ok(()));
        for kept in ["value=\"dead=4 on sno\"", "value=\"wind\"", "aria-invalid=\"true\"", "snow", "How it stood"] {
            assert!(refused.body.contains(kept), "{kept} is lost: {}", refused.body);
        }
        assert!(!refused.body.contains("Go back"));
        let versions = served.store.versions(NoteId(note)).await.unwrap();
        assert_eq!(versions.len(), 1, "nothing was changed");
    });
}

#[test]
fn what_is_first_is_noted_as_done_by_the_button_under_the_verdict() {
    run(|served| async move {
        let now = served.settled().await;
        let mut tapped = 0;
        for colony in &served.yard.colonies {
            let page = format!("/hive/{}", colony.id.0);
            let body = served.get(&page).await.body;
            let Some((_, form)) = body.split_once("name=\"entry\" value=\"fed=") else { continue };
            let entry = format!("fed={}", form.split('"').next().unwrap());
            assert!(form.contains(">Done: "), "the button says what it notes: {form}");
            let kept = served.post(&format!("{page}/note"), &[("visit", VISIT), ("entry", &entry)]).await;
            assert_eq!(kept.status, StatusCode::SEE_OTHER, "{entry}: {}", kept.body);
            served.settled().await;
            let after = served.get(&page).await.body;
            assert!(after.contains(&entry.replace('=', ": ")), "{entry} is noted");
            tapped += 1;
            break;
        }
        assert_eq!(tapped, 1, "no hive of the yard is to be fed: {now}");
    });
}

#[test]
fn one_tap_notes_a_flight_and_a_second_mends_it() {
    run(|served| async move {
        let before = count(&served).await;
        let aspen = served.colony("Aspen");
        for seen in ["flight=well", "flight=thin", "flight=thin", "pollen=yes"] {
            let kept = served.post("/flight", &[("colony", &aspen), ("seen", seen)]).await;
            assert_eq!(kept.status, StatusCode::SEE_OTHER, "{seen}");
        }
        assert_eq!(count(&served).await, before + 2, "one note for the flight, one for the pollen");
        let page = served.get("/flight").await.body;
        assert!(page.contains("value=\"flight=thin\" aria-pressed=\"true\""));
        assert!(!page.contains("value=\"flight=well\" aria-pressed=\"true\""));
        let odd = served.post("/flight", &[("colony", &aspen), ("seen", "colony=dead")]).await;
        assert_eq!(odd.status, StatusCode::UNPROCESSABLE_ENTITY, "only what the page offers is tapped");
    });
}

#[test]
fn an_empty_round_says_so_and_keeps_nothing() {
    run(|served| async move {
        let before = count(&served).await;
        let answer = served.post("/round", &[("visit", VISIT), ("0.dead", "")]).await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(count(&served).await, before);
    });
}

#[test]
fn a_yard_brought_in_anew_with_less_food_is_watched_anew() {
    run(|served| async move {
        let food = |now: &serde_json::Value| now["now"]["colonies"][0]["stores_kg"]["total"]["p50"].as_f64().unwrap();
        let before = food(&served.settled().await);
        let mut yard = served.yard.clone();
        let stores = &mut yard.colonies[0].stores.total;
        *stores = stores.map(|kilograms| kilograms * 0.6);
        served.store.import_yard(&yard, jiff::Timestamp::now()).await.unwrap();
        let mut after = before;
        // It is looked every few seconds whether another program has written.
        for _ in 0..200 {
            after = food(&served.settled().await);
            if after < 0.8 * before {
                return;
            }
            tokio::time::sleep(std::time::Duration::from_millis(100)).await;
        }
        panic!("{before} kg, then {after}");
    });
}

#[test]
fn an_invented_yards_round_bears_its_day_and_its_own_clock() {
    run(|served| async move {
        let page = served.get("/round").await.body;
        assert!(page.contains("data-day=\"2026-02-07\" data-invented=\"+02:00\""), "a phone elsewhere has another day");
    });
}

fn sent(served: &Served, at: jiff::Timestamp) -> serde_json::Value {
    serde_json::json!({
        "visit": VISIT, "colony": served.colony("Alder"), "at": at.to_string(), "seen": ["hum=heard by ear"],
    })
}

#[test]
fn a_note_of_a_day_after_the_one_looked_at_is_refused_and_the_day_is_named() {
    run(|served| async move {
        let before = count(&served).await;
        let page = format!("/hive/{}/note", served.colony("Alder"));
        let tomorrow = FEBRUARY.tomorrow().unwrap().to_string();
        let refused = served.post(&page, &[("line", "hum=heard by ear"), ("on", &tomorrow)]).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(refused.body.contains("8 February 2026") && refused.body.contains("7 February 2026"));
        let at = FEBRUARY.tomorrow().unwrap().at(12, 0, 0, 0).in_tz("Europe/Helsinki").unwrap().timestamp();
        let refused = served.put("/api/notes/019a0000-0000-7000-8000-00000000000a", &sent(&served, at)).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(refused.body.contains("7 February 2026"), "{}", refused.body);
        assert_eq!(count(&served).await, before);
        let today = [("line", "hum=heard by ear"), ("on", &*FEBRUARY.to_string())];
        assert_eq!(served.post(&page, &today).await.status, StatusCode::SEE_OTHER);
        assert_eq!(count(&served).await, before + 1);
    });
}

#[test]
fn a_phone_whose_clock_is_a_little_fast_is_believed_in_a_keepers_own_yard() {
    run_bare(async {
        let served = Served::open_yard(None, snowhum_apiary::Apiary { invented: false, ..demo() }).await;
        let put = async |number: u8, ahead: jiff::SignedDuration| {
            let id = format!("/api/notes/019a0000-0000-7000-8000-0000000000{number}");
            served.put(&id, &sent(&served, jiff::Timestamp::now() + ahead)).await
        };
        assert_eq!(put(10, jiff::SignedDuration::from_mins(5)).await.status, StatusCode::CREATED);
        let far = put(11, jiff::SignedDuration::from_hours(49)).await;
        assert_eq!(far.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(far.body.contains("is still to come: today is"), "{}", far.body);
    });
}

#[test]
fn a_colony_that_was_sold_is_asked_about_no_more() {
    run(|served| async move {
        served.settled().await;
        let alder = served.colony("Alder");
        let kept = served.post(&format!("/hive/{alder}/note"), &[("line", "counted=sold")]).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER);
        let now = served.settled().await;
        assert_eq!(now["now"]["colonies"][0]["is_closed"], true);
        let round = served.get("/round").await.body;
        assert!(round.contains("Not asked about") && !round.contains(&format!("data-colony=\"{alder}\"")));
        assert_eq!(round.matches("data-colony=").count(), 4);
        assert!(!served.get("/round/sheet").await.body.contains("Alder"));
        assert!(served.get("/").await.body.contains("Sold: watched no more."));
        let hive = served.get(&format!("/hive/{alder}")).await.body;
        assert!(
            !hive.contains("Alive today?") && !hive.contains("What the next look should show"),
            "nothing is expected of it"
        );
    });
}

#[test]
fn with_two_hundred_notes_a_hives_page_stays_small_and_all_of_them_are_a_tap_away() {
    run(|served| async move {
        let alder = served.colony("Alder");
        let first = "2025-10-06T12:00:00Z".parse::<jiff::Timestamp>().unwrap();
        for at in 0..200_u128 {
            let [visit, id] = [at, at + 1_000].map(|at| uuid::Uuid::from_u128((0x019a_u128 << 112) | (7 << 76) | at));
            let note = serde_json::json!({
                "visit": visit, "colony": alder, "at": first + jiff::SignedDuration::from_hours(14 * at as i64),
                "seen": ["dead=1-5 on snow", "hum=heard by ear", "entrance=clear"],
            });
            let answer = served.put(&format!("/api/notes/{id}"), &note).await;
            assert!(answer.status.is_success(), "{at}: {}", answer.body);
        }
        served.settled().await;
        let page = served.get(&format!("/hive/{alder}")).await.body;
        assert!(page.len() < 150_000, "{} bytes", page.len());
        assert!(page.contains("notes=all"));
        let all = served.get(&format!("/hive/{alder}?notes=all")).await.body;
        assert!(all.matches("entrance: clear").count() >= 200);
    });
}
