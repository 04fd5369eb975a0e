//! British or North American on every page, the keeper's own words on none changed.

use axum::body::Body;
use axum::http::{Request, StatusCode};
use snowhum_advice::questions::questions;
use snowhum_say::{Language, Message, Tongue};
use snowhum_testkit::{AMERICAN, BRITISH, foreign_figures, holds};
use snowhum_units::System;

use crate::pages::every_page;
use crate::support::{Answer, Served, demo, run, run_bare, said};

fn british(message: &Message) -> String {
    Tongue::BRITISH.say(message)
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
    choose_units(served, words, "metric").await;
}

async fn choose_units(served: &Served, words: &str, units: &str) {
    let pairs = [("units", units), ("language", words), ("currency", "EUR"), ("colony", "150")];
    assert_eq!(served.post("/settings", &pairs).await.status, StatusCode::SEE_OTHER);
}

#[test]
fn a_keeper_in_north_america_meets_no_british_word() {
    run(|served| async move {
        choose(&served, "en-US").await;
        none_is_on_any_page(&served, &BRITISH).await;
        let hive = served.get(&format!("/hive/{}?parts=every", served.colony("Alder"))).await.body;
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

/// What pages say in the other system's units; what sources write is theirs, and settings name both.
async fn foreign_on_pages(served: &Served, reads: System) -> Vec<String> {
    served.settled().await;
    let own = |page: &String| !page.starts_with("/source") && page != "/settings";
    let mut found = Vec::new();
    for page in every_page(served).into_iter().filter(own) {
        let text = said(&served.get(&page).await.body);
        found.extend(foreign_figures(&text, reads).into_iter().map(|figure| format!("{page}: {figure}")));
    }
    found
}

#[test]
fn no_page_tells_a_figure_in_units_that_were_not_chosen() {
    run(|served| async move {
        for (words, units, reads) in
            [("en-US", "us", System::Us), ("de", "us", System::Us), ("en-GB", "metric", System::Metric)]
        {
            choose_units(&served, words, units).await;
            let found = foreign_on_pages(&served, reads).await;
            assert!(found.is_empty(), "{words} in {units}:\n{}", found.join("\n"));
        }
    });
}

/// Beside a caution, and a tap down where several stand, is the same in British.
const BRITISH_FOLDED: &str = "<details class=\"folded\" lang=\"en\">";

/// A page without what stands between two marks.
fn without(body: &str, from: &str, to: &str) -> String {
    let mut parts = body.split(from);
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |page, part| page + part.split_once(to).map_or(part, |(_, rest)| rest))
}

/// A page without its pictures, whose words are cut to fit, without the moment it was computed at and without the British
/// text beside a caution.
fn told(body: &str) -> String {
    let mut parts = body.split("<span class=\"small\" lang=\"en\">");
    let first = parts.next().unwrap_or_default().to_owned();
    let body = parts.fold(first, |page, part| page + part.split_once("</span>").map_or(part, |(_, rest)| rest));
    let mut pictures = body.split("<svg");
    let first = pictures.next().unwrap_or_default().to_owned();
    let body = pictures.fold(first, |page, part| page + part.split_once("</svg>").map_or(part, |(_, rest)| rest));
    let body = without(&without(&body, "<span class=\"small\" lang=\"en\">", "</span>"), BRITISH_FOLDED, "</details>");
    let mut parts = body.split("<time datetime=\"");
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |page, part| match part.split_once("</time>") {
        Some((moment, rest)) if moment.contains('T') => page + rest,
        _ => page + "<time datetime=\"" + part,
    })
}

/// A number with a point before its decimals and nothing between its thousands.
fn plain(number: &str) -> String {
    match number.rsplit_once(['.', ',']) {
        Some((whole, decimals)) if decimals.len() == 3 => format!("{whole}{decimals}"),
        Some((whole, decimals)) => format!("{whole}.{decimals}"),
        None => number.to_owned(),
    }
}

/// The numbers of a page, sorted.
fn numbers(body: &str) -> Vec<String> {
    let text = said(&told(body).replace('\u{202f}', ""));
    let joins = |letter: char| letter.is_ascii_digit() || letter == '.' || letter == ',';
    let parts = text.split(|letter| !joins(letter)).map(|part| plain(part.trim_matches(['.', ','])));
    // A full hour has its own way in each language: 12:00, 12 Uhr, 12 h.
    let mut numbers: Vec<String> = parts.filter(|part| !part.is_empty() && part != "00").collect();
    numbers.sort();
    numbers
}

#[test]
fn every_language_tells_the_same_numbers() {
    run(|served| async move {
        served.settled().await;
        let hive = format!("/hive/{}", served.colony("Alder"));
        let pages = ["/", "/fit", "/jobs", "/spring", "/feed", "/round", &hive];
        let mut british = Vec::new();
        for page in pages {
            british.push(numbers(&served.get(page).await.body));
        }
        for (tag, jobs) in [("de", "Arbeiten"), ("fr", "Travaux")] {
            choose(&served, tag).await;
            served.settled().await;
            for (page, british) in pages.into_iter().zip(&british) {
                let body = served.get(page).await.body;
                assert!(body.contains(&format!("<html lang=\"{tag}\"")) && body.contains(jobs), "{page} in {tag}");
                let own = numbers(&body);
                let differing = |one: &[String], other: &[String]| -> Vec<String> {
                    let mut rest = other.to_vec();
                    let mut left = Vec::new();
                    for number in one {
                        match rest.iter().position(|other| other == number) {
                            Some(at) => drop(rest.swap_remove(at)),
                            None => left.push(number.clone()),
                        }
                    }
                    left
                };
                let (lacks, has) = (differing(british, &own), differing(&own, british));
                assert!(lacks.is_empty() && has.is_empty(), "{page} in {tag} lacks {lacks:?} and has besides {has:?}");
            }
        }
    });
}

#[test]
fn what_the_keeper_wrote_is_never_changed() {
    let mut yard = demo();
    yard.name = "Roof & Floor Yard".to_owned();
    yard.colonies[0].name = "Wasps' End".to_owned();
    run_bare(async move {
        let served = Served::open_yard(None, yard).await;
        choose(&served, "en-US").await;
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

#[test]
fn every_question_leads_to_a_page_there_is_and_stands_in_the_guide() {
    let routes = snowhum_web::paths();
    let guide = include_str!("../../../../docs/user-guide/questions.md");
    for question in questions() {
        assert!(routes.contains(&question.address.as_str()), "{}", question.address);
        let row =
            format!("| {} | `{}` | `snowhum {}` |", british(&question.asks()), question.address, question.command);
        assert!(guide.contains(&row), "the guide lacks {row}");
        for belief in &question.beliefs {
            let row = format!(
                "| {} | `/normal#{}` | `{}` |",
                british(&belief.says()),
                question.name,
                question.arises_at(belief)
            );
            assert!(guide.contains(&row), "the guide lacks {row}");
        }
    }
    run(|served| async move {
        served.settled().await;
        let page = served.get("/normal").await.body;
        for question in questions() {
            let answered = served.get(&question.address).await;
            assert_eq!(answered.status, StatusCode::OK, "{}", question.address);
            let is_link = format!("href=\"{}\"", question.address);
            assert!(page.contains(&is_link), "{} is not linked", question.address);
            assert!(page.contains(&format!("id=\"{}\"", question.name)), "{} is not on the page", question.name);
        }
        assert!(page.contains("In this yard"), "with the yard's own figures");
    });
}

#[test]
fn the_calendar_is_in_the_keepers_words() {
    run(|served| async move {
        served.settled().await;
        let british = served.get("/jobs.ics").await.body.replace("\r\n ", "");
        assert!(holds(&british, "floors").is_some() && AMERICAN.iter().all(|term| holds(&british, term).is_none()));
        choose(&served, "en-US").await;
        served.settled().await;
        let american = served.get("/jobs.ics").await.body.replace("\r\n ", "");
        for term in BRITISH {
            assert_eq!(holds(&american, term), None, "the calendar says \"{term}\"");
        }
    });
}

#[test]
fn every_belief_is_answered_on_the_page_where_it_arises() {
    run(|served| async move {
        served.settled().await;
        for question in questions() {
            for belief in &question.beliefs {
                let address = question.arises_at(belief);
                let page = served.get(&address.replace("{colony}", &served.colony("Alder").to_string())).await;
                assert_eq!(page.status, StatusCode::OK, "{address}");
                assert!(said(&page.body).contains(&british(&belief.truth())), "{address}: {}", belief.name);
            }
        }
    });
}

/// A page as a browser with these languages is given it.
async fn read_by(served: &Served, languages: &str, path: &str) -> Answer {
    let request = Request::get(path).header("accept", "text/html").header("accept-language", languages);
    served.ask(request.body(Body::empty()).unwrap()).await
}

#[test]
fn until_a_language_is_chosen_pages_are_in_the_browsers() {
    run(|served| async move {
        served.settled().await;
        for (languages, tag) in [("fr-CH, de;q=0.9", "fr"), ("xx, de;q=0.5, fr;q=0.1", "de"), ("en-US", "en-US")] {
            let page = read_by(&served, languages, "/").await;
            assert!(page.body.contains(&format!("<html lang=\"{tag}\"")), "{languages}");
            let varies = page.headers.get_all("vary").iter().any(|value| value == "accept-language");
            assert!(varies, "what is kept on the way is kept by language");
        }
        let missing = read_by(&served, "de", "/nowhere").await;
        assert_eq!(missing.status, StatusCode::NOT_FOUND);
        assert!(missing.body.contains("<html lang=\"de\"") && missing.body.contains("keine solche Seite"));
        let refused = read_by(&served, "fr", "/api/notes/00000000-0000-7000-8000-000000000001").await;
        assert!(refused.body.contains("Cette note n’existe pas"), "{}", refused.body);
        choose(&served, "en-GB").await;
        assert!(read_by(&served, "de", "/").await.body.contains("<html lang=\"en-GB\""), "what was chosen holds");
    });
}

#[test]
fn a_language_named_at_the_start_goes_before_the_browsers_and_after_the_chosen_one() {
    run_bare(async {
        let served = Served::in_language(Language::French).await;
        assert!(read_by(&served, "de", "/settings").await.body.contains("<html lang=\"fr\""));
        choose(&served, "de").await;
        assert!(read_by(&served, "fr", "/settings").await.body.contains("<html lang=\"de\""));
    });
}

#[test]
fn a_browser_may_ask_for_any_languages() {
    run(|served| async move {
        let many = "de-".repeat(3_000);
        for languages in
            ["", ",,;;==", "*", "de;q=0", "de;q=-1", "de;q=1e999", "de;q=NaN", "\u{e4}", &many, &"x,".repeat(5_000)]
        {
            let page = read_by(&served, languages, "/settings").await;
            assert_eq!(page.status, StatusCode::OK, "{languages}");
            assert!(page.body.contains("<html lang=\"en-GB\"") || languages.starts_with("de-"), "{languages}");
        }
    });
}
