//! While an answer is behind: the page says so at once, keeps the old one under its own date, and waits for nothing.

use axum::http::StatusCode;
use std::time::{Duration, Instant};

use crate::support::{Answer, Door, Served, run_bare, well_formed};

/// A page that waits for no computation is there by then, on a busy machine in a slow build too.
const AT_ONCE: Duration = Duration::from_secs(1);

async fn at_once(served: &Served, path: &str) -> Answer {
    let begun = Instant::now();
    let answer = served.at_once(path).await;
    assert!(begun.elapsed() < AT_ONCE, "{path} took {:?}", begun.elapsed());
    assert_eq!(answer.status, StatusCode::OK, "{path}: {}", answer.body);
    assert_eq!(well_formed(&answer.body), Ok(()), "{path}");
    answer
}

fn waits(page: &str) -> bool {
    page.contains("Working it out")
        && page.contains(r#"<noscript><meta http-equiv="refresh""#)
        && page.contains(" data-waits")
}

/// Posts, and gives the page it leads to, both at once.
async fn led(served: &Served, path: &str, pairs: &[(&str, &str)]) -> String {
    let begun = Instant::now();
    let answer = served.post(path, pairs).await;
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{path}: {}", answer.body);
    let to = answer.headers["location"].to_str().unwrap().split('#').next().unwrap().to_owned();
    let page = at_once(served, &to).await.body;
    assert!(begun.elapsed() < AT_ONCE, "{path} took {:?}", begun.elapsed());
    page
}

/// Every verdict of a page, as its chip says it.
fn chips(page: &str) -> Vec<&str> {
    let chips = page.split("<span class=\"word ").skip(1);
    chips.filter_map(|rest| rest.split_once('>')?.1.split_once("</span>")).map(|(chip, _)| chip).collect()
}

#[test]
fn a_change_of_day_is_said_at_once_and_no_old_verdict_stands_under_the_new_date() {
    run_bare(async {
        let door = Door::default();
        let served = Served::behind(&door).await;
        served.settled().await;
        assert!(chips(&served.get("/").await.body).iter().all(|chip| !chip.contains(", of ")));
        door.shut();
        let page = led(&served, "/day", &[("day", "2026-04-10")]).await;
        assert!(page.contains("10 April 2026</strong> is looked at now.") && waits(&page), "{page}");
        assert!(page.contains("<h1>The yard on 7 February</h1>") && page.contains("how it stood on 7 February 2026"));
        assert!(page.contains(r#"class="old""#));
        let old = chips(&page);
        assert!(old.len() >= 5 && old.iter().all(|chip| chip.ends_with(", of 7 February")), "{old:?}");
        door.open();
        served.settled().await;
        let page = served.get("/?said=day").await.body;
        assert!(page.contains("<h1>The yard on 10 April</h1>") && !waits(&page) && !page.contains(r#"class="old""#));
        assert!(page.contains("What stands here counts it."));
        assert!(chips(&page).iter().all(|chip| !chip.contains(", of ")));
    });
}

#[test]
fn a_note_an_edit_a_withdrawal_and_an_undo_are_said_at_once_over_the_dated_old_verdict() {
    run_bare(async {
        let door = Door::default();
        let served = Served::behind(&door).await;
        served.settled().await;
        door.shut();
        let hive = format!("/hive/{}", served.colony("Alder"));
        let page = led(&served, &format!("{hive}/note"), &[("line", "hum=heard by ear")]).await;
        assert!(page.contains("<strong>Noted</strong> at Alder, 7 February: "), "{page}");
        assert!(waits(&page) && chips(&page)[0].contains(", of "), "{page}");
        let note = format!("/note/{}", page.split("/note/").nth(1).unwrap().split('"').next().unwrap());
        let page = led(&served, &note, &[("line", "hum=heard by tube")]).await;
        assert!(page.contains("<strong>Changed</strong> at Alder") && waits(&page), "{page}");
        let page = led(&served, &format!("{note}/withdraw"), &[]).await;
        assert!(page.contains("<strong>Withdrawn.</strong>") && waits(&page), "{page}");
        let page = led(&served, &format!("{hive}/undo"), &[]).await;
        assert!(page.contains("<strong>Taken back</strong>: the last thing done at Alder.") && waits(&page), "{page}");
        let page = led(&served, "/flight", &[("colony", &served.colony("Birch")), ("seen", "flight=well")]).await;
        assert!(page.contains("<strong>Noted</strong> at Birch") && waits(&page), "{page}");
        door.open();
        served.settled().await;
        assert!(!waits(&served.get(&hive).await.body));
    });
}

#[test]
fn pages_of_long_answers_are_there_at_once_with_the_last_answer_and_its_age() {
    const PAGES: [(&str, &str); 7] = [
        ("/fit", "The yard's last days"),
        ("/jobs", "Days that serve"),
        ("/feed", "Cups are not kilograms"),
        ("/mites", "<h2>"),
        ("/spring", "<h2>Lift first</h2>"),
        ("/setup?hive=Larch&part=wrap%3Doff", "<h2>"),
        ("/tell", "Foretold, and what came"),
    ];
    run_bare(async {
        let door = Door::default();
        door.shut();
        let served = Served::behind(&door).await;
        for (path, _) in PAGES {
            let page = at_once(&served, path).await.body;
            assert!(waits(&page), "{path}: {page}");
        }
        door.open();
        served.settled().await;
        for (path, holds) in PAGES {
            let page = served.whole(path).await.body;
            assert!(page.contains(holds) && !waits(&page), "{path}: {page}");
        }
        door.shut();
        let hive = format!("/hive/{}/note", served.colony("Alder"));
        led(&served, &hive, &[("line", "hum=heard by ear")]).await;
        for (path, holds) in PAGES {
            let page = at_once(&served, path).await.body;
            assert!(waits(&page) && page.contains(holds), "{path}: {page}");
            assert!(page.contains("What stands here was worked out at "), "{path}: {page}");
        }
        door.open();
        for (path, _) in PAGES {
            assert!(!waits(&served.whole(path).await.body), "{path}");
        }
    });
}

#[test]
fn a_round_and_a_note_that_is_being_written_are_not_taken_from_under_the_pen() {
    run_bare(async {
        let door = Door::default();
        door.shut();
        let served = Served::behind(&door).await;
        for path in ["/round", "/settings"] {
            let page = at_once(&served, path).await.body;
            assert!(!page.contains("http-equiv=\"refresh\"") && page.contains("Working it out."), "{path}");
        }
        door.open();
    });
}
