//! What is tapped standing at a hive in the snow, as it is served, kept and shown.

use axum::http::StatusCode;

use crate::support::run;

const VISIT: &str = "019a0000-0000-7000-8000-000000000077";

/// What the keeper of the demo yard has noted at a colony, latest first, as written.
async fn noted(served: &crate::support::Served, name: &str) -> Vec<String> {
    let yard = served.store.yard(served.yard.id).await.unwrap().unwrap();
    let id = served.colony(name);
    let own = yard.notes.iter().rev().filter(|note| note.colony.0.to_string() == id);
    own.flat_map(|note| note.entries.iter().map(|entry| entry.written(&|_| String::new()))).collect()
}

#[test]
fn the_round_offers_a_tap_for_a_bee_that_answers_a_poke_and_for_each_state_of_an_opening() {
    run(|served| async move {
        served.settled().await;
        let round = served.get("/round").await.body;
        for tap in ["poke=answered", "poke=silent", "entrance=drifted over", "upper=blocked", "upper=plugged with bees"]
        {
            assert!(round.contains(&format!("name=\"0.{}\" value=\"{tap}\"", tap.split('=').next().unwrap())), "{tap}");
        }
        assert!(round.contains("not tried"), "what is not tapped is not tried");
        assert!(!round.contains("name=\"1.upper\""), "Birch has no upper hole");
        let sent =
            [("visit", VISIT), ("0.poke", "poke=answered"), ("0.upper", "upper=blocked"), ("1.poke", "poke=silent")];
        assert_eq!(served.post("/round", &sent).await.status, StatusCode::SEE_OTHER);
        let alder = noted(&served, "Alder").await;
        assert!(alder.iter().any(|one| one == "poke=answered") && alder.iter().any(|one| one == "upper=blocked"));
        let now = served.settled().await;
        let alive = now["now"]["colonies"][0]["alive"].as_f64().unwrap();
        assert!(alive > 0.99, "{alive}");
    });
}

#[test]
fn page_and_picture_say_what_was_noted_of_the_upper_hole_and_no_other() {
    run(|served| async move {
        served.settled().await;
        let page = format!("/hive/{}", served.colony("Alder"));
        let before = served.get(&page).await.body;
        assert!(before.contains("name=\"upper\" value=\"upper=blocked\""), "tapped on the hive's own page too");
        assert!(before.contains("all open") && !before.contains("noted blocked"));
        let blocked = [("visit", VISIT), ("upper", "upper=blocked"), ("on", "2026-01-03")];
        assert_eq!(served.post(&format!("{page}/note"), &blocked).await.status, StatusCode::SEE_OTHER);
        served.settled().await;
        let after = served.get(&page).await.body;
        assert!(after.contains("Upper hole noted blocked on 3 January"), "in words");
        assert!(after.contains("noted blocked on 3 January, air"), "on the picture, with the air that still passes");
        let air = |page: &str| {
            let figures = page.split("<dt>Air in and out</dt><dd>").nth(1).unwrap();
            figures.split(' ').next().unwrap().parse::<f64>().unwrap()
        };
        assert!(air(&after) < air(&before), "{} L a second, {} before", air(&after), air(&before));
        served.post(&format!("{page}/undo"), &[]).await;
        served.settled().await;
        let undone = served.get(&page).await.body;
        assert!(!undone.contains("noted blocked") && air(&undone) == air(&before), "as if it had never been noted");
    });
}

#[test]
fn a_candy_board_is_put_on_drawn_with_what_is_left_and_taken_off_by_a_tap() {
    run(|served| async move {
        served.settled().await;
        let page = format!("/hive/{}", served.colony("Alder"));
        let before = served.get(&page).await.body;
        assert!(!before.contains("Candy") && !before.contains("board=eaten up\""), "nothing is on it");
        let put = [("visit", VISIT), ("board", "3 kg candy with pollen, rim 50 mm, hole 40 mm"), ("on", "2026-01-03")];
        assert_eq!(served.post(&format!("{page}/note"), &put).await.status, StatusCode::SEE_OTHER);
        let now = served.settled().await;
        let body = &now["now"]["colonies"][0]["food_body"];
        assert!(body["reached"].as_f64().unwrap() <= 1.0 && body["left_kg"]["p50"].as_f64().unwrap() <= 3.0, "{body}");
        let on = served.get(&page).await.body;
        assert!(on.contains(&capital(body["says"].as_str().unwrap())), "the same sentence");
        assert!(on.contains("Candy with pollen") && on.contains("of 3.0 kg left"), "on the picture");
        let tapped = [("visit", "019a0000-0000-7000-8000-000000000078"), ("entry", "board=eaten up")];
        assert!(on.contains("value=\"board=eaten up\""));
        assert_eq!(served.post(&format!("{page}/note"), &tapped).await.status, StatusCode::SEE_OTHER);
        served.settled().await;
        assert!(!served.get(&page).await.body.contains("of 3.0 kg left"), "eaten up");
        for _ in 0..2 {
            served.post(&format!("{page}/undo"), &[]).await;
        }
        let undone = served.settled().await;
        assert!(undone["now"]["colonies"][0].get("food_body").is_none(), "as if it had never been put on");
    });
}

#[test]
fn snow_measured_at_the_box_buries_the_entrance_it_reaches_until_undone() {
    run(|served| async move {
        served.settled().await;
        let page = format!("/hive/{}", served.colony("Alder"));
        assert!(served.get("/round").await.body.contains("data-before=\"snow=\""), "typed on the round");
        let snow = [("visit", VISIT), ("depth", "55"), ("on", "2026-01-03")];
        assert_eq!(served.post(&format!("{page}/note"), &snow).await.status, StatusCode::SEE_OTHER);
        assert!(
            noted(&served, "Alder").await.contains(&"snow=55 cm".to_owned()),
            "a bare depth is in the keeper's unit"
        );
        served.settled().await;
        let buried = served.get(&page).await.body;
        assert!(buried.contains("noted drifted over on 3 January") && !buried.contains("Upper hole noted"));
        let warm = [("visit", "019a0000-0000-7000-8000-000000000079"), ("line", "lid=warm")];
        assert_eq!(served.post(&format!("{page}/note"), &warm).await.status, StatusCode::SEE_OTHER);
        for _ in 0..2 {
            served.post(&format!("{page}/undo"), &[]).await;
        }
        served.settled().await;
        assert!(!served.get(&page).await.body.contains("noted drifted over"), "as if it had never been noted");
    });
}

fn capital(text: &str) -> String {
    snowhum_say::capital(text)
}

#[test]
fn an_upper_hole_that_is_not_there_is_refused_with_what_would_be_right() {
    run(|served| async move {
        served.settled().await;
        let birch = served.colony("Birch");
        let answer = served.post(&format!("/hive/{birch}/note"), &[("visit", VISIT), ("line", "upper=blocked")]).await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(answer.body.contains("no upper hole") && answer.body.contains("changed=upper hole"), "{}", answer.body);
    });
}
