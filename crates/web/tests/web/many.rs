//! Yards of thirty and of a hundred and twenty hives. Yards are invented.

use std::fmt::Write;
use std::time::{Duration, Instant};

use crate::support::{Served, run_bare};

/// Bytes of the first page of thirty hives.
const HEAVIEST: usize = 150_000;

fn yard(hives: usize) -> snowhum_apiary::Apiary {
    let mut text = "[apiary]\nname = \"Many\"\ninvented = true\nas_of = 2025-10-05\n[site]\nlatitude = 61.7\n\
                    longitude = 27.3\nelevation = \"105 m\"\nzone = \"Europe/Helsinki\"\n"
        .to_owned();
    for at in 1..=hives {
        let food = ["light", "fair", "heavy"][at % 3];
        let _ = write!(
            text,
            "[[colony]]\nname = \"Hive {at}\"\nkind = \"Langstroth 10\"\nstrength = \"middling\"\nfood = \"{food}\"\n\
             mites = \"not counted\"\n"
        );
    }
    snowhum_apiary::read(&text, "many").unwrap().0
}

async fn first_page(hives: usize) -> (String, Duration) {
    let served = Served::open_yard(None, yard(hives)).await;
    served.settled().await;
    let begun = Instant::now();
    let page = served.at_once("/").await.body;
    (page, begun.elapsed())
}

#[test]
fn thirty_hives_are_told_by_need_on_a_light_page() {
    run_bare(async {
        let (page, took) = first_page(30).await;
        println!("30 hives: {} bytes in {took:?}", page.len());
        assert!(page.len() < HEAVIEST, "{} bytes", page.len());
        assert!((1..=30).all(|at| page.contains(&format!(">Hive {at}</a>"))));
        assert!(page.contains("<h2>First: ") || page.contains("<h2>Then: "), "{page}");
        let place = |what: &str| page.find(what).unwrap_or(0);
        let (first, alone) = (place("class=\"needs\""), place("class=\"sounds\""));
        assert!(first > 0 && (alone == 0 || first < alone));
        assert!(took < Duration::from_millis(500), "{took:?} in a build for tests on a busy machine");
    });
}

#[test]
fn a_hundred_and_twenty_hives_are_served() {
    run_bare(async {
        let (page, took) = first_page(120).await;
        println!("120 hives: {} bytes in {took:?}", page.len());
        assert!(page.contains(">Hive 120</a>"));
        assert!(took < Duration::from_millis(1_000), "{took:?} in a build for tests on a busy machine");
    });
}
