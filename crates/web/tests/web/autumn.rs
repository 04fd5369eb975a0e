//! Before winter: fit or not, guessed first, fed, counted for mites, weighed on the spot.

use axum::http::StatusCode;

use crate::support::{Served, run, well_formed};

async fn page(served: &Served, path: &str) -> String {
    let answer = served.get(path).await;
    assert_eq!(answer.status, StatusCode::OK, "{path}");
    assert_eq!(well_formed(&answer.body), Ok(()), "{path}");
    answer.body
}

#[test]
fn each_colony_has_its_verdict_its_six_scales_and_their_sources() {
    run(|served| async move {
        served.settled().await;
        let body = page(&served, "/fit").await;
        for colony in &served.yard.colonies {
            assert!(body.contains(&format!("{} on six scales", colony.name)), "{}", colony.name);
        }
        assert_eq!(body.matches("class=\"fitness\"").count(), 5);
        assert!(body.contains("not bees already hurt") && body.contains("Finnish beekeepers"));
        assert!(body.contains("whether an excluder, a feeder or an empty super is still on"));
    });
}

#[test]
fn a_guess_comes_first_and_nothing_of_the_verdict_is_shown_before_it() {
    run(|served| async move {
        served.settled().await;
        let before = page(&served, "/fit?guess=1").await;
        assert!(!before.contains("The model</span>") && before.contains("Your guess"));
        let after = page(&served, "/fit?guess=1&g0=alone&g3=alone&g4=nonsense").await;
        assert_eq!(after.matches("The model</span>").count(), 2, "two were guessed");
        assert!(after.contains("The same.") && after.contains("They differ."));
        assert!(after.contains("name=\"g0\" value=\"alone\""), "what was guessed is kept while the rest is");
    });
}

#[test]
fn the_feeding_page_lists_labels_and_reckons_the_keepers_feeder() {
    run(|served| async move {
        served.settled().await;
        served.post("/day", &[("day", "2025-10-05")]).await;
        let body = page(&served, "/feed?feeder=6").await;
        assert!(body.contains("Labels for the roofs") && body.contains("Cups are not kilograms"));
        assert!(body.contains("1:1 is for spring") && !body.contains("as 1:1"));
        let wrong = page(&served, "/feed?feeder=a+bucket").await;
        assert!(wrong.contains("write what your feeder holds"));
    });
}

#[test]
fn the_worst_hive_stands_first_among_the_counts_and_no_dose_is_named() {
    run(|served| async move {
        served.settled().await;
        let body = page(&served, "/mites").await;
        let rows = body.split("<tbody").nth(1).unwrap();
        assert!(rows.find("Larch").unwrap() < rows.find("Alder").unwrap());
        assert!(body.contains("go by Larch") || body.contains("Larch is at or over the line"));
        assert!(
            body.contains("Thymol")
                && body.contains("Oxalic acid, trickled")
                && body.contains("No quantity is told here")
        );
        for dose in [" ml ", " mg ", " grams"] {
            assert!(!body.to_lowercase().contains(dose), "{dose}");
        }
    });
}

#[test]
fn two_lifts_are_reckoned_and_kept_with_their_error() {
    run(|served| async move {
        served.settled().await;
        let birch = served.colony("Birch");
        let body = page(&served, &format!("/hive/{birch}/weigh?left=14&right=12&inset=2&lift=1")).await;
        assert!(body.contains("Food: ") && body.contains("Keep it as a note"));
        let line = body.split("name=\"line\" value=\"").nth(1).unwrap().split('"').next().unwrap().to_owned();
        assert!(line.starts_with("stores=") && line.contains(" ± "), "{line}");
        let kept = served.post(&format!("/hive/{birch}/note"), &[("line", &line)]).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER);
        assert!(page(&served, &format!("/hive/{birch}")).await.contains("stores: "));
        let one = page(&served, &format!("/hive/{birch}/weigh?left=14")).await;
        assert!(one.contains("Give both sides"));
        let odd = page(&served, &format!("/hive/{birch}/weigh?left=heavy&right=12")).await;
        assert!(odd.contains("write a figure such as 21.5 kg"));
    });
}

#[test]
fn a_page_of_the_count_says_in_february_that_its_day_is_past() {
    run(|served| async move {
        served.settled().await;
        for path in ["/fit", "/feed", "/mites"] {
            let body = page(&served, path).await;
            assert!(body.contains("As it stood on ") && body.contains("that day is past"), "{path}");
        }
    });
}

#[test]
fn a_colony_that_starves_as_it_stands_is_not_told_sound() {
    run(|served| async move {
        served.settled().await;
        let body = page(&served, "/fit").await;
        let short = body.split("class=\"fitness\"").skip(1).filter(|told| told.contains("of stores short"));
        let mut fed = 0;
        for told in short {
            fed += 1;
            assert!(!told.split("</h2>").next().unwrap().contains("word sound"), "{told}");
        }
        assert!(fed > 0, "the demo has a hungry colony");
    });
}
