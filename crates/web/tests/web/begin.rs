//! A yard begun with four facts a hive: checked like a file, kept like a file, and never over a keeper's own.

use axum::http::StatusCode;
use snowhum_advice::yard;
use snowhum_apiary::{QuickHive, QuickStart, towns};
use snowhum_units::System;
use snowhum_weather::Climate;

use crate::support::{run, well_formed};

const FACTS: [(&str, &str); 9] = [
    ("hives", "1"),
    ("name", "My yard"),
    ("as_of", "2025-10-05"),
    ("town", "39"),
    ("0.name", "One"),
    ("0.kind", "Langstroth, 10 frames"),
    ("0.strength", "middling"),
    ("0.food", "fair"),
    ("do", "keep"),
];

/// The usual facts with some in place of others.
fn facts<'a>(other: &[(&'a str, &'a str)]) -> Vec<(&'a str, &'a str)> {
    let kept = FACTS.into_iter().filter(|(name, _)| other.iter().all(|(changed, _)| changed != name));
    kept.chain(other.iter().copied()).collect()
}

#[test]
fn a_yard_begun_is_served_and_kept_and_not_begun_again() {
    run(|served| async move {
        served.settled().await;
        let kept = served.post("/begin", &FACTS).await;
        assert_eq!((kept.status, kept.headers["location"].to_str().unwrap()), (StatusCode::SEE_OTHER, "/?begun=1"));
        let yards = served.store.yards().await.unwrap();
        assert_eq!(yards.iter().map(|yard| yard.name.as_str()).collect::<Vec<_>>(), ["My yard", "Rowan Bank"]);
        let page = served.get("/?begun=1").await.body;
        assert!(page.contains("Your yard is begun") && page.contains("My yard") && !page.contains("An invented yard"));
        let again = served.post("/begin", &facts(&[("name", "Another")])).await;
        assert_eq!(again.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(served.get("/begin").await.body.contains("My yard is kept here already"));
    });
}

#[test]
fn each_fault_stands_at_its_field_with_its_remedy_and_nothing_typed_is_lost() {
    run(|served| async move {
        let wrong =
            facts(&[("town", ""), ("0.strength", ""), ("0.weight", "a lot"), ("0.mites", "3"), ("as_of", "soon")]);
        let answer = served.post("/begin", &wrong).await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
        well_formed(&answer.body).unwrap();
        for (field, says) in [
            ("town", "Choose the town nearest"),
            ("as_of", "soon"),
            ("0.strength", "weak, middling or strong"),
            ("0.food", "a lot"),
            ("0.mites_of", "Write the bees in the sample"),
        ] {
            let told = answer.body.split(&format!("id=\"{field}.wrong\">")).nth(1);
            assert!(
                told.is_some_and(|told| told.split('<').next().unwrap().contains(says)),
                "{field}: {}",
                answer.body
            );
        }
        assert!(answer.body.contains("value=\"a lot\""), "what was typed stays");
    });
}

#[test]
fn hives_are_added_and_the_file_says_what_was_typed() {
    run(|served| async move {
        let more = served.post("/begin", &facts(&[("do", "more")])).await;
        assert_eq!(more.status, StatusCode::OK);
        assert!(more.body.contains("name=\"1.name\"") && more.body.contains("value=\"Hive 2\""));
        let file = served.post("/begin", &facts(&[("do", "file"), ("0.frames", "7,5"), ("0.weight", "12")])).await;
        assert_eq!(file.status, StatusCode::OK);
        assert!(file.headers["content-disposition"].to_str().unwrap().starts_with("attachment"));
        let (yard, _) = snowhum_apiary::read(&file.body, "my-yard.toml").unwrap();
        assert_eq!(yard.colonies[0].frames_of_bees, 7.5);
        assert_eq!(yard.colonies[0].stores.total.p50.get(), 12.0);
    });
}

#[test]
fn a_hive_is_dressed_on_its_picture_and_what_is_not_said_is_assumed() {
    run(|served| async move {
        let plain = served.post("/begin", &facts(&[("do", "look")])).await;
        assert_eq!((plain.status, well_formed(&plain.body)), (StatusCode::OK, Ok(())));
        assert!(plain.body.contains("name=\"0.lid\" value=\"\" checked") && !plain.body.contains("foam 50 mm<"));
        let dress = [("0.lid", "foam 50 mm"), ("0.upper_hole", "20 mm"), ("0.guard", "slot 8 mm")];
        let dressed = served.post("/begin", &facts(&[&dress[..], &[("do", "look")]].concat())).await;
        assert!(dressed.body.contains("name=\"0.lid\" value=\"foam 50 mm\" checked"), "what was tapped stays");
        let picture = |page: &str| {
            page.split("class=\"plate dressed\"").nth(1).unwrap().split("</figure>").next().unwrap().to_owned()
        };
        assert_ne!(picture(&plain.body), picture(&dressed.body));
        assert!(picture(&dressed.body).contains("foam 50\u{a0}mm") && picture(&dressed.body).contains("Upper hole"));
        let file = served.post("/begin", &facts(&[&dress[..], &[("do", "file")]].concat())).await;
        let (yard, _) = snowhum_apiary::read(&file.body, "my-yard.toml").unwrap();
        assert!(yard.hives[0].openings.iter().any(|one| one.kind == snowhum_apiary::OpeningKind::UpperHole));
        let many = served.post("/begin", &facts(&[&dress[..], &[("hives", "12"), ("do", "more")]].concat())).await;
        assert!(many.body.contains("name=\"0.lid\" value=\"foam 50 mm\"") && !many.body.contains("plate dressed"));
        let wrong = served.post("/begin", &facts(&[("0.guard", "a cat")])).await;
        assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(wrong.body.contains("id=\"0.guard.wrong\""), "{}", wrong.body);
    });
}

#[test]
fn a_yard_is_begun_in_january_with_nothing_known() {
    run(|served| async move {
        served.settled().await;
        let unknown = [("as_of", "2026-01-10"), ("0.strength", "not looked at"), ("0.food", "not looked at")];
        let kept = served.post("/begin", &facts(&unknown)).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER, "{}", kept.body);
        let yard = served.store.yards().await.unwrap();
        let yard =
            served.store.yard(yard.iter().find(|yard| yard.name == "My yard").unwrap().id).await.unwrap().unwrap();
        let colony = &yard.colonies[0];
        assert!(colony.quick_start && colony.stores.total.p90.get() > 3.0 * colony.stores.total.p10.get());
    });
}

#[test]
fn hostile_facts_are_shown_as_text_or_refused() {
    const SHOUT: &str = "<script>alert(1)</script>\"]]\n[[colony]]\nname = 1\n'''";
    run(|served| async move {
        for (field, _) in FACTS.into_iter().filter(|(field, _)| *field != "do") {
            let answer = served.post("/begin", &facts(&[(field, SHOUT), ("do", "file")])).await;
            assert!(answer.status == StatusCode::OK || answer.status == StatusCode::UNPROCESSABLE_ENTITY, "{field}");
            assert!(
                !answer.body.contains("<script>alert")
                    || answer.headers["content-type"] == "application/toml; charset=utf-8"
            );
        }
        for count in ["0", "-1", "99999999999", "many"] {
            let answer = served.post("/begin", &facts(&[("hives", count), ("do", "file")])).await;
            assert!(answer.status.is_success() || answer.status == StatusCode::UNPROCESSABLE_ENTITY, "{count}");
        }
    });
}

#[test]
fn every_town_has_a_winter_and_a_zone() {
    for town in towns() {
        let facts = QuickStart {
            name: "A yard".to_owned(),
            as_of: "2025-10-05".to_owned(),
            latitude: town.latitude.to_string(),
            longitude: town.longitude.to_string(),
            elevation: format!("{} m", town.elevation),
            zone: town.zone.clone(),
            hives: vec![QuickHive {
                name: "One".to_owned(),
                kind: "Langstroth, 10 frames".to_owned(),
                strength: "strong".to_owned(),
                food: "heavy".to_owned(),
                ..QuickHive::default()
            }],
        };
        let yard = facts.read(System::Metric).unwrap();
        let place = yard::place(&yard.site);
        assert!(Climate::at(place).is_ok(), "{} lies where no winter is known", town.name);
    }
    assert!(towns().len() > 50);
}
