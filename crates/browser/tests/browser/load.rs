//! Many readers and some writers over the wire, at the built program.

use anyhow::{Context, Result, ensure};
use serde_json::json;
use std::io::{Read, Write};
use std::net::TcpStream;
use std::time::{Duration, Instant};

use crate::server::Server;

const READERS: usize = 50;
const WRITERS: usize = 5;
const THINKING: Duration = Duration::from_secs(1);
/// After so long the program holds all the memory it needs.
const WARM: Duration = Duration::from_secs(60);
/// What memory may go up and down by after that, megabytes: one estimate that is being computed beside the one shown.
const SWING_MB: u64 = 24;

/// Ten seconds; as many as `SNOWHUM_LOAD_SECONDS` says by hand. Memory is looked at after the first minute.
#[test]
fn fifty_readers_and_five_writers_wait_little_and_memory_stays_flat() -> Result<()> {
    let seconds = std::env::var("SNOWHUM_LOAD_SECONDS").ok().and_then(|text| text.parse().ok()).unwrap_or(10);
    let server = Server::demo()?;
    server.settle()?;
    let hives: Vec<String> = server.colonies()?.into_iter().map(|(_, id)| id).collect();
    let begun = Instant::now();
    let end = begun + Duration::from_secs(seconds);
    let outcome: Result<(Vec<Duration>, Vec<u64>)> = std::thread::scope(|scope| {
        let (server, hives) = (&server, &hives);
        let readers: Vec<_> = (0..READERS).map(|at| scope.spawn(move || read(server, hives, at, end))).collect();
        let writers: Vec<_> = (0..WRITERS).map(|at| scope.spawn(move || write(server, hives, at, end))).collect();
        let mut memory = Vec::new();
        while Instant::now() < end {
            std::thread::sleep(Duration::from_millis(500));
            if begun.elapsed() > WARM {
                memory.extend(server.memory_mb());
            }
        }
        let mut waits = Vec::new();
        for reader in readers {
            waits.extend(reader.join().ok().context("a reader failed")??);
        }
        for writer in writers {
            writer.join().ok().context("a writer failed")??;
        }
        Ok((waits, memory))
    });
    let (mut waits, memory) = outcome?;
    waits.sort();
    let median = waits[waits.len() / 2];
    ensure!(waits.len() > READERS * seconds as usize / 2, "only {} pages were read", waits.len());
    ensure!(median < Duration::from_millis(50), "the median page took {median:?}");
    stays_flat(&memory)
}

/// The second half holds no more than the first, but for what swings.
fn stays_flat(memory: &[u64]) -> Result<()> {
    let (early, late) = memory.split_at(memory.len() / 2);
    let most = |part: &[u64]| part.iter().max().copied().unwrap_or_default();
    ensure!(most(late) <= most(early) + SWING_MB, "memory grew from {} to {} MB", most(early), most(late));
    Ok(())
}

fn read(server: &Server, hives: &[String], at: usize, end: Instant) -> Result<Vec<Duration>> {
    let hive = format!("/hive/{}", hives[at % hives.len()]);
    let pages = ["/", "/round", "/flight", "/inside", "/normal?found=3", &hive];
    let mut waits = Vec::new();
    while Instant::now() < end {
        let page = pages[(at + waits.len()) % pages.len()];
        let start = Instant::now();
        let (status, _, _) = server.ask(page)?;
        ensure!(status == 200, "{page} answered {status}");
        waits.push(start.elapsed());
        std::thread::sleep(THINKING);
    }
    Ok(waits)
}

fn write(server: &Server, hives: &[String], at: usize, end: Instant) -> Result<()> {
    let mut kept = 0;
    while Instant::now() < end {
        kept += 1;
        let id = format!("00000000-0000-4000-8000-{:06x}{kept:06x}", at + 1);
        let note =
            json!({ "visit": id, "colony": hives[at], "at": "2026-02-07T10:00:00Z", "seen": ["hum=heard by ear"] });
        let status = put(server, &format!("/api/notes/{id}"), &note.to_string())?;
        ensure!(status == 201, "a note was answered {status}");
        std::thread::sleep(THINKING);
    }
    Ok(())
}

fn put(server: &Server, path: &str, body: &str) -> Result<u16> {
    let mut stream = TcpStream::connect(("127.0.0.1", server.port))?;
    let length = body.len();
    write!(
        stream,
        "PUT {path} HTTP/1.0\r\nHost: 127.0.0.1:{}\r\nContent-Type: application/json\r\nContent-Length: {length}\r\n\r\n{body}",
        server.port
    )?;
    let mut answer = String::new();
    stream.read_to_string(&mut answer)?;
    answer.split(' ').nth(1).and_then(|code| code.parse().ok()).context("an answer without a status")
}
