//! What a night costs beyond its answers. By hand, on a machine that does nothing else.

use crate::house::{figure, fill, is_as_on_one_machine, model, night, open, plan, run, work};
use crate::workers::start;
use jiff::civil::date;
use snowhum_testkit::postgres::Database;
use std::time::{Duration, Instant};

#[test]
#[ignore = "measures: cargo test --profile tests -p snowhum-club -- --ignored --nocapture queue_costs"]
fn the_queue_costs_less_than_two_milliseconds_a_yard() {
    let database = Database::alone();
    run(async {
        let club = open(&database).await;
        fill(&club, 2_000).await;
        plan(&club).await;
        let begun = Instant::now();
        work(&club, model(Duration::ZERO)).await;
        let each = begun.elapsed().as_secs_f64() * 1e3 / 2_000.0;
        println!("{each:.2} ms a yard");
        assert!(each < 2.0, "{each:.2} ms a yard");
    });
}

#[test]
#[ignore = "takes minutes: cargo test --profile tests -p snowhum-club -- --ignored --nocapture two_thousand"]
fn two_thousand_yards_in_one_night_by_two_workers_and_the_next_costs_less_than_a_hundredth() {
    let database = Database::alone();
    let takes = Duration::from_millis(100);
    run(async {
        let club = open(&database).await;
        fill(&club, 2_000).await;
        let begun = Instant::now();
        plan(&club).await;
        let workers = [start(&database.address, takes), start(&database.address, takes)];
        for mut worker in workers {
            assert!(worker.wait().unwrap().success());
        }
        let full = begun.elapsed();
        is_as_on_one_machine(&club, 2_000, "how?").await;
        assert_eq!(figure(&database, "SELECT SUM(begun)::BIGINT FROM club.asked").await, 2_000);
        let begun = Instant::now();
        let next = club.plan_night(&night(date(2026, 1, 11), "how?")).await.unwrap();
        let unchanged = begun.elapsed();
        assert_eq!(next.queued, 0);
        assert_eq!(club.last_night(None).await.unwrap().unwrap().night, next.night);
        println!("a full night {full:?}, an unchanged one {unchanged:?}");
        assert!(unchanged * 100 < full);
    });
}

#[test]
#[ignore = "measures: cargo test --profile tests -p snowhum-club -- --ignored --nocapture add_up"]
fn workers_beside_one_another_add_up() {
    const YARDS: u128 = 400;
    let takes = Duration::from_millis(100);
    for number in [1, 2, 4] {
        let database = Database::alone();
        run(async {
            let club = open(&database).await;
            fill(&club, YARDS).await;
            plan(&club).await;
        });
        let begun = Instant::now();
        let workers: Vec<_> = (0..number).map(|_| start(&database.address, takes)).collect();
        for mut worker in workers {
            assert!(worker.wait().unwrap().success());
        }
        let took = begun.elapsed();
        // Two yards at once each.
        let alone = takes * YARDS as u32 / (2 * number);
        println!("{number} workers: {took:?}, {alone:?} of it the yards' own");
        assert!(took < alone + alone / 10 + Duration::from_secs(1), "more than a tenth, and a second to begin and end");
        run(async { is_as_on_one_machine(&open(&database).await, YARDS as usize, "how?").await });
    }
}
