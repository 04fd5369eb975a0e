//! A dead colony examined, kept, and found again among losses and lessons.

use axum::http::StatusCode;
use jiff::civil::date;

use crate::support::{Answer, Served, run, well_formed};

const VISIT: &str = "019a0000-0000-7000-8000-000000000011";
const LATER: &str = "019a0000-0000-7000-8000-000000000012";

async fn shown(served: &Served, path: &str) -> String {
    let answer: Answer = served.get(path).await;
    assert_eq!(answer.status, StatusCode::OK, "{path}: {}", answer.body);
    assert_eq!(well_formed(&answer.body), Ok(()), "{path}");
    answer.body
}

#[test]
fn foulbrood_is_asked_first_and_stops_everything() {
    run(|served| async move {
        let larch = format!("/dead/{}", served.colony("Larch"));
        assert!(shown(&served, "/dead").await.contains(&larch));
        let first = shown(&served, &larch).await;
        assert_eq!(first.matches("<fieldset").count(), 4, "the four of foulbrood alone");
        for seen in ["yes", "fairly-sure"] {
            let stop = shown(&served, &format!("{larch}?step=2&ropy-larvae={seen}&small-cluster=yes")).await;
            assert!(stop.contains("Stop: this may be foulbrood") && stop.contains("Move nothing"));
            for absent in ["What can be used again", "Of 100", "Look next", "Wax moth"] {
                assert!(!stop.contains(absent), "{absent} under a stop");
            }
        }
    });
}

#[test]
fn signs_and_records_give_causes_with_ranges_and_what_can_be_used_again() {
    run(|served| async move {
        served.settled().await;
        let larch = format!("/dead/{}", served.colony("Larch"));
        let brood = "ropy-larvae=no&sunken-cappings=no&foul-smell=no&black-scale=no";
        let page = shown(&served, &format!("{larch}?step=2&{brood}&small-cluster=yes&wet-mould=yes&no-food=")).await;
        assert!(page.contains("24 mites in 300 bees on 8 September"), "the records answer");
        assert!(page.contains("Look next") && page.contains("What can be used again"));
        assert!(page.contains("grows on bees that are dead already"), "mould is answered");
        assert!(page.contains("-15 °C") && page.contains("soapy water") && page.contains("Before anything is moved"));
        assert!(page.contains("honey of brood boxes"), "people");
        assert!(!page.contains(">96<") && !page.contains(">100<"), "nothing above 95 in 100");
        let unlooked = shown(&served, &format!("{larch}?step=2")).await;
        assert!(unlooked.contains("Before anything else look at the brood"));
        let wrong = shown(&served, &format!("{larch}?step=2&small-cluster=perhaps")).await;
        assert!(wrong.contains("write yes, fairly sure, no"));
        assert_eq!(served.get("/dead/nobody").await.status, StatusCode::NOT_FOUND);
        assert_eq!(served.get(&format!("/dead/{VISIT}")).await.status, StatusCode::NOT_FOUND);
    });
}

#[test]
fn an_examination_is_kept_once_and_the_hive_is_watched_no_more() {
    run(|served| async move {
        served.settled().await;
        let larch = served.colony("Larch");
        let signs = [("visit", VISIT), ("ropy-larvae", "no"), ("small-cluster", "yes"), ("food-near", "fairly-sure")];
        let before = served.store.yard(served.yard.id).await.unwrap().unwrap().notes.len();
        for _ in 0..2 {
            let kept = served.post(&format!("/dead/{larch}"), &signs).await;
            assert_eq!(kept.status, StatusCode::SEE_OTHER, "{}", kept.body);
            assert!(kept.headers["location"].to_str().unwrap().starts_with(&format!("/hive/{larch}")));
        }
        let notes = served.store.yard(served.yard.id).await.unwrap().unwrap().notes;
        assert_eq!(notes.len(), before + 1);
        let now = served.settled().await;
        assert_eq!(now["now"]["colonies"][3]["seen_dead"], true);
        assert_eq!(now["now"]["colonies"][3]["is_closed"], true, "nothing calls for the keeper there any more");
        let hive = shown(&served, &format!("/hive/{larch}")).await;
        assert!(hive.contains("likeliest mites and the viruses they carry"), "the hive page shows it");
        let lost = shown(&served, "/losses").await;
        assert!(lost.contains("1 of 5 colonies lost so far") && lost.contains("first sign: 24 mites in 300 bees"));
        let empty = served.post(&format!("/dead/{}", served.colony("Aspen")), &[("visit", LATER)]).await;
        assert_eq!(empty.status, StatusCode::UNPROCESSABLE_ENTITY, "nobody looked, whatever the records say");
    });
}

#[test]
fn a_count_closes_the_winter_and_the_forecast_is_scored() {
    run(|served| async move {
        served.settled().await;
        served.post("/day", &[("day", "2026-05-20")]).await;
        let fate = |name: &str| format!("fate.{}", served.colony(name));
        let names = ["Alder", "Birch", "Juniper", "Larch", "Aspen"].map(fate);
        let mut count = vec![("visit", LATER), ("on", "2026-05-20")];
        count.extend(names.iter().map(|name| (name.as_str(), "alive")).take(3));
        count.push((&names[3], "dead"));
        count.push((&names[4], "weak"));
        let kept = served.post("/losses", &count).await;
        assert_eq!(kept.headers["location"], "/losses?kept=5", "{}", kept.body);
        let page = shown(&served, "/losses").await;
        assert!(page.contains("1 of 5 colonies lost.") && page.contains("almost nothing about your method"));
        assert!(page.contains("4 to 62 %") && page.contains("alive but weak"));
        assert!(page.contains("180 EUR") && page.contains("COLOSS"));
        assert!(page.contains("Lost to what nobody names") && page.contains("after your winter (1 of 5 lost so)"));
        let scored = shown(&served, "/losses?foretold=1&season=2025").await;
        assert!(scored.contains("Log score") && scored.contains("Brier score") && scored.contains("base rate"));
        let notes = served.store.yard(served.yard.id).await.unwrap().unwrap().notes;
        assert!(notes.iter().any(|note| note.at.to_string().starts_with(&date(2026, 5, 20).to_string())));
    });
}

#[test]
fn a_clubs_winter_is_pooled() {
    run(|served| async move {
        served.settled().await;
        let vector = "a+0%2F2%0Ab+1%2F3%0Ac+2%2F5%0Ad+1%2F10%0Ae+4%2F4%0Af+2%2F8";
        let page = shown(&served, &format!("/losses?club={vector}")).await;
        assert!(page.contains("10 of 32 colonies of 6 members lost") && page.contains("31.2 %"), "{page}");
        assert!(page.contains("34.7 %"), "the mean of their own rates");
        let wrong = shown(&served, "/losses?club=Ann").await;
        assert!(wrong.contains("such as Ann 1/5"));
        let more = shown(&served, "/losses?club=Ann+9%2F5").await;
        assert!(more.contains("cannot be"));
    });
}

#[test]
fn a_count_that_says_nothing_or_nonsense_is_refused() {
    run(|served| async move {
        served.settled().await;
        let alder = format!("fate.{}", served.colony("Alder"));
        for pairs in
            [vec![("visit", VISIT)], vec![(alder.as_str(), "eaten")], vec![(alder.as_str(), "alive"), ("on", "soon")]]
        {
            assert_eq!(served.post("/losses", &pairs).await.status, StatusCode::UNPROCESSABLE_ENTITY, "{pairs:?}");
        }
        for page in ["/losses?season=soon", "/losses?added=-1", "/losses?season=1850"] {
            assert!(shown(&served, page).await.contains("write"), "{page}");
        }
        assert!(shown(&served, "/losses?removed=900").await.contains("Losses and lessons"));
    });
}
