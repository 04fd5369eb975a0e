//! A night: each yard once, unchanged ones not again, none mixed with another.

use crate::house::{
    answer, figure, fill, handed, is_as_on_one_machine, model, night, open, plan, run, sql, work, worker, yard,
};
use jiff::civil::date;
use snowhum_club::{Asked, Reckon};
use snowhum_testkit::postgres::Database;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

/// The model, and how often it was asked.
fn counted() -> (Reckon, Arc<AtomicUsize>) {
    let count = Arc::new(AtomicUsize::new(0));
    let counts = count.clone();
    let reckon = move |asked: &Asked<'_>| {
        counts.fetch_add(1, Ordering::Relaxed);
        answer(asked, Duration::ZERO)
    };
    (Arc::new(reckon), count)
}

#[test]
fn a_night_is_computed_once_however_often_it_is_planned() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        fill(&club, 30).await;
        let first = plan(&club).await;
        assert_eq!((first.asked, first.queued), (30, 30));
        let again = plan(&club).await;
        assert_eq!((again.night, again.asked, again.queued), (first.night, 30, 0), "all of it waits already");
        let (reckon, count) = counted();
        tokio::join!(work(&club, reckon.clone()), work(&club, reckon.clone()));
        assert_eq!(count.load(Ordering::Relaxed), 30, "by two workers, each yard once");
        is_as_on_one_machine(&club, 30, "how?").await;
        assert_eq!(plan(&club).await.queued, 0, "all of it is answered");
        assert_eq!(figure(&database, "SELECT COUNT(*) FROM graphile_worker.jobs").await, 0);
        let status = club.status().await.unwrap();
        let night = &status.nights[0];
        assert_eq!((night.done, night.asked, night.failed, status.queue.waiting), (30, 30, 0, 0));
    });
}

#[test]
fn of_a_night_like_the_last_what_changed_alone_is_computed() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let keeper = fill(&club, 20).await;
        plan(&club).await;
        let (reckon, count) = counted();
        work(&club, reckon.clone()).await;
        let mut yards: Vec<_> = (0..20).map(|number| yard(number, "well")).collect();
        yards[7] = yard(7, "seen in snow, well");
        yards.remove(3);
        let taken = club.take_in(keeper, &handed(yards)).await.unwrap();
        assert_eq!((taken.changed, taken.unchanged, taken.left), (1, 18, 1));
        let next = club.plan_night(&night(date(2026, 1, 11), "how?")).await.unwrap();
        assert_eq!((next.asked, next.queued), (19, 1));
        work(&club, reckon.clone()).await;
        assert_eq!(count.load(Ordering::Relaxed), 21);
        is_as_on_one_machine(&club, 19, "how?").await;
        let other = club.plan_night(&night(date(2026, 1, 11), "and with a colder wind?")).await.unwrap();
        assert_eq!(other.queued, 19, "another question is another night");
    });
}

#[test]
fn what_is_read_is_the_last_complete_night_and_nothing_of_the_next() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let keeper = fill(&club, 4).await;
        assert_eq!(club.last_night(None).await.unwrap(), None);
        let first = plan(&club).await;
        work(&club, model(Duration::ZERO)).await;
        let before = club.last_night(None).await.unwrap().unwrap();
        assert_eq!(before.night, first.night);
        let yards = (0..4).map(|number| yard(number, "later, well")).collect();
        club.take_in(keeper, &handed(yards)).await.unwrap();
        let next = club.plan_night(&night(date(2026, 1, 11), "how?")).await.unwrap();
        // Half of it is there already.
        let half = "INSERT INTO club.outlook SELECT yard, input_hash, '\\x00', 1, now() FROM club.asked WHERE night = $1 LIMIT 2";
        sqlx::query(half).bind(next.night).execute(&mut sql(&database).await).await.unwrap();
        assert_eq!(club.last_night(None).await.unwrap().unwrap(), before);
        let status = club.status().await.unwrap();
        assert_eq!((status.nights[0].done, status.nights[0].left(), status.nights[0].is_complete()), (2, 2, false));
    });
}

#[test]
fn a_yard_that_fails_fails_alone_and_is_tried_again_when_the_night_is_planned_again() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let keeper = fill(&club, 0).await;
        let words = |number| match number {
            2 => "poison",
            5 => "panic",
            _ => "well",
        };
        let yards = (0..8).map(|number| yard(number, words(number))).collect();
        club.take_in(keeper, &handed(yards)).await.unwrap();
        plan(&club).await;
        work(&club, model(Duration::ZERO)).await;
        is_as_on_one_machine(&club, 8, "how?").await;
        let told = club.status().await.unwrap().nights.remove(0);
        assert_eq!((told.done, told.asked, told.failed), (6, 8, 2));
        let named = |name: &str, words: &str| (name.to_owned(), words.to_owned());
        assert_eq!(
            told.failures,
            [named("Yard 2", "a winter that is over"), named("Yard 5", "a fault of the program: no such hive")]
        );
        assert_eq!(plan(&club).await.queued, 2);
        work(&club, model(Duration::ZERO)).await;
        assert_eq!(club.status().await.unwrap().nights[0].failed, 2);
    });
}

#[test]
fn a_yard_that_was_changed_in_the_database_is_not_answered_for() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        fill(&club, 2).await;
        let swap = "UPDATE club.yard_version SET body = (SELECT body FROM club.yard_version AS other WHERE other.yard <> yard_version.yard) \
                    WHERE yard = '00000000-0000-0000-0000-000000000001'";
        sqlx::query(swap).execute(&mut sql(&database).await).await.unwrap();
        plan(&club).await;
        work(&club, model(Duration::ZERO)).await;
        let told = club.status().await.unwrap().nights.remove(0);
        assert_eq!((told.done, told.failed), (1, 1));
        assert!(told.failures[0].1.contains("not as it was handed in"));
    });
}

#[test]
fn a_worker_of_another_build_leaves_the_night_alone() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        fill(&club, 3).await;
        plan(&club).await;
        let other = snowhum_club::Worker { build: "another".to_owned(), ..worker(2, model(Duration::ZERO)) };
        club.work(&other, tokio::time::sleep(Duration::from_secs(2))).await.unwrap();
        assert_eq!(figure(&database, "SELECT SUM(begun)::BIGINT FROM club.asked").await, 0);
        work(&club, model(Duration::ZERO)).await;
        assert_eq!(club.status().await.unwrap().nights[0].done, 3);
    });
}

#[test]
fn twenty_thousand_yards_are_planned_in_one_transaction() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        fill(&club, 1).await;
        let many = "INSERT INTO club.yard (id, owner, name) SELECT gen_random_uuid(), owner, 'one of many' FROM club.yard, generate_series(2, 20000)";
        sqlx::query(many).execute(&mut sql(&database).await).await.unwrap();
        let versions = "INSERT INTO club.yard_version SELECT id, 1, sha256('x'), '\\x00', now() FROM club.yard WHERE name = 'one of many'";
        sqlx::query(versions).execute(&mut sql(&database).await).await.unwrap();
        let planned = plan(&club).await;
        assert_eq!((planned.asked, planned.queued), (20_000, 20_000));
        let next = club.plan_night(&night(date(2026, 1, 11), "and now?")).await.unwrap();
        assert_eq!(next.queued, 20_000);
        assert_eq!(
            figure(&database, "SELECT COUNT(*) FROM graphile_worker.jobs").await,
            20_000,
            "the earlier night waits no more"
        );
    });
}

#[test]
fn old_nights_are_forgotten_with_their_answers_and_what_is_read_stays_to_the_byte() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let keeper = fill(&club, 6).await;
        let day = |day| date(2026, 1, day);
        assert_eq!(club.forget(day(31)).await.unwrap().nights, 0, "none is complete");
        for (on, question) in [(10, "how?"), (11, "and now?"), (12, "how?")] {
            let words = |number| if number == 5 && on == 11 { "poison" } else { "well" };
            club.take_in(keeper, &handed((0..6).map(|number| yard(number, words(number))).collect())).await.unwrap();
            club.plan_night(&night(day(on), question)).await.unwrap();
            work(&club, model(Duration::ZERO)).await;
        }
        let next = club.plan_night(&night(day(13), "tomorrow?")).await.unwrap();
        let read = club.last_night(None).await.unwrap().unwrap();
        let versions = figure(&database, "SELECT COUNT(*) FROM club.yard_version").await;
        let nothing = club.forget(day(10)).await.unwrap();
        assert_eq!((nothing.nights, nothing.answers), (0, 0), "none is so old");
        let all = club.forget(day(31)).await.unwrap();
        assert_eq!((all.nights, all.answers), (2, 5), "the answers of the 10th are those of the 12th too");
        assert_eq!(club.last_night(None).await.unwrap().unwrap(), read);
        assert_eq!(figure(&database, "SELECT COUNT(*) FROM club.failure").await, 0);
        assert_eq!(figure(&database, "SELECT COUNT(*) FROM club.yard_version").await, versions, "no yard is forgotten");
        work(&club, model(Duration::ZERO)).await;
        assert_eq!(club.last_night(None).await.unwrap().unwrap().night, next.night, "the one that was planned goes on");
        is_as_on_one_machine(&club, 6, "tomorrow?").await;
    });
}
