//! Many readers and some writers at once: none meets an error. How long they wait is timed by hand, in the browser's load.

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
fn fifty_readers_and_five_writers_meet_no_error() {
    run(|served| async move {
        served.settled().await;
        let end = Instant::now() + FOR;
        let readers: Vec<_> = (0..READERS).map(|at| tokio::spawn(read(served.clone(), at, end))).collect();
        let writers: Vec<_> = (0..WRITERS).map(|at| tokio::spawn(write(served.clone(), at, end))).collect();
        let mut pages = 0;
        for reader in readers {
            pages += reader.await.unwrap();
        }
        for writer in writers {
            writer.await.unwrap();
        }
        assert!(pages > READERS, "only {pages} pages were read");
    });
}

async fn read(served: Served, at: usize, end: Instant) -> usize {
    let hive = format!("/hive/{}", served.yard.colonies[at % 5].id.0);
    let pages = ["/", "/round", "/flight", "/inside", "/normal?found=3", &hive];
    let mut read = 0;
    while Instant::now() < end {
        let answer = served.get(pages[(at + read) % pages.len()]).await;
        assert_eq!(answer.status, StatusCode::OK);
        read += 1;
        tokio::time::sleep(THINKING).await;
    }
    read
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
