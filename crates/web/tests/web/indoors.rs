//! Hives that winter indoors, on the pages.

use crate::support::{Served, demo, run_bare};
use snowhum_apiary::{Apiary, demo_text, read};

fn with_cellar() -> Apiary {
    let room = "[[indoors]]\nname = \"Cellar\"\ntemperature = \"4 C\"\nin = 2025-11-10\nout = 2026-04-01\n\n[site]";
    let text = demo_text().replacen("[site]", room, 1);
    let text = text.replacen("name = \"Alder\"\nkind", "name = \"Alder\"\nindoors = \"Cellar\"\nkind", 1);
    read(&text, "demo").unwrap().0
}

/// What a page says from a hive's name to the next hive's.
fn part<'a>(page: &'a str, from: &str, to: &str) -> &'a str {
    let after = page.split_once(from).unwrap().1;
    after.split_once(to).map_or(after, |(part, _)| part)
}

#[test]
fn a_hive_indoors_is_asked_for_nothing_that_cannot_be_seen_there() {
    run_bare(async {
        let served = Served::open_yard(None, with_cellar()).await;
        served.settled().await;
        let round = served.get("/round").await.body;
        let alder = part(&round, "<legend>Alder</legend>", "<legend>Birch</legend>");
        let birch = part(&round, "<legend>Birch</legend>", "<legend>Juniper</legend>");
        for question in ["Flying", "Dead bees, new", "Pollen", "Robbers", "Wasps", "drifted over", "on snow"] {
            assert!(!alder.contains(question), "{question} is asked of a hive in the dark");
            assert!(birch.contains(question), "{question} is asked outdoors");
        }
        for question in ["Hum, ear at the wall", "Entrance", "pulled out with a hook", "on the hive", "Stands indoors"]
        {
            assert!(alder.contains(question), "{question} is asked indoors too");
        }
        let sheet = served.get("/round/sheet").await.body;
        assert!(!part(&sheet, "<h2>Alder</h2>", "<h2>Birch</h2>").contains("Flying"));
        assert!(!served.get("/flight").await.body.contains("</span>Alder</h2>"));
    });
}

#[test]
fn hive_page_paper_and_api_say_where_it_is() {
    run_bare(async {
        let served = Served::open_yard(None, with_cellar()).await;
        let now = served.settled().await;
        let told = &now["now"]["first"]["colonies"][0]["indoors"];
        assert_eq!((told["room"].as_str(), told["is_in"].as_bool()), (Some("Cellar"), Some(true)), "{told}");
        let says = told["says"].as_str().unwrap();
        let capital = format!("I{}", &says[1..]);
        let hive = served.get(&format!("/hive/{}", served.colony("Alder"))).await.body;
        assert!(hive.contains(&capital.replace('"', "&quot;")), "{capital} in {hive}");
        assert!(hive.contains("In its room today: ") && !hive.contains("A cleansing flight"));
        let paper = served.get("/paper/yard").await.body;
        assert!(part(&paper, "<strong>Alder</strong>", "</tr>").contains("in Cellar since 10 November"));
        let birch = served.get(&format!("/hive/{}", served.colony("Birch"))).await.body;
        assert!(!birch.contains("in Cellar since") && birch.contains("A cleansing flight"));
    });
}

#[test]
fn carrying_is_noted_on_the_hives_page_and_moves_the_day() {
    run_bare(async {
        let served = Served::open_yard(None, with_cellar()).await;
        served.settled().await;
        let page = format!("/hive/{}/note", served.colony("Alder"));
        let visit = uuid::Uuid::from_u128(77).to_string();
        let note =
            |line: &'static str| [("visit", visit.clone()), ("line", line.to_owned()), ("on", "2025-11-20".to_owned())];
        let sent = |pairs: &[(&'static str, String); 3]| pairs.clone().map(|(name, value)| (name, value));
        let wrong = sent(&note("carried=into Barn"));
        let wrong: Vec<(&str, &str)> = wrong.iter().map(|(name, value)| (*name, value.as_str())).collect();
        assert!(served.post(&page, &wrong).await.body.contains("Cellar"), "it says which rooms there are");
        let right = sent(&note("carried=into Cellar"));
        let right: Vec<(&str, &str)> = right.iter().map(|(name, value)| (*name, value.as_str())).collect();
        assert!(served.post(&page, &right).await.status.is_redirection());
        let now = served.settled().await;
        assert_eq!(now["now"]["first"]["colonies"][0]["indoors"]["from"], "2025-11-20");
        assert_eq!(demo().colonies.len(), 5);
    });
}
