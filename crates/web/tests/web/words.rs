//! British or North American on every page, the keeper's own words on none changed.

use axum::http::StatusCode;
use snowhum_advice::questions::questions;

use crate::pages::every_page;
use crate::support::{Served, demo, run, run_bare, said};

/// Words that one side of the ocean alone uses, written out here apart from the product's own list.
const BRITISH: [&str; 11] = [
    "floor",
    "floors",
    "crownboard",
    "roof",
    "brood box",
    "entrance block",
    "uniting",
    "eke",
    "mite drop",
    "wasps",
    "bee inspector",
];
const AMERICAN: [&str; 11] = [
    "bottom board",
    "bottom boards",
    "inner cover",
    "outer cover",
    "hive body",
    "entrance reducer",
    "follower board",
    "shim",
    "mite fall",
    "yellowjackets",
    "apiary inspector",
];

fn holds(text: &str, term: &str) -> Option<String> {
    let low = text.to_lowercase();
    let is_edge = |letter: Option<char>| letter.is_none_or(|letter| !letter.is_alphanumeric());
    low.match_indices(term).find_map(|(at, _)| {
        let (before, after) = (&low[..at], &low[at + term.len()..]);
        let stands = is_edge(before.chars().next_back()) && is_edge(after.chars().next());
        stands.then(|| before.chars().rev().take(40).collect::<Vec<_>>().into_iter().rev().collect::<String>() + term)
    })
}

async fn none_is_on_any_page(served: &Served, terms: &[&str]) {
    served.settled().await;
    for page in every_page(served).iter().filter(|page| !page.starts_with("/source/")) {
        let answer = served.get(page).await;
        assert_eq!(answer.status, StatusCode::OK, "{page}");
        let text = said(&answer.body);
        for term in terms {
            assert_eq!(holds(&text, term), None, "{page} says \"{term}\"");
        }
    }
}

async fn choose(served: &Served, words: &str) {
    let pairs = [("units", "metric"), ("words", words), ("currency", "EUR"), ("colony", "150")];
    assert_eq!(served.post("/settings", &pairs).await.status, StatusCode::SEE_OTHER);
}

#[test]
fn a_keeper_in_north_america_meets_no_british_word() {
    run(|served| async move {
        choose(&served, "north-american").await;
        none_is_on_any_page(&served, &BRITISH).await;
        let hive = served.get(&format!("/hive/{}", served.colony("Alder"))).await.body;
        assert!(hive.contains("Bottom board") && hive.contains("lang=\"en-US\""), "the picture's labels too");
    });
}

#[test]
fn a_keeper_in_britain_meets_no_american_word() {
    run(|served| async move {
        none_is_on_any_page(&served, &AMERICAN).await;
        let hive = served.get(&format!("/hive/{}", served.colony("Alder"))).await.body;
        assert!(
            hive.contains("lang=\"en-GB\"") && holds(&said(&hive), "floor").is_some(),
            "the search does find words"
        );
    });
}

#[test]
fn what_the_keeper_wrote_is_never_changed() {
    let mut yard = demo();
    yard.name = "Roof & Floor Yard".to_owned();
    yard.colonies[0].name = "Wasps' End".to_owned();
    run_bare(async move {
        let served = Served::open_yard(None, yard).await;
        choose(&served, "north-american").await;
        served.settled().await;
        let address = format!("/hive/{}", served.yard.colonies[0].id.0);
        let pairs = [("visit", ""), ("line", "hum=heard by ear"), ("words", "the roof leaks over the floor")];
        assert_eq!(served.post(&format!("{address}/note"), &pairs).await.status, StatusCode::SEE_OTHER);
        served.settled().await;
        let page = served.get(&address).await.body;
        assert!(page.contains("Roof &amp; Floor Yard"), "the yard's name");
        assert!(page.contains("Wasps' End") && !page.contains("Yellowjackets' End"), "the hive's name");
        assert!(page.contains("the roof leaks over the floor"), "free words");
        assert!(page.contains("floor=") || !page.contains("bottom board="), "the grammar");
    });
}

/// Pages of the rest of the year, which are listed beside these.
const REST_OF_THE_YEAR: [&str; 7] = ["/fit", "/feed", "/mites", "/jobs", "/spring", "/dead", "/losses"];

#[test]
fn every_question_leads_to_a_page_there_is_and_stands_in_the_guide() {
    let routes = snowhum_web::paths();
    let guide = include_str!("../../../../docs/user-guide/questions.md");
    for question in questions() {
        let is_route = routes.contains(&question.address.as_str());
        assert!(is_route || REST_OF_THE_YEAR.contains(&question.address.as_str()), "{}", question.address);
        let row = format!("| {} | `{}` | `snowhum {}` |", question.asks, question.address, question.command);
        assert!(guide.contains(&row), "the guide lacks {row}");
        for belief in &question.beliefs {
            let row = format!("| {} | `/normal#{}` |", belief.says, question.name);
            assert!(guide.contains(&row), "the guide lacks {row}");
        }
    }
    run(|served| async move {
        served.settled().await;
        let page = served.get("/normal").await.body;
        for question in questions() {
            assert!(page.contains(&format!("id=\"{}\"", question.name)), "{} is not on the page", question.name);
        }
        assert!(page.contains("In this yard"), "with the yard's own figures");
    });
}
