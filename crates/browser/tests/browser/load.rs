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
const A_MOMENT: Duration = Duration::from_secs(10);
/// After so long the program holds all the memory it needs.
const WARM: Duration = Duration::from_secs(60);
/// What memory may go up and down by after that, megabytes: one estimate that is being computed beside the one shown.
const SWING_MB: u64 = 24;

/// How long the readers without a thought read, and what they and the program may take.
const RUSH: Duration = Duration::from_secs(90);
const LATEST: Duration = Duration::from_millis(500);
const MOST_MB: u64 = 250;

/// Fifty readers who ask for the next page as soon as they have one, while a note comes every second.
#[test]
#[ignore = "a minute and a half of full load: by hand, on a machine that does nothing else"]
fn fifty_readers_without_a_thought_wait_under_half_a_second_while_notes_come() -> Result<()> {
    let server = Server::demo_in_full()?;
    server.settle()?;
    let hives: Vec<String> = server.colonies()?.into_iter().map(|(_, id)| id).collect();
    let (mut waits, memory) = crowd(&server, &hives, 1, Duration::ZERO, RUSH)?;
    waits.sort();
    let at = |share: f64| waits[((waits.len() - 1) as f64 * share) as usize];
    let most = memory.iter().max().copied().unwrap_or_default();
    println!(
        "{} pages: half within {:?}, 99 of 100 within {:?}, all within {:?}; at most {most} MB after the first minute",
        waits.len(),
        at(0.5),
        at(0.99),
        at(1.0)
    );
    ensure!(at(0.99) < LATEST, "99 of 100 pages came within {:?}", at(0.99));
    ensure!(most < MOST_MB, "{most} MB are held");
    stays_flat(&memory)
}

/// Nobody is refused or forgotten; how long they wait is measured by hand.
#[test]
fn fifty_readers_and_five_writers_are_all_answered() -> Result<()> {
    let server = Server::demo()?;
    server.settle()?;
    let hives: Vec<String> = server.colonies()?.into_iter().map(|(_, id)| id).collect();
    let (waits, _) = crowd(&server, &hives, WRITERS, THINKING, A_MOMENT)?;
    ensure!(waits.len() >= 3 * READERS, "only {} pages were read", waits.len());
    Ok(())
}

/// How long each page took, and what memory was held once the first minute was over.
fn crowd(
    server: &Server,
    hives: &[String],
    writers: usize,
    thinking: Duration,
    lasts: Duration,
) -> Result<(Vec<Duration>, Vec<u64>)> {
    let begun = Instant::now();
    let end = begun + lasts;
    std::thread::scope(|scope| {
        let readers: Vec<_> =
            (0..READERS).map(|at| scope.spawn(move || read(server, hives, at, thinking, end))).collect();
        let writers: Vec<_> = (0..writers).map(|at| scope.spawn(move || write(server, hives, at, end))).collect();
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
    })
}

/// The second half holds no more than the first, but for what swings.
fn stays_flat(memory: &[u64]) -> Result<()> {
    let (early, late) = memory.split_at(memory.len() / 2);
    let most = |part: &[u64]| part.iter().max().copied().unwrap_or_default();
    ensure!(most(late) <= most(early) + SWING_MB, "memory grew from {} to {} MB", most(early), most(late));
    Ok(())
}

fn read(server: &Server, hives: &[String], at: usize, thinking: Duration, end: Instant) -> Result<Vec<Duration>> {
    let hive = format!("/hive/{}", hives[at % hives.len()]);
    let pages = ["/", "/round", "/flight", "/inside", "/normal?found=3", &hive, "/fit", "/jobs"];
    let mut waits = Vec::new();
    while Instant::now() < end {
        let page = pages[(at + waits.len()) % pages.len()];
        let start = Instant::now();
        let (status, _, _) = server.ask(page)?;
        ensure!(status == 200, "{page} answered {status}");
        waits.push(start.elapsed());
        std::thread::sleep(thinking);
    }
    Ok(waits)
}

fn write(server: &Server, hives: &[String], at: usize, end: Instant) -> Result<()> {
    let mut kept = 0;
    while Instant::now() < end {
        kept += 1;
        let id = format!("00000000-0000-4000-8000-{:06x}{kept:06x}", at + 1);
        let note = json!({ "visit": id, "colony": hives[(at + kept) % hives.len()], "at": "2026-02-07T10:00:00Z", "seen": ["hum=heard by ear"] });
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
