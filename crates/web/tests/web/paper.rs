//! The treatment record and the sheets for paper.

use axum::body::Body;
use axum::http::{Request, StatusCode};

use crate::support::{run, well_formed};

const VISIT: &str = "0190a5f0-0000-7000-8000-000000000001";

fn given<'a>(colony: &'a str, more: &[(&'a str, &'a str)]) -> Vec<(&'a str, &'a str)> {
    let mut pairs = vec![("visit", VISIT), ("colony", colony), ("on", "2026-02-01"), ("class", "oxalic")];
    pairs.extend_from_slice(more);
    pairs
}

#[test]
fn a_treatment_of_all_hives_is_kept_once_for_each_and_what_is_missing_is_said() {
    run(|served| async move {
        let pairs = given("all", &[("product", "Example <b>oxalic</b>"), ("withdrawal", "nil")]);
        for _ in 0..2 {
            let kept = served.post("/treatments", &pairs).await;
            assert_eq!(kept.status, StatusCode::SEE_OTHER);
        }
        served.settled().await;
        let page = served.get("/treatments").await.body;
        well_formed(&page).unwrap();
        assert_eq!(page.matches("2026-02-01").count(), served.yard.colonies.len(), "sent twice, kept once");
        assert!(page.contains("Example &lt;b&gt;oxalic&lt;/b&gt;") && !page.contains("<b>oxalic"));
        assert!(page.contains("data-label=\"Withdrawal\">nil</td>") && page.contains("<em>not noted</em>"));
        assert!(page.contains("five years") && page.contains("Keeper: ____"));
    });
}

#[test]
fn a_record_that_cannot_be_kept_is_refused_with_what_would_be_right() {
    run(|served| async move {
        let alder = served.colony("Alder");
        let long = "x".repeat(81);
        for (pairs, right) in [
            (given(&alder, &[("product", "a | b")]), "comma"),
            (given(&alder, &[("batch", long.as_str())]), "at most 80"),
            (given("nobody", &[]), "Choose a hive"),
            (vec![("colony", "all"), ("class", "magic")], "substance"),
            (vec![("colony", "all"), ("class", "oxalic"), ("on", "2026-03-01")], "still to come"),
        ] {
            let answer = served.post("/treatments", &pairs).await;
            assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY, "{pairs:?}");
            assert!(answer.body.contains(right), "{right}: {}", answer.body);
        }
    });
}

#[test]
fn cards_carry_the_address_they_were_asked_at_and_say_when_it_leads_nowhere() {
    run(|served| async move {
        served.settled().await;
        let asked = Request::get("/paper/cards").header("host", "127.0.0.1:8462").body(Body::empty()).unwrap();
        let page = served.ask(asked).await.body;
        let alder = served.colony("Alder");
        assert!(page.contains(&format!("http://127.0.0.1:8462/hive/{alder}")) && page.contains("lead nowhere"));
        assert_eq!(page.matches("<svg class=\"qr\"").count(), served.yard.colonies.len());
        let foreign = Request::get("/paper/cards").header("host", "elsewhere.example").body(Body::empty()).unwrap();
        assert_eq!(served.ask(foreign).await.status, StatusCode::FORBIDDEN, "no code to another's address");
    });
}

#[test]
fn sheets_as_files_need_nothing_beside_them() {
    run(|served| async move {
        let papers = served.app.papers(Some("https://192.0.2.7:8462")).await.unwrap();
        let files: Vec<&str> = papers.iter().map(|paper| paper.file).collect();
        assert_eq!(files, ["yard.html", "round.html", "cards.html", "treatments.html", "season.html"]);
        for paper in &papers {
            well_formed(&paper.html).unwrap_or_else(|error| panic!("{}: {error}", paper.file));
            for outside in ["<script", "<link", "src=", "href="] {
                assert!(!paper.html.contains(outside), "{} leans on {outside}", paper.file);
            }
            for colony in &served.yard.colonies {
                assert!(paper.html.contains(&colony.name), "{} lacks {}", paper.file, colony.name);
            }
        }
        assert!(papers[2].html.contains("https://192.0.2.7:8462/hive/"));
    });
}
