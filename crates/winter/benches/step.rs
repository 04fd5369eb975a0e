//! Nanoseconds of processor per particle-hour of the full coupled step, by width of vectors. Run by `cargo xtask bench`.
//!
//! No harness: the figure wanted is a mean over a whole colony-winter, and the spread between repeats says how busy the
//! machine is. With `--json` the figures come as one line.

#![expect(clippy::print_stdout, reason = "a bench prints its figures")]

use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::Fraction;
use snowhum_winter::{
    Environment, Housed, LANES, Parameters, Record, Schedule, Settings, Vectors, Yard, YardShelter, run_with,
};
use std::time::Instant;

const MEMBERS: usize = 1_024;
const HOURS: usize = 4_344;
const REPEATS: usize = 7;

/// What is measured: its name, the width, and what is kept.
const WAYS: [(&str, Vectors, Record); 4] = [
    ("widest vectors", Vectors::Widest, Record::End),
    ("256-bit vectors", Vectors::Bits256, Record::End),
    ("narrowest vectors", Vectors::Least, Record::End),
    ("widest, days kept", Vectors::Widest, Record::Days),
];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let parameters = Parameters::shipped()?;
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let weather = changeable(-3.0, HOURS, 2 * LANES);
    let environment = Environment::yard(&weather, place(), shelter, jiff::civil::date(2025, 10, 1));
    let housed =
        [Housed { colony: colony(18_000.0, 22.0), hive: langstroth(Dress::BARE), neighbour: None, stays: Vec::new() }];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &housed };
    let as_json = std::env::args().any(|argument| argument == "--json");
    let mut figures = Vec::new();
    for (name, vectors, record) in WAYS {
        let settings = Settings { members: MEMBERS, seed: 1, record };
        let mut nanoseconds: Vec<f64> = (0..REPEATS).map(|_| once(&yard, vectors, settings)).collect();
        nanoseconds.sort_by(f64::total_cmp);
        let (middle, best, worst) = (nanoseconds[REPEATS / 2], nanoseconds[0], nanoseconds[REPEATS - 1]);
        figures.push(format!("\"{name}\":{best:.2}"));
        if !as_json {
            println!("winter step, {name}: {middle:.1} ns per particle-hour (best {best:.1}, worst {worst:.1})");
        }
    }
    if as_json {
        println!("{{{}}}", figures.join(","));
    } else {
        println!("{MEMBERS} members, {HOURS} h, {} thread(s)", rayon::current_num_threads());
    }
    Ok(())
}

fn once(yard: &Yard<'_>, vectors: Vectors, settings: Settings) -> f64 {
    let (begun, used) = (Instant::now(), processor_time());
    let outcome = run_with(vectors, yard, &Schedule::default(), settings);
    let wall = begun.elapsed().as_secs_f64();
    assert_eq!(outcome.len(), 1);
    let seconds = processor_time().zip(used).map_or(wall, |(now, before)| now - before);
    seconds * 1e9 / (MEMBERS * HOURS) as f64
}

/// Seconds of processor that the threads of this process had, where the system says so: other work on the machine is
/// left out.
fn processor_time() -> Option<f64> {
    let threads = std::fs::read_dir("/proc/self/task").ok()?;
    let of = |thread: std::fs::DirEntry| std::fs::read_to_string(thread.path().join("schedstat")).ok();
    let nanoseconds = |text: String| text.split_whitespace().next()?.parse::<f64>().ok();
    Some(threads.flatten().filter_map(of).filter_map(nanoseconds).sum::<f64>() * 1e-9)
}
