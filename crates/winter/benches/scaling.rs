//! A yard's winter at one size: seconds, processor time and memory as one line of JSON. Run by
//! `cargo xtask bench --scaling` as `COLONIES MEMBERS THREADS (end|days)`.

#![expect(clippy::print_stdout, reason = "a bench prints its figures")]

use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::Fraction;
use snowhum_winter::{Environment, Housed, LANES, Parameters, Record, Schedule, Settings, Yard, YardShelter, run};
use std::time::Instant;

const HOURS: usize = 4_344;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).filter(|argument| argument != "--bench").collect();
    let number = |at: usize| arguments.get(at).map_or(Ok(1), |word| word.parse::<usize>());
    let (colonies, members, threads) = (number(0)?, number(1)?, number(2)?);
    let record = if arguments.get(3).is_some_and(|word| word == "days") { Record::Days } else { Record::End };
    let parameters = Parameters::shipped()?;
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let weather = changeable(-3.0, HOURS, 2 * LANES);
    let environment = Environment::yard(&weather, place(), shelter, jiff::civil::date(2025, 10, 1));
    drop(weather);
    let one = |number: usize| {
        let mut colony = colony(18_000.0, 22.0);
        colony.id.0 = uuid::Uuid::from_u128(1 + number as u128);
        Housed { colony, hive: langstroth(Dress::BARE), neighbour: None, stays: Vec::new() }
    };
    let housed: Vec<Housed> = (0..colonies).map(one).collect();
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &housed };
    let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build()?;
    let before = memory_kb("VmRSS:");
    let begun = Instant::now();
    let out = pool.install(|| run(&yard, &Schedule::default(), Settings { members, seed: 1, record }));
    let seconds = begun.elapsed().as_secs_f64();
    assert_eq!(out.len(), colonies);
    let grown = memory_kb("VmHWM:").saturating_sub(before);
    println!("{{\"seconds\":{seconds:.4},\"processor\":{:.4},\"kilobytes\":{grown}}}", processor_time());
    Ok(())
}

/// Kilobytes of this process that the system names so; zero where it does not say.
fn memory_kb(name: &str) -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix(name)).unwrap_or_default();
    line.split_whitespace().next().and_then(|kb| kb.parse().ok()).unwrap_or_default()
}

/// Seconds of processor that the pool's threads had: all but the first thread's, which made the weather.
fn processor_time() -> f64 {
    let own = std::process::id().to_string();
    let threads = std::fs::read_dir("/proc/self/task").into_iter().flatten().flatten();
    let of = |thread: std::fs::DirEntry| std::fs::read_to_string(thread.path().join("schedstat")).ok();
    let workers = threads.filter(|thread| thread.file_name().to_string_lossy() != own);
    let nanoseconds = |text: String| text.split_whitespace().next()?.parse::<f64>().ok();
    workers.filter_map(of).filter_map(nanoseconds).sum::<f64>() * 1e-9
}
