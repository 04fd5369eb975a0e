//! Whatever is killed, the night ends complete: each answer once, and as one machine gives it.

use crate::house::{figure, fill, handed, is_as_on_one_machine, model, open, plan, run, worker, yard};
use crate::workers::{kill, start};
use snowhum_testkit::postgres::Database;
use std::process::Child;
use std::time::{Duration, Instant};

/// Pauses that look drawn, and are the same each time.
struct Dice(u64);

impl Dice {
    fn up_to(&mut self, end: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % end
    }
}

#[test]
fn six_kills_of_workers_and_of_the_database_lose_nothing() {
    kills(6, 60, Duration::from_millis(300));
}

#[test]
#[ignore = "takes minutes: cargo test --profile tests -p snowhum-club -- --ignored fifty_kills"]
fn fifty_kills_of_workers_and_of_the_database_lose_nothing() {
    kills(50, 2_000, Duration::from_millis(250));
}

/// Every third kill is the database's.
fn kills(count: u64, yards: u128, takes: Duration) {
    let database = Database::alone();
    let mut dice = Dice(7);
    run(async {
        let club = open(&database).await;
        fill(&club, yards).await;
        plan(&club).await;
        club.close().await;
    });
    let begin = || start(&database.address, takes);
    let mut workers: Vec<Child> = vec![begin(), begin()];
    for number in 0..count {
        std::thread::sleep(Duration::from_millis(100 + dice.up_to(600)));
        if number % 3 == 2 {
            database.server.kill();
            std::thread::sleep(Duration::from_millis(dice.up_to(300)));
            database.server.up();
        } else {
            kill(workers.remove(dice.up_to(2) as usize));
            workers.push(begin());
        }
    }
    let left = run(async { open(&database).await.status().await.unwrap().nights[0].left() });
    assert!(left > 0, "the kills fell into the work");
    for mut worker in workers {
        assert!(worker.wait().unwrap().success());
    }
    run(async {
        let club = open(&database).await;
        let status = club.status().await.unwrap();
        assert_eq!((status.nights[0].done, status.nights[0].failed), (yards as i64, 0), "{status:?}");
        is_as_on_one_machine(&club, yards as usize, "how?").await;
        assert_eq!(figure(&database, "SELECT COUNT(*) FROM club.outlook").await, yards as i64);
        let begun = figure(&database, "SELECT SUM(begun)::BIGINT FROM club.asked").await;
        println!("{left} left after the last kill; {yards} yards begun {begun} times");
    });
}

#[test]
fn a_yard_that_ends_its_worker_each_time_fails_alone() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let keeper = fill(&club, 0).await;
        let yards = (0..6).map(|number| yard(number, if number == 3 { "abort" } else { "well" })).collect();
        club.take_in(keeper, &handed(yards)).await.unwrap();
        plan(&club).await;
        let patience = Instant::now() + Duration::from_secs(120);
        let mut ended = 0;
        while !start(&database.address, Duration::ZERO).wait().unwrap().success() {
            ended += 1;
            assert!(Instant::now() < patience, "it ends its worker again and again");
        }
        assert_eq!(ended, 5);
        let told = club.status().await.unwrap().nights.remove(0);
        assert_eq!((told.done, told.asked, told.failed), (5, 6, 1));
        assert!(told.failures[0].1.contains("ended in the midst of it 5 times"), "{:?}", told.failures);
        is_as_on_one_machine(&club, 6, "how?").await;
    });
}

#[test]
fn a_worker_told_to_stop_finishes_what_it_computes_and_gives_the_rest_back() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        fill(&club, 40).await;
        plan(&club).await;
        club.work(&worker(2, model(Duration::from_millis(300))), tokio::time::sleep(Duration::from_millis(1_200)))
            .await
            .unwrap();
        let begun = figure(&database, "SELECT SUM(begun)::BIGINT FROM club.asked").await;
        let kept = figure(&database, "SELECT COUNT(*) FROM club.outlook").await;
        assert!(kept == begun && (1..40).contains(&kept), "{kept} of {begun} begun");
        let queue = club.status().await.unwrap().queue;
        assert_eq!((queue.taken, queue.waiting, queue.workers), (0, 40 - kept, 0));
    });
}
