//! A made-up club, and a model that is quick and strange enough.

use jiff::civil::{Date, date};
use sha2::{Digest, Sha256};
use snowhum_club::{Asked, Cell, Club, Handed, Night, Pace, Planned, Reckon, Role, Winter, Worker, Yard};
use snowhum_testkit::postgres::Database;
use sqlx::Connection;
use sqlx::postgres::PgConnection;
use std::fmt::Write;
use std::future::Future;
use std::sync::Arc;
use std::time::Duration;
use uuid::Uuid;

/// The build that computes.
pub(crate) const BUILD: &str = "this build";
/// Notices within a second or two what machines in earnest notice within a minute.
pub(crate) const QUICK: Pace = Pace {
    poll: Duration::from_millis(100),
    alive: Duration::from_millis(300),
    dead: Duration::from_secs(2),
    grace: Duration::from_secs(30),
    again: Duration::from_millis(100),
};

pub(crate) fn run<T>(work: impl Future<Output = T>) -> T {
    tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap().block_on(work)
}

pub(crate) async fn open(database: &Database) -> Club {
    Club::open(&database.address).await.unwrap()
}

pub(crate) fn yard(number: u128, words: &str) -> Yard {
    Yard {
        id: Uuid::from_u128(number),
        name: format!("Yard {number}"),
        body: format!("yard {number}: {words}"),
        cell: Some(Cell { north: 60, east: -1 }),
        winters: vec![Winter { year: 2024, colonies: 5, lost: (number % 5) as u32 }],
    }
}

/// An export of some yards.
pub(crate) fn handed(yards: Vec<Yard>) -> Handed {
    let export = yards.iter().map(|yard| format!("{}\n", yard.body)).collect();
    Handed { export, yards }
}

/// A keeper with so many yards.
pub(crate) async fn fill(club: &Club, yards: u128) -> Uuid {
    let keeper = club.member("Heath", "Anna", Some(Role::Keeper)).await.unwrap();
    let yards = (0..yards).map(|number| yard(number, "well")).collect();
    club.take_in(keeper, &handed(yards)).await.unwrap();
    keeper
}

pub(crate) const DAY: Date = date(2026, 1, 10);

pub(crate) fn night(day: Date, question: &str) -> Night {
    Night { day, build: BUILD.to_owned(), question: question.to_owned() }
}

pub(crate) async fn plan(club: &Club) -> Planned {
    club.plan_night(&night(DAY, "how?")).await.unwrap()
}

/// What one machine answers, after a while: it depends on each letter of the question and of the yard.
pub(crate) fn answer(asked: &Asked<'_>, takes: Duration) -> Result<String, String> {
    if asked.yard.contains("poison") {
        return Err("a winter that is over\0".to_owned());
    }
    assert!(!asked.yard.contains("panic"), "no such hive");
    if asked.yard.contains("abort") {
        std::process::abort();
    }
    std::thread::sleep(takes);
    let mut answer = asked.yard.to_owned();
    for byte in Sha256::digest(format!("{}|{}", asked.question, asked.yard)) {
        write!(answer, " {byte}").unwrap();
    }
    Ok(answer)
}

pub(crate) fn model(takes: Duration) -> Reckon {
    Arc::new(move |asked: &Asked<'_>| answer(asked, takes))
}

pub(crate) fn worker(at_once: usize, reckon: Reckon) -> Worker {
    Worker { build: BUILD.to_owned(), at_once, pace: QUICK, reckon, told: |_| () }
}

/// One worker works until all is done.
pub(crate) async fn work(club: &Club, reckon: Reckon) {
    let done = {
        let club = club.clone();
        async move { club.all_done(BUILD.to_owned()).await }
    };
    club.work(&worker(2, reckon), done).await.unwrap();
}

/// The answers of the last complete night are those of one machine, to the byte, but for yards that fail.
pub(crate) async fn is_as_on_one_machine(club: &Club, yards: usize, question: &str) {
    let night = club.last_night(None).await.unwrap().expect("a complete night");
    assert_eq!(night.yards.len(), yards);
    for outlook in night.yards {
        let yard = format!("yard {}: ", outlook.yard.as_u128());
        match outlook.answer {
            Ok(told) => {
                let end = told.find(" well").unwrap() + " well".len();
                let alone = answer(&Asked { question, yard: &told[..end] }, Duration::ZERO).unwrap();
                assert!(told == alone && told.starts_with(&yard), "{told}");
            }
            Err(words) => assert!(!words.is_empty(), "{yard} failed without a word"),
        }
    }
}

/// A connection past all code of ours.
pub(crate) async fn sql(database: &Database) -> PgConnection {
    PgConnection::connect(&database.address).await.unwrap()
}

/// A figure out of the database, past what the library tells.
pub(crate) async fn figure(database: &Database, row: &'static str) -> i64 {
    sqlx::query_scalar(row).fetch_one(&mut sql(database).await).await.unwrap()
}
