//! How long an ensemble takes on one core: 64 paths of 5 600 h.
#![expect(clippy::print_stdout, reason = "a bench prints what it measured")]

use jiff::civil::date;
use jiff::tz::TimeZone;
use snowhum_units::{Degree, Metre};
use snowhum_weather::{Climate, Place, generate};
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let place = Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) };
    let begun = Instant::now();
    let climate = Climate::at(place)?;
    println!("climate, grid unpacked: {:.1} ms", begun.elapsed().as_secs_f64() * 1e3);
    for round in 0..8 {
        let begun = Instant::now();
        let made = generate(place, &climate, &TimeZone::UTC, date(2025, 10, 5), 5_600, 64, round)?;
        println!("64 paths of {} h: {:.1} ms", made.hours(), begun.elapsed().as_secs_f64() * 1e3);
    }
    Ok(())
}
