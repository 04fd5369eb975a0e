//! How the nights go, for members and for machines.

use crate::house::{DAY, House, failing, run, yard};
use jiff::civil::date;
use snowhum_advice::verdict::Urgency;
use snowhum_club::Role;
use snowhum_web::Reach;

#[test]
fn progress_is_told_of_all_yards_and_failures_of_those_alone_that_one_may_see() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let well = |number, name| yard(number, name, DAY, &[("Alder", Urgency::Today)]);
        let (_, anna) =
            house.member("Anna", Role::Keeper, vec![well(1, "Bank"), failing(2, "Hers", "its <winter> is over")]).await;
        let (_, bo) = house.member("Bo", Role::Keeper, vec![failing(3, "His", "no count")]).await;
        assert!(house.get("/night", &anna).await.body.contains("No night is complete yet"));
        house.night(DAY).await;
        house.plan(date(2026, 1, 11)).await;
        let page = house.get("/night", &anna).await.body;
        assert!(page.contains("1 of 3 yards; 2 failed") && page.contains("width=\"33.33\""), "{page}");
        assert!(page.contains("<strong>Hers</strong>: its &lt;winter&gt; is over") && page.contains("One more failed"));
        assert!(!page.contains("His") && !page.contains("no count"), "{page}");
        assert!(page.contains("0 of 3 yards</p>") && page.contains("3 yards wait"), "the next night: {page}");
        assert!(page.contains("Read here: the night of 10 January 2026") && page.contains("No worker is alive"));
        let page = house.get("/night", &bo).await.body;
        assert!(page.contains("<strong>His</strong>: no count") && !page.contains("Hers"), "{page}");
    });
}

#[test]
fn what_prometheus_reads_is_open_and_names_nobody() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let yards = vec![yard(1, "Bank", DAY, &[("Alder", Urgency::Today)]), failing(2, "Hers", "its winter is over")];
        house.member("Anna", Role::Keeper, yards).await;
        house.night(DAY).await;
        let text = house.get("/metrics", "").await.body;
        assert!(text.contains("snowhum_night_yards_done{night=\"1\",day=\"2026-01-10\"} 1\n"), "{text}");
        assert!(text.contains("snowhum_night_yards_failed{night=\"1\",day=\"2026-01-10\"} 1\n"), "{text}");
        for name in ["Anna", "Bank", "Alder", "Hers", "winter is over", "Heath"] {
            assert!(!text.contains(name), "{name}");
        }
    });
}
