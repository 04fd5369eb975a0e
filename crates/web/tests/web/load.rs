//! Many readers and some writers at once.

use std::time::{Duration, Instant};

use axum::http::StatusCode;
use serde_json::json;
use uuid::Uuid;

use crate::support::{Served, run};

const READERS: usize = 50;
const WRITERS: usize = 5;
const FOR: Duration = Duration::from_secs(10);
const THINKING: Duration = Duration::from_secs(1);

#[test]
fn fifty_readers_and_five_writers_meet_no_error_and_wait_little() {
    run(|served| async move {
        served.settled().await;
        let end = Instant::now() + FOR;
        let readers: Vec<_> = (0..READERS).map(|at| tokio::spawn(read(served.clone(), at, end))).collect();
        let writers: Vec<_> = (0..WRITERS).map(|at| tokio::spawn(write(served.clone(), at, end))).collect();
        let mut waits = Vec::new();
        for reader in readers {
            waits.extend(reader.await.unwrap());
        }
        for writer in writers {
            writer.await.unwrap();
        }
        waits.sort();
        let median = waits[waits.len() / 2];
        assert!(waits.len() > READERS * 5, "only {} pages were read", waits.len());
        assert!(median < Duration::from_millis(50), "the median page took {median:?}");
    });
}

async fn read(served: Served, at: usize, end: Instant) -> Vec<Duration> {
    let hive = format!("/hive/{}", served.yard.colonies[at % 5].id.0);
    let pages = ["/", "/round", "/flight", "/inside", "/normal?found=3", &hive];
    let mut waits = Vec::new();
    while Instant::now() < end {
        let start = Instant::now();
        let answer = served.get(pages[(at + waits.len()) % pages.len()]).await;
        assert_eq!(answer.status, StatusCode::OK);
        waits.push(start.elapsed());
        tokio::time::sleep(THINKING).await;
    }
    waits
}

async fn write(served: Served, at: usize, end: Instant) {
    let mut kept = 0;
    while Instant::now() < end {
        let id = Uuid::from_u128((at as u128 + 1) << 64 | kept);
        let note = json!({
            "visit": id, "colony": served.yard.colonies[at].id.0, "at": "2026-02-07T10:00:00Z", "seen": ["hum=heard by ear"],
            "sure": true,
        });
        assert_eq!(served.put(&format!("/api/notes/{id}"), &note).await.status, StatusCode::CREATED);
        kept += 1;
        tokio::time::sleep(THINKING).await;
    }
}
