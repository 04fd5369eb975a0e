//! Nanoseconds per particle-hour of the full coupled step, on one thread. Run by `cargo xtask bench`.
//!
//! No harness: the figure wanted is a mean over a whole colony-winter, and the spread between repeats says how busy the
//! machine is.

#![expect(clippy::print_stdout, reason = "a bench prints its figures")]

use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::Fraction;
use snowhum_winter::{Environment, Housed, LANES, Parameters, Record, Schedule, Settings, Yard, YardShelter, run};
use std::time::Instant;

const MEMBERS: usize = 1_024;
const HOURS: usize = 4_344;
const REPEATS: usize = 7;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let parameters = Parameters::shipped()?;
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let weather = changeable(-3.0, HOURS, 2 * LANES);
    let environment = Environment::yard(&weather, place(), shelter, jiff::civil::date(2025, 10, 1));
    let housed = [Housed { colony: colony(18_000.0, 22.0), hive: langstroth(Dress::BARE), neighbour: None }];
    let yard = Yard { environment: &environment, parameters: &parameters, colonies: &housed };
    for (name, record) in [("end kept", Record::End), ("days kept", Record::Days)] {
        let settings = Settings { members: MEMBERS, seed: 1, record };
        let mut nanoseconds: Vec<f64> = (0..REPEATS).map(|_| once(&yard, settings)).collect();
        nanoseconds.sort_by(f64::total_cmp);
        println!(
            "winter step, {name}: {:.1} ns per particle-hour (best {:.1}, worst {:.1}; {MEMBERS} members, {HOURS} h, {} thread(s))",
            nanoseconds[REPEATS / 2],
            nanoseconds[0],
            nanoseconds[REPEATS - 1],
            rayon::current_num_threads(),
        );
    }
    Ok(())
}

fn once(yard: &Yard<'_>, settings: Settings) -> f64 {
    let begun = Instant::now();
    let outcome = run(yard, &Schedule::default(), settings);
    let seconds = begun.elapsed().as_secs_f64();
    assert_eq!(outcome.len(), 1);
    seconds * 1e9 / (MEMBERS * HOURS) as f64
}
